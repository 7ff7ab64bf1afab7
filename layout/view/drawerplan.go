package view

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// DrawerPlan draws a front's drawer from above: x across the opening from its
// left face, y the depth, from the front (negative for an overlay front) to the
// back. The drawer is drawn as the outside that the runners leave it, with its
// bottom and back; its sides' own shapes are the maker's, but those of a wooden box are
// drawn as they are built. It has marks only
// where the drawer is fitted; where no runner fits, the drawing says so.
func DrawerPlan(p *plan.Plan, f *plan.Front) *drawing.Drawing {
	d := &drawing.Drawing{Title: message.New("Plan of drawer %v, %v", f.Number, f.Name)}
	if f.Nth > 0 {
		d.Title = message.New("Plan of drawer %v", f.Called())
	} else if !f.Named() {
		d.Title = message.New("Plan of drawer %v", f.Number)
	}
	if !f.Fitted {
		return d
	}
	s := of(drawing.DrawerThing, f.Place)
	left := f.Opening.Min.X
	inside := f.Opening.Width()
	depth := p.Cabinets[f.Place.Cabinet].Depth
	atLeft, atRight := sidesOf(p, f)
	add := func(m drawing.Meaning, filled bool, r plane.Rect) {
		mark := rect(m, s, r)
		mark.Filled = filled
		d.Add(mark)
	}
	add(drawing.Carcass, true, plane.R(-atLeft.Rect.Width(), 0, 0, atLeft.Far))
	add(drawing.Carcass, true, plane.R(inside, 0, inside+atRight.Rect.Width(), atRight.Far))
	edge := inside + atRight.Rect.Width()
	if back := p.Cabinets[f.Place.Cabinet].Back; !back.Rect.Empty() {
		from, to := -atLeft.Rect.Width(), edge
		if back.Depth > 0 { // let into the sides, and past partitions
			from, to = max(from, back.Rect.Min.X-left), min(to, back.Rect.Max.X-left)
		}
		add(drawing.Carcass, true, plane.R(from, back.Near, to, back.Far))
	}
	for _, c := range cutThrough(f, false) {
		add(drawing.Face, true, c.Rect.Move(plane.Point{X: -left}))
	}
	if f.Runner.Length <= 0 {
		drawerPlanWithout(d, f, depth, edge)
		return d
	}
	start, end := f.Runner.Start, f.Runner.Start+f.Runner.Length
	for _, r := range f.PackingStrips() {
		add(drawing.Carcass, true, plane.R(r.Min.X-left, start, r.Max.X-left, end))
	}
	from, to, w := f.Packing.Left, inside-f.Packing.Right, f.Sheet.SideClearance
	add(drawing.RunnerPart, true, plane.R(from, start, from+w, end))
	add(drawing.RunnerPart, true, plane.R(to-w, start, to, end))
	if f.Drawer.Box != nil {
		drawerPlanBox(d, f, add)
	} else {
		add(drawing.DrawerPart, false, plane.R(from+w, start, to-w, end))
		b := f.Drawer.Bottom
		add(drawing.DrawerBottom, true, plane.R(b.Min.X-left, start, b.Max.X-left, start+f.Drawer.BottomCut.Length))
		drawerPlanBack(f, add)
	}
	drawerPlanSizes(d, f, depth, edge)
	return d
}

// sidesOf are the side or partition at the left and the right of a drawer.
func sidesOf(p *plan.Plan, f *plan.Front) (left, right plan.CarcassBoard) {
	for _, b := range p.Boards(f.Place.Cabinet) {
		switch b.Kind {
		case plan.LeftSideBoard, plan.RightSideBoard, plan.PartitionBoard:
			if b.Rect.Max.X == f.Opening.Min.X {
				left = b
			}
			if b.Rect.Min.X == f.Opening.Max.X {
				right = b
			}
		}
	}
	return left, right
}

// drawerPlanWithout draws the drawer that no runner fits as it would be with the
// shortest one, dashed as what is wrong is, and writes so into it. edge is the x of
// the carcass's outer edge.
func drawerPlanWithout(d *drawing.Drawing, f *plan.Front, depth, edge length.Length) {
	inside, w := f.Opening.Width(), f.Sheet.SideClearance
	from, to := f.Packing.Left, inside-f.Packing.Right
	start, end := f.Runner.Start, f.Runner.Start+f.LengthAtLeast()
	for _, r := range []plane.Rect{plane.R(from, start, from+w, end), plane.R(to-w, start, to, end), plane.R(from+w, start, to-w, end)} {
		d.Add(&drawing.Rectangle{
			Tag:  drawing.Tag{Meaning: drawing.FindingMark, Of: of(drawing.DrawerThing, f.Place), Severity: drawing.OfError},
			Rect: r, Dashed: true,
		})
	}
	d.Add(
		across(drawing.Subject{}, 0, inside, -f.Thickness, -1),
		upright(drawing.Subject{}, 0, depth, edge, 1),
		&drawing.Text{
			Tag: drawing.Tag{Meaning: drawing.Label}, At: plane.Point{X: inside / 2, Y: depth / 2},
			Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: normalLetters, Bold: true, Say: message.New("no runner fits, see Findings"), Within: plane.R(0, 0, inside, depth),
		},
	)
}

