package edit

import (
	"strconv"

	"frontlay/model"
	"frontlay/model/message"
)

// AddFrontBoard brings another board of fronts into the project, as thick and of the
// same material as the plain one, and built another way; the fronts at each place, the
// whole project, a cabinet or a front, are of it from then on. Its name is one that is
// free.
type AddFrontBoard struct {
	Kind model.BuildKind
	At   []model.Place
}

// Label names the change.
func (e AddFrontBoard) Label() message.Message {
	switch e.Kind {
	case model.Frame:
		return message.New("Fronts of frames")
	case model.GripEdged:
		return message.New("Fronts with a grip")
	}
	return message.New("Another front board")
}

// Apply makes the change.
func (e AddFrontBoard) Apply(p *model.Project) (*model.Project, error) {
	c := p.Clone()
	b := model.FrontBoard{Name: freeBoard(p, e.Kind), Board: p.Boards.Front, Build: model.Build{Kind: e.Kind}}
	c.Boards.Fronts = append(c.Boards.Fronts, b)
	for _, at := range e.At {
		if err := chooseBoard(c, at, b.Name); err != nil {
			return nil, err
		}
	}
	return c, nil
}

// chooseBoard sets the board of the project, a cabinet or a front.
func chooseBoard(c *model.Project, at model.Place, name string) error {
	switch {
	case at.Cabinet < 0:
		c.Board = name
	case at.Bay < 0 && c.CabinetAt(at) != nil:
		c.CabinetAt(at).Board = name
	case c.FrontAt(at) != nil:
		c.FrontAt(at).Board = name
	default:
		return message.New("There is nothing at this place any more. Select something in the drawing.")
	}
	return nil
}

// freeBoard is a name that no board of fronts has. Files and lists keep it, so it is
// the same whatever language the window speaks.
func freeBoard(p *model.Project, kind model.BuildKind) string {
	first := [...]string{"board", "frames", "grip"}[kind]
	name := first
	for n := 2; ; n++ {
		if _, taken := p.FrontBoard(name); !taken {
			return name
		}
		name = first + " " + strconv.Itoa(n)
	}
}

// RenameFrontBoard gives a board of fronts another name. What is of it follows.
type RenameFrontBoard struct {
	Name, To string
}

// Label names the change.
func (e RenameFrontBoard) Label() message.Message { return message.New("Front board “%v”", e.To) }

// Apply makes the change.
func (e RenameFrontBoard) Apply(p *model.Project) (*model.Project, error) {
	to, err := name(e.To)
	if err != nil {
		return nil, err
	}
	if to == "" {
		return nil, message.New("A front board needs a name, by which fronts choose it.")
	}
	if _, taken := p.FrontBoard(to); taken && to != e.Name {
		return nil, message.New("The project has a front board “%v” already.", to)
	}
	c := p.Clone()
	for i := range c.Boards.Fronts {
		if b := &c.Boards.Fronts[i]; b.Name == e.Name {
			b.Name = to
		}
	}
	everyBoard(c, func(at *string) {
		if *at == e.Name {
			*at = to
		}
	})
	return c, nil
}

// RemoveFrontBoard takes a board of fronts out of the project. What was of it is of the
// board around it.
type RemoveFrontBoard struct {
	Name string
}

// Label names the change.
func (e RemoveFrontBoard) Label() message.Message {
	return message.New("Remove the front board “%v”", e.Name)
}

// Apply makes the change.
func (e RemoveFrontBoard) Apply(p *model.Project) (*model.Project, error) {
	c := p.Clone()
	c.Boards.Fronts = nil
	for _, b := range p.Boards.Fronts {
		if b.Name != e.Name {
			c.Boards.Fronts = append(c.Boards.Fronts, b)
		}
	}
	everyBoard(c, func(at *string) {
		if *at == e.Name {
			*at = ""
		}
	})
	return c, nil
}

// everyBoard calls do for every choice of a board of fronts.
func everyBoard(p *model.Project, do func(*string)) {
	do(&p.Board)
	for i := range p.Cabinets {
		do(&p.Cabinets[i].Board)
	}
	everyBay(p, func(b *model.Bay) {
		for i := range b.Fronts {
			do(&b.Fronts[i].Board)
		}
	})
}
