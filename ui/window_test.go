package ui

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/assets"
	"frontlay/assets/language"
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/sheet"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
	"frontlay/ui/command"
	"frontlay/ui/desk"
	"frontlay/ui/look"
	"frontlay/ui/page/start"
	"frontlay/ui/session"
	"frontlay/ui/work"
)

// disk is the real one, that can be made to fail.
type disk struct {
	store.OS
	fail error
}

func (d *disk) OpenFile(name string, flag int, perm fs.FileMode) (store.File, error) {
	if d.fail != nil && flag&os.O_CREATE != 0 {
		return nil, d.fail
	}
	return d.OS.OpenFile(name, flag, perm)
}

// keeper keeps work on a disk. Its journals are written when they are flushed.
func keeper(t testing.TB, d store.FS) *work.Keeper {
	t.Helper()
	n := 0
	return &work.Keeper{FS: d, Home: t.TempDir(), Sheets: func(string, func(string) bool) yamlfile.SheetSource { return samples },
		Owner: func() store.Owner { n++; return store.ThisProcess(strconv.Itoa(n), time.Now()) },
		After: func(time.Duration) <-chan time.Time { return nil }, Now: time.Now, Failed: func(err error) { t.Error(err) }}
}

func samples(s string) (string, []byte, error) {
	data, _ := assets.Sheet(s)
	return s, data, nil
}

// printed is what the window wrote as a PDF.
type printed struct {
	path string
	doc  sheet.Document
}

// newWindow opens a window on the demo.
func newWindow(t testing.TB, path string) (*window, *disk, *[]printed) {
	t.Helper()
	a := test.NewTempApp(t)
	th := &look.Theme{Mode: look.LightMode}
	a.Settings().SetTheme(th)
	desk.HintsDone(a.Preferences()) // those of the first use were seen
	d, pages := &disk{}, &[]printed{}
	w := open(a, th, Options{Keeper: keeper(t, d), Open: path, Example: "glaze-bench", Date: func() string { return "2026-01-01" }, Write: func(path string, d sheet.Document, _ func(page, pages int) error) error {
		*pages = append(*pages, printed{path, d})
		return nil
	}})
	w.desk.Inspector.Begin()
	w.win.Resize(fyne.NewSize(1240, 690))
	t.Cleanup(w.shut)
	return w, d, pages
}

// shut closes a window as the last question before it does.
func (w *window) shut() {
	_ = w.files.Work.Close() // what a test leaves unsaved is nobody's
	select {
	case <-w.closed:
	default:
		w.win.Close()
	}
}

// saveTo writes the project to a file.
func (w *window) saveTo(path string) { w.files.Follow(w.files.Work.SaveTo(path), nil) }

func (w *window) face(n int) drawing.Subject {
	return session.Front(w.session.Result().Plan.Fronts[n-1].Place)
}

// unaccepted are the findings that nothing accepts: of the demo as it
// is opened none, for its file accepts with reasons what an invented bench has.
func (w *window) unaccepted() []check.Finding {
	return slices.DeleteFunc(slices.Clone(w.session.Result().Findings), func(f check.Finding) bool { return f.Accepted != "" })
}

func TestTheDemoOpens(t *testing.T) {
	w, _, _ := newWindow(t, "")
	if got := w.win.Title(); got != "Glaze bench – no file yet – frontlay" {
		t.Errorf("the title is %q", got)
	}
	if n := len(w.unaccepted()); n != 0 {
		t.Errorf("the demo has %d findings that its file does not accept", n)
	}
}

