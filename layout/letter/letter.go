// Package letter says where the letters and dimensions of a picture stand: for
// every renderer, screen and paper alike, which only paints what it is given. It
// knows nothing of fonts and devices but what Metrics and Style tell.
//
// Places are in the renderer's own units, x to the right and y up; a renderer
// whose y runs down hands in -y. A text has its place, and a short list of
// fall-backs behind it: beside what stands there, smaller, in its short form, cut
// if it is a name, and left out with its reason. A figure is never cut, as a part
// of one is another figure. No text stands over another; one that a line or a hole
// runs through asks for a ground. What is asked for in the same order gets the
// same places, in time that grows with the number of marks.
package letter

import (
	"fmt"
	"strings"

	"frontlay/layout/drawing"
	"frontlay/layout/mark"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Point is a place of the picture.
type Point struct{ X, Y float64 }

// Box is an area of the picture.
type Box struct{ Lo, Hi Point }

// Metrics measures the letters of a renderer. A size is the height of its
// capitals.
type Metrics interface {
	// Sizes are those in which a text of a height on paper can be written, the
	// largest first.
	Sizes(paper length.Length) []float64
	// Width is how wide a text of one line is.
	Width(s string, size float64, bold bool) float64
	// Reach is how far its letters reach above capitals and below the base line.
	Reach(s string, size float64) (above, below float64)
}

// Style says how a renderer draws dimensions.
type Style struct {
	Head   float64       // length of an arrow, or how far a tick reaches to each side of its end
	Half   float64       // half the width of an arrow or tick
	Above  bool          // figures stand above unbroken lines, those of upright ones turned, to be read from below and from the right (ISO 129-1); else flat in breaks of their lines
	Arrows bool          // heads are arrows, which stand outside where there is no room between the ends
	Past   float64       // how far extension lines go past the dimension line
	Gap    float64       // around a figure, and before an extension line
	Figure length.Length // height on paper of figures
	StepX  float64       // from one level of upright dimensions to the next
	StepY  float64       // likewise of those across
	Lines  bool          // the heights of fronts have dimension lines, not only their figures
	Edge   float64       // dimensions beside the run keep so far from the area's edge that they stay in sight; 0: they stay where they are
}

// Placing maps a drawing to the picture. Where Clip is not nil only what lies in
// it is shown.
type Placing struct {
	At   func(plane.Point) Point
	Clip *Box
}

// Variant tells how much of a text is written.
type Variant uint8

// The variants.
const (
	Whole Variant = iota
	Short         // what the text says to write in its place
	Cut           // the beginning of a name, with …
	Least         // the number of a front alone
)

// Line is one line of a text, from the beginning of its base line, which runs upwards
// where the text is turned.
type Line struct {
	At   Point
	Text string
}

// Text is a text that is written. Ground tells that something runs through it:
// the renderer clears Box first. Box holds all of its letters and is what a
// pointer hits.
type Text struct {
	Of      drawing.Tag
	Mark    drawing.Mark // that it is written for
	Lines   []Line
	Size    float64
	Bold    bool
	Turned  bool
	Box     Box
	Variant Variant
	Ground  bool
	On      *drawing.Rectangle // the filled one on which its middle stands; nil: it stands on none
}

// Ring is drawn around the number of a front: a circle, or as wide as a number of
// several digits needs, with round ends.
type Ring struct {
	Of  drawing.Tag
	Box Box
}

// Stroke is a straight line.
type Stroke struct{ From, To Point }

// Head is the end of a dimension: an arrow from its tip to Back, or a tick across
// its tip.
type Head struct{ Tip, Back Point }

// Dimension is a dimension as it is drawn. Text is the number of its figure among
// the texts, -1 where that has no room. Inside tells that it is the height of a
// front in which its figure stands: a renderer may leave its lines out.
type Dimension struct {
	Of      drawing.Tag
	Mark    drawing.Mark
	Strokes []Stroke // the dimension line and extension lines
	Heads   [2]Head
	Text    int
	Inside  bool
}

// Missing is a text or a figure that is not written, and why.
type Missing struct {
	Of   drawing.Tag
	Text string
	Why  Reason
}

// Reason tells why something is not written.
type Reason string

// The reasons.
const (
	TooLow    Reason = "its area is lower than letters"
	TooNarrow Reason = "its area is too narrow"
	NoRoom    Reason = "something is written there"
	OutOfView Reason = "its place is not in the picture"
)

// Written is what is written in a picture, and what is not.
type Written struct {
	Texts      []Text
	Rings      []Ring
	Dimensions []Dimension
	Leaders    []Stroke // from names to what they name
	Missing    []Missing
}

// At gives the number of the last text that stands at a point, or no farther from
// it than near; -1 where there is none.
func (w *Written) At(p Point, near float64) int {
	for i := len(w.Texts) - 1; i >= 0; i-- {
		if w.Texts[i].Box.grown(near, near).holds(p) {
			return i
		}
	}
	return -1
}

// Picture gathers what is drawn, and then says where letters stand.
type Picture struct {
	metrics Metrics
	style   Style
	say     message.Language
	area    Box
	// Strong tells what is chosen, whose figures are bold; nil: nothing is.
	Strong func(drawing.Subject) bool

	texts      []text
	captions   []caption
	dimensions []dimension
	drawings   int
	strokes    strokes
	floor      room // of the surfaces
	surfaces   []*drawing.Rectangle
	taken      room // letters and what is kept free
	rows       map[rowOf]row
	owners     []int // of the texts, the dimension whose figure one is, from 1
	out        Written
}

// New begins a picture whose letters stay in an area.
func New(m Metrics, s Style, say message.Language, area Box) *Picture {
	p := &Picture{metrics: m, style: s, say: say, area: area, rows: map[rowOf]row{}}
	cell := 4 * m.Sizes(s.Figure)[0]
	p.taken.begin(area, cell)
	p.floor.begin(area, cell)
	p.strokes.begin(area, cell)
	return p
}

// Keep keeps an area free of letters.
func (p *Picture) Keep(b Box) { p.taken.add(b) }

// First gives the number of the first of some boxes that lies in an area, over no
// letters, and with so much air to every line and hole, and keeps it; -1 where none
// does. It is for pages that say themselves where a text may stand.
func (p *Picture) First(in Box, air float64, boxes []Box) int {
	for i, b := range boxes {
		if b.within(in) && !p.taken.covers(b) && !p.strokes.through(b.grown(air, air), 0) {
			p.Keep(b)
			return i
		}
	}
	return -1
}

// Add adds a drawing: its lines and holes, which letters keep away from, and its
// texts, captions and dimensions.
func (p *Picture) Add(d *drawing.Drawing, to Placing) {
	p.drawings++
	for _, m := range d.Marks {
		p.mark(m, to)
	}
}

func (p *Picture) mark(m drawing.Mark, to Placing) {
	w := weightOf(drawing.TagOf(m).Meaning)
	switch v := m.(type) {
	case *drawing.Line:
		p.line(to, to.At(v.From), to.At(v.To), w)
	case *drawing.Rectangle:
		b := to.box(v.Rect)
		if v.Filled && b.touches(p.area) {
			p.floor.add(b)
			p.surfaces = append(p.surfaces, v)
		}
		p.frame(to, b, w)
	case *drawing.Circle:
		p.solid(to, to.box(v.Bounds()), hole)
	case *drawing.Hatch:
		p.solid(to, to.box(v.Rect), w)
	case *drawing.Spot:
		if b := to.box(v.Rect); v.Shape == mark.Outline {
			p.frame(to, b, w) // letters may stand in it
		} else {
			p.solid(to, b, w)
		}
	case *drawing.Text:
		if at := to.At(v.At); to.Clip == nil || to.Clip.holds(at) {
			t := text{Text: v, at: at, within: to.box(v.Within), drawing: p.drawings}
			if v.Turned {
				t.at.X += float64(v.Level) * p.style.StepX
			} else {
				down := float64(v.Level) * p.style.StepY
				t.at.Y, t.within = t.at.Y+down, t.within.moved(0, down)
			}
			if t.fixed() && v.Meaning == drawing.FindingMark { // a flag stands where it covers no other text
				t.flag, t.within = true, p.area
			}
			if v.Lead != nil {
				t.lead = to.At(*v.Lead)
			}
			p.texts = append(p.texts, t)
		}
	case *drawing.Caption:
		b := to.box(v.Face)
		if to.Clip != nil {
			b = b.common(*to.Clip)
		}
		if p.style.Edge > 0 { // what is seen of it
			b = b.common(p.area)
		}
		p.captions = append(p.captions, caption{Caption: v, face: b, drawing: p.drawings})
	case *drawing.Dimension:
		p.measure(v, to)
	}
}

func (p *Picture) line(to Placing, a, b Point, w weight) {
	s := strokeOf(a, b, w)
	if w > quiet && (to.Clip == nil || s.overlaps(*to.Clip)) && s.touches(p.area) {
		p.strokes.add(s)
	}
}

// frame adds the four edges of a box.
func (p *Picture) frame(to Placing, b Box, w weight) {
	p.line(to, b.Lo, Point{b.Hi.X, b.Lo.Y}, w)
	p.line(to, Point{b.Lo.X, b.Hi.Y}, b.Hi, w)
	p.line(to, b.Lo, Point{b.Lo.X, b.Hi.Y}, w)
	p.line(to, Point{b.Hi.X, b.Lo.Y}, b.Hi, w)
}

func (p *Picture) solid(to Placing, b Box, w weight) {
	if w > quiet && (to.Clip == nil || b.overlaps(*to.Clip)) && b.touches(p.area) {
		p.strokes.add(stroke{Box: b, weight: w})
	}
}

// box gives the place of a rectangle.
func (to Placing) box(r plane.Rect) Box {
	a, b := to.At(r.Min), to.At(r.Max)
	return Box{Point{min(a.X, b.X), min(a.Y, b.Y)}, Point{max(a.X, b.X), max(a.Y, b.Y)}}
}

// Write says where everything that was added stands: first the texts that have
// their place, then what is written on fronts, then dimensions, then the texts that
// can give way, in the order of the drawings. It is asked once.
func (p *Picture) Write() *Written {
	for i := range p.texts {
		if t := &p.texts[i]; t.fixed() {
			p.writeFixed(t)
		}
	}
	p.writeCaptions()
	p.writeDimensions()
	for i := range p.texts {
		if t := &p.texts[i]; !t.fixed() {
			p.writeFitted(t)
		}
	}
	p.grounds()
	return &p.out
}

// grounds finds the texts that something runs through. A dimension is broken at
// its own figure.
func (p *Picture) grounds() {
	for i := range p.out.Texts {
		t := &p.out.Texts[i]
		t.Ground = t.Of.Meaning == drawing.FindingMark || p.strokes.through(t.Box, p.owners[i])
		t.On = p.under(t.Box)
	}
}

// under is the last surface that holds the middle of a box.
func (p *Picture) under(b Box) *drawing.Rectangle {
	middle := Point{(b.Lo.X + b.Hi.X) / 2, (b.Lo.Y + b.Hi.Y) / 2}
	last := -1
	p.floor.near(Box{middle, middle}, func(i int) bool {
		if i > last && p.floor.all[i].holds(middle) {
			last = i
		}
		return true
	})
	if last < 0 {
		return nil
	}
	return p.surfaces[last]
}

// put writes a text of one line with its base line's beginning at a place.
func (p *Picture) put(t Text, at Point, s string) int {
	t.Lines = []Line{{at, s}}
	t.Box = p.ink(at, s, t.Size, t.Bold, t.Turned)
	return p.keep(t)
}

func (p *Picture) keep(t Text) int {
	beside := t.Box.grown(apart*t.Size, 0)
	if t.Turned {
		beside = t.Box.grown(0, apart*t.Size)
	}
	p.taken.add(beside)
	p.out.Texts, p.owners = append(p.out.Texts, t), append(p.owners, 0)
	return len(p.out.Texts) - 1
}

// apart is what two texts on a line keep between them, in heights of capitals.
const apart = 0.4

// ink is where the letters of a text are that begins at a place.
func (p *Picture) ink(at Point, s string, size float64, bold, turned bool) Box {
	above, below := p.metrics.Reach(s, size)
	wide := p.metrics.Width(s, size, bold)
	if turned {
		return Box{Point{at.X - size - above, at.Y}, Point{at.X + below, at.Y + wide}}
	}
	return Box{Point{at.X, at.Y - below}, Point{at.X + wide, at.Y + size + above}}
}

func (p *Picture) miss(of drawing.Tag, s string, why Reason) {
	p.out.Missing = append(p.out.Missing, Missing{of, s, why})
}

// Dump writes what is written as text, one text, ring or dimension a line: for
// tests to compare and people to read.
func (w *Written) Dump() string {
	var b strings.Builder
	box := func(v Box) string { return fmt.Sprintf("%.1f,%.1f %.1f,%.1f", v.Lo.X, v.Lo.Y, v.Hi.X, v.Hi.Y) }
	for i := range w.Texts {
		t := &w.Texts[i]
		var lines []string
		for _, l := range t.Lines {
			lines = append(lines, l.Text)
		}
		fmt.Fprintf(&b, "%s %q %s %.2f", t.Of.Meaning, strings.Join(lines, "\n"), box(t.Box), t.Size)
		for _, f := range []struct {
			on  bool
			say string
		}{{t.Bold, " bold"}, {t.Turned, " turned"}, {t.Variant != Whole, " " + t.Variant.String()}, {t.Ground, " ground"}} {
			if f.on {
				b.WriteString(f.say)
			}
		}
		if t.On != nil {
			fmt.Fprintf(&b, " on %s", t.On.Meaning)
		}
		b.WriteByte('\n')
	}
	for _, r := range w.Rings {
		fmt.Fprintf(&b, "ring %s\n", box(r.Box))
	}
	for i := range w.Dimensions {
		d := &w.Dimensions[i]
		figure := "no figure"
		if d.Text >= 0 {
			figure = fmt.Sprintf("%q", w.Texts[d.Text].Lines[0].Text)
		}
		fmt.Fprintf(&b, "dimension of %s %s: from %.1f,%.1f to %.1f,%.1f", d.Of.Of.Kind, figure, d.Heads[0].Tip.X, d.Heads[0].Tip.Y, d.Heads[1].Tip.X, d.Heads[1].Tip.Y)
		if d.Inside {
			b.WriteString(" inside")
		}
		b.WriteByte('\n')
	}
	for _, l := range w.Leaders {
		fmt.Fprintf(&b, "leader %.1f,%.1f %.1f,%.1f\n", l.From.X, l.From.Y, l.To.X, l.To.Y)
	}
	for _, m := range w.Missing {
		fmt.Fprintf(&b, "missing %s %q: %s\n", m.Of.Meaning, m.Text, m.Why)
	}
	return b.String()
}

// String is the variant's name, as dumps write it.
func (v Variant) String() string { return [...]string{"whole", "short", "cut", "least"}[v] }
