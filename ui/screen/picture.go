package screen

import (
	"strings"

	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/paint"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// Picture is what the screen shows of the selection.
type Picture uint8

// The pictures. Only the elevation can be drawn in; in the others the hand
// moves the picture, and figures can be typed.
const (
	Elevation Picture = iota
	Section
	RearFace
	DrawerPlan
	Tipping
	Opening
	Year
	Spread
)

// Study is a picture of what a study of the job comes to, with the command that shows it.
// Draw draws it around a place of the plan that has a cabinet.
type Study struct {
	Picture
	Command, Words string
	Draw           func(p *plan.Plan, at model.Place) *drawing.Drawing
}

// Studies are those that there are.
func Studies() []Study {
	return []Study{
		{Picture: Opening, Command: "opening", Words: "Opening, as measured", Draw: func(p *plan.Plan, at model.Place) *drawing.Drawing { return view.Opening(p, at) }},
		{Picture: Tipping, Command: "tipping", Words: "Tipping, from the side", Draw: func(p *plan.Plan, at model.Place) *drawing.Drawing { return view.Tipping(p, max(at.Cabinet, 0)) }},
		{Picture: Year, Command: "year", Words: "Gaps through the year", Draw: func(p *plan.Plan, _ model.Place) *drawing.Drawing { return view.Year(p) }},
		{Picture: Spread, Command: "spread", Words: "Spread of the gaps", Draw: func(p *plan.Plan, _ model.Place) *drawing.Drawing { return view.Spread(p) }},
	}
}

// Picture tells what the screen shows.
func (c *Screen) Picture() Picture { return c.subject }

// ShowPicture shows another picture of what is selected.
func (c *Screen) ShowPicture(p Picture) {
	c.finishTyping()
	c.Take(tool.Idle{})
	c.subject, c.drawing, c.fitting = p, nil, true
	c.repaint()
}

// draw makes the drawing of the picture.
func (c *Screen) draw() *drawing.Drawing {
	r := c.session.Result()
	here := c.session.Here()
	at := here
	if len(c.session.Selection()) == 0 {
		here = model.Whole
	}
	at.Cabinet, at.Bay, at.Front = max(at.Cabinet, 0), max(at.Bay, 0), max(at.Front, 0)
	for _, s := range Studies() {
		if s.Picture == c.subject && at.Cabinet < len(r.Plan.Cabinets) {
			return s.Draw(r.Plan, here)
		}
	}
	switch c.subject {
	case Section:
		if r.Plan.BayAt(at) != nil {
			d := view.Section(r.Plan, at)
			c.found().AddToSection(d, r.Plan, at)
			return d
		}
	case RearFace:
		if f := r.Plan.FrontAt(at); f != nil && f.Kind != model.OpenNiche {
			d := view.Rear(f)
			c.found().AddToRear(d, r.Plan, f)
			return d
		}
		return &drawing.Drawing{Title: message.New("Select a front: an open niche has no rear face.")}
	}
	if c.subject == DrawerPlan {
		if front := r.Plan.FrontAt(at); front != nil {
			for f := range front.Drawers() { // its own, or the lowest behind a door
				d := view.DrawerPlan(r.Plan, f)
				c.found().AddToPlan(d, r.Plan, f)
				return d
			}
		}
		return &drawing.Drawing{Title: message.New("Select a front with a drawer that fits.")}
	}
	return view.Elevation(r.Plan, view.ElevationOptions{SeeThrough: c.seeThrough, Found: c.found(), Handles: true, Locks: true, Covers: !c.seeThrough})
}

// found is what the picture marks of the check.
func (c *Screen) found() view.Found {
	return view.Found{All: c.session.Result().Findings, Chosen: c.session.ChosenFinding() + 1}
}

// spacious is a tool that wants room beside the run.
type spacious interface {
	Room(*session.Session) (left, right length.Length)
}

// extent is what a fitted picture shows whole.
func (c *Screen) extent() plane.Rect {
	if c.subject == Elevation {
		all := c.session.Result().Plan.Extent
		if t, ok := c.hand.(spacious); ok {
			left, right := t.Room(c.session)
			all.Min.X -= left
			all.Max.X += right
		}
		return all
	}
	return c.shown().Bounds()
}

// title names the picture, where it is not the elevation.
func (c *Screen) title() message.Message {
	if c.subject == Elevation {
		return message.Message{}
	}
	if c.subject == RearFace && len(c.shown().Marks) > 0 {
		return message.New("%v: left here is RIGHT in the room", c.shown().Title)
	}
	return c.shown().Title
}

// titleLines are the lines of the title, as wide as the sheet, with the size of the widest
// and the height of one.
func titleLines(c *Screen, p *painter) (lines []string, size fyne.Size) {
	wide := c.Size().Width - 2*titleAt.X
	of := func(s string) fyne.Size { return p.measure.Of(s, p.text*titleSize, true) }
	for _, word := range strings.Fields(c.say().Say(c.title())) {
		if n := len(lines); n > 0 && (of(lines[n-1]+" "+word).Width <= wide || wide <= 0) {
			lines[n-1] += " " + word
		} else {
			lines = append(lines, word)
		}
	}
	for _, l := range lines {
		size = size.Max(of(l))
	}
	return lines, size
}

// titleAt is the title's corner.
var titleAt = fyne.NewPos(14, 10)

// titleBox is where the title stands: at the upper left, inside of rulers.
func (c *Screen) titleBox(p *painter) box {
	lines, size := titleLines(c, p)
	at := titleAt
	if c.rulers {
		_, high, wide := p.rulerSizes()
		at = at.AddXY(wide, high)
	}
	size.Height *= float32(len(lines))
	return paint.BoxAt(at, size).Grown(4, 2)
}

// titleSize is the size of a title's letters, in plain ones.
const titleSize = 1.15

// paintTitle writes the title on a ground of its own, because the picture can be
// moved under it.
func (c *Screen) paintTitle(p *painter) {
	b := c.titleBox(p)
	p.backdrop(b, p.Palette.Sheet)
	lines, size := titleLines(c, p)
	for i, l := range lines {
		p.put(l, fyne.NewPos(b.X1+4, b.Y1+2+float32(i)*size.Height), drawing.Anchor{Y: 1}, p.text*titleSize, true, p.Palette.Ink)
	}
}
