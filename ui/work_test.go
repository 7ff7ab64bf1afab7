package ui

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/assets"
	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
	"frontlay/ui/field"
	"frontlay/ui/look"
)

// kept is Files with a keeper over real documents in a test's folder.
type kept struct {
	disk
	t    *testing.T
	dir  string
	left []Leftover
}

func (k *kept) desk(session string) store.Options {
	return store.Options{FS: store.OS{}, Limit: 1 << 20, Journal: store.JournalOptions{
		Dir: k.dir, Owner: store.ThisProcess(session, time.Now()), After: time.After, Now: time.Now,
	}}
}

func (k *kept) Begin() Work { return &keptDoc{k, store.NewDocument(k.desk("begun"))} }

func (k *kept) Take(path string) (Work, *yamlfile.File, error) {
	doc, data, err := store.Open(k.desk("taken"), path)
	if doc == nil {
		return nil, nil, err
	}
	f, bad := yamlfile.Read(path, data, sheets, check.Limits())
	if bad != nil {
		return nil, nil, bad
	}
	return &keptDoc{k, doc}, f, err
}

func (k *kept) Leftovers() ([]Leftover, error) { return k.left, nil }

type keptDoc struct {
	k   *kept
	doc *store.Document
}

func (d *keptDoc) written(f *yamlfile.File, p *model.Project) []byte {
	data, err := f.Write(p)
	if err != nil {
		d.k.t.Fatal(err)
	}
	return data
}

func (d *keptDoc) Save(f *yamlfile.File, p *model.Project) error {
	_, err := d.doc.Save(d.written(f, p))
	return err
}

func (d *keptDoc) SaveAs(path string, f *yamlfile.File, p *model.Project) error {
	_, err := d.doc.SaveAs(path, d.written(f, p))
	return err
}

func (d *keptDoc) Overwrite(f *yamlfile.File, p *model.Project, c *store.Changed) error {
	_, err := d.doc.Overwrite(d.written(f, p), c)
	return err
}

func (d *keptDoc) TakeLock() error { return d.doc.TakeLock() }
func (d *keptDoc) Reread() (*yamlfile.File, error) {
	data, err := d.doc.Reread()
	if err != nil {
		return nil, err
	}
	return yamlfile.Read(d.doc.Path(), data, sheets, check.Limits())
}
func (d *keptDoc) Changed() *store.Changed { return d.doc.Changed() }
func (d *keptDoc) Note(f *yamlfile.File, p *model.Project) {
	d.doc.Note(p.Title, func() ([]byte, error) { return f.Draft(p) })
}
func (d *keptDoc) Forget() error { return d.doc.Forget() }
func (d *keptDoc) Flush() error  { return d.doc.Flush() }
func (d *keptDoc) Close() error  { return d.doc.Close() }

// journals are the files of what is not saved.
func (k *kept) journals() []string {
	files, err := filepath.Glob(filepath.Join(k.dir, "*.journal"))
	if err != nil {
		k.t.Fatal(err)
	}
	return files
}

// keptWindow opens a window on a copy of the demo, with a keeper.
func keptWindow(t *testing.T) (*window, *kept, string) {
	t.Helper()
	path := filepath.Join(t.TempDir(), "bench.yaml")
	if err := os.WriteFile(path, assets.Demo(), 0o600); err != nil {
		t.Fatal(err)
	}
	k := &kept{t: t, dir: t.TempDir()}
	a := test.NewTempApp(t)
	th := &look.Theme{Mode: look.LightMode}
	a.Settings().SetTheme(th)
	w := open(a, th, Options{Files: k, Open: path})
	w.win.Resize(fyne.NewSize(1240, 690))
	w.begin()
	w.closeOverlays()
	t.Cleanup(func() {
		w.setWork(nil)
		w.win.Close()
	})
	return w, k, path
}

