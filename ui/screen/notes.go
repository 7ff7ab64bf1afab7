package screen

import (
	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/model"
)

// notes marks the fronts that have a note, which are those locked at their
// heights: the dimension of the height ends at two stops, and the note stands,
// last of all texts, below the figure, or on one line with it or with the front's
// name, or below that; in its short form where the whole has no room. Where not
// even that has any the stops are left to tell.
func (p *painter) notes(d *drawing.Drawing) {
	var heights, names map[model.Place]int
	for _, m := range d.Marks {
		t, ok := m.(*drawing.Text)
		if !ok || t.Meaning != drawing.Note {
			continue
		}
		if heights == nil {
			heights, names = p.standing()
		}
		p.stops(t)
		p.note(t, at(heights, t.Of.Place), at(names, t.Of.Place))
	}
}

// standing tells which of the texts with places are the heights and the names of
// fronts.
func (p *painter) standing() (heights, names map[model.Place]int) {
	heights, names = map[model.Place]int{}, map[model.Place]int{}
	for i := range p.taken {
		switch t := &p.taken[i]; {
		case t.of.Of.Kind == drawing.FrontHeight:
			heights[t.of.Of.Place] = i
		case t.of.Of.Kind == drawing.FrontThing && t.bold && !t.tagged:
			names[t.of.Of.Place] = i
		}
	}
	return heights, names
}

// at is the number of a text, -1 where there is none.
func at(all map[model.Place]int, place model.Place) int {
	if i, ok := all[place]; ok {
		return i
	}
	return -1
}

// stops draws a bar in place of the slanted stroke at both ends of the dimension
// on which a note lies.
func (p *painter) stops(m *drawing.Text) {
	const thick = 3
	colour := p.Palette.Pen(drawing.DimensionLine).Line
	face, x := p.Rect(m.Within), p.PX(m.At.X)
	for _, y := range []float32{face.Y1 + thick, face.Y2 - thick} {
		p.Line(x-arm, y, x+arm, y, colour, thick)
	}
}

// note writes a note beside the texts with the numbers of its front's height and
// name, -1 for one that is not written.
func (p *painter) note(m *drawing.Text, height, name int) {
	const pad = 3
	face := p.Rect(m.Within).Common(p.window()).Grown(-pad, -pad)
	letter := p.letters(m.Size)
	take := func(s string, at fyne.Position, size fyne.Size) {
		p.take(taken{of: m.Tag, say: s, at: at, size: size, letter: letter, colour: p.Palette.Letters(m.Meaning)})
	}
	for _, s := range []string{p.say.Say(m.Say), p.say.Say(m.Short)} {
		size := p.measure.of(s, letter, false)
		if height >= 0 {
			if at, ok := p.underFigure(&p.taken[height], size, letter, face); ok {
				take(s, at, size)
				return
			}
		}
		for _, i := range []int{height, name} {
			if i < 0 {
				continue
			}
			const ascent = 1.069 // of letters, from the metrics of the font
			beside := &p.taken[i]
			want := fyne.NewPos(beside.ink().X1-letter-size.Width, beside.at.Y+ascent*(beside.letter-letter))
			if i == name {
				want.X = beside.ink().X2 + letter
			}
			area := face.Grown(0, pad)
			if !roomy(area, size, letter) {
				continue
			}
			want.X = max(min(want.X, area.X2-size.Width), area.X1)
			if at, ok := p.placeIn(area).seek(want, size, letter, search{0, anywhere, weak}); ok && p.hideable(inkOf(at, size, letter)) {
				take(s, at, size)
				return
			}
		}
		if name >= 0 {
			above := p.taken[name].ink()
			area := face
			area.Y1 = above.Y2 + underName
			want := fyne.NewPos((above.X1+above.X2-size.Width)/2, area.Y1)
			if at, ok := p.placeIn(area).seek(wanted(want, size, letter, drawing.Anchor{Y: 1}, area), size, letter, search{12, anywhere, weak}); ok {
				take(s, at, size)
				return
			}
		}
	}
}

// underFigure is the place of a note below the figure of a height, in the line of
// its dimension. It is false where something else stands there.
func (p *painter) underFigure(figure *taken, size fyne.Size, letter float32, face box) (fyne.Position, bool) {
	const between = 3
	above := figure.ink()
	at := fyne.NewPos((above.X1+above.X2-size.Width)/2, above.Y2+between-inkOf(fyne.Position{}, size, letter).Y1)
	at.X = max(min(at.X, face.X2-size.Width), face.X1)
	ink := inkOf(at, size, letter)
	if !ink.Within(face) {
		return at, false
	}
	l := p.placeIn(ink)
	return at, l.free(ink) && p.hideable(ink) && l.harm(ink, figure.own) == 0
}

// hideable tells that what would hide letters reaches no other text.
func (p *painter) hideable(ink box) bool {
	b := hidden(ink)
	return p.placeIn(b).free(b)
}
