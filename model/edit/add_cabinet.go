package edit

import (
	"fmt"
	"strconv"
	"strings"

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
// it different from all cabinets of the project. A name that ends in a number
// counts on from there: after “Cabinet 1” comes “Cabinet 2”.
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
	want, last := counted(want)
	for n := last + 1; ; n++ {
		if s := fmt.Sprintf("%s %d", want, n); !taken[s] {
			return s
		}
	}
}

// counted takes the number off the end of a name, 1 where there is none. More
// than two figures are a size, as in “Base 600”, which does not count.
func counted(name string) (string, int) {
	at := strings.LastIndexByte(name, ' ')
	if at <= 0 {
		return name, 1
	}
	if n, err := strconv.ParseUint(name[at+1:], 10, 8); err == nil && n >= 1 && n < 100 {
		return name[:at], int(n)
	}
	return name, 1
}
