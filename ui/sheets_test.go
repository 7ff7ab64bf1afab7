package ui

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/field"
	"frontlay/ui/page/sheets"
)

// sheetsOn opens the page of hardware sheets on the demo.
func sheetsOn(t *testing.T) (*window, *sheets.Page) {
	t.Helper()
	w, _, _ := newWindow(t, "")
	w.do("sheets")
	if w.sheets() == nil || w.desk.Object.Visible() {
		t.Fatal("the page is not shown")
	}
	return w, w.sheets()
}

// Every way off the page asks about changed figures first.
func TestLeavingChangedSheets(t *testing.T) {
	ways := map[string]func(w *window){
		"Esc":         func(w *window) { w.typedKey(&fyne.KeyEvent{Name: fyne.KeyEscape}) },
		"the way out": func(w *window) { tapIn(w.stage.front, "Back to the drawing") },
		"a command":   func(w *window) { w.do("print") },
		"closing":     func(w *window) { w.files.Keep(w.stage.showDesk) },
	}
	for name, leave := range ways {
		t.Run(name, func(t *testing.T) {
			w, h := sheetsOn(t)
			w.setback(6 * length.Millimetre)
			leave(w)
			w.answerWith(t, "Cancel")
			if w.sheets() != h || !h.Form.Unsaved() {
				t.Fatal("going back lost the changes")
			}
			leave(w)
			w.answerWith(t, "Give the changes up")
			if w.session.Unsaved() || w.sheets() != nil {
				t.Error("the page stays, or the project has changed")
			}
		})
	}
}

// Undo and redo are the page's while it is shown.
func TestUndoOnTheSheetsPage(t *testing.T) {
	w, h := sheetsOn(t)
	w.setback(6 * length.Millimetre)
	w.do("undo")
	if h.Form.Unsaved() {
		t.Error("undo took nothing back")
	}
	w.do("redo")
	if !h.Form.Unsaved() || w.session.Unsaved() {
		t.Error("redo changed something else")
	}
	w.do("all")
	if w.sheets() != h || len(w.session.Selection()) > 0 {
		t.Error("a command of the drawing runs behind the page")
	}
}

// What can be done with a sheet is done from the menu too, wherever the window is.
func TestSheetsFromTheMenu(t *testing.T) {
	w, _, _ := newWindow(t, "")
	n := len(w.session.Project().Hardware)
	for i, show := range []func(){w.stage.showDesk, func() { w.do("print") }, func() { w.do("sheets") }} {
		show()
		if i > 0 { // the new one is used by no bay
			w.answerWith(t, "No bay yet")
		}
		w.do("newsheet")
		if w.sheets() == nil {
			t.Fatal("the page of hardware sheets is not shown")
		}
		w.answerWith(t, "Add to the project")
		if got := len(w.session.Project().Hardware); got != n+i+1 {
			t.Errorf("the project has %d sheets", got)
		}
	}
	w.setback(7 * length.Millimetre)
	w.do("writesheet") // as it stands on the page
	if w.win.Canvas().Overlays().Top() == nil || !w.sheets().Form.Unsaved() {
		t.Error("writing a sheet asks for no name, or gives the changes up")
	}
}

// Leaving the page asks once which bays shall use a new sheet, with the figures that
// were typed; that is one step.
func TestANewSheetIsUsedEverywhere(t *testing.T) {
	for _, c := range []struct {
		answer string
		used   bool
	}{{"All bays", true}, {"No bay yet", false}} {
		t.Run(c.answer, func(t *testing.T) {
			w, _ := sheetsOn(t)
			w.do("newsheet")
			w.answerWith(t, "Add to the project")
			w.setback(7 * length.Millimetre)
			w.sheets().Leave(w.stage.showDesk)
			w.answerWith(t, "Cancel")
			if w.sheets() == nil {
				t.Fatal("the page is left")
			}
			_, steps := w.session.Steps()
			w.sheets().Leave(w.stage.showDesk)
			w.answerWith(t, c.answer)
			if _, n := w.session.Steps(); w.sheets() != nil || n != steps+1 {
				t.Errorf("the page stays, or there are %d steps more", n-steps)
			}
			p := w.session.Project()
			name := p.Hardware[len(p.Hardware)-1].Name
			if got := p.Sheet(name).Runner.Setback; got != 7*length.Millimetre {
				t.Errorf("its setback is %v", got)
			}
			for _, cab := range p.Cabinets {
				for _, b := range cab.Bays {
					if (b.Hardware == name) != c.used {
						t.Errorf("a bay uses %q", b.Hardware)
					}
				}
			}
			w.do("sheets")
			w.sheets().Leave(w.stage.showDesk)
			if w.sheets() != nil {
				t.Error("it is asked again")
			}
		})
	}
}

// A copy of a sheet that the project carries is in its file.
func TestACarriedSheetIsSaved(t *testing.T) {
	w, _ := sheetsOn(t)
	tapIn(w.stage.front, "Carry a copy")
	path := filepath.Join(t.TempDir(), "bench.yaml")
	w.saveTo(path)
	if !strings.Contains(content(t, path), "side_clearance") {
		t.Error("the file holds no copy")
	}
}

// Another language keeps what was changed.
func TestSheetsInAnotherLanguage(t *testing.T) {
	w, h := sheetsOn(t)
	w.setback(7 * length.Millimetre)
	w.speak("de")
	if now := w.sheets(); now == nil || now == h || now.Form.Sheet().Runner.Setback != 7*length.Millimetre || !now.Form.Unsaved() {
		t.Error("the changes are gone")
	}
}

// The panel beside the drawing knows a sheet by its new name.
func TestASheetIsRenamedEverywhere(t *testing.T) {
	w, _, _ := newWindow(t, "")
	if !w.Do(edit.RenameHardware{Name: "main", To: "metal"}) {
		t.Fatal(w.says())
	}
	w.session.Select(drawing.Subject{Kind: drawing.BayThing, Place: model.Place{Front: -1}})
	if !offers(w.desk.Inspector.Object, "metal") {
		t.Error("the panel beside the drawing does not know the new name")
	}
}

// offers tells that a choice in an object has an option.
func offers(o fyne.CanvasObject, option string) bool {
	if c, ok := o.(*field.Choice); ok {
		return slices.Contains(c.Options, option)
	}
	return slices.ContainsFunc(partsOf(o), func(c fyne.CanvasObject) bool { return offers(c, option) })
}
