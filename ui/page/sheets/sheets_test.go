package sheets

import (
	"errors"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"frontlay/assets"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/ui/field"
	"frontlay/ui/page/pagetest"
)

// disk is the real one, for the few files of a test.
type disk struct{}

func (disk) ReadFile(path string) ([]byte, error) { return os.ReadFile(path) }

func (disk) WriteFile(path string, data []byte) error { return os.WriteFile(path, data, 0o600) }

// shown is a page on the demo, in a window.
func shown(t *testing.T) (*pagetest.Host, *Page) {
	t.Helper()
	w := pagetest.New(t)
	h := New(w, disk{}, "main")
	w.Win.SetContent(h.Object)
	return w, h
}

// changed changes a figure of the sheet that is shown.
func (h *Page) changed(setback length.Length) *model.HardwareSheet {
	s := h.Form.Sheet().Clone()
	s.Runner.Setback = setback
	h.Form.Replace(s)
	return s
}

// Changed figures get into the project by one step, which makes the project
// carry its own copy.
func TestFiguresGetIntoTheProject(t *testing.T) {
	w, h := shown(t)
	before := w.Session().Project().Hardware[0]
	h.changed(4 * length.Millimetre)
	h.changed(5 * length.Millimetre)
	if w.Session().Unsaved() {
		t.Error("the project changed before it was asked for")
	}
	test.Tap(h.Use)
	after := w.Session().Project().Hardware[0]
	if after.Sheet.Runner.Setback != 5*length.Millimetre || after.Source != "" || after.Name != before.Name {
		t.Errorf("the project has %v from %q", after.Sheet.Runner.Setback, after.Source)
	}
	if before.Sheet.Runner.Setback == 5*length.Millimetre || before.Source == "" {
		t.Error("the sheet was changed in place")
	}
	left := false
	h.Leave(func() { left = true })
	if !left || w.Win.Canvas().Overlays().Top() != nil {
		t.Error("the page can't be left without a question")
	}
	w.Session().Undo()
	if u := w.Session().Project().Hardware[0]; u.Sheet != before.Sheet || u.Source != before.Source || w.Session().Unsaved() {
		t.Error("one undo does not lead back")
	}
}

// Figures that do not go together can't get into the project.
func TestFaultySheetStaysOut(t *testing.T) {
	w, h := shown(t)
	s := h.Form.Sheet().Clone()
	s.Drawers[0].SideTop = length.Millimetre
	h.Form.Replace(s)
	if !h.Use.Disabled() || h.apply() {
		t.Error("it can be used")
	}
	left := false
	h.Leave(func() { left = true })
	w.Answer(t, "Give the changes up")
	if w.Session().Unsaved() || !left {
		t.Error("the sheet got into the project, or the page stays")
	}
}

// Leaving with changes asks; each answer does what it says, and nothing is lost
// without one.
func TestLeavingChangedFigures(t *testing.T) {
	w, h := shown(t)
	h.changed(6 * length.Millimetre)
	left := 0
	leave := func() { left++ }
	h.Leave(leave)
	w.Answer(t, "Cancel")
	if left != 0 || !h.Form.Unsaved() {
		t.Fatal("going back lost the changes")
	}
	h.Leave(leave)
	w.Answer(t, "Use in the project")
	if got := w.Session().Project().Hardware[0].Sheet.Runner.Setback; got != 6*length.Millimetre || left != 1 {
		t.Errorf("the project has %v, and the page was left %d times", got, left)
	}
}

// A copy and a new sheet are in the project at once, under names of their own.
func TestNewSheets(t *testing.T) {
	w, h := shown(t)
	n := len(w.Session().Project().Hardware)
	h.duplicate()
	w.Answer(t, "Add to the project")
	h.create()
	w.Answer(t, "Add to the project")
	all := w.Session().Project().Hardware
	if len(all) != n+2 || all[n].Name != all[0].Name+" 2" || all[n+1].Name != "new" || h.name != "new" {
		t.Fatalf("the project has %d sheets, and %q is shown", len(all), h.name)
	}
	if all[n].Sheet == all[0].Sheet {
		t.Error("the copy is the sheet itself")
	}
	h.changed(9 * length.Millimetre)
	h.show(0)
	w.Answer(t, "Use in the project")
	if h.name != all[0].Name || w.Session().Project().Sheet("new").Runner.Setback != 9*length.Millimetre {
		t.Errorf("%q is shown", h.name)
	}
	w.Ask().Name("", "", "Add to the project", "new", func(string) error { return errors.New("taken") })
	w.Answer(t, "Add to the project")
	w.Answer(t, "Cancel") // it still asks
	if len(w.Session().Project().Hardware) != n+2 {
		t.Error("a sheet was added under a name that can't be")
	}
}

