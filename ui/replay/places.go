package replay

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/drawing"
	"frontlay/ui/field"
	"frontlay/ui/screen"
)

// Spot is a box in the units of what it lies in.
type Spot struct{ X, Y, Width, Height float32 }

// Centre is the middle of a spot.
func (s Spot) Centre() fyne.Position { return fyne.NewPos(s.X+s.Width/2, s.Y+s.Height/2) }

// Places names what is on a drawing and tells where on its widget: fronts by
// their number, the division above a front, its height and its name, cabinets by
// their number from 1, and their width.
func Places(s *screen.Screen) map[string]Spot {
	all := map[string]Spot{}
	put := func(name string, of drawing.Subject) {
		if at, size, ok := s.Where(of); ok {
			all[name] = Spot{at.X, at.Y, size.Width, size.Height}
		}
	}
	pl := s.Session().Result().Plan
	for i := range pl.Fronts {
		f := &pl.Fronts[i]
		put(fmt.Sprintf("front %d", f.Number), drawing.Subject{Kind: drawing.FrontThing, Place: f.Place})
		put(fmt.Sprintf("division above %d", f.Number), drawing.Subject{Kind: drawing.DivisionThing, Place: f.Place})
		put(fmt.Sprintf("height of %d", f.Number), drawing.Subject{Kind: drawing.FrontHeight, Place: f.Place})
		put(fmt.Sprintf("name of %d", f.Number), drawing.Subject{Kind: drawing.FrontName, Place: f.Place})
	}
	for i := range pl.Cabinets {
		at := pl.Cabinets[i].Place
		put(fmt.Sprintf("cabinet %d", i+1), drawing.Subject{Kind: drawing.CabinetThing, Place: at})
		put(fmt.Sprintf("width of cabinet %d", i+1), drawing.Subject{Kind: drawing.CabinetWidth, Place: at})
	}
	return all
}

// Named visits the buttons and fields in an object, such as a dialog, by the
// text they carry.
func Named(top fyne.CanvasObject, prefix string, visit func(string, fyne.CanvasObject)) {
	rows, choices := 0, 0
	var walk func(o fyne.CanvasObject)
	walk = func(o fyne.CanvasObject) {
		if !o.Visible() {
			return
		}
		switch v := o.(type) {
		case interface{ Named() string }: // a field.Button, or what is made of one
			visit(prefix+v.Named(), o)
		case *widget.Button:
			visit(prefix+v.Text, v)
		case *field.Text:
			visit(prefix+"entry "+v.PlaceHolder, v)
		case *widget.Entry:
			visit(prefix+"entry "+v.PlaceHolder, v)
		case *field.Check:
			visit(prefix+v.Text, v)
		case *field.Choice:
			choices++
			visit(fmt.Sprintf("%schoice %d", prefix, choices), v)
		case *field.Entry:
			rows++
			visit(fmt.Sprintf("%sfield %d", prefix, rows), v)
		case *container.Split:
			walk(v.Leading)
			walk(v.Trailing)
		case *widget.PopUp:
			walk(v.Content)
		case *container.Scroll:
			walk(v.Content)
		case *fyne.Container:
			for _, c := range v.Objects {
				walk(c)
			}
		}
	}
	walk(top)
}
