package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// mostNotes is how many letters of notes a project file takes.
const mostNotes = 20_000

// SetNotes changes the project's notes.
type SetNotes struct {
	Notes string
}

// Label names the change.
func (e SetNotes) Label() message.Message { return message.New("Notes") }

// Apply makes the change. Signs that can't be seen are left out.
func (e SetNotes) Apply(p *model.Project) (*model.Project, error) {
	notes := lines(e.Notes)
	if len([]rune(notes)) > mostNotes {
		return nil, message.New("The notes are too long for a project file.")
	}
	c := p.Clone()
	c.Notes = notes
	return c, nil
}
