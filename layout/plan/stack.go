package plan

import (
	"frontlay/layout/divide"
	"frontlay/model"
	"frontlay/model/length"
)

// stack is the division of one bay while the plan is made: the y of each
// front's bottom and top edge in the run frame.
type stack struct {
	state       progress
	bottom, top []length.Length
	parts       []part // how each height came about, before hole rows
	over        length.Length
	// What a spanning front of a bay to the left leaves of this one, and whether it
	// is a niche that does.
	low, high           length.Length
	lowNiche, highNiche bool
}

type progress uint8

const (
	untouched progress = iota
	working
	done
)

// solveStacks divides every bay, those first that others wait for.
func (m *maker) solveStacks() {
	m.stacks = make([][]stack, len(m.p.Cabinets))
	for i := range m.p.Cabinets {
		m.stacks[i] = make([]stack, len(m.p.Cabinets[i].Bays))
	}
	for i := range m.stacks {
		for j := range m.stacks[i] {
			m.solveStack(i, j)
		}
	}
}

// solveStack divides one bay. It tells false where the bay, or one that spans it, is
// being divided already, that is, where bays wait for each other in a circle.
func (m *maker) solveStack(i, j int) bool {
	s := &m.stacks[i][j]
	if s.state != untouched {
		return s.state == done
	}
	s.state = working
	bay := &m.p.Cabinets[i].Bays[j]
	area := m.plan.Cabinets[i].Bays[j].Stack
	s.low, s.high = area.Min.Y, area.Max.Y
	if !m.leaveSpans(i, j, s) {
		*s = stack{} // it is divided when those that span it are
		return false
	}
	s.bottom = make([]length.Length, len(bay.Fronts))
	s.top = make([]length.Length, len(bay.Fronts))
	s.parts = make([]part, len(bay.Fronts))
	m.divideStack(i, j, s, m.pins(i, j, s))
	m.moveToRows(i, j, s)
	if s.over != 0 {
		m.problem(Problem{Kind: StackSum, Place: model.Place{Cabinet: i, Bay: j, Front: -1}, Amount: s.over, Others: m.inTheWay(i, j)})
	}
	s.state = done
	return true
}

// pin holds the top edge of a front of a stack at a height, run frame.
type pin struct {
	front int
	at    length.Length
}

// divideStack divides the stretches between pins, each on its own.
func (m *maker) divideStack(i, j int, s *stack, pins []pin) {
	bay := &m.p.Cabinets[i].Bays[j]
	first, y := 0, s.low
	for _, p := range append(pins, pin{len(bay.Fronts) - 1, s.high}) {
		if p.front < first {
			continue
		}
		parts, gaps := m.partsOf(i, j, first, p.front), length.Length(0)
		for k := first; k < p.front; k++ {
			gaps += m.gapAbove(i, j, k)
		}
		got := divide.Stack(p.at-y-gaps, parts, bay.Division, model.Rounding{Step: m.p.RoundingStep(), Rest: m.p.Rounding.Rest})
		of := newStretch(p.at-y, gaps, parts, &got, bay.Division, m.p.RoundingStep())
		of.above = first > 0
		if p.front < len(bay.Fronts)-1 {
			of.line = bay.Fronts[p.front].LineUp
		}
		if p.front == len(bay.Fronts)-1 {
			s.over += got.Over
		} else if got.Over != 0 {
			m.problem(Problem{Kind: LineUpNoRoom, Place: model.Place{Cabinet: i, Bay: j, Front: p.front}, Amount: got.Over})
		}
		for k, h := range got.Heights {
			s.bottom[first+k], s.top[first+k] = y, y+h
			s.parts[first+k] = part{of, got.Shares[k], h}
			y += h + m.gapAbove(i, j, first+k)
		}
		first = p.front + 1
	}
}

// gapAbove is the gap above a front of a stack.
func (m *maker) gapAbove(i, j, k int) length.Length {
	return m.p.GapAbove(model.Place{Cabinet: i, Bay: j, Front: k})
}

// partsOf are the fronts first to last of a bay as parts to divide.
func (m *maker) partsOf(i, j, first, last int) []divide.Part {
	parts := make([]divide.Part, 0, last-first+1)
	for k := first; k <= last; k++ {
		f := &m.p.Cabinets[i].Bays[j].Fronts[k]
		parts = append(parts, divide.Part{Fixed: m.fixedHeight(i, j, k), Share: f.Share, Least: f.Least, Greatest: f.Greatest})
	}
	return parts
}

// fixedHeight is the height of a front's face where the user fixed one, 0 where
// not. Where that is a niche's clear height, what the boards take comes on top.
func (m *maker) fixedHeight(i, j, k int) length.Length {
	f := &m.p.Cabinets[i].Bays[j].Fronts[k]
	if f.Height <= 0 || !f.Clear || f.Kind != model.OpenNiche {
		return f.Height
	}
	below, above := m.boardsIn(i, j, k)
	return max(f.Height+below+above, length.Millimetre)
}

