package edit_test

import (
	"strings"
	"testing"

	"frontlay/model"
	"frontlay/model/edit"
)

// twoSheets is a project in which bays and fronts use two sheets, and none a
// third.
func twoSheets() *model.Project {
	sheet := func() *model.HardwareSheet {
		return &model.HardwareSheet{Drawers: []model.DrawerHeight{{Name: "low"}}}
	}
	return &model.Project{
		Hardware: []model.HardwareUse{{Name: "main", Sheet: sheet()}, {Name: "side", Source: "sample-b", Sheet: sheet()}, {Name: "spare", Sheet: sheet()}},
		Cabinets: []model.Cabinet{{Name: "Glazes", Bays: []model.Bay{
			{Fronts: []model.Front{{Drawer: "low"}, {Name: "Jars", Hardware: "side"}}},
			{Hardware: "side", Fronts: []model.Front{{Drawer: "low"}, {Hardware: "main"}}},
			{Hardware: "spare", Fronts: []model.Front{{Kind: model.OpenNiche, Hardware: "spare"}}},
		}}},
	}
}

func TestRenameHardware(t *testing.T) {
	p := twoSheets()
	q, err := edit.RenameHardware{Name: "side", To: " wooden "}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	b := q.Cabinets[0].Bays
	got := []string{q.Hardware[0].Name, q.Hardware[1].Name, b[0].Hardware, b[0].Fronts[1].Hardware, b[1].Hardware, b[1].Fronts[1].Hardware}
	if want := "main wooden  wooden wooden main"; strings.Join(got, " ") != want {
		t.Errorf("the names are %q, want %q", strings.Join(got, " "), want)
	}
	if q.Hardware[1].Source != "sample-b" || b[1].Fronts[0].Drawer != "low" {
		t.Error("the name is not all that has changed")
	}
	if p.Hardware[1].Name != "side" || p.Cabinets[0].Bays[1].Hardware != "side" {
		t.Error("the project before has changed")
	}
	for name, e := range map[string]edit.RenameHardware{
		"taken": {Name: "side", To: "main"}, "empty": {Name: "side", To: " "}, "unknown": {Name: "none", To: "x"}, "two lines": {Name: "side", To: "a\nb"},
	} {
		if _, err := e.Apply(p); err == nil {
			t.Errorf("%s: it was renamed", name)
		}
	}
}

func TestRemoveHardware(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		told        []string // what the refusal says; none: it is removed
	}{
		{"of a bay and a front", "side", []string{"Glazes, bay 1, “Jars”", "Glazes, bay 2, front 1 from below"}},
		{"the first, where none is named", "main", []string{"Glazes, bay 1, front 1 from below", "Glazes, bay 2, front 2 from below"}},
		{"unused", "spare", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := twoSheets()
			q, err := edit.RemoveHardware{Name: c.sheet}.Apply(p)
			if len(c.told) > 0 {
				if err == nil {
					t.Fatal("it was removed")
				}
				for _, s := range c.told {
					if !strings.Contains(err.Error(), s) {
						t.Errorf("%q does not name %q", err, s)
					}
				}
				return
			}
			if err != nil {
				t.Fatal(err)
			}
			if b := q.Cabinets[0].Bays[2]; len(q.Hardware) != 2 || b.Hardware != "" || b.Fronts[0].Hardware != "" {
				t.Errorf("left are %+v and a bay with %q, %q", q.Hardware, b.Hardware, b.Fronts[0].Hardware)
			}
			if len(p.Hardware) != 3 || p.Hardware[2].Name != "spare" || p.Cabinets[0].Bays[2].Hardware != "spare" {
				t.Error("the project before has changed")
			}
		})
	}
	if _, err := (edit.RemoveHardware{Name: "none"}).Apply(twoSheets()); err == nil {
		t.Error("a sheet that is not there was removed")
	}
}

// A long list of drawers is told by its beginning and a count.
func TestManyUsersAreCounted(t *testing.T) {
	p := twoSheets()
	p.Cabinets[0].Bays[0].Fronts = make([]model.Front, 12)
	_, err := edit.RemoveHardware{Name: "main"}.Apply(p)
	if err == nil || !strings.Contains(err.Error(), "and 5 more") {
		t.Errorf("13 drawers are told as %v", err)
	}
}
