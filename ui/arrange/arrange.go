// Package arrange is what commands do to the run: what is selected is copied,
// moved, divided, made equal, taken away.
package arrange

import (
	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/command"
	"frontlay/ui/session"
)

// Host is what the commands need of the window around them.
type Host interface {
	Session() *session.Session
	// Do makes an edit, selects what it has made, and tells on its line what was
	// done, or why it can't be.
	Do(e edit.Edit, made ...drawing.Subject) bool
	Tell(message.Message)
	Refuse(message.Message)
	// CopiedNow is told that something was copied, which every window can paste.
	CopiedNow()
}

// Arranger has the commands.
type Arranger struct {
	host   Host
	copied *Copied
}

// New makes the commands of a window. Windows share what was copied.
func New(h Host, c *Copied) *Arranger { return &Arranger{host: h, copied: c} }

// CabinetRows are the commands for the cabinets of the run.
func (a *Arranger) CabinetRows() []command.Command {
	return []command.Command{
		{Name: "addcabinet", Menu: "Draw", Words: "Add a cabinet like the last", Do: func() {
			n := len(a.session().Project().Cabinets)
			a.session().Select(session.Cabinet(session.PlaceOfCabinet(n - 1)))
			a.duplicate()
		}},
	}
}

func (a *Arranger) session() *session.Session { return a.host.Session() }

// EditRows are the commands for what is selected, of whatever kind.
func (a *Arranger) EditRows() []command.Command {
	return []command.Command{
		{Name: "cut", Menu: "Edit", Words: "Cut", On: command.Fronts | command.Cabinets, Key: fyne.KeyX, Mod: command.Ctrl, Fields: command.AllFields, After: true, Can: a.copyable, Do: a.cutSelection},
		{Name: "copy", Menu: "Edit", Words: "Copy", On: command.Fronts | command.Cabinets, Key: fyne.KeyC, Mod: command.Ctrl, Fields: command.AllFields, Can: a.copyable, Do: a.copySelection},
		{Name: "paste", Menu: "Edit", Words: "Paste", On: command.Fronts | command.Cabinets, Key: fyne.KeyV, Mod: command.Ctrl, Fields: command.AllFields, Can: func() bool { return !a.copied.empty() }, Do: a.paste},
		{Name: "remove", Menu: "Edit", Words: "Remove", On: command.Fronts | command.Divisions | command.Bays | command.Cabinets, Bare: "Del", Do: a.remove,
			Can: func() bool { return len(a.session().Selection()) > 0 }},
		{Name: "duplicate", Menu: "Edit", Words: "Duplicate", On: command.Bays | command.Cabinets, Key: fyne.KeyD, Mod: command.Ctrl, Do: a.duplicate,
			Can: func() bool { return len(a.session().Selection()) > 0 }},
		{Name: "moveleft", Menu: "Edit", Words: "Move cabinet left", On: command.Cabinets, Key: fyne.KeyLeft, Mod: command.Ctrl, Fields: command.AllFields, After: true,
			Do: func() { a.moveCabinet(-1) }, Can: func() bool { return a.movable(-1) }},
		{Name: "moveright", Menu: "Edit", Words: "Move cabinet right", On: command.Cabinets, Key: fyne.KeyRight, Mod: command.Ctrl, Fields: command.AllFields,
			Do: func() { a.moveCabinet(1) }, Can: func() bool { return a.movable(1) }},
		{Name: "all", Menu: "Edit", Words: "Select the whole stack", Key: fyne.KeyA, Mod: command.Ctrl, Fields: command.AllFields, After: true, Do: a.selectStack},
		{Name: "bay", Menu: "Edit", Words: "Select the bay", On: command.Fronts, Key: fyne.KeyB, Mod: command.Ctrl, Do: a.selectBay},
		{Name: "cabinet", Menu: "Edit", Words: "Select the cabinet", On: command.Fronts | command.Bays, Key: fyne.KeyK, Mod: command.Ctrl, Do: a.selectCabinet},
		{Name: "project", Menu: "Edit", Words: "Settings of the project", Key: fyne.KeyJ, Mod: command.Ctrl, Do: func() { a.session().Select() }},
	}
}

