package layout_test

import (
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
)

func TestFrontsAndGapsFillTheStack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := genProject(t)
		pl := layout.Solve(p).Plan
		for i := range pl.Cabinets {
			for j := range pl.Cabinets[i].Bays {
				b := &pl.Cabinets[i].Bays[j]
				sum := length.Length(0)
				for k := b.First; k < b.First+b.Count; k++ {
					sum += pl.Fronts[k].Face.Height()
					if k > b.First {
						gap := pl.Fronts[k].Face.Min.Y - pl.Fronts[k-1].Face.Max.Y
						if gap != p.GapAbove(pl.Fronts[k-1].Place) {
							t.Fatalf("a gap of %v, not %v", gap, p.Reveals.Gap)
						}
						sum += gap
					}
				}
				if sum != b.Stack.Height()+b.Over {
					t.Fatalf("fronts and gaps add up to %v in %v, over by %v", sum, b.Stack.Height(), b.Over)
				}
			}
		}
	})
}

func TestSolveIsDeterministicAndLeavesTheProject(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := genProject(t)
		before := p.Clone()
		a, b := layout.Solve(p), layout.Solve(p)
		if !reflect.DeepEqual(a, b) {
			t.Fatal("two runs differ")
		}
		if !reflect.DeepEqual(p, before) {
			t.Fatal("solving changed the project")
		}
	})
}

// TestLiftedProject moves every height up by the plinth: nothing but heights in
// the run frame changes.
func TestLiftedProject(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := genProject(t)
		up := tenths(t, 1, 300, "up")
		q := p.Clone()
		for i := range q.Cabinets {
			q.Cabinets[i].Plinth += up
			for _, b := range q.Cabinets[i].Bays {
				for k := range b.Fronts {
					if h := b.Fronts[k].Handle; h != nil && h.OnLine > 0 {
						h.OnLine += up
					}
				}
			}
		}
		a, b := layout.Solve(p), layout.Solve(q)
		for i := range a.Plan.Fronts {
			f, g := &a.Plan.Fronts[i], &b.Plan.Fronts[i]
			if g.Face.Min.Y-f.Face.Min.Y != up || g.Face.Height() != f.Face.Height() || g.Face.Min.X != f.Face.Min.X {
				t.Fatalf("front %d: %v became %v", f.Number, f.Face, g.Face)
			}
			if g.Drop != f.Drop || g.Drawer.Cover != f.Drawer.Cover || g.Drawer.RoomAbove != f.Drawer.RoomAbove || !reflect.DeepEqual(f.Holes, g.Holes) {
				t.Fatalf("front %d: drop, cover, room or holes changed", f.Number)
			}
		}
		if len(a.Findings) != len(b.Findings) {
			t.Fatalf("%d findings became %d", len(a.Findings), len(b.Findings))
		}
		for i := range a.Findings {
			f, g := &a.Findings[i], &b.Findings[i]
			if f.Rule != g.Rule || f.Place != g.Place || f.Found != g.Found {
				t.Fatalf("finding %v became %v", f, g)
			}
		}
	})
}

// mirroredHandle turns a handle's left into right.
func mirroredHandle(h *model.Handle) {
	if h != nil {
		h.FromLeft, h.FromRight, h.BesideMiddle = h.FromRight, h.FromLeft, -h.BesideMiddle
	}
}

// mirrored turns a project's left into right.
func mirrored(p *model.Project) *model.Project {
	q := p.Clone()
	mirroredHandle(q.Handle)
	q.Reveals.Left, q.Reveals.Right = p.Reveals.Right, p.Reveals.Left
	n := len(p.Cabinets)
	for i := range p.Cabinets {
		c := p.Clone().Cabinets[i]
		c.Left, c.Right = c.Right, c.Left
		m := len(c.Bays)
		bays := make([]model.Bay, m)
		for j := range c.Bays {
			bays[m-1-j] = c.Bays[j]
		}
		for j := range bays { // a partition belongs to the bay at its left
			bays[j].Partition = 0
			if j < m-1 {
				bays[j].Partition = c.Bays[m-2-j].Partition
			}
		}
		c.Bays = bays
		mirroredHandle(c.Handle)
		for j := range bays {
			for k := range bays[j].Fronts {
				mirroredHandle(bays[j].Fronts[k].Handle)
			}
		}
		q.Cabinets[n-1-i] = c
	}
	for i := range q.Hardware {
		s := *q.Hardware[i].Sheet
		s.Drawers = append([]model.DrawerHeight(nil), s.Drawers...)
		for d := range s.Drawers {
			more := append([]model.HolePattern(nil), s.Drawers[d].More...)
			for k := range more {
				switch more[k].Sides {
				case model.LeftOnly:
					more[k].Sides = model.RightOnly
				case model.RightOnly:
					more[k].Sides = model.LeftOnly
				}
			}
			s.Drawers[d].More = more
		}
		holes := append([]model.StabiliserHole(nil), s.Stabiliser.Holes...)
		for k := range holes {
			holes[k].Across = -holes[k].Across
		}
		s.Stabiliser.Holes = holes
		q.Hardware[i].Sheet = &s
	}
	return q
}

