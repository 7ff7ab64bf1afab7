package screen

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/model/length"
)

// Rulers tells whether rulers and the grid show.
func (c *Screen) Rulers() bool { return c.rulers }

// SetRulers shows or hides rulers at the top and left, and their grid behind the
// drawing.
func (c *Screen) SetRulers(on bool) {
	c.rulers = on
	c.repaint()
}

// leastStep is how far the labelled lines of a ruler stand apart at least, in
// screen units.
const leastStep = 60

// steps are the usual ones of a unit, ascending: 1, 2 or 5 times a power of ten
// millimetres, or the steps of an inch rule.
func steps(u length.Unit) []length.Length {
	var list []length.Length
	if inches(u) {
		for _, n := range []length.Length{1, 2, 4, 8, 16, 32, 48, 96, 192, 384, 768} {
			list = append(list, n*length.Inch/8)
		}
		return list
	}
	for p := length.Millimetre; p <= 10*length.Metre; p *= 10 {
		list = append(list, p, 2*p, 5*p)
	}
	return list
}

func inches(u length.Unit) bool { return u == length.UnitInch || u == length.UnitInchDecimal }

// rulerStep is the smallest usual step of a unit that is not too small on the
// screen.
func rulerStep(u length.Unit, scale float64) length.Length {
	all := steps(u)
	for _, s := range all {
		if s.MM()*scale >= leastStep {
			return s
		}
	}
	return all[len(all)-1]
}

// grid draws lines at the step of the rulers, behind everything.
func (p *painter) grid(step length.Length) {
	pen := p.Palette.Pen(drawing.Grid)
	from, to := p.View.Run(fyne.NewPos(0, p.Size.Height)), p.View.Run(fyne.NewPos(p.Size.Width, 0))
	for x := from.X.CeilTo(step); x <= to.X; x += step {
		p.Line(p.PX(x), 0, p.PX(x), p.Size.Height, pen.Line, pen.Width)
	}
	for y := from.Y.CeilTo(step); y <= to.Y; y += step {
		p.Line(0, p.PY(y), p.Size.Width, p.PY(y), pen.Line, pen.Width)
	}
}

// rulerSizes are the size of a ruler's letters, the height of the upper one and
// the width of the left one.
func (p *painter) rulerSizes() (letters, high, wide float32) {
	letters = p.text * 0.8
	return letters, letters * 1.6, letters * 3.4
}

// rulersOver draws the rulers over everything: distances from the left end of
// the run, and heights above the floor line.
func (p *painter) rulersOver(step length.Length) {
	letters, high, wide := p.rulerSizes()
	strip := func(w, h float32) {
		r := fynecanvas.NewRectangle(p.Palette.Panel)
		r.StrokeColor, r.StrokeWidth = p.Palette.Line, 1
		r.Resize(fyne.NewSize(w, h))
		p.Objects = append(p.Objects, r)
	}
	strip(p.Size.Width, high)
	strip(wide, p.Size.Height)
	from, to := p.View.Run(fyne.NewPos(wide, p.Size.Height)), p.View.Run(fyne.NewPos(p.Size.Width, high))
	for x := from.X.CeilTo(step); x <= to.X; x += step {
		at := p.PX(x)
		p.Line(at, high*0.7, at, high, p.Palette.Ink, 1)
		if say := p.say.Figure(x); at+3+p.measure.Of(say, letters, false).Width < p.Size.Width {
			p.put(say, fyne.NewPos(at+3, 0), drawing.Anchor{Y: 1}, letters, false, p.Palette.Ink)
		}
	}
	for y := from.Y.CeilTo(step); y <= to.Y; y += step {
		at := p.PY(y)
		p.Line(wide*0.85, at, wide, at, p.Palette.Ink, 1)
		say := p.say.Figure(y)
		fits := p.measure.Of(say, letters, false).Width < wide*0.8 && at > high+letters && at < p.Size.Height-letters
		if fits {
			p.put(say, fyne.NewPos(wide*0.8, at), drawing.Anchor{X: 1, Y: 0.5}, letters, false, p.Palette.Ink)
		}
	}
}
