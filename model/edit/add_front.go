package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// mostFronts bounds a stack to what a person can still mean.
const mostFronts = 10000

// AddFront puts a front into a stack so that it stands at At.Front from below;
// the fronts from there on move up. At.Front may be one past the last.
type AddFront struct {
	At    model.Place
	Front model.Front
}

// Label names the change.
func (e AddFront) Label() message.Message { return message.New("Add a front") }

// Apply makes the change.
func (e AddFront) Apply(p *model.Project) (*model.Project, error) {
	c, b, err := bay(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.At.Front < 0 || e.At.Front > len(b.Fronts) {
		return nil, message.New("A front can be put at any place from 1 to %v of this stack.", len(b.Fronts)+1)
	}
	if len(b.Fronts) >= mostFronts {
		return nil, message.New("A stack holds at most %v fronts.", mostFronts)
	}
	b.Fronts = append(b.Fronts, model.Front{})
	copy(b.Fronts[e.At.Front+1:], b.Fronts[e.At.Front:])
	f := e.Front.Clone()
	if f.Hardware != "" && c.Sheet(f.Hardware) == nil {
		f.Hardware = ""
	}
	b.Fronts[e.At.Front] = f
	refit(c, b)
	return c, nil
}
