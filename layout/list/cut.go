package list

import (
	"slices"
	"strconv"
	"strings"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// CutList is the table of all boards to cut, grouped by board with totals.
func CutList(p *plan.Plan, say Speaker) Table { return cutTable(p, say, false) }

func cutTable(p *plan.Plan, say Speaker, forFiles bool) Table {
	groups := byBoard(Pieces(p))
	withLipping := forFiles || slices.ContainsFunc(groups, func(g boardGroup) bool {
		return slices.ContainsFunc(g.pieces, func(q equalPieces) bool { return q.Board.Lipping > 0 })
	})
	t := cutHead(say, withLipping)
	add := func(r Row) {
		if !withLipping && !r.Group {
			r.Cells = slices.Delete(r.Cells, lippingColumn, lippingColumn+2)
		}
		t.Rows = append(t.Rows, r)
	}
	for _, g := range groups {
		add(Row{Cells: []string{say.Say(BoardName(g.board))}, Group: true})
		area, heavy, count := 0.0, 0.0, 0
		for i := range g.pieces {
			q := &g.pieces[i]
			area, heavy = area+q.AreaM2(), heavy+q.WeightKg()
			if q.Matched == 0 {
				count += q.Count
			}
			cells := []string{
				"□", strconv.Itoa(q.Count), say.Say(q.What), q.sayFor(say),
				say.Figure(q.CutWidth), say.Figure(q.CutHeight), say.Say(grain(q.Grain)), say.Say(lippedEdges(&q.Piece)), q.finished(say),
				message.SquareMetres(q.AreaM2()).Figure(say, 3), weight(say, q.WeightKg()),
			}
			if q.Blank > 0 && q.Matched == 0 {
				cells[9] = "" // its blank has it
			}
			add(Row{Cells: cells})
		}
		add(Row{Total: true, Cells: []string{
			"", strconv.Itoa(count), say.Say(message.New("in all")), "", "", "", "", "", "", message.SquareMetres(area).Figure(say, 3), weight(say, heavy),
		}})
	}
	if slices.ContainsFunc(p.Cabinets, func(c plan.Cabinet) bool { return c.Back.Depth > 0 }) {
		t.Intro = append(t.Intro, say.Say(message.New("Backs in rebates or grooves are listed with what lies in those; sides, bottom and top of these cabinets are as deep as the cabinet.")))
	}
	for _, r := range withoutRunner(p, say) {
		add(r)
	}
	if slices.ContainsFunc(p.Fronts, func(f plan.Front) bool { return f.Made.Build.Kind == model.Frame && f.Kind != model.OpenNiche }) {
		t.Notes = append(t.Notes, say.Say(message.New("Frames: rails are listed with their tenons, panels to the bottom of the groove. Take off the panel what solid wood needs to move, and what your glue needs.")))
	}
	return t
}

// lippingColumn is the place of the column of lipped edges, before that of finished
// sizes; both are left out where no board has a lipping.
const lippingColumn = 7

// cutHead is the cut list without its rows.
func cutHead(say Speaker, withLipping bool) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	t := Table{
		Name:  "cut",
		Title: head("Cut list"),
		Intro: []string{
			say.Say(message.New("Sizes in %v. Width: across, or from front to back; height: up, or from front to back of a bottom. Carcasses: sides from bottom to top, bottom and top between them, the back laid on behind. Check against your way of building before you cut.", UnitWord(say.Unit))),
			head("Grain along width: it runs in the direction of the figure under Width; along height likewise. Bottom, top, shelves and plinth run along their width, sides and partitions up where no grain is given for the board; it does not matter for a board without grain."),
		},
		Columns: []Column{
			{Head: "", Weight: 0.5},
			{Head: head("Count"), Weight: 0.9, Right: true},
			{Head: head("Piece"), Weight: 2},
			{Head: head("For"), Weight: 2.8},
			{Head: head("Width"), Weight: 1.3, Right: true, Length: true},
			{Head: head("Height"), Weight: 1.3, Right: true, Length: true},
			{Head: head("Grain"), Weight: 1.7},
			{Head: head("Lipped"), Weight: 2},
			{Head: head("Finished"), Weight: 1.9, Right: true},
			{Head: say.AreaUnit(), Weight: 1.1, Right: true},
			{Head: say.WeightUnit(), Weight: 1.1, Right: true},
		},
		Notes: []string{
			head("Worktops are not listed, nor the sides and inner fronts of wooden boxes whose figures the hardware sheet does not have. Weight is that of the finished pieces; it is left out where a board has no density."),
		},
	}
	if !withLipping {
		t.Columns = slices.Delete(t.Columns, lippingColumn, lippingColumn+2)
		t.Columns[3].Weight += 1.4 // names are what wraps most
		return t
	}
	t.Intro = append(t.Intro, head("Lipped: the edges named get a lipping, and the sizes listed are less by it; finished: the size with it."))
	return t
}

