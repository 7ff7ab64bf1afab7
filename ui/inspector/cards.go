package inspector

import (
	"cmp"
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/tool"
)

// cards tell what the check has found about what is selected, one finding each: what
// is wrong, what to do, and buttons that do it. They stay where they are when another
// thing is selected, so that one that is pressed meanwhile is still there.
type cards struct {
	panel *Panel
	all   []*card
	gone  []*card // those before the panel was made anew
	box   *fyne.Container
	shown []check.Finding
}

// card is the place of one finding.
type card struct {
	box            *fyne.Container
	back, bar      *fynecanvas.Rectangle
	sign           *fynecanvas.Image
	title          *field.Words
	what           *field.Label
	mend, more     *field.Words
	accept, revoke *field.Words
	reason         *field.Text
	keep           *field.Button // accepts for the reason
	why            *fyne.Container
	of             check.Finding
}

func newCards(p *Panel) *cards { return &cards{panel: p, box: field.Column()} }

// newCard makes a card with its look of the moment.
func (c *cards) newCard() *card {
	p := c.panel
	one := &card{
		back: fynecanvas.NewRectangle(nil), bar: fynecanvas.NewRectangle(nil), sign: &fynecanvas.Image{FillMode: fynecanvas.ImageFillContain},
		title: field.NewSaying("", nil), what: field.NewLabel(""),
		mend:   field.NewAct("", fynetheme.ColorNameError, fynetheme.ColorNameForegroundOnError, nil),
		more:   field.NewLink("", nil),
		accept: field.NewLink(p.text("Accept…"), nil), revoke: field.NewLink(p.text("No longer accept it"), nil),
		reason: field.NewText(p.text("reason to accept it, kept and printed")), keep: field.NewButton(p.text("Accept"), nil),
	}
	one.what.Wrapping = fyne.TextWrapWord
	one.back.CornerRadius, one.bar.CornerRadius = 4, 2
	one.why = field.Column(one.reason, container.NewHBox(one.keep))
	one.why.Hide()
	one.title.OnTapped = func() { c.choose(one) }
	one.revoke.OnTapped = func() {
		c.do(edit.AcceptFinding{Finding: check.Acceptance(p.session.Committed(), &one.of), Revoke: true})
	}
	one.accept.OnTapped = func() {
		one.why.Show()
		one.accept.Hide()
		p.place()
		if canvas := field.CanvasOf(one.box); canvas != nil {
			canvas.Focus(one.reason)
		}
	}
	accept := func() {
		a := check.Acceptance(p.session.Committed(), &one.of)
		a.Reason = one.reason.Text
		c.do(edit.AcceptFinding{Finding: a})
	}
	one.keep.OnTapped, one.reason.OnSubmitted = accept, func(string) { accept() }
	head := container.New(signed{}, one.sign, one.title)
	acts := field.Flow(8, one.mend, one.more, one.accept, one.revoke)
	one.box = container.New(edged{}, one.back, one.bar, field.Column(head, one.what, acts, one.why))
	return one
}

// update tells of the findings of the moment about some places.
func (c *cards) update(at []model.Place) {
	p := c.panel
	defer c.keepFocus()()
	c.shown = nil
	chosen := p.session.ChosenFinding()
	var of *check.Finding
	for i, f := range p.session.Result().Findings {
		if slices.Contains(at, f.Place) {
			c.shown = append(c.shown, f)
			if i == chosen {
				of = &f
			}
		}
	}
	slices.SortStableFunc(c.shown, func(a, b check.Finding) int { return cmp.Compare(rank(&a), rank(&b)) })
	for len(c.all) < len(c.shown) {
		one := c.newCard()
		c.all = append(c.all, one)
	}
	c.box.Objects = nil
	open := max(slices.IndexFunc(c.shown, func(f check.Finding) bool { return of != nil && same(&f, of) }), 0)
	for i, f := range c.shown {
		c.tell(c.all[i], f, len(at) > 1, i == open && f.Accepted == "" || of != nil && i == open)
		c.box.Objects = append(c.box.Objects, c.all[i].box, field.Spacer(6))
	}
}

// rank is how bad a finding is, what is accepted last.
func rank(f *check.Finding) int {
	if f.Accepted != "" {
		return int(check.Advice) + 1
	}
	return int(f.Severity)
}

// same tells that two findings are one.
func same(a, b *check.Finding) bool {
	return a.Rule == b.Rule && a.Place == b.Place && a.What.String() == b.What.String()
}

// tell makes a card tell of a finding: all of it where it is the one that is chosen or
// comes first, else only what is wrong, so that the figures below stay in sight.
// several tells that it is about one of several things.
func (c *cards) tell(one *card, f check.Finding, several, open bool) {
	say := c.panel.say()
	if f.Rule != one.of.Rule || f.Place != one.of.Place || f.Accepted != one.of.Accepted {
		one.reason.SetText("")
		one.why.Hide()
	}
	one.of = f
	palette := look.Current()
	severity := view.Severity(&f)
	fill, on := fynetheme.ColorNamePrimary, fynetheme.ColorNameForegroundOnPrimary
	switch severity {
	case drawing.OfError:
		fill, on = fynetheme.ColorNameError, fynetheme.ColorNameForegroundOnError
	case drawing.OfWarning:
		fill, on = fynetheme.ColorNameWarning, fynetheme.ColorNameForegroundOnWarning
	}
	_, ink := palette.Severity(severity)
	one.back.FillColor, one.bar.FillColor = palette.Tint(severity), ink
	one.back.StrokeColor, one.back.StrokeWidth = palette.Line, 1
	look.SetIcon(one.sign, look.SeverityIcon(severity), ink, palette.OnSign)
	one.mend.Fill(fill, on)
	what := say.Sentence(f.What)
	if several {
		what = say.Say(message.New("%v: %v", f.Where, f.What))
	}
	one.title.SetText(what)
	one.what.SetText(say.Sentence(f.Change))
	if f.Accepted != "" {
		one.what.SetText(say.Say(message.New("Accepted: %v", f.Accepted)))
	}
	c.fixes(one, f, open)
	if !open {
		one.why.Hide()
	}
	show(one.revoke, open && f.Accepted != "")
	show(one.accept, open && f.Accepted == "" && !one.why.Visible())
	show(one.what, open && one.what.Text != "")
}