// remove takes what is selected out of the project.
func (a *Arranger) remove() {
	sel := a.session().Selection()
	if len(sel) == 0 {
		return
	}
	at := sel[0].Place
	switch sel[0].Kind {
	case drawing.FrontThing:
		a.removeFronts(a.session().SelectedFronts())
	case drawing.DivisionThing:
		at.Front++
		a.removeFronts([]model.Place{at})
	case drawing.PartitionThing:
		at.Bay++
		a.host.Do(edit.RemoveBay{At: at})
	case drawing.BayThing:
		a.host.Do(edit.RemoveBay{At: at})
	case drawing.CabinetThing:
		a.host.Do(edit.RemoveCabinet{At: at})
	}
}

// removeFronts removes fronts, the upper ones first, so that places stay valid.
func (a *Arranger) removeFronts(at []model.Place) {
	s := edit.Several{Name: message.New("Remove %v fronts", len(at))}
	for i := len(at); i > 0; i-- {
		top := 0
		for j := range at {
			if at[j].Front > at[top].Front {
				top = j
			}
		}
		s.Edits = append(s.Edits, edit.RemoveFront{At: at[top], Freed: a.freed(at[top])})
		at = append(at[:top:top], at[top+1:]...)
	}
	if len(s.Edits) == 1 {
		a.host.Do(s.Edits[0])
		return
	}
	a.host.Do(s)
}

// freed is the height that removing a front makes free: its own and one gap.
func (a *Arranger) freed(at model.Place) length.Length {
	pl := a.session().CommittedResult().Plan
	if f := pl.FrontAt(at); f != nil {
		return f.Face.Height() + pl.Project.GapAbove(at)
	}
	return 0
}

// duplicate puts a copy of what is selected beside it.
func (a *Arranger) duplicate() {
	sel := a.session().Selection()
	if len(sel) == 0 {
		return
	}
	at := sel[0].Place
	switch sel[0].Kind {
	case drawing.FrontThing:
		a.divide(at)
	case drawing.CabinetThing:
		copied := at
		copied.Cabinet++
		a.host.Do(edit.CopyCabinet{At: at}, session.Cabinet(copied))
	default:
		at.Front = -1
		a.host.Do(edit.AddBay{At: at})
	}
}

// movable tells that something of a cabinet is selected which has another one at
// its left (-1) or right (1).
func (a *Arranger) movable(by int) bool {
	to := a.session().Here().Cabinet + by
	return len(a.session().Selection()) > 0 && to >= 0 && to < len(a.session().Project().Cabinets)
}

// moveCabinet moves the cabinet of what is selected in the run. What is selected
// stays so.
func (a *Arranger) moveCabinet(by int) {
	from := a.session().Here().Cabinet
	var moved []drawing.Subject
	for _, t := range a.session().Selection() {
		if t.Place.Cabinet == from {
			t.Place.Cabinet += by
			moved = append(moved, t)
		}
	}
	a.host.Do(edit.MoveCabinet{At: session.PlaceOfCabinet(from), To: from + by}, moved...)
}

func (a *Arranger) selectStack() {
	at := a.session().Here()
	at.Bay = max(at.Bay, 0)
	b := a.session().Project().BayAt(at)
	if b == nil {
		return
	}
	var all []drawing.Subject
	for i := range b.Fronts {
		at.Front = i
		all = append(all, session.Front(at))
	}
	a.session().Select(all...)
}

func (a *Arranger) selectBay() {
	at := a.session().Here()
	a.session().Select(drawing.Subject{Kind: drawing.BayThing, Place: model.Place{Cabinet: max(at.Cabinet, 0), Bay: max(at.Bay, 0), Front: -1}})
}

func (a *Arranger) selectCabinet() {
	at := a.session().Here()
	at.Cabinet = max(at.Cabinet, 0)
	a.session().Select(session.Cabinet(at))
}
