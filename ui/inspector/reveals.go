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
	c.lay(o, s.Width)
}

// MinSize is for the width of the last layout.
func (c *cross) MinSize(o []fyne.CanvasObject) fyne.Size {
	if c.width == 0 {
		return fyne.NewSize(100, 5*o[0].MinSize().Height)
	}
	return fyne.NewSize(0, c.lay(o, c.width))
}

// lay puts the objects in their places and gives the height that takes.
func (c *cross) lay(o []fyne.CanvasObject, width float32) float32 {
	picture := o[len(o)-1]
	top, left, right, bottom, gap := o[0], o[1], o[2], o[3], o[4]
	side := (width - picture.MinSize().Width - 2*crossGap) / 2
	need := float32(0)
	for _, f := range o[:5] {
		need = max(need, field.NeedOf(f))
	}
	place := func(f fyne.CanvasObject, x, y, w float32) float32 {
		f.Resize(fyne.NewSize(w, f.Size().Height))
		f.Resize(fyne.NewSize(w, f.MinSize().Height))
		f.Move(fyne.NewPos(x, y))
		return y + f.Size().Height
	}
	if need > side {
		picture.Resize(fyne.NewSize(0, 0))
		y := float32(0)
		for i, f := range o[:5] {
			if two := (width - 12) / 2; need <= two {
				end := place(f, float32(i%2)*(two+12), y, two)
				if i%2 == 1 || i == 4 {
					y = end
				}
				continue
			}
			y = place(f, 0, y, width)
		}
		return y
	}
	middle := (width - side) / 2
	y := place(top, middle, 0, side)
	end := max(place(left, 0, y, side), place(right, width-side, y, side))
	label := field.LabelOf(left)
	picture.Resize(fyne.NewSize(picture.MinSize().Width, end-y-label+8))
	picture.Move(fyne.NewPos((width-picture.Size().Width)/2, y+label-4))
	y = place(bottom, middle, end, side)
	return place(gap, middle, y, side)
}
