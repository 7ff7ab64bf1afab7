package view

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Figure names one figure of a hardware sheet, or the figures of one list. It is
// the Index of the subject of every mark that shows it.
type Figure int

// The figures that have a place on a sketch of the part.
const (
	NoFigure Figure = iota
	SideClearance
	RunnerLeastHeight
	RunnerClearanceBehind
	RunnerClearanceAbove
	RunnerSetback
	RunnerScrewReach
	RunnerLength
	ScrewBack
	ScrewUp
	ScrewDiameter
	ScrewDepth
	ConnectorInset
	ConnectorDiameter
	ConnectorDepth
	ConnectorAdjustUp
	ConnectorAdjustSide
	DrawerSideTop
	DrawerBackTop
	DrawerHoles
	DrawerRailTop
	DrawerRailHoles
	DrawerMoreHoles
	StabiliserHoles
	BottomUnderside
	BottomThickness
	BottomDeductWidth
	BottomDeductLength
	BackDeductWidth
	BackThickness
)

// OnSide tells whether a figure is shown on the sketch from the side; the others
// are on the one from the front.
func (f Figure) OnSide() bool {
	switch f {
	case RunnerClearanceBehind, RunnerSetback, RunnerLength, ScrewBack, ScrewUp, ScrewDiameter, ScrewDepth,
		ConnectorDepth, BottomDeductLength, BackThickness:
		return true
	default:
		return false
	}
}

// HardwareOptions choose what a sketch of a hardware sheet shows. Drawer, Runner
// and Screw are indexes; one that the sheet does not have shows none. Focus is
// the figure that a person is about: those too small to be shown always are
// shown while they have it.
type HardwareOptions struct {
	Drawer, Runner, Screw int
	Focus                 Figure
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
	focus  Figure
	drawer model.DrawerHeight
	runner model.RunnerLength
	screw  int

	floor   length.Length // the carcass bottom's upper face
	top     length.Length // of the drawer
	ceiling length.Length // what must stay free ends here
	height  length.Length // of the runner, seen from its end
}

func partOf(s *model.HardwareSheet, o HardwareOptions) part {
	p := part{sheet: s, focus: o.Focus, screw: o.Screw}
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
	p.floor = -drawn(s.Runner.LeastHeight)
	p.top = max(drawn(p.drawer.Top()), drawn(s.Bottom.Underside)+drawn(s.Bottom.Thickness))
	p.ceiling = p.top + drawn(s.Runner.ClearanceAbove)
	p.height = max(drawn(s.SideClearance), 10*length.Millimetre)
	if len(p.runner.Screws) > 0 {
		p.height = max(p.height, 2*drawn(p.runner.Screws[0].Up))
	}
	p.height = min(p.height, p.top)
	return p
}

// drawn cuts a figure to what can be drawn.
func drawn(v length.Length) length.Length { return min(max(v, 0), 2*length.Metre) }

// figure tags a mark with the figure that it shows.
func figure(m drawing.Meaning, f Figure) drawing.Tag {
	return drawing.Tag{Meaning: m, Of: drawing.Subject{Kind: drawing.SheetFigure, Index: int(f)}}
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
	return &drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label}, At: at, Anchor: a, Size: smallLetters, Say: message.New(text), Within: within}
}

// pointed names a part from beside it, with a line that leads to it.
func pointed(text string, from, to plane.Point) []drawing.Mark {
	a := drawing.Anchor{Y: 0.5}
	if from.X > to.X {
		a = drawing.Anchor{X: 1, Y: 0.5}
	}
	return []drawing.Mark{
		&drawing.Line{Tag: drawing.Tag{Meaning: drawing.Label}, From: from, To: to},
		name(text, to, a, plane.Rect{}),
	}
}

// measure dimensions a figure along x at the height line, or along y where
// upright. A figure of nothing is only shown while it has the focus.
func (p *part) measure(d *drawing.Drawing, f Figure, upright bool, from, to plane.Point, line length.Length, level int, value length.Length) {
	if value == 0 && p.focus != f {
		return
	}
	d.Add(&drawing.Dimension{Tag: figure(drawing.DimensionLine, f), From: from, To: to, Vertical: upright, Line: line, Level: level, Value: value})
}

// focused runs what only a figure with the focus shows.
func (p *part) focused(f Figure, show func()) {
	if p.focus == f {
		show()
	}
}

func at(x, y length.Length) plane.Point { return plane.Point{X: x, Y: y} }
