package edit

import (
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/message"
)

// SetDivision chooses the rule by which the fronts of a bay share what its fixed
// ones leave. Free makes every front that is not locked take part.
type SetDivision struct {
	At       model.Place
	Division model.Division
	Free     bool
}

// Label names the change.
func (e SetDivision) Label() message.Message {
	switch e.Division.Rule {
	case model.DivideEqual:
		return message.New("Equal heights")
	case model.DivideStep:
		return message.New("Graduate by %v", e.Division.Step)
	case model.DivideRatio:
		return message.New("Graduate by a factor of %v", e.Division.Ratio)
	default:
		return message.New("Divide by shares")
	}
}

// Apply makes the change.
func (e SetDivision) Apply(p *model.Project) (*model.Project, error) {
	c, b, err := bay(p, e.At)
	if err != nil {
		return nil, err
	}
	d := e.Division
	if d.Rule == model.DivideStep {
		if err := refused(figure.Division(&d), "step", d.Step); err != nil {
			return nil, err
		}
	}
	if d.Rule == model.DivideRatio {
		if err := refused(figure.Division(&d), "ratio", d.Ratio); err != nil {
			return nil, err
		}
	}
	b.Division = d
	for i := range b.Fronts {
		f := &b.Fronts[i]
		if e.Free && !f.Locked {
			f.Height, f.Share, f.LineUp = 0, 1, nil
		}
	}
	return c, nil
}
