package ui

import (
	"frontlay/model"
	"frontlay/model/edit"
)

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
