package view

import (
	"slices"
	"strconv"
	"strings"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// HardwareOptions choose what a sketch of a hardware sheet shows. Drawer, Runner
// and Screw are indexes; one that the sheet does not have shows none. Focus is
// the path of the figure that a person is about, without indexes, such as
// drawers[].side_top: those too small to be shown always are shown while they have
// it. Marks that show a figure have its path in their subject; one that ends in []
// stands for all figures of an item of that list.
type HardwareOptions struct {
	Drawer, Runner, Screw int
	Focus                 string
}

// ShowsFigure tells that a mark shows the figure at a path.
func ShowsFigure(m drawing.Mark, path string) bool {
	of := drawing.TagOf(m).Of
	return of.Kind == drawing.SheetFigure && path != "" &&
		(of.Figure == path || strings.HasSuffix(of.Figure, "[]") && strings.HasPrefix(path, of.Figure+"."))
}

// OnSide tells whether the figure that has the focus is shown on the sketch from
// the side rather than on the one from the front, and whether it is on any.
func OnSide(s *model.HardwareSheet, o HardwareOptions) (side, shown bool) {
	shows := func(d *drawing.Drawing) bool {
		return slices.ContainsFunc(d.Marks, func(m drawing.Mark) bool { return ShowsFigure(m, o.Focus) })
	}
	if shows(HardwareFront(s, o)) {
		return false, true
	}
	side = shows(HardwareSide(s, o))
	return side, side
}

// Boards of the sketches, and the length and height where the sheet has none
// yet. They are for the picture only, so they carry no dimension.
const (
	sketchBoard  = 18 * length.Millimetre
	sketchBack   = 8 * length.Millimetre
	sketchRunner = 400 * length.Millimetre
	sketchTop    = 90 * length.Millimetre
)

// part is what both sketches know of the sheet: y is above the runner's lower
// edge. Figures out of reason, which a person may be about to correct, are cut
// to what can be drawn; what is written beside them is not.
type part struct {
	sheet  *model.HardwareSheet
	rows   []figure.Row
	items  *strings.Replacer // puts the indexes of what is shown into a path
	focus  string
	drawer model.DrawerHeight
	runner model.RunnerLength
	screw  int

	floor   length.Length // the carcass bottom's upper face
	top     length.Length // of the drawer
	ceiling length.Length // what must stay free ends here
	height  length.Length // of the runner, seen from its end
}

func partOf(s *model.HardwareSheet, o HardwareOptions) part {
	index := func(i int) string { return "[" + strconv.Itoa(i) + "]" }
	p := part{
		sheet: s, rows: figure.Sheet(s), focus: o.Focus, screw: o.Screw,
		items: strings.NewReplacer("drawers[]", "drawers"+index(o.Drawer), "lengths[]", "lengths"+index(o.Runner), "screws[]", "screws"+index(o.Screw)),
	}
	if o.Drawer >= 0 && o.Drawer < len(s.Drawers) {
		p.drawer = s.Drawers[o.Drawer]
	} else {
		p.drawer.SideTop = sketchTop
	}
	if o.Runner >= 0 && o.Runner < len(s.Runner.Lengths) {
		p.runner = s.Runner.Lengths[o.Runner]
	} else {
		p.runner.Length = sketchRunner
	}
	p.floor = -p.drawn("runner.least_height")
	p.top = max(drawn(p.drawer.Top()), p.underside()+p.thickness())
	p.ceiling = p.top + p.drawn("runner.clearance_above")
	p.height = max(p.drawn("side_clearance"), 10*length.Millimetre)
	if len(p.runner.Screws) > 0 {
		p.height = max(p.height, 2*drawn(p.runner.Screws[0].Up))
	}
	p.height = min(p.height, p.top)
	return p
}

// size is the figure at a path, of the items that are shown; 0 where there is no
// such item.
func (p *part) size(path string) length.Length {
	v, _ := p.row(path).Get()
	return v
}

// row is that of a size; one without value and bounds where there is none.
func (p *part) row(path string) *figure.Size {
	if row, ok := figure.Find(p.rows, p.items.Replace(path)); ok {
		if size, ok := row.Value.(*figure.Size); ok {
			return size
		}
	}
	return &figure.Size{Get: func() (length.Length, bool) { return 0, false }}
}

// drawn is the figure at a path cut to what its row allows, and to what can be
// drawn.
func (p *part) drawn(path string) length.Length {
	row := p.row(path)
	v, _ := row.Get()
	return min(max(v, row.Least, 0), row.Greatest)
}

// drawn cuts a size of the sheet to what can be drawn.
func drawn(v length.Length) length.Length { return min(max(v, 0), 2*length.Metre) }

// shows tags a mark with the path of the figure that it shows.
func shows(m drawing.Meaning, path string) drawing.Tag {
	return drawing.Tag{Meaning: m, Of: drawing.Subject{Kind: drawing.SheetFigure, Figure: path}}
}

// box is a rectangle that shows no figure of its own.
func box(m drawing.Meaning, r plane.Rect, filled bool) *drawing.Rectangle {
	return &drawing.Rectangle{Tag: drawing.Tag{Meaning: m}, Rect: r, Filled: filled}
}

// board is a cut board: its outline with a hatch.
func board(r plane.Rect) []drawing.Mark {
	return []drawing.Mark{box(drawing.Carcass, r, true), &drawing.Hatch{Tag: drawing.Tag{Meaning: drawing.Carcass}, Rect: r}}
}

// name writes what a part is, where there is room for it.
func name(text string, at plane.Point, a drawing.Anchor, within plane.Rect) *drawing.Text {
	return &drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label}, At: at, Anchor: a, Size: smallLetters, Say: message.New(text), Short: shortNames[text], Within: within}
}

// shortNames are of parts of a drawer, where it is plain that they are.
var shortNames = map[string]message.Message{
	"drawer side": message.New("side"), "drawer back": message.New("rear"), "drawer bottom": message.New("bottom board"),
}

// pointed names a part from beside it, with a line that leads to it.
func pointed(text string, from, to plane.Point) *drawing.Text {
	m := name(text, to, drawing.Anchor{Y: 0.5}, plane.Rect{})
	m.Lead = &from
	if from.X > to.X {
		m.Anchor.X = 1
	}
	return m
}

// measure dimensions the figure at a path along x at the height line, or along y
// where upright. A figure of nothing is only shown while it has the focus.
func (p *part) measure(d *drawing.Drawing, path string, upright bool, from, to plane.Point, line length.Length, level int) {
	p.measured(d, path, upright, from, to, line, level, p.size(path))
}

// measured dimensions a value of the figure at a path, which may be one of several.
func (p *part) measured(d *drawing.Drawing, path string, upright bool, from, to plane.Point, line length.Length, level int, value length.Length) *drawing.Dimension {
	m := &drawing.Dimension{Tag: shows(drawing.DimensionLine, path), From: from, To: to, Vertical: upright, Line: line, Level: level, Value: value}
	if value != 0 || ShowsFigure(m, p.focus) {
		d.Add(m)
	}
	return m
}

// focused runs what only a figure with the focus shows.
func (p *part) focused(path string, show func()) {
	if ShowsFigure(&drawing.Line{Tag: shows(drawing.DimensionLine, path)}, p.focus) {
		show()
	}
}

func at(x, y length.Length) plane.Point { return plane.Point{X: x, Y: y} }
