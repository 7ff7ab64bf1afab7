package screen

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
)

// taken is a text that has its place in the picture. It is written when all have
// theirs, on a ground of its own where something runs through it.
type taken struct {
	of     drawing.Tag
	say    string
	at     fyne.Position
	size   fyne.Size
	letter float32
	bold   bool
	colour color.NRGBA
	own    int  // the dimension whose figure it is, from 1
	tagged bool // always on a ground, of the paper's colour
	flag   bool // on the ground of a flag
	hidden bool // under a flag
}

// inkOf is where the letters of a text are: the line's height is 1.36 times
// their size, and the part above capitals is empty (from the metrics of the
// font that ships with Fyne).
func inkOf(at fyne.Position, size fyne.Size, letter float32) box {
	return boxOf(at.X, at.Y+0.3*letter, at.X+size.Width, at.Y+1.32*letter)
}

// edge is what letters keep from the upper and lower edge of their area at least.
const edge = 1

func (t *taken) ink() box { return inkOf(t.at, t.size, t.letter) }

// apart is the box that other texts keep out of, so that two texts don't read as
// one: more of a letter's width beside one that has a ground.
func (t *taken) apart() box {
	if t.tagged {
		return t.ink().Grown(t.letter, 1)
	}
	return t.ink().Grown(0.7*t.letter, 1)
}

// take gives a text its place.
func (p *painter) take(t taken) {
	p.takenIn.add(len(p.taken), t.apart())
	p.taken = append(p.taken, t)
}

// giveBack takes the places of all texts but the first so many away.
func (p *painter) giveBack(keep int) {
	for len(p.taken) > keep {
		last := len(p.taken) - 1
		p.takenIn.drop(p.taken[last].apart())
		p.taken = p.taken[:last]
	}
}

// place looks for room for texts. It holds what lies in the area where a text
// could stand, so that its neighbourhood is looked through once for each text.
type place struct {
	area    box
	strokes []stroke
	taken   []box
	row     []box // see blocks
}

// placeIn collects what lies in an area.
func (p *painter) placeIn(area box) *place {
	l := &p.room
	l.area, l.strokes, l.taken = area, l.strokes[:0], l.taken[:0]
	wide := area.Grown(8, besideHole)
	for i := range p.strokesIn.near(wide.X1, wide.X2) {
		if s := &p.strokes[i]; s.weight > quiet && s.X1 <= wide.X2 && wide.X1 <= s.X2 && s.Y1 <= wide.Y2 && wide.Y1 <= s.Y2 {
			l.strokes = append(l.strokes, *s)
		}
	}
	for i := range p.takenIn.near(wide.X1, wide.X2) {
		if b := p.taken[i].apart(); b.Overlaps(wide) {
			l.taken = append(l.taken, b)
		}
	}
	for _, b := range p.reserved {
		if b.Overlaps(wide) {
			l.taken = append(l.taken, b)
		}
	}
	return l
}

// roomy tells that an area may have room for a text, whatever else is in it.
func roomy(area box, size fyne.Size, letter float32) bool {
	ink := inkOf(fyne.Position{}, size, letter)
	return area.X2-area.X1 >= size.Width && area.Y2-area.Y1 >= ink.Y2-ink.Y1+edge
}

// holds tells that the letters of a row are in the area.
func (l *place) holds(ink box) bool {
	const rounding = 0.01
	return ink.Y1 > l.area.Y1+edge-rounding && ink.Y2 < l.area.Y2-edge+rounding
}

// free tells that no text stands in a box.
func (l *place) free(ink box) bool {
	for _, b := range l.taken {
		if b.Overlaps(ink) {
			return false
		}
	}
	return true
}

// besideHole is what figures keep free of a hole where they can.
const besideHole = 4

// harm is what a text's ground would cover: the weights of the lines in its box
// but those of its own dimension; and a little for each hole that it touches.
func (l *place) harm(ink box, own int) int {
	sum := 0
	for i := range l.strokes {
		s := &l.strokes[i]
		switch {
		case own != 0 && s.own == own:
		case s.meets(ink):
			sum += int(s.weight * s.weight) // a strong one is worth several others
		case s.round && s.Grown(besideHole, besideHole).Overlaps(ink):
			sum += int(weak)
		}
	}
	return sum
}

// gap is the widest part of a row, or the one nearest to an x that is wide
// enough, without texts and without lines of a weight or more.
func (l *place) gap(y1, y2, wanted, width float32, least weight) (from, to float32) {
	blocks := l.blocks(y1, y2, least)
	best, found := float32(0), false
	at := l.area.X1
	for i := 0; i <= len(blocks); i++ {
		end, next := l.area.X2, l.area.X2
		if i < len(blocks) {
			end, next = blocks[i].X1, blocks[i].X2
		}
		if w := min(end, l.area.X2) - at; w > 0 {
			far := max(at-wanted, wanted+width-min(end, l.area.X2), 0)
			fits := w >= width
			switch {
			case fits && (!found || far < best):
				from, to, best, found = at, min(end, l.area.X2), far, true
			case !fits && !found && w > to-from:
				from, to = at, min(end, l.area.X2)
			}
		}
		at = max(at, next)
	}
	return from, to
}

