package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// pencilLines tells above a template where it is laid: a sentence, or a small
// table with a row a board or front. It is read at the bench, so it is lettered
// larger than labels.
type pencilLines struct {
	only  message.Message // the sentence; empty: the table
	heads []message.Message
	rows  [][]string
}

const columnGap = 4 * length.Millimetre

// texts are the lines above a part of a block; of names another part. Only the
// first part has the table.
func (p *stackPart) texts(of func(col int) message.Message) []headLine {
	name := p.block.name
	if p.t.cols > 1 {
		name = message.New("%v. Part %v of %v from the left", name, p.col+1, p.t.cols)
	}
	var lines []headLine
	if !p.block.spread.stop.Empty() {
		lines = append(lines, headLine{p.block.spread.stop, lettering.Medium, true})
	}
	lines = append(lines, headLine{name, lettering.Small, true})
	if p.t.cols == 1 {
		return lines
	}
	crosses := message.New("At the crosses: the distance to the front edge.")
	if p.block.spread.line != 0 {
		crosses = message.New("At the crosses: the distance to the pencil line.")
	}
	if p.col > 0 {
		crosses = message.New("Cut along the dashed line and lay it over %v, cross on cross. %v", of(p.col-1), crosses)
	}
	if p.col+1 < p.t.cols {
		crosses = message.New("Its right end lies under %v, cross on cross. %v", of(p.col+1), crosses)
	}
	return append(lines, headLine{crosses, lettering.Tiny, false})
}

// textWidth is what the small map leaves.
func (p *stackPart) textWidth(width length.Length) length.Length {
	if p.block.sketch.Empty() || p.col > 0 {
		return width
	}
	return width - mapWidth - mm(3)
}

func (s *stack) textHeight(p stackPart, width length.Length) length.Length {
	d := s.blank()
	high := mm(1)
	width = p.textWidth(width)
	for _, l := range p.texts(func(int) message.Message { return message.New("part %v on page %v", 88, 888) }) {
		high += d.heightOf(width, l.size, l.bold, l.say)
	}
	if p.col == 0 {
		high += p.block.lines.write(d, plane.R(0, 0, width, 0), false)
	}
	if !p.block.sketch.Empty() && p.col == 0 {
		high = max(high, mapHeight+mm(2))
	}
	return high
}

// write writes what stands above a part at the top of its area.
func (s *stack) write(d *draft, area plane.Rect, p *stackPart, of func(col int) message.Message) {
	y, width := area.Max.Y, p.textWidth(area.Width())
	for _, l := range p.texts(of) {
		y = d.paragraph(area.Min.X, y, width, l.size, l.bold, l.say)
	}
	if p.col > 0 {
		return
	}
	p.block.lines.write(d, plane.R(area.Min.X, 0, area.Min.X+width, y), true)
	if width < area.Width() {
		box := plane.R(area.Max.X-mapWidth, area.Max.Y-mapHeight, area.Max.X, area.Max.Y)
		d.smallMap(box, p.block.sketch, p.block.spread.bores, p.block.spread.region, nil)
	}
}

// write writes the table, or only measures it, its top at the top of the area,
// and gives its height. The last column takes what the others leave.
func (l pencilLines) write(d *draft, area plane.Rect, draw bool) length.Length {
	y := area.Max.Y
	if !l.only.Empty() {
		if draw {
			d.paragraph(area.Min.X, y, area.Width(), lettering.Small, false, l.only)
		}
		return d.heightOf(area.Width(), lettering.Small, false, l.only)
	}
	y -= mm(1)
	widths := l.widths(d, area.Width())
	row := func(cells []string, bold bool) {
		left, low := area.Min.X, y
		for i, c := range cells {
			lines := d.wraps.wrap(c, lettering.Small, bold, widths[i]-columnGap)
			if draw {
				d.lines(left, y, lettering.Small, bold, lines)
			}
			low = min(low, y-length.Length(len(lines))*lettering.Pitch(lettering.Small))
			left += widths[i]
		}
		y = low
	}
	var heads []string
	for _, h := range l.heads {
		heads = append(heads, d.say.Say(h))
	}
	row(heads, true)
	if draw {
		d.line(drawing.Frame, area.Min.X, y+mm(1)/2, area.Max.X, y+mm(1)/2)
	}
	y -= mm(1)
	for _, r := range l.rows {
		row(r, false)
	}
	return area.Max.Y - y
}

// widths gives each column but the last what its longest cell takes, at most
// half of what is left.
func (l pencilLines) widths(d *draft, width length.Length) []length.Length {
	widths := make([]length.Length, len(l.heads))
	for i := range l.heads {
		if i+1 == len(l.heads) {
			widths[i] = width
			break
		}
		widest := lettering.Width(d.say.Say(l.heads[i]), lettering.Small, true)
		for _, r := range l.rows {
			widest = max(widest, lettering.Width(r[i], lettering.Small, false))
		}
		widths[i] = min(widest+columnGap+1, width/2)
		width -= widths[i]
	}
	return widths
}
