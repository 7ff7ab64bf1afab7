package model

import "frontlay/model/length"

// FrontBoard is a board that fronts are made of, and how they are built of it. Name
// is what `board` chooses it by; that of the project's plain front board is
// PlainBoard.
type FrontBoard struct {
	Name string
	Board
	Build Build
}

// PlainBoard names the project's plain front board, a slab, where another one is
// chosen for what is around it. No front board of the project's list has this name.
const PlainBoard = "front"

// Build is how a front is made of its board. Kind tells which of the figures count:
// Stile, TopRail, BottomRail and Panel of a frame, Edge, Height and Left of a grip.
// Zero lengths stand for what Filled gives.
type Build struct {
	Kind BuildKind

	Stile, TopRail, BottomRail length.Length // their widths, seen from the room
	Tenon                      length.Length // how far each rail reaches into a stile; 0: butted
	Panel                      Panel

	Edge   GripEdge
	Height length.Length // of the strip along the edge that is thinned from behind
	Left   length.Length // of the board's thickness in that strip
}

// BuildKind names a way to build a front.
type BuildKind uint8

// The ways: the board as it is; stiles and rails of the board around a panel; the
// board, thinned from behind along an edge as a grip.
const (
	Slab BuildKind = iota
	Frame
	GripEdged
)

// GripEdge is the edge that has the grip.
type GripEdge uint8

// The edges that can have one.
const (
	GripTop GripEdge = iota
	GripBottom
)

// Panel is the panel in a frame. Its rear face lies Recess behind that of the frame,
// towards the room. It reaches into a groove all around that is Groove deep, but for Room,
// which it keeps from the groove's bottom so that it can swell. Density, Material, Grain
// and, with it, Species and Sawn are the frame's where they are not given; it has no
// lipping.
type Panel struct {
	Board
	Recess length.Length
	Groove length.Length
	Room   length.Length
}

// Figures of a build that are not given (common practice, no source).
const (
	UsualStile      = 60 * length.Millimetre
	UsualPanel      = 8 * length.Millimetre
	UsualGroove     = 10 * length.Millimetre
	UsualGripHeight = 30 * length.Millimetre
)

// Filled gives the build of a board with its usual figures where it has none: rails
// as wide as the stiles, half of the thickness left in a grip.
func (b *FrontBoard) Filled() Build {
	f := b.Build
	fill := func(at *length.Length, usual length.Length) {
		if *at <= 0 {
			*at = usual
		}
	}
	fill(&f.Stile, UsualStile)
	fill(&f.TopRail, f.Stile)
	fill(&f.BottomRail, f.Stile)
	fill(&f.Panel.Thickness, UsualPanel)
	fill(&f.Panel.Groove, UsualGroove)
	fill(&f.Height, UsualGripHeight)
	fill(&f.Left, b.Thickness/2)
	return f
}

// PanelBoard is the board of the panel in a frame.
func (b *FrontBoard) PanelBoard() Board {
	board := b.Filled().Panel.Board
	if board.Density == 0 {
		board.Density = b.Density
	}
	if board.Material == "" && board.Species == "" {
		board.Species, board.Sawn = b.Species, b.Sawn
	}
	if board.Material == "" {
		board.Material = b.Material
	}
	if board.Grain == "" {
		board.Grain = b.Grain
	}
	return board
}

// FrontBoard gives the project's front board of a name, false where it has none:
// PlainBoard, and no name, for the plain one.
func (p *Project) FrontBoard(name string) (FrontBoard, bool) {
	if name == "" || name == PlainBoard {
		return FrontBoard{Name: PlainBoard, Board: p.Boards.Front}, true
	}
	for i := range p.Boards.Fronts {
		if p.Boards.Fronts[i].Name == name {
			return p.Boards.Fronts[i], true
		}
	}
	return FrontBoard{}, false
}

// BoardOf gives the board of the front at a place: its own, its cabinet's or the
// project's, whichever is chosen first, or else the plain one; also where the name
// that is chosen is not known. Its name is a copy; nothing it holds is shared.
func (p *Project) BoardOf(at Place) FrontBoard {
	name := p.Board
	if c := p.CabinetAt(at); c != nil && c.Board != "" {
		name = c.Board
	}
	if f := p.FrontAt(at); f != nil && f.Board != "" {
		name = f.Board
	}
	b, ok := p.FrontBoard(name)
	if !ok {
		b, _ = p.FrontBoard(PlainBoard)
	}
	return b
}
