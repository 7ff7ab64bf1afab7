package ui

import (
	"errors"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"frontlay/assets"
	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/ui/field"
)

// sheetsOn opens the page of hardware sheets on the demo.
func sheetsOn(t *testing.T) (*window, *sheetsPage) {
	t.Helper()
	w, _, _ := newWindow(t, "")
	w.do("sheets")
	if w.sheets() == nil || w.desk.Object.Visible() {
		t.Fatal("the page is not shown")
	}
	return w, w.sheets()
}

// changed changes a figure of the sheet that is shown.
func (h *sheetsPage) changed(setback length.Length) *model.HardwareSheet {
	s := h.page.Sheet().Clone()
	s.Runner.Setback = setback
	h.page.Replace(s)
	return s
}

// answer presses a button of what lies over the window, and nothing where there
// is none.
func (w *window) answer(t *testing.T, text string) {
	t.Helper()
	top := w.win.Canvas().Overlays().Top()
	if top == nil {
		t.Fatalf("nothing asks %q", text)
	}
	var found fyne.Tappable
	var walk func(o fyne.CanvasObject)
	walk = func(o fyne.CanvasObject) {
		switch v := o.(type) {
		case *field.Button:
			if v.Text == text {
				found = v
			}
		case *widget.Button:
			if v.Text == text {
				found = v
			}
		case *widget.PopUp:
			walk(v.Content)
		case *container.Scroll:
			walk(v.Content)
		case *fyne.Container:
			for _, c := range v.Objects {
				walk(c)
			}
		case fyne.Widget:
			for _, c := range test.WidgetRenderer(v).Objects() {
				walk(c)
			}
		}
	}
	walk(top)
	if found == nil {
		t.Fatalf("nothing says %q", text)
	}
	found.Tapped(&fyne.PointEvent{})
}

// Changed figures get into the project by one step, which makes the project
// carry its own copy.
func TestSheetFiguresGetIntoTheProject(t *testing.T) {
	w, h := sheetsOn(t)
	before := w.session.Project().Hardware[0]
	h.changed(4 * length.Millimetre)
	h.changed(5 * length.Millimetre)
	if w.session.Unsaved() {
		t.Error("the project changed before it was asked for")
	}
	test.Tap(h.use)
	after := w.session.Project().Hardware[0]
	if after.Sheet.Runner.Setback != 5*length.Millimetre || after.Source != "" || after.Name != before.Name {
		t.Errorf("the project has %v from %q", after.Sheet.Runner.Setback, after.Source)
	}
	if before.Sheet.Runner.Setback == 5*length.Millimetre || before.Source == "" {
		t.Error("the sheet was changed in place")
	}
	h.Leave(w.showDesk)
	if w.sheets() != nil || !w.desk.Object.Visible() || w.win.Canvas().Overlays().Top() != nil {
		t.Error("the page does not close without a question")
	}
	w.do("undo")
	if u := w.session.Project().Hardware[0]; u.Sheet != before.Sheet || u.Source != before.Source || w.session.Unsaved() {
		t.Error("one undo does not lead back")
	}
}

// Figures that do not go together can't get into the project.
func TestFaultySheetStaysOut(t *testing.T) {
	w, h := sheetsOn(t)
	s := h.page.Sheet().Clone()
	s.Drawers[0].SideTop = length.Millimetre
	h.page.Replace(s)
	if !h.use.Disabled() || h.apply() {
		t.Error("it can be used")
	}
	w.do("print")
	w.answer(t, "Give them up")
	if w.session.Unsaved() || w.sheets() != nil {
		t.Error("the sheet got into the project, or the page stays")
	}
}

// Leaving with changes asks; each answer does what it says, and nothing is lost
// without one.
func TestLeavingChangedSheets(t *testing.T) {
	ways := map[string]func(w *window){
		"Esc":         func(w *window) { w.typedKey(&fyne.KeyEvent{Name: fyne.KeyEscape}) },
		"the way out": func(w *window) { w.sheets().Leave(w.showDesk) },
		"a command":   func(w *window) { w.do("demo") },
		"closing":     func(w *window) { w.keepWork(func() {}) },
	}
	for name, leave := range ways {
		t.Run(name, func(t *testing.T) {
			w, h := sheetsOn(t)
			h.changed(6 * length.Millimetre)
			leave(w)
			w.answer(t, "Go back")
			if w.sheets() != h || !h.page.Unsaved() {
				t.Fatal("going back lost the changes")
			}
			leave(w)
			w.answer(t, "Use in the project")
			if got := w.session.Project().Hardware[0].Sheet.Runner.Setback; got != 6*length.Millimetre || w.sheets() != nil {
				t.Errorf("the project has %v", got)
			}
		})
	}
}

