// Package ask puts messages, questions, small forms, paths and names over a
// window. Enter, Esc and the focus are the same in all of them: Enter takes what
// is asked for or presses the button that has the focus, Esc changes nothing, and
// the focus is on what can't lose anything.
package ask

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
	"frontlay/ui/field"
)

// Asker asks over one window. It is used by the goroutine that draws.
type Asker struct {
	Win fyne.Window
	// Say gives the language of the moment.
	Say func() message.Language
	// Begin is the folder in which files are looked for; empty: nobody knows one.
	Begin func() string
	// Own is the path of the file that the window works on, which is written
	// without asking whether it may be replaced; empty: none.
	Own func() string
}

// Text is a text in the language of the moment.
func (a *Asker) Text(s string, args ...any) string { return a.Say().Say(message.New(s, args...)) }

// Show shows a dialog that Esc closes, and gives the focus to what shall have it;
// nil: nothing has.
func (a *Asker) Show(d dialog.Dialog, focus fyne.Focusable) {
	c := a.Win.Canvas()
	d.Show()
	old := c.OnTypedKey()
	c.Unfocus()
	if focus != nil {
		c.Focus(focus)
	}
	c.SetOnTypedKey(func(e *fyne.KeyEvent) {
		if e.Name == fyne.KeyEscape {
			d.Hide()
		}
	})
	open := true // one that is hidden twice must not take the keys from the next
	d.SetOnClosed(func() {
		if open {
			open = false
			c.SetOnTypedKey(old)
		}
	})
}

// Notice shows something that is only to be read, with one button; closed, where
// it is given, hears that it is closed. The keys that move through a text move the
// scroll, where there is one.
func (a *Asker) Notice(title, button string, o fyne.CanvasObject, scroll *container.Scroll, closed func()) *dialog.CustomDialog {
	d := dialog.NewCustomWithoutButtons(title, o, a.Win)
	b := &Dismiss{Scroll: scroll}
	b.ExtendBaseWidget(b)
	b.Text, b.OnTapped = button, d.Hide
	d.SetButtons([]fyne.CanvasObject{b})
	a.Show(d, b)
	if closed != nil {
		d.SetOnClosed(closed)
	}
	return d
}

// Dismiss is the button of a notice: it has the focus, and hands the keys that
// move through a text to what the notice shows.
type Dismiss struct {
	field.Button
	Scroll *container.Scroll // nil: nothing to move
}

// TypedKey moves the text, or presses the button.
func (b *Dismiss) TypedKey(e *fyne.KeyEvent) {
	if b.Scroll == nil || !field.Move(b.Scroll, e.Name) {
		b.Button.TypedKey(e)
	}
}

// Complain shows an error until it is read.
func (a *Asker) Complain(err error) { a.ComplainThen(err, nil) }

// ComplainThen shows an error and goes on once it is read; nil: with nothing.
func (a *Asker) ComplainThen(err error, then func()) {
	scroll := container.NewVScroll(wrapped(a.Say().Say(message.Of(err))))
	scroll.SetMinSize(fyne.NewSize(520, 140))
	a.Notice(a.Text("That did not work"), a.Text("Close"), scroll, scroll, then)
}

// Question asks for one of several answers.
type Question struct {
	Title, Text string
	Answers     []string // the last one changes nothing, and is what Esc gives
	First       int      // which has the focus; where something would be lost, not the one that loses it
}

// Choose asks a question and goes on with the index of the answer.
func (a *Asker) Choose(q Question, then func(answer int)) {
	d := dialog.NewCustomWithoutButtons(q.Title, container.NewGridWrap(fyne.NewSize(460, 90), wrapped(q.Text)), a.Win)
	given := len(q.Answers) - 1
	var buttons []fyne.CanvasObject
	for i, text := range q.Answers {
		b := field.NewButton(text, func() {
			given = i
			d.Hide()
		})
		if i == q.First {
			b.Importance = widget.HighImportance
		}
		buttons = append(buttons, b)
	}
	d.SetButtons(buttons)
	a.Show(d, buttons[q.First].(*field.Button))
	d.SetOnClosed(func() { then(given) })
}

// wrapped is a label that breaks its lines.
func wrapped(text string) *field.Label {
	l := field.NewLabel(text)
	l.Wrapping = fyne.TextWrapWord
	return l
}
