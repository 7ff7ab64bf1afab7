package plan_test

import (
	"slices"
	"testing"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

func stamped() *plan.Plan {
	p := &plan.Plan{Project: &model.Project{Title: "Glaze bench"}, Cabinets: []plan.Cabinet{{Name: "Glazes", Outline: plane.R(0, 0, length.MM(900), length.MM(720))}}}
	for i := range 3 {
		up := length.MM(int64(240 * i))
		p.Fronts = append(p.Fronts, plan.Front{
			Number: i + 1, Name: "Jars", Face: plane.R(0, up, length.MM(897), up+length.MM(237)), Fitted: true,
			Holes: []plan.Hole{{At: plane.Point{X: length.MM(36), Y: length.MM(48)}, Diameter: length.MM(10), Depth: length.MM(12)}},
		})
	}
	return p
}

// A fingerprint is another one wherever a panel would be, and the same where only
// words changed; what changed can be told by the front.
func TestFingerprints(t *testing.T) {
	before := stamped().Paper()
	for _, c := range []struct {
		name    string
		change  func(*plan.Plan)
		same    bool
		carcass bool
		fronts  []int
	}{
		{name: "nothing", change: func(*plan.Plan) {}, same: true},
		{name: "names", change: func(p *plan.Plan) {
			p.Fronts[1].Name, p.Project.Title, p.Cabinets[0].Name = "Pots", "Kiln bench", "Pots"
		}, same: true},
		{name: "a hole by a tenth", change: func(p *plan.Plan) { p.Fronts[1].Holes[0].At.X += 100 * length.Micrometre }, fronts: []int{2}},
		{name: "a hole by a nanometre", change: func(p *plan.Plan) { p.Fronts[1].Holes[0].At.Y++ }, fronts: []int{2}},
		{name: "a depth", change: func(p *plan.Plan) { p.Fronts[0].Holes[0].Depth += length.Millimetre }, fronts: []int{1}},
		{name: "a height", change: func(p *plan.Plan) { p.Fronts[2].Face.Max.Y += length.Millimetre }, fronts: []int{3}},
		{name: "where it hangs", change: func(p *plan.Plan) { p.Fronts[2].Face = p.Fronts[2].Face.Move(plane.Point{Y: 1}) }},
		{name: "a front more", change: func(p *plan.Plan) { p.Fronts = append(p.Fronts, plan.Front{Number: 4}) }, carcass: true, fronts: []int{4}},
		{name: "a front less", change: func(p *plan.Plan) { p.Fronts = p.Fronts[:2] }, carcass: true, fronts: []int{3}},
		{name: "a carcass", change: func(p *plan.Plan) { p.Cabinets[0].Outline.Max.X++ }, carcass: true},
	} {
		p := stamped()
		c.change(p)
		now := p.Paper()
		if (now.Plan == before.Plan) != c.same || (now.Carcass != before.Carcass) != c.carcass || !slices.Equal(before.Changed(now), c.fronts) {
			t.Errorf("%s: the plan is the same: %v, the carcass has changed: %v, and the fronts %v", c.name, now.Plan == before.Plan, now.Carcass != before.Carcass, before.Changed(now))
		}
	}
}

func TestFingerprintsAreRead(t *testing.T) {
	for _, f := range []plan.Fingerprint{0, 1, 0xDC93F8FD, 1<<32 - 1} {
		if got, ok := plan.ParseFingerprint(f.String()); !ok || got != f || len(f.String()) != 8 {
			t.Errorf("%v is read as %v, %v", f, got, ok)
		}
	}
	if got, ok := plan.ParseFingerprint("dc93f8fd"); !ok || got != 0xDC93F8FD {
		t.Errorf("small letters are read as %v, %v", got, ok)
	}
	for _, s := range []string{"", "DC93F8F", "DC93F8FD0", "DC93F8FX", "0xC93F8F", "-C93F8FD", " C93F8FD", "+1234567"} {
		if got, ok := plan.ParseFingerprint(s); ok {
			t.Errorf("%q is read as %v", s, got)
		}
	}
}
