package list

import (
	"slices"
	"strconv"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/message"
)

// boardGroup is the pieces cut from one board, equal ones together.
type boardGroup struct {
	board  model.Board
	pieces []Piece
}

// longestFor is how many letters the names of what equal pieces are for may take
// together; from there on a number stands for a front.
const longestFor = 90

// byBoard gathers pieces by thickness, material and density, in the order in
// which the boards are first needed; pieces of one kind and size become one.
func byBoard(pieces []Piece) []boardGroup {
	var all []boardGroup
	for _, p := range pieces {
		i := slices.IndexFunc(all, func(g boardGroup) bool {
			return g.board.Thickness == p.Board.Thickness && g.board.Material == p.Board.Material && g.board.Density == p.Board.Density
		})
		if i < 0 {
			i = len(all)
			all = append(all, boardGroup{board: p.Board})
		}
		g := &all[i]
		j := slices.IndexFunc(g.pieces, func(q Piece) bool {
			return q.What.String() == p.What.String() && q.Width == p.Width && q.Height == p.Height &&
				q.CutWidth == p.CutWidth && q.CutHeight == p.CutHeight && q.Board.Grain == p.Board.Grain
		})
		if j < 0 {
			g.pieces = append(g.pieces, p)
			continue
		}
		q := &g.pieces[j]
		q.Count += p.Count
		switch {
		case q.For.String() == p.For.String():
		case len(q.For.String())+len(p.For.String()) < longestFor:
			q.For = message.New("%v, %v", q.For, p.For)
		default:
			q.For = message.New("%v, %v", q.For, p.Short)
		}
	}
	return all
}

// CutList is the table of all boards to cut, grouped by board with totals.
func CutList(p *plan.Plan, say Speaker) Table { return cutTable(p, say, false) }

func cutTable(p *plan.Plan, say Speaker, forFiles bool) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	t := Table{
		Name:  "cut",
		Title: head("Cut list"),
		Intro: []string{
			say.Say(message.New("Sizes in %v. Width: across, or from front to back; height: up, or from front to back of a bottom. Where a board is lipped, the size is less by the lipping. Carcasses: sides from bottom to top, bottom and top between them, the back laid on behind. Check against your way of building before you cut.", say.Unit.Symbol())),
		},
		Columns: []Column{
			{Head: "", Weight: 0.5},
			{Head: head("Count"), Weight: 0.9, Right: true},
			{Head: head("Piece"), Weight: 2},
			{Head: head("For"), Weight: 3.4},
			{Head: head("Width"), Weight: 1.3, Right: true, Length: true},
			{Head: head("Height"), Weight: 1.3, Right: true, Length: true},
			{Head: head("Grain"), Weight: 1.4},
			{Head: "m²", Weight: 1.1, Right: true},
			{Head: "kg", Weight: 1.1, Right: true},
		},
		Notes: []string{
			head("Worktops and the sides and fronts of wooden drawers are not listed: their sizes are not in the project. Weight is that of the finished pieces; it is left out where a board has no density."),
		},
	}
	for _, g := range byBoard(Pieces(p)) {
		t.Rows = append(t.Rows, Row{Cells: []string{say.Say(boardName(g.board))}, Group: true})
		area, weight, count := 0.0, 0.0, 0
		for i := range g.pieces {
			q := &g.pieces[i]
			area, weight, count = area+q.AreaM2(), weight+q.WeightKg(), count+q.Count
			t.Rows = append(t.Rows, Row{Cells: []string{
				"□", strconv.Itoa(q.Count), say.Say(q.What), say.Say(q.For),
				say.Figure(q.CutWidth), say.Figure(q.CutHeight), say.Say(grain(q.Board.Grain)),
				fixed(say, q.AreaM2(), 3), kilograms(say, q.WeightKg()),
			}})
		}
		t.Rows = append(t.Rows, Row{Total: true, Cells: []string{
			"", strconv.Itoa(count), head("in all"), "", "", "", "", fixed(say, area, 3), kilograms(say, weight),
		}})
	}
	return t
}

func boardName(b model.Board) message.Message {
	m := message.New("Board %v", b.Thickness)
	if b.Material != "" {
		m = message.New("Board %v, %v", b.Thickness, b.Material)
	}
	if b.Lipping > 0 {
		m = message.New("%v, lipping %v deducted", m, b.Lipping)
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

func kilograms(say Speaker, v float64) string {
	if v == 0 {
		return ""
	}
	return fixed(say, v, 2)
}
