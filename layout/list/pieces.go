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
// up. CutWidth and CutHeight are less by the lipping where the board has one.
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
	Lipped              Lipped
	Grain               string // along Width: "horizontal", along Height: "vertical", or ""
}

// Lipped tells which edges of a piece are lipped, where its board has a lipping.
type Lipped uint8

// The edges that are lipped: none of a back, a plinth board or a filler, the
// front edge of what stands or lies in the carcass, all four of a front.
const (
	NoEdge Lipped = iota
	FrontEdge
	AllEdges
)

// AreaM2 is the area to cut of all its pieces, in square metres.
func (p *Piece) AreaM2() float64 {
	return float64(p.Count) * length.AreaM2(p.CutWidth, p.CutHeight)
}

// WeightKg is the weight of all its finished pieces, in kg: size × thickness ×
// density; 0 where the board has no density.
func (p *Piece) WeightKg() float64 {
	return float64(p.Count) * length.AreaM2(p.Width, p.Height) * p.Board.Thickness.MM() / 1000 * p.Board.Density
}

// Pieces lists every board of the job: fronts, drawer bottoms and backs, and the
// carcasses. Carcasses are taken as follows: the sides run from bottom to top,
// bottom and top stand between them, the back is laid on behind all, and a
// plinth board runs the width of its cabinet. Worktops and the sides of wooden
// drawers are not listed: their sizes are not in the project.
func Pieces(p *plan.Plan) []Piece {
	var all []Piece
	for i := range p.Fronts {
		all = appendFront(all, p, &p.Fronts[i])
	}
	for i := range p.Fronts {
		all = appendDrawer(all, &p.Fronts[i])
	}
	for i := range p.Cabinets {
		all = appendCarcass(all, p, i)
	}
	return all
}

func appendFront(all []Piece, p *plan.Plan, f *plan.Front) []Piece {
	if f.Kind == model.OpenNiche {
		return all
	}
	b := p.Project.Boards.Front
	b.Thickness = f.Thickness
	what := message.New("front")
	if f.Kind == model.FixedPanel {
		what = message.New("fixed panel")
	}
	return append(all, Piece{
		What: what, For: message.New("%v %v", f.Number, f.Name), Front: f.Number, Place: f.Place, Board: b, Count: 1, Lipped: AllEdges, Grain: b.Grain,
		Width: f.Face.Width(), Height: f.Face.Height(),
		CutWidth: f.Face.Width() - 2*b.Lipping, CutHeight: f.Face.Height() - 2*b.Lipping,
	})
}

func appendDrawer(all []Piece, f *plan.Front) []Piece {
	if !f.Fitted || f.Runner.Length <= 0 {
		return all
	}
	owner := message.New("%v %v", f.Number, f.Name)
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

// appendCarcass adds the boards of one cabinet. Lippings of carcass boards are
// glued to the front edge only, so they shorten the depth once.
func appendCarcass(all []Piece, p *plan.Plan, i int) []Piece {
	c := &p.Cabinets[i]
	board, t := p.Project.Boards.Carcass, p.Project.Boards.Carcass.Thickness
	owner := message.New("%v", c.Name)
	add := func(what message.Message, b model.Board, w, h, cutW, cutH length.Length, lip Lipped, n int) *Piece {
		if w <= 0 || h <= 0 || n <= 0 || b.Thickness <= 0 {
			return &Piece{} // such as the back of a carcass that has none
		}
		all = append(all, Piece{
			What: what, For: owner, Place: c.Place, Board: b, Grain: b.Grain,
			Width: w, Height: h, CutWidth: cutW, CutHeight: cutH, Count: n, Lipped: lip,
		})
		return &all[len(all)-1]
	}
	// Where the user does not tell, the grain of what stands runs up; that of what
	// lies, and of the plinth, always runs along the width (common practice, no
	// source).
	standing := cmp.Or(board.Grain, "vertical")
	lipped := c.Depth - board.Lipping
	inside := c.Outline.Width() - 2*t
	add(message.New("side"), board, c.Depth, c.Outline.Height(), lipped, c.Outline.Height(), FrontEdge, 2).
		standing(standing, message.New("left side"), message.New("right side"))
	add(message.New("bottom, top"), board, inside, c.Depth, inside, lipped, FrontEdge, 2).
		lying(message.New("bottom"), message.New("top"))
	for _, r := range c.Partitions {
		thick := board
		thick.Thickness = r.Width()
		add(message.New("partition"), thick, c.Depth, r.Height(), lipped, r.Height(), FrontEdge, 1).standing(standing)
	}
	for j := range c.Bays {
		for _, s := range c.Bays[j].Shelves {
			what := message.New("shelf under %v", p.Fronts[c.Bays[j].First+s.Of.Front].Name)
			if s.Over {
				what = message.New("shelf over %v", p.Fronts[c.Bays[j].First+s.Of.Front].Name)
			}
			depth := c.Depth
			if c.Mount == model.Inset { // behind the fronts
				depth -= p.Project.Boards.Front.Thickness
			}
			add(what, board, s.Rect.Width(), depth, s.Rect.Width(), depth-board.Lipping, FrontEdge, 1).lying()
		}
	}
	back := p.Project.Boards.Back
	add(message.New("back"), back, c.Outline.Width(), c.Outline.Height(), c.Outline.Width(), c.Outline.Height(), NoEdge, 1)
	add(message.New("plinth board"), board, c.Plinth.Width(), c.Plinth.Height(), c.Plinth.Width(), c.Plinth.Height(), NoEdge, 1).Grain = alongWidth
	for _, b := range c.Beside {
		front := p.Project.Boards.Front
		switch b.Kind {
		case plan.EndPanelBoard:
			// Beside overlay fronts it ends level with their faces, so that nobody
			// sees their edges (common practice, no source).
			depth := c.Depth + back.Thickness
			if c.Mount == model.Overlay {
				depth += front.Thickness
			}
			front.Thickness = b.Rect.Width()
			add(message.New("end panel"), front, depth, b.Rect.Height(), depth-front.Lipping, b.Rect.Height(), FrontEdge, 1)
		case plan.FillerBoard:
			add(message.New("filler"), front, b.Rect.Width(), b.Rect.Height(), b.Rect.Width(), b.Rect.Height(), NoEdge, 1)
		}
	}
	return all
}

// alongWidth is the grain that runs in the direction of a piece's Width.
const alongWidth = "horizontal"

// standing says which way the grain of a piece runs that stands, and what each of
// several is.
func (p *Piece) standing(grain string, each ...message.Message) { p.Grain, p.Each = grain, each }

// lying says that a piece lies, and what each of several is.
func (p *Piece) lying(each ...message.Message) { p.Lies, p.Grain, p.Each = true, alongWidth, each }
