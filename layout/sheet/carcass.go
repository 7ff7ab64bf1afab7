package sheet

import (
	"fmt"
	"slices"
	"strings"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// CarcassFace is one face of a carcass side or partition with the runner screws
// in it, as it lies before you: inside face up, bottom edge towards you. Partitions
// end at the back board, and sides too where it is laid on behind them. Where Packing is
// not 0, the screws are not in the board, but in packing of that thickness on it. Panel is the board from its lower left corner at 0,0; FrontLeft tells that its front
// edge is at the left (the left side of a cabinet, and every face that looks to
// the right), else it is at the right.
type CarcassFace struct {
	Name      message.Message
	Cabinet   int
	Panel     plane.Rect
	FrontLeft bool
	Packing   length.Length
	Strips    []plane.Rect // of that packing, in the face's own frame
	Holes     []CarcassHole
}

// CarcassHole is a screw hole in a carcass face: At in the face's own frame,
// Back from the front edge, Up from the bottom edge.
type CarcassHole struct {
	At              plane.Point
	Back, Up        length.Length
	Diameter, Depth length.Length
	Front           *plan.Front
}

// CarcassFaces gives every face that has runner screws, cabinets and bays left
// to right; in each bay the left face first.
func CarcassFaces(p *plan.Plan) []CarcassFace {
	var all []CarcassFace
	at := map[string]int{}
	for f := range p.Drawers() {
		if len(f.Runner.Screws) == 0 {
			continue
		}
		for _, frontLeft := range []bool{true, false} {
			x := f.Opening.Min.X
			if !frontLeft {
				x = f.Opening.Max.X
			}
			all = addScrews(all, at, p, f, x, frontLeft)
		}
	}
	return all
}

// addScrews puts a front's runner screws into the board whose face is at x; at
// tells where in all a face is.
func addScrews(all []CarcassFace, at map[string]int, p *plan.Plan, f *plan.Front, x length.Length, frontLeft bool) []CarcassFace {
	face := boardAt(p, f.Place.Cabinet, x, frontLeft)
	face.pack(f)
	key := fmt.Sprint(face.Cabinet, frontLeft, face.Name)
	j, ok := at[key]
	if !ok {
		j = len(all)
		at[key] = j
		all = append(all, face.CarcassFace)
	}
	if face.Packing > 0 {
		y, end := f.Runner.Lower-face.bottom, f.RunnerEnds()[0]
		strip := plane.R(f.Runner.Start, y, f.Runner.Start+f.Runner.Length, y+end.Height())
		if !frontLeft {
			strip.Min.X, strip.Max.X = face.Panel.Width()-strip.Max.X, face.Panel.Width()-strip.Min.X
		}
		all[j].Strips = append(all[j].Strips, strip)
	}
	for _, s := range f.Runner.Screws {
		h := CarcassHole{Back: s.Back, Up: s.Y - face.bottom, Diameter: s.Diameter, Depth: s.Depth, Front: f}
		h.At = plane.Point{X: h.Back, Y: h.Up}
		if !frontLeft {
			h.At.X = face.Panel.Width() - h.Back
		}
		all[j].Holes = append(all[j].Holes, h)
	}
	return all
}

// pack tells of a face on which there is packing for a front's runners.
func (b *foundBoard) pack(f *plan.Front) {
	b.Packing = f.Packing.Left
	if !b.FrontLeft {
		b.Packing = f.Packing.Right
	}
	if b.Packing > 0 {
		b.Name = message.New("%v, on packing of %v", b.Name, b.Packing)
	}
}

type foundBoard struct {
	CarcassFace
	bottom length.Length // of the board, run frame
}

// boardAt finds the side or partition whose face is at x in a cabinet.
func boardAt(p *plan.Plan, cabinet int, x length.Length, frontLeft bool) foundBoard {
	c := &p.Cabinets[cabinet]
	name := clipped(c.Name, 30)
	b := foundBoard{CarcassFace: CarcassFace{Cabinet: cabinet, FrontLeft: frontLeft}}
	for i, r := range c.Partitions {
		if frontLeft && r.Max.X == x || !frontLeft && r.Min.X == x {
			b.Name = message.New("%v, partition %v, right face", name, i+1)
			if !frontLeft {
				b.Name = message.New("%v, partition %v, left face", name, i+1)
			}
			b.bottom = r.Min.Y
			b.Panel = plane.R(0, 0, c.Depth, r.Height())
			return b
		}
	}
	b.Name = message.New("%v, left side", name)
	if !frontLeft {
		b.Name = message.New("%v, right side", name)
	}
	b.bottom = c.Outline.Min.Y
	b.Panel = plane.R(0, 0, c.Sides, c.Outline.Height())
	return b
}

// Drawing is the face with its outline and holes, in its own frame.
func (c *CarcassFace) Drawing() *drawing.Drawing {
	d := &drawing.Drawing{Title: c.Name}
	d.Add(&drawing.Rectangle{
		Tag:  drawing.Tag{Meaning: drawing.Register, Of: drawing.Subject{Kind: drawing.CabinetThing, Place: model.Place{Cabinet: c.Cabinet, Bay: -1, Front: -1}}},
		Rect: c.Panel,
	})
	for _, s := range c.Strips {
		d.Add(&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.Carcass}, Rect: s})
	}
	for _, b := range c.bores() {
		d.Add(b.marks()...)
	}
	return d
}

