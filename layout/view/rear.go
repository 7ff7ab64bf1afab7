package view

import (
	"sort"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Rear draws the rear face of a front as it is drilled, in the Rear frame: face
// down, bottom edge towards you, left on paper right in the room. Holes, the
// lines of their centres, and dimensions from both side edges and the bottom.
func Rear(f *plan.Front) *drawing.Drawing {
	d := &drawing.Drawing{Title: message.New("Rear face of front %v, %v", f.Number, f.Name)}
	if !f.Named() {
		d.Title = message.New("Rear face of front %v", f.Number)
	}
	s := of(drawing.FrontThing, f.Place)
	panel := rect(drawing.Face, s, f.Blind())
	panel.Filled = true
	d.Add(panel)
	for _, l := range RearZoneLines(f) {
		d.Add(l)
	}
	AddRearHoles(d, f)
	w, h := f.Face.Width(), f.Face.Height()
	d.Add(upright(of(drawing.FrontHeight, f.Place), 0, h, w, 2))
	xs, ys := rearLines(f)
	d.Add(across(drawing.Subject{}, 0, w, 0, addColumns(d, xs, w, h)-1))
	for i, y := range ys {
		d.Add(upright(drawing.Subject{}, 0, y, 0, -1-i))
	}
	d.Add(&drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label}, At: plane.Point{X: w / 2, Y: h / 2}, Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: normalLetters, Bold: true, Say: message.New("REAR FACE"), Within: f.Blind()})
	return d
}

// AddRearHoles adds a front's holes in the Rear frame: connectors, rails,
// stabiliser, and the handle's as they come through.
func AddRearHoles(d *drawing.Drawing, f *plan.Front) {
	for i, h := range f.Holes {
		addHole(d, drawing.Subject{Kind: drawing.HoleThing, Place: f.Place, Index: i}, f.Rear(h.At), h.Diameter)
	}
	for i, h := range f.HandleHoles {
		addHole(d, drawing.Subject{Kind: drawing.HoleThing, Place: f.Place, Index: len(f.Holes) + i}, f.Rear(h.At), h.Diameter)
	}
}

// addColumns dimensions each column of holes from the nearer side edge, one
// level a column so that no line lies on another, and gives the last level.
func addColumns(d *drawing.Drawing, xs []length.Length, w, h length.Length) int {
	left, right := 0, 0
	for _, x := range xs {
		d.Add(centreLine(plane.Point{X: x}, plane.Point{X: x, Y: h}))
		if x <= w/2 {
			left--
			d.Add(across(drawing.Subject{}, 0, x, 0, left))
		}
	}
	for i := len(xs) - 1; i >= 0 && xs[i] > w/2; i-- {
		right--
		d.Add(across(drawing.Subject{}, xs[i], w, 0, right))
	}
	return min(left, right, -1)
}

func centreLine(a, b plane.Point) *drawing.Line {
	return &drawing.Line{Tag: drawing.Tag{Meaning: drawing.CentreLine}, From: a, To: b, Dashed: true}
}

// rearLines are the distinct distances of hole centres from the left edge and
// from the bottom edge of the rear face.
func rearLines(f *plan.Front) (xs, ys []length.Length) {
	seenX, seenY := map[length.Length]bool{}, map[length.Length]bool{}
	for _, h := range append(append([]plan.Hole(nil), f.Holes...), f.HandleHoles...) {
		r := f.Rear(h.At)
		if !seenX[r.X] {
			seenX[r.X] = true
			xs = append(xs, r.X)
		}
		if !seenY[r.Y] {
			seenY[r.Y] = true
			ys = append(ys, r.Y)
		}
	}
	sort.Slice(xs, func(a, b int) bool { return xs[a] < xs[b] })
	sort.Slice(ys, func(a, b int) bool { return ys[a] < ys[b] })
	return xs, ys
}
