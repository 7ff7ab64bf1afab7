package desk

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/session"
)

// told is what the bar of the check says at its right: what was done last, or why
// it could not be done; while the pointer rests on a figure how that came about;
// else what lies under the pointer. News that have no room there stand on a card over
// the lower edge of the sheet, so that none are lost.
type told struct {
	line   *fynecanvas.Text // in the bar
	object *fyne.Container  // the card
	card   *field.Label
	ground *fynecanvas.Rectangle

	said      message.Message
	refused   bool // said is a refusal, which nothing but the next action takes away
	explained message.Message
	under     message.Message // the pointer
	passed    bool            // the pointer has gone on to another thing since it was said

	room       float32 // that the bar has for the line
	at         fyne.Position
	size       fyne.Size // of the sheet
	text       string
	slight     bool // the text only names what lies under the pointer: it needs no card
	importance widget.Importance
}

func newTold() *told {
	t := &told{line: fynecanvas.NewText("", nil), card: field.NewLabel(""), ground: &fynecanvas.Rectangle{CornerRadius: 5, StrokeWidth: 1}}
	t.card.Wrapping = fyne.TextWrapWord
	t.object = container.NewWithoutLayout(t.ground, t.card)
	t.object.Hide()
	return t
}

// news is what was done, why it could not be, or how a figure came about. A refusal
// has the sign of an error, so that its colour is not all that tells it.
func (t *told) news(say message.Language) string {
	switch {
	case t.refused:
		return "×  " + say.Say(t.said)
	case !t.explained.Empty():
		return say.Say(t.explained)
	default:
		return say.Say(t.said)
	}
}

// show writes what is to be told now.
func (t *told) show(say message.Language) {
	text := t.news(say)
	t.slight = false
	if under := say.Say(t.under); under != "" && (text == "" || t.passed && !t.refused && t.explained.Empty()) {
		text, t.slight = under, true
	}
	i := widget.MediumImportance
	if t.refused {
		i = widget.DangerImportance
	}
	if text != t.text || i != t.importance {
		t.text, t.importance = text, i
		t.write()
	}
}

// write puts the text where it has room.
func (t *told) write() {
	p := look.Current()
	t.line.TextSize, t.line.Color, t.line.TextStyle.Bold = look.Secondary(), p.Soft, t.importance == widget.DangerImportance
	edge := p.FieldEdge
	t.ground.FillColor = p.Field
	if t.importance == widget.DangerImportance {
		t.line.Color, edge, t.ground.FillColor = p.Error, p.Error, p.ErrorTint
	}
	t.ground.StrokeColor = edge
	fits := fyne.MeasureText(t.text, t.line.TextSize, t.line.TextStyle).Width <= t.room
	t.line.Text = ""
	if fits {
		t.line.Text = t.text
	}
	t.line.Refresh()
	if fits || t.slight || t.size.Width == 0 {
		t.object.Hide()
		return
	}
	t.card.Importance = t.importance
	t.card.SetText(t.text)
	const gap, most = 8, 0.62 // of the sheet's width
	pad := fynetheme.Size(fynetheme.SizeNameInnerPadding)
	w := min(fyne.MeasureText(t.text, look.Text(), fyne.TextStyle{}).Width+4*pad, t.size.Width*most)
	t.card.Resize(fyne.NewSize(w, 0))
	s := fyne.NewSize(w, t.card.MinSize().Height)
	t.card.Resize(s)
	t.ground.Resize(s)
	t.object.Resize(s)
	t.object.Move(t.at.AddXY(t.size.Width-w-gap, t.size.Height-s.Height-gap))
	t.object.Show()
	t.object.Refresh()
}

// place tells where the sheet lies.
func (t *told) place(at fyne.Position, size fyne.Size) {
	if t.at != at || t.size != size {
		t.at, t.size = at, size
		t.write()
	}
}

// fit tells how much room the bar has.
func (t *told) fit(room float32) {
	if t.room != room {
		t.room = room
		t.write()
	}
}

// Tell says what was done, or what can be done now.
func (d *Desk) Tell(m message.Message) {
	d.told.said, d.told.refused, d.told.explained, d.told.passed = m, false, message.Message{}, false
	d.told.show(d.host.Say())
}

// Refuse says why something can't be done; an empty message takes that away.
func (d *Desk) Refuse(m message.Message) {
	d.told.said, d.told.refused, d.told.passed = m, !m.Empty(), false
	d.told.show(d.host.Say())
}

// Says is what was done, why it could not be, or how the figure under the pointer
// came about; and whether it is a refusal.
func (d *Desk) Says() (text string, refused bool) {
	return d.told.news(d.host.Say()), d.told.refused
}

// Under is what is told of the thing under the pointer.
func (d *Desk) Under() string { return d.host.Say().Say(d.told.under) }

// tellChange lets the bar follow the session: it names a step that was made, and
// forgets what it said before anything else that changes.
func (d *Desk) tellChange(c session.Change) {
	if c&^(session.Saved|session.Chosen) == 0 {
		return
	}
	done := message.Message{}
	if c&session.Document != 0 && c&session.Saved != 0 {
		done, _ = d.host.Session().CanUndo()
	}
	d.Tell(done)
}
