package sheet

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Heights of the drawings of a shop sheet: what they have at least beside
// everything else, what they have where the rest goes on on a second page, and what
// makes room for it where there is one.
const (
	leastShopPicture = 62 * length.Millimetre
	halfShopPicture  = 120 * length.Millimetre
	fineShopPicture  = 85 * length.Millimetre
)

// shop is the sheet of a cabinet and of all that are like it.
type shop struct {
	o        Options
	equal    []*plan.Cabinet // the first is drawn
	p        *plan.Plan      // of the whole run
	own, all *plan.Plan      // of the first alone; with the fronts of all, for lists
	found    []check.Finding // about them, not accepted
	jig      *jigTable
}

// shopPart is a part of the sheet that stays in one: its height, and what writes it from
// a y downwards.
type shopPart struct {
	high length.Length
	draw func(d *draft, top length.Length)
}

// shopPages make a sheet for each cabinet, one page or two; cabinets that are the
// same share it. They tell which lists have what there was no room for.
func shopPages(p *plan.Plan, findings []check.Finding, o Options) (pages []Page, left map[Part]bool) {
	left = map[Part]bool{}
	open := slices.DeleteFunc(slices.Clone(findings), func(f check.Finding) bool { return f.Accepted != "" })
	for i, equal := range gathered(p.Cabinets, func(c *plan.Cabinet) string { return sameCabinet(p, c) }) {
		s := &shop{o: o, equal: equal, p: p, own: alone(p, equal[:1]), all: alone(p, equal)}
		for _, f := range open {
			ofRun := f.Place.Cabinet < 0 && i == 0
			if ofRun || slices.ContainsFunc(equal, func(c *plan.Cabinet) bool { return c.Place.Cabinet == f.Place.Cabinet }) {
				s.found = append(s.found, f)
			}
		}
		pages = append(pages, s.pages(left)...)
	}
	return pages, left
}

// alone is the plan of some cabinets for lists: the fronts of all, and the extent of the
// first. Places stay those of the whole.
func alone(p *plan.Plan, some []*plan.Cabinet) *plan.Plan {
	own := &plan.Plan{Project: p.Project, Extent: some[0].Outline}
	for i, c := range some {
		for _, b := range c.Bays {
			own.Fronts = append(own.Fronts, p.Fronts[b.First:b.First+b.Count]...)
		}
		if i > 0 {
			continue
		}
		own.Extent = c.Around()
		for k := range own.Fronts {
			own.Extent = own.Extent.Union(own.Fronts[k].Face)
		}
	}
	return own
}

// sameCabinet holds all that a shop sheet tells of a cabinet but names and numbers.
func sameCabinet(p *plan.Plan, c *plan.Cabinet) string {
	var b strings.Builder
	from := plane.Point{}.Sub(c.Outline.Min)
	fmt.Fprintln(&b, c.Outline.Move(from), c.Plinth.Height(), c.Depth, p.Project.Cabinets[c.Place.Cabinet].Depth, c.Mount)
	for _, r := range c.Beside {
		fmt.Fprintln(&b, r.Kind, r.Rect.Move(from))
	}
	for _, r := range p.Boards(c.Place.Cabinet) {
		if r.Kind != plan.PlinthBoard { // it may run under several
			fmt.Fprintln(&b, r.Kind, r.Rect.Move(from), r.Near, r.Far)
		}
	}
	fmt.Fprintln(&b, len(c.Feet), p.Project.Cabinets[c.Place.Cabinet].Base)
	for i := range c.Bays {
		fmt.Fprintln(&b, "bay", c.Bays[i].Opening.Move(from), c.Bays[i].Count, sameBay(p, &c.Bays[i], from))
	}
	return b.String()
}

// sameBay holds what is shown of the fronts that cover a bay, moved to where they are
// compared.
func sameBay(p *plan.Plan, b *plan.Bay, by plane.Point) string {
	var s strings.Builder
	for _, k := range b.Column {
		f := &p.Fronts[k]
		fmt.Fprintln(&s, f.Kind, f.Face.Move(by), f.Clear.Height(), f.Thickness, f.Inset, f.Fitted, sameCorners(f), middleKey(f), handleKey(f))
		if f.Fitted {
			fmt.Fprintln(&s, f.Sheet.Name, f.Height.Name, f.Drop, f.Runner.Start, f.Runner.Length, f.Drawer.Body.Move(by), f.Drawer.Bottom.Move(by), f.Opening.Width())
		}
		for g := range f.Drawers() {
			if g.Nth > 0 || f.HasPacking() {
				fmt.Fprintln(&s, g.Nth, g.Height.Name, g.Drop, g.Runner.Start, g.Runner.Length, g.Drawer.Body.Move(by), g.Packing)
			}
		}
	}
	return s.String()
}

