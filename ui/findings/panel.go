// Package findings is the panel that lists what the check has found, says what
// to change, and makes the change where the program can.
package findings

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/view"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/field"
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
	title   *field.Label
	list    *list
	nothing *field.Label // stands where the list is, while that is empty
	detail  detail
	scroll  *container.Scroll
	quiet   bool
	answers []fyne.Focusable // what the detail can be told, in its order
	told    told
}

// New makes the panel of a session.
func New(s *session.Session, say func() message.Language, tell func(message.Message)) *Panel {
	p := &Panel{say: say, tell: tell, chosen: -1}
	p.title = field.NewLabel("")
	p.title.TextStyle.Bold = true
	p.title.Wrapping = fyne.TextWrapWord
	p.list = newList(p)
	p.nothing = paragraph(widget.MediumImportance)
	p.detail = newDetail()
	var right fyne.CanvasObject
	p.scroll, right = field.Scrolled(p.detail.column)
	empty := container.NewVScroll(p.nothing)
	split := container.NewHSplit(container.NewBorder(p.title, nil, nil, nil, container.NewStack(empty, p.list)), right)
	split.Offset = 0.55
	p.Object = split
	p.Watch(s)
	return p
}

// Watch shows another session from now on.
func (p *Panel) Watch(s *session.Session) {
	p.session, p.chosen = s, -1
	p.tellOf(nil)
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
	other := (len(p.rows) == 0) != (len(rows) == 0) // what is said where none is chosen
	p.chosen = -1
	for i := range rows {
		if was != nil && rows[i].Rule == was.Rule && rows[i].Place == was.Place {
			p.chosen = i
			break
		}
	}
	p.rows = rows
	p.title.SetText(p.say().Say(summary(rows)))
	p.showNothing()
	if !p.session.InGesture() { // heights are too much for each move
		p.list.measure()
	}
	if p.list.Visible() {
		p.list.Refresh()
	}
	p.quiet = true
	if p.chosen >= 0 {
		p.list.Select(p.chosen)
	} else {
		p.list.UnselectAll()
	}
	p.quiet = false
	lost := was != nil && p.chosen < 0
	if lost || other || !p.session.InGesture() { // fixes are tried out, which is too much for each move
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

// Sign tells how bad a finding is: by a sign, by a word, and by a colour.
func Sign(f *check.Finding) (string, message.Message, color.NRGBA) {
	sign, ink := look.Current().Severity(view.Severity(f))
	if f.Accepted != "" {
		return sign, message.New("accepted"), ink
	}
	return sign, f.Severity.Word(), ink
}

// rowText says what is wrong where.
func (p *Panel) rowText(i int) string {
	f := p.rows[i]
	return p.say().Say(f.Where) + ": " + p.say().Say(f.What)
}

// markWidth is the room for the sign and word of any severity.
func (p *Panel) markWidth() float32 {
	w := float32(0)
	for _, f := range []check.Finding{{Accepted: "-"}, {Severity: check.Error}, {Severity: check.Warning}, {Severity: check.Advice}} {
		s, word, _ := Sign(&f)
		w = max(w, fyne.MeasureText(s+" "+p.say().Say(word), look.Text(), fyne.TextStyle{Bold: true}).Width)
	}
	return w + fynetheme.Size(fynetheme.SizeNameInnerPadding)
}

func (p *Panel) fillRow(id widget.ListItemID, o fyne.CanvasObject) {
	if id < 0 || id >= len(p.rows) {
		return
	}
	c := o.(*fyne.Container)
	mark, text := c.Objects[0].(*fynecanvas.Text), c.Objects[1].(*field.Label)
	s, word, ink := Sign(&p.rows[id])
	mark.Text, mark.Color, mark.TextSize = s+" "+p.say().Say(word), ink, look.Text()
	mark.Refresh()
	if l, w := c.Layout.(*rowLayout), p.markWidth(); l.mark != w {
		l.mark = w
		l.Layout(c.Objects, c.Size())
	}
	if t := p.rowText(id); text.Text != t {
		text.SetText(t)
	}
}

// showNothing tells in the place of an empty list what was looked at.
func (p *Panel) showNothing() {
	if len(p.rows) > 0 {
		if p.nothing.Visible() {
			p.nothing.Hide()
			p.list.Show()
		}
		return
	}
	on := 0
	rules := check.Rules()
	for _, r := range rules {
		if p.session.Project().Checks.Severity[r.Name] != check.SeverityOff {
			on++
		}
	}
	fronts, holes := p.session.Result().Plan.Fronts, 0
	for i := range fronts {
		holes += len(fronts[i].Holes)
	}
	text := p.say().Say(message.New("Checked – fronts: %v, holes in them: %v, rules: %v of %v.", len(fronts), holes, on, len(rules)))
	if p.nothing.Text != text {
		p.nothing.SetText(text)
	}
	if p.list.Visible() || !p.nothing.Visible() {
		p.nothing.Show()
		if c := field.CanvasOf(p.list); c != nil && c.Focused() == fyne.Focusable(p.list) {
			c.Unfocus() // hidden, it would take keys unseen
		}
		p.list.Hide() // nothing to choose: Tab passes it by
	}
}

// choose selects what a finding speaks of and tells about it.
func (p *Panel) choose(id widget.ListItemID) {
	if p.quiet || id < 0 || id >= len(p.rows) {
		return
	}
	p.chosen = id
	f := p.rows[id]
	p.session.Select(Subject(f)...)
	p.session.ChooseFinding(id)
	if p.OnShow != nil {
		p.OnShow(f)
	}
	p.list.show(id)
	p.showDetail()
}

// enter goes on from the list: to the first finding, or from the chosen one to
// what can be done about it.
func (p *Panel) enter() {
	if p.chosen < 0 {
		p.Choose(1)
		return
	}
	if c := field.CanvasOf(p.list); c != nil && len(p.answers) > 0 {
		c.Focus(p.answers[0])
	}
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
