package opening

import (
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
)

// Niche is how a whole run stands in the niche that was measured, level and plumb on the highest
// place of its floor.
type Niche struct {
	Shape       *Shape
	Left, Right Filler
	// Above is what is left between the run and the niche's top at the left end, in the middle and
	// at the right end, Under what is between the floor and the run there.
	Above, Under [3]length.Length
	// Run is where the run stands without its fillers, in the frame of the shape.
	Run plane.Rect
}

// Filler is what is left between an end of the run and the wall: the widths of a filler that is
// scribed to it at its bottom, middle and top. Planned is 0 where the plan has none there.
type Filler struct {
	Planned length.Length
	Widths  [3]length.Length
}

// Least and Greatest are the narrowest and the widest place; the blank for a filler is at least as
// wide as that.
func (f Filler) Least() length.Length    { return min(f.Widths[0], f.Widths[1], f.Widths[2]) }
func (f Filler) Greatest() length.Length { return max(f.Widths[0], f.Widths[1], f.Widths[2]) }

// Short is how much narrower the niche is than the run without its fillers; 0 where it is not.
func (n *Niche) Short() length.Length { return max(0, -n.Left.Least(), -n.Right.Least()) }

// Low is how much lower the niche is than the run; 0 where it is not.
func (n *Niche) Low() length.Length { return max(0, -min(n.Above[0], n.Above[1], n.Above[2])) }

// OfNiche is how the run of a plan stands in its niche; nil where none was measured. What the niche
// has more or less than planned goes into both fillers alike, by their narrowest places; into the
// only one where the plan has one, the other end touching the wall; and half to each side where it
// has none.
func OfNiche(p *plan.Plan) *Niche {
	if p.Project.Niche == nil || len(p.Cabinets) == 0 {
		return nil
	}
	cabinets := p.Project.Cabinets
	n := &Niche{Shape: Of(p.Project.Niche, p.Extent.Width(), p.Extent.Max.Y)}
	n.Left.Planned, n.Right.Planned = cabinets[0].Left.Filler, cabinets[len(cabinets)-1].Right.Filler
	fixed := p.Extent.Width() - n.Left.Planned - n.Right.Planned
	s := n.Shape
	first, last := &p.Cabinets[0], &p.Cabinets[len(p.Cabinets)-1] // those that stand at the walls
	floor := max(s.floorAt(Bottom, s.corners[lowerLeft]), s.floorAt(Bottom, across(&s.corners)/2), s.floorAt(Bottom, s.corners[lowerRight]))
	var walls [2][3]float64
	for i, part := range []float64{0, 0.5, 1} {
		walls[0][i] = s.sideAt(Left, floor+part*first.Outline.Max.Y.MM())
		walls[1][i] = s.sideAt(Right, floor+part*last.Outline.Max.Y.MM())
	}
	nearLeft, nearRight := max(walls[0][0], walls[0][1], walls[0][2]), min(walls[1][0], walls[1][1], walls[1][2])
	spare := nearRight - nearLeft - fixed.MM()
	at := nearLeft // of the run's left end without its filler
	switch l, r := n.Left.Planned.MM(), n.Right.Planned.MM(); {
	case l > 0 && r == 0:
		at += spare
	case l == 0 && r > 0:
	default:
		at += l + (spare-l-r)/2
	}
	left, low := length.FromMM(at), length.FromMM(floor)
	n.Run = plane.R(left, low, left+fixed, low+p.Extent.Max.Y)
	for i := range 3 {
		n.Left.Widths[i] = length.FromMM(at - walls[0][i])
		n.Right.Widths[i] = length.FromMM(walls[1][i] - at - fixed.MM())
		x := at + float64(i)/2*fixed.MM()
		n.Under[i] = length.FromMM(floor - s.floorAt(Bottom, x))
		n.Above[i] = length.FromMM(s.floorAt(Top, x)-floor) - p.Extent.Max.Y
	}
	return n
}
