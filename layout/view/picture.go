package view

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Picture draws the run as it will stand there, for who is to say yes to it: boards
// with what they are of, handles, and the overall sizes alone. It is in the run frame.
func Picture(p *plan.Plan) *drawing.Drawing {
	d := &drawing.Drawing{Title: message.New("View from the room")}
	if p.Project == nil {
		return d
	}
	boards := p.Project.Boards
	// Edges show no grain; that of a plinth runs along it, as it is cut.
	edges, plinth := boards.Carcass, boards.Carcass
	edges.Grain = ""
	if plinth.Grain != "" {
		plinth.Grain = "horizontal"
	}
	board := func(m drawing.Meaning, r plane.Rect, b *model.Board) {
		if !r.Empty() {
			mark := filled(m, drawing.Subject{}, r)
			mark.Board = b
			d.Add(mark)
		}
	}
	for i := range p.Cabinets {
		c := &p.Cabinets[i]
		for _, b := range c.Beside {
			if b.Kind == plan.WorktopBoard {
				board(drawing.Carcass, b.Rect, nil) // of which nobody has said what it is
				continue
			}
			board(drawing.PanelPart, b.Rect, &boards.Front)
		}
		board(drawing.Plinth, c.Plinth, &plinth)
		if c.Plinth.Empty() {
			for _, f := range c.Feet {
				board(drawing.Plinth, f, nil) // of which nobody has said what they are of
			}
		}
		board(drawing.Carcass, c.Outline, &edges)
		for j := range c.Bays {
			if b := &c.Bays[j]; b.Count == 0 || c.Mount == model.Inset {
				board(drawing.NichePart, b.Opening, &edges)
			}
			for _, r := range c.Bays[j].Rails {
				board(drawing.Carcass, r.Rect, &edges)
			}
		}
	}
	for i := range p.Fronts {
		f := &p.Fronts[i]
		switch f.Kind {
		case model.OpenNiche:
			board(drawing.NichePart, f.Clear, &edges)
		case model.FixedPanel:
			board(drawing.PanelPart, f.Face, &f.Made.Board)
		default:
			board(drawing.Face, f.Face, &f.Made.Board)
		}
		for k := range f.Zones {
			if z := &f.Zones[k]; f.Made.Build.Kind == model.Frame { // a grip is behind the front
				b := z.Of(f)
				board(drawing.Face, z.Rect.Move(f.Face.Min), &b)
			}
		}
		d.Add(handles(f)...)
	}
	e := p.Extent
	if !e.Empty() {
		d.Add(across(drawing.Subject{}, e.Min.X, e.Max.X, e.Min.Y, -1), upright(drawing.Subject{}, e.Min.Y, e.Max.Y, e.Min.X, -1))
	}
	return d
}

// The project says where a handle is screwed on, not what it looks like: it is drawn
// as a bar that ends a little past its screws, or as a knob (common practice, no
// source).
const (
	handleBar  = 12 * length.Millimetre
	handlePast = 10 * length.Millimetre
	knob       = 30 * length.Millimetre
)

// handles draws the handles or knobs of a front, in the run frame, as far as they lie on
// the front.
func handles(f *plan.Front) []drawing.Mark {
	t := drawing.Tag{Meaning: drawing.HandlePart, Of: of(drawing.FrontThing, f.Place)}
	var marks []drawing.Mark
	for i := range f.Handles {
		h := &f.Handles[i]
		if len(h.Holes) == 1 {
			c := h.At.Add(f.Face.Min)
			if on := (plane.Rect{Min: c, Max: c}).Grow(knob / 2); on.Intersect(f.Face) == on {
				marks = append(marks, &drawing.Circle{Tag: t, Centre: c, Radius: knob / 2}, &drawing.Circle{Tag: t, Centre: c, Radius: knob / 3})
			}
			continue
		}
		past := plane.Point{X: handlePast, Y: handleBar / 2}
		if h.Upright {
			past = plane.Point{X: handleBar / 2, Y: handlePast}
		}
		bar := plane.Rect{Min: h.Holes[0].At.Sub(past), Max: h.Holes[1].At.Add(past)}.Move(f.Face.Min).Intersect(f.Face)
		if !bar.Empty() {
			marks = append(marks, &drawing.Rectangle{Tag: t, Filled: true, Rect: bar})
		}
	}
	return marks
}
