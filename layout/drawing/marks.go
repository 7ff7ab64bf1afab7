// Package drawing is a picture as data: a closed set of marks in exact lengths,
// x to the right and y up, each with a meaning and the thing it stands for.
// Screen, PDF, SVG and DXF only render drawings; pens and colours are theirs.
package drawing

import (
	"frontlay/layout/mark"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Drawing is a picture. Marks are painted in order, later ones over earlier.
type Drawing struct {
	Title message.Message
	Marks []Mark
}

// Meaning tells what a mark says, so that a renderer can choose its pen.
type Meaning uint8

// The meanings a mark can have.
const (
	Carcass       Meaning = iota // edge of the carcass, partitions, plinth
	Face                         // a front's outline and surface
	NichePart                    // an open niche's outline
	PanelPart                    // a fixed panel's outline and surface
	Hidden                       // an edge behind something
	DrawerPart                   // drawer sides, back, rails
	DrawerBottom                 // the drawer bottom board
	RunnerPart                   // the runner
	HoleEdge                     // a hole's true circle
	HoleCross                    // a hole's centre cross
	CentreLine                   // a line of centres
	DimensionLine                // dimensions and their figures
	Label                        // names and notes
	CoverBand                    // the cover: front reaching past the drawer bottom
	FindingMark                  // where a finding is, and its flag
	Register                     // an edge to lay on the panel, a registration cross
	CheckBar                     // a bar to measure
	Frame                        // page frame, title block, table rule
	Cut                          // where to cut or fold paper
	Grid                         // background grid
	Grip                         // nothing to see: a place that can be taken hold of
	Note                         // a remark beside a name or a figure, which counts for less
	Plinth                       // front of a plinth
	Tint                         // behind what is selected
	OverlayBand                  // the front lying on the edge of the carcass, seen through it
	Covered                      // a front that covers its drawer bottom enough, as a sign at its lower edge
	HandlePart                   // a handle or knob, seen from the room
)

// SubjectKind names the kind of thing that a mark stands for.
type SubjectKind uint8

// The kinds of things that a mark can stand for.
const (
	Nothing SubjectKind = iota
	CabinetThing
	BayThing
	FrontThing
	DivisionThing  // the gap above the front at Place
	PartitionThing // the partition at the right of the bay at Place
	HoleThing      // Index counts the front's holes
	RunnerThing
	DrawerThing
	FrontHeight   // a dimension that can be typed
	CabinetWidth  // likewise
	CabinetHeight // likewise
	BayWidth      // likewise
	SheetFigure   // a figure of a hardware sheet or a front board; Figure tells which
	FrontName     // where a front's name or number is written
)

// Subject is the thing a mark stands for.
type Subject struct {
	Kind  SubjectKind
	Place model.Place
	Index int
	// Figure is the path of a figure of a hardware sheet, without indexes, or in a
	// front board.
	Figure string
}

// Severity tells how bad it is what the mark of a finding tells of.
type Severity uint8

// The severities, the worst first; the zero value is that of what has no finding.
const (
	OfNothing Severity = iota
	OfError
	OfWarning
	OfAdvice
	OfAccepted // the user has said why it may stay
)

// Worse gives the worse one of two severities.
func (s Severity) Worse(t Severity) Severity {
	if s == OfNothing || t != OfNothing && t < s {
		return t
	}
	return s
}

// Tag is what every mark carries. Severity is that of a finding in its marks, and
// in the name of a front that of the worst finding about it, which fills the ring
// around its number.
type Tag struct {
	Meaning  Meaning
	Of       Subject
	Severity Severity
}

// Mark is one of Line, Rectangle, Circle, Text, Caption, Dimension, Hatch and Spot;
// the set is closed.
type Mark interface {
	// Bounds is the least rectangle in drawing lengths that holds the mark's
	// geometry; letters and arrows have a fixed size on paper and do not count.
	Bounds() plane.Rect
	tag() *Tag
}

// Line is a straight line.
type Line struct {
	Tag
	From, To plane.Point
	Dashed   bool
}

// Rectangle is an axis-parallel rectangle; Filled paints its surface too. Board, where
// it is given, is what is seen there: paper and picture paint it in its tone, with its
// grain.
type Rectangle struct {
	Tag
	Rect   plane.Rect
	Filled bool
	Dashed bool
	Board  *model.Board
}

// Circle is a circle.
type Circle struct {
	Tag
	Centre plane.Point
	Radius length.Length
}

// Anchor tells which part of a text stands at its point: across 0 for its left
// end, 0.5 for its middle and 1 for its right end, up 0 for its base line, 0.5 for
// the middle of its capitals and 1 for their top.
type Anchor struct{ X, Y float64 }

// Text is a text of one line. Size is its letter height on paper, which does
// not scale with the drawing; renderers to a screen choose their own for the
// same step. Within, where it is not empty, is the area that the text should
// stay in: a renderer shortens or leaves it out where it does not fit. Least
// marks the names of things: those of one drawing get one size on paper, and
// where a name has no room at that size, Least is written in its place.
type Text struct {
	Tag
	At     plane.Point
	Anchor Anchor
	Size   length.Length
	Say    message.Message
	Short  message.Message // what to write where Say does not fit; empty: Say shortened
	Least  message.Message // what stands for a name that has no room on paper, such as its number
	Bold   bool
	Within plane.Rect
	Turned bool         // written upwards, to be read from the right; only where Within is empty
	Level  int          // steps of dimensions that it is moved up or, below zero, down; to the right or the left where it is turned
	Yields bool         // it is left out where another text stands; only where Within is empty
	Lead   *plane.Point // where a line leads to from At, to what the text names; nil: none does
}

// Caption is what is written on the face of a front, on one line of it: its number
// in a ring, its name, a note, and at the right its height. The line is in the
// middle, or near the upper edge where Top is set and it has room there. Size is
// the letter height on paper. The height is one that can be typed.
type Caption struct {
	Tag
	Face      plane.Rect
	Top       bool
	Size      length.Length
	Number    int
	Name      message.Message // empty: it has none of its own
	Note      message.Message
	NoteShort message.Message // where Note has no room
	Height    length.Length   // 0: it is not written
	Least     length.Length   // what has no room so high is left out, but the number; 0: it is written lower, a name cut
}

// Sized is the subject of a caption's height.
func (m *Caption) Sized() Subject { return Subject{Kind: FrontHeight, Place: m.Of.Place} }

// Dimension is a measured distance from From to To along one axis. Its line is
// at the coordinate Line (the y of a horizontal one, the x of a vertical one),
// moved Level steps further: above zero up or to the right, below zero down or
// to the left; the step is DimensionStep on paper, else the renderer's. Value is
// what is written, or Say where it has room.
type Dimension struct {
	Tag
	From, To plane.Point
	Vertical bool
	Line     length.Length
	Level    int
	Value    length.Length
	Prefix   string // Ø, or empty
	Say      message.Message
}

// Hatch is an area filled with slanted lines: rising to the right, or Falling;
// Close ones lie at half the distance. Parts that touch differ in one of the two
// (ISO 128, from memory).
type Hatch struct {
	Tag
	Rect    plane.Rect
	Falling bool
	Close   bool
}

// Spot is a place that a finding speaks of. However small it is drawn, a renderer
// keeps it so large that it is seen; its pattern tells the severity without
// colour. Rect can be flat. Chosen is that of the finding that is looked at, which
// is drawn over the others.
type Spot struct {
	Tag
	Shape  mark.Shape
	Rect   plane.Rect
	Chosen bool
}

func (m *Line) tag() *Tag      { return &m.Tag }
func (m *Rectangle) tag() *Tag { return &m.Tag }
func (m *Circle) tag() *Tag    { return &m.Tag }
func (m *Text) tag() *Tag      { return &m.Tag }
func (m *Caption) tag() *Tag   { return &m.Tag }
func (m *Dimension) tag() *Tag { return &m.Tag }
func (m *Hatch) tag() *Tag     { return &m.Tag }
func (m *Spot) tag() *Tag      { return &m.Tag }

// TagOf gives a mark's meaning and subject.
func TagOf(m Mark) Tag { return *m.tag() }

// Bounds of a line.
func (m *Line) Bounds() plane.Rect { return span(m.From, m.To) }

// Bounds of a rectangle.
func (m *Rectangle) Bounds() plane.Rect { return m.Rect }

// Bounds of a circle.
func (m *Circle) Bounds() plane.Rect {
	return plane.Rect{Min: m.Centre, Max: m.Centre}.Grow(m.Radius)
}

// Bounds of a text: its point.
func (m *Text) Bounds() plane.Rect { return plane.Rect{Min: m.At, Max: m.At} }

// Bounds of a caption: the face of its front.
func (m *Caption) Bounds() plane.Rect { return m.Face }

// Bounds of a dimension: its two points and its line, without its level.
func (m *Dimension) Bounds() plane.Rect {
	r := span(m.From, m.To)
	if m.Vertical {
		r.Min.X, r.Max.X = min(r.Min.X, m.Line), max(r.Max.X, m.Line)
	} else {
		r.Min.Y, r.Max.Y = min(r.Min.Y, m.Line), max(r.Max.Y, m.Line)
	}
	return r
}

// Bounds of a hatch.
func (m *Hatch) Bounds() plane.Rect { return m.Rect }

// Bounds of a spot.
func (m *Spot) Bounds() plane.Rect { return m.Rect }

func span(a, b plane.Point) plane.Rect {
	return plane.R(min(a.X, b.X), min(a.Y, b.Y), max(a.X, b.X), max(a.Y, b.Y))
}

// Bounds is the least rectangle that holds all marks; empty for none.
func (d *Drawing) Bounds() plane.Rect {
	var r plane.Rect
	for i, m := range d.Marks {
		if i == 0 {
			r = m.Bounds()
		} else {
			r = r.Union(m.Bounds())
		}
	}
	return r
}

// Add appends marks.
func (d *Drawing) Add(m ...Mark) { d.Marks = append(d.Marks, m...) }

// Plain is a drawing whose captions are texts and dimensions, for renderers that
// write only those.
func (d *Drawing) Plain() *Drawing {
	plain := &Drawing{Title: d.Title}
	for _, m := range d.Marks {
		if c, ok := m.(*Caption); ok {
			plain.Add(c.plain()...)
		} else {
			plain.Add(m)
		}
	}
	return plain
}

// plain is a caption as the name in the middle, or at the top, and the height as a
// dimension in the right part of the front, left of where connectors have their
// holes.
func (m *Caption) plain() []Mark {
	f := m.Face
	x := f.Max.X - max(f.Width()/8, min(f.Width()/3, 100*length.Millimetre))
	within := f
	within.Max.X = x - f.Width()/16 // the height's figure stands there
	name := &Text{
		Tag: m.Tag, At: within.Centre(), Anchor: Anchor{X: 0.5, Y: 0.5}, Size: m.Size, Bold: true,
		Say: message.New("%v", m.Number), Least: message.New("%v", m.Number), Within: within,
	}
	if !m.Name.Empty() {
		name.Say = message.New("%v  %v", m.Number, m.Name)
	}
	if m.Top {
		name.At.Y, name.Anchor.Y = f.Max.Y, 1
	}
	all := []Mark{name, &Dimension{
		Tag:  Tag{Meaning: DimensionLine, Of: m.Sized()},
		From: plane.Point{X: x, Y: f.Min.Y}, To: plane.Point{X: x, Y: f.Max.Y}, Vertical: true, Line: x, Value: m.Height,
	}}
	if !m.Note.Empty() {
		all = append(all, &Text{
			Tag: Tag{Meaning: Note, Of: m.Of}, At: plane.Point{X: x, Y: f.Centre().Y}, Anchor: Anchor{X: 0.5, Y: 0.5},
			Size: 2500 * length.Micrometre, Say: m.Note, Short: m.NoteShort, Within: f,
		})
	}
	return all
}
