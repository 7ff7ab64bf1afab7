package inspector

import (
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

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
