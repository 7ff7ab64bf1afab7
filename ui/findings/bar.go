package findings

import (
	"cmp"
	"slices"
	"strconv"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/view"
	"frontlay/model/message"
	"frontlay/ui/bar"
	"frontlay/ui/look"
	"frontlay/ui/tip"
)

// chipsBar is the bar of the check: a chip for each rule that has found something,
// how many rules pass, what else the window tells, and the arrow that opens the list.
type chipsBar struct {
	object *fyne.Container
	panel  *Panel
	line   *fynecanvas.Rectangle // above
	head   *fynecanvas.Text
	groups []group
	chips  map[string]*bar.Button // by rule; acceptedChip is that of what is accepted
	shown  []*bar.Button
	sign   *fynecanvas.Image // before passes
	passes *fynecanvas.Text
	told   fyne.CanvasObject // what the window tells
	fit    func(room float32)
	arrow  *bar.Button
}

// group is what one rule has found, or all that is accepted.
type group struct {
	rule     string
	title    message.Message
	severity drawing.Severity
	found    []int // in the findings of the session
}

// The names of chips that are no rule's.
const acceptedChip, goodChip = "accepted", "good"

func newChipsBar(p *Panel) *chipsBar {
	b := &chipsBar{panel: p, chips: map[string]*bar.Button{}, line: &fynecanvas.Rectangle{}, head: fynecanvas.NewText("", nil),
		passes: fynecanvas.NewText("", nil), sign: &fynecanvas.Image{FillMode: fynecanvas.ImageFillContain}, told: container.NewWithoutLayout(), fit: func(float32) {}}
	b.head.TextStyle.Bold = true
	b.arrow = bar.NewButton(bar.Plain, "up", "", p.Turn)
	b.arrow.Tip = func() tip.Text { return p.ArrowTip() }
	b.object = container.New(&chipsLayout{b})
	return b
}

// grouped puts findings together by their rule, the worst first, and what is
// accepted last, as one group.
func grouped(rows []check.Finding) []group {
	var all []group
	at := map[string]int{}
	accepted := group{rule: acceptedChip, title: message.New("accepted"), severity: drawing.OfAccepted}
	for i := range rows {
		f := &rows[i]
		if f.Accepted != "" {
			accepted.found = append(accepted.found, i)
			continue
		}
		k, known := at[f.Rule]
		if !known {
			k = len(all)
			at[f.Rule] = k
			all = append(all, group{rule: f.Rule, title: wrongOf(f.Rule), severity: view.Severity(f)})
		}
		all[k].found = append(all[k].found, i)
	}
	for k := range all { // one alone says its figure
		if f := &rows[all[k].found[0]]; len(all[k].found) == 1 && !f.Flag.Empty() {
			all[k].title = f.Flag
		}
	}
	slices.SortStableFunc(all, func(a, b group) int { return cmp.Compare(a.severity, b.severity) })
	if len(accepted.found) > 0 {
		all = append(all, accepted)
	}
	return all
}

// wrongOf is what is wrong where a rule has found something.
func wrongOf(rule string) message.Message {
	for _, r := range check.Rules() {
		if r.Name == rule {
			return r.Wrong
		}
	}
	return message.Message{}
}

// update shows the findings of the moment.
func (b *chipsBar) update(groups []group) {
	b.groups = groups
	say := b.panel.say()
	on, passing, open := 0, 0, 0
	for _, r := range check.Rules() {
		if b.panel.session.Project().Checks.Severity[r.Name] == check.SeverityOff {
			continue
		}
		on++
		if !slices.ContainsFunc(groups, func(g group) bool { return g.rule == r.Name }) {
			passing++
		}
	}
	b.shown = b.shown[:0]
	for _, g := range groups {
		if g.rule != acceptedChip {
			open++
		}
		c := b.chip(g.rule)
		c.Severity = g.severity
		c.Letter(look.SeverityIcon(g.severity), strconv.Itoa(len(g.found)), say.Say(g.title))
		b.shown = append(b.shown, c)
	}
	if open == 0 {
		c := b.chip(goodChip)
		c.Kind = bar.Good
		fronts, holes := b.panel.counted()
		c.Letter("good", "", say.Say(message.New("%v fronts, %v holes, %v rules: nothing found", fronts, holes, on)))
		b.shown = slices.Insert(b.shown, 0, c)
	}
	b.passes.Text = ""
	if open > 0 {
		b.passes.Text = say.Say(message.New("%v of %v rules pass", passing, on))
	}
	b.head.Text = say.Say(message.New("Check"))
	b.choose()
	b.colour()
	o := []fyne.CanvasObject{b.line, b.head}
	for _, c := range b.shown {
		o = append(o, c)
	}
	o = append(o, b.sign, b.passes, b.told, b.arrow)
	if slices.Equal(o, b.object.Objects) {
		b.object.Layout.Layout(o, b.object.Size())
		return
	}
	b.object.Objects = o
	b.object.Refresh()
}

