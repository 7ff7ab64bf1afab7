package screen

import (
	"cmp"
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/message"
)

// found are the labels of the findings of one front, the worst first, or of a
// place that belongs to none.
type found struct {
	of     drawing.Tag
	face   box
	name   int // which of the texts with places is the front's name; -1: none is
	labels []*drawing.Text
}

// findings writes the labels of findings, each in the front it tells of. Where a
// front has no room for all of its labels it tells how many they are; where it
// has none even for that, its bay does.
func (p *painter) findings(d *drawing.Drawing) {
	all := p.foundIn(d)
	if len(all) == 0 {
		return
	}
	names := map[model.Place]int{}
	for i := range p.taken {
		if t := &p.taken[i]; t.bold && t.of.Of.Kind == drawing.FrontThing {
			names[t.of.Of.Place] = i
		}
	}
	var crowded []found
	for _, f := range all {
		if f.face = f.face.Common(p.window()); f.face.Empty() {
			continue
		}
		f.name = -1
		if i, named := names[f.of.Of.Place]; named && f.of.Of.Kind == drawing.FrontThing {
			f.name = i
		}
		slices.SortStableFunc(f.labels, func(a, b *drawing.Text) int { return cmp.Compare(a.Severity, b.Severity) })
		f.of.Severity = f.labels[0].Severity
		if !p.labelAll(f) && !p.summary(f, len(f.labels), strong) && !p.besideNumber(f) {
			crowded = append(crowded, f)
		}
	}
	for _, bay := range byBay(crowded) {
		if !p.summary(bay, len(bay.labels), none) {
			bay.name = -1
			p.summary(bay, len(bay.labels), none)
		}
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
		bay.face = boxOf(min(bay.face.X1, f.face.X1), min(bay.face.Y1, f.face.Y1), max(bay.face.X2, f.face.X2), max(bay.face.Y2, f.face.Y2))
		bay.labels, bay.name = append(bay.labels, f.labels...), -1
		bay.of.Severity = min(bay.of.Severity, f.of.Severity)
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
			a := p.At(t.At)
			all = append(all, found{of: t.Tag, face: boxOf(a.X-200, a.Y-60, a.X+200, a.Y+60), labels: []*drawing.Text{t}})
			continue
		}
		i, known := at[t.Of.Place]
		if !known {
			i = len(all)
			at[t.Of.Place] = i
			all = append(all, found{of: t.Tag, face: p.Rect(face)})
		}
		all[i].labels = append(all[i].labels, t)
	}
	return all
}

// ofWholeFront tells that a finding's label is about a front as a whole: it
// stands at the front's middle, others at what they are about.
func ofWholeFront(m *drawing.Text) bool { return m.Anchor == drawing.Anchor{X: 0.5, Y: 0.5} }

// signed is a text with the sign of a severity, which tells it without colour.
func (p *painter) signed(m message.Message, s drawing.Severity) string {
	sign, _ := p.Palette.Severity(s)
	return sign + " " + p.say.Say(m)
}

// labelAll writes all labels of a front, or none where one has no room.
func (p *painter) labelAll(f found) bool {
	before := len(p.taken)
	for _, m := range f.labels {
		letter := p.letters(m.Size)
		s := p.signed(m.Say, m.Severity)
		want := p.underName(f, s, letter)
		if !ofWholeFront(m) {
			want = anchored(p.At(m.At), p.measure.of(s, letter, true), m.Anchor)
		}
		one := f
		one.of = m.Tag
		if !p.label(one, s, want, letter, strong) {
			p.giveBack(before)
			return false
		}
	}
	return true
}

// summary writes how many findings a place has, or only the sign of the worst
// where there is no room for words.
func (p *painter) summary(f found, count int, least weight) bool {
	words := message.New("%v findings", count)
	if count == 1 {
		words = message.New("1 finding")
	}
	sign, _ := p.Palette.Severity(f.of.Severity)
	for _, s := range []string{p.signed(words, f.of.Severity), sign} {
		letter := p.letters(f.labels[0].Size)
		if p.label(f, s, p.underName(f, s, letter), letter, least) {
			return true
		}
	}
	return false
}

// underName is the wanted corner of a label: under the middle of its front's
// name, or in the middle of a place whose name is not written.
func (p *painter) underName(f found, s string, letter float32) fyne.Position {
	size := p.measure.of(s, letter, true)
	if f.name < 0 {
		middle := fyne.NewPos((f.face.X1+f.face.X2)/2, (f.face.Y1+f.face.Y2)/2)
		return anchored(middle, size, drawing.Anchor{X: 0.5, Y: 0.5})
	}
	name := p.taken[f.name].ink()
	return fyne.NewPos((name.X1+name.X2-size.Width)/2, name.Y2+underName-inkOf(fyne.Position{}, size, letter).Y1)
}

// besideNumber writes how many findings a front has in the room of its name, of
// which only the number stays.
func (p *painter) besideNumber(f found) bool {
	if f.name < 0 {
		return false
	}
	t := &p.taken[f.name]
	number, _, numbered := strings.Cut(t.say, "  ")
	if !numbered {
		return false
	}
	name := *t
	t.say, t.size = number, p.measure.of(number, t.letter, t.bold)
	if p.summary(f, len(f.labels), strong) {
		return true
	}
	p.taken[f.name] = name
	return false
}

// label writes one label in its front: near its wanted place below the front's
// name, or where there is no room at the name's height, on one line with it;
// anywhere near its wanted place where the name is not written.
func (p *painter) label(f found, s string, want fyne.Position, letter float32, least weight) bool {
	const pad, rows, air = 4, 24, 3 // air is above and below, where there is enough
	size := p.measure.of(s, letter, true)
	area := boxOf(f.face.X1+pad, f.face.Y1, f.face.X2-pad, f.face.Y2)
	if least == none && area.Y2-area.Y1 < size.Height { // over the edges of a low front
		middle := (area.Y1 + area.Y2) / 2
		area.Y1, area.Y2 = middle-size.Height, middle+size.Height
	}
	near := []search{{rows, size.Width / 4, least}, {rows, anywhere, least}} // below one another rather than side by side
	type try struct {
		area box
		want fyne.Position
		how  []search
	}
	tries := []try{{area.Grown(0, -air), want, near}, {area, want, near}}
	if f.name >= 0 {
		name := &p.taken[f.name]
		below := area.Grown(0, -air)
		below.Y1 = name.ink().Y2 + 2
		const ascent = 1.069 // of letters, from the metrics of the font
		line := fyne.NewPos(name.ink().X2+letter, name.at.Y+ascent*(name.letter-letter))
		tries = []try{{below, want, near}, {area, line, []search{{0, anywhere, least}}}}
	}
	for _, t := range tries {
		if !roomy(t.area, size, letter) {
			continue
		}
		to, l := wanted(t.want, size, letter, drawing.Anchor{Y: 1}, t.area), p.placeIn(t.area)
		for _, how := range t.how {
			if at, ok := l.seek(to, size, letter, how); ok {
				p.takeLabel(f.of, s, at, letter)
				return true
			}
		}
	}
	return false
}

// takeLabel gives a finding's label its place.
func (p *painter) takeLabel(of drawing.Tag, s string, at fyne.Position, letter float32) {
	_, colour := p.Palette.Severity(of.Severity)
	of.Meaning = drawing.FindingMark
	p.take(taken{of: of, say: s, at: at, size: p.measure.of(s, letter, true), letter: letter, bold: true, colour: colour, tagged: true})
}
