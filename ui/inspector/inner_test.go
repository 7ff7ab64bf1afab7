package inspector_test

import (
	"testing"

	"fyne.io/fyne/v2/test"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/ui/field"
	"frontlay/ui/replay"
)

// Inner drawers are added, set and taken away below the drawer of their front, each as one
// step; a new one stands where it has room over what is there. Packing is typed at the bay.
func TestInnerDrawers(t *testing.T) {
	s := show(t)
	press := func(name string) {
		t.Helper()
		for _, b := range replay.All[*field.Button](s.Object) {
			if b.Text == name {
				test.Tap(b)
				return
			}
		}
		t.Fatalf("there is no button %q", name)
	}
	s.session.Select(front(0, 0, 0))
	test.Tap(s.fold("Inner drawers"))
	own := s.session.Result().Plan.Fronts[0]
	press("Add an inner drawer")
	all := s.session.Project().FrontAt(model.Place{}).Inner
	if len(all) != 1 || all[0].Up < own.Drawer.Body.Max.Y+own.Sheet.Runner.ClearanceAbove-own.Datum() {
		t.Fatalf("inner drawers: %+v over a drawer up to %v", all, own.Drawer.Body.Max.Y)
	}
	s.enter("Runner's height", "150")
	if up := s.session.Project().FrontAt(model.Place{}).Inner[0].Up; up != length.MM(150) {
		t.Errorf("its runner is at %v", up)
	}
	press("Remove inner drawer")
	if n := len(s.session.Project().FrontAt(model.Place{}).Inner); n != 0 {
		t.Errorf("%d inner drawers are left", n)
	}
	if n := s.done(); n != 3 {
		t.Errorf("that took %d steps", n)
	}
	s.session.Undo()
	if n := len(s.session.Project().FrontAt(model.Place{}).Inner); n != 1 {
		t.Errorf("undone, there are %d inner drawers", n)
	}
	s.session.Select(drawing.Subject{Kind: drawing.BayThing, Place: model.Place{Front: -1}})
	s.enter("Packing left", "30")
	if k := s.session.Project().BayAt(model.Place{}).Packing; k.Left != length.MM(30) || k.Right != 0 {
		t.Errorf("the packing is %+v", k)
	}
}
