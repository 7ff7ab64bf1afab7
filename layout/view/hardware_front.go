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
	for _, deduct := range []length.Length{p.bottomLess(), p.backLess(), 2 * s.SideClearance, 2 * s.Connector.Inset} {
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
	d.Add(&drawing.Line{Tag: shows(drawing.Hidden, "runner.clearance_above"), From: at(0, p.ceiling), To: at(p.inside, p.ceiling), Dashed: true})
	if reach := p.drawn("runner.screw_reach"); reach > 0 {
		thin := 2 * length.Millimetre
		y := p.height / 2
		screw := box(drawing.RunnerPart, plane.R(-reach, y-thin, 0, y+thin), true)
		screw.Tag = shows(drawing.RunnerPart, "runner.screw_reach")
		d.Add(screw)
	}
}

// sides are the two runners, and what the bottom leaves beside it for the drawer
// sides.
func (p *frontPart) parts(d *drawing.Drawing) {
	clear := p.drawn("side_clearance")
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
		d.Add(box(drawing.DrawerPart, plane.R(a, p.sideLower(), b, rise), false))
		if rail := drawn(p.drawer.RailTop); rail > rise {
			d.Add(box(drawing.DrawerPart, plane.R(a, rise, b, rail), false))
		}
	}
	in := p.backLess() / 2
	back := box(drawing.DrawerPart, plane.R(in, p.underside()+p.thickness(), p.inside-in, max(p.backTop(), p.underside()+p.thickness())), false)
	back.Dashed = true
	in = p.bottomLess() / 2
	d.Add(back, box(drawing.DrawerBottom, plane.R(in, p.underside(), p.inside-in, p.underside()+p.thickness()), true))
	d.Add(&drawing.Line{Tag: drawing.Tag{Meaning: drawing.CentreLine}, From: at(-sketchBoard, 0), To: at(p.inside+sketchBoard, 0), Dashed: true})
}

// side is where the drawer side ends inwards.
func (p *frontPart) side() length.Length {
	clear := p.drawn("side_clearance")
	if p.sheet.Wooden() {
		return clear + p.drawn("box.sides")
	}
	if half := p.bottomLess() / 2; half > clear {
		return half
	}
	return clear + 12*length.Millimetre
}

// bottomLess and backLess are how much narrower than the bay bottom and back are.
func (p *part) bottomLess() length.Length {
	less, _ := p.sheet.BottomDeducts()
	return drawn(less)
}

func (p *part) backLess() length.Length { return drawn(p.sheet.BackDeducts()) }

// sideLower is the lower edge of the drawer sides.
func (p *part) sideLower() length.Length {
	if !p.sheet.Wooden() {
		return 0
	}
	return min(max(p.sheet.SideLower(), -200*length.Millimetre), 200*length.Millimetre)
}

// boxWidths dimensions what a wooden box is built of, seen from the front, while the
// figure has the focus, but for the sides.
func (p *frontPart) boxWidths(d *drawing.Drawing) {
	low, high := p.floor-sketchBoard, p.ceiling+sketchBoard
	clear, side, in := p.drawn("side_clearance"), p.side(), p.bottomLess()/2
	p.measure(d, "box.sides", false, at(clear, p.top/2), at(side, p.top/2), low, -2)
	p.focused("box.groove_depth", func() {
		p.measure(d, "box.groove_depth", false, at(in, p.underside()), at(side, p.underside()), high, 1)
	})
	p.focused("box.groove_height", func() {
		p.measure(d, "box.groove_height", true, at(side, p.sideLower()), at(side, p.underside()), -sketchBoard, -mostHoles-1)
	})
}