// withoutRunner names the drawers whose bottoms and backs can't be listed.
func withoutRunner(p *plan.Plan, say Speaker) []Row {
	var rows []Row
	for f := range p.Drawers() {
		if f.Runner.Length > 0 {
			continue
		}
		if rows == nil {
			rows = append(rows, Row{Group: true, Cells: []string{say.Say(message.New("Drawers without a size: %v", NoRunner()))}})
		}
		what := say.Say(message.New("drawer bottom, drawer back"))
		rows = append(rows, Row{Cells: []string{"", "", what, say.Say(f.Called()), "", "", "", "", "", "", ""}})
	}
	return rows
}

// BoardName says what a board is: its thickness, material and lipping.
func BoardName(b model.Board) message.Message {
	m := message.New("Board %v", b.Thickness)
	if b.Material != "" {
		m = message.New("Board %v, %v", b.Thickness, b.Material)
	}
	if b.Lipping > 0 {
		m = message.New("%v, lipping %v", m, b.Lipping)
	}
	return m
}

func grain(g string) message.Message {
	switch g {
	case "horizontal":
		return message.New("along width")
	case "vertical":
		return message.New("along height")
	}
	return message.Message{}
}

// fixed writes a number with a fixed count of decimals and the user's sign.
func fixed(say Speaker, v float64, decimals int) string {
	s := strconv.FormatFloat(v, 'f', decimals, 64)
	if say.Comma {
		return comma(s)
	}
	return s
}

func comma(s string) string {
	b := []byte(s)
	if i := slices.Index(b, '.'); i >= 0 {
		b[i] = ','
	}
	return string(b)
}

// weight is a weight in kg as a figure of its column; empty where it is not known.
func weight(say Speaker, kg float64) string {
	if kg == 0 {
		return ""
	}
	return message.Kilograms(kg).Figure(say, 2)
}

// boardGroup is the pieces cut from one board, equal ones together.
type boardGroup struct {
	board  model.Board
	pieces []equalPieces
}

// equalPieces are pieces of one kind and size, with what each is for.
type equalPieces struct {
	Piece
	owners []Piece
}

// longestFor is how many letters the names of what equal pieces are for may take
// together; where that is more, all of them are told by their numbers alone.
const longestFor = 90

// byBoard gathers pieces by thickness, lipping, material and density, in the order in
// which the boards are first needed; pieces of one kind and size become one.
func byBoard(pieces []Piece) []boardGroup {
	type board struct {
		thickness, lipping length.Length
		material           string
		density            float64
	}
	type size struct {
		board                              int
		what                               string
		width, height, cutWidth, cutHeight length.Length
		grain                              string
		edged                              Edged
	}
	var all []boardGroup
	boards, equal := map[board]int{}, map[size]int{}
	for _, p := range pieces {
		b := board{p.Board.Thickness, p.Board.Lipping, p.Board.Material, p.Board.Density}
		i, ok := boards[b]
		if !ok {
			i = len(all)
			boards[b] = i
			all = append(all, boardGroup{board: p.Board})
		}
		g := &all[i]
		s := size{i, p.What.String(), p.Width, p.Height, p.CutWidth, p.CutHeight, p.Grain, p.Edged}
		j, ok := equal[s]
		if !ok {
			equal[s] = len(g.pieces)
			g.pieces = append(g.pieces, equalPieces{p, []Piece{p}})
			continue
		}
		q := &g.pieces[j]
		q.Count += p.Count
		q.owners = append(q.owners, p)
	}
	return all
}

// sayFor says what equal pieces are for: fronts by number and name or, where
// that would be too long, all by number; cabinets by name.
func (q *equalPieces) sayFor(say Speaker) string {
	var names, numbers []string
	long := 0
	told := map[string]bool{}
	for _, o := range q.owners {
		name := say.Say(o.For)
		if told[name] {
			continue
		}
		told[name] = true
		names, numbers = append(names, name), append(numbers, strconv.Itoa(o.Front))
		long += len([]rune(name)) + 2
	}
	if long > longestFor && q.Front > 0 {
		return say.Say(message.New("fronts %v", strings.Join(numbers, ", ")))
	}
	return strings.Join(names, ", ")
}

// EqualFronts are fronts, or parts of frames, that are cut to one size from one board.
type EqualFronts struct {
	Board         message.Message
	What          message.Message // the part of a frame, with how many; empty: a whole front
	Numbers       []int
	Width, Height length.Length // to cut, less by the lipping
	Grain         string        // as a Piece has it
}

// FrontsToCut are the fronts of a plan, equal ones together.
func FrontsToCut(p *plan.Plan) []EqualFronts {
	var pieces []Piece
	for i := range p.Fronts {
		pieces = appendFront(pieces, &p.Fronts[i])
	}
	var all []EqualFronts
	for _, g := range byBoard(pieces) {
		for _, q := range g.pieces {
			e := EqualFronts{Board: BoardName(g.board), Width: q.CutWidth, Height: q.CutHeight, Grain: q.Grain}
			if q.Framed {
				e.What = message.New("%v × %v", q.Count, q.What)
			}
			for _, o := range q.owners {
				if !slices.Contains(e.Numbers, o.Front) {
					e.Numbers = append(e.Numbers, o.Front)
				}
			}
			all = append(all, e)
		}
	}
	return all
}
