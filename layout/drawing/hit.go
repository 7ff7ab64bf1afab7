package drawing

import (
	"frontlay/layout/plane"
	"frontlay/model/length"
)

// Reach tells how near a pointer must be, in drawing lengths, and how far one
// level of dimensions stands from the next. Both depend on the zoom.
type Reach struct {
	Near    length.Length
	Level   length.Length
	FigureX length.Length // half the width of a dimension's figure
	FigureY length.Length // half its height
}

// Hit finds the thing at a point: the figure of a dimension before a division,
// a partition, a hole, a front, the mark of a front's finding (which can lie over
// the next front), a bay, a cabinet; of two of a kind, the one painted later.
// False where there is nothing.
func (d *Drawing) Hit(at plane.Point, r Reach) (Subject, bool) {
	best, rank := Subject{}, 0
	for _, m := range d.Marks {
		t := m.tag()
		if t.Of.Kind == Nothing {
			continue
		}
		k := rankOf(t.Of.Kind)
		if t.Meaning == FindingMark && t.Of.Kind == FrontThing {
			k = rankOfFinding
		}
		if k < rank || k == 0 || !touches(m, at, r) {
			continue
		}
		best, rank = t.Of, k
	}
	return best, rank > 0
}

const rankOfFinding = 3

func rankOf(k SubjectKind) int {
	switch k {
	case FrontHeight, CabinetWidth, CabinetHeight, BayWidth:
		return 8
	case DivisionThing:
		return 7
	case PartitionThing:
		return 6
	case HoleThing:
		return 5
	case FrontThing:
		return 4
	case BayThing:
		return 2
	case CabinetThing:
		return 1
	default:
		return 0
	}
}

func touches(m Mark, at plane.Point, r Reach) bool {
	switch v := m.(type) {
	case *Dimension:
		f := v.Figure(r.Level)
		return (at.X-f.X).Abs() <= r.FigureX && (at.Y-f.Y).Abs() <= r.FigureY
	case *Rectangle:
		if v.Meaning == Grip {
			return grow(v.Rect, r.Near).Contains(at)
		}
		return v.Rect.Contains(at)
	case *Circle:
		return v.Bounds().Grow(r.Near).Contains(at)
	case *Spot:
		return v.Bounds().Grow(r.Near).Contains(at)
	case *Line:
		return v.Bounds().Grow(r.Near).Contains(at)
	default:
		return false
	}
}

// grow widens a grip's short side only, so that a division does not reach into
// the bay beside it.
func grow(r plane.Rect, near length.Length) plane.Rect {
	if r.Width() > r.Height() {
		r.Min.Y -= near
		r.Max.Y += near
	} else {
		r.Min.X -= near
		r.Max.X += near
	}
	return r
}

// Figure is the point of a dimension's figure: the middle of its line, which
// level moves by that much for each step.
func (m *Dimension) Figure(level length.Length) plane.Point {
	off := level * length.Length(m.Level)
	if m.Vertical {
		return plane.Point{X: m.Line + off, Y: m.From.Y + (m.To.Y-m.From.Y)/2}
	}
	return plane.Point{X: m.From.X + (m.To.X-m.From.X)/2, Y: m.Line + off}
}
