package ui

import (
	"frontlay/model"
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

// keepDraft remembers the figures on the page for the journal: those of the moment,
// or, while they do not go together, the last that did. A project that could not
// be read again would lose more than they are.
func (h *sheetsPage) keepDraft() {
	was := h.draft
	switch {
	case !h.page.Unsaved():
		h.draft = nil
	case len(h.page.Problems()) == 0:
		h.draft = h.page.Sheet()
	}
	if h.draft != was {
		h.w.journal()
	}
}

// drafted tells that a page of hardware sheets is shown, with changed figures.
func (h *sheetsPage) drafted() bool { return h != nil && h.draft != nil }

// withDraft is a project with the changed figures of the page as a sheet of its
// own, which no drawer uses: after a crash they are there, and nothing was decided
// about them. It is the project itself where nothing is changed.
func (h *sheetsPage) withDraft(p *model.Project) *model.Project {
	if !h.drafted() {
		return p
	}
	with := func(name string) (*model.Project, error) {
		return edit.UseHardware{Use: model.HardwareUse{Name: h.free(name), Sheet: h.draft}}.Apply(p)
	}
	if len(p.Hardware) > 0 {
		all, err := with(h.w.text("%v, changed and not in use", h.name))
		if err == nil {
			return all
		}
	}
	// The name was too long, or the sheet is the only one, which drawers that are
	// put in will use.
	all, err := with(h.w.text("changed"))
	if err != nil {
		return p
	}
	return all
}
