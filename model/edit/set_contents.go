package edit

import (
	"math"

	"frontlay/model"
	"frontlay/model/message"
)

// SetContents says what a drawer is to hold: its height above the drawer bottom
// and its weight in kg, 0 where not given.
type SetContents struct {
	At       model.Place
	Contents model.Contents
}

// Label names the change.
func (e SetContents) Label() message.Message { return message.New("Contents of the drawer") }

// Apply makes the change.
func (e SetContents) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if err := within(e.Contents.Height, 0, greatestFitting); err != nil {
		return nil, err
	}
	if w := e.Contents.Weight; math.IsNaN(w) || w < 0 || w > 1000 {
		return nil, message.New("A weight from 0 to 1000 kg is possible.")
	}
	f.Contents = e.Contents
	return c, nil
}