func TestAFileThatCantBeReadIsTold(t *testing.T) {
	path := filepath.Join(t.TempDir(), "broken.yaml")
	if err := os.WriteFile(path, []byte("frontlay: 1\ntitel: x\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	w, _, _ := newWindow(t, path)
	if w.win.Canvas().Overlays().Top() == nil {
		t.Error("nothing tells that the file could not be read")
	}
	if w.files.Work.Path() != "" {
		t.Errorf("saving would overwrite %s", w.files.Work.Path())
	}
}

func TestUndoHasANameAndTheTitleAMark(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.session.Select(w.face(2))
	w.do("lock")
	if got := w.win.Title(); got != "Glaze bench – not saved yet – frontlay" {
		t.Errorf("the title is %q", got)
	}
	label := ""
	for i, c := range w.table.Rows {
		if c.Name == "undo" {
			label = w.table.Item(&w.table.Rows[i]).Label
		}
	}
	if label != "Undo: Lock height" {
		t.Errorf("the menu says %q", label)
	}
	w.do("undo")
	if w.session.Unsaved() {
		t.Error("after undo the project is as it was opened")
	}
}

func TestSaveAndReopen(t *testing.T) {
	w, d, _ := newWindow(t, "")
	path := filepath.Join(t.TempDir(), "bench.yaml")
	w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Another bench"})
	d.fail = errors.New("the disk is full")
	w.saveTo(path)
	if !w.session.Unsaved() || w.files.Work.Path() != "" {
		t.Error("a failed save counts as one")
	}
	w.win.Canvas().Overlays().Remove(w.win.Canvas().Overlays().Top())
	d.fail = nil
	w.saveTo(path)
	if w.session.Unsaved() || w.win.Title() != "Another bench – bench.yaml, saved – frontlay" {
		t.Errorf("after saving: unsaved %v, title %q", w.session.Unsaved(), w.win.Title())
	}
	want := w.session.Project()
	w.files.Open(path)
	got := w.session.Project()
	if !reflect.DeepEqual(got.Cabinets, want.Cabinets) || got.Title != want.Title {
		t.Error("what was saved is not what is opened")
	}
	if r := w.files.Recent(); len(r) != 1 || filepath.Base(r[0]) != "bench.yaml" {
		t.Errorf("recent files %v", r)
	}
}

func TestUnsavedWorkIsAskedAbout(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Changed"})
	w.files.Example("glaze-bench")
	if w.session.Project().Title != "Changed" {
		t.Fatal("unsaved work is gone without a question")
	}
	if w.win.Canvas().Overlays().Top() == nil {
		t.Fatal("nothing asks")
	}
	w.win.Canvas().OnTypedKey()(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if w.session.Project().Title != "Changed" || w.win.Canvas().Overlays().Top() != nil {
		t.Error("Esc does not go back to the work")
	}
}

// A front made too low breaks the cover; the finding is listed, selects what it
// speaks of, and its fix mends it.
func TestBreakAndMend(t *testing.T) {
	w, _, _ := newWindow(t, "")
	at := w.face(2).Place
	drop := -length.MM(60)
	if !w.Do(edit.Set{At: at, Key: "drop", Value: drop}) {
		t.Fatal(w.says())
	}
	found := w.unaccepted()
	if len(found) == 0 {
		t.Fatal("an uncovered drawer bottom is not found")
	}
	w.do("nextfinding")
	if sel := w.session.Selection(); len(sel) != 1 || sel[0].Place != at {
		t.Errorf("selected %v", sel)
	}
	for range 5 {
		if len(w.unaccepted()) == 0 {
			break
		}
		w.do("nextfinding")
		w.do("fix")
	}
	if rest := w.unaccepted(); len(rest) != 0 {
		t.Errorf("still found: %v", rest[0].What)
	}
}

func TestStackCommands(t *testing.T) {
	w, _, _ := newWindow(t, "")
	heights := func() (h []length.Length) {
		for _, f := range w.session.Result().Plan.Fronts[:3] {
			h = append(h, f.Face.Height())
		}
		return h
	}
	sum := func() (s length.Length) {
		for _, v := range heights() {
			s += v
		}
		return s
	}
	all := sum()
	w.session.Select(w.face(1))
	w.do("equal")
	if h := heights(); h[0]-h[2] > 3*length.Millimetre || h[0] < h[2] {
		t.Errorf("equal heights are %v", h)
	}
	w.do("graduate")
	if h := heights(); !(h[0] > h[1] && h[1] > h[2]) {
		t.Errorf("graduated heights are %v", h)
	}
	if sum() != all {
		t.Errorf("the sum is %v, it was %v", sum(), all)
	}
	w.do("up")
	if name := w.session.Project().FrontAt(model.Place{Front: 1}).Name; name != "Buckets" {
		t.Errorf("the moved front is %q", name)
	}
	w.session.Select(w.face(5))
	w.do("level")
	f := w.session.Result().Plan.Fronts[4]
	level := false
	for _, g := range w.session.Result().Plan.Fronts[:3] {
		level = level || g.Face.Max.Y == f.Face.Max.Y || g.Face.Min.Y == f.Face.Max.Y
	}
	if !level {
		t.Errorf("the front ends at %v", f.Face.Max.Y)
	}
	w.session.Select(w.face(1))
	w.do("copyrun")
	for i, c := range w.session.Project().Cabinets {
		for j, b := range c.Bays {
			if len(b.Fronts) != 3 {
				t.Errorf("bay %d of cabinet %d has %d fronts", j, i, len(b.Fronts))
			}
		}
	}
}

func TestEveryCommandIsListedOnce(t *testing.T) {
	w, _, _ := newWindow(t, "")
	names, keys := map[string]bool{}, map[string]string{}
	for i := range w.table.Rows {
		c := &w.table.Rows[i]
		if c.Words == "" || c.Do == nil && c.Sub == nil || names[c.Name] || !strings.Contains(strings.Join(command.Menus, " "), c.Menu) {
			t.Errorf("command %q is not whole", c.Name)
		}
		names[c.Name] = true
		if k := w.table.Keys(c); k != "" {
			if other := keys[k]; other != "" {
				t.Errorf("%q and %q have the keys %s", c.Name, other, k)
			}
			keys[k] = c.Name
		}
	}
}

func TestTheInspectorChangesWhatIsSelected(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.session.Select(w.face(1))
	field := w.desk.Inspector.Fields()["Height"]
	field.SetText("12 in")
	if !field.Take() {
		t.Fatal("the field does not take inches")
	}
	if h := w.session.Result().Plan.Fronts[0].Face.Height(); h != 12*length.Inch {
		t.Errorf("the front is %v", h)
	}
	field.SetText("99999")
	if field.Take() {
		t.Error("an impossible height was taken")
	}
	field.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if field.Text != "304.8" {
		t.Errorf("the field says %q", field.Text)
	}
	field.SetText("")
	if !field.Take() || w.session.Project().FrontAt(model.Place{}).Height != 0 {
		t.Error("an emptied field does not give the front a share")
	}
	w.do("all")
	w.desk.Inspector.Fields()["Least cover"].SetText("5")
	w.do("fit") // a command takes what is typed
	for i, f := range w.session.Project().Cabinets[0].Bays[0].Fronts {
		if f.Cover != length.MM(5) {
			t.Errorf("front %d asks for a cover of %v", i+1, f.Cover)
		}
	}
}

func TestUnitsSwitchAtAnyTime(t *testing.T) {
	w, _, _ := newWindow(t, "")
	before := w.session.Project().Cabinets
	for _, u := range []string{"inch", "cm", "inchdecimal", "mm"} {
		w.session.Select(w.face(1))
		w.do(u)
	}
	if !reflect.DeepEqual(before, w.session.Project().Cabinets) {
		t.Error("a unit changed a size")
	}
	w.do("inch")
	w.session.Select()
	if got := w.desk.Inspector.Fields()["Carcass"].Text; got != "≈ 45/64" {
		t.Errorf("18 mm are %q in", got)
	}
}

func TestPlacesAreWritten(t *testing.T) {
	w, _, _ := newWindow(t, "")
	p := &places{w: w, path: filepath.Join(t.TempDir(), "places.json")}
	p.write()
	data, err := os.ReadFile(p.path)
	if err != nil || !bytes.Contains(data, []byte(`"front 13"`)) {
		t.Errorf("%v, %s", err, data)
	}
}

func TestTheLanguageSwitchesAtOnce(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.session.Select(w.face(1))
	w.speak("de")
	if got := w.text("the folder"); w.say().Catalogue == nil || !w.say().Comma || got == "" {
		t.Fatalf("the window does not speak German: %q", got)
	}
	drop := 2500 * length.Micrometre
	w.Do(edit.Set{At: model.Place{}, Key: "drop", Value: drop})
	found := false
	for _, f := range w.desk.Inspector.Fields() {
		found = found || f.Text == "2,5"
	}
	if !found {
		t.Error("no field has a decimal comma")
	}
	w.speak(language.English)
	if w.say().Comma {
		t.Error("English has no decimal comma")
	}
}

// Every look and language can be shown; nothing is lost by switching.
func TestEveryLook(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.session.Select(w.face(2))
	before := w.session.Project()
	for _, c := range []string{"dark", "large", "contrast", "light", "large", "section", "rear", "elevation", "through"} {
		w.do(c)
	}
	if !reflect.DeepEqual(w.session.Project(), before) || !w.session.IsSelected(w.face(2)) {
		t.Error("a look changed the work")
	}
}

// Keys reach the window while the drawing has the focus.
func TestKeysOfTheWindow(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.session.Select(w.face(3))
	w.win.Canvas().Focus(w.desk.Screen)
	w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyDelete})
	if n := len(w.session.Project().Cabinets[0].Bays[0].Fronts); n != 2 {
		t.Errorf("after the Delete key there are %d fronts", n)
	}
	w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyF1})
	if w.win.Canvas().Overlays().Top() == nil {
		t.Error("F1 does not show the keys")
	}
}

