package ui

import (
	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

func (w *window) editCommands() []command {
	return []command{
		{name: "undo", menu: "Edit", label: "Undo", key: fyne.KeyZ, mod: ctrl, fields: true, do: w.undo,
			can: func() bool { _, ok := w.session.CanUndo(); return ok },
			named: func() message.Message {
				if l, ok := w.session.CanUndo(); ok {
					return message.New("Undo: %v", l)
				}
				return message.New("Undo")
			}},
		{name: "redo", menu: "Edit", label: "Redo", key: fyne.KeyY, mod: ctrl, fields: true, do: w.redo,
			can: func() bool { _, ok := w.session.CanRedo(); return ok },
			named: func() message.Message {
				if l, ok := w.session.CanRedo(); ok {
					return message.New("Redo: %v", l)
				}
				return message.New("Redo")
			}},
		{name: "history", menu: "Edit", label: "Steps…", do: w.showSteps},
		{name: "cut", menu: "Edit", label: "Cut", key: fyne.KeyX, mod: ctrl, fields: true, after: true, can: w.copyable, do: w.cutSelection},
		{name: "copy", menu: "Edit", label: "Copy", key: fyne.KeyC, mod: ctrl, fields: true, can: w.copyable, do: w.copySelection},
		{name: "paste", menu: "Edit", label: "Paste", key: fyne.KeyV, mod: ctrl, fields: true, can: func() bool { return !w.shelf.empty() }, do: w.paste},
		{name: "remove", menu: "Edit", label: "Remove", bare: "Del", do: w.remove,
			can: func() bool { return len(w.session.Selection()) > 0 }},
		{name: "duplicate", menu: "Edit", label: "Duplicate", key: fyne.KeyD, mod: ctrl, do: w.duplicate,
			can: func() bool { return len(w.session.Selection()) > 0 }},
		{name: "moveleft", menu: "Edit", label: "Move cabinet left", key: fyne.KeyLeft, mod: ctrl, fields: true, after: true,
			do: func() { w.moveCabinet(-1) }, can: func() bool { return w.movable(-1) }},
		{name: "moveright", menu: "Edit", label: "Move cabinet right", key: fyne.KeyRight, mod: ctrl, fields: true,
			do: func() { w.moveCabinet(1) }, can: func() bool { return w.movable(1) }},
		{name: "all", menu: "Edit", label: "Select the whole stack", key: fyne.KeyA, mod: ctrl, fields: true, after: true, do: w.selectStack},
		{name: "bay", menu: "Edit", label: "Select the bay", key: fyne.KeyB, mod: ctrl, do: w.selectBay},
		{name: "cabinet", menu: "Edit", label: "Select the cabinet", key: fyne.KeyK, mod: ctrl, do: w.selectCabinet},
		{name: "project", menu: "Edit", label: "Settings of the project", key: fyne.KeyJ, mod: ctrl, do: func() { w.session.Select() }},
	}
}

// apply makes an edit and tells where it can't be made.
func (w *window) apply(e edit.Edit) bool {
	if err := w.session.Do(e); err != nil {
		w.refuse(tool.Said(err))
		return false
	}
	w.tell(e.Label())
	return true
}

// applyTo makes an edit and selects what it has made.
func (w *window) applyTo(e edit.Edit, made ...drawing.Subject) bool {
	if !w.apply(e) {
		return false
	}
	w.session.Select(made...)
	w.tell(e.Label())
	return true
}

func (w *window) undo() {
	if l, ok := w.session.Undo(); ok {
		w.tell(message.New("Undone: %v", l))
	}
}

func (w *window) redo() {
	if l, ok := w.session.Redo(); ok {
		w.tell(message.New("Done again: %v", l))
	}
}

// remove takes what is selected out of the project.
func (w *window) remove() {
	sel := w.session.Selection()
	if len(sel) == 0 {
		return
	}
	at := sel[0].Place
	switch sel[0].Kind {
	case drawing.FrontThing:
		w.removeFronts(w.session.SelectedFronts())
	case drawing.DivisionThing:
		at.Front++
		w.removeFronts([]model.Place{at})
	case drawing.PartitionThing:
		at.Bay++
		w.apply(edit.RemoveBay{At: at})
	case drawing.BayThing:
		w.apply(edit.RemoveBay{At: at})
	case drawing.CabinetThing:
		w.apply(edit.RemoveCabinet{At: at})
	}
}

// removeFronts removes fronts, the upper ones first, so that places stay valid.
func (w *window) removeFronts(at []model.Place) {
	s := edit.Several{Name: message.New("Remove %v fronts", len(at))}
	for i := len(at); i > 0; i-- {
		top := 0
		for j := range at {
			if at[j].Front > at[top].Front {
				top = j
			}
		}
		s.Edits = append(s.Edits, edit.RemoveFront{At: at[top], Freed: w.freed(at[top])})
		at = append(at[:top:top], at[top+1:]...)
	}
	if len(s.Edits) == 1 {
		w.apply(s.Edits[0])
		return
	}
	w.apply(s)
}

// freed is the height that removing a front makes free: its own and one gap.
func (w *window) freed(at model.Place) length.Length {
	pl := w.session.CommittedResult().Plan
	if f, c := session.FrontOf(pl, at), session.CabinetOf(pl, at); f != nil && c != nil {
		return f.Face.Height() + c.Reveals.Gap
	}
	return 0
}

// duplicate puts a copy of what is selected beside it.
func (w *window) duplicate() {
	sel := w.session.Selection()
	if len(sel) == 0 {
		return
	}
	at := sel[0].Place
	switch sel[0].Kind {
	case drawing.FrontThing:
		w.divide(at)
	case drawing.CabinetThing:
		copied := at
		copied.Cabinet++
		w.applyTo(edit.CopyCabinet{At: at}, session.Cabinet(copied))
	default:
		at.Front = -1
		w.apply(edit.AddBay{At: at})
	}
}

// movable tells that something of a cabinet is selected which has another one at
// its left (-1) or right (1).
func (w *window) movable(by int) bool {
	to := w.here().Cabinet + by
	return len(w.session.Selection()) > 0 && to >= 0 && to < len(w.session.Project().Cabinets)
}

// moveCabinet moves the cabinet of what is selected in the run. What is selected
// stays so.
func (w *window) moveCabinet(by int) {
	from := w.here().Cabinet
	var moved []drawing.Subject
	for _, t := range w.session.Selection() {
		if t.Place.Cabinet == from {
			t.Place.Cabinet += by
			moved = append(moved, t)
		}
	}
	w.applyTo(edit.MoveCabinet{At: placeOfCabinet(from), To: from + by}, moved...)
}

func (w *window) selectStack() {
	at := w.here()
	at.Bay = max(at.Bay, 0)
	b := w.session.Project().BayAt(at)
	if b == nil {
		return
	}
	var all []drawing.Subject
	for i := range b.Fronts {
		at.Front = i
		all = append(all, session.Front(at))
	}
	w.session.Select(all...)
}

func (w *window) selectBay() {
	at := w.here()
	w.session.Select(drawing.Subject{Kind: drawing.BayThing, Place: model.Place{Cabinet: max(at.Cabinet, 0), Bay: max(at.Bay, 0), Front: -1}})
}

func (w *window) selectCabinet() {
	at := w.here()
	at.Cabinet = max(at.Cabinet, 0)
	w.session.Select(session.Cabinet(at))
}
