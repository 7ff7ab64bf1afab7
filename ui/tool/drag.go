package tool

import "frontlay/ui/session"

// drag is what tools have in common that change the project while the button is
// held: the first move begins a step, letting go ends it, Esc gives it up.
type drag struct {
	moved bool
}

// begin begins the step at the first move.
func (g *drag) begin(s *session.Session) {
	if !g.moved {
		s.Begin()
		g.moved = true
	}
}

// Release makes what was dragged one step.
func (g drag) Release(d Desk, _ Pointer) Tool {
	if g.moved {
		d.Session().Commit()
		d.Display(Feedback{})
	}
	return Idle{}
}

// Escape gives back what was.
func (g drag) Escape(d Desk) Tool {
	d.Session().Cancel()
	d.Display(Feedback{})
	return Idle{}
}
