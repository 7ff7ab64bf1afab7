package list

import (
	"slices"
	"strconv"

	"frontlay/layout/plan"
	"frontlay/model/message"
)

// Figures is the table of how the computed figures came about: a front's height and
// width, overlays, edge distances, drop, covers, room above, depth, drawer bottom and
// back, and hole heights, each as a sum that can be added up by hand. A figure that several fronts share with
// the same sum stands once for each front, as a joiner looks it up by front.
func Figures(p *plan.Plan, say Speaker) Table {
	t := Table{
		Name:  "figures",
		Title: say.Say(message.New("How the figures came about")),
		Columns: []Column{
			{Head: say.Say(message.New("Figure")), Weight: 3},
			{Head: say.Say(message.New("Value")), Weight: 1.4, Right: true},
			{Head: say.Say(message.New("Sum")), Weight: 8},
		},
	}
	for i := range p.Fronts {
		f := &p.Fronts[i]
		t.Rows = append(t.Rows, Row{Group: true, Cells: []string{strconv.Itoa(f.Number) + "  " + f.Name}})
		t.sums(f, p.Explanations(f), say)
		for g := range f.Drawers() {
			if g.Nth > 0 {
				t.Rows = append(t.Rows, Row{Group: true, Cells: []string{say.Say(g.Called())}})
				t.sums(g, p.InnerSums(g), say)
			}
		}
	}
	t.noteRounded(say)
	if len(p.Fronts) == 0 {
		t.Notes = append(t.Notes, say.Say(message.New("There are no fronts yet.")))
	}
	return t
}

// sums adds how the figures of a front, or of an inner drawer, came about.
func (t *Table) sums(f *plan.Front, sums []plan.Sum, say Speaker) {
	for _, s := range sums {
		s.Terms = toldOnce(s.Terms)
		if f.Fitted && f.Runner.Length <= 0 && needsRunner(s) {
			t.Rows = append(t.Rows, Row{Cells: []string{say.Say(s.Name), "", say.Say(NoRunner())}})
			continue
		}
		sum := say.Say(message.New("as given"))
		if len(s.Terms) > 0 {
			sum = say.Say(s.Sum())
		}
		t.Rows = append(t.Rows, Row{Cells: []string{say.Say(s.Name), say.Length(s.Value), sum}})
	}
}

// toldOnce leaves out of a sum how its drop came about: the drop has a row of its
// own, and nearly every other figure of a front counts with it.
func toldOnce(terms []plan.Term) []plan.Term {
	terms = slices.Clone(terms)
	for i := range terms {
		if of := terms[i].Of; of != nil && of.Name.Text == "drop" {
			terms[i].Of = nil
		}
	}
	return terms
}

// needsRunner tells that a runner's length is one of the terms.
func needsRunner(s plan.Sum) bool {
	return slices.ContainsFunc(s.Terms, func(t plan.Term) bool { return t.Name.Text == "runner" })
}
