package plan

import (
	"strconv"

	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// placeFronts makes the placed fronts of every bay, numbered along the run.
func (m *maker) placeFronts() {
	n := 0
	for i := range m.p.Cabinets {
		for j := range m.p.Cabinets[i].Bays {
			n += len(m.p.Cabinets[i].Bays[j].Fronts)
		}
	}
	m.plan.Fronts = make([]Front, 0, n)
	for i := range m.p.Cabinets {
		for j := range m.p.Cabinets[i].Bays {
			m.placeStack(i, j)
		}
		m.trimPartitions(i)
	}
}

// placeStack makes the placed fronts of one bay.
func (m *maker) placeStack(i, j int) {
	pb := &m.plan.Cabinets[i].Bays[j]
	pb.First = len(m.plan.Fronts)
	pb.Over = m.stacks[i][j].over
	for k := range m.p.Cabinets[i].Bays[j].Fronts {
		m.plan.Fronts = append(m.plan.Fronts, m.face(model.Place{Cabinet: i, Bay: j, Front: k}))
	}
	m.standOn(pb)
	m.placeShelves(pb)
	fronts := m.plan.Fronts[pb.First:]
	for k := range fronts {
		m.placeRunner(&fronts[k])
	}
	for k := range fronts {
		limit, kind := m.limitAbove(fronts, k)
		m.placeDrawer(&fronts[k], limit)
		fronts[k].Drawer.Above = kind
		m.drill(&fronts[k])
	}
}

// face places a front's panel and works out what it overlays.
func (m *maker) face(at model.Place) Front {
	pc := &m.plan.Cabinets[at.Cabinet]
	s := &m.stacks[at.Cabinet][at.Bay]
	src := m.p.FrontAt(at)
	stackArea, opening := m.spanRight(at)
	if src.Span > 1 && m.spanOf(at) == 1 {
		m.problem(Problem{Kind: SpanNoPlace, Place: at, Amount: length.Length(src.Span)})
	}
	f := Front{
		Place:      at,
		Number:     len(m.plan.Fronts) + 1,
		Name:       src.Name,
		Kind:       src.Kind,
		Face:       plane.R(stackArea.Min.X, s.bottom[at.Front], stackArea.Max.X, s.top[at.Front]),
		Thickness:  m.p.Boards.Front.Thickness,
		Inset:      pc.Mount == model.Inset,
		Bottommost: at.Front == 0 && s.low == pc.Bays[at.Bay].Stack.Min.Y,
		Topmost:    at.Front == len(s.top)-1 && s.high == pc.Bays[at.Bay].Stack.Max.Y,
		Opening:    opening,
	}
	if f.Name == "" {
		f.Name = "Front " + strconv.Itoa(f.Number)
	}
	f.Overlay = Edges{
		Left:   opening.Min.X - f.Face.Min.X,
		Right:  f.Face.Max.X - opening.Max.X,
		Bottom: opening.Min.Y - f.Face.Min.Y,
		Top:    f.Face.Max.Y - opening.Max.Y,
	}
	f.Sheet = pc.Bays[at.Bay].Sheet
	if src.Hardware != "" {
		if f.Sheet = m.p.Sheet(src.Hardware); f.Sheet == nil {
			m.problem(Problem{Kind: SheetMissing, Place: at, Name: src.Hardware})
		}
	}
	return f
}
