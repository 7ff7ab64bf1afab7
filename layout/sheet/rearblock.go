package sheet

import (
	"fmt"
	"slices"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// rearPages draws the rear faces with their holes, up to three to a sheet;
// fronts with equal faces share one drawing.
func rearPages(p *plan.Plan, o Options) []Page {
	all := groups(p, o, rearKey)
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		h = w * 14142 / 10000
	}
	// Three to an upright sheet; on a low one as many as have 75 mm each.
	each := int(min(max((printable(w, h, o).Height()-blockHeight(o))/mm(75), 1), 3))
	var pages []Page
	for len(all) > 0 {
		n := min(each, len(all))
		title := message.New("Rear faces, drilled")
		d := newDraft(RearFaces, title, w, h, o)
		area := d.area
		area.Min.Y += blockHeight(o) + mm(2)
		high := area.Height() / length.Length(each)
		block := func(d *draft, i int, from int64) int64 {
			top := area.Max.Y - length.Length(i)*high
			return d.rearBlock(all[i], o.refusal(check.Drilling, all[i].fronts), plane.R(area.Min.X, top-high, area.Max.X, top), from)
		}
		den := int64(1) // of all faces of the page
		for i := range all[:n] {
			den = max(den, block(newDraft(RearFaces, title, w, h, o), i, 1))
		}
		for i := range all[:n] {
			block(d, i, den)
			if top := area.Max.Y - length.Length(i)*high; i > 0 {
				d.line(drawing.Frame, area.Min.X, top, area.Max.X, top)
			}
		}
		d.titleBlock(title, scaleText(den, o.Say.Unit), o)
		d.box(drawing.Frame, d.area)
		pages = append(pages, d.finish())
		all = all[n:]
	}
	return pages
}

func rearKey(f *plan.Front) string {
	if len(f.Holes)+len(f.HandleHoles) == 0 {
		return ""
	}
	return fmt.Sprintln(int64(f.Face.Width()), int64(f.Face.Height())) + sameCorners(f) + middleKey(f) + handleKey(f)
}

// Sizes below a rear face: its note, and its dimensions one below the other.
const (
	rearNote   = 8 * length.Millimetre
	rearLevel  = 6 * length.Millimetre
	mostAcross = 5 // columns of holes that are dimensioned from an edge; the schedule has all
)

// rearBlock draws one rear face with its sizes, no larger than 1:from, and writes its
// holes beside it; stop says that it must not be drilled, where that is so. It gives the
// denominator of its scale.
func (d *draft) rearBlock(g group, stop message.Message, r plane.Rect, from int64) int64 {
	f := g.first()
	r = r.Grow(-mm(2))
	top := d.paragraph(r.Min.X, r.Max.Y, r.Width(), lettering.Small, true, message.New("REAR FACE. %v, %v × %v", g.names(), f.Face.Width(), f.Face.Height()))
	if !stop.Empty() {
		top = d.paragraph(r.Min.X, top, r.Width(), lettering.Small, true, stop)
	}
	schedule := plane.R(r.Max.X-scheduleWidth, r.Min.Y, r.Max.X, top-mm(1))
	d.schedule(list.Drilling(f), f.Sheet, schedule)

	picture := plane.R(r.Min.X, r.Min.Y, schedule.Min.X-mm(3), top-mm(1))
	note := message.New("REAR FACE up, bottom edge towards you: left here is RIGHT in the room.")
	left, right := rearColumns(f)
	levels := length.Length(max(len(left), len(right)))
	face := plane.Rect{
		Min: picture.Min.Add(plane.Point{X: mm(5) + d.widest(f), Y: rearNote + (levels+1)*rearLevel + mm(1)}),
		Max: plane.Point{X: picture.Max.X - 2*drawing.DimensionStep, Y: picture.Max.Y - mm(1)},
	}
	v := &drawing.Drawing{Title: g.names()}
	for _, m := range view.Rear(f).Marks {
		switch m.(type) {
		case *drawing.Dimension: // of its own below
		case *drawing.Text: // the heading says it where no line crosses it
		default:
			v.Add(m)
		}
	}
	placed, den := fitFrom(v, face, d.say, from)
	d.place(placed)
	d.paragraph(picture.Min.X, picture.Min.Y+mm(6), picture.Width(), lettering.Tiny, false, note)
	d.rearSizes(f, placed)
	return den
}

// rearColumns are the distances of the columns of holes from the left and from
// the right edge of the rear face, whichever is nearer, the nearest column
// first.
func rearColumns(f *plan.Front) (left, right []length.Length) {
	w := f.Face.Width()
	for _, b := range append(rearBores(f), faceBoresFromBehind(f)...) {
		if b.at.X <= w/2 {
			left = append(left, b.at.X)
		} else {
			right = append(right, w-b.at.X)
		}
	}
	return nearestFirst(left), nearestFirst(right)
}

func nearestFirst(columns []length.Length) []length.Length {
	slices.Sort(columns)
	columns = slices.Compact(columns)
	return columns[:min(len(columns), mostAcross)]
}

