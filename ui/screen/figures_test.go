package screen

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/layout"
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/paint"
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
		face := s.Result().Plan.FrontAt(f.of.Place).Face
		if end, right := f.at.X+f.size.Width, screen.view.PX(face.Max.X); end > right {
			t.Errorf("the figure of front %d ends at %v, its front at %v", f.of.Place.Front+1, end, right)
		}
	}
	if seen == 0 {
		t.Fatal("no height has a figure")
	}
}

// Close up, the name and the height of a front stand in what is seen of it.
func TestCloseUpAFrontKeepsItsName(t *testing.T) {
	st := newStage(t)
	st.show(scenes(t)[0], manners(t)[0])
	c := st.screen
	f := &c.session.Result().Plan.Fronts[0]
	c.ZoomTo(plane.R(f.Face.Max.X-f.Face.Width()/4, f.Face.Min.Y, f.Face.Max.X, f.Face.Centre().Y-50*length.Millimetre))
	seen := boxOf(0, 0, c.Size().Width, c.Size().Height)
	name, height := false, false
	for _, w := range c.figures {
		at := paint.BoxAt(w.at, w.size)
		name = name || w.of == (drawing.Subject{Kind: drawing.FrontName, Place: f.Place}) && at.Within(seen)
		height = height || w.of == (drawing.Subject{Kind: drawing.FrontHeight, Place: f.Place}) && at.Within(seen)
	}
	if !name || !height {
		t.Errorf("the name is seen: %v; the height is seen: %v", name, height)
	}
}
