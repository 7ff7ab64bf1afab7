package arrange

import (
	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// Copied holds what was cut or copied; the windows of one run share it.
type Copied struct {
	fronts  []model.Front
	cabinet *model.Cabinet
}

func (c *Copied) empty() bool { return len(c.fronts) == 0 && c.cabinet == nil }

// copyable tells that fronts or a cabinet are selected.
func (a *Arranger) copyable() bool {
	return a.session().Selected(drawing.FrontThing) || a.session().Selected(drawing.CabinetThing)
}

// copySelection puts copies of the selected fronts, or of the cabinet, aside.
func (a *Arranger) copySelection() {
	p := a.session().Committed().Clone()
	switch {
	case a.session().Selected(drawing.FrontThing):
		at := a.session().SelectedFronts()
		a.copied.fronts, a.copied.cabinet = nil, nil
		for _, one := range at {
			a.copied.fronts = append(a.copied.fronts, p.FrontAt(one).Clone())
		}
		a.host.Tell(message.New("Copied fronts: %v", len(at)))
	case a.session().Selected(drawing.CabinetThing):
		a.copied.fronts, a.copied.cabinet = nil, p.CabinetAt(a.session().Here())
		a.host.Tell(message.New("Copied the cabinet “%v”.", a.copied.cabinet.Name))
	}
	a.host.CopiedNow()
}

// cutSelection copies and removes.
func (a *Arranger) cutSelection() {
	a.copySelection()
	a.remove()
}

// paste puts what was copied above the selected front, or at the right of
// the selected cabinet.
func (a *Arranger) paste() {
	at := a.session().Here()
	at.Cabinet = max(at.Cabinet, 0)
	if c := a.copied.cabinet; c != nil {
		to := session.PlaceOfCabinet(at.Cabinet + 1)
		a.host.Do(edit.PasteCabinet{At: to, Cabinet: *c}, session.Cabinet(to))
		return
	}
	at.Bay = max(at.Bay, 0)
	at.Front++
	if at.Front < 0 || a.session().Project().BayAt(at) == nil {
		return
	}
	e := edit.Several{Name: message.New("Paste fronts: %v", len(a.copied.fronts))}
	var pasted []drawing.Subject
	for i, f := range a.copied.fronts {
		to := at
		to.Front += i
		e.Edits = append(e.Edits, edit.AddFront{At: to, Front: f})
		pasted = append(pasted, session.Front(to))
	}
	a.host.Do(e, pasted...)
}