type spotOfHole struct {
	x, y, d, depth length.Length
	kind           plan.HoleKind
}

func TestMirroredProjectGivesMirroredPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := genProject(t)
		a, b := layout.Solve(p), layout.Solve(mirrored(p))
		width := a.Plan.Extent.Max.X + b.Plan.Extent.Min.X // of the run; fronts may reach past its ends
		type at struct{ left, bottom, right, top length.Length }
		byFace := map[at]*plan.Front{}
		for i := range b.Plan.Fronts {
			g := &b.Plan.Fronts[i]
			byFace[at{width - g.Face.Max.X, g.Face.Min.Y, width - g.Face.Min.X, g.Face.Max.Y}] = g
		}
		for i := range a.Plan.Fronts {
			f := &a.Plan.Fronts[i]
			g := byFace[at{f.Face.Min.X, f.Face.Min.Y, f.Face.Max.X, f.Face.Max.Y}]
			if g == nil {
				t.Fatalf("front %d at %v has no twin", f.Number, f.Face)
			}
			if g.EdgeDistance.Left != f.EdgeDistance.Right || g.EdgeDistance.Right != f.EdgeDistance.Left || g.Drop != f.Drop {
				t.Fatalf("front %d: edge distances %v became %v", f.Number, f.EdgeDistance, g.EdgeDistance)
			}
			holes := map[spotOfHole]int{}
			for _, h := range slices.Concat(f.Holes, f.HandleHoles) {
				r := f.Rear(h.At)
				holes[spotOfHole{r.X, r.Y, h.Diameter, h.Depth, h.Kind}]++
			}
			for _, h := range slices.Concat(g.Holes, g.HandleHoles) {
				holes[spotOfHole{h.At.X, h.At.Y, h.Diameter, h.Depth, h.Kind}]--
			}
			for spot, n := range holes {
				if n != 0 {
					t.Fatalf("front %d: hole %+v is not mirrored", f.Number, spot)
				}
			}
		}
		if l, r := byRule(a.Findings), byRule(b.Findings); !reflect.DeepEqual(l, r) {
			t.Fatalf("findings %v, mirrored %v", l, r)
		}
	})
}

func byRule(found []check.Finding) map[string]int {
	n := map[string]int{}
	for i := range found {
		n[found[i].Rule]++
	}
	return n
}

func TestExplanationsAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pl := layout.Solve(genProject(t)).Plan
		for i := range pl.Fronts {
			for _, s := range pl.Explanations(&pl.Fronts[i]) {
				requireTotal(t, s)
			}
		}
	})
}

func requireTotal(t *rapid.T, s plan.Sum) {
	if len(s.Terms) == 0 {
		return
	}
	if s.Total() != s.Value {
		t.Fatalf("%v does not add up: %v", s.Say(), s.Total())
	}
	for _, m := range s.Terms {
		if m.Of != nil {
			if m.Of.Value != m.Value {
				t.Fatalf("%v: the term %v is explained as %v", s.Say(), m.Value, m.Of.Value)
			}
			requireTotal(t, *m.Of)
		}
	}
}

// TestOfferedFixesMend applies every offered fix: its finding is gone and no new
// error has come.
func TestOfferedFixesMend(t *testing.T) {
	offered, findings := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		p := genProject(t)
		r := layout.Solve(p)
		for _, f := range r.Findings {
			findings++
			for _, e := range layout.Offered(p, r, f) {
				offered++
				q, err := e.Apply(p)
				if err != nil {
					t.Fatalf("%v: %v", e.Label(), err)
				}
				after := layout.Solve(q)
				if countAt(after.Findings, f) >= countAt(r.Findings, f) {
					t.Fatalf("%v leaves %v", e.Label(), f.What)
				}
				for _, g := range after.Findings {
					if g.Severity == check.Error && countAt(after.Findings, g) > countAt(r.Findings, g) {
						t.Fatalf("%v adds %v: %v", e.Label(), g.Where, g.What)
					}
				}
			}
		}
	})
	if offered == 0 {
		t.Errorf("no fix was offered for %d findings", findings)
	}
}

func countAt(found []check.Finding, like check.Finding) int {
	n := 0
	for i := range found {
		if found[i].Rule == like.Rule && found[i].Place == like.Place {
			n++
		}
	}
	return n
}
