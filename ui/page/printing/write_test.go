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
	p.boxes[sheet.ShopSheets].SetChecked(false)
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
	p.boxes[sheet.ShopSheets].SetChecked(false)
	p.fronts.SetText("2, 5")
	again := New(h, System{})
	if again.fronts.Text != "2, 5" || again.has(sheet.ShopSheets) || again.boxes[sheet.ShopSheets].Checked || !again.has(sheet.CornerTemplates) {
		t.Errorf("chosen are %v of the fronts %q", again.options.Parts, again.fronts.Text)
	}
	h.Session().Select(h.Face(4))
	Templates(h, System{})
	if New(h, System{}).fronts.Text != "2, 5" {
		t.Error("the template of a front has taken the place of what was chosen")
	}
	h.Path = "/shop/other.yaml"
	if other := New(h, System{}); other.fronts.Text != "" || !other.has(sheet.ShopSheets) {
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

// One control chooses the place of work, or that the parts are chosen: their boxes
// show what is printed and are out of sight till then. It is kept with the project.
func TestThePaperIsChosenByThePlaceOfWork(t *testing.T) {
	h := pagetest.New(t)
	h.Path = "/shop/bench.yaml"
	p := New(h, System{})
	h.Win.SetContent(p.Object)
	kinds := func() (all []sheet.Part) {
		for _, page := range p.pages {
			if k := sheet.Part(page.Kind); !slices.Contains(all, k) {
				all = append(all, k)
			}
		}
		return all
	}
	if p.options.For != sheet.Bench || p.parts.Visible() || !strings.Contains(p.comes.Text, "Shop sheets: 3 sheets") {
		t.Errorf("the page begins with %q, boxes in sight: %v, it says %q", p.options.For, p.parts.Visible(), p.comes.Text)
	}
	for i, preset := range sheet.Presets() {
		p.places.SetSelectedIndex(i)
		got := kinds()
		if len(got) == 0 || slices.ContainsFunc(got, func(part sheet.Part) bool { return !slices.Contains(preset.Parts(), part) }) {
			t.Errorf("%s: printed are %v", preset, got)
		}
		if again := New(h, System{}); again.chosen || again.options.For != preset {
			t.Errorf("%s is not there again", preset)
		}
	}
	before := kinds()
	p.places.SetSelectedIndex(len(sheet.Presets()))
	if !p.parts.Visible() || p.comes.Visible() || !slices.Equal(kinds(), before) {
		t.Errorf("choosing begins with %v, not %v; boxes in sight: %v", kinds(), before, p.parts.Visible())
	}
	for part, box := range p.boxes {
		box.SetChecked(part == sheet.CutList)
	}
	if got := kinds(); !slices.Equal(got, []sheet.Part{sheet.CutList}) {
		t.Errorf("only the cut list is ticked, printed are %v", got)
	}
	if again := New(h, System{}); !again.chosen || !again.parts.Visible() || !slices.Equal(again.options.Parts, []sheet.Part{sheet.CutList}) {
		t.Errorf("chosen parts are not there again: %v", again.options.Parts)
	}
}
