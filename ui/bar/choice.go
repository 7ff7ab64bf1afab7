package bar

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"frontlay/ui/look"
)

// Choice is several buttons of the kind Segment in one frame: one control, of whose
// parts one is chosen.
type Choice struct {
	widget.BaseWidget
	Parts []*Button
}

// NewChoice makes a choice of its parts.
func NewChoice(parts ...*Button) *Choice {
	c := &Choice{Parts: parts}
	c.ExtendBaseWidget(c)
	return c
}

// inset is the room between the frame and the parts.
const inset = 2

// CreateRenderer draws the frame around the parts.
func (c *Choice) CreateRenderer() fyne.WidgetRenderer {
	r := &choiceRenderer{c: c, frame: &fynecanvas.Rectangle{StrokeWidth: 1, CornerRadius: 6}}
	r.colour()
	return r
}

type choiceRenderer struct {
	c     *Choice
	frame *fynecanvas.Rectangle
}

func (r *choiceRenderer) colour() {
	p := look.Current()
	r.frame.FillColor, r.frame.StrokeColor = p.Field, p.FieldEdge
}

func (r *choiceRenderer) MinSize() fyne.Size {
	w := float32(2 * inset)
	for _, b := range r.c.Parts {
		w += b.MinSize().Width
	}
	return fyne.NewSize(w, Height())
}

// Width is that of the choice with the words of its parts, or short with their icons.
func (c *Choice) Width(short bool) float32 {
	w := float32(2 * inset)
	for _, b := range c.Parts {
		w += b.Width(short)
	}
	return w
}

func (r *choiceRenderer) Layout(s fyne.Size) {
	r.frame.Resize(s)
	x := float32(inset)
	for _, b := range r.c.Parts {
		w := b.MinSize().Width
		b.Resize(fyne.NewSize(w, s.Height-2*inset))
		b.Move(fyne.NewPos(x, inset))
		x += w
	}
}

func (r *choiceRenderer) Refresh() {
	r.colour()
	r.Layout(r.c.Size())
	r.frame.Refresh()
	for _, b := range r.c.Parts {
		b.Refresh()
	}
}

func (r *choiceRenderer) Objects() []fyne.CanvasObject {
	o := []fyne.CanvasObject{r.frame}
	for _, b := range r.c.Parts {
		o = append(o, b)
	}
	return o
}

func (r *choiceRenderer) Destroy() {}
