package ask

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
	"frontlay/ui/field"
)

// Form is a small form: what it asks for, and two buttons.
type Form struct {
	Title string
	Width float32 // the least
	Body  fyne.CanvasObject
	// Fields are those of the body whose Enter takes the form; the first has the
	// focus, with its text selected.
	Fields []*field.Text
	Take   string // what the button says that takes the form
	Back   string // the other button; empty: "Cancel"
	// Good looks at what is typed, where Take can be pressed. It is false where
	// something is wrong, which it has told on the form: that stays open.
	Good func() bool
	// Then goes on once the form is closed; nil: Good has done all.
	Then func()
}

// Form shows a form and gives the button that takes it.
func (a *Asker) Form(f Form) *field.Button {
	d := dialog.NewCustomWithoutButtons(f.Title, container.New(field.AtLeast(f.Width), f.Body), a.Win)
	take := field.NewButton(f.Take, nil)
	done := func() {
		if take.Disabled() || !f.Good() {
			return
		}
		d.Hide()
		if f.Then != nil {
			f.Then()
		}
	}
	take.OnTapped, take.Importance = done, widget.HighImportance
	for _, t := range f.Fields {
		t.OnSubmitted = func(string) { done() }
	}
	if f.Back == "" {
		f.Back = a.Text("Cancel")
	}
	d.SetButtons([]fyne.CanvasObject{field.NewButton(f.Back, d.Hide), take})
	if len(f.Fields) == 0 {
		a.Show(d, nil)
	} else {
		a.Show(d, f.Fields[0])
		f.Fields[0].TypedShortcut(&fyne.ShortcutSelectAll{})
	}
	return take
}

// Name asks for a name. label says of what kind, answer what the button does, and
// take what is wrong with a name.
func (a *Asker) Name(title, label, answer, name string, take func(string) error) {
	e, problem := field.NewText(""), wrapped("")
	e.SetText(name)
	problem.Importance = widget.DangerImportance
	a.Form(Form{
		Title: title, Width: 460, Take: answer, Fields: []*field.Text{e},
		Body: field.Column(field.Labelled(label, e), problem),
		Good: func() bool {
			err := take(strings.TrimSpace(e.Text))
			if err != nil {
				problem.SetText(a.Say().Say(message.Of(err)))
			}
			return err == nil
		},
	})
}
