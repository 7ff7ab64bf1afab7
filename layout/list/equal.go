package list

import (
	"slices"
	"strconv"
	"strings"

	"frontlay/model"
	"frontlay/model/message"
)

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
		j := slices.IndexFunc(g.pieces, func(q equalPieces) bool {
			return q.What.String() == p.What.String() && q.Width == p.Width && q.Height == p.Height &&
				q.CutWidth == p.CutWidth && q.CutHeight == p.CutHeight && q.Grain == p.Grain && q.Lipped == p.Lipped
		})
		if j < 0 {
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
	for _, o := range q.owners {
		name := say.Say(o.For)
		if slices.Contains(names, name) {
			continue
		}
		names, numbers = append(names, name), append(numbers, strconv.Itoa(o.Front))
		long += len([]rune(name)) + 2
	}
	if long > longestFor && q.Front > 0 {
		return say.Say(message.New("fronts %v", strings.Join(numbers, ", ")))
	}
	return strings.Join(names, ", ")
}
