package list

import (
	"strconv"

	"frontlay/layout/plan"
	"frontlay/layout/tolerance"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Spread is the table of how far gaps come from what is planned: a row each, then the
// cabinets as a whole, and how exact each step is.
func Spread(p *plan.Plan, say Speaker) Table {
	b := tolerance.Of(p)
	tried := b.Try(tolerance.Runs)
	head := func(m string) string { return say.Say(message.New(m)) }
	within := *b.Process.Within
	t := Table{
		Name: "spread", Title: head("How exact the gaps come out"),
		Intro: []string{
			say.Sentence(b.Told(tried)),
			head("What is off always the same way, such as a fence that stands wrong, is not in these figures: measure and set it first."),
			head("How many come out after adjusting is a little too good: not every end of every gap is set at once."),
			say.Say(message.New("Sizes in %v.", UnitWord(say.Unit))),
		},
		Columns: []Column{
			{Head: head("Gap"), Weight: 3}, {Head: head("Planned"), Weight: 1, Right: true, Length: true},
			{Head: head("Middle ±"), Weight: 1, Right: true, Length: true}, {Head: head("Worse end ±"), Weight: 1, Right: true, Length: true}, {Head: head("Ends differ by"), Weight: 1, Right: true, Length: true}, {Head: head("Worst case ±"), Weight: 1.1, Right: true, Length: true},
			{Head: say.Say(message.New("Of 100 within ± %v", within)), Weight: 1.3, Right: true}, {Head: head("after adjusting"), Weight: 1.2, Right: true},
		},
	}
	figure := func(l length.Length) string { return say.Figure(tolerance.Shown(l)) }
	for i := range b.Gaps {
		g := &b.Gaps[i]
		s := b.Spread(g)
		t.Rows = append(t.Rows, Row{Cells: []string{say.Say(GapName(&g.Gap)), say.Figure(g.Size), figure(s.Likely), figure(s.End), figure(s.Wedge), figure(s.Worst), ofHundred(b.Before(g)), ofHundred(tried.GapsAfter[i])}})
	}
	for i := range p.Cabinets {
		t.Rows = append(t.Rows, Row{Total: true, Cells: []string{say.Say(message.New("All gaps of %v", p.Project.CabinetName(p.Cabinets[i].Place))), "", "", "", "", "", ofHundred(tried.CabinetsBefore[i]), ofHundred(tried.CabinetsAfter[i])}})
	}
	t.Rows = append(t.Rows, Row{Group: true, Cells: []string{head("How exact each step is: of twenty pieces nineteen are off by no more")}})
	for _, s := range tolerance.Steps() {
		if size := b.Size(s); size > 0 || s.Own(p.Project.Process) {
			from := message.New("from memory: measure your own")
			if s.Own(p.Project.Process) {
				from = message.New("your figure")
			}
			t.Rows = append(t.Rows, Row{Cells: []string{begin(message.New("%v (%v)", s.Say(), from), say), "", say.Figure(size), "", "", "", "", ""}})
		}
	}
	t.Notes = []string{
		head("Middle and worse end of a gap: likely, which is that nineteen of twenty cabinets are off by no more (the root of the sum of squares of what each step brings to it). Worst case: each step is off by its full figure, all to the worse side, at the worse end of the gap (their sum)."),
		head("The two connectors of a front stand a little differently high, so that one end of a gap comes out wider than the other: by their difference · width / (width − 2 · edge distance)."),
		say.Say(message.New("As hung: worked out for errors that are small more often than large (normally distributed). After adjusting: of %v cabinets tried with random errors, those in which the connectors of the fronts beside a gap can bring both its ends there; of a cabinet, also the middles of all its gaps at once.", tried.Runs)),
	}
	if p.Project.Process == nil || p.Project.Process.Drilling == model.ByTemplate {
		t.Notes = append(t.Notes, head("Print and paper count over 100 mm, and are the same on all templates of a job."))
	}
	return t
}

// ofHundred is a share as so many of a hundred, none more than there are.
func ofHundred(share float64) string {
	if n := tolerance.OfHundred(share); n > 0 || share == 0 {
		return strconv.Itoa(n)
	}
	return "< 1"
}
