package sheet

import (
	"strings"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// CalibrationBars are the lengths of the two bars on the calibration page of a
// paper: as long as the page allows, in whole centimetres or inches. A roll's page is
// as long as it is wide.
func CalibrationBars(o Options) (across, up length.Length) {
	o = o.calibrating()
	area, step := printable(o.Paper.Width, o.Paper.Height, o), o.rule().step
	across = (area.Width() - mm(16)).FloorTo(step)
	up = (area.Height() - calibrationHead).FloorTo(step)
	return across, up
}

// calibrationHead is what the words take above and below the upright bar.
const calibrationHead = 58 * length.Millimetre

// calibrating is the options of a page that measures the printer: nothing is
// corrected.
func (o Options) calibrating() Options {
	o = o.with()
	o.Correction = Correction{}
	if o.Paper.Roll() {
		o.Paper.Height = o.Paper.Width
	}
	return o
}

// Calibration is a page with long bars in both directions and a square whose
// diagonals prove the right angle. What a rule says of the bars goes to
// Measured.
func Calibration(o Options) Document {
	o = o.calibrating()
	title := message.New("Printer calibration")
	d := newDraft(CalibrationPage, title, o.Paper.Width, o.Paper.Height, o)
	across, up := CalibrationBars(o)
	width := d.area.Width()
	y := d.paragraph(d.area.Min.X, d.area.Max.Y, width, lettering.Large, true, title) - mm(1)
	for _, m := range []message.Message{
		message.New("1. Print this page on %v at actual size (100 %%), not fitted to the page.", o.Paper.Name),
		message.New("2. Measure both bars with a steel rule, from the middle of the end line to the middle of the other, to %v. A rule of wood or plastic may itself be off.", d.rule.little(d.rule.fine, d.say)),
		message.New("3. Type both lengths in the program. It keeps the correction under the names of printer and paper."),
		message.New("4. Measure both diagonals of the square: if they differ by more than %v, the paper runs askew; mend that first.", d.rule.little(2*d.rule.fine, d.say)),
	} {
		y = d.paragraph(d.area.Min.X, y, width, lettering.Small, false, m) - mm(1)
	}
	left, bottom := d.area.Min.X+mm(3), d.area.Min.Y+mm(8)
	d.bar(left, bottom, across, false)
	d.bar(left, bottom, up, true)
	d.square(plane.R(left, bottom, left+across, bottom+up))
	return Document{Title: title, Say: o.Say, Pages: numbered(d.finish(), o)}
}

func numbered(p Page, o Options) []Page {
	pages := []Page{p}
	number(pages, o)
	return pages
}

// bar draws a bar with end lines, a tick every centimetre or inch, and its length.
func (d *draft) bar(left, bottom, size length.Length, upright bool) {
	at := func(along, across length.Length) plane.Point {
		if upright {
			return plane.Point{X: left + across, Y: bottom + along}
		}
		return plane.Point{X: left + along, Y: bottom + across}
	}
	stroke := func(a, b plane.Point) { d.line(drawing.CheckBar, a.X, a.Y, b.X, b.Y) }
	stroke(at(0, 0), at(size, 0))
	for x := length.Length(0); x <= size; x += d.rule.step {
		tick := mm(2)
		if x == 0 || x == size {
			tick = mm(3)
		}
		stroke(at(x, -tick), at(x, tick))
	}
	blank := message.New("%v; my rule says: __________", d.rule.name(size, d.say))
	if upright {
		d.text(plane.Point{X: left + mm(5), Y: bottom + size - mm(2)}, drawing.Anchor{Y: 1}, lettering.Small, true, d.say.Say(blank))
		return
	}
	d.text(plane.Point{X: left + size - mm(2), Y: bottom + mm(4)}, drawing.Anchor{X: 1}, lettering.Small, true, d.say.Say(blank))
}

// square draws a square with its diagonals in the middle of an area.
func (d *draft) square(r plane.Rect) {
	size := min(min(r.Width(), r.Height())-mm(40), mm(205)).FloorTo(d.rule.step)
	c := r.Centre()
	q := plane.R(c.X-size/2, c.Y-size/2, c.X+size/2, c.Y+size/2)
	d.box(drawing.CheckBar, q)
	d.line(drawing.HoleCross, q.Min.X, q.Min.Y, q.Max.X, q.Max.Y)
	d.line(drawing.HoleCross, q.Min.X, q.Max.Y, q.Max.X, q.Min.Y)
	d.text(plane.Point{X: c.X, Y: q.Max.Y + mm(2)}, drawing.Anchor{X: 0.5}, lettering.Small, false,
		d.say.Say(message.New("square of %v: are both diagonals equal?", d.rule.name(size, d.say))))
}

// rule is how bars are measured.
type rule struct {
	bar  length.Length // what a check bar measures when the print is true
	step length.Length // calibration bars are whole ones of these
	fine length.Length // as exactly as a rule is read
	inch bool
}

// rule is that for the page's bars: in inches where the project counts in inches, and
// on paper of American sizes, beside which a rule in inches lies; else in millimetres.
func (o Options) rule() rule {
	if o.Say.Unit.Inches() || o.Paper.american() {
		return rule{bar: 4 * length.Inch, step: length.Inch, fine: length.Inch64th, inch: true}
	}
	return rule{bar: 100 * length.Millimetre, step: length.Centimetre, fine: length.Millimetre / 4}
}

// RuleUnit is the unit of the bars of a page, in which bare numbers read from them are.
func (o Options) RuleUnit() length.Unit {
	switch {
	case !o.with().rule().inch:
		return length.UnitMM
	case o.Say.Unit.Inches():
		return o.Say.Unit
	}
	return length.UnitInchDecimal
}

// little is a small part of a rule as one reads it there.
func (r rule) little(size length.Length, say message.Language) string {
	if r.inch {
		return length.UnitInch.WithSymbol(size)
	}
	return say.Length(size)
}

// name is the length of a bar as it is written at it: in inches and millimetres where
// the bar is in inches and the project is not.
func (r rule) name(size length.Length, say message.Language) string {
	if !r.inch || say.Unit.Inches() {
		return say.Length(size)
	}
	return length.UnitInch.WithSymbol(size) + " = " + say.Length(size)
}

const (
	barTick    = 3 * length.Millimetre // length of the ticks at a bar's ends
	footHeight = 14 * length.Millimetre
	barStrip   = 9 * length.Millimetre // width that the upright bar takes
	barSide    = 7 * length.Millimetre // of which at its right, for its name
)

// acrossBar draws the level check bar from its left end.
func (d *draft) acrossBar(left, y length.Length) {
	long := d.rule.bar
	d.line(drawing.CheckBar, left, y, left+long, y)
	d.line(drawing.CheckBar, left, y-barTick/2, left, y+barTick/2)
	d.line(drawing.CheckBar, left+long, y-barTick/2, left+long, y+barTick/2)
	d.text(plane.Point{X: left + long/2, Y: y + mm(1)/2}, drawing.Anchor{X: 0.5}, lettering.Small, false, d.rule.name(long, d.say))
}

// barFoot is what the name of an upright check bar takes below it.
const barFoot = 4 * length.Millimetre

// barBetween draws the upright check bar between two templates, from its lower
// end; its name stands below it, where it runs into no figure of theirs.
func (d *draft) barBetween(x, bottom length.Length) {
	d.barStroke(x, bottom)
	d.text(plane.Point{X: x, Y: bottom - mm(1)}, drawing.Anchor{X: 0.5, Y: 1}, lettering.Small, false, strings.Join(d.barName(), " "))
}

// barName is the figure and the unit of an upright check bar, beside which there is no room
// for what that is in another unit.
func (d *draft) barName() []string {
	return strings.SplitN(d.rule.name(d.rule.bar, d.say), " ", 3)[:2]
}

func (d *draft) barStroke(x, bottom length.Length) {
	top := bottom + d.rule.bar
	d.line(drawing.CheckBar, x, bottom, x, top)
	d.line(drawing.CheckBar, x-barTick/2, bottom, x+barTick/2, bottom)
	d.line(drawing.CheckBar, x-barTick/2, top, x+barTick/2, top)
}

// uprightBar draws the upright check bar from its lower end; its name stands at
// the right of its middle in a strip of barStrip.
func (d *draft) uprightBar(x, bottom length.Length) {
	d.barStroke(x, bottom)
	for i, s := range d.barName() {
		at := plane.Point{X: x + mm(7)/10, Y: bottom + d.rule.bar/2 + mm(1) - length.Length(i)*lettering.Pitch(lettering.Small)}
		d.text(at, drawing.Anchor{Y: 0.5}, lettering.Small, false, s)
	}
}

// foot draws what stands at the bottom of every 1:1 page: the level check bar
// and what to do where it is off. It returns the y above it.
func (d *draft) foot() length.Length {
	d.acrossBar(d.area.Min.X, d.area.Min.Y+barTick/2)
	d.page.footFrom = d.area.Min.X + d.rule.bar + mm(2)
	note := message.New("Measure both bars before you drill. Not %v? Print again at 100 %%, not fitted to the page, or drill by the figures.", d.rule.name(d.rule.bar, d.say))
	top := d.area.Min.Y + footHeight - mm(1)
	d.paragraph(d.area.Min.X, top, d.area.Width(), lettering.Small, false, note)
	return d.area.Min.Y + footHeight
}
