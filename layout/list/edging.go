package list

import (
	"math"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Edged tells which edges of a piece get the edging of its board, where that has one: how
// many of those that run along its Width, and along its Height.
type Edged struct {
	AlongWidth, AlongHeight int
	word                    string // for the edges; none: empty
}

// The words for edges of a piece that are not among those that a file has (model.EdgeAll
// and so on): parts of frames.
const (
	outerEdge        = "outer" // away from the panel
	outerEdgeAndEnds = "outer and ends"
	bothEnds         = "ends"
	upperEnd         = "upper end"
)

// say names the edges.
func (e *Edged) say() message.Message {
	switch e.word {
	case outerEdge:
		return message.New("outer edge")
	case outerEdgeAndEnds:
		return message.New("outer edge, both ends")
	case bothEnds:
		return message.New("both ends")
	case upperEnd:
		return message.New("upper end")
	}
	return model.SayEdges(e.word)
}

// lippedEdges names the edges of a piece that are lipped; empty where its board has no
// lipping.
func lippedEdges(p *Piece) message.Message {
	if p.Board.Lipping <= 0 {
		return message.Message{}
	}
	return p.Edged.say()
}

// edge gives a piece its edging, and takes it off the size to cut.
func (p *Piece) edge(e Edged) {
	p.Edged = e
	p.CutWidth -= length.Length(e.AlongHeight) * p.Board.Lipping
	p.CutHeight -= length.Length(e.AlongWidth) * p.Board.Lipping
}

// finished says the size of a piece with its lipping; empty where it has none.
func (p *Piece) finished(say Speaker) string {
	if p.Board.Lipping <= 0 || p.Edged.word == "" {
		return ""
	}
	return say.Figure(p.Width) + " × " + say.Figure(p.Height)
}

// EdgingMetres is how much edging all its pieces take, in metres of finished edges.
func (p *Piece) EdgingMetres() float64 {
	if p.Board.Lipping <= 0 {
		return 0
	}
	mm := float64(p.Edged.AlongWidth)*p.Width.MM() + float64(p.Edged.AlongHeight)*p.Height.MM()
	return float64(p.Count) * mm / 1000
}

// boardEdges are those of a board in the carcass by the word that its edging has for it:
// of one that lies, the front edge runs along its width.
func boardEdges(word string, lies bool) Edged {
	e := Edged{0, 1, model.EdgeFront}
	switch word {
	case model.EdgeNone:
		e = Edged{}
	case model.EdgeFrontBack:
		e = Edged{0, 2, word}
	case model.EdgeFrontEnds:
		e = Edged{2, 1, word}
	case model.EdgeAll:
		e = Edged{2, 2, word}
	}
	if lies {
		e.AlongWidth, e.AlongHeight = e.AlongHeight, e.AlongWidth
	}
	return e
}

// frontEdges are those of a whole front.
func frontEdges(f *plan.Front) Edged {
	switch word := f.Made.Edging.Fronts; word {
	case model.EdgeNone:
		return Edged{}
	case model.EdgeSides:
		return Edged{0, 2, word}
	case model.EdgeTopBottom:
		return Edged{2, 0, word}
	case model.EdgeTop:
		return Edged{1, 0, word}
	}
	return Edged{2, 2, model.EdgeAll}
}

// frameEdges are those of a part of a frame that are the front's.
func frameEdges(f *plan.Front, part plan.Part) Edged {
	word := f.Made.Edging.Fronts
	stile := part == plan.LeftStile || part == plan.RightStile
	switch {
	case part == plan.PanelPart, word == model.EdgeNone,
		!stile && word == model.EdgeSides, part == plan.BottomRail && word == model.EdgeTop:
		return Edged{}
	case !stile:
		return Edged{1, 0, outerEdge}
	case word == model.EdgeSides:
		return Edged{0, 1, outerEdge}
	case word == model.EdgeTopBottom:
		return Edged{2, 0, bothEnds}
	case word == model.EdgeTop:
		return Edged{1, 0, upperEnd}
	}
	return Edged{2, 1, outerEdgeAndEnds}
}

// countEdging is the edging of each board that has one, in the order of the cut list: in
// metres, or feet where the user's unit is of inches, rounded up to a tenth.
func countEdging(p *plan.Plan, say Speaker) []hardwareRow {
	unit, each := message.New("m"), 1.0
	if say.Unit.Inches() {
		unit, each = message.New("ft"), footMetres
	}
	var all []hardwareRow
	for _, g := range byBoard(Pieces(p)) {
		metres := 0.0
		for i := range g.pieces {
			metres += g.pieces[i].EdgingMetres()
		}
		if metres > 0 {
			all = append(all, hardwareRow{
				what: BoardName(g.board), unit: unit, small: true,
				count: math.Ceil(metres/each*10-1e-9) / 10, price: g.board.Edging.Price * each,
			})
		}
	}
	return all
}

// footMetres is a foot in metres, exactly (international yard and pound agreement, 1959;
// from memory).
const footMetres = 0.3048
