package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
	"frontlay/ui/field"
)

// mistake is a field of a page or dialog, and under it, whole, what is wrong with
// what is typed in it.
type mistake struct {
	name   string // of the field
	note   *field.Label
	object *fyne.Container // the field with the note under it
	err    error
}

// newMistake puts a field above the place for what is wrong with it.
func newMistake(name string, o fyne.CanvasObject) *mistake {
	m := &mistake{name: name, note: field.NewLabel("")}
	m.note.Importance, m.note.Wrapping = widget.DangerImportance, fyne.TextWrapWord
	m.note.Hide()
	m.object = field.Column(o, m.note)
	return m
}

// tell shows what is wrong, or nothing where nothing is.
func (m *mistake) tell(w *window, err error) {
	m.err = err
	if err == nil {
		if m.note.Visible() {
			m.note.Hide()
			m.object.Refresh()
		}
		return
	}
	m.note.SetText(w.say().Say(message.Of(err)))
	m.note.Show()
	m.object.Refresh()
}

// mistaken are the names of the fields with something wrong in them.
func mistaken(all ...*mistake) []string {
	var names []string
	for _, m := range all {
		if m.err != nil {
			names = append(names, m.name)
		}
	}
	return names
}
