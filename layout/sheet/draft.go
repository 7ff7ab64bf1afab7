package sheet

import (
	"slices"
	"strings"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// draft is a page while it is being laid out: its own marks in page
// coordinates at 1:1, and the drawings placed on it.
type draft struct {
	page  Page
	own   *drawing.Drawing
	say   message.Language
	area  plane.Rect // inside the margins
	wraps wraps
	rule  rule // by which its bars are measured
	// Which of its own marks tell what ≈ means: from the one up to the other.
	rounded, roundedEnd int
}

// wraps remembers wrapped texts: the same words stand on many sheets of a job.
type wraps map[wrapKey][]string

type wrapKey struct {
	text        string
	size, width length.Length
	bold        bool
}

func (w wraps) wrap(s string, size length.Length, bold bool, width length.Length) []string {
	key := wrapKey{s, size, width, bold}
	lines, ok := w[key]
	if !ok {
		lines = lettering.Wrap(s, size, bold, width)
		if w != nil {
			w[key] = lines
		}
	}
	return lines
}

func newDraft(kind Part, title message.Message, width, height length.Length, o Options) *draft {
	area := printable(width, height, o)
	_, correction := o.on(width, height)
	return &draft{
		page:  Page{Width: width, Height: height, Kind: string(kind), Title: title, Correction: correction, Inside: area},
		own:   &drawing.Drawing{Title: title},
		say:   o.Say,
		area:  area,
		wraps: o.wraps,
		rule:  o.rule(),
	}
}

// printable is the part of the paper that the printer reaches, before a
// correction moves what stands there.
func printable(width, height length.Length, o Options) plane.Rect {
	margins, correction := o.on(width, height)
	across, up := correction.Factors()
	left, right := shrink(margins.Side, width-margins.Side, across)
	bottom, top := shrink(margins.End, height-margins.End, up)
	return plane.R(left, bottom, right, top)
}

// alongRoll is how long a piece of a roll must be to leave the given length
// between its margins, whichever side of the page that is.
func (o Options) alongRoll(inside length.Length) length.Length {
	_, up := o.Correction.Factors()
	return length.Length(float64(inside)*max(up, 1)) + 2*o.Margins.End + 4
}

// acrossRoll is how wide a roll must be likewise.
func (o Options) acrossRoll(inside length.Length) length.Length {
	across, _ := o.Correction.Factors()
	return length.Length(float64(inside)*max(across, 1)) + 2*o.Margins.Side + 4
}

// finish gives the page, its own marks above the placed drawings. What ≈ means is
// left out where no figure of the page has one.
func (d *draft) finish() Page {
	p := d.page
	if d.roundedEnd > d.rounded {
		note := slices.Clone(d.own.Marks[d.rounded:d.roundedEnd])
		d.own.Marks = slices.Delete(d.own.Marks, d.rounded, d.roundedEnd)
		if rounds(d.own, d.say) || slices.ContainsFunc(p.Placed, func(q drawing.Placed) bool { return rounds(q.Drawing, d.say) }) {
			d.own.Marks = slices.Insert(d.own.Marks, d.rounded, note...)
		}
		d.roundedEnd = d.rounded
	}
	p.Placed = append(p.Placed, drawing.Placed{Drawing: d.own, ScaleNum: 1, ScaleDen: 1})
	return p
}

// rounds tells that a drawing has a figure that is written rounded.
func rounds(d *drawing.Drawing, say message.Language) bool {
	return slices.ContainsFunc(d.Marks, func(m drawing.Mark) bool {
		switch m := m.(type) {
		case *drawing.Text:
			return strings.Contains(say.Say(m.Say), "≈")
		case *drawing.Dimension:
			return strings.Contains(say.Figure(m.Value), "≈")
		}
		return false
	})
}

func (d *draft) place(p drawing.Placed) { d.page.Placed = append(d.page.Placed, p) }

func (d *draft) line(m drawing.Meaning, x1, y1, x2, y2 length.Length) {
	d.own.Add(&drawing.Line{Tag: drawing.Tag{Meaning: m}, From: plane.Point{X: x1, Y: y1}, To: plane.Point{X: x2, Y: y2}})
}

func (d *draft) dashed(m drawing.Meaning, x1, y1, x2, y2 length.Length) {
	d.own.Add(&drawing.Line{Tag: drawing.Tag{Meaning: m}, From: plane.Point{X: x1, Y: y1}, To: plane.Point{X: x2, Y: y2}, Dashed: true})
}

func (d *draft) box(m drawing.Meaning, r plane.Rect) {
	d.own.Add(&drawing.Rectangle{Tag: drawing.Tag{Meaning: m}, Rect: r})
}

func (d *draft) text(at plane.Point, a drawing.Anchor, size length.Length, bold bool, s string) {
	if s == "" {
		return
	}
	d.own.Add(&drawing.Text{
		Tag: drawing.Tag{Meaning: drawing.Label}, At: at, Anchor: a, Size: size,
		Say: said(s), Bold: bold,
	})
}

// said wraps a text that is already in the user's language.
func said(s string) message.Message { return message.New("%v", s) }

// lines writes lines of text downwards, the first line's top at top, and gives
// the y below the last.
func (d *draft) lines(left, top, size length.Length, bold bool, lines []string) length.Length {
	for _, s := range lines {
		d.text(plane.Point{X: left, Y: top}, drawing.Anchor{Y: 1}, size, bold, s)
		top -= lettering.Pitch(size)
	}
	return top
}

// paragraph writes a message wrapped to the width, its top at top, and gives
// the y below it.
func (d *draft) paragraph(left, top, width, size length.Length, bold bool, m message.Message) length.Length {
	return d.lines(left, top, size, bold, d.wraps.wrap(d.say.Say(m), size, bold, width))
}

// heightOf is what paragraph takes.
func (d *draft) heightOf(width, size length.Length, bold bool, m message.Message) length.Length {
	n := len(d.wraps.wrap(d.say.Say(m), size, bold, width))
	return length.Length(n) * lettering.Pitch(size)
}

// dimension draws a measured distance between two points of the page; nothing
// where it is zero.
func (d *draft) dimension(from, to plane.Point, vertical bool, line, value length.Length) {
	if value == 0 {
		return
	}
	d.own.Add(&drawing.Dimension{
		Tag: drawing.Tag{Meaning: drawing.DimensionLine}, From: from, To: to,
		Vertical: vertical, Line: line, Value: value.Abs(),
	})
}
