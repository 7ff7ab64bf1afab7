package ui

import (
	"path/filepath"
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/test"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
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

// The inspector is as wide as it was made, also with another language and in the
// next window, and stays hidden; large text has a width of its own.
func TestTheInspectorStaysAsItWasMade(t *testing.T) {
	w, _, _ := newWindow(t, "")
	for range 3 {
		w.do("narrower")
	}
	made, _ := w.desk.Divided()
	w.speak("de")
	if got, _ := w.desk.Divided(); got != made {
		t.Errorf("another language makes it %v wide, not %v", got, made)
	}
	w.do("large")
	if got, _ := w.desk.Divided(); got == made {
		t.Errorf("large text has its width %v", got)
	}
	w.do("large")
	w.do("inspector")
	w.keepSize()
	next := open(w.app, &look.Theme{}, Options{Keeper: keeper(t, &disk{}), Example: "glaze-bench"})
	t.Cleanup(next.shut)
	if got, hidden := next.desk.Divided(); got != made || !hidden || next.desk.Inspector.Object.Visible() {
		t.Errorf("in the next window it is %v wide, not %v, and hidden is %v", got, made, hidden)
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
	if !w.refuses() || w.session.Project().Title != "Changed" {
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

// F6 leads from the drawing to the inspector, to the check, and back; past an inspector
// that is hidden.
func TestF6GoesFromPaneToPane(t *testing.T) {
	quiet := func(t *testing.T) *window {
		w, _, _ := newWindow(t, "")
		return w
	}
	for name, open := range map[string]func(*testing.T) *window{"nothing found": quiet, "findings": withFindings} {
		t.Run(name, func(t *testing.T) {
			w := open(t)
			c := w.win.Canvas()
			layOut(w)
			w.session.Select(w.face(1))
			c.Focus(w.desk.Screen)
			press(w, fyne.KeyF6)
			if f := c.Focused(); !slices.Contains(controls(w.desk.Inspector.Object, nil), f) {
				t.Fatalf("the first leads to %T", f)
			}
			for _, open := range []bool{false, true} {
				w.desk.Findings.Close()
				if open {
					w.desk.Findings.Turn()
				}
				c.Focus(w.desk.Inspector.Fields()["Height"])
				press(w, fyne.KeyF6)
				if f := c.Focused(); !w.desk.Findings.Holds(f) {
					t.Fatalf("the second leads to %T", f)
				}
				press(w, fyne.KeyF6)
				if f := c.Focused(); f != w.desk.Screen {
					t.Fatalf("the third leads to %T", f)
				}
			}
			w.do("inspector")
			c.Focus(w.desk.Screen)
			press(w, fyne.KeyF6)
			if f := c.Focused(); !w.desk.Findings.Holds(f) {
				t.Errorf("with no inspector it leads to %T", f)
			}
			w.do("print")
			c.Unfocus()
			press(w, fyne.KeyF6)
			if w.stage.page == nil || c.Focused() != nil {
				t.Errorf("on a page it leads to %T", c.Focused())
			}
		})
	}
}

// Esc on the drawing closes the list of findings first, and leaves the selection to
// the next one.
func TestEscOnTheDrawingClosesTheList(t *testing.T) {
	w := withFindings(t)
	w.session.Select(w.face(1))
	w.win.Canvas().Focus(w.desk.Screen)
	press(w, fyne.KeyEscape)
	if w.desk.Findings.Open() || len(w.session.Selection()) != 1 {
		t.Fatalf("the list is open: %v, selected %v", w.desk.Findings.Open(), w.session.Selection())
	}
	press(w, fyne.KeyEscape)
	if len(w.session.Selection()) != 0 {
		t.Error("the second one leaves the selection")
	}
}

// The inspector's edge moves by the pointer and by keys, within bounds, and F9 hides
// it and brings it back; what has the keyboard in it gives it to the drawing.
func TestTheInspectorsEdgeMoves(t *testing.T) {
	w, _, _ := newWindow(t, "")
	before, _ := w.desk.Divided()
	w.do("narrower")
	if got, _ := w.desk.Divided(); got <= before {
		t.Errorf("with a narrower drawing it is %v wide, before %v", got, before)
	}
	for _, c := range []struct {
		command string
		want    float32
	}{{"narrower", 420}, {"wider", 260}} {
		for range 20 {
			w.do(c.command)
		}
		if got, _ := w.desk.Divided(); got != c.want {
			t.Errorf("%s leads to %v, want %v", c.command, got, c.want)
		}
	}
	w.win.Canvas().Focus(w.desk.Inspector.Fields()["Carcass"])
	press(w, fyne.KeyF9)
	if w.desk.Inspector.Object.Visible() || w.win.Canvas().Focused() != w.desk.Screen {
		t.Errorf("F9 does not hide it, or leaves the keyboard at %v", w.win.Canvas().Focused())
	}
	press(w, fyne.KeyF9)
	if !w.desk.Inspector.Object.Visible() {
		t.Error("F9 does not bring it back")
	}
}
