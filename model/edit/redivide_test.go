package edit_test

import (
	"testing"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
)

// stackOf tells the names of a bay's fronts, bottom to top.
func stackOf(p *model.Project, at model.Place) (names []string) {
	for _, f := range p.BayAt(at).Fronts {
		names = append(names, f.Name)
	}
	return names
}

// Names stay where the number of fronts does, and go where what they name goes; with
// another number only what is held gives names.
func TestRedividingKeepsNames(t *testing.T) {
	bay := model.Place{Front: -1} // Buckets, Jars, Brushes
	for _, c := range []struct {
		name  string
		holds []string
		want  []string
	}{
		{"nothing in particular", []string{"", "", ""}, []string{"Buckets", "Jars", "Brushes"}},
		{"what was there, elsewhere", []string{"Jars", "Buckets", ""}, []string{"Jars", "Buckets", "Brushes"}},
		{"one of what was there", []string{"Jars", "", ""}, []string{"Jars", "Buckets", "Brushes"}},
		{"something else", []string{"Sieves", "", ""}, []string{"Buckets", "Jars", "Brushes"}},
		{"one that was the front's own name", []string{"Brushes", "", "Sieves"}, []string{"Brushes", "Jars", "Sieves"}},
		{"more fronts", []string{"Jars", "", "", ""}, []string{"Jars", "", "", ""}},
		{"fewer", []string{"Sieves", "Jars"}, []string{"Sieves", "Jars"}},
		{"twice the same", []string{"Jars", "Jars", "", ""}, []string{"Jars", "", "", ""}},
	} {
		t.Run(c.name, func(t *testing.T) {
			e := edit.Redivide{At: bay}
			for _, h := range c.holds {
				e.Fronts = append(e.Fronts, edit.NewFront{Holds: h, Contents: mm(50)})
			}
			next, err := e.Apply(sample())
			if err != nil {
				t.Fatal(err)
			}
			got := stackOf(next, bay)
			if len(got) != len(c.want) {
				t.Fatalf("fronts %q", got)
			}
			for i := range got {
				if got[i] != c.want[i] {
					t.Errorf("fronts %q, want %q", got, c.want)
					break
				}
			}
		})
	}
}

// The weight of the contents goes with the name, wherever that goes.
func TestRedividingKeepsWeightsWithNames(t *testing.T) {
	p := sample()
	b := p.BayAt(model.Place{Front: -1})
	b.Fronts[0].Contents.Weight, b.Fronts[1].Contents.Weight = 36, 15
	next, err := edit.Redivide{At: model.Place{Front: -1}, Fronts: []edit.NewFront{{Holds: "Jars"}, {}, {}}}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []float64{15, 36, 0} { // Jars, Buckets, Brushes
		if f := next.FrontAt(model.Place{Front: i}); f.Contents.Weight != want {
			t.Errorf("front %d, %q, is to hold %v kg, not %v", i, f.Name, f.Contents.Weight, want)
		}
	}
}

// Board, channel and gap stay with the ends of the stack, what a drawer weighs goes
// with what it holds, and heights, drops and bounds are those asked for.
func TestRedividingKeepsWhatIsNotDivided(t *testing.T) {
	p := sample()
	b := p.BayAt(model.Place{Front: -1})
	gap := mm(40)
	b.Fronts[0].Cover, b.Fronts[2].GapAbove, b.Fronts[1].Contents.Weight = mm(7), &gap, 15
	b.Fronts[1].Least, b.Fronts[2].LineUp = mm(100), &model.LineUp{Front: "1"}
	drop := mm(12)
	next, err := edit.Redivide{At: model.Place{Front: -1}, Division: model.Division{Rule: model.DivideEqual}, Fronts: []edit.NewFront{
		{}, {Height: mm(120), Drop: &drop}, {Height: mm(130), Holds: "Jars", Contents: mm(60)}, {},
	}}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	f := next.BayAt(model.Place{Front: -1}).Fronts
	switch {
	case f[0].Cover != mm(7) || f[3].GapAbove == nil || *f[3].GapAbove != gap || f[2].GapAbove != nil:
		t.Errorf("what stays with the ends: %+v", f)
	case f[1].Height != mm(120) || *f[1].Drop != drop || f[2].Height != mm(130) || f[0].Height != 0 || f[0].Share != 1:
		t.Errorf("heights and drops: %+v", f)
	case f[2].Contents != model.Contents{Height: mm(60), Weight: 15}:
		t.Errorf("jars are %+v", f[2].Contents)
	case f[1].Least != 0 || f[3].LineUp != nil || next.BayAt(model.Place{Front: -1}).Division.Rule != model.DivideEqual:
		t.Errorf("bounds and line-ups: %+v", f)
	}
}

// A locked front, one that spans bays, and no front at all are refused.
func TestRedividingIsRefused(t *testing.T) {
	two := []edit.NewFront{{}, {}}
	for name, c := range map[string]struct {
		change func(*model.Project)
		fronts []edit.NewFront
	}{
		"locked":   {func(p *model.Project) { p.Cabinets[0].Bays[0].Fronts[1].Locked = true }, two},
		"spanning": {func(p *model.Project) { p.Cabinets[0].Bays[0].Fronts[0].Span = 2 }, two},
		"no front": {func(*model.Project) {}, nil},
		"too high": {func(*model.Project) {}, []edit.NewFront{{Height: 30 * length.Metre}, {}}},
	} {
		p := sample()
		c.change(p)
		if _, err := (edit.Redivide{At: model.Place{Front: -1}, Fronts: c.fronts}).Apply(p); err == nil {
			t.Errorf("%s: not refused", name)
		}
	}
}
