package layout_test

import (
	"testing"

	"frontlay/layout"
	"frontlay/layout/drawing"
	"frontlay/layout/projecttest"
	"frontlay/layout/sheet"
	"frontlay/model/length"
)

// The picture of the cover stands above the contents, however many parts those
// name, also of a cabinet that is as high as it is wide.
func TestTheCoversPictureStandsAboveTheContents(t *testing.T) {
	p := projecttest.Demo(t)
	p.Cabinets = p.Cabinets[:1]
	r := layout.Solve(p)
	for _, paper := range sheet.Papers() {
		t.Run(paper.Name, func(t *testing.T) {
			page := sheet.Make(r.Plan, r.Findings, sheet.Options{Parts: sheet.Parts(), Paper: paper}).Pages[0]
			last := len(page.Placed) - 1
			var head *drawing.Text
			for _, m := range page.Placed[last].Drawing.Marks {
				if s, ok := m.(*drawing.Text); ok && s.Say.String() == "Contents" {
					head = s
				}
			}
			if head == nil || last == 0 {
				t.Fatalf("the cover has %d pictures, contents: %v", last, head)
			}
			for _, q := range page.Placed[:last] {
				low := q.At.Y + (q.Drawing.Bounds().Min.Y-q.Origin.Y)/length.Length(q.ScaleDen)*length.Length(q.ScaleNum)
				if top := head.At.Y + head.Size; low < top+2*length.Millimetre {
					t.Errorf("the picture begins at %v, the contents reach %v", low, top)
				}
			}
		})
	}
}
