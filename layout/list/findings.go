package list

import (
	"frontlay/layout/check"
	"frontlay/model/message"
)

// Findings is the table of what the check found, in its order.
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
	for _, f := range findings {
		t.Rows = append(t.Rows, Row{Cells: []string{
			"□", say.Say(severity(f.Severity)), say.Say(f.Where), say.Say(f.What), say.Say(f.Change),
		}})
	}
	if len(findings) == 0 {
		t.Notes = append(t.Notes, say.Say(message.New("The check found nothing to mend.")))
	}
	return t
}

func severity(s check.Severity) message.Message {
	switch s {
	case check.Error:
		return message.New("error")
	case check.Warning:
		return message.New("warning")
	}
	return message.New("advice")
}
