package list

import (
	"slices"
	"strings"

	"frontlay/layout/opening"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Opening is the table of what a measured opening tells: the figures with the shape that fits them,
// how far it is off, and the best fronts in it.
func Opening(s *opening.Bay, say Speaker) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	t := shapeTable(s.Shape, say)
	t.Title = say.Say(message.New("Measured opening: %v", s.Where()))
	t.Intro = slices.Insert(t.Intro, 1, say.Sentence(s.BestSay()))
	if turned := s.TurnedSay(); !turned.Empty() {
		t.Intro = slices.Insert(t.Intro, 2, say.Sentence(turned))
	}
	t.Rows = append(t.Rows, Row{Group: true, Cells: []string{head("The best rectangular fronts, and the gaps that come of them")}})
	b := &s.Best
	t.Rows = append(t.Rows,
		Row{Cells: []string{head("Width of the fronts"), say.Figure(b.PlannedWidth), say.Figure(b.Width)}},
		Row{Cells: []string{head("Height of the stack, gaps between its fronts included"), say.Figure(b.PlannedHeight), say.Figure(opening.Shown(b.Height))}})
	for e, m := range []string{"Gap at the left, from the bottom up", "Gap at the right, from the bottom up", "Gap at the bottom, from left to right", "Gap at the top, from left to right"} {
		r := b.Reveals[e]
		var at []string
		for _, v := range r.At {
			at = append(at, say.Figure(opening.Shown(v)))
		}
		t.Rows = append(t.Rows, Row{Cells: []string{head(m), say.Figure(r.Wanted), strings.Join(at, " · ")}})
	}
	t.Notes = append(t.Notes, head("The fronts are turned and cut so that the widest difference of a gap along its edge is as small as it can be; each edge stands halfway between where the opening is nearest and furthest. Overlay fronts: the carcass’s edges are taken to run alongside its inside faces."))
	return t
}

// shapeTable are the figures with the shape, and what that tells.
func shapeTable(s *opening.Shape, say Speaker) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	t := Table{
		Name:  "opening",
		Intro: []string{say.Sentence(s.Verdict())},
		Columns: []Column{
			{Head: "", Weight: 5.3}, {Head: head("Tape or plan"), Weight: 2.1, Right: true}, {Head: head("In the shape"), Weight: 2.5, Right: true},
		},
	}
	if !s.Upright {
		t.Intro = append(t.Intro, head("Nothing tells how it stands to the plumb line: its bottom is taken as level."))
	}
	if s.WidthFromPlan || s.HeightFromPlan {
		t.Intro = append(t.Intro, head("Width or height that no figure tells is taken from the plan."))
	}
	t.Intro = append(t.Intro, say.Say(message.New("Sizes in %v.", UnitWord(say.Unit))))
	if len(s.Read) > 0 {
		t.Rows = append(t.Rows, Row{Group: true, Cells: []string{head("What the tape says, and the shape that comes nearest to all of it")}})
	}
	for _, r := range s.Read {
		t.Rows = append(t.Rows, Row{Cells: []string{begin(r.Figure.Say(), say), readingCell(r.Figure, r.Measured, say), readingCell(r.Figure, opening.Shown(r.Shape), say)}})
	}
	t.Rows = append(t.Rows, Row{Group: true, Cells: []string{head("What the shape tells, and by how much that may be wrong")}})
	var unknown, alike []string
	for _, x := range s.Said {
		switch {
		case !x.Known:
			unknown = append(unknown, say.Say(x.What.Name()))
		case x.Value.Abs() <= x.Give:
			alike = append(alike, say.Say(x.What.Name()))
		default:
			t.Rows = append(t.Rows, Row{Cells: []string{begin(x.What.Say(opening.Shown(x.Value)), say), "", "± " + say.Figure(opening.Shown(x.Give))}})
		}
	}
	if len(alike) > 0 {
		t.Notes = append(t.Notes, say.Say(message.New("True as far as the tape can tell: %v.", strings.Join(alike, ", "))))
	}
	if len(unknown) > 0 {
		t.Notes = append(t.Notes, say.Say(message.New("Not told by what was measured: %v.", strings.Join(unknown, ", "))))
	}
	t.Notes = append(t.Notes, say.Say(message.New("The shape has straight sides and differs from all figures by the least sum of squares; each figure counts alike and may be off by %v. Whose bow it is of two boards opposite each other no tape tells: half is given to each.", s.Within)))
	return t
}