func (p *part) underside() length.Length { return p.drawn("bottom.underside") }
func (p *part) thickness() length.Length { return p.drawn("bottom.thickness") }

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
	pair := func(path string, sides model.HoleSides, inset, up, diameter length.Length) {
		if diameter <= 0 {
			diameter = c.Diameter
		}
		if sides != model.RightOnly {
			p.hole(d, path, at(inset, up), drawn(diameter))
		}
		if sides != model.LeftOnly {
			p.hole(d, path, at(p.inside-inset, up), drawn(diameter))
		}
	}
	inset := p.drawn("connector.inset")
	for _, h := range p.drawer.Holes {
		pair("drawers[].holes", model.BothSides, inset, h, 0)
	}
	for _, h := range p.drawer.RailHoles {
		pair("drawers[].rail_holes", model.BothSides, inset, h, 0)
	}
	for _, h := range p.drawer.More {
		in := inset
		if h.Inset > 0 {
			in = drawn(h.Inset)
		}
		pair("drawers[].more_holes[]", h.Sides, in, h.Up, h.Diameter)
	}
	for _, h := range p.sheet.Stabiliser.Holes {
		diameter := h.Diameter
		if diameter <= 0 {
			diameter = c.Diameter
		}
		p.hole(d, "stabiliser.holes[]", at(p.inside/2+h.Across, h.Up), drawn(diameter))
	}
}

func (p *part) hole(d *drawing.Drawing, path string, centre plane.Point, diameter length.Length) {
	addHole(d, shows(drawing.HoleEdge, path).Of, centre, diameter)
}

// names lead from the middle of the drawer to its parts.
func (p *frontPart) names(d *drawing.Drawing) {
	body := plane.R(p.side(), p.underside()+p.thickness(), p.inside-p.side(), p.top)
	d.Add(name("drawer back", at(p.inside/2, p.underside()+p.thickness()+(p.backTop()-p.underside()-p.thickness())/3), drawing.Anchor{X: 0.5, Y: 0.5}, body))
	bottom := plane.R(p.side(), p.underside(), p.inside-p.side(), p.underside()+p.thickness())
	d.Add(name("drawer bottom", bottom.Centre(), drawing.Anchor{X: 0.5, Y: 0.5}, bottom))
	clear, side := p.drawn("side_clearance"), p.side()
	to := side + p.inside/16
	rise := drawn(p.drawer.SideTop)
	clearOf := p.underside() + p.thickness() + p.top/12 // names stand above the bottom
	d.Add(pointed("drawer side", at((clear+side)/2, rise-rise/12), at(to, max(rise-rise/12, clearOf))))
	d.Add(pointed("runner", at(clear/2, p.height/2+p.height/4), at(to, max(p.height/2+p.height/4, clearOf))))
	if rail := drawn(p.drawer.RailTop); rail > rise {
		d.Add(pointed("rail or high side", at((clear+side)/2, rise+(rail-rise)/2), at(to, rise+(rail-rise)/2)))
	}
	d.Add(name("carcass bottom", at(p.inside/2, p.floor-sketchBoard/2), drawing.Anchor{X: 0.5, Y: 0.5}, plane.R(0, p.floor-sketchBoard, p.inside, p.floor)))
}