// drawerPlanBack draws the back in the middle of the opening, at the runner's
// end.
func drawerPlanBack(f *plan.Front, add func(drawing.Meaning, bool, plane.Rect)) {
	width, thick := f.Drawer.BackCut.Width, f.Sheet.Back.Thickness
	if width <= 0 || thick <= 0 {
		return
	}
	end := f.Runner.Start + f.Runner.Length
	x := f.Packing.Left + (f.Between().Width()-width)/2
	add(drawing.DrawerPart, true, plane.R(x, end-thick, x+width, end))
}

// drawerPlanBox draws the boards of a wooden box from above, and dashed how far its
// bottom reaches into their grooves. What runs through at the corners is drawn last, over
// the joints.
func drawerPlanBox(d *drawing.Drawing, f *plan.Front, add func(drawing.Meaning, bool, plane.Rect)) {
	b := f.Drawer.Box
	seen := func(p *plan.BoxPart) plane.Rect {
		return plane.R(p.Rect.Min.X-f.Opening.Min.X, p.Near, p.Rect.Max.X-f.Opening.Min.X, p.Far)
	}
	order := []plan.BoxPartKind{plan.BoxBottom, plan.BoxFront, plan.BoxBack, plan.BoxLeftSide, plan.BoxRightSide}
	if f.Sheet.Box.Corners == model.FrontsThrough {
		order = []plan.BoxPartKind{plan.BoxBottom, plan.BoxLeftSide, plan.BoxRightSide, plan.BoxFront, plan.BoxBack}
	}
	for _, k := range order {
		if p := b.Part(k); p != nil && k == plan.BoxBottom {
			add(drawing.DrawerBottom, true, seen(p))
		} else if p != nil {
			add(drawing.DrawerPart, true, seen(p))
		}
	}
	if p := b.Part(plan.BoxBottom); p != nil {
		d.Add(&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.Hidden, Of: of(drawing.DrawerThing, f.Place)}, Rect: seen(p), Dashed: true})
	}
}

// drawerPlanSizes adds the dimensions, the upright ones right of the carcass's
// outer edge, and the sizes of the boards.
func drawerPlanSizes(d *drawing.Drawing, f *plan.Front, depth, edge length.Length) {
	inside, w := f.Opening.Width(), f.Sheet.SideClearance
	low := -f.Thickness
	b := f.Drawer.Bottom
	d.Add(
		across(drawing.Subject{}, f.Packing.Left+w, inside-f.Packing.Right-w, low, -1),
		across(drawing.Subject{}, 0, inside, low, -2),
		across(drawing.Subject{}, f.Face.Min.X-f.Opening.Min.X, f.Face.Max.X-f.Opening.Min.X, low, -3),
	)
	for _, r := range f.PackingStrips() { // how thick it is
		d.Add(across(drawing.Subject{}, r.Min.X-f.Opening.Min.X, r.Max.X-f.Opening.Min.X, low, -1))
	}
	start := f.Runner.Start
	d.Add(
		upright(drawing.Subject{}, start, start+f.Runner.Length, edge, 1),
		upright(drawing.Subject{}, 0, depth, edge, 2),
	)
	label := func(y length.Length, m, short message.Message) {
		d.Add(&drawing.Text{
			Tag: drawing.Tag{Meaning: drawing.Label}, At: plane.Point{X: inside / 2, Y: y},
			Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: smallLetters, Say: m, Short: short,
			Within: plane.R(b.Min.X-f.Opening.Min.X, start, b.Max.X-f.Opening.Min.X, start+f.Runner.Length),
		})
	}
	if b := f.Drawer.Box; b != nil {
		label(start+f.Runner.Length/4, message.New("box outside %v × %v × %v high", b.Width, b.Length, b.Height), message.New("%v × %v × %v", b.Width, b.Length, b.Height))
	}
	size := func(s plan.Size) message.Message { return message.New("%v × %v", s.Width, s.Length) }
	bottom, back := f.Drawer.BottomCut, f.Drawer.BackCut
	label(start+f.Runner.Length/2, message.New("drawer bottom %v × %v", bottom.Width, bottom.Length), size(bottom))
	label(start+f.Runner.Length*7/8, message.New("drawer back %v × %v", back.Width, back.Length), size(back)) // near the back
}
