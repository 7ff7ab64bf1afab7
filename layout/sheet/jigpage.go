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

// Sizes of the settings. They are read at arm's length: the two figures that the
// stops are set to are Huge, what a hand acts on else is Small or more.
const (
	jigPad    = 15 * length.Millimetre / 10
	jigRow    = 65 * length.Millimetre / 10 // of a front with its boxes to tick
	jigTick   = 4 * length.Millimetre
	jigHand   = 155 * length.Millimetre / 10     // a box to tick with its word
	jigFronts = 2*jigHand + 12*length.Millimetre // for fronts, at least
	jigSketch = 62 * length.Millimetre
)

// jigBox is a setting of the jig for a row of bushings, or a part of the fronts that
// need it.
type jigBox struct {
	number int // of the setting
	reset  list.Reset
	before *list.Setting // that the stops have; nil: none yet
	row    jigBushings
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

// jigTable writes boxes one below the other, their figures in columns.
type jigTable struct {
	o                             Options
	boxes                         []jigBox
	bit, edge, drop, holes, width length.Length // of the columns, and of all
	under                         bool          // bushings stand under the two figures: there is no room beside them
}

// newJigTable makes the boxes of all settings; none is higher than the room, where a
// single front has room.
func newJigTable(p *plan.Plan, width, room length.Length, o Options) *jigTable {
	t := &jigTable{o: o, width: width}
	resets := list.Resets(p)
	most := max(int(room/jigRow)-1, 1)
	t.boxes = jigBoxes(resets, most)
	t.columns()
	for most > 1 && slices.ContainsFunc(t.boxes, func(b jigBox) bool { return t.high(b) > room }) {
		most = most * 2 / 3
		t.boxes = jigBoxes(resets, most)
	}
	return t
}

// columns makes the columns as wide as what stands in them.
func (t *jigTable) columns() {
	const apart = 4 * length.Millimetre
	o := t.o
	wide := func(column *length.Length, size length.Length, bold bool, s string) {
		*column = max(*column, lettering.Width(s, size, bold)+apart)
	}
	heads := t.heads()
	for i, column := range []*length.Length{&t.bit, &t.edge, &t.drop} {
		for _, s := range heads[i] {
			wide(column, lettering.Small, false, s)
		}
	}
	var checks length.Length // they may go on in another line
	for _, b := range t.boxes {
		for _, s := range b.bit(o) {
			wide(&t.bit, lettering.Medium, true, s)
		}
		wide(&t.edge, lettering.Huge, true, o.Say.Figure(b.reset.Setting.EdgeDistance))
		wide(&t.drop, lettering.Huge, true, o.Say.Figure(b.reset.Setting.Drop))
		wide(&t.holes, lettering.Large, true, b.row.above(o))
		wide(&checks, lettering.Small, false, o.Say.Say(b.row.check(o)))
	}
	room := max(t.width-2*jigPad-t.bit-t.edge-t.drop-jigFronts, 0)
	t.holes, t.under = min(max(t.holes, checks), room), t.holes > room
}

// heads are the lines that stand over the columns, two each.
func (t *jigTable) heads() (all [4][]string) {
	for i, m := range []message.Message{
		message.New("bit and\ndepth stop"), message.New("edge distance\n(side stop)"), message.New("drop\n(bottom stop)"), message.New("bushings above\nthe runner"),
	} {
		all[i] = strings.Split(t.o.Say.Say(m), "\n")
	}
	return all
}

// jigHeads is how high what stands over the columns is.
const jigHeads = 2*17*lettering.Small/10 + length.Millimetre

func (t *jigTable) lefts(left length.Length) [5]length.Length {
	a := left + jigPad
	return [5]length.Length{a, a + t.bit, a + t.bit + t.edge, a + t.bit + t.edge + t.drop, a + t.bit + t.edge + t.drop + t.holes}
}

// head writes what stands over the columns and gives the y below it.
func (t *jigTable) head(d *draft, left, top length.Length) length.Length {
	x := t.lefts(left)
	for i, s := range t.heads() {
		if i < 3 || !t.under {
			d.lines(x[i], top, lettering.Small, false, s)
		}
	}
	return top - jigHeads
}

// jigComma is what a decimal comma and some air take below a figure.
const jigComma = 2 * length.Millimetre

// draw writes a box and gives the y below it.
func (t *jigTable) draw(d *draft, b jigBox, left, top length.Length) length.Length {
	o, x := t.o, t.lefts(left)
	low := top - jigPad
	d.lines(x[0], low-mm(1), lettering.Medium, true, b.bit(o))
	for i, of := range []func(list.Setting) length.Length{
		func(s list.Setting) length.Length { return s.EdgeDistance }, func(s list.Setting) length.Length { return s.Drop },
	} {
		v := of(b.reset.Setting)
		d.text(plane.Point{X: x[1+i], Y: low}, drawing.Anchor{Y: 1}, lettering.Huge, true, o.Say.Figure(v))
		if b.before != nil && of(*b.before) == v {
			d.text(plane.Point{X: x[1+i], Y: low - lettering.Huge - jigComma}, drawing.Anchor{Y: 1}, lettering.Small, false, o.Say.Say(message.New("stays")))
		}
	}
	ends := low - lettering.Huge - jigComma - lettering.Small
	from, y := x[3], low-mm(1)
	if t.under {
		head := strings.Join(t.heads()[3], " ")
		from, y = x[1], d.paragraph(x[1], ends-mm(2), x[4]-x[1]-mm(2), lettering.Small, false, said(head))
	}
	y = d.paragraph(from, y, x[4]-from-mm(2), lettering.Large, true, said(b.row.above(o)))
	y = d.paragraph(from, y+mm(1), x[4]-from-mm(2), lettering.Small, false, b.row.check(o)) + mm(1)
	ends = min(ends, y, low-mm(1)-2*lettering.Pitch(lettering.Medium)+mm(1))
	y = low - mm(1)/2
	for _, f := range b.row.fronts {
		y = f.draw(d, x[4], y, left+t.width-jigPad-x[4], o)
	}
	ends = min(ends, y) - jigPad
	d.box(drawing.Frame, plane.R(left, ends, left+t.width, top))
	return ends
}

// high is how high a box is.
func (t *jigTable) high(b jigBox) length.Length {
	return -t.draw(&draft{own: &drawing.Drawing{}, say: t.o.Say, wraps: t.o.wraps}, b, 0, 0)
}

// jigPages are the settings of a drilling jig, for the bench.
func jigPages(p *plan.Plan, o Options) []Page {
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		h = w * 14142 / 10000
	}
	first := newDraft(JigSettings, JigSettings.Title(), w, h, o)
	room := min(first.jigHead(false, o), first.jigHead(true, o)) - first.area.Min.Y - pageNumber - jigHeads
	t := newJigTable(p, first.area.Width(), room, o)
	boxes := t.boxes
	var pages []Page
	for len(pages) == 0 || len(boxes) > 0 {
		d := newDraft(JigSettings, JigSettings.Title(), w, h, o)
		top := d.jigHead(len(pages) > 0, o)
		if len(boxes) == 0 {
			top = d.paragraph(d.area.Min.X, top, d.area.Width(), lettering.Medium, false, message.New("No front of this project is drilled."))
		} else {
			top = t.head(d, d.area.Min.X, top)
		}
		for first := true; len(boxes) > 0 && (first || top-t.high(boxes[0]) >= d.area.Min.Y+pageNumber); first = false {
			top = t.draw(d, boxes[0], d.area.Min.X, top)
			boxes = boxes[1:]
		}
		if len(boxes) == 0 {
			d.jigNotes(p, top-mm(2))
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
		y = d.paragraph(d.area.Min.X, y, width, lettering.Small, false, jigWords()) - mm(1)
	}
	if list.InInches(o.Say) {
		d.rounded = len(d.own.Marks)
		y = d.paragraph(d.area.Min.X, y, width, lettering.Small, false, list.Rounded()) - mm(1)
		d.roundedEnd = len(d.own.Marks)
	}
	bottom := d.jigInItsCorner(plane.R(d.area.Max.X-jigSketch, d.area.Max.Y-mm(44), d.area.Max.X, d.area.Max.Y))
	return min(y, bottom) - mm(2)
}

// jigWords say what the two figures are.
func jigWords() message.Message {
	return message.New("Edge distance: from the front’s side edge to the line of holes. Drop: how far the front’s bottom edge lies below the runner’s lower edge (negative: above).")
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

// jigBoxes parts the settings into boxes of at most so many fronts.
func jigBoxes(resets []list.Reset, most int) []jigBox {
	var boxes []jigBox
	var before *list.Setting
	for i := range resets {
		for _, row := range bushings(resets[i]) {
			for fronts := range slices.Chunk(row.fronts, most) {
				boxes = append(boxes, jigBox{i + 1, resets[i], before, jigBushings{row.holes, fronts}})
				before = &resets[i].Setting
			}
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

// above are the bushings as the jig has them.
func (r jigBushings) above(o Options) string {
	return heights(r.holes, func(h plan.Hole) string {
		own := list.MakersLength{Length: h.AboveRunner, Sheet: r.fronts[0].front.Sheet}.Own(o.Say)
		return strings.ReplaceAll(own, " ", "\u00a0") // a figure is not parted from its unit
	})
}

// check is where their holes are on the front.
func (r jigBushings) check(o Options) message.Message {
	return message.New("from bottom edge: %v", heights(r.holes, func(h plan.Hole) string { return strings.ReplaceAll(o.Say.Figure(h.At.Y), " ", "\u00a0") }))
}

// bit says what is in the drill and where its stop is set, below each other.
func (b jigBox) bit(o Options) []string {
	f := b.row.fronts[0].front
	diameter, depth := list.MakersLength{Length: b.reset.Bit.Diameter, Sheet: f.Sheet}, list.MakersLength{Length: b.reset.Bit.Depth, Sheet: f.Sheet}
	all := []string{o.Say.Say(message.New("%v.  Ø %v", b.number, diameter.Own(o.Say)))}
	if b.reset.Bit.Depth > 0 {
		all = append(all, o.Say.Say(message.New("stop %v", depth.Own(o.Say))))
	}
	return all
}

// draw writes a front with a box to tick for each hand, and gives the y below. Where it
// must not be drilled there is nothing to tick.
func (f jigFront) draw(d *draft, left, top, width length.Length, o Options) length.Length {
	number, middle := strconv.Itoa(f.front.Number), top-jigTick/2
	write := func(x, size length.Length, bold bool, s string) {
		d.text(plane.Point{X: x, Y: middle}, drawing.Anchor{Y: 0.5}, size, bold, lettering.Shorten(s, size, bold, left+width-x))
	}
	if o.refused[forbidden{check.Drilling, f.front.Number}] {
		write(left, lettering.Medium, true, number+"  "+d.say.Say(message.New("DO NOT DRILL")))
		return top - jigRow
	}
	for i, h := range []struct {
		drilled bool
		name    message.Message
	}{{f.left, message.New("left")}, {f.right, message.New("right")}} {
		if h.drilled {
			x := left + length.Length(i)*jigHand
			d.box(drawing.Carcass, plane.R(x, top-jigTick, x+jigTick, top))
			write(x+jigTick+mm(1), lettering.Small, false, d.say.Say(h.name))
		}
	}
	x := left + 2*jigHand + mm(1)
	write(x, lettering.Medium, true, number)
	if x += lettering.Width(number+" ", lettering.Medium, true); f.front.Named() && left+width-x > lettering.Width("xxxxxxx", lettering.Small, false) {
		write(x, lettering.Small, false, f.front.Name)
	}
	return top - jigRow
}
