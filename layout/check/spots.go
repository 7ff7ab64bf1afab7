package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// Views of what lies in a front's board, and of what lies in the cabinet.
const (
	onFace   = mark.Elevation | mark.Rear
	inDepth  = mark.Elevation | mark.Section
	inDrawer = mark.Elevation | mark.Section | mark.Plan
)

// onBoard is a place of a front's board.
func onBoard(f *plan.Front, s mark.Shape, in mark.Views, box plane.Rect) mark.Spot {
	near, far := f.Board()
	return mark.Spot{Shape: s, In: in, Front: f.Number, Box: box, Near: near, Far: far}
}

// strip is the band between two heights over a front's width, in its board.
func strip(f *plan.Front, from, to length.Length) mark.Spot {
	return onBoard(f, mark.Band, onFace|mark.Section, across(f, from, to))
}

func across(f *plan.Front, from, to length.Length) plane.Rect {
	return plane.R(f.Face.Min.X, from, f.Face.Max.X, to)
}

// behind is the band between two heights over a front's width, as deep as its
// drawer.
func behind(f *plan.Front, from, to length.Length) mark.Spot {
	near, far := inside(f)
	return mark.Spot{Shape: mark.Band, In: inDepth, Front: f.Number, Box: across(f, from, to), Near: near, Far: far}
}

// inside is where a front's drawer lies, depth frame.
func inside(f *plan.Front) (near, far length.Length) {
	return f.Runner.Start, f.Runner.Start + f.LengthAtLeast()
}

// hole is a hole of a front's rear face.
func hole(f *plan.Front, h *plan.Hole) mark.Spot {
	at := h.At.Add(f.Face.Min)
	return onBoard(f, mark.Ring, onFace, plane.Rect{Min: at, Max: at}.Grow(h.Diameter/2))
}

// screw is a hole of a runner's screw at a board's face.
func screw(f *plan.Front, h *plan.SideHole, x length.Length) mark.Spot {
	r := h.Diameter / 2
	return mark.Spot{
		Shape: mark.Ring, In: inDrawer, Front: f.Number,
		Box: plane.R(x-r, h.Y-r, x+r, h.Y+r), Near: h.Back - r, Far: h.Back + r,
	}
}

// runners are the two runners of a front.
func runners(f *plan.Front) []mark.Spot {
	near, far := inside(f)
	var spots []mark.Spot
	for _, end := range f.RunnerEnds() {
		spots = append(spots, mark.Spot{Shape: mark.Outline, In: inDrawer, Front: f.Number, Box: end, Near: near, Far: far})
	}
	return spots
}

// drawer is the drawer of a front, or the room for one that is not there.
func (s *search) drawer(f *plan.Front, shape mark.Shape) mark.Spot {
	box := f.Opening.Intersect(f.Face)
	near, far := length.Length(0), s.plan.Cabinets[f.Place.Cabinet].Depth
	if f.Fitted {
		near, far = inside(f)
		if !f.Drawer.Body.Empty() {
			box = f.Drawer.Body
		}
	}
	return mark.Spot{Shape: shape, In: inDrawer, Front: f.Number, Box: box, Near: near, Far: max(far, near)}
}

// level is the line of a front's edge at a height.
func level(f *plan.Front, y length.Length) mark.Spot {
	return onBoard(f, mark.Edge, inDepth, across(f, y, y))
}

// tall is the way between two heights, at an x of the run.
func tall(f *plan.Front, in mark.Views, x, from, to length.Length) mark.Spot {
	s := onBoard(f, mark.Reach, in, plane.R(x, min(from, to), x, max(from, to)))
	s.Near, s.Far = (s.Near+s.Far)/2, (s.Near+s.Far)/2
	return s
}

// wide is the way between two places across a front, at a height.
func wide(f *plan.Front, y, from, to length.Length) mark.Spot {
	s := onBoard(f, mark.Reach, onFace|mark.Plan, plane.R(min(from, to), y, max(from, to), y))
	s.Near, s.Far = (s.Near+s.Far)/2, (s.Near+s.Far)/2
	return s
}

// gaps are those of a cabinet of a kind.
func (s *search) gaps(c *plan.Cabinet, which oneReveal) []mark.Spot {
	var spots []mark.Spot
	add := func(f *plan.Front, in mark.Views, box plane.Rect) {
		spots = append(spots, onBoard(f, mark.Gap, in, box))
	}
	for j := range c.Bays {
		b := &c.Bays[j]
		for k := b.First; k < b.First+b.Count; k++ {
			f := &s.plan.Fronts[k]
			face := f.Face
			switch which.key {
			case gapReveal().key:
				if above := s.inStack(f, 1); above != nil {
					add(f, inDepth, across(f, face.Max.Y, above.Face.Min.Y))
				}
				if right := s.beyond(c, f); right != nil {
					add(f, mark.Elevation|mark.Plan, plane.R(face.Max.X, face.Min.Y, right.Stack.Min.X, face.Max.Y))
				}
			case leftReveal().key:
				if j == 0 {
					add(f, mark.Elevation|mark.Plan, plane.R(face.Min.X-c.Reveals.Left, face.Min.Y, face.Min.X, face.Max.Y))
				}
			case rightReveal().key:
				if j+max(f.Bays, 1) == len(c.Bays) {
					add(f, mark.Elevation|mark.Plan, plane.R(face.Max.X, face.Min.Y, face.Max.X+c.Reveals.Right, face.Max.Y))
				}
			case topReveal().key:
				if f.Topmost {
					add(f, inDepth, across(f, face.Max.Y, face.Max.Y+c.Reveals.Top))
				}
			case bottomReveal().key:
				if f.Bottommost {
					add(f, inDepth, across(f, face.Min.Y-c.Reveals.Bottom, face.Min.Y))
				}
			}
		}
	}
	return spots
}

// beyond is the bay at the right of a front of an overlay cabinet, nil where there
// is none.
func (s *search) beyond(c *plan.Cabinet, f *plan.Front) *plan.Bay {
	if j := f.Place.Bay + max(f.Bays, 1); j < len(c.Bays) && c.Mount == model.Overlay {
		return &c.Bays[j]
	}
	return nil
}
