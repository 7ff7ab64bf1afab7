package opening

import (
	"math"
	"slices"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// PackingStep is the step in which packing is told: as thin as card (common practice, no source).
const PackingStep = length.Millimetre / 2

// Packing is what goes behind the runners of one drawer, planned packing included: bought runners
// want parallel sides as far apart as the plan has them, and the opening is nowhere exactly that.
type Packing struct {
	Front  *plan.Front
	Height length.Length // of the runner's lower edge above the opening's bottom, halfway across
	Need   length.Length // the clear width that the drawer is planned for
	Ends   [2]PackingEnd // in front, behind
}

// PackingEnd is one end of a pair of runners. Width is the opening's inside width there, Left and
// Right the packing in steps of PackingStep, which leave less than a step of it. Spare is what the
// width is more than needed: below zero it is too narrow, and nothing is packed.
type PackingEnd struct {
	Known       bool
	Width       length.Length
	Spare       length.Length
	Left, Right length.Length
}

// Narrow is how much the narrower end is short of what the drawer needs; 0 where it is not.
func (p *Packing) Narrow() length.Length {
	short := length.Length(0)
	for _, e := range p.Ends {
		if e.Known {
			short = max(short, -e.Spare)
		}
	}
	return short
}

// PackingList is the packing for the drawers of a bay, bottom to top. They stand in one line, in
// the middle of the best fronts; where that would leave less than nothing on one side although there is
// enough on both together, all of them move over by the least that helps, which is aside (to the
// right where it is above zero).
//
// Drawers that span bays are left out: their runners are in two openings. Behind, where only widths are measured, as much is taken off both sides.
func (s *Shape) PackingList(p *plan.Plan, b *plan.Bay, best Best) (list []Packing, aside length.Length) {
	// The middle of the planned stack stands in the middle of the best fronts.
	middle := best.left + best.Width.MM()/2
	x := func(v, height float64) float64 { // of a planned place, where the drawers stand
		return middle + v - b.Stack.Centre().X.MM() - best.turn*height
	}
	type room struct {
		drawer, end int
		left, right float64 // what there is at each side, mm
	}
	var rooms []room
	var drawers []*plan.Front
	for i := range b.Column {
		at := &p.Fronts[b.Column[i]]
		if at.Place.Bay == b.Place.Bay && at.Bays <= 1 {
			drawers = slices.AppendSeq(drawers, at.Drawers())
		}
	}
	for _, f := range drawers {
		up := (f.Runner.Lower - b.Opening.Min.Y).MM()
		y := up + s.floorAt(Bottom, across(&s.corners)/2)
		list = append(list, Packing{Front: f, Height: length.FromMM(up), Need: clear(f).Width()})
		k := len(list) - 1
		left, right := x(clear(f).Min.X.MM(), y), x(clear(f).Max.X.MM(), y)
		in, out := s.sideAt(Left, y), s.sideAt(Right, y)
		front := room{k, 0, left - in, out - right}
		list[k].Ends[0] = PackingEnd{Known: true, Width: length.FromMM(out - in)}
		rooms = append(rooms, front)
		if w, ok := s.behind(up, b.Opening); ok {
			list[k].Ends[1] = PackingEnd{Known: true, Width: length.FromMM(w)}
			more := (w - (out - in)) / 2
			rooms = append(rooms, room{k, 1, front.left + more, front.right + more})
		}
	}
	low, high := math.Inf(-1), math.Inf(1) // how far all may move to the right
	for _, r := range rooms {
		if r.left+r.right >= 0 {
			low, high = max(low, -r.left), min(high, r.right)
		}
	}
	move := 0.0
	if low <= high {
		move = min(max(move, low), high)
	} else if len(rooms) > 0 {
		move = (low + high) / 2
	}
	for _, r := range rooms {
		list[r.drawer].Ends[r.end].pack(r.left+move, r.right-move)
	}
	return list, length.FromMM(move)
}

// clear is the clear opening that a drawer is planned for, its planned packing taken off.
func clear(f *plan.Front) plane.Rect {
	r := f.Opening
	r.Min.X += f.Packing.Left
	r.Max.X -= f.Packing.Right
	return r
}

// pack rounds: first both together down, then the left.
func (e *PackingEnd) pack(left, right float64) {
	e.Spare = length.FromMM(left + right)
	both := max(0, (e.Spare + 10).FloorTo(PackingStep)) // a rounded nanometre makes no step
	e.Left = min(max(0, length.FromMM(left).RoundTo(PackingStep)), both)
	e.Right = both - e.Left
}

// behind is the width behind at a height above the bottom, mm, and whether any was measured.
func (s *Shape) behind(up float64, opening plane.Rect) (float64, bool) {
	w := s.back
	h := upwards(&s.corners)
	at := func(v length.Length) bool { return v > 0 }
	switch {
	case at(w.Bottom) && at(w.Middle) && at(w.Top):
		return bent(up, [3]float64{0, h / 2, h}, [3]float64{w.Bottom.MM(), w.Middle.MM(), w.Top.MM()}), true
	case at(w.Bottom) && at(w.Top):
		return w.Bottom.MM() + up/h*(w.Top-w.Bottom).MM(), true
	case at(w.Bottom) && at(w.Middle):
		return w.Bottom.MM() + up/(h/2)*(w.Middle-w.Bottom).MM(), true
	case at(w.Middle) && at(w.Top):
		return w.Middle.MM() + (up-h/2)/(h/2)*(w.Top-w.Middle).MM(), true
	case w != (model.MeasuredWidths{}):
		return max(w.Bottom, w.Middle, w.Top).MM(), true
	}
	return 0, false
}
