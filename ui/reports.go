package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"frontlay/ui/field"
)

// showReports shows what earlier runs left that ended in an unforeseen way, to
// be copied and sent by who wants to: each once, one after the other, and then
// goes on.
func (w *window) showReports(reports []Report, then func()) {
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
	intro := field.NewLabel(w.text("frontlay ended in an unforeseen way the last time. This report names no file and no person; send it to who keeps the program, if you like."))
	intro.Wrapping = fyne.TextWrapWord
	copyIt := field.NewButton(w.text("Copy the report"), func() { w.app.Clipboard().SetContent(r.Text) })
	box := container.NewBorder(intro, container.NewHBox(copyIt), nil, nil, text)
	d := w.ask.Notice(w.text("The last run"), w.text("Close"), box, nil, func() {
		if err := r.Discard(); err != nil {
			w.ask.Complain(err)
		}
		w.showReports(reports[1:], then)
	})
	d.Resize(fyne.NewSize(720, 460))
}
