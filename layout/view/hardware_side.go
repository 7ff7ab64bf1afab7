package view

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// sketchFront is the thickness of the front on the sketch from the side.
const sketchFront = 19 * length.Millimetre

// HardwareSide sketches one drawer of a hardware sheet from the side: x back
// from the carcass's front edge, y above the runner's lower edge. The front
// lies over the carcass; the depth is the least that the chosen runner needs.
func HardwareSide(s *model.HardwareSheet, o HardwareOptions) *drawing.Drawing {
	p := sidePart{part: partOf(s, o)}
	p.start = p.drawn("runner.setback")
	p.end = p.start + max(drawn(p.runner.Length), 60*length.Millimetre)
	p.back = p.end + p.drawn("runner.clearance_behind")
	d := &drawing.Drawing{Title: message.New("From the side")}
	p.carcass(d)
	p.parts(d)
	p.names(d)
	p.depths(d)
	p.details(d)
	return d
}

// sidePart knows where the runner begins and ends, and the back board's face.
type sidePart struct {
	part
	start, end, back length.Length
}

func (p *sidePart) carcass(d *drawing.Drawing) {
	low, high := p.floor-sketchBoard, p.ceiling+sketchBoard
	d.Add(box(drawing.Carcass, plane.R(0, p.floor, p.back, high), true))
	d.Add(board(plane.R(0, low, p.back, p.floor))...)
	d.Add(board(plane.R(p.back, low, p.back+sketchBack, high))...)
	d.Add(box(drawing.Face, plane.R(-sketchFront, low+3*length.Millimetre, 0, p.ceiling), true))
}

func (p *sidePart) parts(d *drawing.Drawing) {
	runner := box(drawing.RunnerPart, plane.R(p.start, 0, p.end, p.height), true)
	runner.Tag = shows(drawing.RunnerPart, "runner.lengths[].length")
	rise := drawn(p.drawer.SideTop)
	end := p.boxEnd()
	d.Add(runner, box(drawing.DrawerPart, plane.R(p.start, p.sideLower(), end, rise), false))
	if rail := drawn(p.drawer.RailTop); rail > rise {
		d.Add(box(drawing.DrawerPart, plane.R(p.start, rise, p.end, rail), false))
	}
	low := p.underside() + p.thickness()
	if thick := p.drawn("back.thickness"); thick > 0 && p.backTop() > low {
		d.Add(box(drawing.DrawerPart, plane.R(end-thick, low, end, p.backTop()), true))
	}
	if front := p.drawn("box.front"); front > 0 && p.sheet.Wooden() {
		d.Add(box(drawing.DrawerPart, plane.R(p.start, p.sideLower(), p.start+front, rise), true))
	}
	d.Add(box(drawing.DrawerBottom, plane.R(p.bottomStart(), p.underside(), p.bottomEnd(), low), true))
	d.Add(&drawing.Line{Tag: drawing.Tag{Meaning: drawing.CentreLine}, From: at(-sketchFront, 0), To: at(p.back+sketchBack, 0), Dashed: true})
	for i, h := range p.runner.Screws {
		path := "runner.lengths[].screws[]"
		if i != p.screw {
			path = ""
		}
		p.hole(d, path, at(h.Back, h.Up), drawn(h.Diameter))
	}
	for _, h := range append(append([]length.Length(nil), p.drawer.Holes...), p.drawer.RailHoles...) {
		p.blind(d, h)
	}
}

// boxEnd is where the drawer ends to the back.
func (p *sidePart) boxEnd() length.Length {
	if !p.sheet.Wooden() {
		return p.end
	}
	return max(p.end-p.drawn("box.shorter"), p.start)
}

// bottomStart is where the drawer bottom begins: in the groove of an inner front.
func (p *sidePart) bottomStart() length.Length {
	if !p.sheet.Wooden() || p.sheet.Box.Bottom == model.BottomLaidOn {
		return p.start
	}
	return p.start + max(p.drawn("box.front")-p.drawn("box.groove_depth"), 0)
}

// bottomEnd is where the drawer bottom ends to the back.
func (p *sidePart) bottomEnd() length.Length {
	_, less := p.sheet.BottomDeducts()
	from := p.bottomStart()
	if p.sheet.Wooden() {
		return max(from+drawn(p.runner.Length)-drawn(less), from)
	}
	return max(p.end-drawn(less), from)
}

// blind draws a hole in the rear face as the section shows it.
func (p *sidePart) blind(d *drawing.Drawing, up length.Length) {
	depth, r := min(p.drawn("connector.depth"), sketchFront), p.drawn("connector.diameter")/2
	d.Add(&drawing.Rectangle{Tag: shows(drawing.HoleEdge, "connector.depth"), Rect: plane.R(-depth, up-r, 0, up+r)})
}