// Undo and redo are the page's while it is shown.
func TestUndoOnTheSheetsPage(t *testing.T) {
	w, h := sheetsOn(t)
	h.changed(6 * length.Millimetre)
	w.do("undo")
	if h.page.Unsaved() {
		t.Error("undo took nothing back")
	}
	w.do("redo")
	if !h.page.Unsaved() || w.session.Unsaved() {
		t.Error("redo changed something else")
	}
	w.do("all")
	if w.sheets() != h || len(w.session.Selection()) > 0 {
		t.Error("a command of the drawing runs behind the page")
	}
}

// A copy and a new sheet are in the project at once, under names of their own.
func TestNewSheets(t *testing.T) {
	w, h := sheetsOn(t)
	n := len(w.session.Project().Hardware)
	h.duplicate()
	w.answer(t, "Add to the project")
	h.create()
	w.answer(t, "Add to the project")
	all := w.session.Project().Hardware
	if len(all) != n+2 || all[n].Name != all[0].Name+" 2" || all[n+1].Name != "new" || h.name != "new" {
		t.Fatalf("the project has %d sheets, and %q is shown", len(all), h.name)
	}
	if all[n].Sheet == all[0].Sheet {
		t.Error("the copy is the sheet itself")
	}
	h.changed(9 * length.Millimetre)
	h.show(0)
	w.answer(t, "Use in the project")
	if h.name != all[0].Name || w.session.Project().Sheet("new").Runner.Setback != 9*length.Millimetre {
		t.Errorf("%q is shown", h.name)
	}
	w.ask.Name("", "", "Add to the project", "new", func(string) error { return errors.New("taken") })
	w.answer(t, "Add to the project")
	w.answer(t, "Go back") // it still asks
	if len(w.session.Project().Hardware) != n+2 {
		t.Error("a sheet was added under a name that can't be")
	}
}

