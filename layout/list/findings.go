package list

import (
	"frontlay/layout/check"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/message"
)

// Findings is the table of what the check found, in its order; what the user
// accepts comes last, with the reason.
func Findings(findings []check.Finding, say Speaker) Table {
	t := Table{
		Name:  "findings",
		Title: say.Say(message.New("Findings")),
		Columns: []Column{
			{Head: "", Weight: 0.5},
			{Head: say.Say(message.New("Severity")), Weight: 1.5},
			{Head: say.Say(message.New("Where")), Weight: 3},
			{Head: say.Say(message.New("What is wrong")), Weight: 4.5},
			{Head: say.Say(message.New("What to change")), Weight: 4.5},
		},
	}
	var accepted []Row
	for _, f := range findings {
		cells := []string{"□", say.Say(f.Severity.Word()), say.Say(f.Where), say.Say(f.What), say.Say(f.Change)}
		if f.Accepted == "" {
			t.Rows = append(t.Rows, Row{Cells: cells})
			continue
		}
		cells[0], cells[4] = "", say.Say(message.New("Accepted: %v", f.Accepted))
		accepted = append(accepted, Row{Cells: cells})
	}
	if len(accepted) > 0 {
		t.Rows = append(t.Rows, Row{Group: true, Cells: []string{say.Say(message.New("Accepted by you"))}})
		t.Rows = append(t.Rows, accepted...)
	}
	if len(findings) == 0 {
		t.Notes = append(t.Notes, say.Say(message.New("The check found nothing to mend.")))
	}
	return t
}

// warner marks the rows of fronts that the check has open errors about, so that
// nobody drills from a list whose figures are known to be wrong.
type warner struct {
	say   Speaker
	wrong map[int]bool // by the front's number
	shown bool
}

// newWarner looks through the findings. Files always have the column, so that
// another program finds it in its place; on paper it stands only where it is
// needed.
func newWarner(p *plan.Plan, findings []check.Finding, say Speaker, forFiles bool) *warner {
	w := &warner{say: say, wrong: map[int]bool{}, shown: forFiles}
	for i := range findings {
		f := &findings[i]
		if !f.Open() {
			continue
		}
		for j := range p.Fronts {
			front := &p.Fronts[j]
			if f.Front == front.Number || f.Front == 0 && within(front.Place, f.Place) {
				w.wrong[front.Number] = true
				w.shown = true
			}
		}
	}
	return w
}

// within tells that a front's place lies in another: a bay, a cabinet, the run.
func within(front, other model.Place) bool {
	return (other.Cabinet < 0 || other.Cabinet == front.Cabinet) &&
		(other.Bay < 0 || other.Bay == front.Bay) && (other.Front < 0 || other.Front == front.Front)
}

// column heads the column of warnings, where there is one.
func (w *warner) column(t *Table) {
	if w.shown {
		t.Columns = append(t.Columns, Column{Head: w.say.Say(message.New("Check")), Weight: 1.6})
	}
}

// row makes a row about a front.
func (w *warner) row(f *plan.Front, cells []string) Row {
	if !w.shown {
		return Row{Cells: cells}
	}
	warning := ""
	if w.wrong[f.Number] {
		warning = w.say.Say(message.New("ERROR, see Findings"))
	}
	return Row{Cells: append(cells, warning)}
}