// pages lay out the sheet: on one page where its drawings keep the least height, else
// on two; what has no room on two either is left to the list of it.
func (s *shop) pages(left map[Part]bool) []Page {
	first := s.page(false)
	foot := s.foot(first)
	low := first.area.Min.Y + pageNumber + foot.high
	s.jig = newJigTable(s.all, first.area.Width(), (first.area.Height()-foot.high-pageNumber)/2, s.o)
	jig, lists, found := s.jigPieces(first), s.lists(first), s.findings(first)
	top := s.head(first)
	for _, try := range []struct {
		found  []shopPart
		sketch bool
		least  length.Length
	}{{found, true, fineShopPicture}, {found, false, leastShopPicture}, {nil, true, fineShopPicture}, {nil, false, leastShopPicture}} {
		all := slices.Concat(lists, try.found)
		if len(jig) > 0 {
			all = slices.Concat([]shopPart{s.jigHead(first, try.sketch)}, jig, all)
		}
		if rest := heightOf(all); rest+max(try.least, s.legible()) <= top-low {
			s.drawings(first, plane.R(first.area.Min.X, low+rest, first.area.Max.X, top))
			put(first, all, low+rest)
			foot.draw(first, low)
			left[Findings] = left[Findings] || len(try.found) < len(found)
			return []Page{first.finish()}
		}
	}
	return s.twoPages(first, top, low, jig, lists, found, left)
}

func (s *shop) twoPages(first *draft, top, low length.Length, jig, lists, found []shopPart, left map[Part]bool) []Page {
	second := s.page(true)
	foot := s.foot(first)
	again := s.head(second)
	fits := func(room length.Length, from []shopPart) (n int) {
		for h := length.Length(0); n < len(from); n++ {
			if h += from[n].high; h > room {
				break
			}
		}
		return n
	}
	if heightOf(lists) > again-low {
		lists, left[CutList], left[HardwareList] = []shopPart{s.note(first, message.New("Fronts to cut and hardware to order: see the cut list and the hardware list."))}, true, true
	}
	head, goesOn := s.jigHead(first, false), s.jigHead(second, false)
	picture := min(halfShopPicture, (top-low)/2)
	n := fits(top-picture-low-head.high, jig)
	if n < len(jig) && heightOf(jig[n:])+goesOn.high+heightOf(lists) > again-low {
		jig, left[JigSettings] = []shopPart{s.note(first, message.New("Jig settings: there is no room for them here, see their own pages."))}, true
		head, n = shopPart{draw: func(*draft, length.Length) {}}, 1
	}
	here, there := jig[:n], jig[n:]
	if n > 0 {
		here = append([]shopPart{head}, here...)
	}
	if len(there) > 0 {
		there = append([]shopPart{goesOn}, there...)
	}
	if len(there) == 0 && heightOf(here)+heightOf(lists)+leastShopPicture <= top-low {
		here, lists = append(here, lists...), nil
	}
	s.drawings(first, plane.R(first.area.Min.X, low+heightOf(here), first.area.Max.X, top))
	put(first, here, low+heightOf(here))
	foot.draw(first, low)
	if there = slices.Concat(there, lists); heightOf(there)+heightOf(found) <= again-low {
		there, found = slices.Concat(there, found), nil
	}
	left[Findings] = left[Findings] || len(found) > 0
	if len(there) == 0 {
		return []Page{first.finish()}
	}
	put(second, there, again)
	foot.draw(second, low)
	return []Page{first.finish(), second.finish()}
}

// legible is how high the drawings have to be so that the number of the lowest front
// has room in it, as far as that can be had.
func (s *shop) legible() length.Length {
	lowest := s.own.Extent.Height()
	for i := range s.own.Fronts {
		lowest = min(lowest, max(s.own.Fronts[i].Face.Height(), 1))
	}
	const least = 17 * lettering.Small / 10
	high := least.MM() * s.own.Extent.Height().MM() / max(lowest.MM(), 1)
	return min(length.FromMM(high)+shopAbove+shopBelow, halfShopPicture)
}

func heightOf(all []shopPart) (h length.Length) {
	for _, q := range all {
		h += q.high
	}
	return h
}

// put writes pieces one below the other and gives the y below them.
func put(d *draft, all []shopPart, top length.Length) length.Length {
	for _, q := range all {
		q.draw(d, top)
		top -= q.high
	}
	return top
}

