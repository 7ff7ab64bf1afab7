package tool

import (
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// Step is what a dragged size is rounded to in a unit: whole millimetres, or
// sixteenths of an inch (twentieths where inches are decimal). Freed it is a
// tenth of a millimetre, or 1/64 in, so that a figure stays one that can be
// read.
func Step(u length.Unit, free bool) length.Length {
	inch := u == length.UnitInch || u == length.UnitInchDecimal
	switch {
	case inch && free:
		return length.Inch64th
	case u == length.UnitInchDecimal:
		return length.Inch / 20
	case inch:
		return 4 * length.Inch64th
	case free:
		return 100 * length.Micrometre
	default:
		return length.Millimetre
	}
}

// What a drag leaves of a front and of a bay at least, so that there is something
// to take hold of again. A person who wants less types it: that is judged by what a
// file may hold alone.
const (
	leastDraggedFront = 10 * length.Millimetre
	leastDraggedBay   = 50 * length.Millimetre
)

// dragged keeps the first part of a whole and what is left of it from becoming
// smaller by a drag than the least; where they were smaller before, than they were.
func dragged(first, whole, least length.Length) length.Length {
	least = min(least, whole/2)
	return min(max(first, least), whole-least)
}

// levels lists the edges of all fronts but those of one bay, as lines that a
// division can be drawn to.
func levels(pl *plan.Plan, not model.Place) []GuideLine {
	var lines []GuideLine
	for i := range pl.Fronts {
		f := &pl.Fronts[i]
		if f.Place.Cabinet == not.Cabinet && f.Place.Bay == not.Bay {
			continue
		}
		for _, y := range []length.Length{f.Face.Min.Y, f.Face.Max.Y} {
			lines = append(lines, GuideLine{
				From: plane.Point{X: f.Face.Min.X, Y: y}, To: plane.Point{X: f.Face.Max.X, Y: y}, Snapped: true,
			})
		}
	}
	return lines
}

// nearest finds the line whose height is nearest to the one wanted, within reach.
func nearest(want, reach length.Length, lines []GuideLine) (GuideLine, bool) {
	best, found := GuideLine{}, false
	for _, l := range lines {
		d := (l.From.Y - want).Abs()
		if d <= reach && (!found || d < (best.From.Y-want).Abs()) {
			best, found = l, true
		}
	}
	return best, found
}

// joined lengthens a guide line so that it reaches over a span of x too.
func joined(l GuideLine, left, right length.Length) GuideLine {
	l.From.X, l.To.X = min(l.From.X, left), max(l.To.X, right)
	return l
}

// rowLevels lists the heights at which the lower edge of a front lets its
// runner's screws fall on the hole rows of its cabinet with no drop; none where
// the project asks for no rows or the front has no runner.
func rowLevels(pl *plan.Plan, f *plan.Front) []GuideLine {
	rows := pl.Project.HoleRows.Filled()
	c := pl.CabinetAt(f.Place)
	if rows.Mode == model.RowsFree || c == nil || !f.Fitted || len(f.Runner.Screws) == 0 {
		return nil
	}
	up := f.Runner.Screws[0].Y - f.Runner.Lower
	var lines []GuideLine
	for y := c.Outline.Min.Y + rows.Datum; y < c.Outline.Max.Y; y += rows.Pitch {
		lines = append(lines, GuideLine{
			From: plane.Point{X: c.Outline.Min.X, Y: y - up}, To: plane.Point{X: c.Outline.Max.X, Y: y - up}, Snapped: true,
		})
	}
	return lines
}
