package edit_test

import (
	"testing"

	"frontlay/model"
	"frontlay/model/edit"
)

// A cabinet that is drawn, copied or pasted gets the next number where the
// names are counted already, not a second number behind the first.
func TestNamesOfCabinetsAreCountedOn(t *testing.T) {
	for _, c := range []struct {
		there []string
		copy  int
		want  string
	}{
		{[]string{"Cabinet 1"}, 0, "Cabinet 2"},
		{[]string{"Cabinet 1", "Cabinet 2", "Cabinet 4"}, 0, "Cabinet 3"},
		{[]string{"Cabinet 2", "Cabinet 1"}, 0, "Cabinet 3"},
		{[]string{"Cabinet 9"}, 0, "Cabinet 10"},
		{[]string{"Glazes"}, 0, "Glazes 2"},
		{[]string{"Glazes", "Glazes 2"}, 1, "Glazes 3"},
		{[]string{"Base 600"}, 0, "Base 600 2"},
		{[]string{"Wall 0"}, 0, "Wall 0 2"},
		{[]string{"7"}, 0, "7 2"},
	} {
		t.Run(c.want, func(t *testing.T) {
			p := &model.Project{}
			for _, n := range c.there {
				p.Cabinets = append(p.Cabinets, model.Cabinet{Name: n, Bays: []model.Bay{{Fronts: []model.Front{{}}}}})
			}
			at := model.Place{Cabinet: c.copy, Bay: -1, Front: -1}
			for _, e := range []edit.Edit{
				edit.CopyCabinet{At: at},
				edit.AddCabinet{At: model.Place{Cabinet: c.copy + 1}, Cabinet: p.Cabinets[c.copy]},
				edit.PasteCabinet{At: model.Place{Cabinet: c.copy + 1}, Cabinet: p.Cabinets[c.copy]},
			} {
				next, err := e.Apply(p)
				if err != nil {
					t.Fatal(err)
				}
				if got := next.Cabinets[c.copy+1].Name; got != c.want {
					t.Errorf("%v: the copy of %q is named %q", e.Label(), c.there[c.copy], got)
				}
			}
		})
	}
}
