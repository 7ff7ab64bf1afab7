package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
)

// Mistake is a field of a page or dialog, and under it, whole, what is wrong with
// what is typed in it.
type Mistake struct {
	Name   string // of the field
	Note   *Label
	Object *fyne.Container // the field with the note under it
	err    error
}

// NewMistake puts a field above the place for what is wrong with it.
func NewMistake(name string, o fyne.CanvasObject) *Mistake {
	m := &Mistake{Name: name, Note: NewLabel("")}
	m.Note.Importance, m.Note.Wrapping = widget.DangerImportance, fyne.TextWrapWord
	m.Note.Hide()
	m.Object = Column(o, m.Note)
	return m
}

// Tell shows what is wrong, or nothing where nothing is.
func (m *Mistake) Tell(say message.Language, err error) {
	m.err = err
	if err == nil {
		if m.Note.Visible() {
			m.Note.Hide()
			m.Object.Refresh()
		}
		return
	}
	m.Note.SetText(say.Say(message.Of(err)))
	m.Note.Show()
	m.Object.Refresh()
}

// Mistaken are the names of the fields with something wrong in them.
func Mistaken(all ...*Mistake) []string {
	var names []string
	for _, m := range all {
		if m.err != nil {
			names = append(names, m.Name)
		}
	}
	return names
}