func (s *shop) page(again bool) *draft {
	w, h := s.o.Paper.Width, s.o.Paper.Height
	if s.o.Paper.Roll() {
		h = w * 14142 / 10000
	}
	title := message.New("Shop sheet: %v", s.names())
	if again {
		title = message.New("%v (continued)", title)
	}
	return newDraft(ShopSheets, title, w, h, s.o)
}

// names are those of the cabinets that the sheet is for, by number where they have
// none.
func (s *shop) names() message.Message {
	var all []string
	for _, c := range s.equal {
		name := c.Name
		if name == "" {
			name = s.o.Say.Say(message.New("Cabinet %v", c.Place.Cabinet+1))
		}
		all = append(all, name)
	}
	return said(clipped(strings.Join(all, ", "), 2*longestNames))
}

// head writes what the sheet is for and gives the y below it.
func (s *shop) head(d *draft) length.Length {
	c := s.equal[0]
	x, width := d.area.Min.X, d.area.Width()
	job := lettering.Shorten(s.o.stamp.job, lettering.Small, false, width)
	y := d.lines(x, d.area.Max.Y, lettering.Small, false, []string{job})
	y = d.paragraph(x, y, width, lettering.Large, true, d.page.Title) + mm(1)
	size := message.New("Carcass %v wide, %v high, %v deep", c.Outline.Width(), c.Outline.Height(), s.p.Project.Cabinets[c.Place.Cabinet].Depth)
	switch up := c.Outline.Min.Y; {
	case up <= 0:
	case !c.Plinth.Empty():
		size = message.New("%v, plinth %v", size, up)
	case len(c.Feet) > 0:
		size = message.New("%v, feet %v", size, up)
	default:
		size = message.New("%v, hung %v above the floor", size, up)
	}
	if len(s.equal) > 1 {
		size = message.New("%v cabinets that are the same. %v", len(s.equal), size)
	}
	y = d.paragraph(x, y, width, lettering.Small, false, message.New("%v. Drawn not to scale.", size))
	if !s.o.warn.Empty() {
		y = d.paragraph(x, y, width, lettering.Medium, true, s.o.warn)
	}
	return y - mm(1)
}

// foot are the cautions in short, so that the page of them is not needed.
func (s *shop) foot(d *draft) shopPart {
	text := message.New("%v %v", message.New("Before you cut, drill and hang: the maker’s instructions come first, then your local codes. Compare the hardware’s figures with the maker’s documents, and try one front on scrap. Clamp the work, set a depth stop, keep hands and gloves from the drill, protect eyes, ears and lungs. Lift with two people. Look for cables and pipes before you drill into a wall. Fix tall and free-standing cabinets to the building, and load drawers no more than the maker allows."), s.o.depth)
	if list.HangsOnWall(s.p) {
		text = message.New("%v %v", text, list.WallCaution())
	}
	return s.note(d, text)
}

// findings are what the check found about the cabinets.
func (s *shop) findings(d *draft) []shopPart {
	var all []shopPart
	for i := range s.found {
		f := &s.found[i]
		all = append(all, s.note(d, message.New("□ %v, %v: %v. To do: %v.", f.Severity.Word(), f.Where, f.What, f.Change)))
	}
	return all
}

// note is a paragraph with room above it.
func (s *shop) note(d *draft, m message.Message) shopPart {
	return shopPart{d.heightOf(d.area.Width(), lettering.Small, false, m) + mm(2), func(d *draft, top length.Length) {
		d.paragraph(d.area.Min.X, top-mm(2), d.area.Width(), lettering.Small, false, m)
	}}
}

// jigHead stands over the settings: how the front lies, and what stands over their
// columns; big, with the sketch of the jig in its corner.
func (s *shop) jigHead(d *draft, big bool) shopPart {
	x, width := d.area.Min.X, d.area.Width()
	lies := message.New("REAR FACE up: your left hand is RIGHT in the room.")
	if !big {
		high := mm(2) + d.heightOf(width, lettering.Large, true, lies)
		return shopPart{high + jigHeads, func(d *draft, top length.Length) {
			d.paragraph(x, top-mm(2), width, lettering.Large, true, lies)
			s.jig.head(d, x, top-high)
		}}
	}
	const sketch = 44 * length.Millimetre
	return shopPart{sketch + mm(6), func(d *draft, top length.Length) {
		d.jigInItsCorner(plane.R(d.area.Max.X-jigSketch, top-sketch-mm(2), d.area.Max.X, top-mm(2)))
		narrow := width - jigSketch - mm(4)
		y := d.paragraph(x, top-mm(2), narrow, lettering.Large, true, lies) - mm(1)
		d.paragraph(x, y, narrow, lettering.Small, false, jigWords())
		s.jig.head(d, x, top-sketch-mm(6)+jigHeads)
	}}
}

