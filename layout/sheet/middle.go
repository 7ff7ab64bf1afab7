package sheet

import (
	"fmt"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// lineSpread makes a template of holes that lie too far from a side edge to hook
// over it: it is laid on a pencil line at the middle of the holes, and on the
// bottom or the top edge, whichever is nearer.
func lineSpread(f *plan.Front, panel *drawing.Drawing, bores []bore) spread {
	area := bores[0].whole()
	for _, b := range bores {
		area = area.Union(b.whole())
	}
	x := area.Centre().X
	s := spread{
		panel: panel, blind: f.Blind(), bores: bores, keepAll: true, line: x,
		region: area.Union(plane.R(x-mm(40), area.Min.Y, x+mm(40), area.Max.Y)).Grow(mm(12)),
		place: func(b bore) message.Message {
			if b.at.Y > f.Face.Height()/2 {
				return message.New("%v, %v from the top edge", besideLine(b.at.X-x), f.Face.Height()-b.at.Y)
			}
			return message.New("%v, %v from the bottom edge", besideLine(b.at.X-x), b.at.Y)
		},
	}
	if area.Centre().Y > f.Face.Height()/2 {
		s.region.Max.Y = max(s.region.Max.Y, f.Face.Height()+beyond)
	} else {
		s.region.Min.Y = min(s.region.Min.Y, -beyond)
	}
	panel.Add(&drawing.Line{
		Tag:  drawing.Tag{Meaning: drawing.Register},
		From: plane.Point{X: x, Y: s.region.Min.Y}, To: plane.Point{X: x, Y: s.region.Max.Y},
	})
	return s
}

// besideLine says how far to the right (below zero: left) of an upright line
// something is, as the sheet lies.
func besideLine(x length.Length) message.Message {
	switch {
	case x > 0:
		return message.New("%v to the right of the line", x)
	case x < 0:
		return message.New("%v to the left of the line", -x)
	}
	return message.New("on the line")
}

// pencil says where the line is drawn on the front, in the frame of the sheet.
func (s spread) pencil() message.Message {
	return message.New("Draw a pencil line %v from the left edge as the front lies before you (%v from the right) and lay the upright line on it.",
		s.line-s.blind.Min.X, s.blind.Max.X-s.line)
}

// middlePages makes the templates of stabilisers, whose holes are in the middle
// of wide fronts. The rear face lies up.
func middlePages(p *plan.Plan, o Options, first int) []Page {
	var pages []Page
	for _, g := range groups(p, o, middleKey) {
		f := g.first()
		bores := stabiliserBores(f)
		s := lineSpread(f, rearPanel(f), bores)
		s.kind, s.title = CornerTemplates, g.names()
		s.what = message.New("Stabiliser template 1:1, REAR FACE. %v", g.names())
		s.job, s.lies = s.pencil(), faceDown()
		pages = append(pages, s.pages(o, first+len(pages))...)
	}
	return pages
}

func stabiliserBores(f *plan.Front) []bore {
	var of []bore
	for _, b := range rearBores(f) {
		if b.kind == plan.StabiliserHole {
			of = append(of, b)
		}
	}
	return of
}

// middleKey tells fronts apart by their stabilisers' holes from the middle and
// the bottom edge.
func middleKey(f *plan.Front) string {
	if len(stabiliserBores(f)) == 0 {
		return ""
	}
	key := fmt.Sprintln(int64(f.Face.Width()))
	for _, b := range stabiliserBores(f) {
		key += fmt.Sprintln(int64(b.at.X), int64(b.at.Y), int64(b.diameter), int64(b.depth))
	}
	return key
}

// handlePages makes the templates of handles. They are drilled from the face,
// which lies up: nothing is mirrored.
func handlePages(p *plan.Plan, o Options, first int) []Page {
	var pages []Page
	for _, g := range groups(p, o, handleKey) {
		f := g.first()
		bores := faceBores(f)
		s := lineSpread(f, facePanel(f, bores), bores)
		s.kind, s.title = HandleTemplates, g.names()
		s.what = message.New("Handle template 1:1, FACE. %v", g.names())
		s.job = s.pencil()
		s.lies = message.New("The face lies up, the bottom edge towards you: left on this paper is left in the room. Lay scrap under the front, or the face chips where the drill comes out.")
		pages = append(pages, s.pages(o, first+len(pages))...)
	}
	return pages
}

func handleKey(f *plan.Front) string {
	if len(f.HandleHoles) == 0 {
		return ""
	}
	key := fmt.Sprintln(int64(f.Face.Width()), int64(f.Face.Height()))
	for _, h := range f.HandleHoles {
		key += fmt.Sprintln(int64(h.At.X), int64(h.At.Y), int64(h.Diameter))
	}
	return key
}

// faceBores are a front's handle holes in the face frame; they go through.
func faceBores(f *plan.Front) []bore {
	var bores []bore
	for i, h := range f.HandleHoles {
		bores = append(bores, bore{
			at: h.At, diameter: h.Diameter, side: h.Side, kind: h.Kind, through: true,
			subject: drawing.Subject{Kind: drawing.HoleThing, Place: f.Place, Index: len(f.Holes) + i},
		})
	}
	return bores
}

func facePanel(f *plan.Front, bores []bore) *drawing.Drawing {
	d := &drawing.Drawing{Title: message.New("Face of front %v, %v", f.Number, f.Name)}
	d.Add(&drawing.Rectangle{
		Tag:  drawing.Tag{Meaning: drawing.Register, Of: drawing.Subject{Kind: drawing.FrontThing, Place: f.Place}},
		Rect: f.Blind(),
	})
	for _, b := range bores {
		d.Add(b.marks()...)
	}
	return d
}
