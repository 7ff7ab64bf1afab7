package sheet

import (
	"slices"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model/length"
)

// joints draws the lines between the parts of a front that lies face down on the page,
// by so far from its own frame, inside a clip: those that take tells, broken where the
// page is written on and where it shows other things. They come last on a page.
func (d *draft) joints(f *plan.Front, by plane.Point, clip plane.Rect, take func(*drawing.Line) bool, over ...plane.Rect) {
	for _, m := range d.own.Marks {
		if t, ok := m.(*drawing.Text); ok {
			over = append(over, drawing.TextArea(t.At, t.Anchor, t.Size, t.Bold, d.say.Say(t.Say)).Grow(mm(1)))
		}
	}
	for _, l := range view.RearZoneLines(f) {
		if !take(l) {
			continue
		}
		a, b := l.From.Add(by), l.To.Add(by)
		line := clip.Intersect(plane.R(min(a.X, b.X), min(a.Y, b.Y), max(a.X, b.X), max(a.Y, b.Y)))
		if line.Min.X > line.Max.X || line.Min.Y > line.Max.Y {
			continue // beside the clip
		}
		if a.Y == b.Y {
			for _, s := range unbroken(line.Min.X, line.Max.X, a.Y, true, over) {
				d.line(drawing.Frame, s[0], a.Y, s[1], a.Y)
			}
			continue
		}
		for _, s := range unbroken(line.Min.Y, line.Max.Y, a.X, false, over) {
			d.line(drawing.Frame, a.X, s[0], a.X, s[1])
		}
	}
}

// leastJoint is the shortest stretch of a line that is drawn: shorter ones look like
// signs.
const leastJoint = 3 * length.Millimetre

// unbroken are the stretches of a line, from and to along it, that no area covers.
func unbroken(from, to, at length.Length, level bool, over []plane.Rect) [][2]length.Length {
	var breaks [][2]length.Length
	for _, r := range over {
		across, along := [2]length.Length{r.Min.X, r.Max.X}, [2]length.Length{r.Min.Y, r.Max.Y}
		if level {
			across, along = along, across
		}
		if across[0] < at && at < across[1] {
			breaks = append(breaks, along)
		}
	}
	slices.SortFunc(breaks, func(a, b [2]length.Length) int { return int(min(max(a[0]-b[0], -1), 1)) })
	var all [][2]length.Length
	for _, b := range breaks {
		if b[0] > from {
			all = append(all, [2]length.Length{from, min(b[0], to)})
		}
		from = max(from, b[1])
	}
	all = append(all, [2]length.Length{from, to})
	return slices.DeleteFunc(all, func(s [2]length.Length) bool { return s[1]-s[0] < leastJoint })
}
