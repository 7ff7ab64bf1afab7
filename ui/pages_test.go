package ui

import (
	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/page/printing"
	"frontlay/ui/session"
)

// small is what a window on a screen of 1366 × 768 has for its content.
var small = fyne.NewSize(1366, 690)

// layOut lays a window out anew, as the desktop does before each frame; the test
// driver does so only for what was resized.
func layOut(w *window) {
	w.win.Resize(small.AddWidthHeight(1, 0))
	w.win.Resize(small)
}

// spoil puts several things in the demo wrong.
func spoil(w *window) {
	low := -20 * length.Millimetre
	w.Do(edit.Set{At: model.Place{}, Key: "drop", Value: low})
	w.Do(edit.SetHeight{At: model.Place{Front: 1}, Height: length.MM(90)})
}

// form is a page with fields. show shows it.
type form struct {
	name string
	show func(w *window)
}

// inInches writes the figures of pages with a unit of their own in inches where
// the project's are.
func inInches(w *window) {
	u := w.session.Project().Unit
	if b := w.beginning(); b != nil {
		b.Do(edit.SetUnit{Unit: u})
	}
	if h := w.sheets(); h != nil && u != h.Form.Sheet().Unit {
		s := h.Form.Sheet().Clone()
		s.Unit = u
		h.Form.Replace(s)
	}
}

// forms are all of them.
func forms() []form {
	inspected := func(kind drawing.SubjectKind, at model.Place) func(w *window) {
		return func(w *window) { w.session.Select(drawing.Subject{Kind: kind, Place: at}) }
	}
	return []form{
		{"project", func(w *window) { w.session.Select() }},
		{"front", func(w *window) { w.session.Select(w.face(5)) }},
		{"long names", func(w *window) {
			w.Do(edit.SetDrawer{At: w.face(5).Place, Drawer: "low"})
			w.Do(edit.SetHeight{At: w.face(5).Place, Height: length.MM(299) + 7*length.Millimetre/10})
			w.session.Select(w.face(5))
		}},
		{"several", func(w *window) { w.session.Select(w.face(2), w.face(5), w.face(10)) }},
		{"division", inspected(drawing.DivisionThing, model.Place{})},
		{"partition", inspected(drawing.PartitionThing, model.Place{Cabinet: 1})},
		{"bay", inspected(drawing.BayThing, model.Place{Cabinet: 1, Front: -1})},
		{"cabinet", inspected(drawing.CabinetThing, session.PlaceOfCabinet(0))},
		{"new", func(w *window) { w.showStart(nil); inInches(w) }},
		{"print", func(w *window) { w.do("print") }},
		{"hardware", func(w *window) { w.openSheets(w.session.Project().Hardware[0].Name); inInches(w) }},
		{"calibration", func(w *window) { printing.New(w, w.system()).Measure(nil) }},
	}
}
