package list

import (
	"strconv"

	"frontlay/layout/plan"
	"frontlay/model/message"
)

// Figures is the table of how the computed figures came about: a front's height,
// overlay, edge distances, drop, cover, room above, depth and hole heights, each
// as a sum that can be added up by hand. A figure that several fronts share with
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
		for _, s := range p.Explanations(f) {
			sum := say.Say(message.New("as given"))
			if len(s.Terms) > 0 {
				sum = say.Say(s.Sum())
			}
			t.Rows = append(t.Rows, Row{Cells: []string{say.Say(s.Name), say.Length(s.Value), sum}})
		}
	}
	if len(p.Fronts) == 0 {
		t.Notes = append(t.Notes, say.Say(message.New("There are no fronts yet.")))
	}
	return t
}
