package letter

import (
	"slices"
	"strconv"
	"strings"

	"frontlay/layout/drawing"
	"frontlay/model"
)

// caption is what is written on a front, with the part of its face that is seen.
type caption struct {
	*drawing.Caption
	face    Box
	drawing int
}

// Measures of a caption, in heights of capitals.
const (
	besideCaption = 1.1  // from the sides of the front
	ringHigh      = 2.3  // of the ring
	ringWide      = 1.3  // what a ring is wider than a number that needs more than a circle
	aroundRing    = 0.25 // above and below
	behindRing    = 0.6  // to the name
	beforeFigure  = 0.8  // from the name, or from a note
	underCaption  = 1.4  // from the ring's middle to the base line of what stands below it, more than half of the ring
	aroundNumber  = 0.3  // above and below a number without ring
	twoLines      = 1.5  // from the base line of a name's first line to that of its second
	aroundSign    = 0.5  // beside such a number, where something is found
)

// leastOfName is how many letters of a name that is cut are too few to tell it.
const leastOfName = 5

// rowOf is the front on which a row stands.
type rowOf struct {
	drawing int
	place   model.Place
}

// row is the line on which a caption stands: the height of its middle, and what
// is free between name and height.
type row struct {
	y, high float64
	free    gap
}

// fitting is how a caption would be written in one size.
type fitting struct {
	size, small  float64 // of number and name, and of the height
	y            float64
	ring         bool
	sign         bool    // of what is found, where a ring has no room
	from, to     float64 // of the row
	number, name string
	variant      Variant // of the name
	figure       string
	under        bool     // the figure stands below the number
	below        bool     // the name does
	lines        []string // the name in two lines behind the number; nil: in one
	wholly       bool     // nothing is left out or cut
	wide         struct{ number, name, figure float64 }
}

// writeCaptions writes what stands on fronts: in each drawing all in one size, the
// largest in which as many are whole as in the smallest.
func (p *Picture) writeCaptions() {
	for first := 0; first < len(p.captions); {
		last := first
		for last < len(p.captions) && p.captions[last].drawing == p.captions[first].drawing {
			last++
		}
		all := p.captions[first:last]
		series := p.metrics.Sizes(all[0].Size)
		sizes := series
		if least := all[0].Least; least > 0 {
			low := min(p.metrics.Sizes(least)[0], series[0])
			sizes = slices.DeleteFunc(slices.Clone(series), func(s float64) bool { return s < low })
		}
		best, most := []fitting(nil), -1
		for i := len(sizes) - 1; i >= 0; i-- {
			fits, n := make([]fitting, len(all)), 0
			for k := range all {
				fits[k] = p.fit(&all[k], sizes[i])
				if fits[k].number != "" {
					n++
				}
				if fits[k].figure != "" {
					n++
				}
				if fits[k].wholly {
					n++
				}
			}
			if n >= most {
				best, most = fits, n
			}
		}
		for k := range all {
			f := best[k]
			if f.number == "" {
				f = p.fit(&all[k], series[len(series)-1])
				if all[k].Least > 0 {
					f.name, f.figure, f.under, f.below, f.lines = "", "", false, false, nil
				}
			}
			p.writeCaption(&all[k], f)
		}
		first = last
	}
}