// widths dimensions below the sketch what is measured across, and above it what
// only a figure with the focus shows.
func (p *frontPart) widths(d *drawing.Drawing) {
	s, low := p.sheet, p.floor-sketchBoard
	clear, inset := p.drawn("side_clearance"), p.drawn("connector.inset")
	p.measure(d, "side_clearance", false, at(0, 0), at(clear, 0), low, -1)
	p.measure(d, "connector.inset", false, at(p.inside-inset, p.lowestHole()), at(p.inside, p.lowestHole()), low, -1)
	if s.Wooden() {
		p.boxWidths(d)
	} else {
		p.deducted(d, "bottom.deduct_width", p.underside(), -2, message.New("bottom: inside width – %v", s.Bottom.DeductWidth))
		p.deducted(d, "back.deduct_width", p.underside()+p.thickness(), -3, message.New("back: inside width – %v", s.Back.DeductWidth))
	}
	high := p.ceiling + sketchBoard
	reach := p.drawn("runner.screw_reach")
	p.focused("runner.screw_reach", func() {
		p.measure(d, "runner.screw_reach", false, at(-reach, p.height/2), at(0, p.height/2), high, 1)
	})
	p.focused("connector.diameter", func() {
		r := p.drawn("connector.diameter") / 2
		y := p.lowestHole()
		d.Add(&drawing.Dimension{Tag: shows(drawing.DimensionLine, "connector.diameter"), From: at(p.inside-inset-r, y), To: at(p.inside-inset+r, y), Line: high, Level: 1, Value: s.Connector.Diameter, Prefix: "Ø "})
	})
	p.focused("connector.adjust_side", func() {
		a, y := p.drawn("connector.adjust_side"), p.lowestHole()
		p.measure(d, "connector.adjust_side", false, at(p.inside-inset, y), at(p.inside-inset+a, y), high, 1)
	})
	p.focused("connector.adjust_up", func() {
		y := p.lowestHole()
		p.measure(d, "connector.adjust_up", true, at(p.inside-inset, y), at(p.inside-inset, y+p.drawn("connector.adjust_up")), p.inside+sketchBoard, 1)
	})
	p.focused("connector.adjust_down", func() {
		y, down := p.lowestHole(), s.Connector.Down()
		p.measured(d, "connector.adjust_down", true, at(p.inside-inset, y-drawn(down)), at(p.inside-inset, y), p.inside+sketchBoard, 1, down)
	})
	for i, h := range s.Stabiliser.Holes {
		if i < 2 && h.Across != 0 {
			p.measured(d, "stabiliser.holes[]", false, at(p.inside/2, h.Up), at(p.inside/2+h.Across, h.Up), high, 1+i, max(h.Across, -h.Across))
		}
	}
}

// deducted dimensions the width of a board as the bay's inside width less the
// figure at a path.
func (p *frontPart) deducted(d *drawing.Drawing, path string, y length.Length, level int, say message.Message) {
	each := p.drawn(path) / 2
	d.Add(&drawing.Dimension{
		Tag: shows(drawing.DimensionLine, path), From: at(each, y), To: at(p.inside-each, y), Line: p.floor - sketchBoard, Level: level,
		Value: p.size(path), Prefix: "– ", Say: say,
	})
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
	left := func(path string, x length.Length, up length.Length) {
		if level > -mostHoles {
			level--
			p.measured(d, path, true, at(x, 0), at(x, up), -sketchBoard, level, up)
		}
	}
	inset := p.drawn("connector.inset")
	for _, h := range p.drawer.Holes {
		left("drawers[].holes", inset, h)
	}
	for _, h := range p.drawer.RailHoles {
		left("drawers[].rail_holes", inset, h)
	}
	for _, h := range p.drawer.More {
		left("drawers[].more_holes[]", inset, h.Up)
	}
	p.focused("stabiliser.holes[]", func() {
		for _, h := range s.Stabiliser.Holes {
			left("stabiliser.holes[]", p.inside/2+h.Across, h.Up)
		}
	})
	right := p.inside + sketchBoard
	edge, in := p.inside-p.drawn("side_clearance"), p.inside-p.bottomLess()/2
	up := func(path string, x, from, to length.Length, level int) {
		p.measure(d, path, true, at(x, from), at(x, to), right, level)
	}
	up("runner.least_height", p.inside, p.floor, 0, 2)
	up("runner.clearance_above", p.inside, p.top, p.ceiling, 1)
	up("bottom.underside", in, 0, p.underside(), 1)
	up("bottom.thickness", in, p.underside(), p.underside()+p.thickness(), 2)
	up("drawers[].side_top", edge, 0, p.drawn("drawers[].side_top"), 3)
	next := 4
	for _, path := range []string{"drawers[].back_top", "drawers[].rail_top"} {
		if p.size(path) != 0 || p.focus == path {
			up(path, edge, 0, p.drawn(path), next)
			next++
		}
	}
}
