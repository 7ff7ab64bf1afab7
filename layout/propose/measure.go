package propose

import (
	"math"
	"slices"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Measure is one term of what makes a division good or bad.
type Measure uint8

// The terms. Each is counted in its unit, 0 being best.
const (
	// Lost is the height that is neither needed nor in a drawer for nothing in
	// particular, in mm: gaps, drawer bottoms, runners, and what drawers are higher
	// inside than what they hold. Where each drawer holds something it is the same for
	// all divisions into as many fronts; then the other terms decide.
	Lost Measure = iota
	// Settings are the settings of the drilling jig (edge distances and drop) that the
	// bay's fronts want.
	Settings
	// Drops are the drawers above the lowest whose front is not level with its runner.
	Drops
	// Lines are the lines that end at the side of the bay: its divisions that meet none
	// of a neighbouring bay, and those of a neighbour, at its height, that meet none of it.
	Lines
	// Order are the pairs of neighbours of which the lower front is less high than the
	// upper one, by more than the odd rest.
	Order
	// Uneven are the pairs of neighbours that are to hold the same, or both nothing in
	// particular, and are not equally high but for the odd rest.
	Uneven
	measures
)

// measure tells of a term its key, its name, and what one of its unit weighs where
// nobody says otherwise: in millimetres of lost height, which everything is compared
// with. The weights are ours, from what a joiner would give up for what.
type measure struct {
	Key   string
	Name  message.Message
	Unit  message.Message
	Usual Weight
}

var terms = [measures]measure{
	Lost:     {"height", message.New("Least loss of height"), message.New("each millimetre"), 1 * whole},
	Settings: {"jig", message.New("Fewest jig settings"), message.New("each setting"), 20 * whole},
	Drops:    {"drops", message.New("Upper drops 0"), message.New("each drawer with a drop"), 10 * whole},
	Lines:    {"lines", message.New("Lines up with the bays beside"), message.New("each line that ends there"), 15 * whole},
	Order:    {"order", message.New("Higher fronts below"), message.New("each pair out of order"), 50 * whole},
	Uneven:   {"equal", message.New("Equal stays equal"), message.New("each unequal pair"), 30 * whole},
}

// Measures are all terms, in the order in which they are told.
func Measures() []Measure {
	all := make([]Measure, measures)
	for i := range all {
		all[i] = Measure(i)
	}
	return all
}

// Key is how the command line speaks of a term.
func (m Measure) Key() string { return terms[m].Key }

// Name is what a term is called.
func (m Measure) Name() message.Message { return terms[m].Name }

// Unit says what the weight of a term is of.
func (m Measure) Unit() message.Message { return terms[m].Unit }

// Weight is what one of a term's unit weighs, in thousandths of a millimetre of lost
// height: 0 leaves the term out.
type Weight int64

const whole Weight = 1000

// HeaviestMM bounds what a weight can be.
const HeaviestMM = 1000

// WeightOf is the weight nearest to so many millimetres; false where it is not from 0
// to HeaviestMM.
func WeightOf(mm float64) (Weight, bool) {
	if !(mm >= 0 && mm <= HeaviestMM) {
		return 0, false
	}
	return Weight(math.Round(mm * float64(whole))), true
}

// MM is the weight in millimetres of lost height.
func (w Weight) MM() float64 { return float64(w) / float64(whole) }

// Weights has one for each term.
type Weights [measures]Weight

// UsualWeights are those where nobody says otherwise.
func UsualWeights() (w Weights) {
	for i := range w {
		w[i] = terms[i].Usual
	}
	return w
}

// Term is one term of a proposal: Height of Lost, Count of all others. Needless and
// Taken are the two parts of Lost: what drawers are higher inside than needed, and what
// gaps, bottoms and runners take. Sides are the two of Lines: at the left and at the
// right, where a bay is There.
type Term struct {
	Measure         Measure
	Count           int
	Height          length.Length
	Needless, Taken length.Length
	Sides           [2]int
	There           [2]bool
	points          int64
}

// Points are what the term comes to, in millimetres of lost height.
func (t Term) Points() float64 { return float64(t.points) / pointsInMM }

// cost is what divisions are compared by: points, and of equal ones by the sum of squares
// of how much higher each front is than what its drawer is to hold.
type cost struct{ points, squares int64 }

// pointsInMM is how many points are a millimetre of lost height: a weight counts
// thousandths, a length nanometres.
const pointsInMM = float64(whole) * float64(length.Millimetre)

func (c cost) plus(d cost) cost { return cost{c.points + d.points, c.squares + d.squares} }

func (c cost) less(d cost) bool {
	return c.points < d.points || c.points == d.points && c.squares < d.squares
}

// count weighs so many of a term.
func (w *Weights) count(m Measure, n int) cost {
	return cost{points: int64(w[m]) * int64(n) * int64(length.Millimetre)}
}

// lost weighs a lost height.
func (w *Weights) lost(h length.Length) cost { return cost{points: int64(w[Lost]) * int64(h)} }

// left is what a front that is so much higher than needed counts among equals.
func left(over length.Length) cost {
	n := int64(over / (10 * length.Micrometre))
	return cost{squares: n * n}
}

// Usable is how high something can stand in a front's drawer: from the drawer bottom's
// upper face to what is above, less the clearance that the hardware asks for there.
func Usable(f *plan.Front) length.Length {
	return f.Drawer.Limit - f.Sheet.Runner.ClearanceAbove - f.Drawer.Bottom.Max.Y
}

// outOfOrder and uneven compare two fronts that follow each other by their heights; step
// is the odd rest.
func outOfOrder(lower, upper, step length.Length) bool { return lower+step < upper }

func uneven(lower, upper, step length.Length) bool { return (lower - upper).Abs() > step }

// judge measures the stack of the bay at a place in a plan. needs are the heights of
// what its drawers are to hold, bottom to top; 0: nothing in particular.
func judge(pl *plan.Plan, at model.Place, needs []length.Length, w *Weights) ([]Term, cost) {
	b := pl.BayAt(at)
	fronts := pl.Fronts[b.First : b.First+b.Count]
	step := pl.Project.RoundingStep()
	got := make([]Term, measures)
	for i := range got {
		got[i].Measure = Measure(i)
	}
	total, lost := cost{}, &got[Lost]
	lost.Taken = b.Room
	beside := linesBeside(pl, at)
	settings := map[[3]length.Length]bool{}
	for k := range fronts {
		f := &fronts[k]
		over := Usable(f) - needs[k]
		lost.Taken -= Usable(f)
		if needs[k] > 0 {
			lost.Needless += over
		}
		total = total.plus(left(f.Face.Height() - needs[k]))
		settings[[3]length.Length{f.EdgeDistance.Left, f.EdgeDistance.Right, f.Drop}] = true
		if !f.OnFloor && f.Drop != 0 {
			got[Drops].Count++
		}
		if k == 0 {
			continue
		}
		lower, upper := fronts[k-1].Face.Height(), f.Face.Height()
		if outOfOrder(lower, upper, step) {
			got[Order].Count++
		}
		if needs[k-1] == needs[k] && uneven(lower, upper, step) {
			got[Uneven].Count++
		}
		for i := range beside {
			got[Lines].Sides[i] += beside[i].unmet(fronts[k-1].Face.Max.Y)
		}
	}
	got[Settings].Count = len(settings)
	for i := range beside {
		got[Lines].Sides[i] += beside[i].within(fronts[0].Face.Min.Y, fronts[0].Face.Min.Y+b.Room)
		got[Lines].Count += got[Lines].Sides[i]
		got[Lines].There[i] = beside[i].there
	}
	lost.Height = lost.Needless + lost.Taken
	for i := range got {
		c := w.count(Measure(i), got[i].Count)
		if Measure(i) == Lost {
			c = w.lost(lost.Height)
		}
		got[i].points = c.points
		total = total.plus(c)
	}
	return got, total
}

// beside are the bays at the left and the right.
type beside [2]side

// side is a bay beside, or none, with its lines: the top edges of its fronts but the
// highest, run frame.
type side struct {
	there bool
	lines []length.Length
}

// linesBeside are those of a bay.
func linesBeside(pl *plan.Plan, at model.Place) (b beside) {
	var bays []*plan.Bay
	here := 0
	for i := range pl.Cabinets {
		for j := range pl.Cabinets[i].Bays {
			if i == at.Cabinet && j == at.Bay {
				here = len(bays)
			}
			bays = append(bays, &pl.Cabinets[i].Bays[j])
		}
	}
	for i, k := range []int{here - 1, here + 1} {
		if k < 0 || k >= len(bays) {
			continue
		}
		b[i].there = true
		for n := 0; n+1 < len(bays[k].Column); n++ {
			b[i].lines = append(b[i].lines, pl.Fronts[bays[k].Column[n]].Face.Max.Y)
		}
	}
	return b
}

// unmet is what a division at a height adds to the lines that end: one at each side
// where none meets it, less one where one does, which then ends no more.
func (b *beside) unmet(y length.Length) int { return b[0].unmet(y) + b[1].unmet(y) }

func (s *side) unmet(y length.Length) int {
	switch {
	case !s.there:
		return 0
	case slices.Contains(s.lines, y):
		return -1
	}
	return 1
}

// within counts the lines of the sides between two heights.
func (b *beside) within(low, high length.Length) int {
	return b[0].within(low, high) + b[1].within(low, high)
}

func (s *side) within(low, high length.Length) (n int) {
	for _, l := range s.lines {
		if l > low && l < high {
			n++
		}
	}
	return n
}
