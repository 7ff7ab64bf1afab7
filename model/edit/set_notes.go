package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// mostNotes is how many bytes of notes a project can carry.
const mostNotes = 64 << 10

// SetNotes changes the project's notes.
type SetNotes struct {
	Notes string
}

// Label names the change.
func (e SetNotes) Label() message.Message { return message.New("Notes") }

// Apply makes the change.
func (e SetNotes) Apply(p *model.Project) (*model.Project, error) {
	if len(e.Notes) > mostNotes {
		return nil, message.New("The notes are too long for a project file.")
	}
	c := p.Clone()
	c.Notes = e.Notes
	return c, nil
}
