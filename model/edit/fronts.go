package edit

import (
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// mostFronts bounds a stack to what a person can still mean.
const mostFronts = 10000

// AddFront puts a front into a stack so that it stands at At.Front from below;
// the fronts from there on move up. At.Front may be one past the last.
type AddFront struct {
	At    model.Place
	Front model.Front
}

// Label names the change.
func (e AddFront) Label() message.Message { return message.New("Add a front") }

// Apply makes the change.
func (e AddFront) Apply(p *model.Project) (*model.Project, error) {
	c, b, err := bay(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.At.Front < 0 || e.At.Front > len(b.Fronts) {
		return nil, message.New("A front can be put at any place from 1 to %v of this stack.", len(b.Fronts)+1)
	}
	if len(b.Fronts) >= mostFronts {
		return nil, message.New("A stack holds at most %v fronts.", mostFronts)
	}
	b.Fronts = append(b.Fronts, model.Front{})
	copy(b.Fronts[e.At.Front+1:], b.Fronts[e.At.Front:])
	f := e.Front.Clone()
	if f.Hardware != "" && c.Sheet(f.Hardware) == nil {
		f.Hardware = ""
	}
	if _, ok := c.FrontBoard(f.Board); !ok {
		f.Board = ""
	}
	b.Fronts[e.At.Front] = f
	refit(c, b)
	return c, nil
}

// RemoveFront takes a front out of its stack. Freed is the height that becomes
// free with it (its own and one gap, as planned): where no front of the stack
// takes a share, the one below (or, at the bottom, above) grows by it.
type RemoveFront struct {
	At    model.Place
	Freed length.Length
}

// Label names the change.
func (e RemoveFront) Label() message.Message { return message.New("Remove a front") }

// Apply makes the change. The last front of a bay can't be removed.
func (e RemoveFront) Apply(p *model.Project) (*model.Project, error) {
	c, _, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	b := c.BayAt(e.At)
	if len(b.Fronts) == 1 {
		return nil, message.New("A bay needs at least one front. Make this one an open niche, or remove the bay.")
	}
	b.Fronts = append(b.Fronts[:e.At.Front], b.Fronts[e.At.Front+1:]...)
	for _, f := range b.Fronts {
		if f.Height <= 0 {
			return c, nil
		}
	}
	heir := max(e.At.Front-1, 0)
	if e.Freed > 0 {
		b.Fronts[heir].Height += e.Freed
	} else {
		b.Fronts[heir].Height, b.Fronts[heir].Clear = 0, false
	}
	return c, nil
}

// ReorderFront moves a front to another place of its stack; To counts from 0 at
// the bottom, after the move.
type ReorderFront struct {
	At model.Place
	To int
}

// Label names the change.
func (e ReorderFront) Label() message.Message {
	if e.To > e.At.Front {
		return message.New("Move front up")
	}
	return message.New("Move front down")
}

// Apply makes the change.
func (e ReorderFront) Apply(p *model.Project) (*model.Project, error) {
	c, _, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	b := c.BayAt(e.At)
	if e.To < 0 || e.To >= len(b.Fronts) {
		return nil, message.New("The front is at the end of its stack already.")
	}
	b.Fronts = reordered(b.Fronts, e.At.Front, e.To)
	return c, nil
}

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
	if err := parts(figure.Front(f), "height", e.Lower, e.Upper); err != nil {
		return nil, err
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
	f.GapAbove, f.Channel = nil, model.Channel{} // they stay above the upper one
	fix(f, e.Lower)
	if f.Kind == model.DrawerFront {
		f.Drawer = model.DrawerAuto
	}
	at := e.At
	at.Front++
	return AddFront{at, upper}.Apply(c)
}

// MoveDivision moves the division above the front at Below. Lower and Upper are
// the heights that the two fronts at the division are to have; the caller works
// them out from the plan, so that their sum is what it was. Where another front
// of the stack takes a share of what is left, both become fixed; otherwise one
// of the two goes on taking the rest, so that the stack still follows the
// cabinet when that is made higher.
type MoveDivision struct {
	Below        model.Place
	Lower, Upper length.Length
}

// Label names the change.
func (e MoveDivision) Label() message.Message {
	return message.New("Move division: %v below, %v above", e.Lower, e.Upper)
}

// Apply makes the change.
func (e MoveDivision) Apply(p *model.Project) (*model.Project, error) {
	c, lower, err := front(p, e.Below)
	if err != nil {
		return nil, err
	}
	above := e.Below
	above.Front++
	upper := c.FrontAt(above)
	if upper == nil {
		return nil, message.New("There is no front above this one, so there is no division to move.")
	}
	if err := parts(figure.Front(lower), "height", e.Lower, e.Upper); err != nil {
		return nil, err
	}
	for _, f := range []*model.Front{lower, upper} {
		if err := unlocked(f); err != nil {
			return nil, err
		}
	}
	lowerShares, upperShares := lower.Height <= 0, upper.Height <= 0
	other := false
	for i, f := range c.BayAt(e.Below).Fronts {
		if i != e.Below.Front && i != above.Front && f.Height <= 0 {
			other = true
		}
	}
	lined := lower.LineUp != nil // its top edge is the division, which now is where it was put
	if upper.LineUp == nil && (other || lined || !upperShares) {
		fix(upper, e.Upper)
	}
	if other || lined || upperShares || !lowerShares {
		fix(lower, e.Lower)
	}
	return c, nil
}
