package tool

import (
	"frontlay/layout/drawing"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// pencil is what the tools that draw have in common. They propose what they would
// draw: where the pointer is, or where the keys have moved it.
type pencil struct {
	on bool // something is proposed
}

// Proposing is a tool that can propose what it would draw before the pointer has
// shown where.
type Proposing interface {
	Keyed
	// Propose shows something to draw at what is selected, where there is room.
	Propose(Desk) Tool
	// Fresh is the tool with nothing proposed.
	Fresh() Tool
}

// Escape ends drawing.
func (pencil) Escape(d Desk) Tool {
	d.Display(Feedback{})
	return Idle{}
}

// Cursor is that of drawing, or of typing over a figure.
func (pencil) Cursor(_ Desk, p Pointer) Cursor {
	if typed(p.Thing.Kind) {
		return Typing
	}
	return Draw
}

// figure tells that the pointer is over a figure that can be typed, with every
// tool, and shows that.
func (pencil) figure(d Desk, p Pointer) bool {
	if !typed(p.Thing.Kind) {
		return false
	}
	d.Display(Feedback{Under: []drawing.Subject{p.Thing}})
	return true
}

// pressed is a tool that draws after the button went down: over a figure, which is
// typed where the button is let go, or else showing what it would draw.
func (c pencil) pressed(d Desk, p Pointer, t Tool) Tool {
	if c.figure(d, p) {
		return held{press: p, then: t}
	}
	return t.Move(d, p)
}

// proposal is the field in which the size of what is proposed is typed. Enter
// draws it, with what follows.
func proposal(d Desk, size length.Length, edited func(length.Length) edit.Edit, show func(length.Length), drawn func()) Field {
	s := d.Session()
	return Field{
		Size: size, Proposed: true, Drawn: drawn,
		Edit: func(text string) (edit.Edit, error) {
			v, err := length.Parse(text, s.Project().Unit)
			if err != nil {
				return nil, message.Of(err)
			}
			e := edited(v)
			if err := s.Judge(e); err != nil {
				return nil, err
			}
			show(v)
			return e, nil
		},
	}
}
