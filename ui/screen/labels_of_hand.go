package screen

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/ui/paint"
	"frontlay/ui/tool"
)

// placed is a label of the tool with its place: that of its letters, and of its
// ground.
type placed struct {
	tool.Label
	lines  []string
	letter float32
	size   fyne.Size
	at     fyne.Position
	around box
}

// padding is between the letters of a label and the sides of its ground; above
// and below it is less.
const padding = 5

// move puts the letters of a label at a place.
func (d *placed) move(at fyne.Position) {
	d.at = at
	d.around = paint.BoxAt(at, d.size).Grown(padding, padding-3)
}

// placeLabels finds the places of labels. Two that are of the parts of a thing
// keep apart, and none covers the label of a finding.
func placeLabels(p *painter, labels []tool.Label, letters []text, tags []box) []placed {
	var list []placed
	for _, l := range labels {
		list = append(list, placeLabel(p, l, letters))
	}
	if len(list) == 2 && list[0].inPart() && list[1].inPart() {
		keepApart(p, &list[0], &list[1])
	}
	for i := range list {
		others := tags
		for j := range list {
			if j != i {
				others = append(slices.Clone(others), list[j].around)
			}
		}
		if d := &list[i]; slices.ContainsFunc(tags, func(b box) bool { return tagOf(b).Overlaps(d.around) }) {
			d.move(offTags(p, d, others))
		}
	}
	return list
}

// inPart tells that a label is of a part of a thing, in which it should stand.
func (d *placed) inPart() bool { return d.Centred && !d.Within.Empty() }

// placeLabel finds the place of a label.
func placeLabel(p *painter, l tool.Label, letters []text) placed {
	const pad = padding
	d := placed{Label: l, letter: p.text * 1.1}
	d.lines, d.size = p.broken(p.say.Say(l.Say), d.letter)
	size := d.size
	at := p.At(l.At)
	if l.Centred {
		at = at.SubtractXY(size.Width/2, size.Height/2)
		if !l.Within.Empty() {
			at = besideLetters(at, size, p.Rect(l.Within), letters)
		}
	} else {
		at = at.AddXY(16, -size.Height-12)
	}
	at.X = min(max(at.X, pad), max(p.Size.Width-size.Width-pad, pad))
	at.Y = min(max(at.Y, pad), max(p.Size.Height-size.Height-pad, pad))
	d.move(at)
	return d
}

// paintLabel writes a label on a ground of its own.
func paintLabel(p *painter, l placed) {
	ink := p.Palette.Accent
	if l.Warn {
		ink = p.Palette.Error
	}
	back := fynecanvas.NewRectangle(p.Palette.Sheet)
	back.StrokeColor, back.StrokeWidth, back.CornerRadius = ink, 1, 3
	back.Move(fyne.NewPos(l.around.X1, l.around.Y1))
	back.Resize(fyne.NewSize(l.around.X2-l.around.X1, l.around.Y2-l.around.Y1))
	p.Objects = append(p.Objects, back)
	for i, s := range l.lines {
		p.put(s, l.at.AddXY(0, float32(i)*lineOfLabel*l.letter), drawing.Anchor{Y: 1}, l.letter, true, ink)
	}
}

// lineOfLabel is from one line of a label to the next, in sizes of its letters.
const lineOfLabel = 1.25

// broken breaks a text into lines of no more than a part of the picture's width,
// and tells how large they are together.
func (p *painter) broken(s string, letter float32) ([]string, fyne.Size) {
	const part = 0.6
	whole := p.measure.Of(s, letter, true)
	if whole.Width <= part*p.Size.Width {
		return []string{s}, whole
	}
	var lines []string
	size := fyne.Size{}
	add := func(line string) {
		lines = append(lines, line)
		size.Width = max(size.Width, p.measure.Of(line, letter, true).Width)
	}
	line := ""
	for _, word := range strings.Split(s, " ") {
		longer := strings.TrimSpace(line + " " + word)
		if line != "" && p.measure.Of(longer, letter, true).Width > part*p.Size.Width {
			add(line)
			longer = word
		}
		line = longer
	}
	add(line)
	size.Height = whole.Height + float32(len(lines)-1)*lineOfLabel*letter
	return lines, size
}

// betweenLabels is the least between the grounds of two labels.
const betweenLabels = 4