// fit finds the row of a caption and what of it has room there: the number before
// the height, the height before the name. number is empty where there is no room
// even for that.
func (p *Picture) fit(c *caption, size float64) fitting {
	strong := p.Strong != nil && p.Strong(c.Sized())
	f := fitting{size: size, small: max(size, p.metrics.Sizes(p.style.Figure)[0]), number: strconv.Itoa(c.Number), figure: p.say.Figure(c.Height), name: p.say.Say(c.Name)}
	if c.Height == 0 {
		f.figure = ""
	}
	f.wide.number = p.metrics.Width(f.number, size, true)
	f.wide.figure = p.metrics.Width(f.figure, f.small, strong)
	if room := c.face.width() - (2*besideCaption+beforeFigure)*size - p.numberWidth(&f, true); f.wide.figure > room {
		f.small = size
		f.wide.figure = p.metrics.Width(f.figure, size, strong)
	}
	f.wide.name = p.metrics.Width(f.name, size, true)
	high := c.face.height()
	f.ring = high >= (ringHigh+2*aroundRing)*size && c.face.width() >= p.numberWidth(&f, true)+2*aroundRing*size
	f.sign = !f.ring && c.Severity != drawing.OfNothing && c.face.width() >= f.wide.number+2*aroundSign*size
	if face := c.face; !f.ring && (high < (1+2*aroundNumber)*size || face.width() < f.wide.number+2*aroundNumber*size) {
		return fitting{}
	}
	if !p.findRow(c, &f) {
		return fitting{}
	}
	left := f.to - f.from - p.numberWidth(&f, f.ring)
	f.under = f.figure != "" && left < f.wide.figure+beforeFigure*size
	if f.under {
		if f.wide.figure > f.to-f.from || !p.clear(c, &f, f.wide.figure) {
			f.figure = ""
		}
		f.name = ""
		return f
	}
	if f.figure != "" {
		left -= f.wide.figure + beforeFigure*size
	}
	f.wholly = true
	if f.name == "" {
		return f
	}
	if above, below := p.metrics.Reach(f.name, size); f.y+size/2+above >= c.face.Hi.Y || f.y-size/2-below <= c.face.Lo.Y {
		f.wholly, f.name = false, ""
		return f
	}
	if left -= behindRing * size; left < f.wide.name {
		room := f.to - f.from
		if p.style.Lines { // one runs beside it
			room -= f.wide.figure + beforeFigure*size
		}
		if f.wide.name <= room && p.clear(c, &f, f.wide.name) {
			f.below = true
			p.centre(c, &f)
			return f
		}
		if f.lines = p.inTwo(c, &f, left); f.lines != nil {
			return f
		}
		f.wholly, f.variant = false, Cut
		if f.name = p.shortened(f.name, size, true, left); c.Least > 0 || len([]rune(f.name)) <= leastOfName {
			f.name = "" // a stump tells less than the number alone
		}
		f.wide.name = p.metrics.Width(f.name, size, true)
	}
	return f
}

// inTwo gives the name in two lines that have room behind the number of a caption; nil
// where they have none.
func (p *Picture) inTwo(c *caption, f *fitting, room float64) []string {
	if c.Top {
		return nil
	}
	for i := len(f.name) - 1; i > 0; i-- {
		first, second := f.name[:i], strings.TrimSpace(f.name[i:])
		if f.name[i] != ' ' || p.metrics.Width(first, f.size, true) > room {
			continue
		}
		if p.metrics.Width(second, f.size, true) > room {
			return nil
		}
		above, _ := p.metrics.Reach(first, f.size)
		_, below := p.metrics.Reach(second, f.size)
		low, high := f.y-(twoLines/2+0.5)*f.size-below, f.y+(twoLines/2+0.5)*f.size+above
		x := f.from + p.numberWidth(f, f.ring) + behindRing*f.size
		b := Box{Point{x, low}, Point{x + room, high}}
		if low <= c.face.Lo.Y || high >= c.face.Hi.Y || p.taken.covers(b) || p.strokes.through(b, 0) {
			return nil
		}
		return []string{first, second}
	}
	return nil
}

// centre lifts the row of a caption whose name stands below the number, so that both
// together are in the middle of the front, where the row is free there too.
func (p *Picture) centre(c *caption, f *fitting) {
	if c.Top {
		return
	}
	high := (1 + 2*aroundNumber) * f.size
	if f.ring {
		high = ringHigh * f.size
	}
	up := *f
	up.y += (f.lower() - high/2) / 2
	row := Box{Point{f.from, up.y - high/2}, Point{f.to, up.y + high/2}}
	if row.Hi.Y < c.face.Hi.Y-aroundRing*f.size && !p.taken.covers(row) && !p.strokes.through(row, 0) && p.clear(c, &up, f.wide.name) {
		*f = up
	}
}

// clear tells that a text so wide has room below the number of a caption.
func (p *Picture) clear(c *caption, f *fitting, width float64) bool {
	base := f.y - f.lower()
	b := Box{Point{f.from, base - 0.3*f.size}, Point{f.from + width, base + f.size}}
	return base-(0.3+aroundNumber)*f.size >= c.face.Lo.Y && !p.taken.covers(b) && !p.strokes.through(b, 0)
}

