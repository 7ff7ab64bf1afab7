package tipping_test

import (
	"math"
	"path/filepath"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout/plan"
	"frontlay/layout/projecttest"
	"frontlay/layout/tipping"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Worked by another language from testdata/projects/tipping.yaml: boards as boxes of 700
// kg/m³, the pivot 50 mm behind the front edge, drawers of 4 kg with 10 and 5 kg in their
// middle 200 mm behind that edge, fronts of 2.24 kg 10 mm before it, all 400 mm out.
func TestChestByHand(t *testing.T) {
	s := tipping.Of(plan.Make(projecttest.Read(t, filepath.Join("..", "..", "testdata", "projects", "tipping.yaml"))), 0)
	if len(s.States) != 4 || len(s.NoWeight) > 0 {
		t.Fatalf("%d states, not counted %v", len(s.States), s.NoWeight)
	}
	for i, want := range [][2]float64{{75.78971386, 2.63602752}, {41.95677136, 40.66621622}, {41.95677136, 76.59778182}, {41.95677136, 191.82591932}} {
		if got := s.States[i]; math.Abs(got.Holds-want[0]) > 1e-6 || math.Abs(got.Tips-want[1]) > 1e-6 {
			t.Errorf("%v: holds %.6f, tips %.6f N·m, not %.6f and %.6f", got.Name, got.Holds, got.Tips, want[0], want[1])
		}
	}
	if worst := s.Worst(); worst != &s.States[3] || math.Abs(s.Pull(worst)-299.73829592) > 1e-6 || s.EdgeKg() != 0 {
		t.Errorf("worst %v, pull %v N, edge %v kg", worst.Name, s.Pull(worst), s.EdgeKg())
	}
}

// A heavier carcass never tips sooner, a load further out or drawers that come out
// further never hold better, and a fixing that is asked for holds.
func TestWeightHoldsAndReachTips(t *testing.T) {
	hardware := projecttest.Demo(t).Hardware
	rapid.Check(t, func(t *rapid.T) {
		mm := func(least, most int64, what string) length.Length {
			return length.MM(rapid.Int64Range(least, most).Draw(t, what))
		}
		p := &model.Project{
			Hardware: hardware,
			Boards: model.Boards{
				Carcass: model.Board{Thickness: mm(16, 22, "board"), Density: rapid.Float64Range(400, 900).Draw(t, "density")},
				Front:   model.Board{Thickness: mm(16, 25, "front"), Density: 700}, Back: model.Board{Thickness: mm(4, 10, "back"), Density: 700},
			},
			Cabinets: []model.Cabinet{{
				Width: mm(300, 1200, "width"), Height: mm(400, 1800, "height"), Depth: mm(320, 650, "depth"), Plinth: mm(0, 1, "plinth") * 90,
				Base: model.Base{Stands: model.StandsFree, Setback: mm(0, 60, "setback")},
				Bays: []model.Bay{{Fronts: make([]model.Front, rapid.IntRange(1, 6).Draw(t, "fronts"))}},
			}},
		}
		for i := range p.Cabinets[0].Bays[0].Fronts {
			p.Cabinets[0].Bays[0].Fronts[i].Contents.Weight = rapid.Float64Range(0, 20).Draw(t, "contents")
		}
		margin := func(change func()) float64 {
			change()
			s := tipping.Of(plan.Make(p), 0)
			w := s.Worst()
			if pull := s.Pull(w); pull > 0 && math.Abs(w.Margin()+pull*s.Height.MM()/1000) > 1e-6 {
				t.Fatalf("held by %v N at %v there is still %v N·m", pull, s.Height, w.Margin())
			}
			return w.Margin()
		}
		was := margin(func() {})
		heavier := margin(func() { p.Boards.Carcass.Density *= 1.5 })
		if heavier < was-1e-9 {
			t.Fatalf("a heavier carcass: %v N·m left, before %v", heavier, was)
		}
		if loaded := margin(func() { p.TippingLoad = p.EdgeLoad() + 10 }); loaded > heavier {
			t.Fatalf("more on the edge: %v N·m left, before %v", loaded, heavier)
		}
	})
}

// What is not known is said, and nothing is told of a cabinet whose boards weigh nothing.
func TestWhatIsNotKnownIsSaid(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "..", "testdata", "projects", "tipping.yaml"))
	p.Boards.Front.Density = 0
	if s := tipping.Of(plan.Make(p), 0); len(s.NoWeight) != 2 || s.Worst() == nil {
		t.Errorf("fronts without density: not counted %v", s.NoWeight)
	}
	p.Boards.Carcass.Density = 0
	if s := tipping.Of(plan.Make(p), 0); s.Worst() != nil || !s.NoDensity {
		t.Error("boards without density, and all the same it was weighed")
	}
	p.Cabinets[0].Base.Stands = model.FixedToWall
	if s := tipping.Of(plan.Make(p), 0); s.Worst() != nil || s.Told().Empty() {
		t.Error("fixed to the wall, and nothing said")
	}
	p.Cabinets[0].Base.Stands = model.NotSaid
	s := tipping.Of(plan.Make(p), 0)
	if told := (message.Language{}).Say(s.Told()); told != "" {
		t.Errorf("nobody asked, and it says %q", told)
	}
}
