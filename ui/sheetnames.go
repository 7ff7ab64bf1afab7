package ui

import (
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/hardware"
)

// renameIt asks what the project shall call the sheet that is shown. Bays and
// fronts that use it follow.
func (h *sheetsPage) renameIt() {
	was := h.name
	h.w.ask.Name(h.w.text("Rename the hardware sheet “%v”", was), h.w.text("Name in the project"), h.w.text("Rename"), was, func(name string) error {
		if name == was {
			return nil
		}
		at := h.index()
		if err := h.w.session.Do(edit.RenameHardware{Name: was, To: name}); err != nil {
			return err
		}
		name = h.uses()[at].Name // without signs that can't be seen
		if f, ok := h.files[was]; ok {
			delete(h.files, was)
			h.files[name] = f
		}
		h.name = name
		h.update()
		h.tell(message.New("Bays and fronts that use “%v” follow.", name))
		return nil
	})
}

// removeIt takes the sheet that is shown out of the project, and shows another.
// One that drawers use stays, and they are named.
func (h *sheetsPage) removeIt() {
	h.settled(func() {
		name := h.name
		if err := h.w.session.Do(edit.RemoveHardware{Name: name}); err != nil {
			h.w.ask.Complain(err)
			return
		}
		delete(h.files, name)
		if all := h.uses(); len(all) > 0 {
			h.showNamed(all[0].Name)
		} else {
			h.name = ""
			h.page.Show(hardware.Blank(h.w.say()))
			h.update()
		}
		h.tell(message.New("“%v” is no longer in the project. Undo at the drawing brings it back.", name))
	})
}
