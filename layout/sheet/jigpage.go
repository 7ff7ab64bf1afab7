package sheet

import (
	"slices"
	"strconv"
	"strings"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// The sizes of a box of the jig page. It is read at arm's length: the two figures
// that the stops are set to are Huge, what a hand acts on else is Medium or more.
const (
	jigBoxWidth = 86 * length.Millimetre // at least, so that A4 has two beside each other
	jigBetween  = 4 * length.Millimetre
	jigPad      = 2 * length.Millimetre
	jigRow      = 65 * length.Millimetre / 10 // of a front with its boxes to tick
	jigTick     = 4 * length.Millimetre
	jigMostRows = 23 // of one box; a setting for more fronts goes on in another
	jigHoleRows = 3  // as much room as a row of bushings takes
	jigSketch   = 62 * length.Millimetre
)

// jigBox is a setting of the jig, or a part of the fronts that it is for.
type jigBox struct {
	number, first int // of the setting, and which of its boxes
	reset         list.Reset
	moved         message.Message // from the setting before; empty: it is the first
	rows          []jigBushings
}

// jigBushings are a row of holes as the jig has them, and the fronts that need it.
type jigBushings struct {
	holes  []plan.Hole // of one side of the first front, the lowest first
	fronts []jigFront
}

// jigFront is a front with the hands at which it is drilled with one setting.
type jigFront struct {
	front       *plan.Front
	left, right bool // hands at the bench, where the rear face lies up
}

// jigPages are the settings of a drilling jig, for the bench.
func jigPages(p *plan.Plan, o Options) []Page {
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		h = w * 14142 / 10000
	}
	first := newDraft(JigSettings, JigSettings.Title(), w, h, o)
	room := first.jigHead(false, o) - first.area.Min.Y - pageNumber
	columns := max(int((first.area.Width()+jigBetween)/(jigBoxWidth+jigBetween)), 1)
	wide := (first.area.Width() - length.Length(columns-1)*jigBetween) / length.Length(columns)
	high := func(b jigBox) length.Length {
		return b.draw(&draft{own: &drawing.Drawing{}, say: o.Say, wraps: o.wraps}, plane.R(0, 0, wide, 0), o)
	}
	resets := list.Resets(p)
	boxes := jigBoxes(resets, jigMostRows)
	for most := jigMostRows; most > jigHoleRows+1 && slices.ContainsFunc(boxes, func(b jigBox) bool { return high(b) > room }); most-- {
		boxes = jigBoxes(resets, most)
	}
	var pages []Page
	for len(pages) == 0 || len(boxes) > 0 {
		d := newDraft(JigSettings, JigSettings.Title(), w, h, o)
		top := d.jigHead(len(pages) > 0, o)
		if len(boxes) == 0 {
			top = d.paragraph(d.area.Min.X, top, d.area.Width(), lettering.Medium, false, message.New("No front of this project is drilled."))
		}
		for first := true; len(boxes) > 0; first = false {
			row := boxes[:min(columns, len(boxes))]
			highest := length.Length(0)
			for _, b := range row {
				highest = max(highest, high(b))
			}
			if !first && top-highest < d.area.Min.Y+pageNumber {
				break
			}
			for i, b := range row {
				left := d.area.Min.X + length.Length(i)*(wide+jigBetween)
				r := plane.R(left, top-highest, left+wide, top)
				d.box(drawing.Frame, r)
				b.draw(d, r, o)
			}
			top -= highest + jigBetween
			boxes = boxes[len(row):]
		}
		if len(boxes) == 0 {
			d.jigNotes(p, top)
		}
		pages = append(pages, d.finish())
	}
	return pages
}

// jigNotes tells of holes that no setting drills.
func (d *draft) jigNotes(p *plan.Plan, top length.Length) {
	for i := range p.Fronts {
		if f := &p.Fronts[i]; f.Stabilised && top > d.area.Min.Y+2*pageNumber {
			top = d.paragraph(d.area.Min.X, top, d.area.Width(), lettering.Small, false,
				message.New("Front %v, %v, also has the holes of a stabiliser in its middle: see the drill list.", f.Number, f.Name)) - mm(1)
		}
	}
}

