package view

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// span is a stretch of a chain of dimensions: a front or a board, run frame.
type span struct {
	from, to length.Length
	of       drawing.Subject
}

// spansOfBay are the fronts that cover a bay, upwards, with the boards of the carcass
// below and above them where the fronts stand between those, and from where to where
// the bay's chain of heights goes.
func spansOfBay(p *plan.Plan, c *plan.Cabinet, b *plan.Bay) (spans []span, low, high length.Length) {
	low, high = c.Outline.Min.Y, c.Outline.Max.Y
	if c.Mount == model.Inset {
		spans = append(spans, span{from: low, to: b.Opening.Min.Y}, span{from: b.Opening.Max.Y, to: high})
	}
	for _, r := range b.Rails {
		spans = append(spans, span{from: r.Rect.Min.Y, to: r.Rect.Max.Y})
	}
	for _, k := range b.Column {
		f := &p.Fronts[k]
		spans = append(spans, span{f.Face.Min.Y, f.Face.Max.Y, of(drawing.FrontHeight, f.Place)})
	}
	slices.SortStableFunc(spans, func(a, b span) int { return int(min(max(a.from-b.from, -1), 1)) })
	return spans, low, high
}

// spansAcross are the topmost fronts of cabinets from left to right, with what stands
// beside those, and the sides and partitions between which inset fronts stand.
func spansAcross(p *plan.Plan, cabinets []plan.Cabinet) []span {
	var spans []span
	for i := range cabinets {
		c := &cabinets[i]
		for _, b := range c.Beside {
			if hidden := b.Kind == plan.EndPanelBoard && c.Covers(b); b.Kind != plan.WorktopBoard && !hidden {
				spans = append(spans, span{from: b.Rect.Min.X, to: b.Rect.Max.X})
			}
		}
		if c.Mount == model.Inset {
			spans = append(spans, span{from: c.Outline.Min.X, to: c.Inside.Min.X}, span{from: c.Inside.Max.X, to: c.Outline.Max.X})
			for _, r := range c.Partitions {
				spans = append(spans, span{from: r.Min.X, to: r.Max.X})
			}
		}
		for j := range c.Bays {
			col := c.Bays[j].Column
			if len(col) == 0 {
				continue
			}
			if f := &p.Fronts[col[len(col)-1]]; f.Place.Bay == j { // a spanning front is told at its first bay
				spans = append(spans, span{from: f.Face.Min.X, to: f.Face.Max.X})
			}
		}
	}
	slices.SortStableFunc(spans, func(a, b span) int { return int(min(max(a.from-b.from, -1), 1)) })
	return spans
}

// withGaps gives the spans with the gaps between them, and those at both ends.
func withGaps(spans []span, low, high length.Length) []span {
	var all []span
	at := low
	for _, s := range spans {
		if s.from > at {
			all = append(all, span{from: at, to: s.from})
		}
		if s.to > s.from {
			all = append(all, s)
		}
		at = max(at, s.to)
	}
	if high > at {
		all = append(all, span{from: at, to: high})
	}
	return all
}

// chain is a chain of heights with the fronts that it is of.
type chain struct {
	spans  []span
	bays   []string      // numbers of the fronts of the bays that share it
	middle length.Length // of the first of those
}

// numbersOf are the numbers of the fronts of a bay, from the lowest to the topmost.
func numbersOf(p *plan.Plan, column []int) string {
	first, last := p.Fronts[column[0]].Number, p.Fronts[column[len(column)-1]].Number
	if first == last {
		return strconv.Itoa(first)
	}
	return fmt.Sprintf("%d–%d", first, last)
}

// mostNamed is how many bays that share a chain are told each.
const mostNamed = 4

// fronts tells which fronts a chain is of.
func (c *chain) fronts() message.Message {
	if more := len(c.bays) - mostNamed; more > 0 {
		return message.New("fronts %v and %v more bays", strings.Join(c.bays[:mostNamed], ", "), more)
	}
	if len(c.bays) == 1 && !strings.ContainsRune(c.bays[0], '–') {
		return message.New("front %v", c.bays[0])
	}
	return message.New("fronts %v", strings.Join(c.bays, ", "))
}

// chains are the chains of heights of cabinets: bays with the same share one.
func chains(p *plan.Plan, cabinets []plan.Cabinet) []chain {
	same := func(a, b span) bool { return a.from == b.from && a.to == b.to }
	var all []chain
	for i := range cabinets {
		for j := range cabinets[i].Bays {
			b := &cabinets[i].Bays[j]
			if len(b.Column) == 0 {
				continue
			}
			spans := withGaps(spansOfBay(p, &cabinets[i], b))
			k := slices.IndexFunc(all, func(c chain) bool { return slices.EqualFunc(c.spans, spans, same) })
			if k < 0 {
				k = len(all)
				all = append(all, chain{spans: spans, middle: b.Opening.Centre().X})
			}
			all[k].bays = append(all[k].bays, numbersOf(p, b.Column))
		}
	}
	return all
}

// addChains adds the heights of the fronts with their gaps beside the run, those of
// the bay nearest to the run first, and their widths with theirs above it. It gives
// how many levels it takes at the left and at the right.
func addChains(d *drawing.Drawing, p *plan.Plan, cabinets []plan.Cabinet, extent plane.Rect) (left, right int) {
	all := chains(p, cabinets)
	middle := extent.Centre().X
	label := func(c *chain, x length.Length, level int) {
		if len(all) > 1 {
			d.Add(&drawing.Text{
				Tag: drawing.Tag{Meaning: drawing.Note}, At: plane.Point{X: x, Y: extent.Min.Y}, Anchor: drawing.Anchor{X: 1, Y: 0.5},
				Size: smallLetters, Turned: true, Level: level, Say: c.fronts(),
			})
		}
	}
	n := 0 // how many of them stand at the left: always the first
	for n < len(all) && (n == 0 || all[n].middle < middle) {
		n++
	}
	for k := range all {
		c := &all[k]
		x, level := extent.Min.X, -1-k
		if k >= n {
			x, level = extent.Max.X, len(all)-k
		}
		for _, s := range c.spans {
			d.Add(upright(s.of, s.from, s.to, x, level))
		}
		label(c, x, level)
	}
	if spans := spansAcross(p, cabinets); len(spans) > 0 {
		low, high := cabinets[0].Outline.Min.X, cabinets[len(cabinets)-1].Outline.Max.X
		for i := range cabinets {
			for _, b := range cabinets[i].Beside {
				if b.Kind != plan.WorktopBoard {
					low, high = min(low, b.Rect.Min.X), max(high, b.Rect.Max.X)
				}
			}
		}
		for _, s := range withGaps(spans, low, high) {
			d.Add(across(s.of, s.from, s.to, extent.Max.Y, 1))
		}
	}
	return n, len(all) - n
}
