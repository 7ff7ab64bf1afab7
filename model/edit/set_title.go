package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// SetTitle names the project.
type SetTitle struct {
	Title string
}

// Label names the change.
func (e SetTitle) Label() message.Message { return message.New("Title “%v”", e.Title) }

// Apply makes the change.
func (e SetTitle) Apply(p *model.Project) (*model.Project, error) {
	s, err := name(e.Title)
	if err != nil {
		return nil, err
	}
	c := p.Clone()
	c.Title = s
	return c, nil
}
