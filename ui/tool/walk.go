package tool

import (
	"slices"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/session"
)

// Key is a key that tools know.
type Key uint8

// The keys.
const (
	Up Key = iota
	Down
	Left
	Right
	PageUp
	PageDown
	Enter
)

// Stroke is a key that was pressed.
type Stroke struct {
	Key   Key
	Shift bool
}

// way is the direction of an arrow: right and up are 1.
func (k Stroke) way() (dx, dy int) {
	switch k.Key {
	case Up, PageUp:
		return 0, 1
	case Down, PageDown:
		return 0, -1
	case Left:
		return -1, 0
	case Right:
		return 1, 0
	}
	return 0, 0
}

// Keyed is a tool that is worked by keys too.
type Keyed interface {
	Tool
	// Key follows a key.
	Key(Desk, Stroke) Tool
	// Field is what a digit begins to type; false: nothing.
	Field(Desk) (Field, bool)
}

// Field is the height of the one front that is selected.
func (Idle) Field(d Desk) (Field, bool) {
	at := d.Session().SelectedFronts()
	if len(at) != 1 {
		return Field{}, false
	}
	return FieldOf(d.Session(), drawing.Subject{Kind: drawing.FrontHeight, Place: at[0]})
}

// Key moves the selection by the arrows, adds to it by Shift and the arrows,
// walks through fronts and divisions by Page Up and Page Down, nudges a selected
// division or partition, and opens the size of what is selected by Enter.
func (i Idle) Key(d Desk, k Stroke) Tool {
	w := walker{d, d.Session()}
	dx, dy := k.way()
	sel := w.s.Selection()
	switch {
	case k.Key == Enter:
		w.typeSelected()
	case k.Key == PageUp || k.Key == PageDown:
		w.walk(dy)
	case len(sel) == 0:
		w.s.Select(session.Front(model.Place{}))
	case sel[0].Kind == drawing.DivisionThing && dy != 0:
		w.nudgeDivision(sel[0].Place, w.nudge(dy, k.Shift))
	case sel[0].Kind == drawing.PartitionThing && dx != 0:
		w.nudgePartition(sel[0].Place, w.nudge(dx, k.Shift))
	default:
		next, ok := w.beside(dx, dy)
		switch {
		case !ok:
		case k.Shift && sel[0].Kind == drawing.FrontThing:
			w.extend(next)
		default:
			w.s.Select(session.Front(next))
		}
	}
	return i
}

// walker moves what is selected.
type walker struct {
	d Desk
	s *session.Session
}

// typeSelected opens the size of what is selected.
func (w walker) typeSelected() {
	sel := w.s.Selection()
	if len(sel) == 0 {
		return
	}
	at := sel[0].Place
	switch sel[0].Kind {
	case drawing.FrontThing, drawing.DivisionThing:
		typeAt(w.d, drawing.Subject{Kind: drawing.FrontHeight, Place: at})
	case drawing.BayThing, drawing.PartitionThing:
		at.Front = -1
		typeAt(w.d, drawing.Subject{Kind: drawing.BayWidth, Place: at})
	case drawing.CabinetThing:
		typeAt(w.d, drawing.Subject{Kind: drawing.CabinetWidth, Place: at})
	}
}

// nudge is one step, or ten with Shift.
func (w walker) nudge(sign int, ten bool) length.Length {
	by := Step(w.s.Project().Unit, false)
	if ten {
		by *= 10
	}
	return by * length.Length(sign)
}

func (w walker) nudgeDivision(at model.Place, by length.Length) {
	pl := w.s.Result().Plan
	above := at
	above.Front++
	if lo, up := pl.FrontAt(at), pl.FrontAt(above); lo != nil && up != nil {
		more(w.d, edit.MoveDivision{Below: at, Lower: lo.Face.Height() + by, Upper: up.Face.Height() - by})
	}
}