// keepApart moves two labels that are of neighbouring parts away from what
// divides these, until they are clear of one another: out of their parts where
// these are too small.
func keepApart(p *painter, a, b *placed) {
	if !a.around.Grown(betweenLabels, betweenLabels).Overlaps(b.around) {
		return
	}
	first, second := p.Rect(a.Within), p.Rect(b.Within)
	switch {
	case first.X2 <= second.X1:
		sideBySide(p, a, b, first, second)
	case second.X2 <= first.X1:
		sideBySide(p, b, a, second, first)
	case first.Y1 >= second.Y2:
		oneOverOther(p, b, a, (second.Y2+first.Y1)/2)
	default:
		oneOverOther(p, a, b, (first.Y2+second.Y1)/2)
	}
}

// sideBySide moves a label to the left of the board between two parts and another
// to its right. Where the whole has no room for both in a line, but for each, one
// comes below the other, so that none is taken for one of a neighbour.
func sideBySide(p *painter, left, right *placed, l, r box) {
	from, to := l.X2, r.X1
	gap := max(to-from, betweenLabels)
	middle := (from + to) / 2
	w1, w2 := left.around.X2-left.around.X1, right.around.X2-right.around.X1
	if whole := r.X2 - l.X1; w1+w2+gap > whole && max(w1, w2) <= whole {
		left.move(fyne.NewPos(min(max(left.around.X1, l.X1), r.X2-w1)+padding, left.at.Y))
		right.move(fyne.NewPos(min(max(right.around.X1, l.X1), r.X2-w2)+padding, right.at.Y))
		oneOverOther(p, left, right, (left.around.Y1+left.around.Y2)/2)
		return
	}
	middle = max(min(middle, p.Size.Width-padding-w2-gap/2), padding+w1+gap/2) // both on the screen
	x1, x2 := min(left.around.X1, middle-gap/2-w1), max(right.around.X1, middle+gap/2)
	left.move(fyne.NewPos(x1+padding, left.at.Y))
	right.move(fyne.NewPos(x2+padding, right.at.Y))
}

// oneOverOther moves a label above a division and another below it.
func oneOverOther(p *painter, upper, lower *placed, middle float32) {
	const gap = betweenLabels
	h1, h2 := upper.around.Y2-upper.around.Y1, lower.around.Y2-lower.around.Y1
	middle = max(min(middle, p.Size.Height-padding-h2-gap/2), padding+h1+gap/2)
	y1, y2 := min(upper.around.Y1, middle-gap/2-h1), max(lower.around.Y1, middle+gap/2)
	upper.move(fyne.NewPos(upper.at.X, y1+padding-3))
	lower.move(fyne.NewPos(lower.at.X, y2+padding-3))
}

// tagOf is the ground of a finding's label with these letters.
func tagOf(letters box) box { return letters.Grown(3, 2) }

// offTags gives the place nearest to that of a label at which it covers no label
// of a finding and no other label: up and down first, then to the sides.
func offTags(p *painter, d *placed, others []box) fyne.Position {
	const step, far = 4, 60
	for k := 1; k <= far; k++ {
		for _, move := range []fyne.Position{{Y: -step}, {Y: step}, {X: -2 * step}, {X: 2 * step}} {
			to := *d
			to.move(d.at.AddXY(move.X*float32(k), move.Y*float32(k)))
			covers := slices.ContainsFunc(others, func(b box) bool { return tagOf(b).Overlaps(to.around) })
			if !covers && to.around.Within(boxOf(0, 0, p.Size.Width, p.Size.Height)) {
				return to.at
			}
		}
	}
	return d.at
}

// besideLetters moves a label off its place to the nearest one in its area where
// it covers no text of the picture. Where there is none it stays.
func besideLetters(at fyne.Position, size fyne.Size, area box, letters []text) fyne.Position {
	const pad, steps = 8, 12
	middle := (area.Y1 + area.Y2) / 2
	area = boxOf(area.X1+pad, min(area.Y1+2, middle-size.Height/2), area.X2-pad, max(area.Y2-2, middle+size.Height/2))
	free := func(to fyne.Position) bool {
		b := paint.BoxAt(to, size)
		return b.Within(area) && !slices.ContainsFunc(letters, func(t text) bool { return t.Grown(pad, 4).Overlaps(b) })
	}
	for row := range steps {
		for column := range steps {
			for _, sign := range [4][2]float32{{1, 1}, {-1, 1}, {1, -1}, {-1, -1}} {
				to := at.AddXY(sign[0]*float32(column)*(area.X2-area.X1)/(2*steps), sign[1]*float32(row)*size.Height/4)
				if free(to) {
					return to
				}
			}
		}
	}
	return at
}
