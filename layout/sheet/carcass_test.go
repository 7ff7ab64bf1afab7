package sheet

import (
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// pedestal is a cabinet 600 wide with sides of 19 and one drawer whose runners
// are screwed 37 and 261 behind the front edge, 130 above the bottom edge of the
// side. 37 mm: common practice, no source.
func pedestal() *plan.Plan {
	f := front(1, mm(594), mm(200))
	f.Fitted = true
	f.Opening = plane.R(mm(19), mm(109), mm(581), mm(791))
	f.Runner = plan.Runner{Lower: mm(200), Length: mm(450), Screws: []plan.SideHole{
		{Back: mm(37), Y: mm(220), Diameter: mm(5), Depth: mm(10)},
		{Back: mm(261), Y: mm(220), Diameter: mm(5), Depth: mm(10)},
	}}
	f.Sheet = &model.HardwareSheet{}
	p := planOf(f)
	p.Cabinets = []plan.Cabinet{{
		Name: "Glazes", Outline: plane.R(0, mm(90), mm(600), mm(810)), Inside: plane.R(mm(19), mm(109), mm(581), mm(791)), Depth: mm(532), Sides: mm(532),
	}}
	return p
}

// The inside face of a cabinet's left side looks to the right: with its bottom
// edge towards you its front edge is at your left. That of the right side is its
// mirror image.
func TestCarcassSidesAreMirrored(t *testing.T) {
	faces := CarcassFaces(pedestal())
	if len(faces) != 2 {
		t.Fatalf("%d faces; want both sides", len(faces))
	}
	for i, want := range []struct {
		name string
		xs   []length.Length
	}{
		{"Glazes, left side", []length.Length{mm(37), mm(261)}},
		{"Glazes, right side", []length.Length{mm(532 - 37), mm(532 - 261)}},
	} {
		c := &faces[i]
		if c.Name.String() != want.name || c.Panel != plane.R(0, 0, mm(532), mm(720)) {
			t.Errorf("face %d is %q, %v", i, c.Name, c.Panel)
		}
		for j, h := range c.Holes {
			if h.At.X != want.xs[j] || h.At.Y != mm(130) {
				t.Errorf("%s: hole %d at %v, %v; want %v, 130 mm", want.name, j, h.At.X, h.At.Y, want.xs[j])
			}
		}
	}
}

func TestRunnerStripsStandOnTheirLines(t *testing.T) {
	all := strips(pedestal(), Options{})
	if len(all) != 2 {
		t.Fatalf("%d strips; want a left and a right one", len(all))
	}
	for _, s := range all {
		if len(s.uses) != 1 || len(s.uses[0].lines) != 1 || s.uses[0].lines[0] != mm(130) {
			t.Errorf("pencil lines %+v; want one at 130 mm", s.uses)
		}
		hand := length.Length(1)
		if !s.frontLeft {
			hand = -1
		}
		var xs []length.Length
		for _, m := range s.spread(Options{}).panel.Marks {
			if c, ok := m.(*drawing.Circle); ok {
				xs = append(xs, hand*c.Centre.X)
				if c.Centre.Y != 0 {
					t.Errorf("a hole lies %v off its line", c.Centre.Y)
				}
			}
		}
		if len(xs) != 2 || xs[0] != mm(37) || xs[1] != mm(261) {
			t.Errorf("holes %v behind the front edge; want 37 and 261 mm", xs)
		}
	}
}

// A handle is drilled from the face: nothing is mirrored.
func TestHandlesAreNotMirrored(t *testing.T) {
	f := front(1, mm(597), mm(283))
	f.HandleHoles = []plan.Hole{
		{At: plane.Point{X: mm(100), Y: mm(243)}, Kind: plan.HandleHole, Diameter: mm(5)},
		{At: plane.Point{X: mm(228), Y: mm(243)}, Kind: plan.HandleHole, Diameter: mm(5)},
	}
	seen := 0
	for _, h := range shownHoles(Make(planOf(f), nil, Options{Parts: []Part{HandleTemplates}})) {
		seen++
		if x := h.on.X - h.from.X; x != f.HandleHoles[h.index].At.X {
			t.Errorf("hole %d lies %v from the left; want %v", h.index, x, f.HandleHoles[h.index].At.X)
		}
	}
	if seen != 2 {
		t.Errorf("%d holes; want 2", seen)
	}
}
