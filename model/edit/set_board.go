package edit

import (
	"math"

	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// BoardUse names one of the project's boards.
type BoardUse uint8

// The boards of a project.
const (
	CarcassBoard BoardUse = iota
	FrontBoard
	BackBoard
)

// SetBoard changes a board: thickness from 1 to 200 mm, lipping from 0
// (none) to 50 mm, density from 1 to 5000
// kg/m³, or 0 (not given).
type SetBoard struct {
	Use   BoardUse
	Board model.Board
}

// Label names the change.
func (e SetBoard) Label() message.Message {
	switch e.Use {
	case FrontBoard:
		return message.New("Front board")
	case BackBoard:
		return message.New("Back board")
	default:
		return message.New("Carcass board")
	}
}

// Apply makes the change.
func (e SetBoard) Apply(p *model.Project) (*model.Project, error) {
	if err := within(e.Board.Thickness, length.Millimetre, greatestBoard); err != nil {
		return nil, err
	}
	if d := e.Board.Density; math.IsNaN(d) || d != 0 && d < 1 || d > 5000 {
		return nil, message.New("A board's density is from 1 to 5000 kg/m³, or 0 where it is not known.")
	}
	if err := within(e.Board.Lipping, 0, 50*length.Millimetre); err != nil {
		return nil, err
	}
	b := e.Board
	var err error
	if b.Material, err = name(b.Material); err != nil {
		return nil, err
	}
	c := p.Clone()
	switch e.Use {
	case FrontBoard:
		c.Boards.Front = b
	case BackBoard:
		c.Boards.Back = b
	default:
		c.Boards.Carcass = b
	}
	return c, nil
}
