package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// Equalise lets fronts of one stack take equal shares of what the others leave.
type Equalise struct {
	At []model.Place
}

// Label names the change.
func (e Equalise) Label() message.Message { return message.New("Equal heights") }

// Apply makes the change.
func (e Equalise) Apply(p *model.Project) (*model.Project, error) {
	if err := oneStack(p, e.At, 2); err != nil {
		return nil, err
	}
	c := p.Clone()
	for _, at := range e.At {
		f := c.FrontAt(at)
		if err := unlocked(f); err != nil {
			return nil, err
		}
		f.Height, f.Share, f.LineUp = 0, 1, nil
	}
	return c, nil
}

// oneStack refuses places that are not at least a number of fronts of one bay.
func oneStack(p *model.Project, at []model.Place, least int) error {
	if len(at) < least {
		return message.New("Select at least %v fronts of one stack.", least)
	}
	for _, a := range at {
		if p.FrontAt(a) == nil {
			return message.New("There is no front at this place any more. Select one in the drawing.")
		}
		if a.Cabinet != at[0].Cabinet || a.Bay != at[0].Bay {
			return message.New("Select fronts of one stack only.")
		}
	}
	return nil
}
