package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// Several is a row of edits that is one step to the user. Where one of them
// can't be made, none is.
type Several struct {
	Name  message.Message
	Edits []Edit
}

// Label names the change.
func (e Several) Label() message.Message { return e.Name }

// Apply makes the changes one after another.
func (e Several) Apply(p *model.Project) (*model.Project, error) {
	c := p.Clone()
	for _, one := range e.Edits {
		next, err := one.Apply(c)
		if err != nil {
			return nil, err
		}
		c = next
	}
	return c, nil
}
