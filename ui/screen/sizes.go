package screen

import (
	"cmp"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	fynetheme "fyne.io/fyne/v2/theme"

	"frontlay/layout/drawing"
	"frontlay/ui/look"
)

// times stands between the two figures of a size.
const times = " × "

// breakSizes gives texts with the size of a board that have no room in one line
// their places: in two lines, or where those have no room either in letters of
// the usual size. They come from top to bottom, each below the one before: in
// their short forms that is all that tells one from another.
func (p *painter) breakSizes(list []*drawing.Text) {
	slices.SortStableFunc(list, func(a, b *drawing.Text) int { return cmp.Compare(b.At.Y, a.At.Y) })
	below := float32(-anywhere)
	for _, m := range list {
		say := m.Say
		if !m.Short.Empty() {
			say = m.Short
		}
		one := p.say.Say(say)
		first, second, ok := strings.Cut(one, times)
		if !ok {
			continue
		}
		two := []string{first + strings.TrimRight(times, " "), second}
		own := p.letters(m.Size)
		usual := min(own, own*(&look.Theme{}).Size(fynetheme.SizeNameText)/p.text)
		for _, try := range []struct {
			lines  []string
			letter float32
		}{{two, own}, {[]string{one}, usual}, {two, usual}} {
			if end, ok := p.takeLines(m, try.lines, try.letter, below); ok {
				below = end + 0.6*try.letter // more than between the lines of one
				break
			}
		}
	}
}

// takeLines gives the lines of a text places under one another, their middle near
// its point, and tells where they end. It is false where they have no room in
// the part of the text's area below a height.
func (p *painter) takeLines(m *drawing.Text, lines []string, letter, below float32) (end float32, ok bool) {
	const rows = 6 // up and down, in quarters of a line: not past another text
	var size fyne.Size
	for _, s := range lines {
		one := p.measure.of(s, letter, m.Bold)
		size = fyne.NewSize(max(size.Width, one.Width), one.Height)
	}
	pitch := 1.15 * letter
	at := p.At(m.At)
	area := p.areaOf(m, at, size)
	area.Y1 = max(area.Y1, below)
	if !roomy(area, size, letter) {
		return 0, false
	}
	block := inkOf(fyne.Position{}, size, letter)
	block.Y2 += pitch * float32(len(lines)-1)
	l := p.placeIn(area)
	for _, least := range []weight{faint, weak} {
		for k := range 2*rows + 1 {
			y := at.Y - (block.Y1+block.Y2)/2 + float32(swing(k))*size.Height/4
			if !l.holds(box{Y1: y + block.Y1, Y2: y + block.Y2}) {
				continue
			}
			from, to := l.gap(y+block.Y1, y+block.Y2, at.X-size.Width/2, size.Width, least)
			if to-from < size.Width {
				continue
			}
			middle := min(max(at.X, from+size.Width/2), to-size.Width/2)
			for i, s := range lines {
				one := p.measure.of(s, letter, m.Bold)
				p.takeText(m, s, fyne.NewPos(middle-one.Width/2, y+float32(i)*pitch), one, letter)
			}
			return y + block.Y2, true
		}
	}
	return 0, false
}
