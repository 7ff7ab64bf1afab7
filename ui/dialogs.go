package ui

import (
	"errors"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
	"frontlay/ui/field"
)

// showDialog shows a dialog that Esc closes.
func (w *window) showDialog(d dialog.Dialog) {
	d.Show()
	old := w.win.Canvas().OnTypedKey()
	w.win.Canvas().Unfocus()
	focusCloser(w.win.Canvas(), w.win.Canvas().Overlays().Top())
	w.win.Canvas().SetOnTypedKey(func(e *fyne.KeyEvent) {
		if e.Name == fyne.KeyEscape {
			d.Hide()
		}
	})
	d.SetOnClosed(func() { w.win.Canvas().SetOnTypedKey(old) })
}

// closing makes a dialog with one button, which has the focus once the dialog is
// shown by showDialog. The keys that move through a text move the scroll, where
// there is one.
func (w *window) closing(title, label string, o fyne.CanvasObject, scroll *container.Scroll) dialog.Dialog {
	d := dialog.NewCustomWithoutButtons(title, o, w.win)
	d.SetButtons([]fyne.CanvasObject{newCloser(label, d.Hide, scroll)})
	return d
}

// complain shows an error until it is read.
func (w *window) complain(err error) {
	l := field.NewLabel(w.say().Say(messageOf(err)))
	l.Wrapping = fyne.TextWrapWord
	scroll := container.NewVScroll(l)
	scroll.SetMinSize(fyne.NewSize(520, 140))
	w.showDialog(w.closing(w.text("That did not work"), w.text("Close"), scroll, scroll))
}

// choose asks a question with several answers; Esc gives the last one.
func (w *window) choose(title, question string, answers []string, then func(int)) {
	w.chooseFrom(title, question, answers, 0, then)
}

// chooseFrom is choose with the focus on one of the answers: where something
// would be lost, that is not the first.
func (w *window) chooseFrom(title, question string, answers []string, first int, then func(int)) {
	l := field.NewLabel(question)
	l.Wrapping = fyne.TextWrapWord
	var d *dialog.CustomDialog
	given := len(answers) - 1
	var buttons []fyne.CanvasObject
	for i, a := range answers {
		b := newAnswer(a, func() {
			given = i
			d.Hide()
		}, func() { d.Hide() })
		if i == first {
			b.Importance = widget.HighImportance
		}
		buttons = append(buttons, b)
	}
	box := container.NewGridWrap(fyne.NewSize(460, 90), l)
	d = dialog.NewCustomWithoutButtons(title, box, w.win)
	d.SetButtons(buttons)
	d.Show()
	old := w.win.Canvas().OnTypedKey()
	w.win.Canvas().Focus(buttons[first].(*answer))
	w.win.Canvas().SetOnTypedKey(func(e *fyne.KeyEvent) {
		if e.Name == fyne.KeyEscape {
			d.Hide()
		}
	})
	d.SetOnClosed(func() {
		w.win.Canvas().SetOnTypedKey(old)
		then(given)
	})
}

// messageOf is an error as a message.
func messageOf(err error) message.Message {
	var m message.Message
	if errors.As(err, &m) {
		return m
	}
	return message.Of(err)
}
