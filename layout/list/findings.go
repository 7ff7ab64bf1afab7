package list

import (
	"frontlay/layout/check"
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
