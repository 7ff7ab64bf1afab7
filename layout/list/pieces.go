package list

import (
	"cmp"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Piece is a board to cut. Width and Height are the finished size as it stands
// in the cabinet: across (for a side or a drawer bottom, from front to back) and
// up. CutWidth and CutHeight are less by the edging where the board has one.
type Piece struct {
	What                message.Message   // what it is
	Each                []message.Message // what each of Count is, where they differ; else nil
	Lies                bool              // Height runs from front to back, not up
	For                 message.Message   // what it belongs to
	Front               int               // likewise, the front's number; 0: a cabinet's
	Place               model.Place
	Board               model.Board
	Width, Height       length.Length
	CutWidth, CutHeight length.Length
	Count               int
	Edged               Edged
	Framed              bool    // a part of a frame
	Drilled             bool    // it has the rear face of a front, or is a stile or rail of it
	MilledM3            float64 // what is milled out of each, in m³: a groove, a grip
	Blank               int     // number of the blank of matched fronts that it is, or is cut from; 0: none
	Matched             int     // of a blank: how many fronts are cut from it
	Grain               string  // along Width: "horizontal", along Height: "vertical", or ""
}

// AreaM2 is the area to cut of all its pieces, in square metres; 0 of what is cut from
// a blank, which counts for it.
func (p *Piece) AreaM2() float64 {
	if p.Blank > 0 && p.Matched == 0 {
		return 0
	}
	return float64(p.Count) * length.AreaM2(p.CutWidth, p.CutHeight)
}

// WeightKg is the weight of all its finished pieces, in kg: size × thickness, less
// what is milled out, × density; 0 where the board has no density, and of a blank, whose
// fronts weigh for it.
func (p *Piece) WeightKg() float64 {
	if p.Matched > 0 {
		return 0
	}
	return float64(p.Count) * (length.VolumeM3(p.Width, p.Height, p.Board.Thickness) - p.MilledM3) * p.Board.Density
}

// Pieces lists every board of the job: fronts, boards of drawers, and the
// carcasses. Carcasses are taken as follows: the sides run from bottom to top,
// bottom and top stand between them, the back is laid on behind all or let into them, and
// a plinth board runs the width of its cabinet or of the run. Of drawers the boards that
// the maker does not deliver are listed, of wooden boxes all. Worktops are not listed:
// their sizes are not in the project.
func Pieces(p *plan.Plan) []Piece {
	var all []Piece
	blanks, of := Blanks(p), map[int]int{}
	for _, b := range blanks {
		for _, f := range b.Fronts {
			of[f.Number] = b.Number
		}
	}
	for i := range p.Fronts {
		number := of[p.Fronts[i].Number]
		if number > 0 && blanks[number-1].Fronts[0] == &p.Fronts[i] {
			all = append(all, blanks[number-1].piece())
		}
		from := len(all)
		all = appendFront(all, &p.Fronts[i])
		for k := from; k < len(all); k++ {
			all[k].cutFrom(number)
		}
	}
	for f := range p.Drawers() {
		all = appendDrawer(all, f)
	}
	for i := range p.Cabinets {
		all = appendCarcass(all, p, i)
	}
	return all
}

func appendFront(all []Piece, f *plan.Front) []Piece {
	if f.Kind == model.OpenNiche {
		return all
	}
	if f.Made.Build.Kind == model.Frame {
		return appendFrame(all, f)
	}
	b := f.Made.Board
	what := message.New("front")
	switch f.Kind {
	case model.FixedPanel:
		what = message.New("fixed panel")
	case model.Door:
		what = message.New("door")
	}
	milled := 0.0
	for i := range f.Zones {
		if z := &f.Zones[i]; z.Part == plan.GripPart {
			milled = length.VolumeM3(z.Rect.Width(), z.Rect.Height(), b.Thickness-z.Thickness)
		}
	}
	q := Piece{
		What: what, For: message.New("%v %v", f.Number, f.Name), Front: f.Number, MilledM3: milled, Place: f.Place, Board: b, Count: 1, Drilled: true, Grain: b.Grain,
		Width: f.Face.Width(), Height: f.Face.Height(), CutWidth: f.Face.Width(), CutHeight: f.Face.Height(),
	}
	q.edge(frontEdges(f))
	return append(all, q)
}

// appendFrame adds the parts of a frame front. Stiles run from edge to edge, rails
// between them: their size is as seen, and the cut size of a rail is more by its tenons.
// The panel reaches to the bottom of the groove.
func appendFrame(all []Piece, f *plan.Front) []Piece {
	owner := message.New("%v %v", f.Number, f.Name)
	panel := f.Zones[len(f.Zones)-1]
	groove := panel.Rect.Min.X - panel.Whole.Min.X
	for i := range f.Zones {
		z := &f.Zones[i]
		board := z.Of(f)
		q := Piece{
			For: owner, Front: f.Number, Place: f.Place, Board: board, Grain: board.Grain, Count: 1, Framed: true, Drilled: z.Part != plan.PanelPart,
			Width: z.Rect.Width(), Height: z.Rect.Height(), CutWidth: z.Whole.Width(), CutHeight: z.Whole.Height(),
		}
		switch z.Part {
		case plan.LeftStile, plan.RightStile:
			q.What = message.New("stile")
			q.MilledM3 = length.VolumeM3(groove, panel.Whole.Height(), panel.Thickness)
		case plan.TopRail, plan.BottomRail:
			q.What = message.New("top rail")
			if z.Part == plan.BottomRail {
				q.What = message.New("bottom rail")
			}
			q.MilledM3 = length.VolumeM3(z.Rect.Width(), groove, panel.Thickness)
		case plan.PanelPart:
			q.What = message.New("panel")
			q.Width, q.Height = q.CutWidth, q.CutHeight
		}
		q.edge(frameEdges(f, z.Part))
		all = append(all, q)
	}
	return all
}

func appendDrawer(all []Piece, f *plan.Front) []Piece {
	if f.Runner.Length <= 0 {
		return all
	}
	owner := f.Called()
	if f.Drawer.Box != nil {
		return appendBox(all, f, owner)
	}
	add := func(what message.Message, thickness length.Length, s plan.Size, lies bool) {
		if s.Width <= 0 || s.Length <= 0 || thickness <= 0 {
			return
		}
		all = append(all, Piece{
			What: what, Lies: lies, For: owner, Front: f.Number, Place: f.Place, Board: model.Board{Thickness: thickness, Material: f.Sheet.Name}, Count: 1,
			Width: s.Width, Height: s.Length, CutWidth: s.Width, CutHeight: s.Length,
		})
	}
	add(message.New("drawer bottom"), f.Sheet.Bottom.Thickness, f.Drawer.BottomCut, true)
	add(message.New("drawer back"), f.Sheet.Back.Thickness, f.Drawer.BackCut, false)
	return all
}

// appendBox adds the boards of a wooden box. Their grain runs along the box's edges, as
// a joiner cuts them from a plank (common practice, no source); the bottom's is left open.
func appendBox(all []Piece, f *plan.Front, owner message.Message) []Piece {
	names := map[plan.BoxPartKind]message.Message{
		plan.BoxLeftSide: message.New("drawer side"), plan.BoxRightSide: message.New("drawer side"), plan.BoxFront: message.New("inner front"),
		plan.BoxBack: message.New("drawer back"), plan.BoxBottom: message.New("drawer bottom"),
	}
	for i := range f.Drawer.Box.Parts {
		p := &f.Drawer.Box.Parts[i]
		q := Piece{
			What: names[p.Kind], For: owner, Front: f.Number, Place: f.Place, Board: p.Board, Count: 1, MilledM3: p.MilledM3, Grain: alongWidth,
			Width: p.Size().Width, Height: p.Size().Length, CutWidth: p.Size().Width, CutHeight: p.Size().Length,
		}
		if p.Kind == plan.BoxBottom {
			q.Lies, q.Grain = true, ""
		}
		all = append(all, q)
	}
	return all
}

// appendCarcass adds the boards of one cabinet.
func appendCarcass(all []Piece, p *plan.Plan, i int) []Piece {
	c := &p.Cabinets[i]
	first := len(all)
	for _, b := range p.Boards(i) {
		q := carcassPiece(p, c, &b)
		if q.Board.Thickness <= 0 {
			continue
		}
		// Both sides are one line of the list where they are of one board, and bottom and
		// top likewise.
		if last := len(all) - 1; last >= first && all[last].joins(&q) {
			all[last].What = message.New("bottom, top")
			if b.Kind == plan.RightSideBoard {
				all[last].What = message.New("side")
			}
			all[last].Each = []message.Message{eachBoard[b.Kind-1], eachBoard[b.Kind]}
			all[last].Count++
			continue
		}
		all = append(all, q)
	}
	return all
}

// eachBoard names the boards of which a carcass has two that are mostly alike.
var eachBoard = map[plan.BoardKind]message.Message{
	plan.LeftSideBoard: message.New("left side"), plan.RightSideBoard: message.New("right side"),
	plan.BottomBoard: message.New("bottom"), plan.TopBoard: message.New("top"),
}

// joins tells that a piece is the second of two that are alike.
func (p *Piece) joins(q *Piece) bool {
	return len(p.Each) == 1 && len(q.Each) == 1 && p.Lies == q.Lies && p.Width == q.Width && p.Height == q.Height && p.Board == q.Board
}

// carcassPiece is a board of a carcass; its board has no thickness where it is not listed.
// Where the user does not tell, the grain of what stands runs up; that of what lies, and
// of what is long and low, always runs along the width (common practice, no source).
func carcassPiece(p *plan.Plan, c *plan.Cabinet, b *plan.CarcassBoard) Piece {
	q := Piece{For: message.New("%v", c.Name), Place: c.Place, Board: p.Made(b), Count: 1}
	deep := false // it reaches from front to back
	upright := func() {
		q.Width, q.Height, deep = b.Deep(), b.Rect.Height(), true
	}
	lying := func() {
		q.Width, q.Height, q.Lies, q.Grain, deep = b.Rect.Width(), b.Deep(), true, alongWidth, true
	}
	facing := func() { // the room
		q.Grain = q.Board.Grain
		q.Width, q.Height = b.Rect.Width(), b.Rect.Height()
	}
	switch b.Kind {
	case plan.LeftSideBoard, plan.RightSideBoard:
		upright()
		q.What, q.Each = eachBoard[b.Kind], []message.Message{eachBoard[b.Kind]}
		q.MilledM3 = length.VolumeM3(b.Groove, b.Rect.Height(), b.Milled)
	case plan.BottomBoard, plan.TopBoard:
		lying()
		q.What, q.Each = eachBoard[b.Kind], []message.Message{eachBoard[b.Kind]}
		q.MilledM3 = length.VolumeM3(b.Groove, b.Rect.Width(), b.Milled)
	case plan.PartitionBoard:
		upright()
		q.What = message.New("partition")
	case plan.ShelfBoard:
		lying()
		name := p.FrontAt(b.Of).Name
		q.What = message.New("shelf under %v", name)
		if b.Over {
			q.What = message.New("shelf over %v", name)
		}
	case plan.ChannelBoard:
		facing()
		q.What, q.Grain = message.New("channel board"), alongWidth
	case plan.RailBoard:
		if b.Rect.Height() <= b.Deep() {
			lying()
		} else {
			facing()
			q.Grain = alongWidth
		}
		q.What = message.New("rail over %v", p.FrontAt(b.Of).Name)
	case plan.PackingBoard:
		q.Width, q.Height, q.Grain = b.Deep(), b.Rect.Height(), alongWidth
		q.What, q.For = message.New("packing"), message.New("%v %v", p.FrontAt(b.Of).Number, p.FrontAt(b.Of).Name)
	case plan.BackBoard:
		facing()
		q.What = message.New("back")
	case plan.PlinthBoard:
		facing()
		q.What, q.Grain = message.New("plinth board"), alongWidth
		q.For = plinthOf(p, c, b)
	case plan.EndPanelBoard:
		upright()
		q.What, q.Grain = message.New("end panel"), q.Board.Grain
	case plan.FillerBoard:
		facing()
		q.What = message.New("filler")
	default:
		return Piece{} // a worktop, of which the project knows the thickness alone
	}
	if deep && q.Grain == "" && b.Kind != plan.EndPanelBoard {
		q.Grain = cmp.Or(q.Board.Grain, "vertical")
	}
	q.CutWidth, q.CutHeight = q.Width, q.Height
	if deep {
		q.edge(boardEdges(edgesOf(&q.Board.Edging, b.Kind), q.Lies))
	}
	return q
}

// edgesOf is the word that the edging of a board has for a kind of part cut from it.
func edgesOf(e *model.Edging, kind plan.BoardKind) string {
	switch kind {
	case plan.LeftSideBoard, plan.RightSideBoard:
		return e.Sides
	case plan.BottomBoard, plan.TopBoard:
		return e.Bottoms
	case plan.PartitionBoard:
		return e.Partitions
	case plan.ShelfBoard:
		return e.Shelves
	}
	return e.EndPanels
}

// plinthOf names the cabinets that a plinth board runs under.
func plinthOf(p *plan.Plan, c *plan.Cabinet, b *plan.CarcassBoard) message.Message {
	last := c
	for i := range p.Cabinets {
		if q := &p.Cabinets[i]; q.Plinth.Intersect(b.Rect) == q.Plinth && !q.Plinth.Empty() {
			last = q
		}
	}
	if last == c {
		return message.New("%v", c.Name)
	}
	return message.New("%v to %v", c.Name, last.Name)
}

// alongWidth is the grain that runs in the direction of a piece's Width.
const alongWidth = "horizontal"