func (c *CarcassFace) bores() []bore {
	var bores []bore
	for i, h := range c.Holes {
		bores = append(bores, bore{
			at: h.At, diameter: h.Diameter, depth: h.Depth, sheet: h.Front.Sheet,
			subject: drawing.Subject{Kind: drawing.RunnerThing, Place: h.Front.Place, Index: i},
		})
	}
	return bores
}

// sidePages makes the templates of carcass sides; faces with the same holes
// share one.
func sidePages(p *plan.Plan, o Options, first int) []Page {
	var pages []Page
	faces := CarcassFaces(p)
	var keys []string // in the order of the first face of each
	same := map[string][]*CarcassFace{}
	for i := range faces {
		c := &faces[i]
		c.keep(o)
		if len(c.Holes) == 0 {
			continue
		}
		key := c.key()
		if same[key] == nil {
			keys = append(keys, key)
		}
		same[key] = append(same[key], c)
	}
	for _, key := range keys {
		c := same[key][0]
		var names []string
		for _, f := range same[key] {
			names = append(names, o.Say.Say(f.Name))
		}
		pages = append(pages, c.spread(clipped(strings.Join(names, "; "), 200), o).pages(o, first+len(pages))...)
	}
	return pages
}

// keep leaves only the holes of the fronts that are asked for.
func (c *CarcassFace) keep(o Options) {
	c.Holes = slices.DeleteFunc(c.Holes, func(h CarcassHole) bool { return !o.wantsFront(h.Front.Number) })
}

func (c *CarcassFace) key() string {
	var b strings.Builder
	fmt.Fprintln(&b, c.FrontLeft, c.Panel)
	for _, h := range c.Holes {
		fmt.Fprintln(&b, int64(h.Back), int64(h.Up), int64(h.Diameter), int64(h.Depth))
	}
	return b.String()
}

func (c *CarcassFace) spread(names string, o Options) spread {
	s := spread{
		kind:   SideTemplates,
		title:  said(names),
		what:   message.New("Carcass side template 1:1, INSIDE FACE. %v", names),
		job:    message.New("The board is %v deep and %v high.", c.Panel.Width(), c.Panel.Height()),
		lies:   message.New("The inside face lies up, the bottom edge towards you: the front edge is at the LEFT."),
		panel:  c.Drawing(),
		blind:  c.Panel,
		bores:  c.bores(),
		datum:  -1,
		region: c.Panel.Grow(beyond),
		how:    message.New("At holes and crosses: → or ← from the front edge, ↑ from the bottom edge."),
		place: func(b bore) string {
			back := b.at.X
			if !c.FrontLeft {
				back = c.Panel.Width() - b.at.X
			}
			return arrows(o.Say, c.FrontLeft, back, b.at.Y)
		},
		leftName: message.New("← FRONT edge: fold here"), rightName: message.New("back edge →"),
	}
	if !c.FrontLeft {
		s.lies = message.New("The inside face lies up, the bottom edge towards you: the front edge is at the RIGHT.")
		s.datum = 1
		s.leftName, s.rightName = message.New("← back edge"), message.New("FRONT edge: fold here →")
	}
	for _, b := range s.bores {
		s.region = s.region.Union(b.whole())
	}
	return s
}
