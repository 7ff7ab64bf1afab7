package opening

import (
	"math"

	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Shape is what the figures tell of an opening.
type Shape struct {
	Within length.Length // how far each figure may be off
	Doubt  Doubt
	// Upright tells that the frame stands to the plumb line; else its bottom is taken as level.
	Upright bool
	// FromPlan are width and height that no figure tells: the plan's are taken.
	WidthFromPlan, HeightFromPlan bool
	Said                          []Said
	Read                          []Reading

	corners         corners
	across, upwards float64 // how far the two sides together, and bottom and top, bow outwards, mm
	back            model.MeasuredWidths
	turn            float64 // of the best fronts, as dy by dx
}

// Said is one thing that the shape tells. Give is by how much it may be wrong where each figure
// is off by what it may be; where Known is false the figures do not tell it, and it is nothing.
type Said struct {
	What  Trait
	Value length.Length
	Give  length.Length
	Known bool
}

// Reading is a measured figure with that of the shape between straight sides.
type Reading struct {
	Figure          Figure
	Measured, Shape length.Length
}

// Trait names something that an opening can be beside rectangular.
type Trait uint8

// The traits, in the order in which they are told.
const (
	LeanLeft    Trait = iota // the left side's upper end to the right, from square on the bottom
	LeanRight                // the right side's likewise
	Diagonals                // the rising one is longer by
	SidesSpread              // the top is wider than the bottom by
	TopRises                 // the right side is higher than the left one by
	BowAcross                // wider in the middle than at its ends say, by
	BowUpwards               // higher in the middle
	OffPlumbLeft
	OffPlumbRight
	OffLevel
)

// Say is the trait with its value, which is not below zero; way turns it round.
func (t Trait) Say(v length.Length) message.Message {
	back := v < 0
	v = v.Abs()
	switch t {
	case LeanLeft:
		if back {
			return message.New("the left side leans outwards from square by %v over its height", v)
		}
		return message.New("the left side leans inwards from square by %v over its height", v)
	case LeanRight:
		if back {
			return message.New("the right side leans inwards from square by %v over its height", v)
		}
		return message.New("the right side leans outwards from square by %v over its height", v)
	case Diagonals:
		if back {
			return message.New("the diagonal from upper left to lower right is longer by %v", v)
		}
		return message.New("the diagonal from lower left to upper right is longer by %v", v)
	case SidesSpread:
		if back {
			return message.New("the sides come together upwards by %v", v)
		}
		return message.New("the sides spread upwards by %v", v)
	case TopRises:
		if back {
			return message.New("bottom and top come together to the right by %v", v)
		}
		return message.New("bottom and top spread to the right by %v", v)
	case BowAcross:
		if back {
			return message.New("the sides bow inwards by %v, both together", v)
		}
		return message.New("the sides bow outwards by %v, both together", v)
	case BowUpwards:
		if back {
			return message.New("bottom and top bow inwards by %v, both together", v)
		}
		return message.New("bottom and top bow outwards by %v, both together", v)
	case OffPlumbLeft:
		return leans(message.New("the left side"), v, back)
	case OffPlumbRight:
		return leans(message.New("the right side"), v, back)
	default:
		if back {
			return message.New("the bottom falls to the right by %v", v)
		}
		return message.New("the bottom rises to the right by %v", v)
	}
}

func leans(side message.Message, v length.Length, back bool) message.Message {
	if back {
		return message.New("%v leans to the left of plumb by %v", side, v)
	}
	return message.New("%v leans to the right of plumb by %v", side, v)
}

// worked is what Of gives.
func worked(m *model.Measured, w, h length.Length) *Shape {
	all := takenOf(m)
	s := &Shape{Within: m.Tape(), back: m.Back}
	w0, h0 := w.MM(), h.MM()
	if v, ok := mean(m.Widths.Bottom, m.Widths.Middle, m.Widths.Top); ok {
		w0 = v
	}
	if v, ok := mean(m.Heights.Left, m.Heights.Middle, m.Heights.Right); ok {
		h0 = v
	}
	s.Doubt = doubtOf(all, s.Within.MM(), w0, h0)
	straight := without(all, s.Doubt.Bowed)
	f := newFit(straight, w0, h0)
	s.corners, s.Upright = f.placed(), f.upright()
	s.bow(all)
	s.turn = s.bestTurn()
	for _, t := range all {
		v, _ := t.figure.of(&f.corners)
		s.Read = append(s.Read, Reading{t.figure, length.FromMM(t.value), length.FromMM(v)})
	}
	at := corners{0, 0, w0, 0, w0, h0, 0, h0}
	_, know := f.tells(grownBy(across, &at))
	s.WidthFromPlan = !know
	_, know = f.tells(grownBy(upwards, &at))
	s.HeightFromPlan = !know
	s.say(f, all, &at)
	return s
}

// mean is the mean of what was measured, mm.
func mean(all ...length.Length) (float64, bool) {
	sum, n := 0.0, 0
	for _, v := range all {
		if v > 0 {
			sum, n = sum+v.MM(), n+1
		}
	}
	return sum / max(1, float64(n)), n > 0
}

// bow takes the middle figures that are left out of the shape for bowed boards.
func (s *Shape) bow(all []taken) {
	for _, t := range all {
		for _, f := range s.Doubt.Bowed {
			v, _ := f.of(&s.corners)
			switch {
			case f != t.figure:
			case f == WidthMiddle:
				s.across = t.value - v
			default:
				s.upwards = t.value - v
			}
		}
	}
}

// across and upwards are the opening's mean width and height between straight sides, mm.
func across(c *corners) float64  { v, _ := WidthMiddle.of(c); return v }
func upwards(c *corners) float64 { v, _ := HeightMiddle.of(c); return v }

// traits are those that follow from the corners, in mm.
var traits = map[Trait]func(*corners) float64{
	LeanLeft:      func(c *corners) float64 { return along(c, lowerLeft, upperLeft) },
	LeanRight:     func(c *corners) float64 { return along(c, lowerRight, upperRight) },
	Diagonals:     func(c *corners) float64 { return apart(c, lowerLeft, upperRight) - apart(c, upperLeft, lowerRight) },
	SidesSpread:   func(c *corners) float64 { return apart(c, upperLeft, upperRight) - apart(c, lowerLeft, lowerRight) },
	TopRises:      func(c *corners) float64 { return apart(c, lowerRight, upperRight) - apart(c, lowerLeft, upperLeft) },
	OffPlumbLeft:  func(c *corners) float64 { return c[upperLeft] - c[lowerLeft] },
	OffPlumbRight: func(c *corners) float64 { return c[upperRight] - c[lowerRight] },
	OffLevel:      func(c *corners) float64 { return c[lowerRight+1] - c[lowerLeft+1] },
}

func apart(c *corners, a, b int) float64 { return math.Hypot(c[b]-c[a], c[b+1]-c[a+1]) }

// along is how far b lies from a in the direction of the bottom.
func along(c *corners, a, b int) float64 {
	x, y := c[lowerRight]-c[lowerLeft], c[lowerRight+1]-c[lowerLeft+1]
	return ((c[b]-c[a])*x + (c[b+1]-c[a+1])*y) / math.Hypot(x, y)
}

// grownBy is how a quantity grows with each coordinate.
func grownBy(of func(*corners) float64, at *corners) (grows corners) {
	const step = 1e-3
	for k := range at {
		up, down := *at, *at
		up[k] += step
		down[k] -= step
		grows[k] = (of(&up) - of(&down)) / (2 * step)
	}
	return grows
}

// say tells all traits; of the bows those whose middle figure was taken.
func (s *Shape) say(f *fit, all []taken, at *corners) {
	for t := LeanLeft; t <= OffLevel; t++ {
		one := Said{What: t}
		switch t {
		case BowAcross, BowUpwards:
			one.Value, one.Give, one.Known = s.bowed(f, all, at, t)
		default:
			share, known := f.tells(grownBy(traits[t], at))
			if one.Known = known; known {
				one.Value, one.Give = length.FromMM(traits[t](&s.corners)), length.FromMM(share*s.Within.MM())
			}
		}
		s.Said = append(s.Said, one)
	}
}

// bowed is by how much a middle figure is more than straight sides would have, as far as it is
// told: not where nothing else tells how far apart they are in the middle.
func (s *Shape) bowed(f *fit, all []taken, at *corners, t Trait) (value, give length.Length, known bool) {
	figure, of := WidthMiddle, across
	if t == BowUpwards {
		figure, of = HeightMiddle, upwards
	}
	rest := newFit(without(f.taken, []Figure{figure}), at[lowerRight], at[upperLeft+1])
	share, known := rest.tells(grownBy(of, at))
	if !known {
		return 0, 0, false
	}
	for _, m := range all {
		if m.figure == figure {
			return length.FromMM(m.value - of(&rest.corners)), length.FromMM((share + 1) * s.Within.MM()), true
		}
	}
	return 0, 0, false
}

// placed are the corners with the lower left one at the origin: as they are where plumb or
// level was measured, else turned so that the bottom is level.
func (f *fit) placed() corners {
	c := f.corners
	x, y := c[lowerLeft], c[lowerLeft+1]
	cos, sin := 1.0, 0.0
	if !f.upright() {
		w := math.Hypot(c[lowerRight]-x, c[lowerRight+1]-y)
		cos, sin = (c[lowerRight]-x)/w, (c[lowerRight+1]-y)/w
	}
	for k := 0; k < len(c); k += 2 {
		dx, dy := c[k]-x, c[k+1]-y
		c[k], c[k+1] = cos*dx+sin*dy, cos*dy-sin*dx
	}
	return c
}

// upright tells that the figures say how the opening stands to the plumb line.
func (f *fit) upright() bool {
	for _, t := range f.taken {
		if t.figure >= PlumbLeft {
			return true
		}
	}
	return false
}

// Corner gives a corner: 0 lower left, 1 lower right, 2 upper right, 3 upper left.
func (s *Shape) Corner(k int) (x, y length.Length) {
	return length.FromMM(s.corners[2*k]), length.FromMM(s.corners[2*k+1])
}

// Edge names an edge of the opening.
type Edge uint8

// The edges of an opening.
const (
	Left Edge = iota
	Right
	Bottom
	Top
)

// Edge gives the three points of an edge: its ends, from the bottom up or from left to right, and
// between them its middle.
func (s *Shape) Edge(e Edge) (at [3]plane.Point) {
	for i, p := range s.edge(e) {
		at[i] = p.exact()
	}
	return at
}

// Mean is the width and the height of the opening halfway, between straight sides.
func (s *Shape) Mean() (w, h length.Length) {
	return length.FromMM(across(&s.corners)), length.FromMM(upwards(&s.corners))
}

func (p point) exact() plane.Point { return plane.Point{X: length.FromMM(p.x), Y: length.FromMM(p.y)} }

// point is a point, mm.
type point struct{ x, y float64 }

// edge gives three points of an edge: its ends, from the bottom up or from left to right, and its
// middle, which a bow moves by half of what both edges bow together: whose it is no tape tells.
func (s *Shape) edge(e Edge) [3]point {
	c := &s.corners
	ends := [...][2]int{{lowerLeft, upperLeft}, {lowerRight, upperRight}, {lowerLeft, lowerRight}, {upperLeft, upperRight}}[e]
	a, b := point{c[ends[0]], c[ends[0]+1]}, point{c[ends[1]], c[ends[1]+1]}
	m := point{(a.x + b.x) / 2, (a.y + b.y) / 2}
	switch e {
	case Left:
		m.x -= s.across / 2
	case Right:
		m.x += s.across / 2
	case Bottom:
		m.y -= s.upwards / 2
	default:
		m.y += s.upwards / 2
	}
	return [3]point{a, m, b}
}

// sideAt is x of a side at a height, and floorAt y of bottom or top at a place across: on the
// parabola through its three points.
func (s *Shape) sideAt(e Edge, y float64) float64 {
	p := s.edge(e)
	return bent(y, [3]float64{p[0].y, p[1].y, p[2].y}, [3]float64{p[0].x, p[1].x, p[2].x})
}

func (s *Shape) floorAt(e Edge, x float64) float64 {
	p := s.edge(e)
	return bent(x, [3]float64{p[0].x, p[1].x, p[2].x}, [3]float64{p[0].y, p[1].y, p[2].y})
}

// bent is the value at a place of the parabola through three points (Lagrange).
func bent(at float64, x, y [3]float64) float64 {
	sum := 0.0
	for i := range x {
		part := y[i]
		for k := range x {
			if k != i {
				part *= (at - x[k]) / (x[i] - x[k])
			}
		}
		sum += part
	}
	return sum
}

// Name is what the opening is without a trait.
func (t Trait) Name() message.Message {
	switch t {
	case LeanLeft:
		return message.New("square at the lower left")
	case LeanRight:
		return message.New("square at the lower right")
	case Diagonals:
		return message.New("diagonals alike")
	case SidesSpread:
		return message.New("sides parallel")
	case TopRises:
		return message.New("bottom and top parallel")
	case BowAcross:
		return message.New("sides straight")
	case BowUpwards:
		return message.New("bottom and top straight")
	case OffPlumbLeft:
		return message.New("left side plumb")
	case OffPlumbRight:
		return message.New("right side plumb")
	default:
		return message.New("bottom level")
	}
}
