package screen

import (
	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/model"
)

// number is what the number of a front needs to be written: where it can stand
// and how large its letters are.
type number struct {
	area  box
	width float32
	high  float32
}

// needNumber remembers what the number of a front needs. Where there is no room
// for it, whatever else is in the front, nothing is.
func (p *painter) needNumber(m *drawing.Text, area box, letter float32) {
	const wide, high = 14, 6 // enough for it and a figure, in letters
	if m.Least.Empty() || m.Of.Kind != drawing.FrontThing || area.X2-area.X1 > wide*letter || area.Y2-area.Y1 > high*letter {
		return
	}
	for _, letter := range []float32{letter, low * letter} {
		size := p.measure.of(p.say.Say(m.Least), letter, m.Bold)
		if !roomy(area.Grown(0, -edge), size, letter) {
			continue
		}
		ink := inkOf(fyne.Position{}, size, letter)
		if p.numbers == nil {
			p.numbers = map[model.Place]number{}
		}
		p.numbers[m.Of.Place] = number{area, size.Width, ink.Y2 - ink.Y1 + 2*edge + size.Height/4} // as texts go up and down by that
		return
	}
}

// low is how large the letters of a number are in a front that is too low for
// those of its name, in parts of these.
const low = 0.85

// takeNumber gives the number of a front a place anywhere in its area, where the
// name has none at its height. It is false where not even the number has one.
func (p *painter) takeNumber(m *drawing.Text, l *place, at fyne.Position, letter float32, least weight) bool {
	if m.Least.Empty() {
		return false
	}
	s := p.say.Say(m.Least)
	for _, letter := range []float32{letter, low * letter} {
		size := p.measure.of(s, letter, m.Bold)
		all := int(4*(l.area.Y2-l.area.Y1)/size.Height) + 1
		if to, ok := l.seek(wanted(at, size, letter, m.Anchor, l.area), size, letter, search{all, anywhere, least}); ok {
			p.takeText(m, s, to, size, letter)
			return true
		}
	}
	return false
}

// ousts tells that a figure would leave no room for the number of its front,
// which says more than its height.
func (p *painter) ousts(at model.Place, ink box, letter float32) bool {
	n, ok := p.numbers[at]
	if !ok || ink.Y1-n.area.Y1 >= n.high || n.area.Y2-ink.Y2 >= n.high {
		return false
	}
	ink = ink.Grown(0.7*letter, 0)
	return min(ink.X1, n.area.X2)-n.area.X1 < n.width && n.area.X2-max(ink.X2, n.area.X1) < n.width
}

// underName is between the letters of a name and those of a note under it.
const underName = 5
