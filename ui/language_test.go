package ui

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestALanguageFromAFile(t *testing.T) {
	w, _, _ := newWindow(t, "")
	good, bad := filepath.Join(t.TempDir(), "nl.json"), filepath.Join(t.TempDir(), "bad.json")
	if os.WriteFile(good, []byte(`{"Save": "Bewaren", "0.5": "0,5"}`), 0o600) != nil || os.WriteFile(bad, []byte(`{"Save %v": "x"`), 0o600) != nil {
		t.Fatal("the test's files can't be written")
	}
	w.speak(good)
	if w.text("Save") != "Bewaren" || !w.say().Comma {
		t.Errorf("the window says %q", w.text("Save"))
	}
	w.speak(bad)
	if w.group.speech.code != good || w.win.Canvas().Overlays().Top() == nil {
		t.Error("a broken catalogue is not refused with a message")
	}
}

func TestTheTitleMakesAFileName(t *testing.T) {
	w, _, _ := newWindow(t, "")
	for title, want := range map[string]string{"Glaze bench": "glaze-bench", "a/b: c?": "a-b--c-", "": "project", "..": "project"} {
		p := w.session.Project().Clone()
		p.Title = title
		w.files.Follow(w.files.Work.New(p), nil)
		if got := w.files.Work.Name(); got != want || strings.ContainsAny(got, "/\\") {
			t.Errorf("%q makes %q, want %q", title, got, want)
		}
	}
}