func (p *sidePart) names(d *drawing.Drawing) {
	middle := (p.start + p.end) / 2
	d.Add(name("runner", at(middle, p.height-p.height/6), drawing.Anchor{X: 0.5, Y: 1}, plane.R(p.start, p.underside()+p.thickness(), p.end, p.height)))
	rise := drawn(p.drawer.SideTop)
	d.Add(name("drawer side", at(middle, (p.height+rise)/2), drawing.Anchor{X: 0.5, Y: 0.5}, plane.R(p.start, p.height, p.end, rise)))
	if rail := drawn(p.drawer.RailTop); rail > rise {
		d.Add(name("rail or high side", at(middle, (rise+rail)/2), drawing.Anchor{X: 0.5, Y: 0.5}, plane.R(p.start, rise, p.end, rail)))
	}
	d.Add(name("carcass bottom", at(p.back/2, p.floor-sketchBoard/2), drawing.Anchor{X: 0.5, Y: 0.5}, plane.R(0, p.floor-sketchBoard, p.back, p.floor)))
	d.Add(name("carcass side", at(p.back/2, p.ceiling+sketchBoard/2), drawing.Anchor{X: 0.5, Y: 0.5}, plane.R(0, p.ceiling, p.back, p.ceiling+sketchBoard)))
}

// depths dimensions below the sketch what is measured from front to back.
func (p *sidePart) depths(d *drawing.Drawing) {
	s, low := p.sheet, p.floor-sketchBoard
	p.measure(d, "runner.setback", false, at(0, 0), at(p.start, 0), low, -1)
	p.measured(d, "runner.lengths[].length", false, at(p.start, 0), at(p.end, 0), low, -2, p.size("runner.lengths[].length")).Say = message.New("runner %v", p.runner.Length)
	p.measure(d, "runner.clearance_behind", false, at(p.end, 0), at(p.back, 0), low, -1)
	if s.Wooden() {
		p.boxDepths(d)
	} else {
		d.Add(&drawing.Dimension{Tag: shows(drawing.DimensionLine, "bottom.deduct_length"), From: at(p.start, p.underside()), To: at(p.bottomEnd(), p.underside()), Line: low, Level: -3, Value: s.Bottom.DeductLength, Prefix: "– ", Say: message.New("bottom: runner – %v", s.Bottom.DeductLength)})
	}
	if p.screw >= 0 && p.screw < len(p.runner.Screws) {
		p.screwSizes(d, &p.runner.Screws[p.screw])
	}
}

// boxDepths dimensions what a wooden box is built of, seen from the side.
func (p *sidePart) boxDepths(d *drawing.Drawing) {
	low, front := p.floor-sketchBoard, p.start+p.drawn("box.front")
	p.measure(d, "box.front", false, at(p.start, p.top/2), at(front, p.top/2), low, -3)
	p.measure(d, "box.shorter", false, at(p.boxEnd(), 0), at(p.end, 0), low, -3)
}

// screwSizes dimensions above the sketch and at its left where one screw is.
func (p *sidePart) screwSizes(d *drawing.Drawing, h *model.ScrewHole) {
	high := p.ceiling + sketchBoard
	p.measure(d, "runner.lengths[].screws[].back", false, at(0, h.Up), at(h.Back, h.Up), high, 1)
	p.measure(d, "runner.lengths[].screws[].up", true, at(h.Back, 0), at(h.Back, h.Up), -sketchFront, -1)
	p.focused("runner.lengths[].screws[].diameter", func() {
		r := drawn(h.Diameter) / 2
		d.Add(&drawing.Dimension{Tag: shows(drawing.DimensionLine, "runner.lengths[].screws[].diameter"), From: at(h.Back-r, h.Up), To: at(h.Back+r, h.Up), Line: high, Level: 2, Value: h.Diameter, Prefix: "Ø "})
	})
}

// details are figures that only show while they have the focus, or small ones
// above the sketch.
func (p *sidePart) details(d *drawing.Drawing) {
	high := p.ceiling + sketchBoard
	if thick := p.drawn("back.thickness"); thick > 0 || p.focus == "back.thickness" {
		p.measure(d, "back.thickness", false, at(p.end-thick, p.backTop()), at(p.end, p.backTop()), high, 1)
	}
	p.focused("connector.adjust_tilt", func() {
		p.measure(d, "connector.adjust_tilt", false, at(-sketchFront-p.drawn("connector.adjust_tilt"), p.ceiling), at(-sketchFront, p.ceiling), high, 2)
	})
	p.focused("connector.depth", func() {
		depth := min(p.drawn("connector.depth"), sketchFront)
		p.measure(d, "connector.depth", false, at(-depth, p.lowestHole()), at(0, p.lowestHole()), high, 2)
	})
}
