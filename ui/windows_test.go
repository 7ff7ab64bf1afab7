package ui

import (
	"math"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/desk"
	"frontlay/ui/look"
)

func (w *window) menu(name string) *fyne.MenuItem {
	for i := range w.table.Rows {
		if w.table.Rows[i].Name == name {
			return w.table.Item(&w.table.Rows[i])
		}
	}
	return nil
}

// What is copied in one window can be pasted in another; each asks about its own
// unsaved work; closing one leaves the other alone.
func TestTwoWindows(t *testing.T) {
	w, _, _ := newWindow(t, "")
	other := w.another()
	other.beginning().Begin()
	other.closeOverlays()
	if !other.menu("paste").Disabled {
		t.Error("there is nothing to paste yet")
	}
	w.session.Select(w.face(1), w.face(2))
	w.do("cut")
	if other.menu("paste").Disabled || w.menu("paste").Disabled {
		t.Error("what was cut can't be pasted from the menu")
	}
	other.session.Select(other.face(1))
	other.do("paste")
	p := other.session.Project()
	if got := len(p.Cabinets[0].Bays[0].Fronts); got != 5 || p.FrontAt(model.Place{Front: 1}).Name != "Buckets" || p.FrontAt(model.Place{Front: 2}).Name != "Jars" {
		t.Errorf("pasted: %+v", p.Cabinets[0].Bays[0].Fronts)
	}
	other.do("quit")
	other.answerWith(t, "Don't save")
	if w.win.Canvas().Overlays().Top() != nil || len(w.group.windows) != 1 {
		t.Errorf("the first window asks too, or %d windows are left", len(w.group.windows))
	}
	w.do("undo")
	if w.session.Unsaved() {
		t.Error("the window that is left does not work on")
	}
}

// Look, size of letters and language are those of every window.
func TestSettingsHoldInEveryWindow(t *testing.T) {
	w, _, _ := newWindow(t, "")
	other := w.another()
	t.Cleanup(other.shut)
	w.speak("de")
	if other.group.speech.code != "de" || other.menu("save").Label != w.menu("save").Label {
		t.Errorf("the other window speaks %q", other.group.speech.code)
	}
	w.do("dark")
	if !other.menu("dark").Checked || other.menu("light").Checked {
		t.Error("the other window's menu does not tell the look")
	}
	w.do("large")
	if !other.menu("large").Checked {
		t.Error("the other window's menu does not tell the size of letters")
	}
}

// The bars between the drawing and its panels stay where they were put, also with
// another language; large text has places of its own for them.
func TestPanelsStayWhereTheyWerePut(t *testing.T) {
	w, _, _ := newWindow(t, "")
	near := func(a, b float64) bool { return math.Abs(a-b) < 0.01 }
	w.desk.Down.SetOffset(0.6)
	w.desk.Across.SetOffset(0.66)
	w.speak("de")
	if !near(w.desk.Down.Offset, 0.6) || !near(w.desk.Across.Offset, 0.66) {
		t.Errorf("another language moves them to %v and %v", w.desk.Down.Offset, w.desk.Across.Offset)
	}
	w.do("large")
	if near(w.desk.Across.Offset, 0.66) {
		t.Errorf("large text has the place %v", w.desk.Across.Offset)
	}
	w.do("large")
	w.keepSize()
	next := open(w.app, &look.Theme{}, Options{Keeper: keeper(t, &disk{}), Demo: true})
	t.Cleanup(next.shut)
	if !near(next.desk.Down.Offset, 0.6) || !near(next.desk.Across.Offset, 0.66) {
		t.Errorf("the next window has them at %v and %v", next.desk.Down.Offset, next.desk.Across.Offset)
	}
}

