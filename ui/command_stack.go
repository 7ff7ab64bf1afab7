package ui

import (
	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
)

func (w *window) stackCommands() []command {
	one := func() bool { return w.oneFront() != nil }
	some := func() bool { return len(w.session.SelectedFronts()) > 0 }
	return []command{
		{name: "divide", menu: "Stack", label: "Divide the front in two", key: fyne.KeyT, mod: ctrl, can: one,
			do: func() { w.divide(*w.oneFront()) }},
		{name: "up", menu: "Stack", label: "Move front up", key: fyne.KeyUp, mod: ctrl, can: one, do: func() { w.reorder(1) }},
		{name: "down", menu: "Stack", label: "Move front down", key: fyne.KeyDown, mod: ctrl, can: one, do: func() { w.reorder(-1) }},
		{name: "equal", menu: "Stack", label: "Equal heights", key: fyne.KeyE, mod: ctrl, after: true, do: w.equalise},
		{name: "graduate", menu: "Stack", label: "Graduate, taller downwards", key: fyne.KeyG, mod: ctrl, do: w.graduate},
		{name: "lock", menu: "Stack", label: "Lock or unlock height", key: fyne.KeyL, mod: ctrl, can: some, do: w.lock},
		{name: "level", menu: "Stack", label: "Line up with the bay beside", key: fyne.KeyU, mod: ctrl, can: one, do: w.lineUp},
		{name: "copystack", menu: "Stack", label: "Copy this stack to all bays of its cabinet", after: true, do: w.copyStack},
		{name: "copyrun", menu: "Stack", label: "Copy this stack to all bays of the run", do: w.copyStackToRun},
	}
}

// oneFront is the selected front where it is the only one.
func (w *window) oneFront() *model.Place {
	if at := w.session.SelectedFronts(); len(at) == 1 {
		return &at[0]
	}
	return nil
}

// divide draws a division through the middle of a front.
func (w *window) divide(at model.Place) {
	pl := w.session.CommittedResult().Plan
	f, c := session.FrontOf(pl, at), session.CabinetOf(pl, at)
	if f == nil || c == nil {
		return
	}
	both := f.Face.Height() - c.Reveals.Gap
	upper := (both / 2).FloorTo(length.Millimetre)
	w.apply(edit.SplitFront{At: at, Lower: both - upper, Upper: upper})
}

func (w *window) reorder(by int) {
	at := *w.oneFront()
	moved := at
	moved.Front += by
	w.applyTo(edit.ReorderFront{At: at, To: moved.Front}, session.Front(moved))
}

// equalise gives the selected fronts equal heights, or all of the stack where
// not several are selected.
func (w *window) equalise() {
	at, whole := w.frontsToShare()
	w.apply(edit.Equalise{At: at, Heights: w.heights(w.stackHere()), Whole: whole})
}

// graduate makes the selected fronts taller from top to bottom, or all of the
// stack where not several are selected.
func (w *window) graduate() {
	const ratio = 1.25
	at, whole := w.frontsToShare()
	w.apply(edit.Graduate{At: at, Heights: w.heights(w.stackHere()), Ratio: ratio, Whole: whole})
}

// frontsToShare are the fronts that a command makes equal or graduates: those
// selected where they are several, otherwise the whole stack but what is locked.
func (w *window) frontsToShare() (at []model.Place, whole bool) {
	if at := w.session.SelectedFronts(); len(at) > 1 {
		return at, false
	}
	here := w.stackHere()
	b := w.session.Project().BayAt(here)
	for i := 0; b != nil && i < len(b.Fronts); i++ {
		if !b.Fronts[i].Locked {
			here.Front = i
			at = append(at, here)
		}
	}
	return at, true
}

// heights are those of the fronts of a bay, bottom to top.
func (w *window) heights(at model.Place) []length.Length {
	pl := w.session.CommittedResult().Plan
	b := session.BayOf(pl, at)
	if b == nil {
		return nil
	}
	all := make([]length.Length, b.Count)
	for i := range all {
		all[i] = pl.Fronts[b.First+i].Face.Height()
	}
	return all
}

