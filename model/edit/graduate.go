package edit

import (
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Graduate makes fronts of one stack taller from top to bottom, each by a factor
// over the next of them above it; the others keep their heights. Heights are
// those of all fronts of the stack in the plan, bottom to top. Whole tells that
// the fronts are all of the stack, for the label.
type Graduate struct {
	At      []model.Place
	Heights []length.Length
	Ratio   float64
	Whole   bool
}

// Label names the change.
func (e Graduate) Label() message.Message {
	if e.Whole {
		return message.New("Graduate the whole bay by a factor of %v", e.Ratio)
	}
	return message.New("Graduate %v fronts by a factor of %v", len(e.At), e.Ratio)
}

// Apply makes the change.
func (e Graduate) Apply(p *model.Project) (*model.Project, error) {
	d := model.Division{Rule: model.DivideRatio, Ratio: e.Ratio}
	if err := refused(figure.Division(&d), "ratio", e.Ratio); err != nil {
		return nil, err
	}
	return someFronts(p, e.At, e.Heights, d)
}
