package sheet

import (
	"slices"
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/message"
)

// The client sheet has the overall sizes and no other, boards in what they are of,
// handles, and a line to sign.
func TestClientSheetShowsOverallSizesOnly(t *testing.T) {
	p := stackOf(3)
	p.Extent = plane.R(0, 0, mm(600), mm(760))
	p.Cabinets[0].Fronts = mm(19)
	for i := range p.Fronts {
		p.Fronts[i].Made.Board = model.Board{Thickness: mm(19), Material: "walnut", Grain: "vertical"}
	}
	p.Project.Cabinets[0].Depth = mm(560)
	p.Fronts[0].Handles = []plan.Handle{{At: plane.Point{X: mm(280), Y: mm(100)}, Holes: []plan.Hole{hole(0, mm(200), mm(100), mm(5)), hole(0, mm(360), mm(100), mm(5))}}}
	d := ClientSheet(p, Options{})
	if len(d.Pages) != 1 {
		t.Fatalf("%d pages", len(d.Pages))
	}
	boards, bars := 0, 0
	var sizes []string
	for _, m := range d.Pages[0].Placed[0].Drawing.Marks {
		switch v := m.(type) {
		case *drawing.Rectangle:
			if v.Meaning == drawing.HandlePart {
				bars++
				if v.Rect.Width() != mm(180) { // 160 between the screws, 10 past each
					t.Errorf("the handle is %v long", v.Rect.Width())
				}
			}
			if v.Board != nil && v.Board.Material == "walnut" && v.Board.Grain == "vertical" {
				boards++
			}
		case *drawing.Dimension:
			sizes = append(sizes, v.Value.String())
		case *drawing.Text, *drawing.Caption:
			t.Errorf("there is a text in the picture: %v", v)
		}
	}
	if boards != 3 || bars != 1 || !slices.Equal(sizes, []string{"600 mm", "760 mm"}) {
		t.Errorf("%d fronts of walnut, %d handles, sizes %v", boards, bars, sizes)
	}
	said := strings.ReplaceAll(strings.Join(pageTexts(d.Pages, message.Language{}), "\n"), "\u00a0", " ")
	for _, want := range []string{"Glaze bench", "Width 600 mm, height 760 mm, depth with fronts 579 mm", "Approved", "not those of the material"} {
		if !strings.Contains(said, want) {
			t.Errorf("the sheet does not say %q:\n%s", want, said)
		}
	}
}
