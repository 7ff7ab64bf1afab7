package plan

import (
	"cmp"

	"frontlay/layout/divide"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// Make works out the plan of a project. It never fails: what can't be done as
// asked is listed in Problems, and the nearest thing is done instead.
func Make(p *model.Project) *Plan {
	m := &maker{p: p, plan: &Plan{Project: p}}
	m.placeCabinets()
	m.solveStacks()
	m.placeFronts()
	m.setExtent()
	return m.plan
}

// maker holds what is known while a plan is made.
type maker struct {
	p      *model.Project
	plan   *Plan
	stacks [][]stack // by cabinet and bay
	names  map[nameKey][]model.Place
	rows   divide.RowFinder
	holes  []Hole // of the drawer height that is being tried
}

func (m *maker) problem(p Problem) { m.plan.Problems = append(m.plan.Problems, p) }

func (m *maker) setExtent() {
	var r plane.Rect
	for i := range m.plan.Cabinets {
		c := &m.plan.Cabinets[i]
		box := c.Around()
		if i == 0 {
			r = box
		} else {
			r = r.Union(box)
		}
	}
	for i := range m.plan.Fronts { // a stack that is over reaches past its carcass
		r = r.Union(m.plan.Fronts[i].Face)
	}
	r.Min.Y = min(r.Min.Y, 0)
	m.plan.Extent = r
}

// Around is a carcass with what stands beside, over and under it.
func (c *Cabinet) Around() plane.Rect {
	r := c.Outline
	if !c.Plinth.Empty() {
		r = r.Union(c.Plinth)
	}
	for _, f := range c.Feet {
		r = r.Union(f)
	}
	for _, b := range c.Beside {
		r = r.Union(b.Rect)
	}
	return r
}

// placeCabinets puts the cabinets side by side on the floor line, with what
// stands beside, over and under them, and their bays.
func (m *maker) placeCabinets() {
	x := length.Length(0)
	m.plan.Cabinets = make([]Cabinet, len(m.p.Cabinets))
	for i := range m.p.Cabinets {
		c := &m.p.Cabinets[i]
		pc := &m.plan.Cabinets[i]
		x += m.placeBeside(pc, c, c.Left, x, true)
		pc.Place = model.Place{Cabinet: i, Bay: -1, Front: -1}
		pc.Name = c.Name
		pc.Mount = c.Mount
		pc.Reveals = m.p.RevealsOf(c)
		pc.Outline = plane.R(x, c.Plinth, x+c.Width, c.Plinth+c.Height)
		t := m.p.Boards.Carcass.Thickness
		pc.Inside = plane.R(x+cmp.Or(c.Left.Side, t), c.Plinth+t, x+c.Width-cmp.Or(c.Right.Side, t), c.Plinth+c.Height-t)
		m.placeBack(pc, c)
		m.placeBase(pc, c)
		if c.Worktop > 0 {
			top := pc.Outline.Max.Y
			left, right := x-c.Left.EndPanel-c.Left.Filler, x+c.Width+c.Right.EndPanel+c.Right.Filler
			pc.Beside = append(pc.Beside, Board{WorktopBoard, plane.R(left, top, right, top+c.Worktop)})
		}
		x += c.Width
		x += m.placeBeside(pc, c, c.Right, x, false)
		m.placeBays(pc, c)
	}
}

// placeBeside adds the end panel and filler of one side, from x to the right,
// and gives their width together. The filler is the outer one of the two.
func (m *maker) placeBeside(pc *Cabinet, c *model.Cabinet, b model.Beside, x length.Length, left bool) length.Length {
	add := func(kind BoardKind, w length.Length) {
		if w > 0 {
			pc.Beside = append(pc.Beside, Board{kind, plane.R(x, 0, x+w, c.Plinth+c.Height)})
			x += w
		}
	}
	if left {
		add(FillerBoard, b.Filler)
		add(EndPanelBoard, b.EndPanel)
	} else {
		add(EndPanelBoard, b.EndPanel)
		add(FillerBoard, b.Filler)
	}
	return b.Filler + b.EndPanel
}
