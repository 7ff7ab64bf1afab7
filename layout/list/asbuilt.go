package list

import (
	"frontlay/layout/asbuilt"
	"frontlay/layout/plan"
	"frontlay/model/message"
)

// Adjusting is the table of what to move at hung fronts, in order of work, from the gaps that were
// measured.
func Adjusting(r *asbuilt.Result, say Speaker) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	t := Table{
		Name: "adjusting", Title: head("Adjusting the hung fronts"),
		Intro: []string{
			say.Sentence(r.Told()),
			head("From the middle of each connector’s way, bottom up. Move one front, measure again, then the next. The maker’s instructions say which screw does what; tilting in and out changes no gap and is not told."),
		},
		Columns: []Column{
			{Head: "", Weight: 0.5}, {Head: head("Front"), Weight: 2.5}, {Head: head("Left connector"), Weight: 2.5}, {Head: head("Right connector"), Weight: 2.5}, {Head: head("Whole front"), Weight: 2.5},
		},
	}
	for i := range r.Moves {
		mv := &r.Moves[i]
		cells := []string{"□", say.Say(mv.Front.Called())}
		for _, how := range []message.Message{mv.LeftSay(), mv.RightSay(), mv.AsideSay()} {
			if how.Empty() {
				how = message.New("–")
			}
			cells = append(cells, say.Say(message.New("%v", how)))
		}
		t.Rows = append(t.Rows, Row{Cells: cells})
	}
	if len(r.Stuck) > 0 {
		var all message.Message
		for i, f := range r.Stuck {
			if all = message.New("%v, %v", all, f.Called()); i == 0 {
				all = f.Called()
			}
		}
		t.Notes = append(t.Notes, say.Say(message.New("Their connectors do not adjust, or the hardware sheet does not say: %v.", all)))
	}
	t.Notes = append(t.Notes, say.Say(message.New("The largest distance of a measured end of a gap from what it is to be is made as small as the connectors allow, by whole quarter turns where the hardware sheet tells what a turn moves, else in steps of %v. A gap that was not measured is not looked after: measure both ends of all.", asbuilt.StepIn(say.Unit))))
	t.noteRounded(say)
	return t
}

// AsBuiltGaps is the table of the measured ends of gaps: what each is to be, is, and becomes.
func AsBuiltGaps(r *asbuilt.Result, say Speaker) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	t := Table{
		Name: "as-built", Title: head("Measured gaps, and what becomes of them"),
		Intro: []string{say.Say(message.New("Sizes in %v.", UnitWord(say.Unit)))},
		Columns: []Column{
			{Head: head("Front"), Weight: 3}, {Head: head("Gap"), Weight: 3}, {Head: head("Target"), Weight: 1, Right: true, Length: true}, {Head: head("Measured"), Weight: 1, Right: true, Length: true}, {Head: head("Adjusted"), Weight: 1, Right: true, Length: true},
		},
	}
	for _, e := range r.Ends {
		t.Rows = append(t.Rows, Row{Cells: []string{
			say.Say(e.Gap.Front.Called()), say.Say(endName(e.Gap.Edge, e.Second)),
			say.Figure(e.Wanted), say.Figure(e.Measured), say.Figure(e.After.RoundTo(asbuilt.Step)),
		}})
	}
	t.noteRounded(say)
	return t
}

// endName names an end of a gap at an edge.
func endName(e plan.Edge, second bool) message.Message {
	names := [...][2]message.Message{
		plan.LeftEdge:   {message.New("left, lower end"), message.New("left, upper end")},
		plan.RightEdge:  {message.New("right, lower end"), message.New("right, upper end")},
		plan.BottomEdge: {message.New("below, left end"), message.New("below, right end")},
		plan.TopEdge:    {message.New("above, left end"), message.New("above, right end")},
	}
	if second {
		return names[e][1]
	}
	return names[e][0]
}
