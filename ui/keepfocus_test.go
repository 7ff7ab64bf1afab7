package ui

import (
	"testing"

	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/field"
	"frontlay/ui/session"
)

// A panel that is made anew, for another look or unit, leaves the keyboard in the
// field that had it: several fields share a label, and what is typed next would
// change another thing.
func TestTheFocusStaysInItsField(t *testing.T) {
	again := map[string][2]func(w *window){
		"look": {func(w *window) { w.do("dark") }, func(w *window) { w.do("light") }},
		"unit": {
			func(w *window) { w.Do(edit.SetUnit{Unit: length.UnitCM}) },
			func(w *window) { w.Do(edit.SetUnit{Unit: length.UnitMM}) },
		},
	}
	cabinet := []drawing.Subject{{Kind: drawing.CabinetThing, Place: session.PlaceOfCabinet(0)}}
	for name, chosen := range map[string][]drawing.Subject{"cabinet": cabinet, "project": nil} {
		for way, change := range again {
			t.Run(name+"/"+way, func(t *testing.T) {
				w, _, _ := newWindow(t, "")
				w.session.Select(chosen...)
				layOut(w)
				c := w.win.Canvas()
				all := usable(w.desk.Inspector.Object)
				kept := 0
				for i := range all {
					c.Focus(all[i])
					change[i%2](w)
					now := usable(w.desk.Inspector.Object)
					if now[i] == all[i] {
						kept++ // the search stays
					}
					if c.Focused() != now[i] {
						t.Errorf("from control %d, %s, the focus goes to %s", i, named(all[i]), named(c.Focused()))
					}
					all = now
				}
				if kept > 1 {
					t.Errorf("%d controls are not made anew", kept)
				}
			})
		}
	}
}

// unfold opens every section of the panel.
func unfold(w *window) {
	for _, f := range controls(w.desk.Inspector.Object, nil) {
		if s, ok := f.(*field.Fold); ok && !s.Open() {
			s.Tapped(nil)
		}
	}
}

// What is typed after an undo that makes the panel anew changes the thing that
// the field was about.
func TestTypingAfterUndoChangesTheSameThing(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.session.Select(drawing.Subject{Kind: drawing.CabinetThing, Place: session.PlaceOfCabinet(0)})
	w.Do(edit.SetUnit{Unit: length.UnitCM})
	unfold(w)
	layOut(w)
	c := w.win.Canvas()
	var last *field.Entry
	for _, f := range usable(w.desk.Inspector.Object) {
		if e, ok := f.(*field.Entry); ok {
			last = e
		}
	}
	c.Focus(last)
	before := w.session.Project().Cabinets[0]
	w.do("undo")
	e := c.Focused().(*field.Entry)
	e.SetText("12")
	e.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	after := w.session.Project().Cabinets[0]
	if after.Left != before.Left || after.Right.Projection != 12*length.Millimetre {
		t.Errorf("left %+v, right %+v", after.Left, after.Right)
	}
}
