package view

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
)

// zoneLines are the lines between the parts of a front that are not of one thickness
// all over: joints of a frame, the edge of its panel, of a grip. They are in the Face
// frame; from the room the edge of a grip is behind the front, and dashed.
func zoneLines(f *plan.Front, fromRear bool) []*drawing.Line {
	var lines []*drawing.Line
	add := func(x1, y1, x2, y2 length.Length) {
		l := &drawing.Line{Tag: drawing.Tag{Meaning: drawing.Face, Of: of(drawing.FrontThing, f.Place)}, From: plane.Point{X: x1, Y: y1}, To: plane.Point{X: x2, Y: y2}}
		if behind := f.Zones[0].Part == plan.BoardPart && !fromRear; behind {
			l.Meaning, l.Dashed = drawing.Hidden, true
		}
		lines = append(lines, l)
	}
	for i := range f.Zones { // the edges that are no other's right or upper one
		r := f.Zones[i].Rect
		if r.Empty() {
			continue
		}
		if r.Min.X > 0 {
			add(r.Min.X, r.Min.Y, r.Min.X, r.Max.Y)
		}
		if r.Min.Y > 0 {
			add(r.Min.X, r.Min.Y, r.Max.X, r.Min.Y)
		}
	}
	return lines
}

// RearZoneLines are the lines between the parts of a front, Rear frame.
func RearZoneLines(f *plan.Front) []*drawing.Line {
	lines := zoneLines(f, true)
	for _, l := range lines {
		l.From, l.To = f.Rear(l.From), f.Rear(l.To)
	}
	return lines
}

// cut is a part of a front that a section meets, in the section's frame.
type cut struct {
	plane.Rect
	Part plan.Part
}

// cutThrough are the parts of a front that a section meets: upright in the middle of
// its width (depth and height), or level in the middle of its height (across and depth).
// A panel reaches into its groove.
func cutThrough(f *plan.Front, upright bool) []cut {
	near, far := f.Board()
	put := func(r plane.Rect, near, far length.Length) plane.Rect {
		r = r.Move(f.Face.Min)
		if upright {
			return plane.R(near, r.Min.Y, far, r.Max.Y)
		}
		return plane.R(r.Min.X, near, r.Max.X, far)
	}
	if len(f.Zones) == 0 {
		return []cut{{put(f.Blind(), near, far), plan.BoardPart}}
	}
	var parts []cut
	middle := f.Blind().Centre()
	for i := range f.Zones {
		z := &f.Zones[i]
		from, to, at := z.Rect.Min.X, z.Rect.Max.X, middle.X
		if !upright {
			from, to, at = z.Rect.Min.Y, z.Rect.Max.Y, middle.Y
		}
		if from <= at && at < to && !z.Rect.Empty() {
			face := near + z.Face(f)
			parts = append(parts, cut{put(z.Whole, face, face+z.Thickness), z.Part})
		}
	}
	return parts
}
