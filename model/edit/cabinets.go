package edit

import (
	"slices"

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

// CopyCabinet puts a copy of a cabinet at its right.
type CopyCabinet struct {
	At model.Place
}

// Label names the change.
func (e CopyCabinet) Label() message.Message { return message.New("Copy a cabinet") }

// Apply makes the change.
func (e CopyCabinet) Apply(p *model.Project) (*model.Project, error) {
	_, cab, err := cabinet(p, e.At)
	if err != nil {
		return nil, err
	}
	return AddCabinet{model.Place{Cabinet: e.At.Cabinet + 1, Bay: -1, Front: -1}, *cab}.Apply(p)
}

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
	known := func(board *string) {
		if _, ok := c.FrontBoard(*board); !ok {
			*board = ""
		}
	}
	known(&cab.Board)
	for i := range cab.Bays {
		b := &cab.Bays[i]
		if c.Sheet(b.Hardware) == nil {
			b.Hardware = ""
		}
		for j := range b.Fronts {
			known(&b.Fronts[j].Board)
			if f := &b.Fronts[j]; c.Sheet(f.Hardware) == nil {
				f.Hardware = ""
			}
		}
		refit(c, b)
	}
	return c, nil
}

// RemoveCabinet takes a cabinet out of the run.
type RemoveCabinet struct {
	At model.Place
}

// Label names the change.
func (e RemoveCabinet) Label() message.Message { return message.New("Remove a cabinet") }

// Apply makes the change. The last cabinet can't be removed.
func (e RemoveCabinet) Apply(p *model.Project) (*model.Project, error) {
	c, _, err := cabinet(p, e.At)
	if err != nil {
		return nil, err
	}
	if len(c.Cabinets) == 1 {
		return nil, message.New("A project needs at least one cabinet. Add another one first.")
	}
	c.Cabinets = append(c.Cabinets[:e.At.Cabinet], c.Cabinets[e.At.Cabinet+1:]...)
	return c, nil
}

// MoveCabinet moves a cabinet to another place of the run; To counts from 0 at
// the left, after the move.
type MoveCabinet struct {
	At model.Place
	To int
}

// Label names the change.
func (e MoveCabinet) Label() message.Message { return message.New("Move a cabinet in the run") }

// Apply makes the change.
func (e MoveCabinet) Apply(p *model.Project) (*model.Project, error) {
	c, _, err := cabinet(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.To < 0 || e.To >= len(c.Cabinets) {
		return nil, message.New("The cabinet is at the end of the run already.")
	}
	c.Cabinets = reordered(c.Cabinets, e.At.Cabinet, e.To)
	return c, nil
}

// reordered moves one of several to another place among them.
func reordered[T any](all []T, from, to int) []T {
	one := all[from]
	return slices.Insert(slices.Delete(all, from, from+1), to, one)
}

// RenameCabinet gives a cabinet a name.
type RenameCabinet struct {
	At   model.Place
	Name string
}

// Label names the change.
func (e RenameCabinet) Label() message.Message {
	return message.New("Name the cabinet “%v”", e.Name)
}

// Apply makes the change.
func (e RenameCabinet) Apply(p *model.Project) (*model.Project, error) {
	c, cab, err := cabinet(p, e.At)
	if err != nil {
		return nil, err
	}
	s, err := name(e.Name)
	if err != nil {
		return nil, err
	}
	if s == "" {
		return nil, message.New("A cabinet needs a name, so that its parts can be told apart on paper.")
	}
	for i := range c.Cabinets {
		if i != e.At.Cabinet && c.Cabinets[i].Name == s {
			return nil, message.New("Another cabinet has the name “%v” already.", s)
		}
	}
	cab.Name = s
	return c, nil
}
