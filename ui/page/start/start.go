// Package start is the page to start from: a new cabinet at the left, the demo and
// recent projects at the right.
package start

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"frontlay/layout"
	"frontlay/layout/drawing"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/ask"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/screen"
)

// Host is what the page needs of the window around it.
type Host interface {
	// Say gives the language of the moment.
	Say() message.Language
	Ask() *ask.Asker
	// Unit is what a new cabinet is measured in.
	Unit() length.Unit
	// Begin opens a new project, once nothing can be lost by it.
	Begin(*model.Project)
}

// Door is a way into work that is there already: a picture of it with a button.
type Door struct {
	Heading string // that stands above; empty: none
	Label   string
	Project *model.Project // nil: there is no picture
	Open    func()         // nil: it can't be opened, as the label says
}

// beside stacks the doors.
func beside(h Host, doors []Door) fyne.CanvasObject {
	column := field.Column()
	for _, d := range doors {
		if d.Heading != "" {
			column.Add(field.Heading(d.Heading))
		}
		column.Add(d.object(h))
	}
	return column
}

func (d Door) object(h Host) fyne.CanvasObject {
	if d.Open == nil {
		l := field.NewLabel(d.Label)
		l.Wrapping = fyne.TextWrapWord
		return l
	}
	b := field.NewButton(d.Label, d.Open)
	if d.Project == nil {
		return container.NewPadded(b)
	}
	say := h.Say()
	say.Unit = d.Project.Unit
	r := layout.Solve(d.Project)
	picture := screen.NewStill(withoutDimensions(view.Elevation(r.Plan, view.ElevationOptions{Handles: true, Found: view.Found{All: r.Findings}})), say, fyne.NewSize(250, 88))
	back := fynecanvas.NewRectangle(look.Current().Sheet)
	return container.NewPadded(container.NewVBox(container.NewStack(back, picture), b))
}

// withoutDimensions is a drawing for a small picture: no dimensions and no texts.
func withoutDimensions(d *drawing.Drawing) *drawing.Drawing {
	small := &drawing.Drawing{Title: d.Title}
	for _, m := range d.Marks {
		switch m.(type) {
		case *drawing.Dimension, *drawing.Text, *drawing.Caption:
		default:
			small.Add(m)
		}
	}
	return small
}