// blocks are what stands in a row of the area, from left to right.
func (l *place) blocks(y1, y2 float32, least weight) []box {
	const free = 2
	row := boxOf(l.area.X1, y1, l.area.X2, y2)
	blocks := l.row[:0]
	add := func(b box) {
		i := len(blocks)
		blocks = append(blocks, b)
		for ; i > 0 && blocks[i-1].X1 > b.X1; i-- {
			blocks[i] = blocks[i-1]
		}
		blocks[i] = b
	}
	for _, b := range l.taken {
		if b.Overlaps(row) {
			add(b)
		}
	}
	for i := range l.strokes {
		if s := &l.strokes[i]; s.weight >= least && s.meets(row) {
			add(s.box.Grown(free, 0))
		}
	}
	l.row = blocks
	return blocks
}

// search tells how far from its wanted corner a text may go, and what may run
// through it there (on which it then gets a ground).
type search struct {
	rows  int     // up and down, in quarters of a line
	shift float32 // to the left and right
	least weight  // lines of this weight or more stay whole
}

// anywhere is farther than a text can go.
const anywhere = 1e5

// seek finds the place for a text of a size nearest to a wanted corner: in the
// area, where no other text is.
func (l *place) seek(want fyne.Position, size fyne.Size, letter float32, how search) (fyne.Position, bool) {
	if !roomy(l.area, size, letter) {
		return fyne.Position{}, false
	}
	for k := range 2*how.rows + 1 {
		y := want.Y + float32(swing(k))*size.Height/4
		ink := inkOf(fyne.NewPos(0, y), size, letter)
		if !l.holds(ink) {
			continue
		}
		from, to := l.gap(ink.Y1, ink.Y2, want.X, size.Width, how.least)
		if to-from < size.Width {
			continue
		}
		x := min(max(want.X, from), to-size.Width)
		if x-want.X <= how.shift && want.X-x <= how.shift {
			return fyne.NewPos(x, y), true
		}
	}
	return fyne.Position{}, false
}

// swing counts 0, 1, -1, 2, -2 …
func swing(k int) int {
	if k%2 == 1 {
		return (k + 1) / 2
	}
	return -k / 2
}

// writeTaken writes all texts that have their places: first the grounds, so that
// none lies over a text.
func (p *painter) writeTaken() {
	p.Chosen()
	for i := range p.taken {
		t := &p.taken[i]
		ink := t.ink()
		if t.hidden || !p.Shown(ink) {
			continue
		}
		if t.flag {
			p.flagGround(t)
		} else if colour := p.floor.under(ink); t.tagged || p.crossed(ink.Grown(1, 0), t.own) {
			if t.tagged {
				colour = p.Palette.Sheet
			}
			p.backdrop(ink.Grown(2, 1), colour)
		}
		if t.ringed() {
			p.numberRing(t)
		}
	}
	for i := range p.taken {
		t := &p.taken[i]
		if t.hidden {
			continue
		}
		colour := t.colour
		if t.of.Meaning == drawing.CoverBand && p.floor.under(t.ink()) == p.Palette.DrawerBottom {
			colour = p.Palette.Ink // their own colour can't be read on a drawer bottom
		}
		if t.ringed() {
			p.writeRinged(t, colour)
		} else {
			p.write(t.say, t.at, drawing.Anchor{Y: 1}, t.letter, t.bold, colour)
		}
		if t.bold && t.of.Meaning == drawing.Label && t.of.Of.Kind == drawing.FrontThing {
			p.figures = append(p.figures, figure{drawing.Subject{Kind: drawing.FrontName, Place: t.of.Of.Place}, t.at, t.size})
		}
	}
}

// crossed tells that a line goes through a box.
func (p *painter) crossed(b box, own int) bool {
	for i := range p.strokesIn.near(b.X1, b.X2) {
		if s := &p.strokes[i]; (own == 0 || s.own != own) && s.meets(b) {
			return true
		}
	}
	return false
}

// backdrop clears the ground under a text that must be read.
func (p *painter) backdrop(b box, colour color.NRGBA) {
	r := fynecanvas.NewRectangle(colour)
	r.CornerRadius = 2
	r.Move(fyne.NewPos(b.X1, b.Y1))
	r.Resize(fyne.NewSize(b.X2-b.X1, b.Y2-b.Y1))
	p.Objects = append(p.Objects, r)
}
