package figure

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// The greatest sizes: of anything in a project, of parts and hardware, and of what
// is as thick as a board. They are far outside of any cabinet and only keep slips of
// the keyboard out.
const (
	maxSize    = 20 * length.Metre
	maxFitting = 2 * length.Metre
	maxBoard   = 200 * length.Millimetre
)

// Limits on counts. A run that is larger is not one job.
const (
	maxCabinets = 200
	maxBays     = 100
	maxFronts   = 10_000
	maxInner    = 20
	maxParts    = 100 // of a hardware sheet, in each of its lists
	maxBoards   = 50  // that fronts can be made of
)

// MostSheets is how many hardware sheets a project can use, MostSizes how many
// sizes a list of them has, and MostName and MostText how many characters a name on
// one line and notes.
const (
	MostSheets = 50
	MostSizes  = 100
	MostName   = 200
	MostText   = 20_000
)

// The newest format versions, which are the ones written.
const (
	ProjectVersion = 2
	SheetVersion   = 1
)

// Project are the rows of a project file; limits are those of the rules of the check, which a
// project can set.
func Project(p *model.Project, limits []model.Limit) []Row {
	return []Row{
		version("frontlay", ProjectVersion),
		line("title", "Title", "What the job is called.", &p.Title),
		line("number", "Number", "The job's or drawing's number; it is printed on every page.", &p.Number),
		line("client", "Client", "Who the job is for; it is printed in title blocks.", &p.Client),
		line("drawn_by", "Drawn by", "Who planned it; it is printed in title blocks.", &p.DrawnBy),
		line("revision", "Revision", "Which state of the drawing it is, such as B; it is printed on every page.", &p.Revision),
		unit(&p.Unit),
		notes("notes", "Notes", "Anything worth remembering; it is printed with the job.", &p.Notes),
		group("rounding", "", "How computed front heights are rounded.", Rounding(&p.Rounding)),
		{Key: "hardware", Doc: message.New("Hardware sheets by the name that bays use: a sample that ships, a path beside this file, or the sheet itself. The first is used where a bay names none."), Value: &Sheets{&p.Hardware}},
		group("boards", "", "The sheet goods.", Boards(&p.Boards)).needed(),
		line("board", "Front board", "Name of the board of all fronts in boards.fronts; boards.front where it is left out.", &p.Board),
		group("reveals", "Reveals", "The visible gaps.", Reveals(&p.Reveals)),
		flag("shared_gaps", "One gap between cabinets", "Whether fronts of neighbouring cabinets keep one gap between them instead of both edge reveals.", &p.SharedGaps),
		flag("one_plinth", "One plinth through the run", "Whether one plinth board runs under cabinets that stand side by side with plinths that are alike.", &p.OnePlinth),
		group("hole_rows", "Hole rows", "The rows of holes in the carcass sides.", HoleRows(&p.HoleRows)),
		matched(&p.Matched),
		handle("Holes for the handles of all drawers, drilled from the face; left out, only those have any whose cabinet or front says so.", &p.Handle),
		measured("niche", "Niche as measured", "What the tape says of the niche that the whole run stands in, from its floor up; left out where it stands in none. It changes no size of the plan: what follows from it is told.", &p.Niche),
		number("tipping_load", "Load on an open drawer", "kg", "What is laid on the edge of the worst drawer when it is worked out whether a cabinet that stands free tips, in kg; 27.2 where it is left out.", &p.TippingLoad, 0.1, 1000),
		group("saw", "Saw", "How stock sheets are cut.", Saw(&p.Saw)),
		group("climate", "Room climate", "The air where the furniture will stand, in the driest and in the dampest season, and where it is built: with it the change of solid wood through the year is worked out.", Climate(&p.Climate)),
		part("process", "How exact", "How exactly the pieces come out of the workshop: with it the spread of every gap is worked out. Each size is a ±: of twenty pieces nineteen are off by no more.", &p.Process, Process),
		list("species", "Species", "Species of wood with coefficients of your own; they count before those of the same name that the program knows.", &p.Species, maxBoards, true, func(s *model.Species) string { return s.Name }, Species),
		group("checks", "", "Settings of the check.", Checks(&p.Checks, limits)),
		list("cabinets", "", "The cabinets of the run, left to right.", &p.Cabinets, maxCabinets, false, func(c *model.Cabinet) string { return c.Name }, Cabinet).needed(),
	}
}

// Of are the rows of the thing at a place of a project: a front, a bay, a cabinet,
// or the project itself (model.Whole), without limits of the check; nil where
// there is none.
func Of(p *model.Project, at model.Place) []Row {
	switch {
	case at.Cabinet < 0:
		return Project(p, nil)
	case at.Bay < 0 && p.CabinetAt(at) != nil:
		return Cabinet(p.CabinetAt(at))
	case at.Bay >= 0 && at.Front < 0 && p.BayAt(at) != nil:
		return Bay(p.BayAt(at))
	case at.Bay >= 0 && p.FrontAt(at) != nil:
		return Front(p.FrontAt(at))
	}
	return nil
}