// The first project among dropped files opens, after a question where work would
// be lost; other files are refused with a word.
func TestDroppedFiles(t *testing.T) {
	w, _, _ := newWindow(t, "")
	path := filepath.Join(t.TempDir(), "dropped.yaml")
	w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Dropped"})
	w.saveTo(path)
	w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Changed"})
	drop := func(names ...string) {
		var all []fyne.URI
		for _, n := range names {
			all = append(all, storage.NewFileURI(n))
		}
		w.files.Dropped(all)
	}
	drop("/shop/picture.png", "/shop/notes.txt")
	if w.desk.Status.Importance != widget.DangerImportance || w.session.Project().Title != "Changed" {
		t.Errorf("of a picture it says %q", w.says())
	}
	drop("/shop/picture.png", path)
	if w.session.Project().Title != "Changed" || w.win.Canvas().Overlays().Top() == nil {
		t.Fatal("unsaved work is gone without a question")
	}
	w.answerWith(t, "Don't save")
	if w.session.Project().Title != "Dropped" || w.files.Work.Path() != path || w.session.Unsaved() {
		t.Errorf("open is %q of %q", w.session.Project().Title, w.files.Work.Path())
	}
	drop(filepath.Join(t.TempDir(), "gone.yaml"))
	if w.win.Canvas().Overlays().Top() == nil || w.session.Project().Title != "Dropped" {
		t.Error("a file that can't be read is not told")
	}
}

// The page for printing gives way to the drawing when the language changes, not
// to the start page.
func TestAnotherLanguageOverThePageForPrinting(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.do("print")
	w.speak("de")
	if w.stage.front.Visible() {
		t.Error("the start page is shown")
	}
}

func TestAnotherLanguageOverTheStartPage(t *testing.T) {
	w := open(test.NewTempApp(t), &look.Theme{}, Options{Keeper: keeper(t, &disk{})})
	t.Cleanup(w.shut)
	w.beginning().Do(edit.SetCabinet(model.Place{}, "width", length.MM(777)))
	w.beginning().Do(edit.SetUnit{Unit: length.UnitCM})
	w.speak("de")
	if !w.stage.front.Visible() || w.beginning() == nil {
		t.Fatal("the start page is gone")
	}
	p := w.beginning().Session.Project()
	if p.Cabinets[0].Width != length.MM(777) || p.Unit != length.UnitCM || p.Cabinets[0].Name == "Cabinet 1" {
		t.Errorf("the figures of the new cabinet are lost, or its name stays English: %v wide, in %v, %q", p.Cabinets[0].Width, p.Unit, p.Cabinets[0].Name)
	}
	w.showStart(nil)
	if w.beginning().Session.Project().Cabinets[0].Width == length.MM(777) {
		t.Error("a new page begins with the old figures")
	}
}

// The bars between the drawing and its panels move by keys too, so far that both
// stay in sight, and stand there again in the next window.
func TestPanelsMoveByKeys(t *testing.T) {
	w, _, _ := newWindow(t, "")
	down, across := w.desk.Down.Offset, w.desk.Across.Offset
	w.do("higher")
	w.do("narrower")
	if w.desk.Down.Offset <= down || w.desk.Across.Offset >= across {
		t.Errorf("the bars stand at %v and %v, and stood at %v and %v", w.desk.Down.Offset, w.desk.Across.Offset, down, across)
	}
	for range 50 {
		w.do("lower")
		w.do("wider")
	}
	if w.desk.Down.Offset < 0.2 || w.desk.Across.Offset > 0.95 {
		t.Errorf("a panel is out of sight: %v, %v", w.desk.Down.Offset, w.desk.Across.Offset)
	}
	w.desk.KeepShares()
	if d, a := shares(w); math.Abs(d-w.desk.Down.Offset) > 1e-9 || math.Abs(a-w.desk.Across.Offset) > 1e-9 {
		t.Errorf("kept are %v and %v, not %v and %v", d, a, w.desk.Down.Offset, w.desk.Across.Offset)
	}
}

// shares are those with which the desk of another window begins.
func shares(w *window) (down, across float64) {
	d := desk.New(w)
	return d.Down.Offset, d.Across.Offset
}
