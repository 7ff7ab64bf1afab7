package edit

import (
	"strings"

	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetHeight fixes the height of the front at a place, with Clear the clear height
// of an open niche. The height lies between 10 mm and 20 m; whether the stack has
// room for it is for the check to say. A front that lined up with another does so
// no longer.
type SetHeight struct {
	At     model.Place
	Height length.Length
	Clear  bool
}

// Label names the change.
func (e SetHeight) Label() message.Message {
	if e.Clear {
		return message.New("Clear height %v", e.Height)
	}
	return message.New("Front height %v", e.Height)
}

// Apply makes the change.
func (e SetHeight) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if err := refused(figure.Front(f), "height", e.Height); err != nil {
		return nil, err
	}
	if err := unlocked(f); err != nil {
		return nil, err
	}
	if e.Clear && f.Kind != model.OpenNiche {
		return nil, message.New("Only an open niche has a clear height.")
	}
	fix(f, e.Height)
	f.Clear = e.Clear
	return c, nil
}

// SetShare lets a front take a share of what the fixed ones leave. Share is
// from 0.001 to 1000.
type SetShare struct {
	At    model.Place
	Share float64
}

// Label names the change.
func (e SetShare) Label() message.Message { return message.New("Front takes a share of %v", e.Share) }

// Apply makes the change.
func (e SetShare) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if err := refused(figure.Front(f), "share", e.Share); err != nil {
		return nil, err
	}
	if err := unlocked(f); err != nil {
		return nil, err
	}
	f.Height, f.Clear, f.Share, f.LineUp = 0, false, e.Share, nil
	return c, nil
}

// SetKind makes a place in the stack a drawer, a fixed panel, an open niche or a door.
type SetKind struct {
	At   model.Place
	Kind model.Kind
}

// Label names the change.
func (e SetKind) Label() message.Message {
	switch e.Kind {
	case model.FixedPanel:
		return message.New("Make it a fixed panel")
	case model.OpenNiche:
		return message.New("Make it an open niche")
	case model.Door:
		return message.New("Make it a door")
	default:
		return message.New("Make it a drawer")
	}
}

// Apply makes the change.
func (e SetKind) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.Kind > model.Door {
		return nil, message.New("A place in the stack is a drawer, a fixed panel, an open niche or a door.")
	}
	f.Kind = e.Kind
	f.Clear = f.Clear && f.Kind == model.OpenNiche
	if f.Kind != model.DrawerFront {
		f.Drawer, f.Drop, f.Cover = "", nil, 0
	}
	if !f.Kind.Holds() {
		f.Inner = nil
	}
	if f.Kind != model.Door {
		f.Hinged = model.HingedLeft
	}
	return c, nil
}

// SetDrawer chooses the height of the drawer behind a front by its name in the
// hardware sheet; model.DrawerAuto (or "") asks for the tallest that fits.
type SetDrawer struct {
	At     model.Place
	Drawer string
}

// Label names the change.
func (e SetDrawer) Label() message.Message {
	if e.Drawer == "" || e.Drawer == model.DrawerAuto {
		return message.New("Drawer: tallest that fits")
	}
	return message.New("Drawer “%v”", e.Drawer)
}

// Apply makes the change. An unknown name is refused with the names there are.
func (e SetDrawer) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.Drawer != "" && e.Drawer != model.DrawerAuto {
		s := sheetOf(c, c.BayAt(e.At), f)
		if s == nil {
			return nil, message.New("This bay has no hardware sheet yet. Choose one for it first.")
		}
		if s.Drawer(e.Drawer) == nil {
			return nil, message.New("The hardware sheet has no drawer “%v”. It has: %v.", e.Drawer, drawerNames(s))
		}
	}
	f.Drawer = e.Drawer
	return c, nil
}

func drawerNames(s *model.HardwareSheet) string {
	names := make([]string, len(s.Drawers))
	for i := range s.Drawers {
		names[i] = s.Drawers[i].Name
	}
	return strings.Join(names, ", ")
}

// SetRunner asks for a runner of a length of the hardware sheet; 0 asks for the
// longest that fits.
type SetRunner struct {
	At     model.Place
	Length length.Length
}

// Label names the change.
func (e SetRunner) Label() message.Message {
	if e.Length == 0 {
		return message.New("Longest runner that fits")
	}
	return message.New("Runner %v", e.Length)
}

// Apply makes the change. A length that the sheet does not have is refused with
// those that it has.
func (e SetRunner) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.Length != 0 {
		s := sheetOf(c, c.BayAt(e.At), f)
		if s == nil {
			return nil, message.New("This bay has no hardware sheet yet. Choose one for it first.")
		}
		if !hasRunner(s, e.Length) {
			var have []string
			for _, r := range s.Runner.Lengths {
				have = append(have, r.Length.String())
			}
			return nil, message.New("The hardware sheet has no runner of %v. It has: %v.", e.Length, strings.Join(have, ", "))
		}
	}
	f.Runner = e.Length
	return c, nil
}

// SetSpan lets a front span several bays, its own and those at its right.
type SetSpan struct {
	At    model.Place
	Count int
}

// Label names the change.
func (e SetSpan) Label() message.Message { return message.New("Bays spanned: %v", e.Count) }

// Apply makes the change. The cabinet must have so many bays.
func (e SetSpan) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	most := len(c.CabinetAt(e.At).Bays) - e.At.Bay
	if e.Count < 1 || e.Count > most {
		return nil, message.New("A front of this bay can span from 1 to %v bays.", most)
	}
	f.Span = e.Count
	if f.Span == 1 {
		f.Span = 0
	}
	return c, nil
}

// Lock locks fronts at the heights they have in the plan, or unlocks them.
// Heights has one for each place; it is not needed to unlock.
type Lock struct {
	At      []model.Place
	Heights []length.Length
	Locked  bool
}

// Label names the change.
func (e Lock) Label() message.Message {
	if e.Locked {
		return message.New("Lock height")
	}
	return message.New("Unlock height")
}

// Apply makes the change.
func (e Lock) Apply(p *model.Project) (*model.Project, error) {
	c := p.Clone()
	for i, at := range e.At {
		f := c.FrontAt(at)
		if f == nil {
			return nil, message.New("There is no front at this place any more. Select one in the drawing.")
		}
		f.Locked = e.Locked
		if e.Locked && i < len(e.Heights) {
			if err := refused(figure.Front(f), "height", e.Heights[i]); err != nil {
				return nil, err
			}
			if !f.Clear || f.Height <= 0 { // a niche's clear height stays what is asked for
				fix(f, e.Heights[i])
			}
		}
	}
	return c, nil
}

// LineUp asks for a front's top edge to be level with an edge of another front;
// nil ends that. Number is the other front's number in the run, by which the
// label tells one that has no name; it changes nothing.
type LineUp struct {
	At     model.Place
	With   *model.LineUp
	Number int
}

// Label names the change.
func (e LineUp) Label() message.Message {
	switch {
	case e.With == nil:
		return message.New("No longer lined up")
	case e.Number > 0:
		return message.New("Line up with front %v", e.Number)
	}
	return message.New("Line up with “%v”", e.With.Front)
}

// Apply makes the change.
func (e LineUp) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if err := unlocked(f); err != nil {
		return nil, err
	}
	f.LineUp = nil
	if e.With != nil {
		w := *e.With
		f.LineUp, f.Height, f.Clear = &w, 0, false
	}
	return c, nil
}
