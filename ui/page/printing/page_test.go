package printing

import (
	"testing"

	"frontlay/layout/sheet"
	"frontlay/ui/page/pagetest"
)

func TestThePageForPrintingShowsWhatIsPrinted(t *testing.T) {
	h, system := pagetest.New(t), System{}
	p := New(h, system)
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
	r := h.Session().CommittedResult()
	want := len(sheet.TemplateFile.Document(r.Plan, r.Findings, p.options).Pages)
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
}

// The template of what is selected shows at once: its pages and no others.
func TestTheTemplateOfTheSelection(t *testing.T) {
	h, system := pagetest.New(t), System{}
	h.Session().Select(h.Face(4), h.Face(5))
	p := Templates(h, system)
	r := h.Session().CommittedResult()
	want := sheet.Make(r.Plan, r.Findings, sheet.Options{Parts: []sheet.Part{sheet.CornerTemplates}, Fronts: []int{4, 5}, Say: h.Say()}).Pages
	if len(want) == 0 || len(p.pages) != len(want) {
		t.Errorf("%d pages are shown, not %d", len(p.pages), len(want))
	}
	for _, pg := range p.pages {
		if pg.Kind != string(sheet.CornerTemplates) {
			t.Errorf("a page is %q", pg.Kind)
		}
	}
}
