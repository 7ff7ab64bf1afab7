package list

import (
	"strconv"
	"strings"

	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Label is what stands on the sticker of one board, written as the sticker is read: the
// board before you, what is up in the cabinet (or at the back, of a board that lies)
// away from you. A front lies on its face.
type Label struct {
	Number                   int // of the front that it belongs to; 0: it belongs to a cabinet
	What                     message.Message
	Name                     string // of the front; empty: none
	Cabinet                  message.Message
	Width, Height, Thickness length.Length   // finished: across, up (or from front to back), and of the board
	CutWidth, CutHeight      length.Length   // before it is lipped
	Up                       message.Message // what is away from you
	Left, Right              message.Message // what is at your left and right hand; empty: it does not matter
	In                       message.Message // where those are sides of; empty: of the board itself
	Grain                    string          // as of a Piece: along Width "horizontal", along Height "vertical", or ""
}

// Labels are those of all boards of the job, one for each piece: fronts, drawer
// bottoms and backs, and the boards of the carcasses.
func Labels(p *plan.Plan) []Label {
	var all []Label
	for _, q := range Pieces(p) {
		for i := range q.Count {
			l := Label{
				Number: q.Front, What: q.What, Cabinet: p.Project.CabinetName(q.Place), Grain: q.Grain,
				Width: q.Width, Height: q.Height, Thickness: q.Board.Thickness, CutWidth: q.CutWidth, CutHeight: q.CutHeight,
				Up: message.New("up"),
			}
			if i < len(q.Each) {
				l.What = q.Each[i]
			}
			if q.Front > 0 {
				l.Name = p.Fronts[q.Front-1].Name
			}
			switch {
			case q.Lies:
				l.Up = message.New("back edge")
			case q.Drilled: // of a front, on its rear face, which is drilled
				l.Left, l.Right, l.In = message.New("RIGHT"), message.New("LEFT"), message.New("in the room")
			case len(q.Each) == 2 && i == 0: // the left side, on its inside face
				l.Left, l.Right = message.New("front edge"), message.New("back edge")
			case len(q.Each) == 2:
				l.Left, l.Right = message.New("back edge"), message.New("front edge")
			}
			all = append(all, l)
		}
	}
	return all
}

// Size is the finished size as it is read on the board: along Width, along Height, and
// thickness.
func (l *Label) Size(say Speaker) string {
	return say.Figure(l.Width) + " × " + say.Figure(l.Height) + " × " + say.Figure(l.Thickness)
}

// CutSize is the size to cut before the board is lipped; empty where that is the same.
func (l *Label) CutSize(say Speaker) string {
	if l.CutWidth == l.Width && l.CutHeight == l.Height {
		return ""
	}
	return say.Figure(l.CutWidth) + " × " + say.Figure(l.CutHeight)
}

// GrainArrow is the way of the grain as the sticker is read; empty: it does not matter.
func (l *Label) GrainArrow() string {
	switch l.Grain {
	case alongWidth:
		return "←→"
	case "vertical":
		return "↕"
	}
	return ""
}

// hand is what is at one hand.
func (l *Label) hand(side message.Message, say Speaker) string {
	return strings.TrimSpace(say.Say(side) + " " + say.Say(l.In))
}

// labelTable is the labels as rows, for a program that prints them.
func labelTable(p *plan.Plan, say Speaker) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	t := Table{
		Name: "labels", Title: head("Labels"),
		Columns: []Column{
			{Head: head("Number")}, {Head: head("Piece")}, {Head: head("Name")},
			{Head: head("Width"), Length: true}, {Head: head("Height"), Length: true}, {Head: head("Thickness"), Length: true},
			{Head: head("Cut width"), Length: true}, {Head: head("Cut height"), Length: true},
			{Head: head("Cabinet")}, {Head: head("Away from you")}, {Head: head("At your left hand")}, {Head: head("At your right hand")}, {Head: head("Grain")},
		},
	}
	for _, l := range Labels(p) {
		number := ""
		if l.Number > 0 {
			number = strconv.Itoa(l.Number)
		}
		t.Rows = append(t.Rows, Row{Cells: []string{
			number, say.Say(l.What), l.Name, say.Figure(l.Width), say.Figure(l.Height), say.Figure(l.Thickness),
			say.Figure(l.CutWidth), say.Figure(l.CutHeight), say.Say(l.Cabinet), say.Say(l.Up), l.hand(l.Left, say), l.hand(l.Right, say), say.Say(grain(l.Grain)),
		}})
	}
	return t
}