// lower is from the middle of a caption to the base line of what is below it.
func (f *fitting) lower() float64 {
	if f.ring {
		return (ringHigh/2 + underCaption) * f.size
	}
	return (0.5 + underCaption) * f.size
}

// numberWidth is how much of a row a number takes.
func (p *Picture) numberWidth(f *fitting, ring bool) float64 {
	if ring {
		return max(ringHigh*f.size, f.wide.number+ringWide*f.size)
	}
	if f.sign {
		return f.wide.number + 2*aroundSign*f.size
	}
	return f.wide.number
}

// findRow looks for the row of a caption: where it asks for the top of the front,
// below the upper edge, else in the middle or a little lower; in the first of them where all has room
// between the lines and holes there, or else the one with most room. Where there
// is none beside them it stands over them, over holes last.
func (p *Picture) findRow(c *caption, f *fitting) bool {
	size := f.size
	high := f.size * (1 + 2*aroundNumber)
	if f.ring {
		high = f.size * ringHigh
	}
	pad := min(besideCaption*f.size, (c.face.width()-p.numberWidth(f, f.ring))/2)
	middle := (c.face.Lo.Y + c.face.Hi.Y) / 2
	rows := []float64{middle}
	if top := c.face.Hi.Y - aroundRing*3*f.size - high/2; c.Top && top > middle {
		rows = []float64{top, middle, middle - size/2, middle - size}
	}
	need := p.numberWidth(f, f.ring)
	all := need + beforeFigure*f.size + f.wide.figure
	if f.name != "" {
		all += behindRing*f.size + f.wide.name
	}
	try := func(rows []float64, least weight) bool {
		var best gap
		for _, y := range rows {
			g := widest(p.gaps(Box{Point{c.face.Lo.X + pad, y - high/2}, Point{c.face.Hi.X - pad, y + high/2}}, least))
			if g.to-g.from > best.to-best.from+1e-9 {
				best, f.y = g, y
			}
			if g.to-g.from >= all {
				break
			}
		}
		if best.to-best.from < need-1e-9 {
			return false
		}
		f.from, f.to = best.from, best.to
		return true
	}
	if try(rows, faint) || try(rows, extending) {
		return true
	}
	for away := high / 4; !c.Top && away <= c.face.height()/2-high/2-aroundRing*size; away += high / 4 { // a handle is in the way
		if try([]float64{middle - away}, extending) || try([]float64{middle + away}, extending) {
			return true
		}
	}
	return try(rows, hole) || try(rows, none)
}