// stackHere is the bay that commands for a stack are about.
func (w *window) stackHere() model.Place {
	at := w.here()
	return model.Place{Cabinet: max(at.Cabinet, 0), Bay: max(at.Bay, 0), Front: -1}
}

func (w *window) lock() {
	at := w.session.SelectedFronts()
	e := edit.Lock{At: at, Locked: !w.session.Project().FrontAt(at[0]).Locked}
	for _, a := range at {
		var h length.Length
		if f := session.FrontOf(w.session.CommittedResult().Plan, a); f != nil {
			h = f.Face.Height()
		}
		e.Heights = append(e.Heights, h)
	}
	w.apply(e)
}

// lineUp brings the top edge of the selected front level with the nearest edge
// of the bay at its left, or at its right where there is none.
func (w *window) lineUp() {
	at := *w.oneFront()
	pl := w.session.CommittedResult().Plan
	f := session.FrontOf(pl, at)
	if f == nil {
		return
	}
	if w.session.Project().FrontAt(at).LineUp != nil {
		w.apply(edit.LineUp{At: at})
		return
	}
	var best *model.LineUp
	number := 0 // of the front to line up with, where it has no name
	var off length.Length
	for _, side := range w.neighbours(at) {
		p := w.session.Project()
		for i := range p.BayAt(side).Fronts {
			other := side
			other.Front = i
			g := session.FrontOf(pl, other)
			if g == nil {
				continue
			}
			for _, bottom := range []bool{false, true} {
				y := g.Face.Max.Y
				if bottom {
					y = g.Face.Min.Y
				}
				if d := (y - f.Face.Max.Y).Abs(); best == nil || d < off {
					best, off = &model.LineUp{Cabinet: p.Cabinets[side.Cabinet].Name, Bay: side.Bay + 1, Front: frontName(p, other), Bottom: bottom}, d
					number = 0
					if p.FrontAt(other).Name == "" {
						number = g.Number
					}
				}
			}
		}
		if best != nil {
			break
		}
	}
	if best == nil {
		w.refuse(message.New("There is no bay beside this one to line up with."))
		return
	}
	w.apply(edit.LineUp{At: at, With: best, Number: number})
}

// neighbours are the bays at the left and right of one, the left one first.
func (w *window) neighbours(at model.Place) []model.Place {
	p := w.session.Project()
	var found []model.Place
	for _, by := range []int{-1, 1} {
		next := model.Place{Cabinet: at.Cabinet, Bay: at.Bay + by}
		if p.BayAt(next) == nil {
			next.Cabinet += by
			cab := p.CabinetAt(next)
			if cab == nil {
				continue
			}
			next.Bay = 0
			if by < 0 {
				next.Bay = len(cab.Bays) - 1
			}
		}
		if p.BayAt(next) != nil {
			found = append(found, next)
		}
	}
	return found
}

func (w *window) copyStack() {
	from := w.stackHere()
	var to []model.Place
	for j := range w.session.Project().CabinetAt(from).Bays {
		if j != from.Bay {
			to = append(to, model.Place{Cabinet: from.Cabinet, Bay: j, Front: -1})
		}
	}
	w.apply(edit.CopyStack{From: from, To: to, Heights: w.heights(from)})
}

func (w *window) copyStackToRun() {
	from := w.stackHere()
	var to []model.Place
	p := w.session.Project()
	for i := range p.Cabinets {
		for j := range p.Cabinets[i].Bays {
			if i != from.Cabinet || j != from.Bay {
				to = append(to, model.Place{Cabinet: i, Bay: j, Front: -1})
			}
		}
	}
	w.apply(edit.CopyStack{From: from, To: to, Heights: w.heights(from)})
}

// frontName is how a line-up names a front: its name, or its number from 1 in
// the stack.
func frontName(p *model.Project, at model.Place) string {
	if n := p.FrontAt(at).Name; n != "" {
		return n
	}
	return message.New("%v", at.Front+1).String()
}

// selected tells that things of a kind are selected.
func (w *window) selected(k drawing.SubjectKind) bool {
	sel := w.session.Selection()
	return len(sel) > 0 && sel[0].Kind == k
}