// A sheet is read from a file and written back with its comments; a file with a
// fault is told with its line.
func TestSheetFiles(t *testing.T) {
	w, h := shown(t)
	data, _ := assets.Sheet("sample-b")
	path := filepath.Join(t.TempDir(), "mine.yaml")
	data = append([]byte("# my own comment\n"), data...)
	if err := os.WriteFile(path, data, 0o600); err != nil {
		t.Fatal(err)
	}
	if err := h.readFile(path); err != nil {
		t.Fatal(err)
	}
	w.Answer(t, "Add to the project")
	if h.name != "mine" || w.Session().Project().Sheet("mine") == nil {
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
	w.Path = out
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
	w, h := shown(t)
	sheet := w.Session().Project().Hardware[0].Sheet
	test.Tap(h.carry)
	if u := w.Session().Project().Hardware[0]; u.Source != "" || u.Sheet != sheet || !h.carry.Disabled() {
		t.Errorf("the project has it from %q", u.Source)
	}
}

// The page made anew keeps what was changed, also while the figures of the moment
// don't go together.
func TestThePageMadeAnewKeepsWhatWasChanged(t *testing.T) {
	_, h := shown(t)
	h.changed(9 * length.Millimetre)
	good := h.draft
	bad := h.changed(-9 * length.Millimetre)
	if good == nil || h.draft != good {
		t.Fatalf("the draft is %v", h.draft)
	}
	now := h.Again()
	if now.draft != good || len(now.Form.Problems()) == 0 || !now.Form.Unsaved() || now.Form.Sheet().Runner.Setback != bad.Runner.Setback {
		t.Errorf("the draft is %v, the form has %v", now.draft, now.Form.Sheet().Runner.Setback)
	}
}

// A sheet gets another name in the project by one step, and all that use it
// follow; undo gives the old one back.
func TestASheetIsRenamed(t *testing.T) {
	w, h := shown(t)
	start := w.Session().Project()
	test.Tap(h.rename)
	e := w.Win.Canvas().Focused().(*field.Text)
	e.SetText(start.Hardware[1].Name)
	w.Answer(t, "Rename")
	if w.Win.Canvas().Overlays().Top() == nil || !reflect.DeepEqual(w.Session().Project(), start) {
		t.Fatal("two sheets have one name")
	}
	e.SetText("metal")
	w.Answer(t, "Rename")
	p := w.Session().Project()
	if p.Sheet("metal") != start.Sheet("main") || p.Sheet("main") != nil || h.choice.Selected != "metal" {
		t.Fatalf("the project has %v, the page shows %q", p.Hardware, h.choice.Selected)
	}
	for i := range w.Session().Result().Plan.Fronts {
		if f := &w.Session().Result().Plan.Fronts[i]; f.Kind == model.DrawerFront && f.Sheet == nil {
			t.Errorf("front %d has lost its sheet", f.Number)
		}
	}
	w.Session().Undo()
	if !reflect.DeepEqual(w.Session().Project(), start) {
		t.Error("undo does not lead back")
	}
}

// A sheet that drawers use stays, and the page says which; one that none uses
// goes, and undo brings it back.
func TestASheetIsRemoved(t *testing.T) {
	w, h := shown(t)
	start := w.Session().Project()
	test.Tap(h.remove)
	if !reflect.DeepEqual(w.Session().Project(), start) {
		t.Fatal("a sheet in use was removed")
	}
	if text := pagetest.Texts(w.Win.Canvas().Overlays().Top()); !strings.Contains(text, "Buckets") || !strings.Contains(text, "Jars") {
		t.Fatalf("it does not say which drawers use it: %s", text)
	}
	w.CloseOverlays()
	test.Tap(h.carry)
	h.add("", "spare", h.Form.Sheet().Clone(), nil)
	w.Answer(t, "Add to the project")
	before := w.Session().Project()
	test.Tap(h.remove)
	if p := w.Session().Project(); p.Sheet("spare") != nil || len(p.Hardware) != len(start.Hardware) || h.name == "spare" || h.index() < 0 {
		t.Fatalf("the project has %v, the page shows %q", p.Hardware, h.name)
	}
	w.Session().Undo()
	if !reflect.DeepEqual(w.Session().Project(), before) {
		t.Error("undo does not bring it back")
	}
}

// In a project without hardware the draft is its only sheet. Its name says no more
// than is so.
func TestADraftInAProjectWithoutHardware(t *testing.T) {
	_, h := shown(t)
	p := h.host.Session().Project().Clone()
	p.Hardware = nil
	h.name, h.draft = "", h.Form.Sheet()
	if all := h.Draft(p).Hardware; len(all) != 1 || all[0].Name != "changed" || all[0].Sheet != h.draft {
		t.Errorf("the journal has %v", all)
	}
}

// Signs that can't be seen are left out of the names of sheets. The page goes on
// with the sheet that has been renamed or added, and none takes the place of
// another whose name looks the same.
func TestNamesOfSheetsWithInvisibleSigns(t *testing.T) {
	w, h := shown(t)
	ask := func(button, name string) {
		t.Helper()
		w.Win.Canvas().Focused().(*field.Text).SetText(name)
		w.Answer(t, button)
	}
	h.renameIt()
	ask("Rename", "\ufeffmine")
	if h.name != "mine" || h.index() != 0 || h.choice.Selected != "mine" {
		t.Errorf("after renaming %q is shown, %d of the sheets", h.name, h.index())
	}
	n := len(h.uses())
	h.duplicate()
	ask("Add to the project", "\ufeffanother")
	if h.name != "another" || h.index() != n {
		t.Errorf("after adding %q is shown, %d of the sheets", h.name, h.index())
	}
	was := w.Session().Project()
	h.duplicate()
	ask("Add to the project", "\ufeffmine")
	if w.Session().Project() != was {
		t.Error("a sheet took the place of another")
	}
	if top := w.Win.Canvas().Overlays().Top(); top == nil || !strings.Contains(pagetest.Texts(top), "already") {
		t.Error("it is not said that the name is taken")
	}
}
