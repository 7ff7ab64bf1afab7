package ui

import (
	"image"
	"reflect"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/ui/screen"
	"frontlay/ui/session"
)

// The panel of every selection is complete as it is made: refreshing it changes
// nothing that is seen.
func TestThePanelIsCompleteAsMade(t *testing.T) {
	w, _, _ := newWindow(t, "")
	layOut(w)
	w.desk.Screen.ShowPicture(screen.Elevation)
	at := func(k drawing.SubjectKind, p model.Place) []drawing.Subject {
		return []drawing.Subject{{Kind: k, Place: p}}
	}
	for _, c := range []struct {
		name   string
		chosen []drawing.Subject
	}{
		{"front", at(drawing.FrontThing, model.Place{Front: 1})},
		{"project", nil},
		{"fronts", []drawing.Subject{w.face(1), w.face(2)}},
		{"division", at(drawing.DivisionThing, model.Place{})},
		{"cabinet", at(drawing.CabinetThing, session.PlaceOfCabinet(1))},
		{"partition", at(drawing.PartitionThing, model.Place{Cabinet: 1, Front: -1})},
		{"bay", at(drawing.BayThing, model.Place{Cabinet: 1, Front: -1})},
	} {
		w.session.Select(c.chosen...)
		made := w.win.Canvas().Capture().(*image.NRGBA)
		w.desk.Inspector.Object.Refresh()
		if again := w.win.Canvas().Capture(); !reflect.DeepEqual(made, again) {
			t.Errorf("%s: a refresh changes the panel", c.name)
		}
	}
}
