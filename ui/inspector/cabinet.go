package inspector

import (
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// cabinet shows a carcass.
func (f *form) cabinet(at model.Place) {
	doc := func() *model.Cabinet {
		if c := f.session.Project().CabinetAt(at); c != nil {
			return c
		}
		return &model.Cabinet{}
	}
	f.heading(f.text("Cabinet"))
	f.line(message.New("Name"), func() (string, string) { return doc().Name, "" },
		func(s string) edit.Edit { return edit.RenameCabinet{At: at, Name: s} })
	for _, key := range []string{"width", "height", "depth", "plinth", "worktop", "channel"} {
		f.sizeOf(at, key, f.always(at, key))
	}
	f.choiceOf(at, "mount", f.text("overlay"), f.text("inset"))
	f.placeInRun(at)
	f.heading(f.text("Reveals of this cabinet"))
	f.reveals(at)
	if len(doc().Bays) == 1 {
		f.heading(f.text("Bay"))
		bay := model.Place{Cabinet: at.Cabinet, Bay: 0, Front: -1}
		f.hardware(bay)
		f.divisionRule(bay, func() *model.Bay {
			if b := f.session.Project().BayAt(bay); b != nil {
				return b
			}
			return &model.Bay{}
		})
	}
	f.beside(at)
}

// reveals are five fields; at a cabinet, grey ones are those of the project, and
// an emptied one gives all of them back to it.
func (f *form) reveals(at model.Place) {
	for _, key := range []string{"reveals.left", "reveals.right", "reveals.top", "reveals.bottom", "reveals.gap"} {
		s := f.always(at, key)
		if at.Cabinet >= 0 {
			s.get = func() (length.Length, bool, bool) {
				from, c := model.Whole, f.session.Project().CabinetAt(at)
				if c != nil && c.Reveals != nil {
					from = at
				}
				v, _ := f.sized(from, key)
				return v, from == at, false
			}
			s.clear = func() edit.Edit { return edit.Set{At: at, Key: "reveals"} }
		}
		f.sizeOf(at, key, s)
	}
}

// beside tells what stands at the cabinet's sides.
func (f *form) beside(at model.Place) {
	for _, side := range []string{"left", "right"} {
		f.heading(f.say().Say(f.value(at, side).Name))
		f.sizes([]model.Place{at}, side+".end_panel", side+".filler")
		f.markOf(at, side+".wall")
		f.sizes([]model.Place{at}, side+".projection")
	}
}

// placeInRun tells which cabinet of the run this is, and moves it. Where it is the
// only one there is nothing to move.
func (f *form) placeInRun(at model.Place) {
	count := func() int { return len(f.session.Project().Cabinets) }
	if count() < 2 {
		return
	}
	f.figure("Place from the left", func() string { return f.text("%v of %v", at.Cabinet+1, count()) })
	move := func(by int) func() {
		return func() {
			to := at
			to.Cabinet += by
			if err := f.session.Do(edit.MoveCabinet{At: at, To: to.Cabinet}); err != nil {
				f.tell(tool.Said(err))
				return
			}
			f.session.Select(session.Cabinet(to))
		}
	}
	f.buttons(button{"Move left", move(-1)}, button{"Move right", move(1)})
}
