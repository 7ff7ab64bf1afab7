// Package plan holds what the layout works out from a project: every front,
// drawer, runner and hole in its place. It is the only package in which frames
// of reference change and mirror.
//
// Frames: Run has its origin at the left end of the run on the floor line, x to
// the right as seen from the room, y up. Face has its origin at a front's lower
// left corner as seen from the room. Rear is the same panel lying face down
// with its bottom edge towards you: x is mirrored. Depth counts from the front
// edge of the carcass to the back.
package plan

import (
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Plan is everything that follows from a project. It is computed and never
// stored. Fronts are numbered from 1 along the run: cabinets and bays left to
// right, each stack bottom to top.
type Plan struct {
	Project  *model.Project
	Cabinets []Cabinet
	Fronts   []Front
	Extent   plane.Rect // of carcasses, fronts, and what stands beside, over and under, run frame
	Problems []Problem
}

// ProblemKind tells what could not be done as the project asks.
type ProblemKind uint8

// The problems that placing can meet.
const (
	LineUpUnknown ProblemKind = iota // the front to line up with is not there
	LineUpCircle                     // two bays wait for each other
	LineUpNoRoom                     // the line is where this front can't end; Amount is how far off
	StackSum                         // heights don't add up; Amount is over (above zero) or under
	BaySum                           // bay widths don't add up; Amount likewise
	SpanNoPlace                      // a front that spans bays is not at the end of its stack, or there are not so many bays
	SheetMissing                     // no hardware sheet of that name
	DrawerUnknown                    // the sheet has no such drawer height
	RunnerUnknown                    // the sheet has no runner of the length asked for
)

// Problem is something that could not be done as the project asks. The plan
// does the nearest thing instead. Others are the places in the way.
type Problem struct {
	Kind   ProblemKind
	Place  model.Place
	Amount length.Length
	Name   string
	Line   length.Length // that a front should meet, run frame, where LineUpNoRoom
	Inner  int           // which inner drawer of the place it is about, from 1; 0: none
	Others []model.Place
}

// Cabinet is a placed carcass, in the run frame.
type Cabinet struct {
	Place      model.Place
	Name       string
	Outline    plane.Rect    // the carcass without its plinth
	Inside     plane.Rect    // between its sides, bottom and top
	Plinth     plane.Rect    // empty where there is none
	PlinthBack length.Length // from the carcass's front edge back to the plinth board's face
	Feet       []plane.Rect  // those in front, as they are seen
	Partitions []plane.Rect
	Beside     []Board // end panels and fillers, worktop
	Back       Back
	Depth      length.Length // inside depth: front edge to the back board
	Sides      length.Length // depth of sides, bottom and top: behind a back that is let into them, more than Depth
	Fronts     length.Length // thickness of the thickest of its fronts
	Mount      model.Mount
	Reveals    model.Reveals
	Bays       []Bay
}

// BoardKind tells what a board of a carcass, or beside, over or under it, is.
type BoardKind uint8

// The boards around a carcass, and those it is made of.
const (
	EndPanelBoard BoardKind = iota
	FillerBoard
	WorktopBoard
	LeftSideBoard
	RightSideBoard
	BottomBoard
	TopBoard
	PartitionBoard
	ShelfBoard
	ChannelBoard
	BackBoard
	PlinthBoard
	RailBoard
	PackingBoard
)

// Board is a board of a carcass or around it, in the run frame.
type Board struct {
	Kind BoardKind
	Rect plane.Rect
}

// Covers tells that the fronts of a cabinet reach over a board beside it, which then
// ends with the carcass; an end panel that they do not cover is level with their faces
// where these lie over the carcass.
func (c *Cabinet) Covers(b Board) bool {
	past := c.Reveals.Right
	if b.Rect.Max.X <= c.Outline.Min.X {
		past = c.Reveals.Left
	}
	return c.Mount == model.Overlay && past < 0
}

// Bay is a placed opening, in the run frame.
type Bay struct {
	Place    model.Place
	Opening  plane.Rect // clear opening of the carcass
	Stack    plane.Rect // what the stack of fronts and gaps fills
	First    int        // index of its lowest front in Plan.Fronts
	Count    int        // how many fronts it holds
	Sheet    *model.HardwareSheet
	Room     length.Length // height that the stack's own fronts and gaps have: Stack less what spanning fronts of other bays take
	Column   []int         // all fronts that cover this bay, spanning ones of other bays too: indexes in Plan.Fronts, bottom to top
	Shelves  []Shelf
	Channels []Channel     // bottom to top
	Rails    []Rail        // likewise
	Over     length.Length // what the heights are over (above zero) or under the stack
	part     part          // how its width came about
}

// Shelf is a board of the carcass's thickness that a front needs: under or over
// the open niche at Of (both where two niches meet), or under or over a spanning
// front, where it carries the partitions that the front cuts off. Rect is in the
// run frame, as wide as the bays that the front at Of covers.
type Shelf struct {
	Rect plane.Rect
	Of   model.Place
	Over bool
}

// Channel is a placed finger-pull channel. Rect is the recess in the run frame, Board
// the board that closes it, between Near and Far in the depth frame; both are 0 where
// there is none.
type Channel struct {
	Rect      plane.Rect
	Near, Far length.Length
}

// Rail is a placed rail above the front at Of: Rect in the run frame, from the carcass's
// front edge to Depth in the depth frame.
type Rail struct {
	Rect  plane.Rect
	Depth length.Length
	Of    model.Place
}

// Edges are four figures, one for each edge of a front.
type Edges struct{ Left, Right, Bottom, Top length.Length }

// Front is one placed member of a stack. Drawer and Runner count only where Kind
// is DrawerFront and Fitted is true (a hardware sheet and a drawer height were
// found). Inner are the inner drawers behind it, as the project lists them, each as a
// drawer of its own with the place, number, face and opening of this front, but no holes.
type Front struct {
	Place     model.Place
	Number    int
	Name      string // the user's, or "Front n"
	Kind      model.Kind
	Face      plane.Rect       // run frame
	Clear     plane.Rect       // of an open niche: between the boards around it, run frame
	Made      model.FrontBoard // what it is made of, and how
	Thickness length.Length    // of its board
	Zones     []Zone           // none where it is of one thickness all over
	Inset     bool

	Overlay      Edges // past the opening (or past the middle line's carcass face), negative for inset
	EdgeDistance Edges // Left and Right only: front edge to the line of connector holes
	Fitted       bool
	OnFloor      bool          // stands on the carcass bottom or on a shelf
	Floor        length.Length // upper face of what it stands on, or the top edge of the front below, run frame
	OnRail       bool          // likewise, on the rail between it and the front below
	Bottommost   bool          // stands on the carcass bottom
	Topmost      bool          // ends at the carcass top
	Bays         int           // how many bays it covers
	Opening      plane.Rect    // clear opening that its drawer runs in, run frame
	Packing      model.Packing // between that and the runners
	Inner        []Front
	Nth          int // of an inner drawer: which one it is behind its front, from 1; 0: no inner drawer
	Sheet        *model.HardwareSheet
	Stabilised   bool          // has the holes of a stabiliser
	Handles      []Handle      // left to right
	HandleHoles  []Hole        // those of all its handles: through holes, drilled from the face
	Drop         length.Length // runner's lower edge − front's bottom edge
	Height       *model.DrawerHeight
	Runner       Runner
	Drawer       Drawer
	Holes        []Hole
	part         part // how its height came about
}

// Runner is the placed pair of runners. Lower is the y of its lower edge in the
// run frame; Start and Length run along the depth frame. Length is 0 where none
// of the sheet fits. Screws are in the carcass sides.
type Runner struct {
	Lower  length.Length
	Start  length.Length
	Length length.Length
	Load   float64 // kg, 0 where the sheet gives none
	Price  float64 // of the pair, 0 where the sheet gives none
	Screws []SideHole
	OffRow length.Length // from the first screw hole up to the next hole row; 0: on a row, or rows do not matter
	source *model.RunnerLength
}

// SideHole is a hole in a carcass side's inside face: Back in the depth frame
// (already pushed back for an inset front), Y in the run frame.
type SideHole struct {
	Back, Y         length.Length
	Diameter, Depth length.Length
}

// Drawer is the placed drawer in the run frame: Body from its bottom's
// underside (or lowest part) to its highest part, Outside width between the
// runners' clearances.
type Drawer struct {
	Body      plane.Rect
	Bottom    plane.Rect    // the drawer bottom board, seen from the front
	Side      length.Length // y of the top of drawer sides
	Back      length.Length // y of the top of the drawer back
	Rail      length.Length // y of the top of the rails; 0 where there are none
	RoomAbove length.Length // from Body's top to Limit
	Limit     length.Length // the lower edge of the next thing above, run frame
	Above     AboveKind     // what that is
	Cover     Edges         // Bottom, Left and Right: how far the front reaches past the drawer bottom
	BottomCut Size
	BackCut   Size
	Box       *Box // nil where the drawer is the maker's, or no runner fits
}

// AboveKind tells what is above a drawer.
type AboveKind uint8

// What can be above a drawer.
const (
	CarcassAbove AboveKind = iota
	DrawerAbove
	ShelfAbove
	FrontAbove
	ChannelAbove
	RailAbove
)

// Say names what is above a drawer.
func (k AboveKind) Say() message.Message {
	switch k {
	case DrawerAbove:
		return message.New("the drawer above")
	case ShelfAbove:
		return message.New("the shelf above")
	case FrontAbove:
		return message.New("the front above")
	case RailAbove:
		return message.New("the rail above")
	case ChannelAbove:
		return message.New("the finger-pull channel")
	default:
		return message.New("the carcass top")
	}
}

// Size is a panel's width and length (or height).
type Size struct{ Width, Length length.Length }

// HoleKind tells what a hole is for.
type HoleKind uint8

// The kinds of holes in a front's rear face.
const (
	ConnectorHole HoleKind = iota
	RailHole
	StabiliserHole
	HandleHole
)

// Side names a side of a front as seen from the room.
type Side uint8

// The two sides, as seen from the room.
const (
	Left Side = iota
	Right
)

// Hole is one hole in the rear face of a front. At is in the Face frame (as
// seen from the room); Rear changes it to the frame in which it is drilled.
// AboveRunner is its height above the runner's lower edge.
type Hole struct {
	At          plane.Point
	Side        Side
	Kind        HoleKind
	AboveRunner length.Length
	Diameter    length.Length
	Depth       length.Length
}

// Rear changes a point from the Face frame to the Rear frame, or back.
func (f *Front) Rear(p plane.Point) plane.Point {
	return plane.Point{X: f.Face.Width() - p.X, Y: p.Y}
}

// Blind is the front as a rectangle in its own frame: lower left corner at 0,0.
func (f *Front) Blind() plane.Rect {
	return plane.R(0, 0, f.Face.Width(), f.Face.Height())
}
