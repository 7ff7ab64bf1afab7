// Package findings is the bar that tells what the check has found and the list that
// says what to change, and makes the change where the program can.
package findings

import (
	"image/color"
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/view"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/bar"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/session"
	"frontlay/ui/tip"
	"frontlay/ui/tool"
)

// Panel is the bar of the check below the drawing, and the list that it opens over
// the drawing's lower part, which does not move. The list tells about the chosen
// finding at its right.
type Panel struct {
	Object fyne.CanvasObject // it lies over the drawing and is as large, with the bar below
	// OnShow is asked to show where a finding is.
	OnShow func(check.Finding)
	// OnRefuse gets why a change can't be made.
	OnRefuse func(message.Message)
	// OnTurn is told that the list was opened or closed.
	OnTurn func()
	// ArrowTip is what the tip of the arrow says.
	ArrowTip func() tip.Text

	session *session.Session
	say     func() message.Language
	tell    func(message.Message)
	rows    []check.Finding
	chosen  int // index in rows, -1 for none
	bar     *chipsBar
	sheet   *fyne.Container // with the list
	ground  *fynecanvas.Rectangle
	between *fynecanvas.Rectangle
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
	p := &Panel{say: say, tell: tell, chosen: -1, ArrowTip: func() tip.Text { return tip.Text{} }}
	p.bar = newChipsBar(p)
	p.list = newList(p)
	p.nothing = paragraph(widget.MediumImportance)
	p.detail = newDetail()
	var right fyne.CanvasObject
	p.scroll, right = field.Scrolled(p.detail.column)
	p.ground, p.between = &fynecanvas.Rectangle{StrokeWidth: 1, CornerRadius: 5}, &fynecanvas.Rectangle{}
	p.sheet = container.New(sheetLayout{}, p.ground, container.NewStack(container.NewVScroll(p.nothing), p.list), p.between, right)
	p.sheet.Hide()
	p.Object = container.New(overLayout{}, p.sheet, p.bar.object)
	p.Watch(s)
	return p
}

// Beside puts what the window tells into the bar; fit is told how much room that
// has there.
func (p *Panel) Beside(o fyne.CanvasObject, fit func(room float32)) {
	p.bar.told, p.bar.fit = o, fit
	p.bar.update(p.bar.groups)
}

// overLayout puts the bar below and the list over the lower part of what is left.
type overLayout struct{}

// listPart is how much of the drawing's height the list covers, and listInset how far
// it stays from its edges, in units of the screen.
const listPart, listInset = 0.4, 4

// Layout places both, the list where it is open: its rows are measured then.
func (overLayout) Layout(o []fyne.CanvasObject, s fyne.Size) {
	high := barHeight()
	o[1].Move(fyne.NewPos(0, s.Height-high))
	o[1].Resize(fyne.NewSize(s.Width, high))
	if !o[0].Visible() {
		return
	}
	part := (s.Height - high) * listPart
	o[0].Move(fyne.NewPos(listInset, s.Height-high-listInset-part))
	o[0].Resize(fyne.NewSize(s.Width-2*listInset, part))
}

// MinSize is that of the bar: the list lies over the drawing.
func (overLayout) MinSize(o []fyne.CanvasObject) fyne.Size { return o[1].MinSize() }

// sheetLayout puts the list at the left and what is told of a finding at the right.
type sheetLayout struct{}

// Layout places both on their ground.
func (sheetLayout) Layout(o []fyne.CanvasObject, s fyne.Size) {
	const pad, left = 4, 0.6 // of the width
	at := s.Width * left
	o[0].Resize(s)
	o[1].Move(fyne.NewPos(pad, pad))
	o[1].Resize(fyne.NewSize(at-2*pad, s.Height-2*pad))
	o[2].Move(fyne.NewPos(at, 0))
	o[2].Resize(fyne.NewSize(1, s.Height))
	o[3].Move(fyne.NewPos(at+pad, pad))
	o[3].Resize(fyne.NewSize(s.Width-at-2*pad, s.Height-2*pad))
}

// MinSize is none: the list has what the drawing gives it.
func (sheetLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.Size{} }

// Open tells whether the list is open.
func (p *Panel) Open() bool { return p.sheet.Visible() }

// Enter brings the keyboard to what was found: to the list where that is open, else to
// the first chip.
func (p *Panel) Enter() {
	c := field.CanvasOf(p.bar.object)
	switch {
	case c == nil:
	case p.Open() && p.list.Visible():
		c.Focus(p.list)
	default:
		c.Focus(p.bar.shown[0])
	}
}

// Holds tells that what has the keyboard is the bar's or the list's.
func (p *Panel) Holds(f fyne.Focusable) bool {
	chip, ok := f.(*bar.Button)
	return f == fyne.Focusable(p.list) || slices.Contains(p.answers, f) || ok && (chip == p.bar.arrow || slices.Contains(p.bar.shown, chip))
}

