package field

import (
	"unicode"
	"unicode/utf8"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
)

// Row is a label, a field, its unit, and below them what is wrong with what is
// being typed.
type Row struct {
	Object  fyne.CanvasObject
	Entry   *Entry
	unit    *caption // nil: none
	problem *Label
	say     func(message.Message) string
}

// NewRow makes a row. The source's Tell is replaced by the row's own.
func NewRow(label, unit string, s Source, say func(message.Message) string) *Row {
	r := &Row{problem: NewLabel(""), say: say}
	r.problem.Importance = widget.DangerImportance
	r.problem.Wrapping = fyne.TextWrapWord
	r.problem.Hide()
	var right fyne.CanvasObject
	if unit != "" {
		r.unit = newCaption(unit, false)
		right = container.New(unitWidth{}, r.unit)
	}
	r.Entry = NewEntry(r.own(s))
	if s.Step != nil {
		less := newKnob("–", func() { r.Entry.step(-1) })
		more := newKnob("+", func() { r.Entry.step(1) })
		steps := container.NewHBox(less, more)
		if right != nil {
			right = container.NewHBox(right, steps)
		} else {
			right = steps
		}
	}
	r.Entry.grown = func() { r.Object.Refresh() }
	line := Labelled(label, container.NewBorder(nil, nil, nil, right, r.Entry))
	r.Object = container.New(&tight{within: true}, line, r.problem)
	return r
}

// Use makes the row tell of another thing from now on, of the same label and unit.
func (r *Row) Use(s Source) {
	r.Entry.Use(r.own(s))
}

// own makes a source tell what is wrong below the field, and show the row's unit only
// behind figures that have none of their own.
func (r *Row) own(s Source) Source {
	s.Tell = r.tell
	if get := s.Get; r.unit != nil {
		s.Get = func() Value {
			v := get()
			if last, _ := utf8.DecodeLastRuneInString(v.Text); unicode.IsLetter(last) {
				r.unit.Hide()
			} else {
				r.unit.Show()
			}
			return v
		}
	}
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

// unitWidth is the room for a unit behind a field.
type unitWidth struct{}

func (unitWidth) Layout(o []fyne.CanvasObject, s fyne.Size) { o[0].Resize(s) }

// MinSize is the same for short units, so that their fields end in one line.
func (unitWidth) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(max(o[0].(*caption).Need(), measure("mm")+2*around()), o[0].MinSize().Height)
}
