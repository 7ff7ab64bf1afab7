package screen

import (
	"strings"

	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/message"
)

// found are the labels of the findings of one front, or of a place that belongs
// to none.
type found struct {
	of     drawing.Tag
	face   box
	labels []*drawing.Text
}

// findings writes the labels of findings, each in the front it tells of. Where a
// front has no room for all of its labels it tells how many they are; where it
// has none even for that, its bay does.
func (p *painter) findings(d *drawing.Drawing) {
	var crowded []found
	for _, f := range p.foundIn(d) {
		if f.face = f.face.common(p.window()); f.face.empty() {
			continue
		}
		if !p.labelAll(f) && !p.summary(f, len(f.labels), strong) && !p.besideNumber(f) {
			crowded = append(crowded, f)
		}
	}
	for _, bay := range byBay(crowded) {
		p.summary(bay, len(bay.labels), none)
	}
}

// byBay puts what is found in the fronts of a bay together.
func byBay(fronts []found) []found {
	var all []found
	at := map[model.Place]int{}
	for _, f := range fronts {
		i, known := at[bayOf(f.of.Of)]
		if !known {
			at[bayOf(f.of.Of)] = len(all)
			all = append(all, f)
			continue
		}
		bay := &all[i]
		bay.face = box{min(bay.face.x1, f.face.x1), min(bay.face.y1, f.face.y1), max(bay.face.x2, f.face.x2), max(bay.face.y2, f.face.y2)}
		bay.labels = append(bay.labels, f.labels...)
	}
	return all
}

func bayOf(s drawing.Subject) model.Place {
	s.Place.Front = -1
	return s.Place
}

// foundIn gathers the labels of findings by their fronts, in the drawing's order.
func (p *painter) foundIn(d *drawing.Drawing) []found {
	var all []found
	at := map[model.Place]int{}
	for _, m := range d.Marks {
		t, ok := m.(*drawing.Text)
		if !ok || t.Meaning != drawing.FindingMark {
			continue
		}
		face, inFront := p.faces[t.Of.Place]
		if !inFront || t.Of.Kind != drawing.FrontThing {
			a := p.view.at(t.At)
			all = append(all, found{t.Tag, box{a.X - 200, a.Y - 60, a.X + 200, a.Y + 60}, []*drawing.Text{t}})
			continue
		}
		i, known := at[t.Of.Place]
		if !known {
			i = len(all)
			at[t.Of.Place] = i
			all = append(all, found{of: t.Tag, face: boxAt(p.box(face))})
		}
		all[i].labels = append(all[i].labels, t)
	}
	return all
}

// labelAll writes all labels of a front, or none where one has no room.
func (p *painter) labelAll(f found) bool {
	before := len(p.taken)
	for _, m := range f.labels {
		letter := p.letters(m.Size)
		s := p.say.Say(m.Say)
		size := p.measure.of(s, letter, m.Bold)
		want := anchored(p.view.at(m.At), size, m.Anchor)
		if !p.label(f, s, want, letter, strong) {
			p.giveBack(before)
			return false
		}
	}
	return true
}

// summary writes how many findings a place has; in figures and a sign where
// there is no room for words.
func (p *painter) summary(f found, count int, least weight) bool {
	words := message.New("%v findings", count)
	if count == 1 {
		words = message.New("1 finding")
	}
	for _, s := range []string{p.say.Say(words), p.say.Say(message.New("! %v", count))} {
		letter := p.letters(f.labels[0].Size)
		size := p.measure.of(s, letter, true)
		middle := fyne.NewPos((f.face.x1+f.face.x2)/2, (f.face.y1+f.face.y2)/2)
		if p.label(f, s, anchored(middle, size, drawing.MiddleCentre), letter, least) {
			return true
		}
	}
	return false
}

// besideNumber writes how many findings a front has in the room of its name, of
// which only the number stays.
func (p *painter) besideNumber(f found) bool {
	for i := range p.taken {
		t := &p.taken[i]
		if t.of.Of != f.of.Of || t.of.Meaning != drawing.Label {
			continue
		}
		number, _, numbered := strings.Cut(t.say, "  ")
		if !numbered {
			return false
		}
		name := *t
		t.say, t.size = number, p.measure.of(number, t.letter, t.bold)
		if p.summary(f, len(f.labels), strong) {
			return true
		}
		p.taken[i] = name
		return false
	}
	return false
}

// label writes one label near its wanted place, in its front.
func (p *painter) label(f found, s string, want fyne.Position, letter float32, least weight) bool {
	const pad, rows = 4, 24
	size := p.measure.of(s, letter, true)
	area := box{f.face.x1 + pad, f.face.y1, f.face.x2 - pad, f.face.y2}
	if least == none && area.y2-area.y1 < size.Height { // over the edges of a low front
		middle := (area.y1 + area.y2) / 2
		area.y1, area.y2 = middle-size.Height, middle+size.Height
	}
	if !roomy(area, size, letter) {
		return false
	}
	want = wanted(want, size, letter, drawing.TopLeft, area)
	l := p.placeIn(area)
	at, ok := l.seek(want, size, letter, search{rows, size.Width / 4, least}) // below one another rather than side by side
	if !ok {
		at, ok = l.seek(want, size, letter, search{rows, anywhere, least})
	}
	if ok {
		tag := f.of
		tag.Meaning = drawing.FindingMark
		p.take(taken{of: tag, say: s, at: at, size: size, letter: letter, bold: true, colour: p.palette.Letters(drawing.FindingMark), tagged: true})
	}
	return ok
}
