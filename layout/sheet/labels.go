package sheet

import (
	"slices"
	"strconv"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// labelPages are sheets of stickers, a sticker for each board, row by row. They print
// nothing but what belongs on the stickers, and that only where the printer reaches. A
// format that does not lie on the paper has one page that says so.
func labelPages(p *plan.Plan, o Options) []Page {
	w, h := o.Paper.Width, labelHeight(o.Paper)
	labels := list.Labels(p)
	if len(labels) == 0 {
		return nil
	}
	if err := o.CheckLabels(); err != nil {
		d := newDraft(Labels, Labels.Title(), w, h, o)
		d.paragraph(d.area.Min.X, d.area.Max.Y, d.area.Width(), lettering.Medium, true, message.Of(err))
		return []Page{d.finish()}
	}
	first, across, down, _ := o.Labels.stickers(w, h)
	each := o.Labels.Columns * o.Labels.Rows
	at := max(o.First, 1) - 1
	var pages []Page
	var d *draft
	for _, l := range labels {
		if d == nil {
			d = newDraft(Labels, Labels.Title(), w, h, o)
		}
		place := first.Move(plane.Point{X: length.Length(at%o.Labels.Columns) * across, Y: -length.Length(at/o.Labels.Columns) * down})
		d.label(&l, written(place, d.area), o)
		if at++; at == each {
			pages, d, at = append(pages, d.finish()), nil, 0
		}
	}
	if d != nil {
		pages = append(pages, d.finish())
	}
	return pages
}

// stickerRow is a line of a sticker below its head; rows with a greater need go first
// where there is no room.
type stickerRow struct {
	left, right string
	middle      string // written lighter
	size        length.Length
	bold        bool
	need        int
}

// What rows are needed for: without the size no sticker is one; the hands decide over
// the panel.
const (
	needSize = iota
	needHands
	needCut
	needPlace
	needPaper
)

// sticker is what stands on one label.
type sticker struct {
	head, name string
	headSize   length.Length
	rows       []stickerRow
}

// label writes a sticker into an area: number or what it is, name, size; what lies at
// which hand; where it belongs, the way of the grain, and what paper it goes with, as
// far as there is room.
func (d *draft) label(l *list.Label, r plane.Rect, o Options) {
	s := d.sticker(l, r.Width(), o)
	for _, give := range []func(){
		func() { s.drop(needPaper) }, func() { s.headSize = min(s.headSize, lettering.Large) }, func() { s.headSize = lettering.Medium },
		func() { s.drop(needPlace) }, func() { s.drop(needCut) }, func() { s.drop(needHands) },
	} {
		if s.high() <= r.Height() {
			break
		}
		give()
	}
	up, upSize := "▲ "+d.say.Say(l.Up), lettering.Medium
	if lettering.Width(up, upSize, true) > r.Width()*45/100 {
		upSize = lettering.Small
	}
	d.text(plane.Point{X: r.Max.X, Y: r.Max.Y}, drawing.Anchor{X: 1, Y: 1}, upSize, true, up)
	end := r.Max.X - lettering.Width(up, upSize, true) - mm(3)
	for _, less := range []length.Length{lettering.Medium, lettering.Small} {
		if lettering.Width(s.head, s.headSize, true) > end-r.Min.X {
			s.headSize = less
		}
	}
	head := lettering.Shorten(s.head, s.headSize, true, end-r.Min.X)
	d.text(plane.Point{X: r.Min.X, Y: r.Max.Y}, drawing.Anchor{Y: 1}, s.headSize, true, head)
	x, nameSize := r.Min.X+lettering.Width(head, s.headSize, true)+mm(3), lettering.Medium
	if lettering.Width(s.name, nameSize, true) > end-x {
		nameSize = lettering.Small
	}
	d.text(plane.Point{X: x, Y: r.Max.Y}, drawing.Anchor{Y: 1}, nameSize, true, lettering.Shorten(s.name, nameSize, true, end-x))
	y := r.Max.Y - stickerPitch(s.headSize)
	for _, q := range s.rows {
		room := r.Width()
		if q.right != "" {
			room -= lettering.Width(q.right, q.size, q.bold) + mm(2)
		}
		d.text(plane.Point{X: r.Max.X, Y: y}, drawing.Anchor{X: 1, Y: 1}, q.size, q.bold, q.right)
		d.text(plane.Point{X: r.Min.X, Y: y}, drawing.Anchor{Y: 1}, q.size, q.bold, lettering.Shorten(q.left, q.size, q.bold, room))
		d.text(plane.Point{X: r.Centre().X, Y: y}, drawing.Anchor{X: 0.5, Y: 1}, q.size, false, q.middle)
		y -= stickerPitch(q.size)
	}
}

// sticker gathers all that a label has to say.
func (d *draft) sticker(l *list.Label, width length.Length, o Options) sticker {
	say := func(m message.Message) string { return d.say.Say(m) }
	s := sticker{head: say(l.What), headSize: lettering.Large}
	place := say(l.Cabinet)
	if l.Number > 0 {
		s.head, s.name, s.headSize = strconv.Itoa(l.Number), l.Name, lettering.Huge
		place = joined(say(l.What), place)
	}
	size, letters := l.Size(d.say)+" "+d.say.Unit.Symbol(), lettering.Medium
	if lettering.Width(size, letters, true) > width {
		letters = lettering.Small
	}
	for _, part := range lettering.Wrap(size, letters, true, width) {
		s.rows = append(s.rows, stickerRow{left: part, size: letters, bold: true, need: needSize})
	}
	if cut := l.CutSize(d.say); cut != "" {
		s.rows = append(s.rows, stickerRow{left: say(message.New("cut to %v", cut)), size: lettering.Small, need: needCut})
	}
	grain := ""
	if a := l.GrainArrow(); a != "" {
		grain = say(message.New("grain %v", a))
	}
	s.rows = append(s.rows, stickerRow{left: place, right: grain, size: lettering.Small, need: needPlace})
	if !l.Left.Empty() {
		hands := stickerRow{left: "◄ " + say(l.Left), middle: say(l.In), right: say(l.Right) + " ►", size: lettering.Small, bold: true, need: needHands}
		wide := func(s string, bold bool) length.Length { return lettering.Width(s, hands.size, bold) + mm(2) }
		if 2*max(wide(hands.left, true), wide(hands.right, true))+wide(hands.middle, false) > width && hands.middle != "" {
			s.rows = append(s.rows, stickerRow{left: hands.middle, size: hands.size, need: needHands})
			hands.middle = ""
		}
		s.rows = append(s.rows, hands)
	}
	paper := stickerRow{left: joined(o.stamp.job, o.stamp.revision, o.Date), right: o.stamp.plan, size: lettering.Tiny, need: needPaper}
	if lettering.Width(paper.left+between+paper.right, paper.size, false) > width {
		paper.left = joined(o.stamp.job, o.stamp.revision)
	}
	s.rows = append(s.rows, paper)
	return s
}

func (s *sticker) drop(need int) {
	s.rows = slices.DeleteFunc(s.rows, func(q stickerRow) bool { return q.need == need })
}

// high is what the sticker takes, the tails of its last line's letters included.
func (s *sticker) high() length.Length {
	h := stickerPitch(s.headSize)
	for i, q := range s.rows {
		if i+1 == len(s.rows) {
			return h + q.size + lettering.Descent(q.size)
		}
		h += stickerPitch(q.size)
	}
	return h
}

// stickerPitch is from the top of a line's capitals to that of the next: less than in a
// paragraph, as every line has its own size and place.
func stickerPitch(size length.Length) length.Length { return size*14/10 + mm(1)/2 }
