package figure

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Checks are those of the settings of the check.
func Checks(c *model.Checks, limits []model.Limit) []Row {
	return []Row{
		{Key: "severity", Doc: message.New("How bad the findings of a rule are in this project, by the rule's name."), Value: &Words{[]string{"error", "warning", "advice", "off"}, &c.Severity}},
		group("limits", "", "Figures that the check compares with.", limitRows(&c.Limits, limits)),
		list("accepted", "", "Findings that are accepted, each with the reason.", &c.Accepted, maxFronts, false, func(a *model.Accepted) string { return a.Rule + "\n" + a.Cabinet + "\n" + a.Front }, accepted),
	}
}

// limitRows are the figures that the rules compare with; set holds those that a project
// sets.
func limitRows(set *map[string]length.Length, limits []model.Limit) []Row {
	rows := make([]Row, len(limits))
	for i, l := range limits {
		rows[i] = Row{Key: l.Key, Doc: limitDoc(l), Value: &Size{
			Least: l.Least, Greatest: l.Greatest, Nothing: true,
			Get: func() (length.Length, bool) { v, given := (*set)[l.Key]; return v, given },
			Set: func(v length.Length) {
				if *set == nil {
					*set = map[string]length.Length{}
				}
				(*set)[l.Key] = v
			},
			Unset: func() { delete(*set, l.Key) },
		}}
	}
	return rows
}

// limitDoc is what a limit is for.
func limitDoc(l model.Limit) message.Message {
	unset := l.Unset
	if unset.Empty() {
		unset = message.New("%v", l.Usual)
	}
	return message.New("Limit: %v; %v where it is left out.", l.Title, unset)
}

func accepted(a *model.Accepted) []Row {
	return []Row{
		line("rule", "", "Name of the rule.", &a.Rule).needed(),
		line("cabinet", "", "Name of the cabinet.", &a.Cabinet),
		count("bay", "", "Number of the bay, from 1 at the left.", &a.Bay, 1, maxBays),
		line("front", "", "Name of the front, or its number in the stack from 1 at the bottom.", &a.Front),
		size("short", "", "How far the figure was off when it was accepted; one that is further off is told again. Any where it is left out.", &a.Short, 0, maxSize),
		notes("reason", "", "Why the finding is accepted; it is printed.", &a.Reason),
	}
}