func show(o fyne.CanvasObject, on bool) {
	if on {
		o.Show()
	} else {
		o.Hide()
	}
}

// fixes gives a card the changes that mend its finding: the best on a button, the
// others in a list.
func (c *cards) fixes(one *card, f check.Finding, open bool) {
	p := c.panel
	var all []edit.Edit
	if open && f.Accepted == "" {
		all = p.session.Offered(f)
	}
	show(one.mend, len(all) > 0)
	show(one.more, len(all) > 1)
	if len(all) == 0 {
		return
	}
	one.mend.SetText(p.say().Say(message.New("Mend: %v", c.mending(all[0], f))))
	one.mend.OnTapped = func() { c.do(all[0]) }
	one.more.SetText(p.text("%v more ways", len(all)-1))
	if len(all) == 2 {
		one.more.SetText(p.text("1 more way"))
	}
	one.more.OnTapped = func() {
		menu := fyne.NewMenu("")
		for _, e := range all[1:] {
			menu.Items = append(menu.Items, fyne.NewMenuItem(p.say().Say(c.mending(e, f)), func() { c.do(e) }))
		}
		if canvas := field.CanvasOf(one.more); canvas != nil {
			at := fyne.CurrentApp().Driver().AbsolutePositionForObject(one.more)
			widget.ShowPopUpMenuAtPosition(menu, canvas, at.AddXY(0, one.more.Size().Height))
		}
	}
}

// mending says what a change does, with the figure that the advice tells, and the front
// that it is made at where that is another one.
func (c *cards) mending(e edit.Edit, f check.Finding) message.Message {
	m := e.Label()
	if placed, ok := e.(edit.Placed); ok && placed.Place() != f.Place {
		if other := c.panel.session.CommittedResult().Plan.FrontAt(placed.Place()); other != nil {
			return message.New("%v: %v", other.Name, m)
		}
	}
	return m
}

// choose makes the finding of a card the one that the window tells of.
func (c *cards) choose(one *card) {
	s := c.panel.session
	for i, f := range s.Result().Findings {
		if same(&f, &one.of) {
			s.ChooseFinding(i)
		}
	}
}

// do makes a change and tells where it can't be made.
func (c *cards) do(e edit.Edit) {
	if err := c.panel.session.Do(e); err != nil {
		c.panel.tell(tool.Said(err))
	}
}

// keepFocus brings the keyboard from a card that is gone, or made anew, to the same
// part of the one in its place; where that has none it is taken away, as what is not
// seen would take keys.
func (c *cards) keepFocus() func() {
	canvas := field.CanvasOf(c.panel.Object)
	if canvas == nil || canvas.Focused() == nil {
		return func() {}
	}
	has := canvas.Focused().(fyne.CanvasObject)
	for _, all := range [][]*card{c.all, c.gone} {
		for i, one := range all {
			k := slices.Index(one.parts(), has)
			if k < 0 {
				continue
			}
			return func() {
				if i < len(c.shown) {
					if o := c.all[i].parts()[k]; o.Visible() && (k < reasonPart || c.all[i].why.Visible()) {
						canvas.Focus(o.(fyne.Focusable))
						return
					}
				}
				canvas.Unfocus()
			}
		}
	}
	return func() {}
}

// reasonPart is the first of a card's parts that its reason shows and hides.
const reasonPart = 5

// parts are what can have the focus in a card.
func (one *card) parts() []fyne.CanvasObject {
	return []fyne.CanvasObject{one.title, one.mend, one.more, one.accept, one.revoke, one.reason, one.keep}
}

// hide takes all cards away, or shows them again.
func (c *cards) hide(on bool) { c.box.Hidden = on }

// worst is the worst of what is open; nil: nothing is.
func (c *cards) worst() *check.Finding {
	var worst *check.Finding
	for i := range c.shown {
		if f := &c.shown[i]; f.Accepted == "" && (worst == nil || f.Severity < worst.Severity) {
			worst = f
		}
	}
	return worst
}

// signed puts a sign before the first line of words.
type signed struct{}

func (signed) Layout(o []fyne.CanvasObject, s fyne.Size) {
	side := iconSize().Width
	o[0].Move(fyne.NewPos(2, 1))
	o[0].Resize(iconSize())
	o[1].Move(fyne.NewPos(side+6, 0))
	o[1].Resize(fyne.NewSize(s.Width-side-6, s.Height))
}

func (signed) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(o[1].MinSize().Width+iconSize().Width+6, max(o[1].MinSize().Height, iconSize().Height+2))
}

// edged puts a bar at the left edge of a surface, and what is told beside it.
type edged struct{}

const cardBar, cardPad = 4, 8

func (edged) Layout(o []fyne.CanvasObject, s fyne.Size) {
	o[0].Resize(s)
	o[1].Resize(fyne.NewSize(cardBar, s.Height))
	o[2].Move(fyne.NewPos(cardBar+cardPad, cardPad))
	o[2].Resize(fyne.NewSize(s.Width-cardBar-2*cardPad, s.Height-2*cardPad))
}

func (edged) MinSize(o []fyne.CanvasObject) fyne.Size {
	return o[2].MinSize().AddWidthHeight(cardBar+2*cardPad, 2*cardPad)
}
