package list

import (
	"strconv"

	"frontlay/layout/cutting"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// StockPlan says how the pieces of one board are cut from the sheets in which it is
// bought. Of tells for each part of the laying which row it is of: rows are the
// pieces as the cut list has them, equal ones as one.
type StockPlan struct {
	Board  model.Board
	Parts  []cutting.Part
	Of     []int
	Laying cutting.Plan
	rows   []equalPieces
}

// Rows is how many rows there are.
func (s *StockPlan) Rows() int { return len(s.rows) }

// SayRow says what the pieces of a row are and what for.
func (s *StockPlan) SayRow(row int, say Speaker) string {
	whose := s.rows[row].sayFor(say)
	if whose == "" {
		return say.Say(s.rows[row].What)
	}
	return say.Say(message.New("%v, %v", s.rows[row].What, whose))
}

// StockPlans lays the pieces of every board whose stock sheet is given, in the order
// of the cut list. That is a search: whoever needs it for several lists does it once. A part's grain runs along the sheet's where the piece has one and
// the board is not plain.
func StockPlans(p *plan.Plan) []StockPlan {
	var all []StockPlan
	for _, g := range byBoard(Pieces(p)) {
		b := g.board
		if b.Stock.Length <= 0 || b.Stock.Width <= 0 {
			continue
		}
		s := StockPlan{Board: b, rows: g.pieces}
		for row := range g.pieces {
			q := &g.pieces[row]
			if q.Blank > 0 && q.Matched == 0 {
				continue // its blank is laid
			}
			part := cutting.Part{Along: q.CutWidth, Across: q.CutHeight, Turns: b.Stock.Plain || q.Grain == ""}
			if q.Grain == "vertical" && !b.Stock.Plain {
				part.Along, part.Across = part.Across, part.Along
			}
			for range q.Count {
				s.Parts, s.Of = append(s.Parts, part), append(s.Of, row)
			}
		}
		s.Laying = cutting.Lay(s.Parts, cutting.Stock{
			Length: b.Stock.Length, Width: b.Stock.Width, Kerf: p.Project.Saw.Kerf, Trim: p.Project.Saw.Trim,
		})
		all = append(all, s)
	}
	return all
}

// AreaM2 is the area of all its whole sheets, in square metres, and how much of
// that becomes parts.
func (s *StockPlan) AreaM2() (bought, used float64) {
	for _, sheet := range s.Laying.Sheets {
		bought += length.AreaM2(s.Board.Stock.Length, s.Board.Stock.Width)
		for _, q := range sheet.Parts(s.Parts) {
			used += length.AreaM2(q.Area.Width(), q.Area.Height())
		}
	}
	return bought, used
}

// Name is the board's with the size of its sheets.
func (s *StockPlan) Name() message.Message {
	return message.New("%v, sheets %v × %v", BoardName(s.Board), s.Board.Stock.Length, s.Board.Stock.Width)
}

// StockList is the table of the sheets to buy: of each board how many, what of them
// becomes parts, what they cost where the board has a price. It has no rows where no
// board has the size of its stock sheets.
func StockList(stock []StockPlan, say Speaker) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	t := Table{
		Name:  "stock",
		Title: head("Sheets to buy"),
		Intro: []string{
			head("Whole sheets, as many as the cutting plan needs. Prices are those typed for the boards, for whole sheets, without anything that was not typed."),
		},
		Columns: []Column{
			{Head: "", Weight: 0.5},
			{Head: head("Board"), Weight: 5},
			{Head: head("Sheets"), Weight: 1.2, Right: true},
			{Head: head("Parts"), Weight: 1.2, Right: true},
			{Head: say.AreaUnit(), Weight: 1.4, Right: true},
			{Head: head("Used"), Weight: 1.2, Right: true},
			{Head: head("Price"), Weight: 1.6, Right: true},
		},
	}
	sum, priced := 0.0, 0
	for _, s := range stock {
		bought, used := s.AreaM2()
		price, share := "", ""
		if s.Board.Price > 0 {
			sum, priced = sum+bought*s.Board.Price, priced+1
			price = fixed(say, bought*s.Board.Price, 2)
		}
		if bought > 0 {
			share = fixed(say, 100*used/bought, 0) + " %"
		}
		t.Rows = append(t.Rows, Row{Cells: []string{
			"□", say.Say(s.Name()), strconv.Itoa(len(s.Laying.Sheets)), strconv.Itoa(len(s.Parts) - len(s.Laying.TooLarge)), message.SquareMetres(bought).Figure(say, 2), share, price,
		}})
		for _, i := range s.Laying.TooLarge {
			t.Rows = append(t.Rows, Row{Cells: []string{"", say.Say(s.tooLarge(i)), "", "", "", "", ""}})
		}
	}
	if priced > 1 {
		t.Rows = append(t.Rows, Row{Total: true, Cells: []string{"", say.Say(message.New("in all")), "", "", "", "", fixed(say, sum, 2)}})
	}
	return t
}

// stockCosts is what all sheets to buy cost, of boards that have a price.
func stockCosts(stock []StockPlan) float64 {
	sum := 0.0
	for _, s := range stock {
		bought, _ := s.AreaM2()
		sum += bought * s.Board.Price
	}
	return sum
}

// tooLarge says that a part lies on no sheet.
func (s *StockPlan) tooLarge(part int) message.Message {
	q := s.rows[s.Of[part]]
	return message.New("%v, %v × %v for %v: larger than a trimmed sheet, it lies on none", q.What, q.CutWidth, q.CutHeight, q.For)
}