// Like are the rows of an empty thing of the kind that a place is for.
func Like(at model.Place) []Row {
	switch {
	case at.Cabinet < 0:
		return Project(new(model.Project), nil)
	case at.Bay < 0:
		return Cabinet(new(model.Cabinet))
	case at.Front < 0:
		return Bay(new(model.Bay))
	}
	return Front(new(model.Front))
}

// Rounding are the rows of how computed heights are rounded.
func Rounding(r *model.Rounding) []Row {
	return []Row{
		size("step", "Rounded to", "Heights are whole multiples of this; left out, of 1 mm, or of 1/32 in in a project in inches.", &r.Step, Positive, 100*length.Millimetre),
		choice("rest", "Odd rest goes to", "Which of a stack's fronts without a height of their own takes the odd rest, the lowest or the highest.", &r.Rest, "bottom", "top"),
	}
}

// HoleRows are those of the rows of holes in the carcass sides.
func HoleRows(h *model.HoleRows) []Row {
	return []Row{
		choice("mode", "Runners", "Whether runners fall on rows: free pays no heed to them, move_runners moves runners up to the next row, move_fronts chooses front heights with the least change.", &h.Mode, "free", "move_runners", "move_fronts"),
		size("pitch", "Pitch", "From row to row; 32 mm where it is left out.", &h.Pitch, Positive, maxFitting),
		size("datum", "First row at", "From the carcass's lower edge up to the first row.", &h.Datum, 0, maxFitting),
		size("setback", "Setback", "From the carcass's front edge back to the row of holes; where it is left out 37 mm, counted from behind the fronts where these are inset.", &h.Setback, Positive, maxFitting),
	}
}

// Boards are those of the sheet goods.
func Boards(b *model.Boards) []Row {
	return []Row{
		group("carcass", "Carcass board", "The board of sides, bottoms, tops and partitions.", carcassBoard(&b.Carcass)).needed(),
		group("front", "Front board", "The board of the fronts.", plainBoard(&b.Front)).needed(),
		group("back", "Back board", "The board of the cabinet backs; left out where there are none.", Board(&b.Back)),
		list("fronts", "", "Further boards of fronts, each with a name that board chooses it by, and how fronts are built of it.", &b.Fronts, maxBoards, true, func(b *model.FrontBoard) string { return b.Name }, FrontBoard),
	}
}

func carcassBoard(b *model.Board) []Row {
	e := &b.Edging
	return edged(b,
		edges("sides", "Sides", &e.Sides), edges("bottoms", "Bottom and top", &e.Bottoms),
		edges("partitions", "Partitions", &e.Partitions), edges("shelves", "Shelves", &e.Shelves))
}

func plainBoard(b *model.Board) []Row {
	return edged(b, fronts(&b.Edging), edges("end_panels", "End panels", &b.Edging.EndPanels))
}

// edged are the rows of a board with which of its parts' edges get its edging.
func edged(b *model.Board, parts ...Row) []Row {
	price := number("price", "Price of edging", "per m", "Price of a metre of edging, in your money; left out where it is not wanted.", &b.Edging.Price, 0, 1_000_000)
	return append(Board(b), group("edging", "Edging", "Which edges get the lipping, and what it costs.", append(parts, price)))
}

// fronts are the edges of fronts.
func fronts(e *model.Edging) Row {
	return word("fronts", "Edges of fronts", "Which edges of a front get the lipping; all four where it is left out.", &e.Fronts, model.EdgeAll, model.EdgeSides, model.EdgeTopBottom, model.EdgeTop, model.EdgeNone)
}

// edges are those of a kind of board in the carcass.
func edges(key, name string, at *string) Row {
	return word(key, name, "Which edges of these boards get the lipping; the front edge where it is left out.", at, model.EdgeFront, model.EdgeFrontBack, model.EdgeFrontEnds, model.EdgeAll, model.EdgeNone)
}

// FrontBoard are those of a named board of fronts.
func FrontBoard(b *model.FrontBoard) []Row {
	name := line("name", "Name", "What board chooses it by; front is the name of boards.front.", &b.Name).needed()
	return append(append([]Row{name}, edged(&b.Board, fronts(&b.Edging))...), group("build", "Build", "How fronts are built of it.", Build(&b.Build)))
}

