package screen

import (
	"image/color"
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/paint"
)

// measures remembers how large texts are, because measuring is what costs.
type measures struct {
	known map[lettered]fyne.Size
}

type lettered struct {
	text string
	size float32
	bold bool
}

func (m *measures) of(text string, size float32, bold bool) fyne.Size {
	k := lettered{text, size, bold}
	if s, ok := m.known[k]; ok {
		return s
	}
	if m.known == nil || len(m.known) > 4000 {
		m.known = map[lettered]fyne.Size{}
	}
	s := fyne.MeasureText(text, size, fyne.TextStyle{Bold: bold})
	m.known[k] = s
	return s
}

// letters gives the screen size of letters of a height on paper.
func (p *painter) letters(height length.Length) float32 {
	switch {
	case height >= 5*length.Millimetre:
		return p.text * 1.3
	case height >= 3*length.Millimetre:
		return p.text
	default:
		return p.text * 0.9
	}
}

// write puts a text with its anchor at a place and returns its box.
func (p *painter) write(s string, at fyne.Position, a drawing.Anchor, size float32, bold bool, c color.NRGBA) (fyne.Position, fyne.Size) {
	box := p.measure.of(s, size, bold)
	pos := anchored(at, box, a)
	if p.Shown(paint.BoxAt(pos, box)) {
		t := fynecanvas.NewText(s, c)
		t.TextSize, t.TextStyle.Bold = size, bold
		t.Move(pos)
		t.Resize(box)
		p.Objects = append(p.Objects, t)
	}
	return pos, box
}

// anchored gives the upper left corner of a box whose anchor is at a place.
func anchored(at fyne.Position, box fyne.Size, a drawing.Anchor) fyne.Position {
	return at.SubtractXY(box.Width*float32(a.X), box.Height*float32(1-a.Y))
}

// searches are where a text is looked a place for, one after the other: at its
// own height, then near it, then anywhere in its area. Names are worth a part of
// what lies behind a front, and even of an outline; others only dashes.
func searches(m *drawing.Text) []search {
	const line = 4
	list := []search{
		{0, anywhere, faint}, {0, anywhere, weak},
		{line, anywhere, faint}, {line, anywhere, weak},
	}
	if m.Bold {
		const all = 12 * line
		list = append(list, search{all, anywhere, faint}, search{all, anywhere, weak}, search{all, anywhere, strong})
	}
	return list
}

// textMark gives a text its place: near its point, in the area it should stay
// in, where no other text is. Where it has no room its short form is tried, or
// as much of it as fits; where not even that does it is left out. It is false for
// a text with figures that has no room, which is never cut.
func (p *painter) textMark(m *drawing.Text) bool {
	letter := p.letters(m.Size)
	at := p.At(m.At)
	tries := []string{p.say.Say(m.Say)}
	if !m.Short.Empty() {
		tries = append(tries, p.say.Say(m.Short))
	}
	area := p.areaOf(m, at, p.measure.of(tries[0], letter, m.Bold))
	if area.Empty() || !p.Shown(area) {
		return true
	}
	last, short := m.Say, tries[len(tries)-1]
	if !m.Short.Empty() {
		last = m.Short
	}
	whole := hasFigure(last)
	least := short
	if !whole {
		least = shortest(short)
	}
	if p.measure.of(least, letter, m.Bold).Width > area.X2-area.X1 {
		return !whole
	}
	l := p.placeIn(area)
	for _, s := range tries {
		for _, how := range searches(m) {
			size := p.measure.of(s, letter, m.Bold)
			if to, ok := l.seek(wanted(at, size, letter, m.Anchor, area), size, letter, how); ok {
				p.takeText(m, s, to, size, letter)
				return true
			}
		}
	}
	if whole {
		return false
	}
	if p.takeCut(m, l, short, at, letter, strong) || !m.Bold || p.takeNumber(m, l, at, letter, strong) ||
		p.takeCut(m, l, short, at, letter, none) {
		return true
	}
	p.takeNumber(m, l, at, letter, none)
	return true
}

// hasFigure tells that a message says a length.
func hasFigure(m message.Message) bool {
	for _, a := range m.Args {
		if _, ok := a.(length.Length); ok {
			return true
		}
	}
	return false
}

// wish is where a text of a front would stand, and what it costs a figure to
// stand there: in place of a name more than over some holes, in place of a cover
// more than over a drawer bottom.
type wish struct {
	box
	harm int
}

