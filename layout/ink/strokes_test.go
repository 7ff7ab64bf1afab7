package ink

import (
	"fmt"
	"testing"

	"frontlay/layout"
	"frontlay/layout/projecttest"
	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"
)

// strokes is a canvas that keeps what a page consists of, cut as it is shown.
type strokes struct {
	letters
	lines   []stroked
	circles []circled
	clip    *box
}

type stroked struct {
	a, b Point
	pen  Pen
}

type circled struct {
	at     Point
	radius float64
}

func (s *strokes) Clip(lo, hi Point) { s.clip = &box{lo, hi} }
func (s *strokes) Unclip()           { s.clip = nil }

func (s *strokes) Line(p Pen, a, b Point) {
	if s.clip != nil {
		// Lines on templates are level or upright, but for hatches of small maps.
		in := box{Point{min(a.X, b.X), min(a.Y, b.Y)}, Point{max(a.X, b.X), max(a.Y, b.Y)}}
		if in.hi.X < s.clip.lo.X || in.lo.X > s.clip.hi.X || in.hi.Y < s.clip.lo.Y || in.lo.Y > s.clip.hi.Y {
			return
		}
		a = Point{min(max(a.X, s.clip.lo.X), s.clip.hi.X), min(max(a.Y, s.clip.lo.Y), s.clip.hi.Y)}
		b = Point{min(max(b.X, s.clip.lo.X), s.clip.hi.X), min(max(b.Y, s.clip.lo.Y), s.clip.hi.Y)}
	}
	s.lines = append(s.lines, stroked{a, b, p})
}

func (s *strokes) Rect(edge *Pen, _ *Colour, lo, hi Point) {
	if edge == nil {
		return
	}
	s.Line(*edge, lo, Point{hi.X, lo.Y})
	s.Line(*edge, Point{lo.X, hi.Y}, hi)
	s.Line(*edge, lo, Point{lo.X, hi.Y})
	s.Line(*edge, Point{hi.X, lo.Y}, hi)
}

func (s *strokes) Circle(p Pen, at Point, radius float64) {
	if s.clip == nil || at.X > s.clip.lo.X && at.X < s.clip.hi.X && at.Y > s.clip.lo.Y && at.Y < s.clip.hi.Y {
		s.circles = append(s.circles, circled{at, radius})
	}
}

// touches tells that a level or upright line runs into an area.
func (l stroked) touches(b box) bool {
	return box{Point{min(l.a.X, l.b.X), min(l.a.Y, l.b.Y)}, Point{max(l.a.X, l.b.X), max(l.a.Y, l.b.Y)}}.pad(0.001).overlaps(b)
}

func (l stroked) slanted() bool { return l.a.X != l.b.X && l.a.Y != l.b.Y }

// struck tells of the first text or hole of a template that a line runs through. The
// centre cross is part of its hole.
func struck(p *sheet.Page, say message.Language) string {
	var s strokes
	Draw(&s, p.Drawings(), p.LetterArea(), say)
	cross := 0.13 // the width of its lines; those of others differ
	for _, l := range s.lines {
		if l.slanted() {
			continue
		}
		for _, t := range s.texts {
			if l.touches(t.box.pad(-0.05)) {
				return fmt.Sprintf("a line from %.1f to %.1f runs through %q at %.1f", l.a, l.b, t.text, t.box)
			}
		}
		for _, c := range s.circles {
			if r := c.radius * 0.7; r > 0.5 && l.pen.Width != cross && l.touches(box{Point{c.at.X - r, c.at.Y - r}, Point{c.at.X + r, c.at.Y + r}}) {
				return fmt.Sprintf("a line from %.1f to %.1f runs through the hole at %.1f", l.a, l.b, c.at)
			}
		}
	}
	for _, t := range s.texts {
		for _, c := range s.circles {
			if r := c.radius * 0.7; r > 0.5 && t.box.overlaps(box{Point{c.at.X - r, c.at.Y - r}, Point{c.at.X + r, c.at.Y + r}}) {
				return fmt.Sprintf("%q stands on the hole at %.1f", t.text, c.at)
			}
		}
	}
	return ""
}

// No line runs through a text or a hole of a template, on any paper, for all test
// projects and those that ship.
func TestNothingIsStruckThrough(t *testing.T) {
	papers := []sheet.Paper{sheet.Papers()[0], sheet.Papers()[1], sheet.Papers()[5], {Name: "roll 610", Width: length.MM(610)}}
	parts := []sheet.Part{sheet.CornerTemplates, sheet.WholeTemplates, sheet.RunnerTemplates, sheet.SideTemplates, sheet.HandleTemplates}
	for name, p := range projecttest.All(t, "../..") {
		r := layout.Solve(p)
		for _, paper := range papers {
			d := sheet.Make(r.Plan, r.Findings, sheet.Options{Paper: paper, Parts: parts, Date: "2026-11-25", Say: message.Language{Unit: p.Unit}})
			for i := range d.Pages {
				if fault := struck(&d.Pages[i], d.Say); fault != "" {
					t.Errorf("%s, page %d (%s) of %s: %s", name, i+1, d.Pages[i].Kind, paper.Name, fault)
				}
			}
		}
	}
}
