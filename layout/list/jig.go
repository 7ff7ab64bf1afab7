package list

import (
	"fmt"
	"slices"
	"strconv"

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

// JigWork is one side of a front that is drilled with a jig.
type JigWork struct {
	Front *plan.Front
	Side  plan.Side
}

// Resets gives the settings in an order in which each is needed once and, as far
// as can be, only one of the two stops moves from one to the next.
func Resets(p *plan.Plan) []Reset {
	var all []Reset
	for i := range p.Fronts {
		f := &p.Fronts[i]
		if len(f.Holes) == 0 {
			continue
		}
		for _, side := range []plan.Side{plan.Left, plan.Right} {
			s := Setting{f.EdgeDistance.Left, f.Drop}
			if side == plan.Right {
				s.EdgeDistance = f.EdgeDistance.Right
			}
			j := slices.IndexFunc(all, func(r Reset) bool { return r.Setting == s })
			if j < 0 {
				j = len(all)
				all = append(all, Reset{Setting: s})
			}
			all[j].Work = append(all[j].Work, JigWork{f, side})
		}
	}
	return ordered(all)
}

// ordered goes from each setting to one that shares its edge distance, else to
// one that shares its drop, else to the next.
func ordered(left []Reset) []Reset {
	var done []Reset
	for len(left) > 0 {
		next := 0
		if len(done) > 0 {
			last := done[len(done)-1].Setting
			j := slices.IndexFunc(left, func(r Reset) bool { return r.Setting.EdgeDistance == last.EdgeDistance })
			if j < 0 {
				j = slices.IndexFunc(left, func(r Reset) bool { return r.Setting.Drop == last.Drop })
			}
			next = max(j, 0)
		}
		done = append(done, left[next])
		left = slices.Delete(left, next, next+1)
	}
	return done
}

// SideName names a side of a front.
func SideName(s plan.Side) message.Message {
	if s == plan.Left {
		return message.New("left")
	}
	return message.New("right")
}

// JigSettings is the table of settings, each with the fronts it is for and a box
// to tick.
func JigSettings(p *plan.Plan, say Speaker) Table {
	t := Table{
		Name:  "jig",
		Title: say.Say(message.New("Jig settings")),
		Intro: []string{
			say.Say(message.New("Edge distance: from the front’s side edge to the line of holes. Drop: how far the front’s bottom edge lies below the runner’s lower edge (negative: above). Left and right as seen from the room; the rear face lies up, so left is at your right hand.")),
		},
		Columns: []Column{
			{Head: "", Weight: 0.5},
			{Head: say.Say(message.New("Front")), Weight: 0.8, Right: true},
			{Head: say.Say(message.New("Name")), Weight: 3},
			{Head: say.Say(message.New("Side in the room")), Weight: 1.7},
			{Head: say.Say(message.New("Holes above the bottom edge (%v)", say.Unit.Symbol())), Weight: 3},
			{Head: "Ø", Weight: 1, Right: true, Length: true},
			{Head: say.Say(message.New("Depth")), Weight: 1, Right: true, Length: true},
		},
	}
	resets := Resets(p)
	for i, r := range resets {
		heading := message.New("Setting %v: edge distance %v, drop %v", i+1, r.Setting.EdgeDistance, r.Setting.Drop)
		if i > 0 {
			heading = message.New("%v. %v", heading, moved(resets[i-1].Setting, r.Setting))
		}
		t.Rows = append(t.Rows, Row{Cells: []string{say.Say(heading)}, Group: true})
		for _, w := range r.Work {
			t.Rows = append(t.Rows, Row{Cells: jigCells(w, say)})
		}
	}
	for i := range p.Fronts {
		if p.Fronts[i].Stabilised {
			t.Notes = append(t.Notes, say.Say(message.New("Front %v, %v, also has the holes of a stabiliser in its middle: see the drill list.", p.Fronts[i].Number, p.Fronts[i].Name)))
		}
	}
	if len(resets) == 0 {
		t.Notes = append(t.Notes, say.Say(message.New("No front of this project is drilled.")))
	}
	return t
}

func moved(from, to Setting) message.Message {
	switch {
	case from.EdgeDistance == to.EdgeDistance:
		return message.New("Move the drop only")
	case from.Drop == to.Drop:
		return message.New("Move the edge distance only")
	}
	return message.New("Move both stops")
}

func jigCells(w JigWork, say Speaker) []string {
	heights, diameters, depths := "", "", ""
	for _, h := range w.Front.Holes {
		if h.Side != w.Side || h.Kind == plan.StabiliserHole {
			continue
		}
		heights = joined(heights, say.Figure(h.At.Y))
		diameters = joinedOnce(diameters, say.Figure(h.Diameter))
		depths = joinedOnce(depths, say.Figure(h.Depth))
	}
	return []string{"□", strconv.Itoa(w.Front.Number), w.Front.Name, say.Say(SideName(w.Side)), heights, diameters, depths}
}

func joined(all, next string) string {
	if all == "" {
		return next
	}
	return fmt.Sprintf("%s · %s", all, next)
}

// joinedOnce joins only what is not there yet.
func joinedOnce(all, next string) string {
	if all == next {
		return all
	}
	return joined(all, next)
}
