package ui

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"frontlay/layout/sheet"
)

func TestThePageForPrintingShowsWhatIsPrinted(t *testing.T) {
	w, _, pages := newWindow(t, "")
	p := newPrinting(w)
	all := len(p.pages)
	for part, box := range p.boxes {
		if box.Checked != p.has(part) {
			t.Errorf("the box of %s does not tell whether it is printed", part)
		}
	}
	for part, box := range p.boxes {
		if !part.Template() && box.Checked {
			box.SetChecked(false)
		}
	}
	r := w.session.CommittedResult()
	want := len(sheet.Make(r.Plan, r.Findings, p.options).Pages)
	if len(p.pages) != want || len(p.pages) >= all || len(p.pages) == 0 {
		t.Fatalf("%d pages are shown, %d would be printed, %d were before", len(p.pages), want, all)
	}
	p.turn(1)
	p.turn(1000)
	if p.at != len(p.pages)-1 {
		t.Errorf("the last page is %d, shown is %d", len(p.pages)-1, p.at)
	}
	p.enlarge(1.5)
	p.enlarge(0.1)
	w.writeAndWait(t, p.options)
	if got := *pages; len(got) != 1 || len(got[0].doc.Pages) != want {
		t.Error("printed is not what was chosen")
	}
}

// The template of what is selected shows at once: its pages and no others.
func TestTheTemplateOfTheSelection(t *testing.T) {
	w, _, _ := newWindow(t, "")
	if w.session.Select(); w.table.Command("template").Possible() {
		t.Error("nothing is selected, and yet there is a template")
	}
	w.session.Select(w.face(4), w.face(5))
	w.do("template")
	if !w.front.Visible() {
		t.Fatal("no page is shown")
	}
	p := newTemplates(w)
	r := w.session.CommittedResult()
	want := sheet.Make(r.Plan, r.Findings, sheet.Options{Parts: []sheet.Part{sheet.CornerTemplates}, Fronts: []int{4, 5}, Say: w.say()}).Pages
	if len(want) == 0 || len(p.pages) != len(want) {
		t.Errorf("%d pages are shown, not %d", len(p.pages), len(want))
	}
	for _, pg := range p.pages {
		if pg.Kind != string(sheet.CornerTemplates) {
			t.Errorf("a page is %q", pg.Kind)
		}
	}
}

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
	if w.language.code != good || w.win.Canvas().Overlays().Top() == nil {
		t.Error("a broken catalogue is not refused with a message")
	}
}

func TestTheTitleMakesAFileName(t *testing.T) {
	w, _, _ := newWindow(t, "")
	for title, want := range map[string]string{"Glaze bench": "glaze-bench", "a/b: c?": "a-b--c-", "": "project", "..": "project"} {
		p := w.session.Project().Clone()
		p.Title = title
		w.follow(w.work.New(p), nil)
		if got := w.work.Name(); got != want || strings.ContainsAny(got, "/\\") {
			t.Errorf("%q makes %q, want %q", title, got, want)
		}
	}
}