// jigHead is what stands over the boxes: what left and right mean, how depths are
// meant, and where the jig lies.
func (d *draft) jigHead(again bool, o Options) length.Length {
	title := message.New("%v: jig settings", o.stamp.job)
	if again {
		title = message.New("%v (continued)", title)
	}
	width := d.area.Width() - jigSketch - mm(4)
	y := d.paragraph(d.area.Min.X, d.area.Max.Y, width, lettering.Medium, true, title) - mm(2)
	if !o.warn.Empty() {
		y = d.paragraph(d.area.Min.X, y, width, lettering.Small, true, o.warn) - mm(1)
	}
	y = d.paragraph(d.area.Min.X, y, width, lettering.Large, true, message.New("REAR FACE up: your left hand is RIGHT in the room.")) - mm(1)
	y = d.paragraph(d.area.Min.X, y, width, lettering.Small, false, o.careful()) - mm(1)
	if !again {
		y = d.paragraph(d.area.Min.X, y, width, lettering.Small, false, message.New("Edge distance: from the front’s side edge to the line of holes. Drop: how far the front’s bottom edge lies below the runner’s lower edge (negative: above).")) - mm(1)
	}
	if list.InInches(o.Say) {
		d.rounded = len(d.own.Marks)
		y = d.paragraph(d.area.Min.X, y, width, lettering.Small, false, list.Rounded()) - mm(1)
		d.roundedEnd = len(d.own.Marks)
	}
	bottom := d.jigInItsCorner(plane.R(d.area.Max.X-jigSketch, d.area.Max.Y-mm(44), d.area.Max.X, d.area.Max.Y))
	return min(y, bottom) - mm(2)
}

// jigInItsCorner sketches the rear face with the jig in a lower corner and names its
// two stops. It gives the y below it.
func (d *draft) jigInItsCorner(r plane.Rect) length.Length {
	face := plane.R(r.Min.X+mm(24), r.Min.Y+mm(12), r.Max.X, r.Max.Y)
	jig := plane.R(face.Min.X, face.Min.Y, face.Min.X+mm(14), face.Min.Y+mm(26))
	d.box(drawing.Carcass, face)
	d.own.Add(&drawing.Hatch{Tag: drawing.Tag{Meaning: drawing.Frame}, Rect: jig})
	d.box(drawing.Carcass, jig)
	// The stops lie outside of the edges that they touch.
	for _, stop := range []plane.Rect{
		plane.R(face.Min.X-mm(2), face.Min.Y+mm(6), face.Min.X, face.Min.Y+mm(22)),
		plane.R(face.Min.X+mm(3), face.Min.Y-mm(2), face.Min.X+mm(14), face.Min.Y),
	} {
		d.own.Add(&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.Carcass}, Rect: stop, Filled: true})
	}
	side := d.wraps.wrap(d.say.Say(message.New("side stop: edge distance")), lettering.Small, true, mm(20))
	d.lines(r.Min.X, face.Min.Y+mm(22), lettering.Small, true, side)
	d.text(plane.Point{X: face.Max.X, Y: face.Min.Y - mm(3)}, drawing.Anchor{X: 1, Y: 1}, lettering.Small, true, d.say.Say(message.New("bottom stop: drop")))
	d.text(plane.Point{X: face.Max.X, Y: face.Min.Y - mm(3) - lettering.Pitch(lettering.Small)}, drawing.Anchor{X: 1, Y: 1}, lettering.Small, false, d.say.Say(message.New("bottom edge, towards you")))
	for i := range length.Length(3) {
		d.own.Add(&drawing.Circle{Tag: drawing.Tag{Meaning: drawing.HoleEdge}, Centre: plane.Point{X: jig.Min.X + mm(8), Y: jig.Min.Y + mm(6+7*int64(i))}, Radius: mm(1)})
	}
	d.text(plane.Point{X: (jig.Max.X + face.Max.X) / 2, Y: face.Centre().Y}, drawing.Anchor{X: 0.5, Y: 0.5}, lettering.Small, false, d.say.Say(message.New("rear face")))
	return r.Min.Y
}

// jigBoxes parts the settings into boxes of at most so many rows.
func jigBoxes(resets []list.Reset, most int) []jigBox {
	var boxes []jigBox
	for i, r := range resets {
		b := jigBox{number: i + 1, reset: r}
		if i > 0 {
			b.moved = list.Moved(resets[i-1].Setting, r.Setting)
		}
		rows := bushings(r)
		for n := 0; len(rows) > 0; n++ {
			part := b
			part.first, part.rows = n, nil
			for left := most; len(rows) > 0 && (left > jigHoleRows || part.rows == nil); {
				row := rows[0]
				left = max(left-jigHoleRows, 1)
				if len(row.fronts) > left {
					rows[0].fronts, row.fronts = row.fronts[left:], row.fronts[:left]
				} else {
					rows = rows[1:]
				}
				left -= len(row.fronts)
				part.rows = append(part.rows, row)
			}
			boxes = append(boxes, part)
		}
	}
	return boxes
}

