package plan

import (
	"frontlay/layout/divide"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// partitionOf is the thickness of the partition at the right of a bay.
func (m *maker) partitionOf(b *model.Bay) length.Length {
	if b.Partition > 0 {
		return b.Partition
	}
	return m.p.Boards.Carcass.Thickness
}

// bayStep is the step of bay widths that are shares: a tenth of a millimetre, or
// 1/64 inch where heights are rounded to inches, whatever the unit of the project:
// another unit changes no size. It is finer than that of fronts, as nobody sees a
// bay's width as a number, but everyone sees that equal bays are equal.
func (m *maker) bayStep() length.Length {
	if tenth := length.Millimetre / 10; m.p.RoundingStep()%tenth == 0 {
		return tenth
	}
	return length.Inch64th
}

// placeBays divides a carcass's inside into bays and partitions. Of the widths
// that are shares the rightmost takes the odd rest.
func (m *maker) placeBays(pc *Cabinet, c *model.Cabinet) {
	n := len(c.Bays)
	room := pc.Inside.Width()
	parts := make([]divide.Part, n)
	for j := range c.Bays {
		b := &c.Bays[j]
		parts[j] = divide.Part{Fixed: b.Width, Share: b.Share}
		if j < n-1 {
			room -= m.partitionOf(b)
		}
	}
	got := divide.Stack(room, parts, model.Division{}, model.Rounding{Step: m.bayStep(), Rest: model.RestTop})
	if got.Over != 0 {
		m.problem(Problem{Kind: BaySum, Place: pc.Place, Amount: got.Over})
	}
	of := newStretch(pc.Inside.Width(), pc.Inside.Width()-room, parts, &got, model.Division{}, m.bayStep())
	x := pc.Inside.Min.X
	pc.Bays = make([]Bay, n)
	for j, w := range got.Heights {
		b := &c.Bays[j]
		pb := &pc.Bays[j]
		pb.Place = model.Place{Cabinet: pc.Place.Cabinet, Bay: j, Front: -1}
		pb.Opening = plane.R(x, pc.Inside.Min.Y, x+w, pc.Inside.Max.Y)
		pb.Sheet = m.p.SheetFor(b)
		pb.Count = len(b.Fronts)
		pb.part = part{of, got.Shares[j], w}
		if pb.Sheet == nil {
			m.problem(Problem{Kind: SheetMissing, Place: pb.Place, Name: b.Hardware})
		}
		x += w
		if j < n-1 {
			t := m.partitionOf(b)
			pc.Partitions = append(pc.Partitions, plane.R(x, pc.Inside.Min.Y, x+t, pc.Inside.Max.Y))
			x += t
		}
	}
	for j := range pc.Bays {
		pc.Bays[j].Stack = m.stackArea(pc, c, j)
	}
}

// stackArea is what the stack of fronts of a bay fills, edge reveals taken off.
func (m *maker) stackArea(pc *Cabinet, c *model.Cabinet, j int) plane.Rect {
	r := pc.Reveals
	around := pc.Outline
	if pc.Mount == model.Inset {
		around = pc.Bays[j].Opening
	}
	area := plane.R(around.Min.X+r.Left, around.Min.Y+r.Bottom, around.Max.X-r.Right, pc.underChannel(c)-m.p.TopReveal(pc.Bays[j].Place))
	if pc.Mount == model.Inset {
		return area
	}
	if gap, ok := m.sharedGap(pc.Place.Cabinet - 1); ok {
		area.Min.X = around.Min.X + gap - gap/2
	}
	if gap, ok := m.sharedGap(pc.Place.Cabinet); ok {
		area.Max.X = around.Max.X - gap/2
	}
	if j > 0 {
		area.Min.X = middleOf(pc.Partitions[j-1]) + r.Gap - r.Gap/2
	}
	if j < len(pc.Partitions) {
		area.Max.X = middleOf(pc.Partitions[j]) - r.Gap/2
	}
	return area
}

// underChannel is the height, run frame, that fronts are measured from at the top:
// the outline's upper edge, or the opening's for inset fronts, or the lower edge of
// a finger-pull channel that hangs from it.
func (c *Cabinet) underChannel(doc *model.Cabinet) length.Length {
	if c.Mount == model.Inset {
		return c.Inside.Max.Y - doc.Channel.Height
	}
	return c.Outline.Max.Y - doc.Channel.Height
}

// middleOf is the x of a partition's middle plane.
func middleOf(p plane.Rect) length.Length { return p.Min.X + p.Width()/2 }

// sharedGap is the gap that the fronts of cabinet i and its right neighbour keep
// between them; false where each keeps its own edge reveal.
func (m *maker) sharedGap(i int) (length.Length, bool) {
	if !m.p.SharedGaps || i < 0 || i+1 >= len(m.p.Cabinets) {
		return 0, false
	}
	a, b := &m.p.Cabinets[i], &m.p.Cabinets[i+1]
	between := a.Right.EndPanel + a.Right.Filler + b.Left.EndPanel + b.Left.Filler
	if between > 0 || a.Mount == model.Inset || b.Mount == model.Inset {
		return 0, false
	}
	return m.p.Reveals.Gap, true
}
