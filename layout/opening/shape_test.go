package opening

import (
	"math"
	"math/rand/v2"
	"testing"

	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

func mm(v float64) length.Length { return length.FromMM(v) }

func ptr(v float64) *length.Length { l := mm(v); return &l }

func near(a, b length.Length, within float64) bool { return math.Abs((a - b).MM()) <= within }

// trait finds what a shape says of a trait.
func trait(t *testing.T, s *Shape, of Trait) Said {
	t.Helper()
	for _, x := range s.Said {
		if x.What == of {
			return x
		}
	}
	t.Fatal("not said")
	return Said{}
}

// Corners (0,0) (600,3) (604,705) (2,700): the figures are computed by Pythagoras (computed:
// √(600²+3²), √(602²+5²), …).
func TestTraitsOfAKnownShape(t *testing.T) {
	root := func(a, b float64) length.Length { return mm(math.Sqrt(a*a + b*b)) }
	m := &model.Measured{
		Widths:  model.MeasuredWidths{Bottom: root(600, 3), Top: root(602, 5)},
		Heights: model.MeasuredHeights{Left: root(2, 700), Right: root(4, 702)},
		Rising:  root(604, 705), Falling: root(598, 697),
		PlumbLeft: ptr(2), Level: ptr(3),
	}
	s := Of(m, mm(600), mm(700))
	if !s.Doubt.Agree() || !s.Doubt.Checked || !s.Upright {
		t.Fatalf("%+v", s.Doubt)
	}
	for of, want := range map[Trait]float64{
		OffPlumbLeft: 2, OffPlumbRight: 4, OffLevel: 3,
		LeanLeft:    2 + 700*3/600.0, // along a bottom that rises 3 in 600
		LeanRight:   4 + 702*3/600.0,
		Diagonals:   math.Hypot(604, 705) - math.Hypot(598, 697),
		SidesSpread: math.Hypot(602, 5) - math.Hypot(600, 3),
		TopRises:    math.Hypot(4, 702) - math.Hypot(2, 700),
	} {
		if x := trait(t, s, of); !x.Known || !near(x.Value, mm(want), 2e-3) || x.Give <= 0 {
			t.Errorf("%v: %v ± %v, want %.4f", of.Say(mm(want)), x.Value, x.Give, want)
		}
	}
	for k, want := range [][2]float64{{0, 0}, {600, 3}, {604, 705}, {2, 700}} {
		if x, y := s.Corner(k); !near(x, mm(want[0]), 1e-5) || !near(y, mm(want[1]), 1e-5) {
			t.Errorf("corner %d is %v, %v, want %v", k, x, y, want)
		}
	}
}

// What no figure tells is not told: without diagonals nothing says whether it is square, without
// plumb and level nothing how it stands.
func TestWhatIsNotMeasuredIsNotTold(t *testing.T) {
	m := &model.Measured{Widths: model.MeasuredWidths{Bottom: mm(600), Middle: mm(601), Top: mm(602)}, Heights: model.MeasuredHeights{Left: mm(700)}}
	s := Of(m, mm(600), mm(700))
	for of, known := range map[Trait]bool{SidesSpread: true, BowAcross: true, LeanLeft: false, LeanRight: false, Diagonals: false, TopRises: false, BowUpwards: false, OffPlumbLeft: false, OffLevel: false} {
		if x := trait(t, s, of); x.Known != known {
			t.Errorf("%v: known is %v", of.Say(0), x.Known)
		}
	}
	if x := trait(t, s, SidesSpread); !near(x.Value, mm(2), 1e-5) {
		t.Errorf("the sides spread by %v, want 2", x.Value)
	}
	if s.WidthFromPlan || !s.HeightFromPlan || s.Doubt.Agree() == false {
		t.Errorf("%+v", s)
	}
	if s := Of(&model.Measured{Within: mm(1)}, mm(600), mm(700)); !s.WidthFromPlan || !s.HeightFromPlan || s.Doubt.Checked {
		t.Errorf("of nothing: %+v", s)
	}
}

// With the sides and the diagonals alone any figure could be the wrong one (redundancy 1: oracles,
// “Four sides and two diagonals: 5 unknowns, redundancy 1, every residual correlates ± 1”).
func TestSidesAndDiagonalsAloneTellNothingApart(t *testing.T) {
	m := &model.Measured{
		Widths: model.MeasuredWidths{Bottom: mm(600), Top: mm(605)}, Heights: model.MeasuredHeights{Left: mm(700), Right: mm(700)},
		Rising: mm(921.95), Falling: mm(921.95),
	}
	if f := newFit(takenOf(m), 600, 700); f.checks() != 1 {
		t.Errorf("%d figures are more than it takes, want 1", f.checks())
	}
	s := Of(m, mm(600), mm(700))
	if len(s.Doubt.Again) != 6 || !s.Doubt.Any || s.Doubt.Several {
		t.Errorf("%+v", s.Doubt)
	}
	m.Widths.Middle, m.Heights.Middle = mm(602.5), mm(700)
	if f := newFit(takenOf(m), 600, 700); f.checks() != 3 {
		t.Errorf("%d figures are more than it takes, want 3", f.checks())
	}
}

// Bowed boards: the middle figures alone are named, what they bow by is told, and the shape is
// that of the other figures.
func TestBowedBoards(t *testing.T) {
	c := corners{0, 0, 600, 0, 600, 700, 0, 700}
	m := tape(c, false, exactly)
	m.Widths.Middle -= mm(4)
	m.Heights.Middle -= mm(3)
	s := Of(m, mm(600), mm(700))
	if len(s.Doubt.Again) != 2 || len(s.Doubt.Bowed) != 2 || s.Doubt.Several {
		t.Fatalf("%+v", s.Doubt)
	}
	if x := trait(t, s, BowAcross); !near(x.Value, mm(-4), 1e-5) {
		t.Errorf("the sides bow by %v", x.Value)
	}
	if x := trait(t, s, BowUpwards); !near(x.Value, mm(-3), 1e-5) {
		t.Errorf("bottom and top bow by %v", x.Value)
	}
	if got := s.sideAt(Right, 350) - s.sideAt(Left, 350); math.Abs(got-596) > 1e-5 {
		t.Errorf("half up it is %v wide, want 596", got)
	}
	m.Rising += mm(9)
	if s := Of(m, mm(600), mm(700)); !s.Doubt.Several || s.Doubt.Agree() {
		t.Errorf("two bowed and a slip: %+v", s.Doubt)
	}
}

// Sides that spread by 6: fronts with wanted reveals of 3 stand halfway, 1.5 more or less at
// the ends (computed by hand). A parallelogram leaning by 4 on 700, 600 wide: turning by a is best
// where 4 − 700a = 600a, 1.8462 (computed by hand).
func TestBestFronts(t *testing.T) {
	opening := plane.R(0, 0, mm(600), mm(700))
	stack := plane.R(mm(3), mm(3), mm(597), mm(697))
	wanted := [4]length.Length{mm(3), mm(3), mm(3), mm(3)}
	b := Of(tape(corners{0, 0, 600, 0, 603, 700, -3, 700}, false, exactly), mm(600), mm(700)).BestFronts(stack, opening, wanted)
	if b.Width != mm(597) || b.Height != mm(694) || !near(b.Rises, 0, 1e-3) {
		t.Errorf("%v × %v, rises %v", b.Width, b.Height, b.Rises)
	}
	for i, want := range []float64{1.5, 3, 4.5} {
		if !near(b.Reveals[Left].At[i], mm(want), 1e-3) || !near(b.Reveals[Right].At[i], mm(want), 1e-3) || !near(b.Reveals[Top].At[i], mm(3), 1e-3) {
			t.Errorf("%+v", b.Reveals)
		}
	}
	b = Of(tape(corners{0, 0, 600, 0, 604, 700, 4, 700}, false, exactly), mm(600), mm(700)).BestFronts(stack, opening, wanted)
	for e := Left; e <= Top; e++ {
		if got := b.Reveals[e].Spread(); !near(got, mm(4.0*600/1300), 5e-3) {
			t.Errorf("edge %d: spread %v, want 1.8462", e, got)
		}
	}
	if !near(b.Rises, mm(-594*4.0/1300), 0.02) {
		t.Errorf("it rises by %v", b.Rises)
	}
}

// No turn on a fine grid has a smaller largest wedge.
func TestBestFrontsAreBest(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 14))
	opening := plane.R(0, 0, mm(600), mm(700))
	for n := range 100 {
		c := quadrilateral(r, 600, 700, 8, n%2 == 0)
		s := &Shape{corners: c, across: 4*r.Float64() - 2, upwards: 4*r.Float64() - 2}
		s.turn = s.bestTurn()
		b := s.BestFronts(opening, opening, [4]length.Length{})
		most := length.Length(0)
		for e := Left; e <= Top; e++ {
			most = max(most, b.Reveals[e].Spread())
		}
		for k := -300; k <= 300; k++ {
			if w := s.wedge(float64(k) / 10000); w < most.MM()-1e-5 {
				t.Fatalf("case %d: turned by %v the wedge is %v, less than %v", n, float64(k)/10000, w, most)
			}
		}
	}
}