// Turn opens the list, with the keyboard in it, or closes it.
func (p *Panel) Turn() {
	if p.Open() {
		p.Close()
		return
	}
	p.sheet.Show()
	p.Object.Refresh() // gives it its place
	p.Update()
	if c := field.CanvasOf(p.bar.object); c != nil && p.list.Visible() {
		c.Focus(p.list)
	}
	p.turned()
}

// Close closes the list; the keyboard goes back to the drawing.
func (p *Panel) Close() {
	if !p.Open() {
		return
	}
	if c := field.CanvasOf(p.bar.object); c != nil && (c.Focused() == fyne.Focusable(p.list) || slices.Contains(p.answers, c.Focused())) {
		c.Unfocus()
	}
	p.sheet.Hide()
	p.turned()
}

func (p *Panel) turned() {
	p.bar.choose()
	p.Object.Refresh()
	if p.OnTurn != nil {
		p.OnTurn()
	}
}

// Watch shows another session from now on.
func (p *Panel) Watch(s *session.Session) {
	p.session, p.chosen = s, -1
	p.tellOf(nil)
	p.list.UnselectAll()
	s.Listen(func(c session.Change) {
		if p.session == s && (c&session.Document != 0 || c&session.Chosen != 0 && s.ChosenFinding() != p.chosen) {
			p.Update()
		}
	})
	p.Update()
}

// Update lists the findings of the moment. The chosen one stays chosen while it
// is there.
func (p *Panel) Update() {
	rows := p.session.Result().Findings
	was := p.chosen
	other := (len(p.rows) == 0) != (len(rows) == 0) // what is said where none is chosen
	p.rows, p.chosen = rows, p.session.ChosenFinding()
	groups := grouped(rows)
	p.list.take(groups)
	p.colour()
	p.bar.update(groups)
	p.showNothing()
	if p.Open() {
		if !p.session.InGesture() { // heights are too much for each move
			p.list.measure()
		}
		if p.list.Visible() {
			p.list.Refresh()
		}
	}
	p.mark()
	lost := was >= 0 && p.chosen < 0
	if lost || other || !p.session.InGesture() { // fixes are tried out, which is too much for each move
		p.showDetail()
	}
}

// mark shows in the list which finding is chosen.
func (p *Panel) mark() {
	p.quiet = true
	if at := p.list.rowOf(p.chosen); at >= 0 {
		p.list.Select(at)
	} else {
		p.list.UnselectAll()
	}
	p.quiet = false
}

// colour takes the colours of the moment.
func (p *Panel) colour() {
	c := look.Current()
	p.ground.FillColor, p.ground.StrokeColor, p.between.FillColor = c.Panel, c.FieldEdge, c.Line
	p.ground.Refresh()
	p.between.Refresh()
}

// Sign tells how bad a finding is: by a sign, by a word, and by a colour.
func Sign(f *check.Finding) (string, message.Message, color.NRGBA) {
	sign, ink := look.Current().Severity(view.Severity(f))
	if f.Accepted != "" {
		return sign, message.New("accepted"), ink
	}
	return sign, f.Severity.Word(), ink
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
	fronts, holes := p.counted()
	text := p.say().Say(message.New("Checked – fronts: %v, holes in them: %v, rules: %v of %v.", fronts, holes, on, len(rules)))
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

// counted is how many fronts there are, and how many holes in them.
func (p *Panel) counted() (fronts, holes int) {
	all := p.session.Result().Plan.Fronts
	for i := range all {
		holes += len(all[i].Holes)
	}
	return len(all), holes
}

// choose selects what a finding speaks of and tells about it.
func (p *Panel) choose(i int) {
	f := p.rows[i]
	p.session.Select(Subject(f)...)
	p.session.ChooseFinding(i)
	p.chosen = i
	p.mark()
	p.bar.choose()
	if p.OnShow != nil {
		p.OnShow(f)
	}
	p.list.show(p.list.rowOf(i))
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

// Choose chooses the next finding (by 1) or the one before (by -1), in the order of
// the list.
func (p *Panel) Choose(by int) {
	order := p.list.order
	if len(order) == 0 {
		return
	}
	at := slices.Index(order, p.chosen)
	if at < 0 {
		at = min(-by, 0) // from none the next one is the first
	}
	p.choose(order[(at+by+len(order))%len(order)])
}

// next goes to the next place of what a chip stands for; the chip of nothing found
// opens the list, which says what was looked at.
func (p *Panel) next(rule string) {
	for _, g := range p.bar.groups {
		if g.rule == rule {
			at := slices.Index(g.found, p.chosen)
			p.choose(g.found[(at+1)%len(g.found)])
			return
		}
	}
	p.Turn()
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
	fixes := p.session.Offered(p.rows[p.chosen])
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
