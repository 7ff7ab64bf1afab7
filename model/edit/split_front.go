package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SplitFront draws a division across a front: it keeps Lower of its height and
// a new front of Upper stands above it. The caller takes the gap off, so that
// Lower + gap + Upper is the front's height in the plan. A front that took a
// share goes on doing so above the division where no other front of the stack
// does.
type SplitFront struct {
	At           model.Place
	Lower, Upper length.Length
}

// Label names the change.
func (e SplitFront) Label() message.Message {
	return message.New("Draw a division: %v below, %v above", e.Lower, e.Upper)
}

// Apply makes the change.
func (e SplitFront) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.Lower < leastFront || e.Upper < leastFront {
		return nil, message.New("A front can't be lower than %v. Draw the division further from the front's edges.", leastFront)
	}
	if err := unlocked(f); err != nil {
		return nil, err
	}
	b := c.BayAt(e.At)
	if len(b.Fronts) >= mostFronts {
		return nil, message.New("A stack holds at most %v fronts.", mostFronts)
	}
	shared, other := f.Height <= 0, false
	for i := range b.Fronts {
		other = other || i != e.At.Front && b.Fronts[i].Height <= 0
	}
	upper := f.Clone()
	upper.Name = ""
	if !shared || other {
		fix(&upper, e.Upper)
	}
	if upper.Kind == model.DrawerFront {
		upper.Drawer, upper.Drop = model.DrawerAuto, nil
	}
	fix(f, e.Lower)
	if f.Kind == model.DrawerFront {
		f.Drawer = model.DrawerAuto
	}
	at := e.At
	at.Front++
	return AddFront{at, upper}.Apply(c)
}