// jigPieces are the settings, and what they do not drill.
func (s *shop) jigPieces(d *draft) []shopPart {
	var all []shopPart
	for _, b := range s.jig.boxes {
		all = append(all, shopPart{s.jig.high(b), func(d *draft, top length.Length) { s.jig.draw(d, b, d.area.Min.X, top) }})
	}
	if list.InInches(s.o.Say) && len(all) > 0 {
		all = append(all, s.note(d, list.Rounded()))
	}
	var middle []string
	for i := range s.all.Fronts {
		if f := &s.all.Fronts[i]; f.Stabilised {
			middle = append(middle, strconv.Itoa(f.Number))
		}
	}
	if len(middle) > 0 {
		all = append(all, s.note(d, message.New("In the middle of these fronts are the holes of a stabiliser too, see their template: %v", strings.Join(middle, ", "))))
	}
	return all
}

// lists are the fronts to cut at the left and the order at the right.
func (s *shop) lists(d *draft) []shopPart {
	const apart = 6 * length.Millimetre
	cut := s.fronts(d.area.Width()*47/100 - apart)
	order := s.order(d, d.area.Width()*53/100)
	if cut.high == 0 && order.high == 0 {
		return nil
	}
	return []shopPart{{max(cut.high, order.high) + mm(3), func(d *draft, top length.Length) {
		cut.draw(d, top-mm(3))
		order.draw(d, top-mm(3))
	}}}
}

// fronts are a row for each size: numbers, width by height, grain.
func (s *shop) fronts(width length.Length) shopPart {
	const pitch, grain = 6 * length.Millimetre, 8 * length.Millimetre
	all := list.FrontsToCut(s.all)
	if len(all) == 0 {
		return shopPart{draw: func(*draft, length.Length) {}}
	}
	return s.measured(func(d *draft, top length.Length) length.Length {
		x := d.area.Min.X
		board := ""
		y := top
		for _, e := range all {
			if b := d.say.Say(e.Board); b != board {
				board = b
				y = d.paragraph(x, y, width, lettering.Small, true, message.New("Fronts to cut: %v", board)) - mm(1)
			}
			size := d.say.Figure(e.Width) + " × " + d.say.Figure(e.Height)
			d.text(plane.Point{X: x + width - grain, Y: y}, drawing.Anchor{X: 1, Y: 1}, lettering.Medium, true, size)
			room := width - grain - mm(4) - lettering.Width(size, lettering.Medium, true)
			d.grainArrow(plane.Point{X: x + width - grain/2, Y: y - lettering.Medium/2}, e.Grain)
			for _, line := range d.wraps.wrap(s.who(e), lettering.Medium, false, room) {
				d.lines(x, y, lettering.Medium, false, []string{line})
				y -= pitch
			}
		}
		return y
	})
}

// measured is what a writer writes, with its height.
func (s *shop) measured(write func(d *draft, top length.Length) length.Length) shopPart {
	d := s.page(false)
	return shopPart{-write(d, 0), func(d *draft, top length.Length) { write(d, top) }}
}

// who names a front, or tells the numbers of several, and the part where they are cut
// in parts.
func (s *shop) who(e list.EqualFronts) string {
	var all []string
	for _, n := range e.Numbers {
		all = append(all, strconv.Itoa(n))
	}
	who := strings.Join(all, ", ")
	switch f := &s.p.Fronts[e.Numbers[0]-1]; {
	case !e.What.Empty():
		who += ":  " + s.o.Say.Say(e.What) // which begins with their count
	case len(all) == 1 && f.Named():
		who += "  " + clipped(f.Name, 24)
	}
	return who
}

// order is what to order for the sheet's cabinets.
func (s *shop) order(d *draft, width length.Length) shopPart {
	all := list.Order(s.all)
	if len(all) == 0 {
		return shopPart{draw: func(*draft, length.Length) {}}
	}
	return s.measured(func(d *draft, top length.Length) length.Length {
		x := d.area.Max.X - width
		y := d.paragraph(x, top, width, lettering.Small, true, message.New("To order, small parts apart")) - mm(1)
		for _, m := range all {
			y = d.paragraph(x, y, width, lettering.Small, false, message.New("□ %v", m)) - mm(1)/2
		}
		return y
	})
}
