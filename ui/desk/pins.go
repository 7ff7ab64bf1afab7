package desk

import (
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/message"
	"frontlay/ui/look"
	"frontlay/ui/screen"
)

// hint is one of the things to begin with.
type hint uint8

const (
	dragHere hint = iota
	typeHere
	lookHere
	hints
)

// pins point, in a drawing that somebody sees for the first time, to where it can be
// dragged and typed and to what the check says. Each is gone when its thing was done
// once. They take no part in what the pointer does, and stand on no text of the
// drawing.
type pins struct {
	desk   *Desk
	object *fyne.Container
	all    [hints]pin
	at     fyne.Position // of the sheet
}

// pin is a small sign beside its place, with a dot on it.
type pin struct {
	words       message.Message
	icon        string
	ground, dot *fynecanvas.Rectangle
	sign        *fynecanvas.Image
	text        *fynecanvas.Text
}

func newPins(d *Desk) *pins {
	p := &pins{desk: d, object: container.NewWithoutLayout()}
	p.all[dragHere] = newPin("hand", message.New("Drag this line"))
	p.all[typeHere] = newPin("type", message.New("Click the figure, type: 900-2*18"))
	p.all[lookHere] = newPin("through", message.New("Look here for what would go wrong"))
	for _, one := range p.all {
		p.object.Objects = append(p.object.Objects, one.dot, one.ground, one.sign, one.text)
	}
	for _, o := range p.object.Objects {
		o.Hide()
	}
	return p
}

func newPin(icon string, words message.Message) pin {
	return pin{words, icon, &fynecanvas.Rectangle{CornerRadius: 6}, &fynecanvas.Rectangle{CornerRadius: 4},
		&fynecanvas.Image{FillMode: fynecanvas.ImageFillContain}, fynecanvas.NewText("", nil)}
}

// prefHints keeps which hints are done, a bit each.
const prefHints = "hints done"

const allHints = 1<<hints - 1

// HintsDone tells a window's settings that no hint is wanted any more.
func HintsDone(p fyne.Preferences) { p.SetInt(prefHints, allHints) }

func (p *pins) doneOnes() int { return p.desk.host.Preferences().Int(prefHints) }

// wanted tells that a hint is still to be shown.
func (p *pins) wanted(h hint) bool { return p.doneOnes()>>h&1 == 0 }

// done takes a hint away for good.
func (p *pins) done(h hint) {
	if p.wanted(h) {
		p.desk.host.Preferences().SetInt(prefHints, p.doneOnes()|1<<h)
		p.place()
	}
}

// turn shows all hints again, or takes away those that are left.
func (p *pins) turn() {
	if p.doneOnes() == allHints {
		p.desk.host.Preferences().SetInt(prefHints, 0)
	} else {
		HintsDone(p.desk.host.Preferences())
	}
	p.place()
}

// place puts the pins beside what they speak of, where that is seen.
func (p *pins) place() {
	if p.doneOnes() == allHints && !p.seen() {
		return
	}
	for h := range hints {
		p.show(h, p.wanted(h) && p.desk.Screen.Picture() == screen.Elevation)
	}
	p.object.Refresh()
}

// seen tells that a pin is.
func (p *pins) seen() bool {
	return slices.ContainsFunc(p.object.Objects, fyne.CanvasObject.Visible)
}

// target is the point of the sheet that a hint is about.
func (p *pins) target(h hint) (fyne.Position, bool) {
	s := p.desk.Screen
	if h == lookHere {
		return fyne.NewPos(lookAcross, s.Size().Height-lookAbove), true
	}
	pl := s.Session().Result().Plan
	for i := range pl.Fronts {
		f := &pl.Fronts[i]
		if h == typeHere {
			from, size, ok := s.Where(drawing.Subject{Kind: drawing.FrontHeight, Place: f.Place})
			if ok {
				return from.AddXY(size.Width+6, size.Height/2), true // beside the figure
			}
		} else if pl.FrontAt(above(f.Place)) != nil {
			from, size, ok := s.Where(drawing.Subject{Kind: drawing.DivisionThing, Place: f.Place})
			if ok {
				return from.AddXY(size.Width/2, size.Height/2), true
			}
		}
	}
	return fyne.Position{}, false
}

func above(at model.Place) model.Place {
	at.Front++
	return at
}

// Where the hint about the check points: over the bar's first chip, in units of the
// screen.
const lookAcross, lookAbove = 60, 10

// show puts a pin to the nearest place around its target that is free.
func (p *pins) show(h hint, on bool) {
	one := &p.all[h]
	parts := []fyne.CanvasObject{one.dot, one.ground, one.sign, one.text}
	hide := func(hidden bool) {
		for _, o := range parts {
			if hidden {
				o.Hide()
			} else {
				o.Show()
			}
		}
	}
	target, ok := p.target(h)
	if !on || !ok {
		hide(true)
		return
	}
	c := look.Current()
	one.ground.FillColor, one.dot.FillColor, one.dot.StrokeColor, one.dot.StrokeWidth = c.Guide, c.Guide, c.Sheet, 1
	one.text.Text, one.text.TextSize, one.text.Color = p.desk.host.Say().Say(one.words), look.Secondary(), c.Sheet
	look.SetIcon(one.sign, one.icon, c.Sheet, c.Guide)
	const pad, dot = 6, 8
	icon, text := look.IconSize()*0.8, one.text.MinSize()
	size := fyne.NewSize(3*pad+icon+text.Width, max(icon, text.Height)+pad)
	room := p.desk.Screen.Size()
	for _, away := range []float32{12, 26, 44, 70, 100} {
		for _, at := range []fyne.Position{
			target.AddXY(away, away), target.AddXY(away, -away-size.Height), target.AddXY(-away-size.Width, away), target.AddXY(-away-size.Width, -away-size.Height),
		} {
			if at.X < 0 || at.Y < 0 || at.X+size.Width > room.Width || at.Y+size.Height > room.Height || !p.desk.Screen.Free(at, size) || p.over(h, at.Add(p.at), size) {
				continue
			}
			at = at.Add(p.at)
			one.dot.Resize(fyne.NewSquareSize(dot))
			one.dot.Move(p.at.Add(target).SubtractXY(dot/2, dot/2))
			one.ground.Resize(size)
			one.ground.Move(at)
			one.sign.Resize(fyne.NewSquareSize(icon))
			one.sign.Move(at.AddXY(pad, (size.Height-icon)/2))
			one.text.Resize(text)
			one.text.Move(at.AddXY(2*pad+icon, (size.Height-text.Height)/2))
			hide(false)
			return
		}
	}
	hide(true) // rather than over a figure
}

// over tells that a pin would lie over one that is placed before it.
func (p *pins) over(h hint, at fyne.Position, size fyne.Size) bool {
	for i := range h {
		g := p.all[i].ground
		if from, high := g.Position(), g.Size(); g.Visible() && at.X < from.X+high.Width && from.X < at.X+size.Width && at.Y < from.Y+high.Height && from.Y < at.Y+size.Height {
			return true
		}
	}
	return false
}

// Hints are the words of the pins that are seen.
func (d *Desk) Hints() []string {
	var all []string
	for _, one := range d.pins.all {
		if one.text.Visible() {
			all = append(all, one.text.Text)
		}
	}
	return all
}
