package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/length"
)

// smallMap draws the panel small inside a box, its holes as dots, and hatches
// what this sheet shows; left out are the tiles that are not printed.
func (d *draft) smallMap(box, panel plane.Rect, bores []bore, shown plane.Rect, left []plane.Rect) {
	if panel.Empty() || box.Empty() {
		return
	}
	box = box.Grow(-mm(1) / 2) // the dots of holes at its edges
	// The map is only looked at, so whole micrometres of scale are enough.
	const per = 1_000_000
	scale := min(int64(box.Width())*per/int64(panel.Width()), int64(box.Height())*per/int64(panel.Height()))
	small := func(l length.Length) length.Length {
		return length.Length(int64(l) / 1000 * scale / (per / 1000))
	}
	at := func(p plane.Point) plane.Point {
		return plane.Point{X: box.Min.X + small(p.X-panel.Min.X), Y: box.Min.Y + small(p.Y-panel.Min.Y)}
	}
	area := func(r plane.Rect) plane.Rect { return plane.Rect{Min: at(r.Min), Max: at(r.Max)} }
	for _, r := range left {
		if r = r.Intersect(panel); !r.Empty() {
			d.dashedBox(area(r))
		}
	}
	if s := shown.Intersect(panel); !s.Empty() {
		d.own.Add(&drawing.Hatch{Tag: drawing.Tag{Meaning: drawing.Frame}, Rect: area(s)})
	}
	d.box(drawing.Frame, area(panel))
	for _, b := range bores {
		d.own.Add(&drawing.Circle{Tag: drawing.Tag{Meaning: drawing.Frame}, Centre: at(b.at), Radius: mm(1) / 3})
	}
}

func (d *draft) dashedBox(r plane.Rect) {
	d.own.Add(&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.Frame}, Rect: r, Dashed: true})
}
