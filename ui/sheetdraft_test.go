package ui

import (
	"strings"
	"testing"

	"frontlay/model/length"
	"frontlay/ui/field"
)

// In a project without hardware the draft is its only sheet. Its name says no more
// than is so.
func TestADraftInAProjectWithoutHardware(t *testing.T) {
	_, h := sheetsOn(t)
	p := h.w.session.Project().Clone()
	p.Hardware = nil
	h.name, h.draft = "", h.page.Sheet()
	if all := h.withDraft(p).Hardware; len(all) != 1 || all[0].Name != "changed" || all[0].Sheet != h.draft {
		t.Errorf("the journal has %v", all)
	}
}

// The draft goes over to the page in another language, also while the figures of
// the moment don't go together.
func TestTheDraftOutlivesALanguage(t *testing.T) {
	w, h := sheetsOn(t)
	h.changed(9 * length.Millimetre)
	good := h.draft
	h.changed(-9 * length.Millimetre)
	if good == nil || h.draft != good {
		t.Fatalf("the draft is %v", h.draft)
	}
	w.speak("de")
	if w.sheets() == h || w.sheets().draft != good || len(w.sheets().page.Problems()) == 0 {
		t.Errorf("the draft is %v", w.sheets().draft)
	}
}

// Signs that can't be seen are left out of the names of sheets. The page goes on
// with the sheet that has been renamed or added, and none takes the place of
// another whose name looks the same.
func TestNamesOfSheetsWithInvisibleSigns(t *testing.T) {
	w, h := sheetsOn(t)
	ask := func(button, name string) {
		t.Helper()
		w.win.Canvas().Focused().(*field.Text).SetText(name)
		w.answer(t, button)
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
	was := w.session.Project()
	h.duplicate()
	ask("Add to the project", "\ufeffmine")
	if w.session.Project() != was {
		t.Error("a sheet took the place of another")
	}
	if top := w.win.Canvas().Overlays().Top(); top == nil || !strings.Contains(textsIn(top), "already") {
		t.Error("it is not said that the name is taken")
	}
}
