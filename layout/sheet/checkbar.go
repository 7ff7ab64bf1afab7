package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// barLength is what a check bar measures when the print is true.
const barLength = 100 * length.Millimetre

const (
	barTick    = 3 * length.Millimetre // length of the ticks at a bar's ends
	footHeight = 14 * length.Millimetre
	barStrip   = 9 * length.Millimetre // width that the upright bar takes
)

// acrossBar draws the level check bar from its left end.
func (d *draft) acrossBar(left, y length.Length) {
	d.line(drawing.CheckBar, left, y, left+barLength, y)
	d.line(drawing.CheckBar, left, y-barTick/2, left, y+barTick/2)
	d.line(drawing.CheckBar, left+barLength, y-barTick/2, left+barLength, y+barTick/2)
	d.text(plane.Point{X: left + barLength/2, Y: y + mm(1)/2}, drawing.BottomCentre, lettering.Tiny, false,
		d.say.Say(message.New("100 mm")))
}

// barFoot is what the name of an upright check bar takes below it.
const barFoot = 4 * length.Millimetre

// barBetween draws the upright check bar between two templates, from its lower
// end; its name stands below it, where it runs into no figure of theirs.
func (d *draft) barBetween(x, bottom length.Length) {
	d.barStroke(x, bottom)
	d.text(plane.Point{X: x, Y: bottom - mm(1)}, drawing.TopCentre, lettering.Tiny, false, d.say.Say(message.New("100 mm")))
}

func (d *draft) barStroke(x, bottom length.Length) {
	d.line(drawing.CheckBar, x, bottom, x, bottom+barLength)
	d.line(drawing.CheckBar, x-barTick/2, bottom, x+barTick/2, bottom)
	d.line(drawing.CheckBar, x-barTick/2, bottom+barLength, x+barTick/2, bottom+barLength)
}

// uprightBar draws the upright check bar from its lower end; its name stands at
// the right of its middle in a strip of barStrip.
func (d *draft) uprightBar(x, bottom length.Length) {
	d.barStroke(x, bottom)
	for i, s := range []string{"100", "mm"} {
		at := plane.Point{X: x + mm(7)/10, Y: bottom + barLength/2 + mm(1) - length.Length(i)*lettering.Pitch(lettering.Tiny)}
		d.text(at, drawing.MiddleLeft, lettering.Tiny, false, s)
	}
}

// foot draws what stands at the bottom of every 1:1 page: the level check bar
// and what to do where it is off. It returns the y above it.
func (d *draft) foot() length.Length {
	d.acrossBar(d.area.Min.X, d.area.Min.Y+barTick/2)
	d.page.footFrom = d.area.Min.X + barLength + mm(2)
	note := message.New("Measure both bars before you drill. Not 100 mm? Print again at actual size (100 %), not fitted to the page, or drill by the figures.")
	top := d.area.Min.Y + footHeight - mm(1)
	d.paragraph(d.area.Min.X, top, d.area.Width(), lettering.Tiny, false, note)
	return d.area.Min.Y + footHeight
}
