package view

import (
	"slices"

	"frontlay/layout/drawing"
	"frontlay/model/length"
)

// widths dimensions below the sketch what is measured across, and above it what
// only a figure with the focus shows.
func (p *frontPart) widths(d *drawing.Drawing) {
	s, low := p.sheet, p.floor-sketchBoard
	clear, inset := drawn(s.SideClearance), drawn(s.Connector.Inset)
	p.measure(d, SideClearance, false, at(0, 0), at(clear, 0), low, -1, s.SideClearance)
	p.measure(d, ConnectorInset, false, at(p.inside-inset, p.lowestHole()), at(p.inside, p.lowestHole()), low, -1, s.Connector.Inset)
	p.deducted(d, BottomDeductWidth, drawn(s.Bottom.DeductWidth)/2, p.underside(), -2, s.Bottom.DeductWidth)
	p.deducted(d, BackDeductWidth, drawn(s.Back.DeductWidth)/2, p.underside()+p.thickness(), -3, s.Back.DeductWidth)
	high := p.ceiling + sketchBoard
	reach := drawn(s.Runner.ScrewReach)
	p.focused(RunnerScrewReach, func() {
		p.measure(d, RunnerScrewReach, false, at(-reach, p.height/2), at(0, p.height/2), high, 1, s.Runner.ScrewReach)
	})
	p.focused(ConnectorDiameter, func() {
		r := drawn(s.Connector.Diameter) / 2
		y := p.lowestHole()
		d.Add(&drawing.Dimension{Tag: figure(drawing.DimensionLine, ConnectorDiameter), From: at(p.inside-inset-r, y), To: at(p.inside-inset+r, y), Line: high, Level: 1, Value: s.Connector.Diameter, Prefix: "Ø "})
	})
	p.focused(ConnectorAdjustSide, func() {
		a, y := drawn(s.Connector.AdjustSide), p.lowestHole()
		p.measure(d, ConnectorAdjustSide, false, at(p.inside-inset, y), at(p.inside-inset+a, y), high, 1, s.Connector.AdjustSide)
	})
	p.focused(ConnectorAdjustUp, func() {
		y := p.lowestHole()
		p.measure(d, ConnectorAdjustUp, true, at(p.inside-inset, y), at(p.inside-inset, y+drawn(s.Connector.AdjustUp)), p.inside+sketchBoard, 1, s.Connector.AdjustUp)
	})
	for i, h := range s.Stabiliser.Holes {
		if i < 2 && h.Across != 0 {
			p.measure(d, StabiliserHoles, false, at(p.inside/2, h.Up), at(p.inside/2+h.Across, h.Up), high, 1+i, max(h.Across, -h.Across))
		}
	}
}

// deducted dimensions the width of a board as the bay's inside width less a
// figure.
func (p *frontPart) deducted(d *drawing.Drawing, f Figure, each, y length.Length, level int, value length.Length) {
	d.Add(&drawing.Dimension{Tag: figure(drawing.DimensionLine, f), From: at(each, y), To: at(p.inside-each, y), Line: p.floor - sketchBoard, Level: level, Value: value, Prefix: "– "})
}

// lowestHole is the height of the lowest connector hole.
func (p *part) lowestHole() length.Length {
	if len(p.drawer.Holes) == 0 {
		return p.top / 2
	}
	return slices.Min(p.drawer.Holes)
}

// mostHoles is how many hole heights are dimensioned; more would not leave room
// for the sketch.
const mostHoles = 6

// heights dimensions what is measured up from the runner's lower edge: at the
// left the holes, at the right the parts.
func (p *frontPart) heights(d *drawing.Drawing) {
	s := p.sheet
	level := 0
	left := func(f Figure, x length.Length, up length.Length) {
		if level > -mostHoles {
			level--
			p.measure(d, f, true, at(x, 0), at(x, up), -sketchBoard, level, up)
		}
	}
	inset := drawn(s.Connector.Inset)
	for _, h := range p.drawer.Holes {
		left(DrawerHoles, inset, h)
	}
	for _, h := range p.drawer.RailHoles {
		left(DrawerRailHoles, inset, h)
	}
	for _, h := range p.drawer.More {
		left(DrawerMoreHoles, inset, h.Up)
	}
	p.focused(StabiliserHoles, func() {
		for _, h := range s.Stabiliser.Holes {
			left(StabiliserHoles, p.inside/2+h.Across, h.Up)
		}
	})
	right := p.inside + sketchBoard
	edge, in := p.inside-drawn(s.SideClearance), p.inside-drawn(s.Bottom.DeductWidth)/2
	up := func(f Figure, x, from, to length.Length, level int, value length.Length) {
		p.measure(d, f, true, at(x, from), at(x, to), right, level, value)
	}
	up(RunnerLeastHeight, p.inside, p.floor, 0, 2, s.Runner.LeastHeight)
	up(RunnerClearanceAbove, p.inside, p.top, p.ceiling, 1, s.Runner.ClearanceAbove)
	up(BottomUnderside, in, 0, p.underside(), 1, s.Bottom.Underside)
	up(BottomThickness, in, p.underside(), p.underside()+p.thickness(), 2, s.Bottom.Thickness)
	up(DrawerSideTop, edge, 0, drawn(p.drawer.SideTop), 3, p.drawer.SideTop)
	next := 4
	for _, top := range []struct {
		f Figure
		v length.Length
	}{{DrawerBackTop, p.drawer.BackTop}, {DrawerRailTop, p.drawer.RailTop}} {
		if top.v != 0 || p.focus == top.f {
			up(top.f, edge, 0, drawn(top.v), next, top.v)
			next++
		}
	}
}
