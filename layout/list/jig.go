package list

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"frontlay/layout/check"
	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Setting is what an adjustable drilling jig is set to: its distance from the
// side edge, and the drop (how far the front's bottom edge lies below the
// runner's lower edge).
type Setting struct{ EdgeDistance, Drop length.Length }

// Reset is a setting of the jig and the fronts' sides that are drilled with it.
type Reset struct {
	Setting Setting
	Work    []JigWork
}

// JigWork is the holes of one side of a front that are drilled with one setting,
// equal ones together: Holes have one diameter and depth, the lowest first.
type JigWork struct {
	Front *plan.Front
	Side  plan.Side
	Holes []plan.Hole
}

// Resets gives the settings in an order in which each is needed once and the two
// stops are moved as seldom as can be. A hole that
// lies further in or out than the others of its side has a setting of its own.
// The holes of stabilisers are measured from the middle and are in none.
func Resets(p *plan.Plan) []Reset {
	var all []Reset
	at := map[Setting]int{}
	for i := range p.Fronts {
		f := &p.Fronts[i]
		for _, side := range []plan.Side{plan.Left, plan.Right} {
			for _, h := range f.Holes {
				if h.Side == side && h.Kind != plan.StabiliserHole {
					all = withHole(all, at, f, h)
				}
			}
		}
	}
	for _, r := range all {
		for _, w := range r.Work {
			slices.SortStableFunc(w.Holes, func(a, b plan.Hole) int { return cmp.Compare(a.At.Y, b.At.Y) })
		}
	}
	return ordered(all)
}

// withHole adds a hole to the work of its setting; at tells where that is.
func withHole(all []Reset, at map[Setting]int, f *plan.Front, h plan.Hole) []Reset {
	s := Setting{h.At.X, f.Drop}
	if h.Side == plan.Right {
		s.EdgeDistance = f.Face.Width() - h.At.X
	}
	i, ok := at[s]
	if !ok {
		i = len(all)
		at[s] = i
		all = append(all, Reset{Setting: s})
	}
	r := &all[i]
	// A front's work is the last of a setting, as the fronts come one by one.
	for j := len(r.Work) - 1; j >= 0 && r.Work[j].Front == f; j-- {
		if w := &r.Work[j]; w.Side == h.Side && w.Holes[0].Diameter == h.Diameter && w.Holes[0].Depth == h.Depth {
			w.Holes = append(w.Holes, h)
			return all
		}
	}
	r.Work = append(r.Work, JigWork{Front: f, Side: h.Side, Holes: []plan.Hole{h}})
	return all
}

// SideName names a side of a front.
func SideName(s plan.Side) message.Message {
	if s == plan.Left {
		return message.New("left")
	}
	return message.New("right")
}

// JigSettings is the table of settings, each with the fronts it is for and a box
// to tick. Rows of a front with open errors among the findings say so.
func JigSettings(p *plan.Plan, findings []check.Finding, say Speaker) Table {
	return jigTable(p, findings, say, false)
}

func jigTable(p *plan.Plan, findings []check.Finding, say Speaker, forFiles bool) Table {
	t := Table{
		Name:  "jig",
		Title: say.Say(message.New("Jig settings")),
		Intro: []string{
			say.Say(message.New("Edge distance: from the front’s side edge to the line of holes. Drop: how far the front’s bottom edge lies below the runner’s lower edge (negative: above).")),
			say.Say(DepthStop(p)),
		},
		Repeat: []string{
			say.Say(message.New("Left and right as seen from the room; the rear face lies up, so left is at your RIGHT hand.")),
		},
		Columns: []Column{
			{Head: "", Weight: 0.5},
			{Head: say.Say(message.New("Front")), Weight: 0.8, Right: true},
			{Head: say.Say(message.New("Name")), Weight: 3},
			{Head: say.Say(message.New("Side in the room")), Weight: 1.7},
			{Head: say.Say(message.New("Holes above the bottom edge (%v)", UnitWord(say.Unit))), Weight: 3},
			{Head: "Ø", Weight: 1, Right: true, Length: true},
			{Head: say.Say(message.New("Depth")), Weight: 1, Right: true, Length: true},
		},
	}
	if forFiles {
		t.Columns[heightsColumn] = Column{Head: say.Say(message.New("Holes above the bottom edge")), Length: true}
	}
	w := newWarner(p, findings, say, forFiles)
	resets := Resets(p)
	for i, r := range resets {
		heading := message.New("Setting %v: edge distance %v, drop %v", i+1, r.Setting.EdgeDistance, r.Setting.Drop)
		if i > 0 {
			heading = message.New("%v. %v", heading, moved(resets[i-1].Setting, r.Setting))
		}
		t.Rows = append(t.Rows, Row{Cells: []string{say.Say(heading)}, Group: true})
		for _, work := range r.Work {
			t.Rows = append(t.Rows, w.row(work.Front, work.cells(say, forFiles)))
		}
	}
	w.column(&t)
	for i := range p.Fronts {
		if p.Fronts[i].Stabilised {
			t.Notes = append(t.Notes, say.Say(message.New("Front %v, %v, also has the holes of a stabiliser in its middle: see the drill list.", p.Fronts[i].Number, p.Fronts[i].Name)))
		}
	}
	if len(resets) == 0 {
		t.Notes = append(t.Notes, say.Say(message.New("No front of this project is drilled.")))
	}
	t.noteRounded(say)
	return t
}

// heightsColumn is the place of the column of holes' heights.
const heightsColumn = 4

func moved(from, to Setting) message.Message {
	switch {
	case from.EdgeDistance == to.EdgeDistance:
		return message.New("Move the drop only")
	case from.Drop == to.Drop:
		return message.New("Move the edge distance only")
	}
	return message.New("Move both stops")
}

func (w JigWork) cells(say Speaker, forFiles bool) []string {
	var heights []string
	for _, h := range w.Holes {
		heights = append(heights, say.Figure(h.At.Y))
	}
	h := w.Holes[0]
	return []string{
		"□", strconv.Itoa(w.Front.Number), w.Front.Name, say.Say(SideName(w.Side)), strings.Join(heights, " · "),
		drillFigure(h.Diameter, w.Front, say, forFiles), drillFigure(h.Depth, w.Front, say, forFiles),
	}
}

// DepthStop tells how depths are meant and what the drill's point does, for
// whoever sets a depth stop by them.
func DepthStop(p *plan.Plan) message.Message {
	point := check.DrillPoint(p.Project)
	if point == 0 {
		return message.New("Depths are told to the bottom of the hole, the drill’s point included.")
	}
	return message.New("Depths are told without the drill’s point, which may reach %v further: set the depth stop by the full diameter.", point)
}
