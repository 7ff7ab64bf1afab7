package check

import (
	"strings"
	"testing"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// onRows is a plan of one front whose runner is up above the hole row below it,
// with the first screw back from the carcass's front edge.
func onRows(offRow, back length.Length, inset bool, rows model.HoleRows) []Finding {
	const mm = length.Millimetre
	rows.Mode = model.RowsMoveRunners
	p := &model.Project{HoleRows: rows, Cabinets: []model.Cabinet{{Bays: []model.Bay{{Fronts: []model.Front{{}}}}}}}
	f := plan.Front{
		Name: "Front 1", Number: 1, Fitted: true, Inset: inset, Thickness: 19 * mm, OnFloor: true,
		Face: plane.R(0, 0, 500*mm, 200*mm), Sheet: &model.HardwareSheet{}, Height: &model.DrawerHeight{},
		Runner: plan.Runner{Lower: 40 * mm, OffRow: offRow, Screws: []plan.SideHole{{Back: back}}},
		Drawer: plan.Drawer{Cover: plan.Edges{Bottom: 20 * mm}},
	}
	pl := &plan.Plan{Project: p, Fronts: []plan.Front{f}, Cabinets: []plan.Cabinet{{Bays: []plan.Bay{{Count: 1}}}}}
	var found []Finding
	findHoleRows(&search{mender: mender{pl}, rule: holeRows, found: &found})
	return found
}

// A runner just above a row is to be lowered by the little that it is off, not
// raised by nearly a whole pitch; where that would show the drawer bottom it is
// to be raised.
func TestTheNearerRowIsNamed(t *testing.T) {
	const mm = length.Millimetre
	for _, c := range []struct {
		off  length.Length
		want string
	}{
		{31400 * length.Micrometre, "lower the runner by 0.6"},
		{600 * length.Micrometre, "raise the runner by 0.6"},
		{17 * mm, "lower the runner by 15"},
	} {
		found := onRows(c.off, 37*mm, false, model.HoleRows{})
		if len(found) != 1 || !strings.HasPrefix(strings.ReplaceAll(found[0].Change.String(), "\u00a0", " "), c.want) {
			t.Errorf("%v below the next row: %v, want %q", c.off, found, c.want)
		}
	}
	found := onRows(10*mm, 37*mm, false, model.HoleRows{Pitch: 32 * mm})
	if len(found) != 1 || !strings.HasPrefix(found[0].Change.String(), "raise") {
		t.Errorf("10 mm below the next row: %v", found)
	}
	if found := onRows(11*mm, 37*mm, false, model.HoleRows{Pitch: 32 * mm}); strings.HasPrefix(found[0].Change.String(), "lower") {
		t.Error("a runner is to be lowered by 21 mm with 20 mm of cover")
	}
}

// Behind inset fronts the screws move back with the runner: rows whose setback
// somebody has said stay where they are, and the two disagree.
func TestRowsBehindInsetFronts(t *testing.T) {
	const mm = length.Millimetre
	for _, c := range []struct {
		name  string
		back  length.Length
		rows  model.HoleRows
		inset bool
		found int
	}{
		{"overlay, usual", 37 * mm, model.HoleRows{}, false, 0},
		{"inset, nobody says", 56 * mm, model.HoleRows{}, true, 0},
		{"inset, said for the front edge", 56 * mm, model.HoleRows{Setback: 37 * mm}, true, 1},
		{"inset, said as it is", 56 * mm, model.HoleRows{Setback: 56 * mm}, true, 0},
	} {
		if found := onRows(0, c.back, c.inset, c.rows); len(found) != c.found {
			t.Errorf("%s: %v, want %d findings", c.name, found, c.found)
		}
	}
}

// Masses are said as one weighs them, and never so that too little is taken out.
func TestMassesAreRoundedUp(t *testing.T) {
	inches := message.Language{Unit: length.UnitInch}
	for _, c := range []struct {
		kg   float64
		say  message.Language
		want string
	}{
		{0.09982, message.Language{}, "0.1 kg"}, {0.1, message.Language{}, "0.1 kg"}, {40.01, message.Language{}, "40.1 kg"}, {0.30000000000000004, message.Language{}, "0.3 kg"}, {12, message.Language{}, "12 kg"},
		{0.45359237, inches, "1 lb"}, {0.46, inches, "1.1 lb"}, // 1.0141 lb
	} {
		if got := roundedUp(c.kg).Say(c.say); got != c.want {
			t.Errorf("%v kg is said as %v, want %v", c.kg, got, c.want)
		}
	}
}
