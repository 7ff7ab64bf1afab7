package screen

import (
	"image/color"
	"slices"

	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/layout/letter"
	"frontlay/model"
	"frontlay/model/message"
	"frontlay/ui/look"
	"frontlay/ui/paint"
)

// box is a rectangle on the screen.
type box = paint.Box

// boxOf is a box by its corners.
func boxOf(x1, y1, x2, y2 float32) box { return box{X1: x1, Y1: y1, X2: x2, Y2: y2} }

// painter paints a drawing and writes its texts where they are placed.
type painter struct {
	*paint.Painter
	say     message.Language
	text    float32 // size of plain text
	measure *paint.Measures
	drawing *drawing.Drawing

	reserved []box         // no letters here
	inset    fyne.Position // what rulers take at the left and the top
	all      *letter.Written
	flags    []banner
}

// newPainter begins a picture of a drawing.
func newPainter(by *paint.Painter, d *drawing.Drawing, say message.Language, m *paint.Measures) *painter {
	return &painter{Painter: by, say: say, text: look.Text(), measure: m, drawing: d}
}

// figure is where a figure that can be typed, or a name, stands on the screen.
type figure struct {
	of   drawing.Subject
	at   fyne.Position
	size fyne.Size
}

// text is something that is written: where, and on what.
type text struct {
	box
	on color.NRGBA
}

// style is how the dimensions of the drawing are drawn.
func (p *painter) style() letter.Style {
	widest := float32(0)
	for _, m := range p.drawing.Marks {
		if d, ok := m.(*drawing.Dimension); ok && d.Vertical && d.Level != 0 {
			widest = max(widest, p.measure.Of(d.Prefix+p.say.Figure(d.Value), p.text, false).Width)
		}
	}
	return paint.Style(widest)
}

// window is the part of the screen where letters can be read.
func (p *painter) window() box {
	const edge = 3
	return boxOf(p.inset.X+edge, p.inset.Y+edge, p.Size.Width-edge, p.Size.Height-edge)
}

// place finds where everything stands that is written; what strong tells is bold.
// The flag of the chosen finding stands last, over what is least missed.
func (p *painter) place(strong func(drawing.Subject) bool) {
	l := letter.New(p.measure.Letters(), p.style(), p.say, paint.ToBox(p.window()))
	l.Strong = strong
	for _, b := range p.reserved {
		l.Keep(paint.ToBox(b))
	}
	l.Add(p.withoutFlags(), p.Placing())
	p.all = l.Write()
	for _, m := range p.drawing.Marks {
		if t, ok := m.(*drawing.Text); ok && t.Meaning == drawing.FindingMark {
			p.flag(t)
		}
	}
}

// withoutFlags is the drawing without the flags of the chosen finding.
func (p *painter) withoutFlags() *drawing.Drawing {
	d := &drawing.Drawing{Title: p.drawing.Title}
	for _, m := range p.drawing.Marks {
		if t, ok := m.(*drawing.Text); !ok || t.Meaning != drawing.FindingMark {
			d.Add(m)
		}
	}
	return d
}

// hidden tells that a flag covers a text, or that the sheet's edge cuts it: half a
// word is worse than none.
func (p *painter) hidden(t *letter.Text) bool {
	b := paint.OfBox(t.Box)
	sheet := boxOf(0, 0, p.Size.Width, p.Size.Height)
	if b.Overlaps(sheet) && !b.Within(sheet) {
		return true
	}
	return slices.ContainsFunc(p.flags, func(f banner) bool { return f.around.Overlaps(b) })
}

// write paints all that is written, over everything else.
func (p *painter) write() {
	p.Chosen()
	p.Written(p.all, p.measure, p.hidden)
	for i := range p.flags {
		p.paintFlag(&p.flags[i])
	}
}

// inside draws the dimension lines of the heights that stand in fronts, where of
// tells so.
func (p *painter) inside(of func(drawing.Subject) bool, c color.NRGBA) {
	for i := range p.all.Dimensions {
		d := &p.all.Dimensions[i]
		if d.Inside && of(drawing.Subject{Kind: drawing.FrontThing, Place: d.Of.Of.Place}) {
			p.Dimension(d, c)
		}
	}
}

// figures are the figures of dimensions and the names that are written.
func (p *painter) figures() []figure {
	named := map[drawing.Mark]bool{} // fronts whose name is written
	for i := range p.all.Texts {
		if t := &p.all.Texts[i]; t.Of.Of.Kind == drawing.FrontName && t.Variant != letter.Least {
			named[t.Mark] = true
		}
	}
	var list []figure
	for i := range p.all.Texts {
		t := &p.all.Texts[i]
		if p.hidden(t) {
			continue
		}
		_, measured := t.Mark.(*drawing.Dimension)
		c, captioned := t.Mark.(*drawing.Caption)
		number := captioned && t.Of.Of.Kind == drawing.FrontName && t.Variant == letter.Least
		if !measured && !captioned || number && !c.Name.Empty() && named[c] || t.Of.Meaning == drawing.Note {
			continue
		}
		b := paint.OfBox(t.Box)
		list = append(list, figure{t.Of.Of, b.Place(), b.Extent()})
	}
	return list
}

// texts are all that is written, and flags those of findings.
func (p *painter) texts() (all []text, flags []box) {
	rings := map[model.Place]box{}
	for _, r := range p.all.Rings {
		rings[r.Of.Of.Place] = paint.OfBox(r.Box)
	}
	for i := range p.all.Texts {
		if t := &p.all.Texts[i]; !p.hidden(t) {
			b := paint.OfBox(t.Box)
			if ring, ok := rings[t.Of.Of.Place]; ok && b.Within(ring) { // a number is seen with its ring
				b = ring
			}
			all = append(all, text{b, p.Under(t.On)})
		}
	}
	for i := range p.flags {
		all = append(all, text{p.flags[i].around, p.Palette.Sheet})
		flags = append(flags, p.flags[i].around)
	}
	return all, flags
}

// put writes a text with its anchor at a place.
func (p *painter) put(s string, at fyne.Position, a drawing.Anchor, letters float32, bold bool, c color.NRGBA) box {
	return p.Write(s, at, a, p.measure.Of(s, letters, bold), letters, bold, c)
}

// margins are what the dimensions of the drawing need around it.
func (p *painter) margins() paint.Margins {
	m := paint.Margins{Left: 24, Right: 24, Bottom: 24, Top: 24}
	s := p.style()
	for _, mark := range p.drawing.Marks {
		d, ok := mark.(*drawing.Dimension)
		if !ok || d.Level == 0 {
			continue
		}
		out := float32(max(d.Level, -d.Level))
		room := float32(s.StepY) * (out + 0.6)
		if d.Vertical {
			room = float32(s.StepX)*(out+0.5) + 6
		}
		switch {
		case d.Vertical && d.Level < 0:
			m.Left = max(m.Left, room)
		case d.Vertical:
			m.Right = max(m.Right, room)
		case d.Level < 0:
			m.Bottom = max(m.Bottom, room)
		default:
			m.Top = max(m.Top, room)
		}
	}
	return m
}
