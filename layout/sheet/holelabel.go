package sheet

import (
	"slices"
	"strconv"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// counted is a hole that has a number beside it, under which a table tells what it is
// and where.
type counted struct {
	bore
	number int
}

// labels writes beside each hole that is whole on the sheet what it is and how far
// from the edges. Where there is no room it writes a number, and gives those holes:
// they must be told elsewhere.
func (s *tileSheet) labels() []counted {
	shown := s.shown.Move(s.by)
	var untold []counted
	for _, b := range s.bores {
		if w := b.whole(); w.Intersect(s.shown) != w || s.label(b, shown) {
			continue
		}
		s.counted++
		n := counted{b, s.counted}
		untold = append(untold, n)
		s.number(n, shown)
	}
	return untold
}

// label tells whether a hole's figures had room beside it.
func (s *tileSheet) label(b bore, shown plane.Rect) bool {
	at := b.at.Add(s.by)
	off := b.diameter/2 + labelGap
	place := s.place(b)
	write := func(width length.Length, places func(wide, high length.Length) []plane.Point) bool {
		lines := s.d.wraps.wrap(s.d.say.Say(b.drilling()), holeLetters, true, width)
		bold := len(lines)
		lines = slices.Concat(lines, s.d.wraps.wrap(place, holeLetters, false, width))
		wide, high := widest(lines, bold), length.Length(len(lines))*lettering.Pitch(holeLetters)
		var areas []plane.Rect
		for _, p := range places(wide, high) {
			areas = append(areas, plane.R(p.X, p.Y-high, p.X+wide, p.Y))
		}
		i := s.first(shown, areas)
		if i < 0 {
			return false
		}
		y := s.d.lines(areas[i].Min.X, areas[i].Max.Y, holeLetters, true, lines[:bold])
		s.d.lines(areas[i].Min.X, y, holeLetters, false, lines[bold:])
		return true
	}
	widths := []length.Length{mm(70), mm(40), mm(32)}
	for _, width := range widths {
		if write(width, func(wide, high length.Length) []plane.Point { // at its side
			return []plane.Point{{X: at.X + off, Y: at.Y + high/2}, {X: at.X - off - wide, Y: at.Y + high/2}}
		}) {
			return true
		}
	}
	for _, width := range widths {
		if write(width, func(wide, high length.Length) (all []plane.Point) { // above or below it
			for _, x := range []length.Length{
				at.X - wide/2, at.X + mm(1), at.X - mm(1) - wide,
				clamp(at.X-wide/2, shown.Min.X, shown.Max.X-wide),  // as far as the sheet goes
				clamp(at.X-wide/2, s.by.X+mm(1), shown.Max.X-wide), // or as an edge at 0
				clamp(at.X-wide/2, shown.Min.X, s.by.X-mm(1)-wide),
			} {
				all = append(all, plane.Point{X: x, Y: at.Y + off + high}, plane.Point{X: x, Y: at.Y - off})
			}
			return all
		}) {
			return true
		}
	}
	return false
}

// widest is how wide lines of a hole's label are, of which the first are bold.
func widest(lines []string, bold int) (wide length.Length) {
	for i, l := range lines {
		wide = max(wide, lettering.Width(l, holeLetters, i < bold))
	}
	return wide
}

// number writes a hole's number as near to it as there is room.
func (s *tileSheet) number(b counted, shown plane.Rect) {
	text := strconv.Itoa(b.number)
	at := b.at.Add(s.by)
	wide := lettering.Width(text, holeLetters, true)
	var areas []plane.Rect
	for off := b.diameter/2 + mm(2); off < b.diameter/2+mm(12); off += mm(2) {
		for _, p := range []plane.Point{{X: off, Y: off}, {X: -off - wide, Y: off}, {X: off, Y: -off - holeLetters}, {X: -off - wide, Y: -off - holeLetters}} {
			areas = append(areas, plane.R(0, 0, wide, holeLetters).Move(at.Add(p)))
		}
	}
	if i := s.first(shown, areas); i >= 0 {
		s.d.text(areas[i].Min, drawing.Anchor{}, holeLetters, true, text)
	}
}

// told says of a hole with a number what it is and where.
func (s spread) told(b counted, say message.Language) string {
	return strconv.Itoa(b.number) + ":\u00a0 " + say.Say(b.drilling()) + "  " + s.place(b.bore)
}

// table writes what holes with numbers are and where, where the sheet has room for
// all, and tells whether it has.
func (s *tileSheet) table(bores []counted) bool {
	if len(bores) == 0 {
		return true
	}
	shown := s.shown.Move(s.by)
	for _, width := range []length.Length{mm(110), mm(70), mm(40)} {
		var lines []string
		for _, b := range bores {
			lines = append(lines, s.d.wraps.wrap(s.told(b, s.d.say), holeLetters, false, width)...)
		}
		wide, high := widest(lines, 0), length.Length(len(lines))*lettering.Pitch(holeLetters)
		var areas []plane.Rect
		for y := shown.Max.Y - mm(2); y-high > shown.Min.Y; y -= mm(4) {
			for x := shown.Min.X + mm(2); x+wide < shown.Max.X; x += mm(4) {
				areas = append(areas, plane.R(x, y-high, x+wide, y))
			}
		}
		if i := s.first(shown, areas); i >= 0 {
			s.d.lines(areas[i].Min.X, areas[i].Max.Y, holeLetters, false, lines)
			return true
		}
	}
	return false
}

// clamp is a place as near to the wanted one as bounds allow, the lower one first.
func clamp(want, lo, hi length.Length) length.Length { return max(min(want, hi), lo) }
