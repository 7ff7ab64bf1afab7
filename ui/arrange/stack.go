package arrange

import (
	"fyne.io/fyne/v2"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/command"
	"frontlay/ui/session"
)

// StackRows are the commands for the stack of a bay.
func (a *Arranger) StackRows() []command.Command {
	one := func() bool { return a.oneFront() != nil }
	some := func() bool { return len(a.session().SelectedFronts()) > 0 }
	return []command.Command{
		{Name: "divide", Menu: "Stack", Words: "Divide the front in two", On: command.Fronts, Key: fyne.KeyT, Mod: command.Ctrl, Can: one,
			Do: func() { a.divide(*a.oneFront()) }},
		{Name: "up", Menu: "Stack", Words: "Move front up", On: command.Fronts, Key: fyne.KeyUp, Mod: command.Ctrl, Can: one, Do: func() { a.reorder(1) }},
		{Name: "down", Menu: "Stack", Words: "Move front down", On: command.Fronts, Key: fyne.KeyDown, Mod: command.Ctrl, Can: one, Do: func() { a.reorder(-1) }},
		{Name: "equal", Menu: "Stack", Words: "Equal heights", On: command.Fronts | command.Divisions | command.Bays, Key: fyne.KeyE, Mod: command.Ctrl, After: true, Do: a.equalise},
		{Name: "graduate", Menu: "Stack", Words: "Graduate, taller downwards", On: command.Fronts | command.Bays, Key: fyne.KeyG, Mod: command.Ctrl, Do: a.graduate},
		{Name: "niche", Menu: "Stack", Words: "Make it an open niche", On: command.Fronts, Key: fyne.KeyO, Mod: command.Ctrl | command.Shift, Can: some, Do: a.niche,
			Named: func() message.Message {
				if a.niches() {
					return message.New("Make it a drawer")
				}
				return message.New("Make it an open niche")
			}},
		{Name: "lock", Menu: "Stack", Words: "Lock or unlock height", On: command.Fronts, Key: fyne.KeyL, Mod: command.Ctrl, Can: some, Do: a.lock},
		{Name: "level", Menu: "Stack", Words: "Line up with the bay beside", On: command.Fronts, Key: fyne.KeyU, Mod: command.Ctrl, Can: one, Do: a.lineUp},
		{Name: "copystack", Menu: "Stack", Words: "Copy this stack to all bays of its cabinet", On: command.Bays, After: true, Do: a.copyStack},
		{Name: "copyrun", Menu: "Stack", Words: "Copy this stack to all bays of the run", On: command.Bays, Do: a.copyStackToRun},
	}
}

// oneFront is the selected front where it is the only one.
func (a *Arranger) oneFront() *model.Place {
	if at := a.session().SelectedFronts(); len(at) == 1 {
		return &at[0]
	}
	return nil
}

// divide draws a division through the middle of a front.
func (a *Arranger) divide(at model.Place) {
	pl := a.session().CommittedResult().Plan
	f, c := pl.FrontAt(at), pl.CabinetAt(at)
	if f == nil || c == nil {
		return
	}
	both := f.Face.Height() - c.Reveals.Gap
	upper := (both / 2).FloorTo(length.Millimetre)
	a.host.Do(edit.SplitFront{At: at, Lower: both - upper, Upper: upper})
}

func (a *Arranger) reorder(by int) {
	at := *a.oneFront()
	moved := at
	moved.Front += by
	a.host.Do(edit.ReorderFront{At: at, To: moved.Front}, session.Front(moved))
}

// niches tells that all selected fronts are open niches.
func (a *Arranger) niches() bool {
	for _, at := range a.session().SelectedFronts() {
		if f := a.session().Project().FrontAt(at); f != nil && f.Kind != model.OpenNiche {
			return false
		}
	}
	return true
}

// niche makes the selected fronts open niches, or drawers where they all are.
func (a *Arranger) niche() {
	kind := model.OpenNiche
	if a.niches() {
		kind = model.DrawerFront
	}
	at := a.session().SelectedFronts()
	e := edit.Several{Name: edit.SetKind{Kind: kind}.Label()}
	for _, one := range at {
		e.Edits = append(e.Edits, edit.SetKind{At: one, Kind: kind})
	}
	a.host.Do(e)
}

