package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Equalise gives fronts of one stack equal heights, to the rounding step; the
// others keep theirs. Heights are those of all fronts of the stack in the plan,
// bottom to top. Whole tells that the fronts are all of the stack, for the
// label.
type Equalise struct {
	At      []model.Place
	Heights []length.Length
	Whole   bool
}

// Label names the change.
func (e Equalise) Label() message.Message {
	if e.Whole {
		return message.New("Equal heights in the whole bay")
	}
	return message.New("Equal heights")
}

// Apply makes the change. It is refused where the limits of one of the fronts
// leave no equal height.
func (e Equalise) Apply(p *model.Project) (*model.Project, error) {
	c, err := someFronts(p, e.At, e.Heights, model.Division{Rule: model.DivideEqual})
	if err != nil {
		return nil, err
	}
	sum := length.Length(0)
	for _, at := range e.At {
		sum += e.Heights[at.Front]
	}
	each := sum / length.Length(len(e.At))
	for _, at := range e.At {
		switch f := p.FrontAt(at); {
		case f.Least > each:
			return nil, message.New("Equal heights would be %v, but one of these fronts is to be at least %v high. Change its limit first.", each, f.Least)
		case f.Greatest > 0 && f.Greatest < each:
			return nil, message.New("Equal heights would be %v, but one of these fronts is to be at most %v high. Change its limit first.", each, f.Greatest)
		}
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
