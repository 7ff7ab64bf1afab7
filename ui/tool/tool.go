// Package tool is what the hand is doing at the drawing, as states, with no
// widget in it. The screen turns pixels into run coordinates and hands events
// to the state of the moment; each event returns the state that follows.
package tool

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// Pointer is where the pointer is and what lies under it.
type Pointer struct {
	At    plane.Point     // run frame
	Thing drawing.Subject // what the hit test found
	X, Y  float32         // on the screen, for panning
	Free  bool            // snapping is off
	Add   bool            // the thing joins the selection, or leaves it
	Twice bool            // pressed a second time at once, as in a double click
}

// Cursor is the pointer's shape.
type Cursor uint8

// The shapes, which tell what a drag or a click would do.
const (
	Arrow Cursor = iota
	UpDown
	LeftRight
	Grab
	Typing
	Draw
)

// Desk is what a tool works on.
type Desk interface {
	Session() *session.Session
	// Reach is the distance in the run that looks small on the screen.
	Reach() length.Length
	// Pan moves the picture by screen units.
	Pan(dx, dy float32)
	// Type opens a field over a text of the drawing.
	Type(Field)
	// Hold puts another state of the tool into the hand.
	Hold(Tool)
	// Display puts marks of the tool over the picture until the next event.
	Display(Feedback)
	// Tell writes to the status line.
	Tell(message.Message)
}

// Feedback is what a tool shows while it works.
type Feedback struct {
	Lines   []GuideLine
	Labels  []Label
	Outline plane.Rect // of what is moved or made, or a frame; empty: nothing
	// Under are the things that letting go now, or a press, would be about: a
	// division to take hold of, a figure or name to type, fronts to select.
	Under []drawing.Subject
}

// GuideLine is a line over the picture. Snapped tells that it is one that the
// hand was drawn to, Grip that it is an edge that a press would take hold of;
// otherwise it is what would be drawn.
type GuideLine struct {
	From, To plane.Point
	Snapped  bool
	Grip     bool
}

// Label is a text over the picture; beside the pointer, or with its middle at its
// point where Centred. Within, where it is not empty, is the area that a centred
// one should stay in where it has to make room for a text of the picture.
type Label struct {
	At      plane.Point
	Say     message.Message
	Centred bool
	Within  plane.Rect
	Warn    bool
}

// Tool is a state of the hand. Every method returns the state that follows,
// which may be the same.
type Tool interface {
	Press(Desk, Pointer) Tool
	Move(Desk, Pointer) Tool
	Release(Desk, Pointer) Tool
	// Escape gives up what is going on.
	Escape(Desk) Tool
	// Cursor is the shape of the pointer over a place.
	Cursor(Desk, Pointer) Cursor
}

// Said is an edit's refusal as a message.
func Said(err error) message.Message { return message.Of(err) }
