package inspector

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/field"
	"frontlay/ui/look"
)

// revealKeys are the reveals in the order of Tab: those around a front, and the gap
// between two.
var revealKeys = []string{"reveals.top", "reveals.left", "reveals.right", "reveals.bottom", "reveals.gap"}

// reveals are five fields around a little picture of two fronts; at a cabinet, grey
// ones are those of the project, and an emptied one gives all of them back to it.
func (f *form) reveals(at model.Place) {
	s := f.sections[len(f.sections)-1]
	from := len(s.things)
	for _, key := range revealKeys {
		one := f.always(at, key)
		if at.Cabinet >= 0 {
			one.get = func() (length.Length, bool, bool) {
				from, c := model.Whole, f.session.Project().CabinetAt(at)
				if c != nil && c.Reveals != nil {
					from = at
				}
				v, _ := f.sized(from, key)
				return v, from == at, false
			}
			one.clear = func() edit.Edit { return edit.Set{At: at, Key: "reveals"} }
		}
		f.sizeOf(at, key, one)
	}
	fields := s.things[from:]
	var all []fyne.CanvasObject
	called := ""
	for _, t := range fields {
		all = append(all, t.object)
		called += " " + t.called
	}
	box := container.New(&cross{}, append(all, fronts())...)
	s.things = append(s.things[:from:from], thing{box, called, fields[0].of})
}

// fronts is a picture of two fronts in their carcass, with the gaps around them.
func fronts() fyne.CanvasObject {
	p := look.Current()
	carcass := fynecanvas.NewRectangle(p.Gap)
	carcass.CornerRadius = 2
	upper, lower := fynecanvas.NewRectangle(p.Maple), fynecanvas.NewRectangle(p.Maple)
	return container.New(twoFronts{}, carcass, upper, lower)
}

type twoFronts struct{}

func (twoFronts) Layout(o []fyne.CanvasObject, s fyne.Size) {
	const gap = 3
	high := (s.Height - 3*gap) / 2
	o[0].Resize(s)
	for i := range 2 {
		o[1+i].Move(fyne.NewPos(gap, gap+float32(i)*(high+gap)))
		o[1+i].Resize(fyne.NewSize(s.Width-2*gap, high))
	}
}

func (twoFronts) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(34, 44) }

// cross lays out the fields of reveals around their picture, each at its side, the gap
// below; where the panel is too narrow for that, one below the other without it.
type cross struct{ width float32 }

// crossGap is the space around the picture.
const crossGap = 8

func (c *cross) Layout(o []fyne.CanvasObject, s fyne.Size) {
	c.width = s.Width
	c.lay(o)
}

// MinSize is for the width of the last layout.
func (c *cross) MinSize(o []fyne.CanvasObject) fyne.Size {
	if c.width == 0 {
		return fyne.NewSize(100, 5*o[0].MinSize().Height)
	}
	return fyne.NewSize(0, c.height(o))
}

// height is what the objects take at the widths of the last layout. Nothing may move
// while a size is asked for: it would be painted and asked for again, without end.
func (c *cross) height(o []fyne.CanvasObject) float32 {
	high := func(i int) float32 { return o[i].MinSize().Height }
	side := c.side(o)
	switch need := crossNeed(o); {
	case need <= side:
		return high(0) + max(high(1), high(2)) + high(3) + high(4)
	case need <= (c.width-12)/2:
		return max(high(0), high(1)) + max(high(2), high(3)) + high(4)
	default:
		return high(0) + high(1) + high(2) + high(3) + high(4)
	}
}

// side is how wide each figure is in the cross.
func (c *cross) side(o []fyne.CanvasObject) float32 {
	return (c.width - o[len(o)-1].MinSize().Width - 2*crossGap) / 2
}

// crossNeed is what the widest of the figures needs.
func crossNeed(o []fyne.CanvasObject) (need float32) {
	for _, f := range o[:5] {
		need = max(need, field.NeedOf(f))
	}
	return need
}

// lay puts the objects in their places.
func (c *cross) lay(o []fyne.CanvasObject) {
	width := c.width
	picture := o[len(o)-1]
	top, left, right, bottom, gap := o[0], o[1], o[2], o[3], o[4]
	side, need := c.side(o), crossNeed(o)
	place := func(f fyne.CanvasObject, x, y, w float32) float32 {
		high := field.HighAt(f, w)
		field.Put(f, fyne.NewPos(x, y), fyne.NewSize(w, high))
		return y + high
	}
	if picture.Visible() != (need <= side) {
		if picture.Visible() {
			picture.Hide()
		} else {
			picture.Show()
		}
	}
	if need > side {
		y, low := float32(0), float32(0)
		for i, f := range o[:5] {
			if two := (width - 12) / 2; need <= two {
				low = max(low, place(f, float32(i%2)*(two+12), y, two))
				if i%2 == 1 || i == 4 {
					y = low
				}
				continue
			}
			y = place(f, 0, y, width)
		}
		return
	}
	middle := (width - side) / 2
	y := place(top, middle, 0, side)
	end := max(place(left, 0, y, side), place(right, width-side, y, side))
	label := field.LabelOf(left)
	picture.Resize(fyne.NewSize(picture.MinSize().Width, end-y-label+8))
	picture.Move(fyne.NewPos((width-picture.Size().Width)/2, y+label-4))
	y = place(bottom, middle, end, side)
	place(gap, middle, y, side)
}
