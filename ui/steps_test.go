package ui

import (
	"reflect"
	"testing"

	"fyne.io/fyne/v2"

	"frontlay/model"
)

// The list of steps has the focus, and its keys go through the states of the
// project and back; nothing is lost on the way.
func TestStepsByKeys(t *testing.T) {
	w, _, _ := newWindow(t, "")
	states := []*model.Project{w.session.Project()}
	w.session.Select(w.face(2))
	for _, c := range []string{"lock", "graduate", "inch", "mm"} {
		w.do(c)
		states = append(states, w.session.Project())
	}
	w.do("history")
	s := w.win.Canvas().Focused()
	if s == nil {
		t.Fatal("nothing has the focus")
	}
	for _, c := range []struct {
		key  fyne.KeyName
		want int
	}{
		{fyne.KeyUp, 3}, {fyne.KeyUp, 2}, {fyne.KeyDown, 3}, {fyne.KeyHome, 0}, {fyne.KeyUp, 0}, {fyne.KeyPageDown, 4}, {fyne.KeyDown, 4}, {fyne.KeyPageUp, 0}, {fyne.KeyEnd, 4}, {fyne.KeyUp, 3},
	} {
		s.TypedKey(&fyne.KeyEvent{Name: c.key})
		if !reflect.DeepEqual(w.session.Project(), states[c.want]) {
			_, at := w.session.Steps()
			t.Errorf("%s leads to step %d, want %d", c.key, at, c.want)
		}
	}
	s.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if w.win.Canvas().Overlays().Top() != nil || !w.table.Command("redo").Possible() {
		t.Error("Enter does not close the list, or the steps after are gone")
	}
}