// chip is that of a rule.
func (b *chipsBar) chip(rule string) *bar.Button {
	c := b.chips[rule]
	if c == nil {
		c = bar.NewButton(bar.Chip, "", "", nil)
		c.OnTapped = func() { b.panel.next(rule) }
		b.chips[rule] = c
	}
	return c
}

// choose marks the chip of the chosen finding, and turns the arrow.
func (b *chipsBar) choose() {
	p := b.panel
	for _, g := range b.groups {
		b.chips[g.rule].Choose(p.chosen >= 0 && slices.Contains(g.found, p.chosen))
	}
	icon := "up"
	if p.Open() {
		icon = "down"
	}
	b.arrow.Letter(icon, "", "")
	b.arrow.Choose(p.Open())
}

// colour takes the colours of the moment.
func (b *chipsBar) colour() {
	p := look.Current()
	b.line.FillColor, b.head.Color, b.passes.Color = p.Line, p.Ink, p.Soft
	b.head.TextSize, b.passes.TextSize = look.Text(), look.Secondary()
	look.SetIcon(b.sign, "good", p.Good, p.OnSign)
	b.line.Refresh()
	b.head.Refresh()
	b.passes.Refresh()
}

// chipsLayout is one row: where it is too narrow the chips are a sign and a count,
// those of the least findings first.
type chipsLayout struct{ bar *chipsBar }

// Rooms in the bar, in units of the screen.
const (
	barPad   = 14
	chipGap  = 8
	toldPart = 0.22 // of the bar, which is kept for what the window tells
)

// barHeight is how high the bar of the check is.
func barHeight() float32 { return max(36, bar.ChipHeight()+10) }

// MinSize is that of the chips without words, and of the arrow.
func (l *chipsLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(0, barHeight())
}

// Layout leaves out what has no room.
func (l *chipsLayout) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	b := l.bar
	arrow := b.arrow.MinSize()
	head := b.head.MinSize().Width + chipGap
	sign := look.IconSize() * 0.8
	passes := float32(0)
	if b.passes.Text != "" {
		passes = sign + chipGap/2 + b.passes.MinSize().Width + chipGap
	}
	room := s.Width - 2*barPad - arrow.Width
	short := make([]bool, len(b.shown))
	chips := float32(0)
	for _, c := range b.shown {
		chips += c.Width(false) + chipGap
	}
	told := room * toldPart
	narrow := func() bool { return head+chips+passes+told > room }
	shorten := func(i int) {
		if c := b.shown[i]; c.Kind == bar.Chip && narrow() {
			short[i] = true
			chips += c.Width(true) - c.Width(false)
		}
	}
	for i := len(b.shown) - 1; i > 1; i-- {
		shorten(i)
	}
	if narrow() { // the worst keep their words longest
		passes = 0
	}
	for i := min(len(b.shown), 2) - 1; i >= 0; i-- {
		shorten(i)
	}
	for i, c := range b.shown { // what long names have freed is for the next that is short, not for a lesser one
		more := c.Width(false) - c.Width(true)
		if short[i] && head+chips+more+passes+told > room {
			break
		}
		if short[i] {
			short[i] = false
			chips += more
		}
	}
	if more := b.shown[0].Width(false) - b.shown[0].Width(true); short[0] && chips+more <= room {
		short[0], told = false, 0 // the worst finding has its words before anything is told
		chips += more
	}
	if head+chips+told > room {
		head = 0
	}
	for i, c := range b.shown {
		c.Short(short[i])
	}
	put := func(o fyne.CanvasObject, x, w, h float32) {
		o.Resize(fyne.NewSize(w, h))
		o.Move(fyne.NewPos(x, (s.Height-h)/2))
	}
	b.line.Resize(fyne.NewSize(s.Width, 1))
	b.line.Move(fyne.Position{})
	x := float32(barPad)
	b.head.Hidden = head == 0
	put(b.head, x, head, b.head.MinSize().Height)
	x += head
	for _, c := range b.shown {
		size := c.MinSize()
		c.Hidden = x+size.Width > s.Width-barPad-arrow.Width // no room even for its sign: the list has it
		put(c, x, size.Width, size.Height)
		x += size.Width + chipGap
	}
	b.sign.Hidden, b.passes.Hidden = passes == 0, passes == 0
	if passes > 0 {
		put(b.sign, x, sign, sign)
		put(b.passes, x+sign+chipGap/2, b.passes.MinSize().Width, b.passes.MinSize().Height)
		x += passes
	}
	right := s.Width - barPad - arrow.Width
	put(b.arrow, s.Width-barPad-arrow.Width+6, arrow.Width, arrow.Height)
	b.fit(max(right-x-2*chipGap, 0))
	size := b.told.MinSize()
	put(b.told, right-chipGap/2-size.Width, size.Width, size.Height)
}
