package export

import (
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"
)

// noteHeight is the height of the letters of a note in a DXF file of a panel, and
// its distance below the panel.
const noteHeight = 8 * length.Millimetre

// rearNote says how a front lies. A panel drilled as its mirror image is scrap.
func rearNote() message.Message {
	return message.New("REAR FACE, bottom edge down, left here is RIGHT in the room")
}

// insideNote says how a carcass side or partition lies.
func insideNote(c *sheet.CarcassFace) message.Message {
	if c.FrontLeft {
		return message.New("INSIDE FACE, bottom edge down, front edge at the LEFT")
	}
	return message.New("INSIDE FACE, bottom edge down, front edge at the RIGHT")
}

// faceNote is the text of a note that begins at a point and hangs below it.
func faceNote(at plane.Point, says message.Message) *drawing.Text {
	return &drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label}, At: at, Anchor: drawing.TopLeft, Size: lettering.Small, Bold: true, Say: says}
}

// belowAll is a point below everything that a drawing has at full size, its
// dimensions too.
func belowAll(d *drawing.Drawing, say message.Language) plane.Point {
	return plane.Point{Y: d.OnPaper(1, say).Min.Y - 2*length.Millimetre}
}
