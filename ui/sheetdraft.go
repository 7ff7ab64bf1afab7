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

// withDraft is a project with the changed figures of the page as a sheet of its
// own, which no drawer uses: after a crash they are there, and nothing was decided
// about them. It is the project itself where nothing is changed.
func (h *sheetsPage) withDraft(p *model.Project) *model.Project {
	if h == nil || h.draft == nil {
		return p
	}
	name := h.free(h.w.text("%v, changed and not in use", h.name))
	with, err := edit.UseHardware{Use: model.HardwareUse{Name: name, Sheet: h.draft}}.Apply(p)
	if err != nil { // its name is too long
		with, err = edit.UseHardware{Use: model.HardwareUse{Name: h.free(h.w.text("changed")), Sheet: h.draft}}.Apply(p)
	}
	if err != nil {
		return p
	}
	return with
}
