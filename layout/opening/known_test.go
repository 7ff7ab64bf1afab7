package opening

import (
	"math"
	"os"
	"testing"

	"frontlay/assets"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/yamlfile"
)

// Figures that contradict each other a little: corners and what is left over are those that
// a program in Python finds by itself (Gauss and Newton with differences for derivatives, normal
// equations solved by elimination).
func TestLeastSquaresAgreesWithAnotherProgram(t *testing.T) {
	m := &model.Measured{
		Widths:  model.MeasuredWidths{Bottom: mm(900.5), Middle: mm(902), Top: mm(901)},
		Heights: model.MeasuredHeights{Left: mm(650), Middle: mm(651), Right: mm(652.5)},
		Rising:  mm(1113), Falling: mm(1110),
	}
	f := newFit(takenOf(m), 900, 650)
	got := f.placed()
	for k, want := range []float64{0, 0, 900.817178, 0, 902.013781, 652.343091, 0.699946, 649.844691} {
		if math.Abs(got[k]-want) > 2e-6 {
			t.Errorf("coordinate %d is %.6f, want %.6f", k, got[k], want)
		}
	}
	for i, want := range []float64{-0.317178, 0.933627, -0.317298, 0.154932, -0.094582, 0.155811, -0.184787, -0.184289} {
		if v, _ := f.taken[i].figure.of(&f.corners); math.Abs(f.taken[i].value-v-want) > 2e-6 {
			t.Errorf("%v: %.6f left over, want %.6f", f.taken[i].figure.Say(), f.taken[i].value-v, want)
		}
	}
}

func measuredProject(t *testing.T) *plan.Plan {
	t.Helper()
	const path = "../../testdata/projects/measured.yaml"
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	// projecttest reads with the limits of the check, which knows this package.
	f, err := yamlfile.Read(path, data, func(source string) (string, []byte, error) {
		sheet, _ := assets.Sheet(source)
		return source, sheet, nil
	}, nil)
	if err != nil {
		t.Fatal(err)
	}
	return plan.Make(f.Project)
}

// The opening of testdata/projects/measured.yaml: left side plumb, right side out by 3 at the top
// of 722. By hand: best is a turn of −3/1444, so that both sides show a wedge of 1.5; the middle
// of the fronts is (−0.75 + 563.75)/2 = 281.5 at the bottom and goes right by 1.5 up to the top. The
// drawers are planned for 562: in front there are 281.5 − 281 = 0.5 and 563 − 562.5 = 0.5 at the
// bottom, and 1.5 more of each at the top; behind half of the millimetre that is less there is
// taken off both.
func TestPackingOfAKnownOpening(t *testing.T) {
	p := measuredProject(t)
	c := &p.Cabinets[0]
	b := &c.Bays[0]
	s := Of(p.Project.Cabinets[0].Bays[0].Measured, b.Opening.Width(), b.Opening.Height())
	if !s.Doubt.Agree() {
		t.Fatalf("%+v", s.Doubt)
	}
	best := s.BestFronts(b.Stack, b.Opening, WantedReveals(c, 0))
	// 563 + 3·½ less half a wedge, less two reveals of 3: 564.5 − 6.
	if !near(best.Width, mm(558.5), 0.11) {
		t.Errorf("fronts are %v wide", best.Width)
	}
	list, aside := s.PackingList(p, b, best)
	if len(list) != 3 {
		t.Fatalf("%d drawers", len(list))
	}
	if !near(aside, 0, 0.06) {
		t.Errorf("all move by %v", aside)
	}
	for _, k := range list {
		y := k.Height.MM()
		if want := 563 + 3*y/722; !near(k.Ends[0].Width, mm(want), 0.05) || !near(k.Ends[0].Spare, mm(want-562), 0.05) {
			t.Errorf("front %d: %v wide at %v, want %v", k.Front.Number, k.Ends[0].Width, k.Height, want)
		}
		if want := 562 + 2*y/722; !near(k.Ends[1].Width, mm(want), 0.05) {
			t.Errorf("front %d: %v wide behind at %v, want %v", k.Front.Number, k.Ends[1].Width, k.Height, want)
		}
		left := 0.5 + y*3/1444
		if got := k.Ends[0].Left; math.Abs(got.MM()-left) > 0.25+0.06 {
			t.Errorf("front %d: packing of %v at the left, want about %v", k.Front.Number, got, left)
		}
		for _, e := range k.Ends {
			if both := e.Left + e.Right; e.Left < 0 || e.Right < 0 || both > max(0, e.Spare+10) || both <= e.Spare-PackingStep || both%PackingStep != 0 {
				t.Errorf("front %d: %+v", k.Front.Number, e)
			}
		}
		if k.Narrow() != max(0, -k.Ends[1].Spare) {
			t.Errorf("front %d is too narrow by %v", k.Front.Number, k.Narrow())
		}
	}
}

// An opening that is too narrow by 2 at the top is told for the drawers up there alone.
func TestTooNarrowForADrawer(t *testing.T) {
	p := measuredProject(t)
	b := &p.Cabinets[0].Bays[0]
	s := Of(tape(corners{0, 0, 563, 0, 560, 722, 0, 722}, true, exactly), b.Opening.Width(), b.Opening.Height())
	list, _ := s.PackingList(p, b, s.BestFronts(b.Stack, b.Opening, [4]length.Length{}))
	for _, k := range list {
		want := max(0, -(563 - 3*k.Height.MM()/722 - 562))
		if !near(k.Narrow(), mm(want), 1e-5) {
			t.Errorf("front %d is too narrow by %v, want %v", k.Front.Number, k.Narrow(), want)
		}
	}
}

// The niche: corners 0,0; 668,2; 662,802; 4,800 to what a tape read to the millimetre tells. The run
// is 600 without its fillers and stands on the floor's highest place, 2 at the right. The walls
// bow inwards by 2 together. By hand, at 2 above the origin: left wall 0.01, at half of 760 1.91 + 1
// of bow, at the top 3.81.
func TestNicheOfAKnownShape(t *testing.T) {
	n := OfNiche(measuredProject(t))
	if n.Left.Planned != mm(30) || n.Right.Planned != mm(30) || n.Short() != 0 || n.Low() != 0 {
		t.Fatalf("%+v", n)
	}
	wallLeft := []float64{0, 1.91 + 1, 3.81}
	wallRight := []float64{668, 668 - 2.87 - 1, 668 - 5.72}
	at := (3.81+668-5.72-600)/2 + 0.0
	for i := range 3 {
		if !near(n.Left.Widths[i], mm(at-wallLeft[i]), 0.7) || !near(n.Right.Widths[i], mm(wallRight[i]-at-600), 0.7) {
			t.Errorf("fillers %v and %v, want %.2f and %.2f", n.Left.Widths[i], n.Right.Widths[i], at-wallLeft[i], wallRight[i]-at-600)
		}
		if want := 800 - 2 - 760 + 2*(at+float64(i)*300)/668; !near(n.Above[i], mm(want), 0.7) {
			t.Errorf("%v above, want %.2f", n.Above[i], want)
		}
		if want := 2 - 2*(at+float64(i)*300)/668; !near(n.Under[i], mm(want), 0.7) {
			t.Errorf("%v under, want %.2f", n.Under[i], want)
		}
	}
	if !near(n.Left.Least(), n.Right.Least(), 1e-5) {
		t.Errorf("the fillers are at least %v and %v wide", n.Left.Least(), n.Right.Least())
	}
}