func TestCutCopyPaste(t *testing.T) {
	w, _, _ := newWindow(t, "")
	n := len(w.session.Project().Cabinets[0].Bays[0].Fronts)
	w.session.Select(w.face(3))
	w.do("cut")
	if got := len(w.session.Project().Cabinets[0].Bays[0].Fronts); got != n-1 {
		t.Fatalf("after cutting there are %d fronts", got)
	}
	w.session.Select(w.face(1))
	w.do("paste")
	if f := w.session.Project().FrontAt(model.Place{Front: 1}); f == nil || f.Name != "Brushes" {
		t.Errorf("pasted above the selected front: %+v", f)
	}
	w.do("cabinet")
	w.do("copy")
	cabs := len(w.session.Project().Cabinets)
	w.do("paste")
	p := w.session.Project()
	if len(p.Cabinets) != cabs+1 || p.Cabinets[1].Name != "Glazes 2" || p.Cabinets[1].Width != p.Cabinets[0].Width {
		t.Errorf("pasted cabinet: %+v", p.Cabinets[1])
	}
	for range 3 {
		w.do("undo")
	}
	if w.session.Unsaved() {
		t.Error("undo does not lead back")
	}
}

// The window fits a screen of 1366 × 768 in every language, with large text too.
func TestTheWindowFitsASmallScreen(t *testing.T) {
	w, _, _ := newWindow(t, "")
	for _, large := range []bool{false, true} {
		for _, code := range language.Codes() {
			w.group.theme.Large = large
			w.app.Settings().SetTheme(w.group.theme)
			w.speak(code)
			for _, page := range []func(){w.stage.showDesk, func() { w.showStart(nil) }, func() { w.do("print") }} {
				page()
				if m := w.win.Content().MinSize(); m.Width > 1366 || m.Height > 700 {
					t.Errorf("in %q, large %v, the window needs %v", code, large, m)
				}
			}
		}
	}
}