// inTheWay lists the fronts whose height is fixed, locked or bounded: those
// that keep a stack from adding up.
func (m *maker) inTheWay(i, j int) []model.Place {
	var at []model.Place
	for k := range m.p.Cabinets[i].Bays[j].Fronts {
		f := &m.p.Cabinets[i].Bays[j].Fronts[k]
		if f.Height > 0 || f.Least > 0 || f.Greatest > 0 || f.LineUp != nil {
			at = append(at, model.Place{Cabinet: i, Bay: j, Front: k})
		}
	}
	return at
}

// moveToRows chooses a stack's divisions so that its runners fall on hole rows
// with the least change to the division made before. Locked fronts keep their
// height, fronts that line up keep their line.
func (m *maker) moveToRows(i, j int, s *stack) {
	n := len(s.bottom)
	if m.p.HoleRows.Mode != model.RowsMoveFronts || n < 2 || s.over != 0 {
		return
	}
	rows := m.p.HoleRows.Filled()
	gap := m.plan.Cabinets[i].Reveals.Gap
	parts := make([]divide.RowPart, n)
	// The rows are found as if all gaps were the cabinet's: what gaps of their own are
	// more by is taken off all heights above them, and put back.
	more := make([]length.Length, n)
	for k := range parts {
		src := &m.p.Cabinets[i].Bays[j].Fronts[k]
		p := &parts[k]
		if k > 0 {
			more[k] = more[k-1] + m.gapAbove(i, j, k-1) - gap
		}
		p.Wanted = s.bottom[k] - more[k]
		p.Least, p.Greatest = max(src.Least, length.Millimetre), src.Greatest
		if src.Locked && src.Height > 0 {
			p.Least = m.fixedHeight(i, j, k)
			p.Greatest = p.Least
		}
		if k > 0 {
			p.Fixed = m.p.Cabinets[i].Bays[j].Fronts[k-1].LineUp != nil
			p.Phase, p.Bound = m.rowPhase(model.Place{Cabinet: i, Bay: j, Front: k}, rows)
			p.Phase -= more[k]
		}
	}
	bottoms, ok := m.rows.Rows(s.low, s.high-more[n-1], gap, rows.Pitch, parts)
	if !ok {
		return
	}
	for k, y := range bottoms {
		s.bottom[k] = y + more[k]
		if k > 0 {
			s.top[k-1] = s.bottom[k] - m.gapAbove(i, j, k-1)
		}
	}
	s.top[n-1] = s.high
}

// rowPhase is a bottom edge of the front at a place that puts its runner on a
// hole row; false where the front has no runner with screws.
func (m *maker) rowPhase(at model.Place, rows model.HoleRows) (length.Length, bool) {
	src := m.p.FrontAt(at)
	pc := &m.plan.Cabinets[at.Cabinet]
	f := Front{
		Place: at, Kind: src.Kind, Sheet: pc.Bays[at.Bay].Sheet,
		Thickness: m.p.BoardOf(at).Thickness, Inset: pc.Mount == model.Inset,
	}
	if src.Hardware != "" {
		f.Sheet = m.p.Sheet(src.Hardware)
	}
	if f.Kind != model.DrawerFront || f.Sheet == nil {
		return 0, false
	}
	m.chooseRunner(&f, src.Runner)
	if f.Runner.source == nil || len(f.Runner.source.Screws) == 0 {
		return 0, false
	}
	below := model.Place{Cabinet: at.Cabinet, Bay: at.Bay, Front: at.Front - 1}
	drop := max(0, src.Cover-f.Sheet.Bottom.Underside)
	switch fronts := m.p.BayAt(at).Fronts; {
	case at.Front == 0:
	case fronts[at.Front-1].Kind == model.OpenNiche, m.spanOf(at) > 1 && at.Front == len(fronts)-highRun(fronts, src.Span):
		// It stands on a shelf, which its front overlays less the gap.
		drop = max(drop, m.p.Boards.Carcass.Thickness-m.gapBelow(at)+f.Sheet.Runner.LeastHeight)
	case m.p.RailAbove(below).Height > 0:
		// It stands on a rail, its front a gap above that.
		drop = max(drop, f.Sheet.Runner.LeastHeight-(m.gapBelow(at)-m.p.RailAbove(below).Height)/2)
	case src.Span <= 1 && fronts[at.Front-1].Span > 1 && m.spanOf(below) > 1:
		// It stands on a shelf whose upper face is level with its bottom edge.
		drop = max(drop, f.Sheet.Runner.LeastHeight)
	}
	if src.Drop != nil {
		drop = *src.Drop
	}
	return pc.Outline.Min.Y + rows.Datum - f.Runner.source.Screws[0].Up - drop, true
}
