package sheet

import (
	"fmt"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/message"
)

// handlePages makes the templates of handles. They are drilled from the face,
// which lies up: nothing is mirrored.
func handlePages(p *plan.Plan, o Options, first int) []Page {
	lies := message.New("The face lies up, the bottom edge towards you: left on this paper is left in the room. Lay scrap under the front, or the face chips where the drill comes out.")
	blocks := lineBlocks(p, o, HandleTemplates, lies, func(f *plan.Front) (spread, bool) {
		bores := faceBores(f)
		if len(bores) == 0 {
			return spread{}, false
		}
		return lineSpread(f, facePanel(f, bores), bores), true
	})
	for i := range blocks {
		blocks[i].spread.what = message.New("Handle template 1:1, FACE. %v", blocks[i].name)
	}
	return stackPages(HandleTemplates, []headLine{
		{message.New("%v: handle templates 1:1, FACE", title(p)), lettering.Medium, true},
		{lies, lettering.Tiny, false},
		{layUpright(), lettering.Tiny, false},
		{o.careful(), lettering.Tiny, false},
	}, blocks, o, first)
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

// sharedKey tells fronts apart by what their sheet shows: the holes from the
// pencil line and from the edge that they are measured from, and the edges.
func (s spread) sharedKey() string {
	from := plane.Point{X: s.line}
	if s.region.Max.Y > s.blind.Max.Y {
		from.Y = s.blind.Max.Y
	}
	back := plane.Point{X: -from.X, Y: -from.Y}
	key := fmt.Sprintln(s.region.Intersect(s.blind).Move(back), s.region.Move(back))
	for _, b := range s.bores {
		key += fmt.Sprintln(b.at.Sub(from), int64(b.diameter), int64(b.depth), b.through)
	}
	return key
}
