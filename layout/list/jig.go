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

// Bit is what is in the drill: a diameter, and the depth that its stop is set to.
type Bit struct{ Diameter, Depth length.Length }

// Reset is a setting of the jig with a bit, and the fronts' sides that are drilled
// with both.
type Reset struct {
	Bit     Bit
	Setting Setting
	Work    []JigWork
}

// JigWork is the holes of one side of a front that are drilled with one setting and
// one bit, the lowest first.
type JigWork struct {
	Front *plan.Front
	Side  plan.Side
	Holes []plan.Hole
}

// Resets gives the settings by the bits, so that each bit is put in once, thin ones
// first, and for each bit in an order in which the two stops are moved as seldom as
// can be. A hole that lies further in or out than the others of its side has a
// setting of its own. The holes of stabilisers are measured from the middle and are
// in none.
func Resets(p *plan.Plan) []Reset {
	var all []Reset
	at := map[needed]int{}
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
	slices.SortStableFunc(all, func(a, b Reset) int {
		return cmp.Or(cmp.Compare(a.Bit.Diameter, b.Bit.Diameter), cmp.Compare(a.Bit.Depth, b.Bit.Depth))
	})
	var done []Reset
	for len(all) > 0 {
		n := slices.IndexFunc(all, func(r Reset) bool { return r.Bit != all[0].Bit })
		if n < 0 {
			n = len(all)
		}
		done, all = append(done, ordered(all[:n])...), all[n:]
	}
	return done
}

// needed is what a hole asks of drill and jig.
type needed struct {
	bit Bit
	at  Setting
}

// withHole adds a hole to the work of its setting; at tells where that is.
func withHole(all []Reset, at map[needed]int, f *plan.Front, h plan.Hole) []Reset {
	n := needed{Bit{h.Diameter, h.Depth}, Setting{h.At.X, f.Drop}}
	if h.Side == plan.Right {
		n.at.EdgeDistance = f.Face.Width() - h.At.X
	}
	i, ok := at[n]
	if !ok {
		i = len(all)
		at[n] = i
		all = append(all, Reset{Bit: n.bit, Setting: n.at})
	}
	r := &all[i]
	// A front's work is the last of a setting, as the fronts come one by one.
	if j := len(r.Work) - 1; j >= 0 && r.Work[j].Front == f && r.Work[j].Side == h.Side {
		r.Work[j].Holes = append(r.Work[j].Holes, h)
		return all
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

// jigTable is the table of settings for files, each with the fronts it is for. Rows
// of a front with open errors among the findings say so.
func jigTable(p *plan.Plan, findings []check.Finding, say Speaker) Table {
	t := Table{
		Name:  "jig",
		Title: say.Say(message.New("Jig settings")),
		Columns: []Column{
			{Head: say.Say(message.New("Front"))},
			{Head: say.Say(message.New("Name"))},
			{Head: say.Say(message.New("Side in the room"))},
			{Head: say.Say(message.New("Holes above the bottom edge")), Length: true},
			{Head: "Ø", Length: true},
			{Head: say.Say(message.New("Depth")), Length: true},
		},
	}
	w := newWarner(p, findings, say, true)
	for i, r := range Resets(p) {
		t.Rows = append(t.Rows, Row{Cells: []string{say.Say(message.New("Setting %v: edge distance %v, drop %v", i+1, r.Setting.EdgeDistance, r.Setting.Drop))}, Group: true})
		for _, work := range r.Work {
			t.Rows = append(t.Rows, w.row(work.Front, work.cells(say)))
		}
	}
	w.column(&t)
	return t
}

func (w JigWork) cells(say Speaker) []string {
	var heights []string
	for _, h := range w.Holes {
		heights = append(heights, say.Figure(h.At.Y))
	}
	h := w.Holes[0]
	return []string{
		strconv.Itoa(w.Front.Number), w.Front.Name, say.Say(SideName(w.Side)), strings.Join(heights, " · "),
		drillFigure(h.Diameter, w.Front, say, true), drillFigure(h.Depth, w.Front, say, true),
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