// wish remembers where a text of a front would stand if nothing else were there,
// so that figures, which have their places first, can keep out of it.
func (p *painter) wish(m *drawing.Text) {
	if m.Within.Empty() || m.Meaning == drawing.FindingMark || m.Meaning == drawing.Note {
		return
	}
	letter := p.letters(m.Size)
	say := m.Say
	if !m.Short.Empty() {
		say = m.Short
	}
	at, size := p.At(m.At), p.measure.of(p.say.Say(say), letter, m.Bold)
	area := p.areaOf(m, at, size)
	if area.Empty() || !p.Shown(area) {
		return
	}
	p.needNumber(m, area, letter)
	ink := inkOf(wanted(at, size, letter, m.Anchor, area), size, letter).Grown(0.2*letter, 1)
	if p.wishes == nil {
		p.wishes = map[model.Place][]wish{}
	}
	harm := 5
	if m.Bold {
		harm = 50
	}
	p.wishes[m.Of.Place] = append(p.wishes[m.Of.Place], wish{ink, harm})
}

// areaOf is the part of the screen in which a text may stand: what is seen of
// that of the drawing, or a line about its point where the drawing gives none.
// Only names follow a front up and down; other texts stay with what they are of.
func (p *painter) areaOf(m *drawing.Text, at fyne.Position, size fyne.Size) box {
	if m.Within.Empty() {
		return paint.BoxAt(anchored(at, size, m.Anchor), size).Grown(0, size.Height)
	}
	const pad = 3
	b, seen := p.Rect(m.Within), p.window()
	const wide = 4 // enough for any number, in letters
	if !m.Least.Empty() && b.X2-b.X1 < wide*p.text && b.X2-b.X1 < p.measure.of(p.say.Say(m.Least), p.letters(m.Size), m.Bold).Width+2*pad {
		if face, ok := p.faces[m.Of.Place]; ok { // a number goes before the height beside it
			b = p.Rect(face)
		}
	}
	if !m.Bold {
		seen.Y1, seen.Y2 = b.Y1, b.Y2
	}
	return b.Grown(-pad, 0).Common(seen)
}

// wanted is the corner of a text at its point, moved so that its letters are in
// its area, or in the middle of one that is too low for them.
func wanted(at fyne.Position, size fyne.Size, letter float32, a drawing.Anchor, area box) fyne.Position {
	to := anchored(at, size, a)
	to.X = max(min(to.X, area.X2-size.Width), area.X1)
	ink := inkOf(fyne.Position{}, size, letter)
	lowest, highest := area.Y2-edge-ink.Y2, area.Y1+edge-ink.Y1
	if lowest < highest {
		to.Y = (lowest + highest) / 2
	} else {
		to.Y = max(min(to.Y, lowest), highest)
	}
	return to
}

// takeText gives a text its place; one that would be cut at the edge of the
// screen has none.
func (p *painter) takeText(m *drawing.Text, s string, at fyne.Position, size fyne.Size, letter float32) {
	if !m.Within.Empty() && !inkOf(at, size, letter).Within(boxOf(0, 0, p.Size.Width, p.Size.Height)) {
		return
	}
	p.take(taken{of: m.Tag, say: s, at: at, size: size, letter: letter, bold: m.Bold, colour: p.Palette.Letters(m.Meaning)})
}

// takeCut gives a text that is too wide the widest gap near its height. It is
// false where it has none.
func (p *painter) takeCut(m *drawing.Text, l *place, s string, at fyne.Position, letter float32, least weight) bool {
	size := p.measure.of(s, letter, m.Bold)
	want := wanted(at, size, letter, m.Anchor, l.area)
	var best, width, y float32
	for k := range 5 {
		row := want.Y + float32(swing(k))*size.Height/2
		ink := inkOf(fyne.NewPos(0, row), size, letter)
		if !l.holds(ink) {
			continue
		}
		if from, to := l.gap(ink.Y1, ink.Y2, want.X, size.Width, least); to-from > width+1 {
			best, width, y = from, to-from, row
		}
	}
	if s = p.shortened(s, width, letter, m.Bold); s == "" {
		return false
	}
	size = p.measure.of(s, letter, m.Bold)
	p.takeText(m, s, fyne.NewPos(best+(width-size.Width)/2, y), size, letter)
	return true
}

// shortest is what of a text is left at least where it is cut: the number before a
// wide space, or two letters.
func shortest(s string) string {
	if number, _, numbered := strings.Cut(s, "  "); numbered {
		return number
	}
	if r := []rune(s); len(r) > 2 {
		return string(r[:2]) + "…"
	}
	return s
}

// shortened cuts a text to a width with an ellipsis: to what stands before a
// wide space, which is a front's number, where fewer than two letters of the
// rest would be left, and to nothing where not even two letters fit.
func (p *painter) shortened(s string, width, size float32, bold bool) string {
	fits := func(s string) bool { return p.measure.of(s, size, bold).Width <= width }
	if fits(s) {
		return s
	}
	if !fits(shortest(s)) {
		return ""
	}
	r := []rune(s)
	number, _, numbered := strings.Cut(s, "  ")
	for n := len(r) - 1; n >= 2; n-- {
		if numbered && n < len([]rune(number))+4 {
			break
		}
		if t := string(r[:n]) + "…"; fits(t) {
			return t
		}
	}
	if numbered && fits(number) {
		return number
	}
	return ""
}