// A sheet is read from a file and written back with its comments; a file with a
// fault is told with its line.
func TestSheetFiles(t *testing.T) {
	w, h := sheetsOn(t)
	data, _ := assets.Sheet("sample-b")
	path := filepath.Join(t.TempDir(), "mine.yaml")
	data = append([]byte("# my own comment\n"), data...)
	if err := os.WriteFile(path, data, 0o600); err != nil {
		t.Fatal(err)
	}
	if err := h.readFile(path); err != nil {
		t.Fatal(err)
	}
	w.answer(t, "Add to the project")
	if h.name != "mine" || w.session.Project().Sheet("mine") == nil {
		t.Fatalf("%q is shown", h.name)
	}
	h.changed(8 * length.Millimetre)
	out := filepath.Join(t.TempDir(), "out.yaml")
	if err := h.writeFile(out); err != nil {
		t.Fatal(err)
	}
	written, err := os.ReadFile(out)
	if err != nil || !strings.Contains(string(written), "# my own comment") || !strings.Contains(string(written), "setback: 8") {
		t.Errorf("the file is\n%s (%v)", written, err)
	}
	w.saveTo(out)
	if err := h.writeFile(out); err == nil {
		t.Error("the sheet was written over the project")
	}
	if err := os.WriteFile(path, []byte("frontlay_hardware: 1\nname: x\nsetbak: 3\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := h.readFile(path); err == nil || !strings.Contains(err.Error(), "mine.yaml:3") {
		t.Errorf("the fault is told as %v", err)
	}
}

// The project carries a copy without any change of its figures.
func TestCarryACopy(t *testing.T) {
	w, h := sheetsOn(t)
	sheet := w.session.Project().Hardware[0].Sheet
	test.Tap(h.carry)
	if u := w.session.Project().Hardware[0]; u.Source != "" || u.Sheet != sheet || !h.carry.Disabled() {
		t.Errorf("the project has it from %q", u.Source)
	}
	path := filepath.Join(t.TempDir(), "bench.yaml")
	w.saveTo(path)
	if !strings.Contains(content(t, path), "side_clearance") {
		t.Error("the file holds no copy")
	}
}

// Another language keeps what was changed.
func TestSheetsInAnotherLanguage(t *testing.T) {
	w, h := sheetsOn(t)
	s := h.changed(7 * length.Millimetre)
	w.speak("de")
	if w.sheets() == nil || w.sheets() == h || w.sheets().page.Sheet().Runner.Setback != s.Runner.Setback || !w.sheets().page.Unsaved() {
		t.Error("the changes are gone")
	}
}

// A sheet gets another name in the project by one step, and all that use it
// follow; undo gives the old one back.
func TestASheetIsRenamed(t *testing.T) {
	w, _, _ := newWindow(t, "")
	start := w.session.Project()
	w.openSheets("main")
	h := w.sheets()
	test.Tap(h.rename)
	e := w.win.Canvas().Focused().(*field.Text)
	e.SetText(start.Hardware[1].Name)
	w.answer(t, "Rename")
	if w.win.Canvas().Overlays().Top() == nil || !reflect.DeepEqual(w.session.Project(), start) {
		t.Fatal("two sheets have one name")
	}
	e.SetText("metal")
	w.answer(t, "Rename")
	p := w.session.Project()
	if p.Sheet("metal") != start.Sheet("main") || p.Sheet("main") != nil || h.choice.Selected != "metal" {
		t.Fatalf("the project has %v, the page shows %q", p.Hardware, h.choice.Selected)
	}
	for i := range w.session.Result().Plan.Fronts {
		if f := &w.session.Result().Plan.Fronts[i]; f.Kind == model.DrawerFront && f.Sheet == nil {
			t.Errorf("front %d has lost its sheet", f.Number)
		}
	}
	w.session.Select(drawing.Subject{Kind: drawing.BayThing, Place: model.Place{Front: -1}})
	h.Leave(w.showDesk)
	if !offers(w.desk.Inspector.Object, "metal") {
		t.Error("the panel beside the drawing does not know the new name")
	}
	w.do("undo")
	if !reflect.DeepEqual(w.session.Project(), start) {
		t.Error("undo does not lead back")
	}
}

// offers tells that a choice in an object has an option.
func offers(o fyne.CanvasObject, option string) bool {
	if c, ok := o.(*field.Choice); ok {
		return slices.Contains(c.Options, option)
	}
	return slices.ContainsFunc(within(o), func(c fyne.CanvasObject) bool { return offers(c, option) })
}

// A sheet that drawers use stays, and the page says which; one that none uses
// goes, and undo brings it back.
func TestASheetIsRemoved(t *testing.T) {
	w, _, _ := newWindow(t, "")
	start := w.session.Project()
	w.openSheets("main")
	h := w.sheets()
	test.Tap(h.remove)
	if !reflect.DeepEqual(w.session.Project(), start) {
		t.Fatal("a sheet in use was removed")
	}
	if text := textsIn(w.win.Canvas().Overlays().Top()); !strings.Contains(text, "Buckets") || !strings.Contains(text, "Jars") {
		t.Fatalf("it does not say which drawers use it: %s", text)
	}
	w.closeOverlays()
	test.Tap(h.carry)
	h.add("", "spare", h.page.Sheet().Clone(), nil)
	w.answer(t, "Add to the project")
	before := w.session.Project()
	test.Tap(h.remove)
	if p := w.session.Project(); p.Sheet("spare") != nil || len(p.Hardware) != len(start.Hardware) || h.name == "spare" || h.index() < 0 {
		t.Fatalf("the project has %v, the page shows %q", p.Hardware, h.name)
	}
	h.Leave(w.showDesk)
	w.do("undo")
	if !reflect.DeepEqual(w.session.Project(), before) {
		t.Error("undo does not bring it back")
	}
}

// textsIn are the labels in an object.
func textsIn(o fyne.CanvasObject) string {
	if l, ok := o.(*field.Label); ok {
		return l.Text
	}
	all := ""
	for _, c := range within(o) {
		all += textsIn(c) + "\n"
	}
	return all
}
