package sheets

import (
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/hardware"
)

// renameIt asks what the project shall call the sheet that is shown. Bays and
// fronts that use it follow.
func (h *Page) renameIt() {
	was := h.name
	h.host.Ask().Name(h.text("Rename the hardware sheet “%v”", was), h.text("Name in the project"), h.text("Rename"), was, func(name string) error {
		if name == was {
			return nil
		}
		at := h.index()
		if err := h.host.Session().Do(edit.RenameHardware{Name: was, To: name}); err != nil {
			return err
		}
		name = h.uses()[at].Name // without signs that can't be seen
		if f, ok := h.files[was]; ok {
			delete(h.files, was)
			h.files[name] = f
		}
		if h.fresh[was] {
			delete(h.fresh, was)
			h.fresh[name] = true
		}
		h.name = name
		h.update()
		h.tell(message.New("Bays and fronts that use “%v” follow.", name))
		return nil
	})
}

// removeIt takes the sheet that is shown out of the project, and shows another.
// One that drawers use stays, and they are named.
func (h *Page) removeIt() {
	h.leaveSheet(func() {
		name := h.name
		if err := h.host.Session().Do(edit.RemoveHardware{Name: name}); err != nil {
			h.host.Ask().Complain(err)
			return
		}
		delete(h.files, name)
		if all := h.uses(); len(all) > 0 {
			h.showNamed(all[0].Name)
		} else {
			h.name = ""
			h.Form.Show(hardware.Blank(h.host.Ask().Say()))
			h.update()
		}
		h.tell(message.New("“%v” is no longer in the project. Undo at the drawing brings it back.", name))
	})
}

// keepDraft remembers the figures on the page for the journal: those of the moment,
// or, while they do not go together, the last that did. A project that could not
// be read again would lose more than they are.
func (h *Page) keepDraft() {
	was := h.draft
	switch {
	case !h.Form.Unsaved():
		h.draft = nil
	case len(h.Form.Problems()) == 0:
		h.draft = h.Form.Sheet()
	}
	if h.draft != was {
		h.host.Drafted()
	}
}

// Draft is a project with the changed figures of the page as a sheet of its own,
// which no drawer uses: after a crash they are there, and nothing was decided about
// them. It is nil where nothing is changed.
func (h *Page) Draft(p *model.Project) *model.Project {
	if h.draft == nil {
		return nil
	}
	with := func(name string) (*model.Project, error) {
		return edit.UseHardware{Use: model.HardwareUse{Name: h.free(name), Sheet: h.draft}}.Apply(p)
	}
	if len(p.Hardware) > 0 {
		all, err := with(h.text("%v, changed and not in use", h.name))
		if err == nil {
			return all
		}
	}
	// The name was too long, or the sheet is the only one, which drawers that are
	// put in will use.
	all, err := with(h.text("changed"))
	if err != nil {
		return p
	}
	return all
}