func (w walker) nudgePartition(at model.Place, by length.Length) {
	pl := w.s.Result().Plan
	next := at
	next.Bay++
	if l, r := pl.BayAt(at), pl.BayAt(next); l != nil && r != nil {
		more(w.d, edit.MovePartition{Left: at, WidthLeft: l.Opening.Width() + by, WidthRight: r.Opening.Width() - by})
	}
}

// do makes an edit and tells where it can't be made.
func do(d Desk, e edit.Edit) bool {
	if err := d.Session().Do(e); err != nil {
		d.Tell(Said(err))
		return false
	}
	return true
}

// more makes an edit that a key repeats: of one selection it is one step.
func more(d Desk, e edit.Edit) {
	if err := d.Session().More(drawing.DivisionThing, e); err != nil {
		d.Tell(Said(err))
	}
}

// extend adds a front to the selection. Back over the one that was added last, it
// takes that out again.
func (w walker) extend(to model.Place) {
	sel := slices.Clone(w.s.Selection())
	one, n := session.Front(to), len(sel)
	switch {
	case n > 1 && sel[n-2] == one:
		sel = sel[:n-1]
	default: // the last one is where the next step begins
		sel = append(slices.DeleteFunc(sel, func(t drawing.Subject) bool { return t == one }), one)
	}
	w.s.Select(sel...)
}

// beside is the front above or below, or in the bay at the left or right, of where
// the selection ends; false: there is none.
func (w walker) beside(dx, dy int) (model.Place, bool) {
	sel := w.s.Selection()
	last := sel[len(sel)-1]
	at := model.Place{Cabinet: max(last.Place.Cabinet, 0), Bay: max(last.Place.Bay, 0), Front: max(last.Place.Front, 0)}
	switch {
	case dx != 0:
		return besides(w.s, at, dx)
	case last.Place.Bay < 0 || last.Place.Front < 0:
		at.Front = 0
	case last.Kind == drawing.FrontThing:
		at.Front += dy
	case dy > 0: // above a division
		at.Front++
	}
	return at, w.s.Project().FrontAt(at) != nil
}

// besides is the front of the bay at the left or right of a front that is most
// level with it; beyond the first and last bay that of the cabinet beside.
func besides(s *session.Session, at model.Place, dx int) (model.Place, bool) {
	p, pl := s.Project(), s.Result().Plan
	from := pl.FrontAt(at)
	next := model.Place{Cabinet: at.Cabinet, Bay: at.Bay + dx}
	if p.BayAt(next) == nil {
		next.Cabinet += dx
		cab := p.CabinetAt(next)
		if cab == nil {
			return at, false
		}
		next.Bay = 0
		if dx < 0 {
			next.Bay = len(cab.Bays) - 1
		}
	}
	best, off := next, length.Length(0)
	for i := range p.BayAt(next).Fronts {
		one := next
		one.Front = i
		f := pl.FrontAt(one)
		if f == nil || from == nil {
			continue
		}
		if d := (f.Face.Centre().Y - from.Face.Centre().Y).Abs(); i == 0 || d < off {
			best, off = one, d
		}
	}
	return best, true
}

// walk goes up or down through fronts and the divisions between them.
func (w walker) walk(dy int) {
	sel := w.s.Selection()
	if len(sel) == 0 {
		w.s.Select(session.Front(model.Place{}))
		return
	}
	last := sel[len(sel)-1]
	if last.Kind != drawing.FrontThing && last.Kind != drawing.DivisionThing {
		if next, ok := w.beside(0, dy); ok {
			w.s.Select(session.Front(next))
		}
		return
	}
	at := last.Place
	division := drawing.Subject{Kind: drawing.DivisionThing, Place: at}
	switch {
	case last.Kind == drawing.FrontThing && dy > 0:
	case last.Kind == drawing.FrontThing:
		division.Place.Front--
	case dy > 0:
		at.Front++
		w.s.Select(session.Front(at))
		return
	default:
		w.s.Select(session.Front(at))
		return
	}
	above := division.Place
	above.Front++
	p := w.s.Project()
	if p.FrontAt(division.Place) != nil && p.FrontAt(above) != nil {
		w.s.Select(division)
	}
}
