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
		if pc := &m.plan.Cabinets[i]; pc.Fronts == 0 { // niches alone
			pc.Fronts = m.p.BoardOf(pc.Place).Thickness
		}
		m.trimPartitions(i)
		m.placeBehind(i)
	}
}

// placeBehind places what is behind a cabinet's fronts. Each step looks at what
// the one before has placed in all of its bays.
func (m *maker) placeBehind(i int) {
	pc := &m.plan.Cabinets[i]
	if len(pc.Bays) == 0 {
		return
	}
	last := &pc.Bays[len(pc.Bays)-1]
	fronts := m.plan.Fronts[pc.Bays[0].First : last.First+last.Count]
	for j := range pc.Bays {
		m.standOn(&pc.Bays[j])
		m.placeShelves(&pc.Bays[j])
		m.placeChannels(pc, &pc.Bays[j])
		m.placeRails(&pc.Bays[j])
	}
	for k := range fronts {
		m.placeRunner(&fronts[k])
		m.placeInner(&fronts[k])
	}
	limits := m.limitsAbove(pc)
	for k := range fronts {
		f := &fronts[k]
		m.placeDrawers(f, limits[k])
		m.drill(f)
	}
}

// placeStack makes the placed fronts of one bay.
func (m *maker) placeStack(i, j int) {
	pb := &m.plan.Cabinets[i].Bays[j]
	pb.First = len(m.plan.Fronts)
	s := &m.stacks[i][j]
	pb.Over, pb.Room = s.over, s.high-s.low
	for k := range m.p.Cabinets[i].Bays[j].Fronts {
		m.plan.Fronts = append(m.plan.Fronts, m.face(model.Place{Cabinet: i, Bay: j, Front: k}))
	}
	m.fillColumns(i, j)
}

// fillColumns adds the fronts of a bay to the columns of all bays that they
// cover. Bays to the left come first, so that only their high spanning fronts
// have to give way to what comes below them.
func (m *maker) fillColumns(i, j int) {
	bays := m.plan.Cabinets[i].Bays
	for k := bays[j].First; k < bays[j].First+bays[j].Count; k++ {
		f := &m.plan.Fronts[k]
		for b := j; b < j+f.Bays; b++ {
			if bays[b].Column == nil {
				bays[b].Column = make([]int, 0, bays[b].Count)
			}
			col := append(bays[b].Column, k)
			for at := len(col) - 1; at > 0 && m.plan.Fronts[col[at-1]].Face.Min.Y > f.Face.Min.Y; at-- {
				col[at-1], col[at] = col[at], col[at-1]
			}
			bays[b].Column = col
		}
	}
}

// face places a front's panel and works out what it overlays.
func (m *maker) face(at model.Place) Front {
	pc := &m.plan.Cabinets[at.Cabinet]
	s := &m.stacks[at.Cabinet][at.Bay]
	src := m.p.FrontAt(at)
	stackArea, opening := m.spanned(at)
	if src.Span > 1 && m.spanOf(at) == 1 {
		m.problem(Problem{Kind: SpanNoPlace, Place: at, Amount: length.Length(src.Span)})
	}
	f := Front{
		Place:      at,
		Number:     len(m.plan.Fronts) + 1,
		Name:       src.Name,
		Kind:       src.Kind,
		Face:       plane.R(stackArea.Min.X, s.bottom[at.Front], stackArea.Max.X, s.top[at.Front]),
		Made:       m.p.BoardOf(at),
		Inset:      pc.Mount == model.Inset,
		Bottommost: at.Front == 0 && s.low == pc.Bays[at.Bay].Stack.Min.Y,
		Topmost:    at.Front == len(s.top)-1 && s.high == pc.Bays[at.Bay].Stack.Max.Y,
		Opening:    opening,
		Bays:       m.spanOf(at),
		Packing:    m.p.PackingOf(at, m.spanOf(at)),
		part:       s.parts[at.Front],
	}
	f.Thickness = f.Made.Thickness
	if f.Kind != model.OpenNiche {
		f.Zones = ZonesOf(&f.Made, f.Face.Width(), f.Face.Height())
		pc.Fronts = max(pc.Fronts, f.Thickness)
	}
	if f.Name == "" {
		// A name, and no message: it goes into lists and files, where a front is
		// found again by it, whatever language the window speaks.
		f.Name = f.usualName()
	}
	if f.Kind == model.OpenNiche {
		below, above := m.boardsIn(at.Cabinet, at.Bay, at.Front)
		f.Clear = plane.R(opening.Min.X, f.Face.Min.Y+below, opening.Max.X, f.Face.Max.Y-above)
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

// usualName is the name of a front that was given none.
func (f *Front) usualName() string { return "Front " + strconv.Itoa(f.Number) }

// Named tells that a front has a name that says more than its number.
func (f *Front) Named() bool { return f.Name != f.usualName() }
