package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
)

// Row is a label, a field with its unit, and below them what is wrong with what is
// being typed.
type Row struct {
	Object  fyne.CanvasObject
	Entry   *Entry
	problem *Label
	say     func(message.Message) string
	unit    string
}

// NewRow makes a row with the label beside the field. The source's Tell and Unit are
// replaced by the row's own.
func NewRow(label, unit string, s Source, say func(message.Message) string) *Row {
	r := newRow(unit, s, say)
	r.Object = container.New(&tight{nested: true}, Labelled(label, r.Entry), r.problem)
	return r
}

// NewCell makes a row with the label above the field, for Cells.
func NewCell(label, unit string, s Source, say func(message.Message) string) *Row {
	r := newRow(unit, s, say)
	r.Object = container.New(&above{}, newSmall(label), r.Entry, r.problem)
	return r
}

func newRow(unit string, s Source, say func(message.Message) string) *Row {
	r := &Row{problem: NewLabel(""), say: say, unit: unit}
	r.problem.Importance = widget.DangerImportance
	r.problem.Wrapping = fyne.TextWrapWord
	r.problem.Hide()
	r.Entry = NewEntry(r.own(s))
	r.Entry.grown = func() { r.Object.Refresh() }
	return r
}

// Use makes the row tell of another thing from now on, of the same label and unit.
func (r *Row) Use(s Source) {
	r.Entry.Use(r.own(s))
}

// SetUnit shows another unit in the field.
func (r *Row) SetUnit(unit string) {
	r.unit, r.Entry.source.Unit = unit, unit
	if r.Entry.tail != nil {
		r.Entry.tail.Refresh()
	}
}

// own makes a source tell what is wrong below the field, and show the row's unit.
func (r *Row) own(s Source) Source {
	s.Tell, s.Unit = r.tell, r.unit
	return s
}

// tell shows below the field what is wrong; an empty message takes it away.
func (r *Row) tell(m message.Message) {
	if m.Empty() {
		if r.problem.Visible() {
			r.problem.Hide()
			r.Object.Refresh()
		}
		return
	}
	r.problem.SetText(r.say(m))
	r.problem.Show()
	r.Object.Refresh()
}
