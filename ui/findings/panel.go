// Package findings is the panel that lists what the check has found, says what
// to change, and makes the change where the program can.
package findings

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/look"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// Panel lists findings at its left and tells about the chosen one at its right.
type Panel struct {
	Object fyne.CanvasObject
	// OnShow is asked to show where a finding is.
	OnShow func(check.Finding)
	// OnRefuse gets why a change can't be made.
	OnRefuse func(message.Message)

	session *session.Session
	say     func() message.Language
	tell    func(message.Message)
	rows    []check.Finding
	chosen  int // index in rows, -1 for none
	title   *widget.Label
	list    *widget.List
	detail  *fyne.Container
	scroll  *container.Scroll
	quiet   bool
}

// New makes the panel of a session.
func New(s *session.Session, say func() message.Language, tell func(message.Message)) *Panel {
	p := &Panel{say: say, tell: tell, chosen: -1}
	p.title = widget.NewLabel("")
	p.title.TextStyle.Bold = true
	p.list = widget.NewList(func() int { return len(p.rows) }, newRow, p.fillRow)
	p.list.HideSeparators = true
	p.list.OnSelected = p.choose
	p.detail = container.NewStack()
	p.scroll = container.NewVScroll(p.detail)
	split := container.NewHSplit(container.NewBorder(p.title, nil, nil, nil, p.list), p.scroll)
	split.Offset = 0.55
	p.Object = split
	p.Watch(s)
	return p
}

// Watch shows another session from now on.
func (p *Panel) Watch(s *session.Session) {
	p.session, p.chosen = s, -1
	p.list.UnselectAll()
	s.Listen(func(c session.Change) {
		if p.session == s && c&session.Document != 0 {
			p.Update()
		}
	})
	p.Update()
}

// Update lists the findings of the moment. The chosen one stays chosen while it
// is there.
func (p *Panel) Update() {
	var was *check.Finding
	if p.chosen >= 0 && p.chosen < len(p.rows) {
		was = &p.rows[p.chosen]
	}
	rows := p.session.Result().Findings
	p.chosen = -1
	for i := range rows {
		if was != nil && rows[i].Rule == was.Rule && rows[i].Place == was.Place {
			p.chosen = i
			break
		}
	}
	p.rows = rows
	p.title.SetText(p.say().Say(summary(rows)))
	p.list.Refresh()
	p.quiet = true
	if p.chosen >= 0 {
		p.list.Select(p.chosen)
	} else {
		p.list.UnselectAll()
	}
	p.quiet = false
	if p.chosen < 0 || !p.session.InGesture() { // fixes are tried out, which is too much for each move
		p.showDetail()
	}
}

// summary counts the findings in words.
func summary(rows []check.Finding) message.Message {
	var n [3]int
	accepted := 0
	for _, f := range rows {
		if f.Accepted != "" {
			accepted++
		} else {
			n[f.Severity]++
		}
	}
	switch {
	case len(rows) == 0:
		return message.New("Check: nothing found")
	case accepted > 0:
		return message.New("Check – errors: %v, warnings: %v, advice: %v, accepted: %v", n[0], n[1], n[2], accepted)
	default:
		return message.New("Check – errors: %v, warnings: %v, advice: %v", n[0], n[1], n[2])
	}
}

// sign and word tell a severity without colour.
func sign(f check.Finding) (string, message.Message, color.NRGBA) {
	p := look.Current()
	switch {
	case f.Accepted != "":
		return "o", message.New("accepted"), p.Soft
	case f.Severity == check.Error:
		return "×", message.New("error"), p.Error
	case f.Severity == check.Warning:
		return "!", message.New("warning"), p.Warning
	default:
		return "i", message.New("advice"), p.Advice
	}
}

func newRow() fyne.CanvasObject {
	mark := fynecanvas.NewText("×", color.Black)
	mark.TextStyle.Bold = true
	text := widget.NewLabel("")
	text.Truncation = fyne.TextTruncateEllipsis
	return container.NewBorder(nil, nil, container.NewPadded(mark), nil, text)
}

func (p *Panel) fillRow(id widget.ListItemID, o fyne.CanvasObject) {
	if id < 0 || id >= len(p.rows) {
		return
	}
	f := p.rows[id]
	c := o.(*fyne.Container)
	text := c.Objects[0].(*widget.Label)
	mark := c.Objects[1].(*fyne.Container).Objects[0].(*fynecanvas.Text)
	s, word, ink := sign(f)
	mark.Text, mark.Color, mark.TextSize = s+" "+p.say().Say(word), ink, look.Text()
	mark.Refresh()
	text.SetText(p.say().Say(f.Where) + ": " + p.say().Say(f.What))
}

// choose selects what a finding speaks of and tells about it.
func (p *Panel) choose(id widget.ListItemID) {
	if p.quiet || id < 0 || id >= len(p.rows) {
		return
	}
	p.chosen = id
	f := p.rows[id]
	p.session.Select(Subject(f)...)
	if p.OnShow != nil {
		p.OnShow(f)
	}
	p.showDetail()
}

// Choose chooses the next finding (by 1) or the one before (by -1).
func (p *Panel) Choose(by int) {
	if len(p.rows) == 0 {
		return
	}
	next := (p.chosen + by + len(p.rows)) % len(p.rows)
	if p.chosen < 0 {
		next = 0
	}
	p.list.Select(next)
}

// Subject is what a finding is about.
func Subject(f check.Finding) []drawing.Subject {
	switch {
	case f.Place.Cabinet < 0:
		return nil
	case f.Place.Bay < 0:
		return []drawing.Subject{{Kind: drawing.CabinetThing, Place: f.Place}}
	case f.Place.Front < 0:
		return []drawing.Subject{{Kind: drawing.BayThing, Place: f.Place}}
	default:
		return []drawing.Subject{{Kind: drawing.FrontThing, Place: f.Place}}
	}
}

// Fix makes the best change that mends the chosen finding. It is false where
// there is none.
func (p *Panel) Fix() bool {
	if p.chosen < 0 || p.chosen >= len(p.rows) {
		return false
	}
	fixes := layout.Offered(p.session.Committed(), p.session.CommittedResult(), p.rows[p.chosen])
	if len(fixes) == 0 {
		return false
	}
	p.do(fixes[0])
	return true
}

func (p *Panel) do(e edit.Edit) {
	if err := p.session.Do(e); err != nil {
		if p.OnRefuse != nil {
			p.OnRefuse(tool.Said(err))
		}
		return
	}
	p.tell(message.New("Done: %v.", e.Label()))
}