// equalise gives the selected fronts equal heights, or all of the stack where
// not several are selected.
func (a *Arranger) equalise() {
	at, whole := a.frontsToShare()
	a.host.Do(edit.Equalise{At: at, Heights: a.heights(a.stackHere()), Whole: whole})
}

// graduate makes the selected fronts taller from top to bottom, or all of the
// stack where not several are selected.
func (a *Arranger) graduate() {
	const ratio = 1.25
	at, whole := a.frontsToShare()
	a.host.Do(edit.Graduate{At: at, Heights: a.heights(a.stackHere()), Ratio: ratio, Whole: whole})
}

// frontsToShare are the fronts that a command makes equal or graduates: those
// selected where they are several, otherwise the whole stack but what is locked.
func (a *Arranger) frontsToShare() (at []model.Place, whole bool) {
	if at := a.session().SelectedFronts(); len(at) > 1 {
		return at, false
	}
	here := a.stackHere()
	b := a.session().Project().BayAt(here)
	for i := 0; b != nil && i < len(b.Fronts); i++ {
		if !b.Fronts[i].Locked {
			here.Front = i
			at = append(at, here)
		}
	}
	return at, true
}

// heights are those of the fronts of a bay, bottom to top.
func (a *Arranger) heights(at model.Place) []length.Length {
	pl := a.session().CommittedResult().Plan
	b := pl.BayAt(at)
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
func (a *Arranger) stackHere() model.Place {
	at := a.session().Here()
	return model.Place{Cabinet: max(at.Cabinet, 0), Bay: max(at.Bay, 0), Front: -1}
}

func (a *Arranger) lock() {
	at := a.session().SelectedFronts()
	e := edit.Lock{At: at, Locked: !a.session().Project().FrontAt(at[0]).Locked}
	for _, one := range at {
		var h length.Length
		if f := a.session().CommittedResult().Plan.FrontAt(one); f != nil {
			h = f.Face.Height()
		}
		e.Heights = append(e.Heights, h)
	}
	a.host.Do(e)
}

// lineUp brings the top edge of the selected front level with the nearest edge
// of the bay at its left, or at its right where there is none.
func (a *Arranger) lineUp() {
	at := *a.oneFront()
	pl := a.session().CommittedResult().Plan
	f := pl.FrontAt(at)
	if f == nil {
		return
	}
	if a.session().Project().FrontAt(at).LineUp != nil {
		a.host.Do(edit.LineUp{At: at})
		return
	}
	var best *model.LineUp
	number := 0 // of the front to line up with, where it has no name
	var off length.Length
	for _, side := range a.neighbours(at) {
		p := a.session().Project()
		for i := range p.BayAt(side).Fronts {
			other := side
			other.Front = i
			g := pl.FrontAt(other)
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
		a.host.Refuse(message.New("There is no bay beside this one to line up with."))
		return
	}
	a.host.Do(edit.LineUp{At: at, With: best, Number: number})
}

// neighbours are the bays at the left and right of one, the left one first.
func (a *Arranger) neighbours(at model.Place) []model.Place {
	p := a.session().Project()
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

func (a *Arranger) copyStack() {
	from := a.stackHere()
	var to []model.Place
	for j := range a.session().Project().CabinetAt(from).Bays {
		if j != from.Bay {
			to = append(to, model.Place{Cabinet: from.Cabinet, Bay: j, Front: -1})
		}
	}
	a.host.Do(edit.CopyStack{From: from, To: to, Heights: a.heights(from)})
}

func (a *Arranger) copyStackToRun() {
	from := a.stackHere()
	var to []model.Place
	p := a.session().Project()
	for i := range p.Cabinets {
		for j := range p.Cabinets[i].Bays {
			if i != from.Cabinet || j != from.Bay {
				to = append(to, model.Place{Cabinet: i, Bay: j, Front: -1})
			}
		}
	}
	a.host.Do(edit.CopyStack{From: from, To: to, Heights: a.heights(from)})
}

// frontName is how a line-up names a front: its name, or its number from 1 in
// the stack.
func frontName(p *model.Project, at model.Place) string {
	if n := p.FrontAt(at).Name; n != "" {
		return n
	}
	return message.New("%v", at.Front+1).String()
}
