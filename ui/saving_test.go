package ui

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

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
)

// journals are the files of what is not saved.
func (w *window) journals(t *testing.T) []string {
	t.Helper()
	if err := w.files.Work.Flush(); err != nil {
		t.Fatal(err)
	}
	files, err := filepath.Glob(filepath.Join(w.options.Keeper.Home, "journal", "*.journal"))
	if err != nil {
		t.Fatal(err)
	}
	return files
}

// bench is a copy of the demo.
func bench(t *testing.T) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "bench.yaml")
	if err := os.WriteFile(path, assets.Demo(), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

// benchWindow opens a window on a copy of the demo.
func benchWindow(t *testing.T) (*window, string) {
	t.Helper()
	path := bench(t)
	w, _, _ := newWindow(t, path)
	return w, path
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
		{"Cancel", "title: Theirs", "Mine"},
	}
	for _, c := range cases {
		t.Run(c.answer, func(t *testing.T) {
			w, path := benchWindow(t)
			w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Mine"})
			if err := os.WriteFile(path, []byte(theirs), 0o600); err != nil {
				t.Fatal(err)
			}
			w.files.Save()
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
	w, _ := benchWindow(t)
	w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Not saved"})
	found := w.journals(t)
	if len(found) != 1 || !strings.Contains(content(t, found[0]), "title: Not saved") {
		t.Fatalf("journals: %v", found)
	}
	w.do("undo")
	if found := w.journals(t); len(found) != 0 {
		t.Errorf("everything is as it was saved, and there is still %v", found)
	}
	w.do("redo")
	if found := w.journals(t); len(found) != 1 {
		t.Errorf("after redo the journals are %v", found)
	}
	w.do("quit")
	w.answerWith(t, "Don't save")
	if found := w.journals(t); len(found) != 0 {
		t.Errorf("after a close in good order there is still %v", found)
	}
}

// A new cabinet is journalled before anything is changed on it.
func TestANewCabinetIsJournalled(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.do("new")
	w.beginning().Begin()
	if found := w.journals(t); len(found) != 1 {
		t.Errorf("journals: %v", found)
	}
}

// What an earlier run left is offered at the start, behind its report.
func TestUnsavedWorkIsOffered(t *testing.T) {
	w, _ := benchWindow(t)
	k := w.options.Keeper
	lost := k.Owner()
	lost.PID, lost.Born = 1<<30, "" // no system has so many processes
	j := store.NewJournal(store.JournalOptions{FS: k.FS, Dir: filepath.Join(k.Home, "journal"), Owner: lost, After: k.After, Now: k.Now})
	j.Note(store.Entry{Title: "Lost bench", Data: func() ([]byte, error) {
		return []byte(strings.Replace(string(assets.Demo()), "title: Glaze bench", "title: Lost bench", 1)), nil
	}})
	if err := j.Flush(); err != nil {
		t.Fatal(err)
	}
	j.Stop()
	seen := false
	w.options.Reports = []Report{{Text: "a report", Discard: func() error { seen = true; return nil }}}
	w.begin()
	press(w, fyne.KeyReturn)
	w.answerWith(t, "Open it again")
	if !seen || w.session.Project().Title != "Lost bench" || !w.session.Unsaved() {
		t.Errorf("report seen: %v; the window shows %q, unsaved %v", seen, w.session.Project().Title, w.session.Unsaved())
	}
}

// A file that another window has open can be looked at, and that is said once
// the window is there.
func TestAFileOpenElsewhereIsTold(t *testing.T) {
	path := bench(t)
	k := keeper(t, &disk{})
	other := k.Begin(&model.Project{})
	if o := other.Open(path); !o.Done {
		t.Fatal(o.Err)
	}
	t.Cleanup(func() { _ = other.Close() })
	w, _, _ := newWindow(t, path)
	if w.session.Project().Title != "Glaze bench" {
		t.Errorf("the window shows %q", w.session.Project().Title)
	}
	w.answerWith(t, "Look at it")
	w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Mine"})
	w.files.Save()
	w.answerWith(t, "Cancel")
	if got := content(t, path); !strings.Contains(got, "title: Glaze bench") {
		t.Error("the other window's file was overwritten")
	}
}

// Figures that are typed on the page of hardware sheets and are not in the
// project yet stand in the journal too, as a sheet of their own that can be read
// again; giving them up takes them out, and a save of the project leaves them.
func TestADraftOfASheetIsJournalled(t *testing.T) {
	w, path := benchWindow(t)
	kept := func() *model.Project {
		t.Helper()
		files := w.journals(t)
		if len(files) != 1 {
			t.Fatalf("journals: %v", files)
		}
		_, body, err := store.DecodeJournal([]byte(content(t, files[0])))
		if err != nil {
			t.Fatal(err)
		}
		f, err := yamlfile.Read(path, body, samples, check.Limits())
		if err != nil {
			t.Fatalf("the journal can't be opened again: %v", err)
		}
		return f.Project
	}
	const name = "main, changed and not in use"
	w.openSheets("main")
	main := w.session.Project().Sheet("main")
	w.setback(9 * length.Millimetre)
	if s := kept().Sheet(name); s == nil || s.Runner.Setback != 9*length.Millimetre {
		t.Fatalf("the journal holds %v", kept().Hardware)
	}
	if s := kept().Sheet("main"); s.Runner.Setback != main.Runner.Setback {
		t.Error("the journal's project uses figures that the person has not put into it")
	}
	w.setback(-9 * length.Millimetre)
	if len(w.sheets().Form.Problems()) == 0 {
		t.Fatal("the figures go together")
	}
	if s := kept().Sheet(name); s == nil || s.Runner.Setback != 9*length.Millimetre {
		t.Error("figures that do not go together have taken the good ones out of the journal")
	}
	w.files.Save()
	if s := kept().Sheet(name); s == nil {
		t.Error("saving the project has taken the figures out of the journal")
	}
	w.sheets().Leave(w.stage.showDesk)
	w.answerWith(t, "Give the changes up")
	if found := w.journals(t); len(found) != 0 {
		t.Errorf("with the figures given up everything is saved, and there is still %v", found)
	}
}
