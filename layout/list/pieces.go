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
	MilledM3            float64 // what is milled out of each, in m³: a groove, a grip
	Blank               int     // number of the blank of matched fronts that it is, or is cut from; 0: none
	Matched             int     // of a blank: how many fronts are cut from it
	Grain               string  // along Width: "horizontal", along Height: "vertical", or ""
}

// Lipped tells which edges of a piece are lipped, where its board has a lipping.
type Lipped uint8

// The edges that are lipped: none of a back, a plinth board or a filler, the
// front edge of what stands or lies in the carcass, all four of a front; of a frame
// those that are the front's.
const (
	NoEdge Lipped = iota
	FrontEdge
	AllEdges
	OuterEdge        // a rail's, away from the panel
	OuterEdgeAndEnds // likewise of a stile, which runs from end to end
)

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
	return float64(p.Count) * (length.AreaM2(p.Width, p.Height)*p.Board.Thickness.MM()/1000 - p.MilledM3) * p.Board.Density
}

// Pieces lists every board of the job: fronts, drawer bottoms and backs, and the
// carcasses. Carcasses are taken as follows: the sides run from bottom to top,
// bottom and top stand between them, the back is laid on behind all, and a
// plinth board runs the width of its cabinet. Worktops and the sides of wooden
// drawers are not listed: their sizes are not in the project.
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
	for i := range p.Fronts {
		all = appendDrawer(all, &p.Fronts[i])
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
	if f.Kind == model.FixedPanel {
		what = message.New("fixed panel")
	}
	milled := 0.0
	for i := range f.Zones {
		if z := &f.Zones[i]; z.Part == plan.GripPart {
			milled = volumeM3(z.Rect.Width(), z.Rect.Height(), b.Thickness-z.Thickness)
		}
	}
	return append(all, Piece{
		What: what, For: message.New("%v %v", f.Number, f.Name), Front: f.Number, MilledM3: milled, Place: f.Place, Board: b, Count: 1, Lipped: AllEdges, Grain: b.Grain,
		Width: f.Face.Width(), Height: f.Face.Height(),
		CutWidth: f.Face.Width() - 2*b.Lipping, CutHeight: f.Face.Height() - 2*b.Lipping,
	})
}

func volumeM3(w, h, thick length.Length) float64 { return length.AreaM2(w, h) * thick.MM() / 1000 }

// appendFrame adds the parts of a frame front. Stiles run from edge to edge, rails
// between them: their size is as seen, and the cut size of a rail is more by its tenons.
// The panel reaches to the bottom of the groove.
func appendFrame(all []Piece, f *plan.Front) []Piece {
	owner := message.New("%v %v", f.Number, f.Name)
	panel := f.Zones[len(f.Zones)-1]
	lip, groove := f.Made.Lipping, panel.Rect.Min.X-panel.Whole.Min.X
	for i := range f.Zones {
		z := &f.Zones[i]
		board := z.Of(f)
		q := Piece{
			For: owner, Front: f.Number, Place: f.Place, Board: board, Grain: board.Grain, Count: 1,
			Width: z.Rect.Width(), Height: z.Rect.Height(), CutWidth: z.Whole.Width(), CutHeight: z.Whole.Height(),
		}
		switch z.Part {
		case plan.LeftStile, plan.RightStile:
			q.What, q.Lipped = message.New("stile"), OuterEdgeAndEnds
			q.CutWidth, q.CutHeight = q.CutWidth-lip, q.CutHeight-2*lip
			q.MilledM3 = volumeM3(groove, panel.Whole.Height(), panel.Thickness)
		case plan.TopRail, plan.BottomRail:
			q.What, q.Lipped = message.New("top rail"), OuterEdge
			if z.Part == plan.BottomRail {
				q.What = message.New("bottom rail")
			}
			q.CutHeight -= lip
			q.MilledM3 = volumeM3(z.Rect.Width(), groove, panel.Thickness)
		case plan.PanelPart:
			q.What = message.New("panel")
			q.Width, q.Height = q.CutWidth, q.CutHeight
		}
		all = append(all, q)
	}
	return all
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
				depth -= c.Fronts
			}
			add(what, board, s.Rect.Width(), depth, s.Rect.Width(), depth-board.Lipping, FrontEdge, 1).lying()
		}
	}
	for j := range c.Bays {
		for _, h := range c.Bays[j].Channels {
			if h.Far > h.Near {
				add(message.New("channel board"), board, h.Rect.Width(), h.Rect.Height(), h.Rect.Width(), h.Rect.Height(), NoEdge, 1).Grain = alongWidth
			}
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
			// sees their edges (common practice, no source); behind those that cover
			// it, with the carcass.
			depth := c.Depth + back.Thickness
			if c.Mount == model.Overlay && !c.Covers(b) {
				depth += c.Fronts
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
