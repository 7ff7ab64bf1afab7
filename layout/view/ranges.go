package view

import (
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/season"
	"frontlay/layout/tolerance"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// ranged is a gap with how much narrower and wider than planned it comes out, and what is
// written beside it. Bad tells that this is more than is wanted.
type ranged struct {
	gap        *plan.Gap
	less, more length.Length
	say        message.Message
	bad        bool
}

// rangeTimes is how many times larger than all else ranges of gaps are drawn: at the scale of
// an elevation nobody would see them.
const rangeTimes = 20

// Year draws the run with how far each gap goes through the year, in the run frame; its title says
// what to do where nothing of it moves.
func Year(p *plan.Plan) *drawing.Drawing {
	s, ok := season.Of(p)
	if !ok {
		title := message.New("No board is said to be of solid wood: choose its species where its material is")
		if _, known := season.YearOf(p.Project.Climate); !known {
			title = message.New("To see gaps move, type the room's climate in the form of the project, under %v", message.New("Solid wood through the year"))
		}
		return ranges(p, title, nil)
	}
	least, greatest := check.GapsWanted(p.Project)
	var all []ranged
	for i := range s.Gaps {
		g := &s.Gaps[i]
		from, to := g.Least(s.Year), g.Greatest(s.Year)
		all = append(all, ranged{&g.Gap, g.Size - from, to - g.Size,
			message.New("%v – %v", message.Bare(season.Shown(from)), message.Bare(season.Shown(to))), from < least || to > greatest})
	}
	return ranges(p, message.New("Gaps through the year, from – to, in %v; bars twenty times as large", inUnit(p)), all)
}

// Spread draws the run with the likely spread of each gap at the worse of its ends, in the
// run frame.
func Spread(p *plan.Plan) *drawing.Drawing {
	b := tolerance.Of(p)
	var all []ranged
	for i := range b.Gaps {
		g := &b.Gaps[i]
		end := b.Spread(g).End
		all = append(all, ranged{&g.Gap, end, end, message.New("± %v", message.Bare(tolerance.Shown(end))), b.Short(g) > 0})
	}
	if p.Project.Process == nil {
		return ranges(p, message.New("Likely spread of the gaps at their worse end, in %v, by figures from memory: type your own in the form of the project", inUnit(p)), all)
	}
	return ranges(p, message.New("Likely spread of the gaps at their worse end, in %v; bars twenty times as large", inUnit(p)), all)
}

// inUnit names the unit of a run after the word in.
func inUnit(p *plan.Plan) any {
	if p.Project.Unit.Inches() {
		return message.New("inches")
	}
	return p.Project.Unit.Symbol()
}

// ranges draws the fronts of a run with ranges at their gaps: a bar at each end, and beside
// it, on the front, what it says.
func ranges(p *plan.Plan, title message.Message, all []ranged) *drawing.Drawing {
	d := &drawing.Drawing{Title: title}
	if len(p.Cabinets) == 0 {
		return d
	}
	d.Marks = Hanging(p, 0, len(p.Cabinets)-1).Marks
	for _, r := range all {
		addRange(d, r)
	}
	for i := range p.Fronts { // names give way to what is said of gaps
		if f := &p.Fronts[i]; f.Kind != model.OpenNiche {
			d.Add(&drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label, Of: of(drawing.FrontThing, f.Place)}, At: f.Face.Centre(), Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: smallLetters, Say: numbered(f), Short: message.New("%v", f.Number), Within: f.Face})
		}
	}
	return d
}

// addRange draws the range of a gap.
func addRange(d *drawing.Drawing, r ranged) {
	tag := drawing.Tag{Meaning: drawing.DimensionLine}
	if r.bad {
		tag = drawing.Tag{Meaning: drawing.FindingMark, Severity: drawing.OfWarning}
	}
	face := r.gap.Front.Face
	line := func(x1, y1, x2, y2 length.Length) {
		d.Add(&drawing.Line{Tag: tag, From: plane.Point{X: x1, Y: y1}, To: plane.Point{X: x2, Y: y2}})
	}
	const tick = 6 * length.Millimetre
	less, more := rangeTimes*r.less, rangeTimes*r.more
	for _, tenth := range []length.Length{1, 9} {
		if r.gap.Vertical {
			x, y := r.gap.At.X, face.Min.Y+face.Height()*tenth/10
			line(x-less, y, x+more, y)
			line(x-less, y-tick, x-less, y+tick)
			line(x+more, y-tick, x+more, y+tick)
		} else {
			x, y := face.Min.X+face.Width()*tenth/10, r.gap.At.Y
			line(x, y-less, x, y+more)
			line(x-tick, y-less, x+tick, y-less)
			line(x-tick, y+more, x+tick, y+more)
		}
	}
	const pad = 10 * length.Millimetre
	c := face.Centre()
	at, anchor := plane.Point{X: face.Min.X + pad, Y: c.Y}, drawing.Anchor{Y: 0.5}
	switch r.gap.Edge {
	case plan.RightEdge:
		at.X, anchor.X = face.Max.X-pad, 1
	case plan.BottomEdge:
		at, anchor = plane.Point{X: c.X, Y: face.Min.Y + pad}, drawing.Anchor{X: 0.5}
	case plan.TopEdge:
		at, anchor = plane.Point{X: c.X, Y: face.Max.Y - pad}, drawing.Anchor{X: 0.5, Y: 1}
	}
	d.Add(&drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label}, At: at, Anchor: anchor, Size: smallLetters, Say: r.say, Within: face, Bold: r.bad})
}