func (w *window) closeOverlays() {
	for top := w.win.Canvas().Overlays().Top(); top != nil; top = w.win.Canvas().Overlays().Top() {
		w.win.Canvas().Overlays().Remove(top)
	}
}

// answerWith presses a button of the question on top.
func (w *window) answerWith(t *testing.T, text string) {
	t.Helper()
	var found *field.Button
	for _, o := range test.LaidOutObjects(w.win.Canvas().Overlays().Top()) {
		if a, ok := o.(*field.Button); ok && a.Text == text {
			found = a
		}
	}
	if found == nil {
		t.Fatalf("the question has no answer %q", text)
	}
	test.Tap(found)
}

func content(t *testing.T, path string) string {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// A file changed by another program is a choice, never overwritten silently.
func TestChangedUnderneathIsAChoice(t *testing.T) {
	theirs := strings.Replace(string(assets.Demo()), "title: Glaze bench", "title: Theirs", 1)
	cases := []struct {
		answer        string
		onDisk, shown string
	}{
		{"Keep mine", "title: Mine", "Mine"},
		{"Take theirs", "title: Theirs", "Theirs"},
		{"Go back", "title: Theirs", "Mine"},
	}
	for _, c := range cases {
		t.Run(c.answer, func(t *testing.T) {
			w, _, path := keptWindow(t)
			w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Mine"})
			if err := os.WriteFile(path, []byte(theirs), 0o600); err != nil {
				t.Fatal(err)
			}
			w.save(nil)
			if w.win.Canvas().Overlays().Top() == nil || !strings.Contains(content(t, path), "title: Theirs") {
				t.Fatal("the other program's version was overwritten without a question")
			}
			w.answerWith(t, c.answer)
			if got := content(t, path); !strings.Contains(got, c.onDisk) {
				t.Errorf("on disk is not %q:\n%.200s", c.onDisk, got)
			}
			if got := w.session.Project().Title; got != c.shown {
				t.Errorf("the window shows %q, want %q", got, c.shown)
			}
		})
	}
}

// What is not saved stands in the journal, and closing in good order clears it.
func TestEditsAreJournalled(t *testing.T) {
	w, k, _ := keptWindow(t)
	w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Not saved"})
	if err := w.work.Flush(); err != nil {
		t.Fatal(err)
	}
	found := k.journals()
	if len(found) != 1 || !strings.Contains(content(t, found[0]), "title: Not saved") {
		t.Fatalf("journals: %v", found)
	}
	w.do("undo")
	if found := k.journals(); len(found) != 0 {
		t.Errorf("everything is as it was saved, and there is still %v", found)
	}
	w.do("redo")
	if err := w.work.Flush(); err != nil || len(k.journals()) != 1 {
		t.Errorf("after redo the journals are %v (%v)", k.journals(), err)
	}
	w.setWork(nil)
	if found := k.journals(); len(found) != 0 {
		t.Errorf("after a close in good order there is still %v", found)
	}
}

// lost is unsaved work of an earlier run.
type lost struct {
	k         *kept
	discarded bool
}

func (l *lost) About() (string, string, time.Time) { return "Lost bench", "", time.Unix(0, 0) }
func (l *lost) Discard() error                     { l.discarded = true; return nil }
func (l *lost) Restore() (Work, *yamlfile.File, error) {
	f, err := yamlfile.Read("lost", []byte(strings.Replace(string(assets.Demo()), "title: Glaze bench", "title: Lost bench", 1)), sheets, check.Limits())
	return l.k.Begin(), f, err
}

func TestUnsavedWorkIsOffered(t *testing.T) {
	for _, c := range []struct {
		answer, title      string
		unsaved, discarded bool
	}{
		{"Open it again", "Lost bench", true, true},
		{"Discard it", "Glaze bench", false, true},
		{"Ask me later", "Glaze bench", false, false},
	} {
		t.Run(c.answer, func(t *testing.T) {
			w, k, _ := keptWindow(t)
			l := &lost{k: k}
			k.left = []Leftover{l}
			w.offerLeftovers()
			w.answerWith(t, c.answer)
			if got := w.session.Project().Title; got != c.title {
				t.Errorf("the window shows %q, want %q", got, c.title)
			}
			if w.session.Unsaved() != c.unsaved || l.discarded != c.discarded {
				t.Errorf("unsaved %v, discarded %v; want %v, %v", w.session.Unsaved(), l.discarded, c.unsaved, c.discarded)
			}
		})
	}
}

// A file that another window has open can be looked at, and that is said once
// the window is there.
func TestAFileOpenElsewhereIsTold(t *testing.T) {
	path := filepath.Join(t.TempDir(), "bench.yaml")
	if err := os.WriteFile(path, assets.Demo(), 0o600); err != nil {
		t.Fatal(err)
	}
	k := &kept{t: t, dir: t.TempDir()}
	other, _, err := store.Open(k.desk("other"), path)
	if err != nil {
		t.Fatal(err)
	}
	defer func() { _ = other.Close() }()
	a := test.NewTempApp(t)
	th := &look.Theme{Mode: look.LightMode}
	a.Settings().SetTheme(th)
	w := open(a, th, Options{Files: k, Open: path})
	w.closeOverlays()
	w.begin()
	t.Cleanup(func() {
		w.setWork(nil)
		w.win.Close()
	})
	if w.session.Project().Title != "Glaze bench" {
		t.Errorf("the window shows %q", w.session.Project().Title)
	}
	w.answerWith(t, "Look at it")
	w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Mine"})
	w.save(nil)
	w.answerWith(t, "Go back")
	if got := content(t, path); !strings.Contains(got, "title: Glaze bench") {
		t.Error("the other window's file was overwritten")
	}
}

// Figures that are typed on the page of hardware sheets and are not in the
// project yet stand in the journal too, as a sheet of their own that can be read
// again; giving them up takes them out, and a save of the project leaves them.
func TestADraftOfASheetIsJournalled(t *testing.T) {
	w, k, path := keptWindow(t)
	kept := func() *model.Project {
		t.Helper()
		if err := w.work.Flush(); err != nil {
			t.Fatal(err)
		}
		files, err := filepath.Glob(filepath.Join(k.dir, "*.journal"))
		if err != nil || len(files) != 1 {
			t.Fatalf("journals: %v, %v", files, err)
		}
		_, body, err := store.DecodeJournal([]byte(content(t, files[0])))
		if err != nil {
			t.Fatal(err)
		}
		f, err := yamlfile.Read(path, body, sheets, check.Limits())
		if err != nil {
			t.Fatalf("the journal can't be opened again: %v", err)
		}
		return f.Project
	}
	const name = "main, changed and not in use"
	w.openSheets("main")
	main := w.session.Project().Sheet("main")
	w.sheets().changed(9 * length.Millimetre)
	if s := kept().Sheet(name); s == nil || s.Runner.Setback != 9*length.Millimetre {
		t.Fatalf("the journal holds %v", kept().Hardware)
	}
	if s := kept().Sheet("main"); s.Runner.Setback != main.Runner.Setback {
		t.Error("the journal's project uses figures that the person has not put into it")
	}
	w.sheets().changed(-9 * length.Millimetre)
	if len(w.sheets().page.Problems()) == 0 {
		t.Fatal("the figures go together")
	}
	if s := kept().Sheet(name); s == nil || s.Runner.Setback != 9*length.Millimetre {
		t.Error("figures that do not go together have taken the good ones out of the journal")
	}
	w.save(nil)
	if s := kept().Sheet(name); s == nil {
		t.Error("saving the project has taken the figures out of the journal")
	}
	w.sheets().Leave(w.showDesk)
	w.answer(t, "Give them up")
	if found := k.journals(); len(found) != 0 {
		t.Errorf("with the figures given up everything is saved, and there is still %v", found)
	}
}
