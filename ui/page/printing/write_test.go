package printing

import (
	"net/url"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/layout/sheet"
	"frontlay/ui/field"
	"frontlay/ui/page/pagetest"
)

// A job is a booklet and templates, as the command line writes them, in files of
// their own that can be opened from the page.
func TestAJobIsABookletAndTemplates(t *testing.T) {
	h := pagetest.New(t)
	written := map[string]sheet.Document{}
	p := New(h, System{Write: func(path string, d sheet.Document, _ func(page, pages int) error) error {
		written[path] = d
		return nil
	}})
	h.Win.SetContent(p.Object)
	within10s(t, p.WriteTo("/shop/bench.pdf"))
	for path, template := range map[string]bool{"/shop/bench.pdf": false, "/shop/bench-templates.pdf": true} {
		d := written[path]
		if len(d.Pages) == 0 {
			t.Fatalf("nothing is written into %s", path)
		}
		for _, page := range d.Pages {
			if sheet.Part(page.Kind).Template() != template {
				t.Errorf("%s has a page %q", path, page.Kind)
			}
		}
	}
	for words, path := range map[string]string{"Open the drawings": "/shop/bench.pdf", "Open the templates": "/shop/bench-templates.pdf", "Show in folder": "/shop"} {
		tap(t, p.Object, words)
		if want := (&url.URL{Scheme: "file", Path: path}).String(); h.Opened != want {
			t.Errorf("%q opens %q, not %q", words, h.Opened, want)
		}
	}
	p.boxes[sheet.Cover].SetChecked(false)
	if slices.ContainsFunc(test.LaidOutObjects(p.Object), func(o fyne.CanvasObject) bool {
		b, ok := o.(*field.Button)
		return ok && strings.HasPrefix(b.Text, "Open")
	}) {
		t.Error("other pages are chosen, and what was written can still be opened")
	}
}

// The proposed name is the command line's: NAME.pdf, and NAME-templates.pdf where
// only templates are written.
func TestTheProposedNames(t *testing.T) {
	h := pagetest.New(t)
	p := New(h, System{})
	asked := func() string {
		t.Helper()
		p.writePDF()
		e, ok := h.Win.Canvas().Focused().(*field.Text)
		if !ok {
			t.Fatal("no name is asked for")
		}
		defer h.CloseOverlays()
		return e.Text
	}
	if got := asked(); got != "bench.pdf" {
		t.Errorf("a job is proposed as %q", got)
	}
	for part, box := range p.boxes {
		if !part.Template() {
			box.SetChecked(false)
		}
	}
	if got := asked(); got != "bench-templates.pdf" {
		t.Errorf("templates are proposed as %q", got)
	}
}

// What is chosen is there again the next time, for the same project and no other.
func TestChoicesAreKeptWithTheProject(t *testing.T) {
	h := pagetest.New(t)
	h.Path = "/shop/bench.yaml"
	p := New(h, System{})
	p.boxes[sheet.Cover].SetChecked(false)
	p.fronts.SetText("2, 5")
	again := New(h, System{})
	if again.fronts.Text != "2, 5" || again.has(sheet.Cover) || again.boxes[sheet.Cover].Checked || !again.has(sheet.CornerTemplates) {
		t.Errorf("chosen are %v of the fronts %q", again.options.Parts, again.fronts.Text)
	}
	h.Session().Select(h.Face(4))
	Templates(h, System{})
	if New(h, System{}).fronts.Text != "2, 5" {
		t.Error("the template of a front has taken the place of what was chosen")
	}
	h.Path = "/shop/other.yaml"
	if other := New(h, System{}); other.fronts.Text != "" || !other.has(sheet.Cover) {
		t.Error("another project has these choices")
	}
}

func tap(t *testing.T, in fyne.CanvasObject, text string) {
	t.Helper()
	for _, o := range test.LaidOutObjects(in) {
		if b, ok := o.(*field.Button); ok && b.Text == text {
			test.Tap(b)
			return
		}
	}
	t.Fatalf("nothing says %q", text)
}
