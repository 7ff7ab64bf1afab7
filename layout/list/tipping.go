package list

import (
	"strings"

	"frontlay/layout/plan"
	"frontlay/layout/tipping"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Tipping is the table of what holds a cabinet, by its index, and what pulls it over: a
// row for each part that weighs, then the sums of each state.
func Tipping(p *plan.Plan, i int, say Speaker) Table {
	s := tipping.Of(p, i)
	head := func(m string) string { return say.Say(message.New(m)) }
	unit := say.MomentUnit()
	t := Table{
		Name: "tipping", Title: say.Say(message.New("Tipping: %v", s.Name)),
		Intro: []string{
			say.Sentence(s.Told()),
			head("A caution worked out from weights alone, not a test: it does not say that a cabinet is safe or meets a standard. Children climb, floors give way, and what is pulled hard weighs more. Have the piece tested by the standard that holds where it will stand, such as ASTM F2057 or EN 14749, and fix it to the wall wherever you can."),
			say.Say(message.New("Sizes in %v.", UnitWord(say.Unit))),
		},
		Columns: []Column{
			{Head: head("Part"), Weight: 3}, {Head: say.WeightUnit(), Weight: 1, Right: true},
			{Head: head("Behind the pivot, closed"), Weight: 1.6, Right: true, Length: true}, {Head: head("Comes out"), Weight: 1.2, Right: true, Length: true},
			{Head: say.Say(message.New("Holds (+) or tips (−), closed, %v", unit)), Weight: 2, Right: true}, {Head: say.Say(message.New("open, %v", unit)), Weight: 1.4, Right: true},
		},
	}
	moment := func(v float64) string { return message.NewtonMetres(v).Figure(say) }
	for k := range s.Parts {
		q := &s.Parts[k]
		out := ""
		if q.Reach > 0 {
			out = say.Figure(q.Reach)
		}
		t.Rows = append(t.Rows, Row{Cells: []string{begin(q.Name, say), message.Kilograms(q.Kg).Figure(say, 1), say.Figure(q.Behind.RoundTo(length.Millimetre)), out, moment(q.Moment(0)), moment(q.Moment(1))}})
	}
	for k := range s.States {
		x := &s.States[k]
		if k == 0 {
			if e := s.Edge; e != nil {
				t.Rows = append(t.Rows, Row{Cells: []string{begin(s.LoadSay(), say), message.Kilograms(s.LoadKg).Figure(say, 1), say.Figure((e.Runner.Length - s.EdgeOut).RoundTo(length.Millimetre)), say.Figure(e.Runner.Length), "", moment(-s.LoadMoment())}})
			}
			t.Rows = append(t.Rows, Row{Group: true, Cells: []string{say.Say(message.New("What holds, less what tips, %v", unit))}})
		}
		verdict := head("stands")
		if x.Margin() < 0 {
			verdict = say.Say(message.New("tips; hold with %v", message.Newtons(s.Pull(x))))
		}
		t.Rows = append(t.Rows, Row{Total: true, Cells: []string{begin(x.Name, say), "", say.Say(message.New("holds %v", moment(x.Holds))), say.Say(message.New("tips %v", moment(x.Tips))), moment(x.Margin()), verdict}})
	}
	if len(s.NoWeight) > 0 {
		var all []string
		for _, m := range s.NoWeight {
			all = append(all, say.Say(m))
		}
		t.Notes = append(t.Notes, say.Say(message.New("Not counted, as nobody says what it weighs: %v.", strings.Join(all, ", "))))
	}
	t.Notes = append(t.Notes, say.Say(message.New("Moment: weight · 9.80665 m/s² · distance behind the pivot. The pivot is the face of the plinth board, the middle of the front feet, or the carcass's front edge: %v behind that edge. Drawers come out as far as their runners are long; their weight and what is in them is taken in their middle. Two thirds open, a moment has gone two thirds of the way from closed to open. Sums are of exact figures, not of the rounded ones above. Each cabinet is taken alone.", s.Pivot)))
	return t
}
