package edit_test

import (
	"testing"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
)

func TestSetSheet(t *testing.T) {
	old := &model.HardwareSheet{Name: "old", Drawers: []model.DrawerHeight{{Name: "low"}, {Name: "tall"}}}
	other := &model.HardwareSheet{Name: "other", Drawers: []model.DrawerHeight{{Name: "low"}}}
	project := func() *model.Project {
		return &model.Project{
			Hardware: []model.HardwareUse{{Name: "main", Source: "sample-a", Sheet: old}, {Name: "side", Sheet: other}},
			Cabinets: []model.Cabinet{{Bays: []model.Bay{
				{Fronts: []model.Front{{Drawer: "low"}, {Drawer: "tall"}, {Drawer: "low", Hardware: "side"}}},
				{Hardware: "side", Fronts: []model.Front{{Drawer: "low"}}},
			}}},
		}
	}
	cases := map[string]struct {
		drawers []model.DrawerHeight
		want    [4]string // drawers of the fronts
	}{
		"another figure": {[]model.DrawerHeight{{Name: "low", SideTop: length.MM(90)}, {Name: "tall"}}, [4]string{"low", "tall", "low", "low"}},
		"another name":   {[]model.DrawerHeight{{Name: "shallow"}, {Name: "tall"}}, [4]string{"shallow", "tall", "low", "low"}},
		"one is gone":    {[]model.DrawerHeight{{Name: "tall"}}, [4]string{model.DrawerAuto, "tall", "low", "low"}},
		"names swapped":  {[]model.DrawerHeight{{Name: "tall"}, {Name: "low"}}, [4]string{"low", "tall", "low", "low"}},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			p := project()
			next := &model.HardwareSheet{Name: "new", Drawers: c.drawers}
			q, err := edit.SetSheet{Name: "main", Sheet: next}.Apply(p)
			if err != nil {
				t.Fatal(err)
			}
			if u := q.Hardware[0]; u.Sheet != next || u.Source != "" || q.Hardware[1].Sheet != other {
				t.Errorf("the project has %+v", q.Hardware)
			}
			b := q.Cabinets[0].Bays
			got := [4]string{b[0].Fronts[0].Drawer, b[0].Fronts[1].Drawer, b[0].Fronts[2].Drawer, b[1].Fronts[0].Drawer}
			if got != c.want {
				t.Errorf("the drawers are %v, want %v", got, c.want)
			}
			if p.Hardware[0].Sheet != old || p.Cabinets[0].Bays[0].Fronts[0].Drawer != "low" {
				t.Error("the project before has changed")
			}
		})
	}
	if _, err := (edit.SetSheet{Name: "none", Sheet: old}).Apply(project()); err == nil {
		t.Error("a sheet that the project does not have was changed")
	}
	if _, err := (edit.SetSheet{Name: "main"}).Apply(project()); err == nil {
		t.Error("no sheet was taken for one")
	}
}
