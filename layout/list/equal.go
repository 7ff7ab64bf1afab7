package list

import (
	"strconv"
	"strings"

	"frontlay/model"
	"frontlay/model/length"
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
	type board struct {
		thickness length.Length
		material  string
		density   float64
	}
	type size struct {
		board                              int
		what                               string
		width, height, cutWidth, cutHeight length.Length
		grain                              string
		lipped                             Lipped
	}
	var all []boardGroup
	boards, equal := map[board]int{}, map[size]int{}
	for _, p := range pieces {
		b := board{p.Board.Thickness, p.Board.Material, p.Board.Density}
		i, ok := boards[b]
		if !ok {
			i = len(all)
			boards[b] = i
			all = append(all, boardGroup{board: p.Board})
		}
		g := &all[i]
		s := size{i, p.What.String(), p.Width, p.Height, p.CutWidth, p.CutHeight, p.Grain, p.Lipped}
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
