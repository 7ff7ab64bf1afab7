package ink

import (
	"testing"

	"frontlay/layout"
	"frontlay/layout/drawing"
	"frontlay/layout/projecttest"
	"frontlay/layout/sheet"
	"frontlay/model/message"
)

// On no drawing of any project does a figure stand without a line of its own, nor
// nearer to that of another; none is left out for want of room; upright dimensions
// have figures to be read from the right, and what lies across is read from below
// (ISO 129-1).
func TestNoFigureWithoutItsLine(t *testing.T) {
	for name, p := range projecttest.All(t, "../..") {
		r := layout.Solve(p)
		o := sheet.Options{Say: message.Language{Unit: p.Unit}, Parts: []sheet.Part{sheet.Elevation, sheet.Sections, sheet.DrawerPlans, sheet.RearFaces, sheet.CornerTemplates, sheet.RunnerTemplates}}
		figures := 0
		for i, page := range sheet.Make(r.Plan, r.Findings, o).Pages {
			w := placedOnPage(page.Drawings(), page.LetterArea(), o.Say)
			for _, fault := range figuresWithoutLines(w) {
				t.Errorf("%s, page %d, %s: %s", name, i+1, page.Kind, fault)
			}
			for _, m := range w.Missing {
				if m.Of.Meaning == drawing.DimensionLine {
					t.Errorf("%s, page %d, %s: %q is left out: %s", name, i+1, page.Kind, m.Text, m.Why)
				}
			}
			for _, d := range w.Dimensions {
				if m, ok := d.Mark.(*drawing.Dimension); ok && d.Text >= 0 {
					figures++
					if w.Texts[d.Text].Turned != m.Vertical {
						t.Errorf("%s, page %d, %s: %q lies wrong", name, i+1, page.Kind, w.Texts[d.Text].Lines[0].Text)
					}
				}
			}
		}
		if figures < 10 {
			t.Errorf("%s: only %d figures", name, figures)
		}
	}
}
