package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// PasteCabinet puts a cabinet, perhaps of another project, into the run. Bays
// and fronts whose hardware this project does not have take its first sheet.
type PasteCabinet struct {
	At      model.Place
	Cabinet model.Cabinet
}

// Label names the change.
func (e PasteCabinet) Label() message.Message { return message.New("Paste a cabinet") }

// Apply makes the change.
func (e PasteCabinet) Apply(p *model.Project) (*model.Project, error) {
	c, err := AddCabinet(e).Apply(p)
	if err != nil {
		return nil, err
	}
	cab := &c.Cabinets[e.At.Cabinet]
	for i := range cab.Bays {
		b := &cab.Bays[i]
		if c.Sheet(b.Hardware) == nil {
			b.Hardware = ""
		}
		for j := range b.Fronts {
			if f := &b.Fronts[j]; c.Sheet(f.Hardware) == nil {
				f.Hardware = ""
			}
		}
		refit(c, b)
	}
	return c, nil
}
