package screen

import (
	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/message"
	"frontlay/ui/look"
	"frontlay/ui/paint"
)

// painter paints a drawing and writes its texts.
type painter struct {
	*paint.Painter
	say     message.Language
	text    float32 // size of plain text
	measure *measures
	widest  float32 // of the figures beside the run, see prepare
	faces   map[model.Place]plane.Rect
	figures []figure

	traces
	wishes   map[model.Place][]wish // where names and covers of fronts would stand
	numbers  map[model.Place]number // what the numbers of fronts need
	chosen   []box                  // where the chosen finding is marked
	reserved []box                  // no letters here
	inset    fyne.Position          // what rulers take at the left and the top
	room     place                  // see placeIn
}

// newPainter begins a picture. The traces of the one before give their memory to
// it.
func newPainter(by *paint.Painter, say message.Language, m *measures, before traces) *painter {
	p := &painter{Painter: by, say: say, text: look.Text(), measure: m, traces: before}
	p.traces.begin(p.Palette.Sheet, p.Size.Width)
	return p
}

// figure is where a dimension's figure stands on the screen.
type figure struct {
	of   drawing.Subject
	at   fyne.Position
	size fyne.Size
}

// levelStep is from one level of dimensions to the next, in screen units.
func (p *painter) levelStep(vertical bool) float32 {
	if vertical {
		return max(2.1*p.text, p.widest+10)
	}
	return 2.1 * p.text
}

// prepare looks what the dimensions of a drawing need: the widest figure of
// those that stand beside the run, and the fronts in which others stand.
func (p *painter) prepare(d *drawing.Drawing) {
	p.faces = map[model.Place]plane.Rect{}
	for _, m := range d.Marks {
		switch v := m.(type) {
		case *drawing.Dimension:
			if v.Vertical && v.Level != 0 {
				p.widest = max(p.widest, p.measure.of(v.Prefix+p.say.Figure(v.Value), p.text*0.95, false).Width)
			}
		case *drawing.Rectangle:
			if v.Of.Kind == drawing.FrontThing && v.Meaning != drawing.FindingMark {
				p.faces[v.Of.Place] = v.Rect
			}
		}
	}
}

// paint adds the marks of a drawing: geometry first, then dimension lines, and
// over everything the letters.
func (p *painter) paint(d *drawing.Drawing) {
	p.lines(d)
	p.writeTaken()
}

// lines adds the lines of a drawing and gives its texts their places.
func (p *painter) lines(d *drawing.Drawing) {
	p.prepare(d)
	p.Marks()
	p.trace(d)
	for _, m := range d.Marks {
		if v, ok := m.(*drawing.Text); ok {
			p.wish(v)
		}
	}
	p.dimensions(d)
	p.texts(d, true) // names have the right of way
	for _, m := range d.Marks {
		if v, ok := m.(*drawing.Text); ok && v.Meaning == drawing.FindingMark {
			p.flag(v)
		}
	}
	p.texts(d, false)
	p.notes(d)
}

// texts gives the bold texts of a drawing their places, or the others; those of
// findings have theirs from elsewhere. Sizes that have no room in one line come
// last.
func (p *painter) texts(d *drawing.Drawing, bold bool) {
	var sizes []*drawing.Text
	for _, m := range d.Marks {
		if v, ok := m.(*drawing.Text); ok && v.Bold == bold && v.Meaning != drawing.FindingMark && v.Meaning != drawing.Note && !p.textMark(v) {
			sizes = append(sizes, v)
		}
	}
	p.breakSizes(sizes)
}

// window is the part of the screen where letters can be read.
func (p *painter) window() box {
	const edge = 3
	return boxOf(p.inset.X+edge, p.inset.Y+edge, p.Size.Width-edge, p.Size.Height-edge)
}
