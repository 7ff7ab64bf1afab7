package edit

import (
	"fmt"

	"frontlay/model"
	"frontlay/model/message"
)

// AddCabinet puts a cabinet into the run so that it stands at At.Cabinet from
// the left; the ones from there on move right. A name that is taken or missing
// is changed to one that is free.
type AddCabinet struct {
	At      model.Place
	Cabinet model.Cabinet
}

// Label names the change.
func (e AddCabinet) Label() message.Message { return message.New("Add a cabinet") }

// Apply makes the change.
func (e AddCabinet) Apply(p *model.Project) (*model.Project, error) {
	n := len(p.Cabinets)
	if e.At.Cabinet < 0 || e.At.Cabinet > n {
		return nil, message.New("A cabinet can be put at any place from 1 to %v of the run.", n+1)
	}
	given := &model.Project{Cabinets: []model.Cabinet{e.Cabinet}}
	cab := given.Clone().Cabinets[0]
	cab.Name = freeName(p, cab.Name)
	c := p.Clone()
	c.Cabinets = append(c.Cabinets, model.Cabinet{})
	copy(c.Cabinets[e.At.Cabinet+1:], c.Cabinets[e.At.Cabinet:])
	c.Cabinets[e.At.Cabinet] = cab
	return c, nil
}

// freeName is the name itself, or with the least number behind it that makes
// it different from all cabinets of the project.
func freeName(p *model.Project, want string) string {
	taken := map[string]bool{"": true}
	for i := range p.Cabinets {
		taken[p.Cabinets[i].Name] = true
	}
	if !taken[want] {
		return want
	}
	if want == "" {
		want = "Cabinet"
	}
	for n := 2; ; n++ {
		if s := fmt.Sprintf("%s %d", want, n); !taken[s] {
			return s
		}
	}
}
