package ui

import (
	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// shelf holds what was cut or copied; the windows of one run share it.
type shelf struct {
	fronts  []model.Front
	cabinet *model.Cabinet
}

func (s *shelf) empty() bool { return len(s.fronts) == 0 && s.cabinet == nil }

// copyable tells that fronts or a cabinet are selected.
func (w *window) copyable() bool {
	return w.selected(drawing.FrontThing) || w.selected(drawing.CabinetThing)
}

// copySelection puts copies of the selected fronts, or of the cabinet, on the
// shelf.
func (w *window) copySelection() {
	p := w.session.Committed().Clone()
	switch {
	case w.selected(drawing.FrontThing):
		at := w.session.SelectedFronts()
		w.shelf.fronts, w.shelf.cabinet = nil, nil
		for _, a := range at {
			w.shelf.fronts = append(w.shelf.fronts, p.FrontAt(a).Clone())
		}
		w.tell(message.New("Copied fronts: %v", len(at)))
	case w.selected(drawing.CabinetThing):
		w.shelf.fronts, w.shelf.cabinet = nil, p.CabinetAt(w.here())
		w.tell(message.New("Copied the cabinet “%v”.", w.shelf.cabinet.Name))
	}
	for _, one := range w.group.windows {
		one.updateMenus() // it can be pasted now
	}
}

// cutSelection copies and removes.
func (w *window) cutSelection() {
	w.copySelection()
	w.remove()
}

// paste puts what is on the shelf above the selected front, or at the right of
// the selected cabinet.
func (w *window) paste() {
	at := w.here()
	at.Cabinet = max(at.Cabinet, 0)
	if c := w.shelf.cabinet; c != nil {
		to := placeOfCabinet(at.Cabinet + 1)
		w.applyTo(edit.PasteCabinet{At: to, Cabinet: *c}, session.Cabinet(to))
		return
	}
	at.Bay = max(at.Bay, 0)
	at.Front++
	if at.Front < 0 || w.session.Project().BayAt(at) == nil {
		return
	}
	e := edit.Several{Name: message.New("Paste fronts: %v", len(w.shelf.fronts))}
	var pasted []drawing.Subject
	for i, f := range w.shelf.fronts {
		to := at
		to.Front += i
		e.Edits = append(e.Edits, edit.AddFront{At: to, Front: f})
		pasted = append(pasted, session.Front(to))
	}
	w.applyTo(e, pasted...)
}