func (p *Picture) writeCaption(c *caption, f fitting) {
	name := p.say.Say(c.Name)
	if f.number == "" {
		why := TooLow
		if c.face.height() > 2*c.face.width() {
			why = TooNarrow
		}
		p.miss(c.Tag, strconv.Itoa(c.Number), why)
		return
	}
	base := f.y - f.size/2
	wide := p.numberWidth(&f, f.ring)
	put := func(of drawing.Tag, x, base, size float64, s string, bold bool, v Variant) int {
		return p.put(Text{Of: of, Mark: c.Caption, Size: size, Bold: bold, Variant: v}, Point{x, base}, s)
	}
	if f.ring {
		p.out.Rings = append(p.out.Rings, Ring{c.Tag, Box{Point{f.from, f.y - ringHigh*f.size/2}, Point{f.from + wide, f.y + ringHigh*f.size/2}}})
		p.taken.add(p.out.Rings[len(p.out.Rings)-1].Box.grown(apart*f.size, 0))
	}
	if f.sign {
		p.out.Rings = append(p.out.Rings, Ring{c.Tag, Box{Point{f.from, base}, Point{f.from + wide, base + f.size}}.grown(0, aroundNumber*f.size)})
	}
	named := c.Tag
	named.Of.Kind = drawing.FrontName
	least := Least
	if name == "" {
		least = Whole
	}
	put(named, f.from+(wide-f.wide.number)/2, base, f.size, f.number, true, least)
	x, end := f.from+wide, f.to
	if f.below {
		put(named, f.from, f.y-f.lower(), f.size, f.name, true, Whole)
	} else if f.lines != nil {
		p.putLines(Text{Of: named, Mark: c.Caption, Size: f.size, Bold: true}, Point{x + behindRing*f.size, base + twoLines/2*f.size}, f.lines)
		for _, l := range f.lines {
			x = max(x, f.from+wide+behindRing*f.size+p.metrics.Width(l, f.size, true))
		}
	} else if f.name != "" {
		put(named, x+behindRing*f.size, base, f.size, f.name, true, f.variant)
		x += behindRing*f.size + f.wide.name
	} else if name != "" {
		p.miss(c.Tag, name, TooNarrow)
	}
	of := drawing.Tag{Meaning: drawing.DimensionLine, Of: c.Sized()}
	strong := p.Strong != nil && p.Strong(of.Of)
	at := -1
	switch {
	case c.Height == 0:
	case f.figure == "":
		p.miss(of, p.say.Figure(c.Height), TooNarrow)
	case f.under:
		at = put(of, f.from+max(0, (wide-f.wide.figure)/2), f.y-f.lower(), f.small, f.figure, strong, Whole)
	default:
		end = f.to - f.wide.figure
		at = put(of, end, f.y-f.small/2, f.small, f.figure, strong, Whole)
	}
	r := row{f.y, f.size * ringHigh, gap{x + beforeFigure*f.size, end - beforeFigure*f.size}}
	if f.name == "" && name != "" || f.under {
		r.free = gap{}
	}
	if !c.Note.Empty() {
		r.free.from = p.writeNote(c, f, r)
	}
	p.rows[rowOf{c.drawing, c.Of.Place}] = r
	if at >= 0 && !f.under { // a line would run through the number
		p.insideDimension(c, at)
	}
}

// putLines writes the lines of a name below one another.
func (p *Picture) putLines(t Text, at Point, lines []string) {
	for i, s := range lines {
		from := Point{at.X, at.Y - twoLines*float64(i)*t.Size}
		t.Lines = append(t.Lines, Line{from, s})
		b := p.ink(from, s, t.Size, t.Bold, false)
		if i == 0 {
			t.Box = b
		}
		t.Box = Box{Point{min(t.Box.Lo.X, b.Lo.X), min(t.Box.Lo.Y, b.Lo.Y)}, Point{max(t.Box.Hi.X, b.Hi.X), max(t.Box.Hi.Y, b.Hi.Y)}}
	}
	p.keep(t)
}

// writeNote writes a note behind the name, in its short form where the whole has
// no room, and gives where the row is free behind it.
func (p *Picture) writeNote(c *caption, f fitting, r row) float64 {
	sizes := p.metrics.Sizes(p.style.Figure)
	size := min(f.size, sizes[0])
	t := Text{Of: c.Tag, Mark: c.Caption, Size: size}
	t.Of.Meaning = drawing.Note
	tooLow := c.Least > 0 && size < min(p.metrics.Sizes(c.Least)[0], sizes[0])
	for i, m := range []string{p.say.Say(c.Note), p.say.Say(c.NoteShort)} {
		if w := p.metrics.Width(m, size, false); m != "" && !tooLow && w <= r.free.to-r.free.from {
			t.Variant = Variant(i)
			p.put(t, Point{r.free.from, f.y - f.size/2}, m)
			return r.free.from + w + beforeFigure*size
		}
	}
	p.miss(t.Of, p.say.Say(c.Note), TooNarrow)
	return r.free.from
}

// shortened cuts a text to a width with … behind it, to nothing where fewer than
// two of its letters would be left.
func (p *Picture) shortened(s string, size float64, bold bool, width float64) string {
	if p.metrics.Width(s, size, bold) <= width {
		return s
	}
	r := []rune(s)
	for n := len(r) - 1; n >= 2; n-- {
		for n > 2 && r[n-1] == ' ' {
			n--
		}
		if t := string(r[:n]) + "…"; p.metrics.Width(t, size, bold) <= width {
			return t
		}
	}
	return ""
}
