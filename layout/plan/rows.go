package plan

import (
	"frontlay/layout/divide"
	"frontlay/model"
	"frontlay/model/length"
)

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
	for k := range parts {
		src := &m.p.Cabinets[i].Bays[j].Fronts[k]
		p := &parts[k]
		p.Wanted = s.bottom[k]
		p.Least, p.Greatest = max(src.Least, length.Millimetre), src.Greatest
		if src.Locked && src.Height > 0 {
			p.Least = m.fixedHeight(i, j, k)
			p.Greatest = p.Least
		}
		if k > 0 {
			p.Fixed = m.p.Cabinets[i].Bays[j].Fronts[k-1].LineUp != nil
			p.Phase, p.Bound = m.rowPhase(model.Place{Cabinet: i, Bay: j, Front: k}, rows)
		}
	}
	bottoms, ok := m.rows.Rows(s.low, s.high, gap, rows.Pitch, parts)
	if !ok {
		return
	}
	for k, y := range bottoms {
		s.bottom[k] = y
		if k > 0 {
			s.top[k-1] = y - gap
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
		Thickness: m.p.Boards.Front.Thickness, Inset: pc.Mount == model.Inset,
	}
	if src.Hardware != "" {
		f.Sheet = m.p.Sheet(src.Hardware)
	}
	if f.Kind != model.DrawerFront || f.Sheet == nil {
		return 0, false
	}
	m.chooseRunner(&f, src)
	if f.Runner.source == nil || len(f.Runner.source.Screws) == 0 {
		return 0, false
	}
	below := model.Place{Cabinet: at.Cabinet, Bay: at.Bay, Front: at.Front - 1}
	drop := max(0, src.Cover-f.Sheet.Bottom.Underside)
	switch fronts := m.p.BayAt(at).Fronts; {
	case at.Front == 0:
	case fronts[at.Front-1].Kind == model.OpenNiche, m.spanOf(at) > 1 && at.Front == len(fronts)-highRun(fronts, src.Span):
		// It stands on a shelf, which its front overlays less the gap.
		drop = max(drop, m.p.Boards.Carcass.Thickness-pc.Reveals.Gap+f.Sheet.Runner.LeastHeight)
	case src.Span <= 1 && fronts[at.Front-1].Span > 1 && m.spanOf(below) > 1:
		// It stands on a shelf whose upper face is level with its bottom edge.
		drop = max(drop, f.Sheet.Runner.LeastHeight)
	}
	if src.Drop != nil {
		drop = *src.Drop
	}
	return pc.Outline.Min.Y + rows.Datum - f.Runner.source.Screws[0].Up - drop, true
}