// bushings gathers what is drilled with a setting by the row of holes.
func bushings(r list.Reset) []jigBushings {
	var all []jigBushings
	at := map[string]int{}
	for _, w := range r.Work {
		key := heights(w.Holes, func(h plan.Hole) string { return strconv.FormatInt(int64(h.AboveRunner), 10) })
		i, ok := at[key]
		if !ok {
			i = len(all)
			at[key] = i
			all = append(all, jigBushings{holes: w.Holes})
		}
		row := &all[i]
		if n := len(row.fronts); n == 0 || row.fronts[n-1].front != w.Front {
			row.fronts = append(row.fronts, jigFront{front: w.Front})
		}
		f := &row.fronts[len(row.fronts)-1]
		f.left, f.right = f.left || w.Side == plan.Right, f.right || w.Side == plan.Left
	}
	return all
}

func heights(holes []plan.Hole, say func(plan.Hole) string) string {
	var all []string
	for _, h := range holes {
		all = append(all, say(h))
	}
	return strings.Join(all, " · ")
}

// draw writes a box from the upper edge of an area downwards and gives how high it is.
func (b jigBox) draw(d *draft, r plane.Rect, o Options) length.Length {
	left, width := r.Min.X+jigPad, r.Width()-2*jigPad
	y := r.Max.Y - jigPad
	y = d.paragraph(left, y, width, lettering.Medium, true, message.New("%v.  %v", b.number, b.bit(o)))
	switch {
	case b.first > 0:
		y = d.paragraph(left, y, width, lettering.Small, false, message.New("Goes on: nothing is moved."))
	case !b.moved.Empty():
		y = d.paragraph(left, y, width, lettering.Small, false, b.moved)
	}
	y -= mm(2)
	for i, f := range []struct {
		name  message.Message
		value length.Length
	}{
		{message.New("edge distance"), b.reset.Setting.EdgeDistance},
		{message.New("drop"), b.reset.Setting.Drop},
	} {
		x := left + length.Length(i)*width/2
		d.text(plane.Point{X: x, Y: y}, drawing.Anchor{Y: 1}, lettering.Small, false, d.say.Say(f.name))
		d.text(plane.Point{X: x, Y: y - mm(4)}, drawing.Anchor{Y: 1}, lettering.Huge, true, o.Say.Figure(f.value))
	}
	y -= mm(4) + lettering.Huge + mm(4)
	for _, row := range b.rows {
		y = d.paragraph(left, y, width, lettering.Small, false, message.New("bushings above the runner"))
		y = d.paragraph(left, y, width, lettering.Large, true, said(heights(row.holes, func(h plan.Hole) string {
			return list.MakersLength{Length: h.AboveRunner, Sheet: row.fronts[0].front.Sheet}.Own(o.Say)
		})))
		y = d.paragraph(left, y, width, lettering.Small, false, message.New("check, from the bottom edge: %v", heights(row.holes, func(h plan.Hole) string { return o.Say.Figure(h.At.Y) }))) - mm(1)
		for _, f := range row.fronts {
			y = f.draw(d, left, y, width, o)
		}
		y -= mm(2)
	}
	return r.Max.Y - y
}

// bit says what is in the drill and where its stop is set.
func (b jigBox) bit(o Options) message.Message {
	f := b.reset.Work[0].Front
	diameter, depth := list.MakersLength{Length: b.reset.Bit.Diameter, Sheet: f.Sheet}, list.MakersLength{Length: b.reset.Bit.Depth, Sheet: f.Sheet}
	if b.reset.Bit.Depth == 0 {
		return message.New("Bit Ø %v", diameter)
	}
	return message.New("Bit Ø %v, depth stop %v", diameter, depth)
}

// draw writes a front with a box to tick for each hand, and gives the y below.
func (f jigFront) draw(d *draft, left, top, width length.Length, o Options) length.Length {
	const hand = 15 * length.Millimetre
	for i, h := range []struct {
		drilled bool
		name    message.Message
	}{{f.left, message.New("left")}, {f.right, message.New("right")}} {
		if h.drilled {
			x := left + length.Length(i)*hand
			d.box(drawing.Carcass, plane.R(x, top-jigTick, x+jigTick, top))
			d.text(plane.Point{X: x + jigTick + mm(1), Y: top - jigTick/2}, drawing.Anchor{Y: 0.5}, lettering.Small, false, d.say.Say(h.name))
		}
	}
	x := left + 2*hand + mm(1)
	name := strconv.Itoa(f.front.Number) + "  " + f.front.Name
	if o.refused[forbidden{check.Drilling, f.front.Number}] {
		name = strconv.Itoa(f.front.Number) + "  " + d.say.Say(message.New("DO NOT DRILL"))
	}
	name = lettering.Shorten(name, lettering.Medium, true, left+width-x)
	d.text(plane.Point{X: x, Y: top - jigTick/2}, drawing.Anchor{Y: 0.5}, lettering.Medium, true, name)
	return top - jigRow
}
