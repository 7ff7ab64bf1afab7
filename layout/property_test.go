package layout_test

import (
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/plan"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/length"
)

func TestFrontsAndGapsFillTheStack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := projecttest.Random(t)
		pl := layout.Solve(p).Plan
		for i := range pl.Cabinets {
			bays := pl.Cabinets[i].Bays
			for j := range bays {
				b := &bays[j]
				fronts := b.Column // with those that span it from bays to its left
				if len(fronts) > b.Count && slices.ContainsFunc(bays[:j+1], func(b plan.Bay) bool { return b.Over != 0 }) {
					continue // what is too much or too little of a stack is at its top, where it spans others
				}
				for n, k := range fronts[1:] {
					low, high := &pl.Fronts[fronts[n]], &pl.Fronts[k]
					if gap := high.Face.Min.Y - low.Face.Max.Y; gap != p.GapAbove(low.Place) {
						t.Fatalf("a gap of %v above front %d, not %v", gap, low.Number, p.GapAbove(low.Place))
					}
				}
				first, last := &pl.Fronts[fronts[0]], &pl.Fronts[fronts[len(fronts)-1]]
				lowest, highest := &bays[first.Place.Bay], &bays[last.Place.Bay]
				if first.Face.Min.Y != lowest.Stack.Min.Y || last.Face.Max.Y != highest.Stack.Max.Y+highest.Over {
					t.Fatalf("fronts reach from %v to %v in %v, over by %v", first.Face.Min.Y, last.Face.Max.Y, b.Stack, highest.Over)
				}
			}
		}
	})
}

func TestSolveIsDeterministicAndLeavesTheProject(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := projecttest.Random(t)
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
		p := projecttest.Random(t)
		for i := range p.Cabinets {
			p.Cabinets[i].Plinth += 30 * mm // no front hangs below the floor
		}
		p.Niche = nil // its walls lean: higher up it is not as wide
		up := projecttest.Tenths(t, 1, 300, "up")
		q := p.Clone()
		liftHandle(q.Handle, up)
		for i := range q.Cabinets {
			c := &q.Cabinets[i]
			c.Plinth += up
			liftHandle(c.Handle, up)
			for _, b := range c.Bays {
				for k := range b.Fronts {
					liftHandle(b.Fronts[k].Handle, up)
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

func liftHandle(h *model.Handle, up length.Length) {
	if h != nil && h.OnLine > 0 {
		h.OnLine += up
	}
}

// mirroredHandle turns a handle's left into right.
func mirroredHandle(h *model.Handle) {
	if h != nil {
		h.FromLeft, h.FromRight, h.BesideMiddle = h.FromRight, h.FromLeft, -h.BesideMiddle
	}
}

// mirrored turns a project's left into right. No front of it spans bays, which it does
// to the right.
func mirrored(p *model.Project) *model.Project {
	q := p.Clone()
	mirroredHandle(q.Handle)
	mirroredMeasured(q.Niche)
	q.Reveals.Left, q.Reveals.Right = p.Reveals.Right, p.Reveals.Left
	n := len(p.Cabinets)
	for i := range p.Cabinets {
		c := p.Clone().Cabinets[i]
		c.Left, c.Right = c.Right, c.Left
		if c.Reveals != nil {
			c.Reveals.Left, c.Reveals.Right = c.Reveals.Right, c.Reveals.Left
		}
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
			mirroredMeasured(bays[j].Measured)
			bays[j].Packing = model.Packing{Left: bays[j].Packing.Right, Right: bays[j].Packing.Left}
			for k := range bays[j].Fronts {
				f := &bays[j].Fronts[k]
				mirroredHandle(f.Handle)
				mirroredLineUp(p, i, f.LineUp)
				f.Hinged = model.HingedRight - f.Hinged
				if a := f.AsBuilt; a != nil {
					a.Left, a.Right = a.Right, a.Left
					a.Below = model.GapEnds{First: a.Below.Second, Second: a.Below.First}
					a.Above = model.GapEnds{First: a.Above.Second, Second: a.Above.First}
				}
				if f.Packing != nil {
					*f.Packing = model.Packing{Left: f.Packing.Right, Right: f.Packing.Left}
				}
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

// mirroredMeasured turns left into right in what a tape said of an opening.
func mirroredMeasured(m *model.Measured) {
	if m == nil {
		return
	}
	m.Heights.Left, m.Heights.Right = m.Heights.Right, m.Heights.Left
	m.Rising, m.Falling = m.Falling, m.Rising
	m.PlumbLeft, m.PlumbRight = m.PlumbRight, m.PlumbLeft
	for _, leans := range []*length.Length{m.PlumbLeft, m.PlumbRight, m.Level} {
		if leans != nil {
			*leans = -*leans
		}
	}
}

// mirroredLineUp counts the bay that a front is lined up with from the other end of its
// cabinet.
func mirroredLineUp(p *model.Project, cabinet int, l *model.LineUp) {
	if l == nil {
		return
	}
	with := &p.Cabinets[cabinet]
	for k := range p.Cabinets {
		if l.Cabinet != "" && p.Cabinets[k].Name == l.Cabinet {
			with = &p.Cabinets[k]
			break
		}
	}
	if l.Bay <= len(with.Bays) { // one that there is
		l.Bay = len(with.Bays) + 1 - max(l.Bay, 1)
	}
}

func everyFront(p *model.Project, do func(f *model.Front)) {
	for i := range p.Cabinets {
		for _, b := range p.Cabinets[i].Bays {
			for k := range b.Fronts {
				do(&b.Fronts[k])
			}
		}
	}
}

type spotOfHole struct {
	x, y, d, depth length.Length
	kind           plan.HoleKind
}

func TestMirroredProjectGivesMirroredPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := projecttest.Random(t)
		everyFront(p, func(f *model.Front) { f.Span = 0 })
		if slices.ContainsFunc(layout.Solve(p).Plan.Problems, func(q plan.Problem) bool { return q.Kind == plan.LineUpCircle }) {
			everyFront(p, func(f *model.Front) { f.LineUp = nil }) // where a circle is broken, the leftmost begins
		}
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
		l, r := byRule(a.Findings), byRule(b.Findings)
		if !reflect.DeepEqual(l, r) {
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
		pl := layout.Solve(projecttest.Random(t)).Plan
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
	checks("300") // each has dozens of findings, and each mend is a solve
	defer checks("1000")
	rapid.Check(t, func(t *rapid.T) {
		p := projecttest.Random(t)
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
