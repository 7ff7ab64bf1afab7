package plan

import (
	"cmp"

	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// Box is a placed wooden drawer box. Width, Height and Length are its outside size, by
// which it is ordered or built.
type Box struct {
	Width, Height, Length length.Length
	Parts                 []BoxPart
}

// BoxPartKind names a part of a wooden box.
type BoxPartKind uint8

// The parts of a wooden box.
const (
	BoxLeftSide BoxPartKind = iota
	BoxRightSide
	BoxFront
	BoxBack
	BoxBottom
)

// BoxPart is a board of a wooden box, as large as it is cut: with what of it lies in
// joints and grooves of others. Rect is what it takes seen from the room, run frame,
// Near and Far where it begins and ends, depth frame. MilledM3 is what the groove for
// the bottom takes out of it, in m³.
type BoxPart struct {
	Kind      BoxPartKind
	Rect      plane.Rect
	Near, Far length.Length
	Thickness length.Length
	MilledM3  float64
	Board     model.Board
}

// Size is the size to cut of a part: across or from front to back, and up; of the
// bottom across, and from front to back.
func (p *BoxPart) Size() Size {
	switch p.Kind {
	case BoxLeftSide, BoxRightSide:
		return Size{p.Far - p.Near, p.Rect.Height()}
	case BoxBottom:
		return Size{p.Rect.Width(), p.Far - p.Near}
	}
	return Size{p.Rect.Width(), p.Rect.Height()}
}

// WeightKg is the weight of a box in kg, without what its grooves take out; false where
// not every part's density is known.
func (b *Box) WeightKg() (kg float64, known bool) {
	for i := range b.Parts {
		p := &b.Parts[i]
		if p.Board.Density <= 0 {
			return 0, false
		}
		size := p.Size()
		kg += (length.VolumeM3(size.Width, size.Length, p.Thickness) - p.MilledM3) * p.Board.Density
	}
	return kg, true
}

// DrawerKg is what a front's drawer weighs without front and contents, in kg: what the
// sheet gives, or what its box comes to; 0 where neither is known. The front is fitted.
func (f *Front) DrawerKg() float64 {
	if f.Height.Weight > 0 || f.Drawer.Box == nil {
		return f.Height.Weight
	}
	kg, _ := f.Drawer.Box.WeightKg()
	return kg
}

// Part finds a part of a box, nil where it has none.
func (b *Box) Part(k BoxPartKind) *BoxPart {
	for i := range b.Parts {
		if b.Parts[i].Kind == k {
			return &b.Parts[i]
		}
	}
	return nil
}

// boxOf places the wooden box of a drawer whose bottom and back are placed; nil where
// it has none. What it is cut from is one of the boards where one is like it.
func boxOf(f *Front, boards *model.Boards) *Box {
	s, d := f.Sheet, &f.Drawer
	if !s.Wooden() || f.Runner.Length <= 0 {
		return nil
	}
	w := &s.Box
	y, left, right := f.Runner.Lower, d.Body.Min.X, d.Body.Max.X
	low, near, far := y+s.SideLower(), f.Runner.Start, f.Runner.Start+f.Runner.Length-w.Shorter
	b := &Box{Width: right - left, Height: max(d.Side, d.Back) - min(low, d.Bottom.Min.Y), Length: far - near}
	sides, front, back := plane.R(left, low, right, d.Side), plane.R(left, low, right, d.Side), plane.R(left, d.Back-d.BackCut.Length, right, d.Back)
	from, to := near, far
	if w.Corners == model.FrontsThrough {
		from, to = near+w.Front-w.Joint, far-s.Back.Thickness+w.Joint
	} else {
		in := w.Sides - w.Joint
		front.Min.X, front.Max.X = left+in, right-in
		back.Min.X, back.Max.X = left+in, right-in
	}
	groove := func(runs length.Length) float64 { // in m³; a laid-on bottom has no depth of a groove
		return length.VolumeM3(runs, w.GrooveDepth, s.Bottom.Thickness)
	}
	behind := 0.0
	if w.Bottom == model.AllRound {
		behind = groove(d.BottomCut.Width)
	}
	bottomNear := near
	if w.Bottom != model.BottomLaidOn {
		bottomNear += w.Front - w.GrooveDepth
	}
	material, under := cmp.Or(w.Material, s.Name), cmp.Or(w.BottomBoard, s.Name)
	add := func(k BoxPartKind, r plane.Rect, near, far, thick length.Length, milled float64, m string, density float64) {
		if r.Width() > 0 && r.Height() > 0 && far > near {
			board, ok := boards.Like(thick, m, density)
			if !ok {
				board = model.Board{Thickness: thick, Material: m, Density: density}
			}
			b.Parts = append(b.Parts, BoxPart{Kind: k, Rect: r, Near: near, Far: far, Thickness: thick, MilledM3: milled, Board: board})
		}
	}
	t, u, v := w.Sides, w.Front, s.Back.Thickness
	add(BoxLeftSide, plane.R(left, sides.Min.Y, left+t, sides.Max.Y), from, to, t, groove(to-from), material, w.Density)
	add(BoxRightSide, plane.R(right-t, sides.Min.Y, right, sides.Max.Y), from, to, t, groove(to-from), material, w.Density)
	add(BoxFront, front, near, near+u, u, groove(d.BottomCut.Width), material, w.Density)
	add(BoxBack, back, far-v, far, v, behind, material, w.Density)
	add(BoxBottom, d.Bottom, bottomNear, bottomNear+d.BottomCut.Length, s.Bottom.Thickness, 0, under, w.BottomWeighs)
	return b
}
