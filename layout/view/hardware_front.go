package view

import (
	"slices"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// HardwareFront sketches one drawer of a hardware sheet between two carcass
// sides, seen from the room with the front taken off: x from the left side's
// inside face, y above the runner's lower edge. The bay is as narrow as shows
// the parts well; everything else is drawn from the sheet's figures.
func HardwareFront(s *model.HardwareSheet, o HardwareOptions) *drawing.Drawing {
	p := frontPart{part: partOf(s, o)}
	p.inside = max(p.top+p.top/8, 180*length.Millimetre)
	for _, deduct := range []length.Length{s.Bottom.DeductWidth, s.Back.DeductWidth, 2 * s.SideClearance, 2 * s.Connector.Inset} {
		p.inside = max(p.inside, drawn(deduct)+100*length.Millimetre)
	}
	for _, h := range s.Stabiliser.Holes {
		p.inside = max(p.inside, 2*drawn(max(h.Across, -h.Across))+100*length.Millimetre)
	}
	d := &drawing.Drawing{Title: message.New("From the front")}
	p.carcass(d)
	p.parts(d)
	p.holes(d)
	p.names(d)
	p.widths(d)
	p.heights(d)
	return d
}

type frontPart struct {
	part
	inside length.Length // width of the bay
}

func (p *frontPart) carcass(d *drawing.Drawing) {
	low, high := p.floor-sketchBoard, p.ceiling+sketchBoard
	d.Add(board(plane.R(-sketchBoard, low, 0, high))...)
	d.Add(board(plane.R(p.inside, low, p.inside+sketchBoard, high))...)
	d.Add(board(plane.R(0, low, p.inside, p.floor))...)
	d.Add(&drawing.Line{Tag: figure(drawing.Hidden, RunnerClearanceAbove), From: at(0, p.ceiling), To: at(p.inside, p.ceiling), Dashed: true})
	if reach := drawn(p.sheet.Runner.ScrewReach); reach > 0 {
		thin := 2 * length.Millimetre
		y := p.height / 2
		screw := box(drawing.RunnerPart, plane.R(-reach, y-thin, 0, y+thin), true)
		screw.Tag = figure(drawing.RunnerPart, RunnerScrewReach)
		d.Add(screw)
	}
}

// sides are the two runners, and what the bottom leaves beside it for the drawer
// sides.
func (p *frontPart) parts(d *drawing.Drawing) {
	s := p.sheet
	clear := drawn(s.SideClearance)
	side := p.side()
	rise := drawn(p.drawer.SideTop)
	for _, mirrored := range []bool{false, true} {
		x := func(a, b length.Length) (length.Length, length.Length) {
			if mirrored {
				return p.inside - b, p.inside - a
			}
			return a, b
		}
		a, b := x(0, clear)
		d.Add(box(drawing.RunnerPart, plane.R(a, 0, b, p.height), true))
		a, b = x(clear, side)
		d.Add(box(drawing.DrawerPart, plane.R(a, 0, b, rise), false))
		if rail := drawn(p.drawer.RailTop); rail > rise {
			d.Add(box(drawing.DrawerPart, plane.R(a, rise, b, rail), false))
		}
	}
	in := drawn(s.Back.DeductWidth) / 2
	back := box(drawing.DrawerPart, plane.R(in, p.underside()+p.thickness(), p.inside-in, max(p.backTop(), p.underside()+p.thickness())), false)
	back.Dashed = true
	in = drawn(s.Bottom.DeductWidth) / 2
	d.Add(back, box(drawing.DrawerBottom, plane.R(in, p.underside(), p.inside-in, p.underside()+p.thickness()), true))
	d.Add(&drawing.Line{Tag: drawing.Tag{Meaning: drawing.CentreLine}, From: at(-sketchBoard, 0), To: at(p.inside+sketchBoard, 0), Dashed: true})
}

// side is where the drawer side ends inwards.
func (p *frontPart) side() length.Length {
	clear := drawn(p.sheet.SideClearance)
	if half := drawn(p.sheet.Bottom.DeductWidth) / 2; half > clear {
		return half
	}
	return clear + 12*length.Millimetre
}

func (p *part) underside() length.Length { return drawn(p.sheet.Bottom.Underside) }
func (p *part) thickness() length.Length { return drawn(p.sheet.Bottom.Thickness) }

// backTop is how high the drawer's back rises.
func (p *part) backTop() length.Length {
	if p.drawer.BackTop > 0 {
		return drawn(p.drawer.BackTop)
	}
	return drawn(p.drawer.SideTop)
}

// holes are those in the rear face, seen through the front.
func (p *frontPart) holes(d *drawing.Drawing) {
	c := &p.sheet.Connector
	pair := func(f Figure, sides model.HoleSides, inset, up, diameter length.Length) {
		if diameter <= 0 {
			diameter = c.Diameter
		}
		if sides != model.RightOnly {
			p.hole(d, f, at(inset, up), drawn(diameter))
		}
		if sides != model.LeftOnly {
			p.hole(d, f, at(p.inside-inset, up), drawn(diameter))
		}
	}
	inset := drawn(c.Inset)
	for _, h := range p.drawer.Holes {
		pair(DrawerHoles, model.BothSides, inset, h, 0)
	}
	for _, h := range p.drawer.RailHoles {
		pair(DrawerRailHoles, model.BothSides, inset, h, 0)
	}
	for _, h := range p.drawer.More {
		in := inset
		if h.Inset > 0 {
			in = drawn(h.Inset)
		}
		pair(DrawerMoreHoles, h.Sides, in, h.Up, h.Diameter)
	}
	for _, h := range p.sheet.Stabiliser.Holes {
		diameter := h.Diameter
		if diameter <= 0 {
			diameter = c.Diameter
		}
		p.hole(d, StabiliserHoles, at(p.inside/2+h.Across, h.Up), drawn(diameter))
	}
}

func (p *part) hole(d *drawing.Drawing, f Figure, centre plane.Point, diameter length.Length) {
	addHole(d, figure(drawing.HoleEdge, f).Of, centre, diameter)
}

// names lead from the middle of the drawer to its parts.
func (p *frontPart) names(d *drawing.Drawing) {
	body := plane.R(p.side(), p.underside()+p.thickness(), p.inside-p.side(), p.top)
	d.Add(name("drawer back", at(p.inside/2, p.underside()+p.thickness()+(p.backTop()-p.underside()-p.thickness())/3), drawing.Anchor{X: 0.5, Y: 0.5}, body))
	d.Add(name("drawer bottom", at(p.inside/2, p.underside()+p.thickness()), drawing.Anchor{X: 0.5}, body))
	clear, side := drawn(p.sheet.SideClearance), p.side()
	to := side + p.inside/16
	rise := drawn(p.drawer.SideTop)
	clearOf := p.underside() + p.thickness() + p.top/12 // names stand above the bottom
	d.Add(pointed("drawer side", at((clear+side)/2, rise-rise/12), at(to, max(rise-rise/12, clearOf)))...)
	d.Add(pointed("runner", at(clear/2, p.height/2+p.height/4), at(to, max(p.height/2+p.height/4, clearOf)))...)
	if rail := drawn(p.drawer.RailTop); rail > rise {
		d.Add(pointed("rail or high side", at((clear+side)/2, rise+(rail-rise)/2), at(to, rise+(rail-rise)/2))...)
	}
	d.Add(name("carcass bottom", at(p.inside/2, p.floor-sketchBoard/2), drawing.Anchor{X: 0.5, Y: 0.5}, plane.R(0, p.floor-sketchBoard, p.inside, p.floor)))
}

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
