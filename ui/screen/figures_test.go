package screen

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/layout"
	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// The figure of a front too low for it stands beside its line, inside the front.
func TestLowFrontsKeepTheirFigures(t *testing.T) {
	test.NewTempApp(t)
	board := model.Board{Thickness: 18 * length.Millimetre}
	c := model.Cabinet{Name: "A", Width: 900 * length.Millimetre, Height: 1260 * length.Millimetre, Depth: 560 * length.Millimetre, Bays: make([]model.Bay, 1)}
	for range 12 {
		c.Bays[0].Fronts = append(c.Bays[0].Fronts, model.Front{Kind: model.FixedPanel, Share: 1})
	}
	s := session.New(&model.Project{Boards: model.Boards{Carcass: board, Front: board, Back: board}, Cabinets: []model.Cabinet{c}}, layout.Solve)
	screen := New(s, func() message.Language { return message.Language{} })
	test.NewTempWindow(t, screen).Resize(fyne.NewSize(900, 360))
	seen := 0
	for _, f := range screen.figures {
		if f.of.Kind != drawing.FrontHeight {
			continue
		}
		seen++
		face := session.FrontOf(s.Result().Plan, f.of.Place).Face
		if end, right := f.at.X+f.size.Width, screen.view.px(face.Max.X); end > right {
			t.Errorf("the figure of front %d ends at %v, its front at %v", f.of.Place.Front+1, end, right)
		}
	}
	if seen == 0 {
		t.Fatal("no height has a figure")
	}
}