// widest is how much room the heights of the holes take at the left.
func (d *draft) widest(f *plan.Front) length.Length {
	w := length.Length(0)
	for _, b := range append(rearBores(f), faceBores(f)...) {
		w = max(w, lettering.Width(d.say.Figure(b.at.Y), lettering.Tiny, false))
	}
	return w
}

// rearSizes dimensions a placed rear face: heights of the holes at the left,
// each column from its edge and the width below, the height at the right.
func (d *draft) rearSizes(f *plan.Front, placed drawing.Placed) {
	at := func(x, y length.Length) plane.Point {
		den := length.Length(placed.ScaleDen)
		return placed.At.Add(plane.Point{X: x / den, Y: y / den})
	}
	w, h := f.Face.Width(), f.Face.Height()
	low, high := at(0, 0), at(w, h)
	d.dimension(at(w, 0), high, true, high.X+drawing.DimensionStep, h)
	var ys []length.Length
	for _, b := range append(rearBores(f), faceBoresFromBehind(f)...) {
		ys = append(ys, b.at.Y)
	}
	slices.Sort(ys)
	fromLeft, fromRight := rearColumns(f)
	line := low.Y - mm(5)
	for i := range max(len(fromLeft), len(fromRight)) {
		if i < len(fromLeft) {
			d.dimension(low, at(fromLeft[i], 0), false, line, fromLeft[i])
		}
		if i < len(fromRight) {
			d.dimension(at(w-fromRight[i], 0), at(w, 0), false, line, fromRight[i])
		}
		line -= rearLevel
	}
	d.dimension(low, at(w, 0), false, line, w)
	last := low.Y - mm(10)
	for _, y := range slices.Compact(ys) {
		p := at(0, y)
		text := max(p.Y, last+lettering.Pitch(lettering.Tiny)) // figures give way upwards
		if text > high.Y+mm(2) {
			break // the schedule has the others
		}
		last = text
		d.line(drawing.DimensionLine, p.X-mm(1)/2, p.Y, p.X-mm(3), text)
		d.text(plane.Point{X: p.X - mm(3) - mm(1)/2, Y: text}, drawing.Anchor{X: 1, Y: 0.5}, lettering.Tiny, false, d.say.Figure(y))
	}
}

// faceBoresFromBehind are the handle's holes where they come out of the rear
// face.
func faceBoresFromBehind(f *plan.Front) []bore {
	bores := faceBores(f)
	for i := range bores {
		bores[i].at = f.Rear(bores[i].at)
	}
	return bores
}

const scheduleWidth = 58 * length.Millimetre

// schedule writes the holes as columns: from left and bottom as the front lies,
// diameter, depth. The figures of the drill are from a hardware sheet.
func (d *draft) schedule(holes []list.DrilledHole, of *model.HardwareSheet, r plane.Rect) {
	columns := []length.Length{mm(14), mm(32), mm(44), scheduleWidth} // right ends
	row := func(y length.Length, bold bool, cells ...string) {
		for i, c := range cells {
			size := lettering.Tiny
			c = lettering.Shorten(c, size, bold, mm(16))
			d.text(plane.Point{X: r.Min.X + columns[i], Y: y}, drawing.Anchor{X: 1, Y: 1}, size, bold, c)
		}
	}
	y := r.Max.Y
	row(y, true, d.say.Say(message.New("from left")), d.say.Say(message.New("from bottom")), "Ø", d.say.Say(message.New("depth")))
	y -= lettering.Pitch(lettering.Tiny)
	d.line(drawing.Frame, r.Min.X, y+mm(1)/2, r.Max.X, y+mm(1)/2)
	y -= mm(1)
	for i, h := range holes {
		// Drills are named as they are sold; the tables have both units.
		diameter, depth := list.MakersLength{Length: h.Diameter, Sheet: of}.Own(d.say), list.MakersLength{Length: h.Depth, Sheet: of}.Own(d.say)
		if y-3*lettering.Pitch(lettering.Tiny) < r.Min.Y && i+1 < len(holes) {
			d.text(plane.Point{X: r.Max.X, Y: y}, drawing.Anchor{X: 1, Y: 1}, lettering.Tiny, false,
				d.say.Say(message.New("%v more: see the drill list", len(holes)-i)))
			return
		}
		if h.Kind == plan.HandleHole && (i == 0 || holes[i-1].Kind != plan.HandleHole) {
			d.text(plane.Point{X: r.Max.X, Y: y}, drawing.Anchor{X: 1, Y: 1}, lettering.Tiny, true, d.say.Say(list.HoleName(h.Kind)))
			y -= lettering.Pitch(lettering.Tiny)
		}
		if h.Kind == plan.HandleHole {
			diameter, depth = d.say.Figure(h.Diameter), d.say.Say(message.New("through"))
		}
		left := h.FromLeft
		if h.Kind == plan.HandleHole {
			left = h.FromRight // measured on the rear face here, like all others
		}
		row(y, false, d.say.Figure(left), d.say.Figure(h.FromBottom), diameter, depth)
		y -= lettering.Pitch(lettering.Tiny)
	}
}
