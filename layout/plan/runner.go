package plan

import (
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// placeRunner works out the height of a drawer's runner, its drop and its
// length. The bottom drawer's runner stands the sheet's least height above the
// carcass bottom (that of a drawer over a niche above the niche's shelf), so its
// drop is its bottom overlay plus that; another upper drawer's front is level
// with its runner's lower edge unless a drop is asked for. On hole rows the
// runner moves up to the next row.
func (m *maker) placeRunner(f *Front) {
	if f.Kind != model.DrawerFront || f.Sheet == nil {
		return
	}
	src := m.p.FrontAt(f.Place)
	f.Runner.Lower = m.lowestRunner(f, src)
	m.chooseRunner(f, src.Runner)
	if src.Drop == nil && m.p.HoleRows.Mode != model.RowsFree {
		// Going up may not cost the cover: start where it is enough.
		f.Runner.Lower = max(f.Runner.Lower, f.Face.Min.Y+src.Cover-f.Sheet.Bottom.Underside)
		f.Runner.Lower += m.toNextRow(f, f.Runner.Lower)
	}
	f.Drop = f.Runner.Lower - f.Face.Min.Y
	m.placeScrews(f)
}

// lowestRunner is where the runner's lower edge lies before hole rows count.
func (m *maker) lowestRunner(f *Front, src *model.Front) length.Length {
	if src.Drop != nil {
		return f.Face.Min.Y + *src.Drop
	}
	if f.OnFloor {
		return f.Floor + f.Sheet.Runner.LeastHeight
	}
	return f.Face.Min.Y
}

// chooseRunner takes the length asked for, or the longest that fits the inside
// depth; the front's thickness pushes an inset drawer back.
func (m *maker) chooseRunner(f *Front, asked length.Length) {
	r := &f.Sheet.Runner
	f.Runner.Start = r.Setback
	if f.Inset {
		f.Runner.Start += f.Thickness
	}
	room := m.plan.Cabinets[f.Place.Cabinet].Depth - f.Runner.Start - r.ClearanceBehind
	var best *model.RunnerLength
	for k := range r.Lengths {
		l := &r.Lengths[k]
		if asked > 0 {
			if l.Length == asked {
				best = l
			}
		} else if l.Length <= room && (best == nil || l.Length > best.Length) {
			best = l
		}
	}
	if best == nil {
		if asked > 0 && f.Number > 0 { // placed, not only looked at for hole rows
			m.problem(Problem{Kind: RunnerUnknown, Place: f.Place, Amount: asked, Inner: f.Nth})
		}
		return
	}
	f.Runner.Length = best.Length
	f.Runner.Load, f.Runner.Price = best.Load, best.Price
	f.Runner.source = best
}

// toNextRow is how far a runner at y has to go up until its first screw hole is
// on a hole row; 0 where the runner has no screws.
func (m *maker) toNextRow(f *Front, y length.Length) length.Length {
	if f.Runner.source == nil || len(f.Runner.source.Screws) == 0 {
		return 0
	}
	rows := m.p.HoleRows.Filled()
	datum := m.plan.Cabinets[f.Place.Cabinet].Outline.Min.Y + rows.Datum
	h := y + f.Runner.source.Screws[0].Up - datum
	return h.CeilTo(rows.Pitch) - h
}

func (m *maker) placeScrews(f *Front) {
	if f.Runner.source == nil {
		return
	}
	push := length.Length(0)
	if f.Inset {
		push = f.Thickness
	}
	f.Runner.Screws = make([]SideHole, 0, len(f.Runner.source.Screws))
	for _, s := range f.Runner.source.Screws {
		f.Runner.Screws = append(f.Runner.Screws, SideHole{s.Back + push, f.Runner.Lower + s.Up, s.Diameter, s.Depth})
	}
	if m.p.HoleRows.Mode != model.RowsFree {
		f.Runner.OffRow = m.toNextRow(f, f.Runner.Lower)
	}
}

// LengthAtLeast is the runner's length, or where none fits that of the shortest of
// its sheet, which is too long; 0 where the sheet has none.
func (f *Front) LengthAtLeast() length.Length {
	if f.Runner.Length > 0 || f.Sheet == nil {
		return f.Runner.Length
	}
	least := length.Length(0)
	for i := range f.Sheet.Runner.Lengths {
		if l := f.Sheet.Runner.Lengths[i].Length; least == 0 || l < least {
			least = l
		}
	}
	return least
}

// RunnerEnds are the two runners seen from the front, run frame: as wide as the
// side clearance, from the lower edge to the same distance above the first screw,
// or as high as wide where the sheet tells no screw. They are screwed to the carcass, or
// to the packing.
func (f *Front) RunnerEnds() [2]plane.Rect {
	w := f.Sheet.SideClearance
	h := w
	if len(f.Runner.Screws) > 0 {
		h = max(h, 2*(f.Runner.Screws[0].Y-f.Runner.Lower))
	}
	y, in := f.Runner.Lower, f.Between()
	return [2]plane.Rect{
		plane.R(in.Min.X, y, in.Min.X+w, y+h),
		plane.R(in.Max.X-w, y, in.Max.X, y+h),
	}
}

// Board is where the front's board lies, from its face to its rear face, depth
// frame.
func (f *Front) Board() (near, far length.Length) {
	if f.Inset {
		return 0, f.Thickness
	}
	return -f.Thickness, 0
}
