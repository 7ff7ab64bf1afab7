package export

import (
	"fmt"
	"strings"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"
)

// FrontForMachine is a front for a drilling machine, rear face up (mirrored
// against the view from the room): its outline and its holes, without crosses.
// The layer of a hole names its diameter and depth in millimetres. Handle holes,
// which go through, are on a layer of their own, as they come out of the rear
// face. A text below the outline, on the layer NOTE, says which face lies up.
func FrontForMachine(f *plan.Front) (*drawing.Drawing, func(drawing.Mark) string) {
	d := &drawing.Drawing{Title: message.New("Rear face of front %v, %v", f.Number, f.Name)}
	m := machine{d: d, layers: map[drawing.Mark]string{}}
	m.outline(f.Blind())
	for i, h := range f.Holes {
		m.hole(f.Rear(h.At), h.Diameter, holeLayer(h.Diameter, h.Depth), drawing.Subject{Kind: drawing.HoleThing, Place: f.Place, Index: i})
	}
	for i, h := range f.HandleHoles {
		m.hole(f.Rear(h.At), h.Diameter, "THROUGH_D"+figure(h.Diameter), drawing.Subject{Kind: drawing.HoleThing, Place: f.Place, Index: len(f.Holes) + i})
	}
	m.note(rearNote())
	return d, m.layer
}

// FaceForMachine is a carcass face for a drilling machine, inside face up, with
// a text that says so as on a front.
func FaceForMachine(c *sheet.CarcassFace) (*drawing.Drawing, func(drawing.Mark) string) {
	d := &drawing.Drawing{Title: c.Name}
	m := machine{d: d, layers: map[drawing.Mark]string{}}
	m.outline(c.Panel)
	for i, h := range c.Holes {
		m.hole(h.At, h.Diameter, holeLayer(h.Diameter, h.Depth), drawing.Subject{Kind: drawing.RunnerThing, Place: h.Front.Place, Index: i})
	}
	m.note(insideNote(c))
	return d, m.layer
}

// machine gathers marks with their layers.
type machine struct {
	d      *drawing.Drawing
	layers map[drawing.Mark]string
}

func (m *machine) layer(mark drawing.Mark) string { return m.layers[mark] }

func (m *machine) outline(r plane.Rect) {
	mark := &drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.Face}, Rect: r}
	m.d.Add(mark)
	m.layers[mark] = "OUTLINE"
}

func (m *machine) hole(at plane.Point, diameter length.Length, layer string, of drawing.Subject) {
	mark := &drawing.Circle{Tag: drawing.Tag{Meaning: drawing.HoleEdge, Of: of}, Centre: at, Radius: diameter / 2}
	m.d.Add(mark)
	m.layers[mark] = layer
}

// note writes below the outline.
func (m *machine) note(says message.Message) {
	mark := faceNote(plane.Point{Y: -noteHeight}, says)
	m.d.Add(mark)
	m.layers[mark] = "NOTE"
}

func holeLayer(diameter, depth length.Length) string {
	return fmt.Sprintf("HOLE_D%s_DEPTH%s", figure(diameter), figure(depth))
}

// figure writes millimetres for a layer's name, which may not have a point.
func figure(l length.Length) string {
	return strings.ReplaceAll(length.UnitMM.Format(l.RoundTo(10*length.Micrometre)), ".", "_")
}

// noteHeight is the height of the letters of a note in a DXF file of a panel, and
// its distance below the panel.
const noteHeight = 8 * length.Millimetre

// rearNote says how a front lies. A panel drilled as its mirror image is scrap.
func rearNote() message.Message {
	return message.New("REAR FACE, bottom edge down, left here is RIGHT in the room")
}

// insideNote says how a carcass side or partition lies.
func insideNote(c *sheet.CarcassFace) message.Message {
	note := message.New("INSIDE FACE, bottom edge down, front edge at the RIGHT")
	if c.FrontLeft {
		note = message.New("INSIDE FACE, bottom edge down, front edge at the LEFT")
	}
	if c.Packing > 0 {
		note = message.New("%v; these holes are in PACKING of %v, NOT in the board", note, c.Packing)
	}
	return note
}

// faceNote is the text of a note that begins at a point and hangs below it.
func faceNote(at plane.Point, says message.Message) *drawing.Text {
	return &drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label}, At: at, Anchor: drawing.Anchor{Y: 1}, Size: lettering.Small, Bold: true, Say: says}
}

// belowAll is a point below everything that a drawing has at full size, its
// dimensions too.
func belowAll(d *drawing.Drawing, say message.Language) plane.Point {
	return plane.Point{Y: d.OnPaper(1, say).Min.Y - 2*length.Millimetre}
}