// Build are those of how a front is built of its board.
func Build(b *model.Build) []Row {
	return []Row{
		choice("kind", "Build", "The board as it is; a frame of stiles and rails around a panel; or the board with a grip, thinned from behind along an edge.", &b.Kind, "slab", "frame", "grip"),
		size("stile", "Stiles", "Width of a frame's stiles, which run from its lower to its upper edge; 60 mm where it is left out.", &b.Stile, Positive, maxFitting),
		size("top_rail", "Top rail", "Width of a frame's top rail, between the stiles; that of the stiles where it is left out.", &b.TopRail, Positive, maxFitting),
		size("bottom_rail", "Bottom rail", "Width of a frame's bottom rail; that of the stiles where it is left out.", &b.BottomRail, Positive, maxFitting),
		size("tenon", "Tenons of the rails", "How far a frame's rails reach into the stiles at each end; left out where they are butted.", &b.Tenon, 0, maxBoard),
		group("panel", "Panel", "The panel in a frame; what it has not been given of density, material and grain is the frame's.", Panel(&b.Panel)),
		choice("edge", "Grip along", "The edge that has the grip.", &b.Edge, "top", "bottom"),
		size("height", "Height of the grip", "Height of the strip that is thinned, from the edge; 30 mm where it is left out.", &b.Height, Positive, maxFitting),
		size("thickness_left", "Thickness left in the grip", "What is left of the board's thickness in the grip, at the face; half of it where it is left out.", &b.Left, Positive, maxBoard),
	}
}

// Panel are those of the panel in a frame.
func Panel(p *model.Panel) []Row {
	rows := []Row{
		size("thickness", "Thickness", "Thickness of the panel, and of the groove that it sits in; 8 mm where it is left out.", &p.Thickness, Positive, maxBoard),
		size("recess", "Set in by", "How far the panel's rear face lies back from the frame's, towards the room.", &p.Recess, 0, maxBoard),
		size("groove", "Groove", "Depth of the groove, and how far the panel reaches into the frame on each side; 10 mm where it is left out.", &p.Groove, Positive, maxBoard),
		size("room", "Room in the groove", "How far the panel keeps from the bottom of the groove, on each side, so that solid wood can swell; it is cut smaller by twice that.", &p.Room, 0, maxBoard),
	}
	for _, r := range Board(&p.Board) {
		if r.Key != "thickness" && r.Key != "lipping" {
			rows = append(rows, r)
		}
	}
	return rows
}

// Board are those of one board.
func Board(b *model.Board) []Row {
	return []Row{
		size("thickness", "Thickness", "Thickness of the board.", &b.Thickness, Positive, maxBoard).needed(),
		size("lipping", "Lipping", "Thickness of a lipping or edging: on all four edges of fronts, on the front edge of carcass boards, or on the edges that edging names; the cut size is less by it.", &b.Lipping, 0, 100*length.Millimetre),
		number("density", "Density", "kg/m³", "Weight in kg for a cubic metre; left out where it is not known.", &b.Density, 1, 25_000),
		line("material", "Material", "What the board is made of.", &b.Material),
		word("grain", "Grain", "Which way the grain runs, as the panel hangs.", &b.Grain, "horizontal", "vertical"),
		speciesOf(&b.Species),
		choice("sawn", "Sawn", "How the solid wood was cut from the log: flat, so that the year rings lie along its width, or quarter, so that they stand across it and it moves about half as much.", &b.Sawn, "flat", "quarter"),
		group("stock", "Stock sheet", "The size in which the board is bought; with it parts are laid on sheets.", Stock(&b.Stock)),
		number("price", "Price", "per m²", "Price of a square metre of stock sheet, in your money; left out where it is not wanted.", &b.Price, 0, 1_000_000),
	}
}

// Stock are those of the size in which a board is bought.
func Stock(s *model.Stock) []Row {
	return []Row{
		size("length", "Length", "Along the grain.", &s.Length, Positive, maxSize),
		size("width", "Width", "Across the grain.", &s.Width, Positive, maxSize),
		flag("plain", "No grain", "Whether the board has no grain, so that parts may lie either way.", &s.Plain),
	}
}

// Saw are those of how stock sheets are cut.
func Saw(s *model.Saw) []Row {
	return []Row{
		size("kerf", "Kerf", "What a cut turns to dust: the width of the saw's teeth.", &s.Kerf, 0, 100*length.Millimetre),
		size("trim", "Trim", "What is cut off each edge of a stock sheet before anything else.", &s.Trim, 0, maxBoard),
	}
}

// Reveals are those of the visible gaps, of the project or of one cabinet.
func Reveals(r *model.Reveals) []Row {
	most := length.Metre
	return []Row{
		size("left", "Left", "Visible gap at the left edge: from the carcass's outline inwards, for inset fronts from the opening inwards. Below zero: how far overlay fronts reach past the outline, over an end panel.", &r.Left, -most, most),
		size("right", "Right", "The same at the right edge.", &r.Right, -most, most),
		size("top", "Top", "The same at the top edge.", &r.Top, -most, most),
		size("bottom", "Bottom", "The same at the bottom edge; below zero, the lowest fronts hang below the carcass, as a grip.", &r.Bottom, -most, most),
		size("gap", "Between fronts", "Visible gap between two fronts.", &r.Gap, 0, most),
	}
}
