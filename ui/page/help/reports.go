package help

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"frontlay/ui/ask"
	"frontlay/ui/field"
)

// Report tells of an earlier run that ended in an unforeseen way, without private
// things. Discard lets it go.
type Report struct {
	Text    string
	Discard func() error
}

// Reports shows what earlier runs left that ended in an unforeseen way, to be
// copied and sent by who wants to: each once, one after the other, and then goes
// on.
func Reports(a *ask.Asker, clipboard fyne.Clipboard, reports []Report, then func()) {
	if len(reports) == 0 {
		then()
		return
	}
	r := reports[0]
	text := field.NewText("")
	text.MultiLine = true
	text.SetText(r.Text)
	text.Wrapping = fyne.TextWrapOff
	text.SetMinRowsVisible(14)
	intro := field.NewLabel(a.Text("frontlay ended in an unforeseen way the last time. This report names no file and no person; send it to who keeps the program, if you like."))
	intro.Wrapping = fyne.TextWrapWord
	copyIt := field.NewButton(a.Text("Copy the report"), func() { clipboard.SetContent(r.Text) })
	box := container.NewBorder(intro, container.NewHBox(copyIt), nil, nil, text)
	d := a.Notice(a.Text("The last run"), a.Text("Close"), box, nil, func() {
		if err := r.Discard(); err != nil {
			a.Complain(err)
		}
		Reports(a, clipboard, reports[1:], then)
	})
	d.Resize(fyne.NewSize(720, 460))
}