// Before a project is open nothing can be saved or changed unseen; over a page,
// what changes the drawing brings it back first.
func TestNothingChangesUnseen(t *testing.T) {
	a := test.NewTempApp(t)
	th := &look.Theme{}
	a.Settings().SetTheme(th)
	w := open(a, th, Options{Keeper: keeper(t, &disk{})})
	t.Cleanup(w.shut)
	for i := range w.table.Rows {
		if c := &w.table.Rows[i]; !apart[c.Name] || c.Name == "save" || c.Name == "saveas" || c.Name == "print" || c.Name == "sheets" {
			before := w.session.Project()
			w.run(c)
			if w.session.Project() != before || w.win.Canvas().Overlays().Top() != nil && c.Menu != "Help" {
				t.Errorf("%s does something before a project is open", c.Name)
			}
			for top := w.win.Canvas().Overlays().Top(); top != nil; top = w.win.Canvas().Overlays().Top() {
				w.win.Canvas().Overlays().Remove(top)
			}
		}
	}
	w.do("inch")
	if w.beginning() == nil || w.beginning().Session.Project().Unit != length.UnitInch {
		t.Error("the unit of the new cabinet does not change")
	}
	w.beginning().Begin()
	if !w.desk.Object.Visible() || !w.session.Unsaved() {
		t.Fatal("the new cabinet is not on the desk")
	}
	w.closeOverlays() // the hints of the first use
	w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Changed"})
	w.do("print")
	w.do("undo")
	if !w.desk.Object.Visible() || w.session.Project().Title == "Changed" {
		t.Error("undo on a page does not show what it undoes")
	}
}

// Figures typed on a selected front begin its height, every one of them.
func TestAHeightIsTypedWhole(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.session.Select(w.face(1))
	w.win.Canvas().Focus(w.desk.Screen)
	for _, r := range "234" {
		w.win.Canvas().Focused().TypedRune(r)
	}
	w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if got := w.session.Result().Plan.Fronts[0].Face.Height(); got != length.MM(234) {
		t.Errorf("234 was typed, the height is %v", got)
	}
}

// A question on top keeps commands from the drawing behind it.
func TestNothingChangesBehindAQuestion(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.session.Select(w.face(1))
	w.win.Canvas().Focus(w.desk.Screen)
	w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Changed"})
	w.do("saveas")
	before, selected := w.session.Project(), len(w.session.Selection())
	for i := range w.table.Rows {
		w.run(&w.table.Rows[i])
	}
	if w.session.Project() != before || len(w.session.Selection()) != selected {
		t.Error("the drawing changed behind the question")
	}
}

// Another unit changes no size.
func TestAnotherUnitChangesNoSize(t *testing.T) {
	w, _, _ := newWindow(t, "")
	before := w.session.Result().Plan.Fronts
	w.do("inch")
	for i, f := range w.session.Result().Plan.Fronts {
		if f.Face != before[i].Face {
			t.Errorf("front %d was %v and is %v", f.Number, before[i].Face, f.Face)
		}
	}
}

// beginning is the page of a new cabinet; nil while it is not shown.
func (w *window) beginning() *start.Page {
	b, _ := w.stage.page.(*start.Page)
	return b
}
