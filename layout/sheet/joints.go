package sheet

import (
	"slices"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model/length"
	"frontlay/model/message"
)

// joints draws the lines between the parts of a front that lies face down on the page,
// by so far from its own frame, inside a clip: those that take tells, each with its name,
// left out where that has no room, broken where the page is written on, at holes and where it shows
// other things. They come last on a page.
func (d *draft) joints(f *plan.Front, by plane.Point, clip plane.Rect, take func(*drawing.Line) bool, over ...plane.Rect) {
	for _, m := range d.own.Marks {
		if t, ok := m.(*drawing.Text); ok {
			over = append(over, drawing.TextArea(t.At, t.Anchor, t.Size, t.Bold, d.say.Say(t.Say)).Grow(mm(1)))
		}
	}
	for _, b := range rearBores(f) {
		over = append(over, b.whole().Move(by).Grow(mm(1)))
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
		level := a.Y == b.Y
		name, ok := d.jointName(f, line, level, clip, over)
		if !ok {
			continue // without its name it could be taken for an edge
		}
		over = append(over, name.Grow(mm(1)))
		if level {
			for _, s := range unbroken(line.Min.X, line.Max.X, a.Y, true, over, leastJoint) {
				d.line(drawing.Frame, s[0], a.Y, s[1], a.Y)
			}
			continue
		}
		for _, s := range unbroken(line.Min.Y, line.Max.Y, a.X, false, over, leastJoint) {
			d.line(drawing.Frame, a.X, s[0], a.X, s[1])
		}
	}
}

// jointName writes on a line between parts what it is, so that nobody folds the paper or
// measures there, within the clip and in the longest stretch where that meets nothing
// else; false where no stretch has room for it.
func (d *draft) jointName(f *plan.Front, line plane.Rect, level bool, clip plane.Rect, over []plane.Rect) (plane.Rect, bool) {
	over = over[:len(over):len(over)]
	for _, m := range d.own.Marks {
		if q, ok := m.(*drawing.Dimension); ok { // its line, and the figure beside it
			r := plane.R(min(q.From.X, q.To.X), q.Line, max(q.From.X, q.To.X), q.Line+mm(4))
			if q.Vertical {
				r = plane.R(q.Line-mm(4), min(q.From.Y, q.To.Y), q.Line, max(q.From.Y, q.To.Y))
			}
			over = append(over, r.Grow(mm(1)))
		}
	}
	names := []message.Message{message.New("joint, not an edge"), message.New("joint")}
	if f.Zones[0].Part == plan.BoardPart { // of a grip
		names = []message.Message{message.New("step, not an edge"), message.New("step")}
	}
	for _, m := range names {
		s := d.say.Say(m)
		half := plane.Point{X: lettering.Width(s, lettering.Small, true)/2 + mm(1), Y: lettering.Small/2 + mm(1)}
		wide := make([]plane.Rect, len(over)) // what the name's middle keeps clear of
		for i, r := range over {
			wide[i] = plane.Rect{Min: r.Min.Sub(half), Max: r.Max.Add(half)}
		}
		room := plane.Rect{Min: clip.Min.Add(half), Max: clip.Max.Sub(half)} // of the name's middle
		from, to, at := line.Min.Y+half.Y, line.Max.Y-half.Y, max(min(line.Min.X, room.Max.X), room.Min.X)
		if level {
			from, to, at = line.Min.X+half.X, line.Max.X-half.X, max(min(line.Min.Y, room.Max.Y), room.Min.Y)
		}
		var best [2]length.Length
		for _, s := range unbroken(from, to, at, level, wide, mm(1)) {
			if s[1]-s[0] > best[1]-best[0] {
				best = s
			}
		}
		if best[1] > best[0] {
			c := plane.Point{X: at, Y: (best[0] + best[1]) / 2}
			if level {
				c = plane.Point{X: c.Y, Y: at}
			}
			d.text(c, drawing.Anchor{X: 0.5, Y: 0.5}, lettering.Small, true, s)
			return plane.Rect{Min: c.Sub(half), Max: c.Add(half)}, true
		}
	}
	return plane.Rect{}, false
}

// leastJoint is the shortest stretch of a line that is drawn: shorter ones look like
// signs.
const leastJoint = 6 * length.Millimetre

// unbroken are the stretches of a line, from and to along it, that no area covers and
// that are not below the least.
func unbroken(from, to, at length.Length, level bool, over []plane.Rect, least length.Length) [][2]length.Length {
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
	return slices.DeleteFunc(all, func(s [2]length.Length) bool { return s[1]-s[0] < least })
}
