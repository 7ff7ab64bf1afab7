package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/session"
)

// statusLine is the line under the drawing. It speaks of what was done last, or
// of why it could not be done, and of nothing before that; while the pointer
// rests on a figure it explains that instead.
type statusLine struct {
	label     *field.Label
	said      message.Message
	refused   bool // said is a refusal, which nothing but the next action takes away
	explained message.Message
}

func newStatusLine() *statusLine {
	l := &statusLine{label: field.NewLabel("")}
	l.label.Truncation = fyne.TextTruncateEllipsis
	return l
}

// text is what stands in the line. A refusal has the sign of an error, so that
// its colour is not all that tells it.
func (l *statusLine) text(say message.Language) string {
	switch {
	case l.refused:
		return "×  " + say.Say(l.said)
	case !l.explained.Empty():
		return say.Say(l.explained)
	default:
		return say.Say(l.said)
	}
}

func (l *statusLine) show(say message.Language) {
	i := widget.MediumImportance
	if l.refused {
		i = widget.DangerImportance
	}
	if text := l.text(say); text != l.label.Text || i != l.label.Importance {
		l.label.Importance = i
		l.label.SetText(text)
	}
}

// Tell writes what was done, or what can be done now, to the status line.
func (d *Desk) Tell(m message.Message) {
	d.status.said, d.status.refused, d.status.explained = m, false, message.Message{}
	d.status.show(d.host.Say())
}

// Refuse writes why something can't be done to the status line; an empty message
// clears it.
func (d *Desk) Refuse(m message.Message) {
	d.status.said, d.status.refused = m, !m.Empty()
	d.status.show(d.host.Say())
}

// tellExplanation writes how the figure under the pointer came about; empty where
// there is nothing to explain.
func (d *Desk) tellExplanation(m message.Message) {
	d.status.explained = m
	d.status.show(d.host.Say())
}

// tellChange lets the status line follow the session: it names a step that was
// made, and forgets what it said before anything else that changes.
func (d *Desk) tellChange(c session.Change) {
	if c == session.Saved {
		return
	}
	done := message.Message{}
	if c&session.Document != 0 && c&session.Saved != 0 {
		done, _ = d.host.Session().CanUndo()
	}
	d.Tell(done)
}