// readingCell is a figure of the tape; of plumb and level with the side to which it is off.
func readingCell(f opening.Figure, v length.Length, say Speaker) string {
	if f.Signed() && v != 0 {
		return say.Say(f.Off(message.Bare(v.Abs()), v < 0))
	}
	return say.Figure(v)
}

// PackingList is the table of what goes behind the runners in a measured opening.
func PackingList(s *opening.Bay, say Speaker) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	t := Table{
		Name: "packing", Title: say.Say(message.New("Packing behind the runners: %v", s.Where())),
		Intro: []string{
			head("Runners want parallel sides as far apart as the plan has them. Behind each runner, in front and behind, goes what is told here, planned packing included."),
			say.Say(message.New("Sizes in %v.", UnitWord(say.Unit))),
		},
		Columns: []Column{
			{Head: "", Weight: 0.5}, {Head: head("Drawer"), Weight: 3}, {Head: head("Runner above the bottom"), Weight: 1.5, Right: true, Length: true}, {Head: head("Clear width that it takes"), Weight: 1.5, Right: true, Length: true},
			{Head: head("Wide in front"), Weight: 1.3, Right: true, Length: true}, {Head: head("Pack left"), Weight: 1, Right: true, Length: true}, {Head: head("Pack right"), Weight: 1, Right: true, Length: true},
			{Head: head("Wide behind"), Weight: 1.3, Right: true, Length: true}, {Head: head("Pack left"), Weight: 1, Right: true, Length: true}, {Head: head("Pack right"), Weight: 1, Right: true, Length: true},
		},
	}
	narrow := false
	for i := range s.Packing {
		k := &s.Packing[i]
		cells := []string{"□", say.Say(k.Front.Called()), say.Figure(opening.Shown(k.Height)), say.Figure(k.Need)}
		for _, e := range k.Ends {
			switch {
			case !e.Known:
				cells = append(cells, "", "?", "?")
			case opening.Shown(e.Spare) < 0:
				cells = append(cells, say.Figure(opening.Shown(e.Width)), head("too narrow"), say.Figure(opening.Shown(e.Spare)))
				narrow = true
			default:
				cells = append(cells, say.Figure(opening.Shown(e.Width)), say.Figure(e.Left), say.Figure(e.Right))
			}
		}
		t.Rows = append(t.Rows, Row{Cells: cells})
	}
	if narrow {
		t.Notes = append(t.Notes, head("Too narrow: plan the bay narrower, see Findings."))
	}
	if aside := opening.Shown(s.Aside); aside != 0 {
		side := message.New("right")
		if aside < 0 {
			side = message.New("left")
		}
		t.Notes = append(t.Notes, say.Say(message.New("So that no side has less than nothing, all drawers stand %v further to the %v than the middle of the best fronts: their connector holes move with them.", aside.Abs(), side)))
	}
	t.Notes = append(t.Notes, say.Say(message.New("Packing is told in steps of %v; what is left over is less. Behind, where only widths were measured, both sides are taken to come in or go out alike: lay a straightedge along each side. “?”: no width was measured behind.", opening.PackingStep)))
	return t
}

// Niche is the table of how the run stands in its niche.
func Niche(n *opening.Niche, say Speaker) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	t := shapeTable(n.Shape, say)
	t.Title = head("Measured niche")
	three := func(v [3]length.Length) string {
		var at []string
		for _, x := range v {
			at = append(at, say.Figure(opening.Shown(x)))
		}
		return strings.Join(at, " · ")
	}
	planned := func(v length.Length) string {
		if v == 0 {
			return ""
		}
		return say.Figure(v)
	}
	t.Rows = append(t.Rows, Row{Group: true, Cells: []string{head("How the run stands in it, level and plumb on the highest place of the floor")}})
	t.Rows = append(t.Rows,
		Row{Cells: []string{head("Filler at the left, wide at its bottom, middle and top"), planned(n.Left.Planned), three(n.Left.Widths)}},
		Row{Cells: []string{head("Filler at the right, wide at its bottom, middle and top"), planned(n.Right.Planned), three(n.Right.Widths)}})
	if !n.Shape.HeightFromPlan {
		t.Rows = append(t.Rows, Row{Cells: []string{head("Room above the run, from left to right"), "", three(n.Above)}})
	}
	if n.Shape.Upright {
		t.Rows = append(t.Rows, Row{Cells: []string{head("Under the run, from left to right: what plinth or feet are higher"), "", three(n.Under)}})
	}
	t.Notes = append(t.Notes, head("Scribe a filler to the wall by these widths and cut its blank wider than the widest. What the niche has more or less than planned goes into both fillers alike."))
	return t
}
