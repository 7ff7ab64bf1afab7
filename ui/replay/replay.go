// Package replay hands events to widgets in the order in which the desktop
// driver does, which Fyne's test driver does not, and finds what is in a window
// by its name. It is for tests; nothing of the program imports it.
package replay

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

// Target is a widget that takes the pointer's work.
type Target interface {
	desktop.Mouseable
	desktop.Hoverable
	fyne.Draggable
	Position() fyne.Position
}

// threshold is how far the desktop driver lets the pointer go before a press
// becomes a drag.
const threshold = 2

// Pointer is a pointer over one widget.
type Pointer struct {
	To Target
	// Held are the modifier keys that are held.
	Held fyne.KeyModifier

	at      fyne.Position
	inside  bool
	button  desktop.MouseButton
	from    fyne.Position
	dragged bool
}

func (p *Pointer) event() *desktop.MouseEvent {
	return &desktop.MouseEvent{
		PointEvent: fyne.PointEvent{Position: p.at, AbsolutePosition: p.at.Add(p.To.Position())},
		Button:     p.button, Modifier: p.Held,
	}
}

// Move brings the pointer to a place.
func (p *Pointer) Move(to fyne.Position) {
	last := p.at
	p.at = to
	if p.button != 0 && p.button != desktop.MouseButtonSecondary {
		d := to.Subtract(p.from)
		if !p.dragged && max(d.X, -d.X) < threshold && max(d.Y, -d.Y) < threshold {
			return
		}
		p.dragged = true
		p.To.Dragged(&fyne.DragEvent{
			PointEvent: fyne.PointEvent{Position: to, AbsolutePosition: to.Add(p.To.Position())},
			Dragged:    fyne.NewDelta(to.X-last.X, to.Y-last.Y),
		})
		return
	}
	if !p.inside {
		p.inside = true
		p.To.MouseIn(p.event())
		return
	}
	p.To.MouseMoved(p.event())
}

// Press presses a button.
func (p *Pointer) Press(b desktop.MouseButton) {
	p.button, p.from, p.dragged = b, p.at, false
	p.To.MouseDown(p.event())
}

// Release lets the button go.
func (p *Pointer) Release() {
	p.To.MouseUp(p.event())
	p.button = 0
	if p.dragged {
		p.dragged = false
		p.To.DragEnd()
	}
}

// Click presses and releases at a place.
func (p *Pointer) Click(at fyne.Position) {
	p.Move(at)
	p.Press(desktop.MouseButtonPrimary)
	p.Release()
}

// Drag drags from one place to another in steps.
func (p *Pointer) Drag(from, to fyne.Position, steps int) {
	p.Move(from)
	p.Press(desktop.MouseButtonPrimary)
	for i := 1; i <= steps; i++ {
		f := float32(i) / float32(steps)
		p.Move(fyne.NewPos(from.X+(to.X-from.X)*f, from.Y+(to.Y-from.Y)*f))
	}
	p.Release()
}

// ReleaseElsewhere lets the button go over a widget that takes no part in the
// mouse's work: the one that is dragged hears only that the drag has ended.
func (p *Pointer) ReleaseElsewhere() {
	p.button = 0
	if p.dragged {
		p.dragged = false
		p.To.DragEnd()
	}
}

// Click clicks once at a place in a widget that takes presses and perhaps double
// clicks. Of those that do a single click is known only once a second one could
// have come.
func Click(of desktop.Mouseable, at fyne.Position) {
	press(of, at)
	if w, ok := of.(fyne.Tappable); ok {
		w.Tapped(&fyne.PointEvent{Position: at})
	}
}

// DoubleClick clicks twice at a place in a widget.
func DoubleClick(of desktop.Mouseable, at fyne.Position) {
	press(of, at)
	press(of, at)
	if w, ok := of.(fyne.DoubleTappable); ok {
		w.DoubleTapped(&fyne.PointEvent{Position: at})
	}
}

func press(of desktop.Mouseable, at fyne.Position) {
	e := &desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}, Button: desktop.MouseButtonPrimary}
	of.MouseDown(e)
	of.MouseUp(e)
}
