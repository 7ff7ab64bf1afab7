package yamlfile

import (
	"fmt"
	"strings"

	"gopkg.in/yaml.v3"

	"frontlay/model"
	"frontlay/model/length"
)

func checksFields(c *model.Checks, limits []model.Limit) []field {
	return []field{
		words("severity", "How bad the findings of a rule are in this project, by the rule's name.", &c.Severity, "error", "warning", "advice", "off"),
		group("limits", "Figures that the check compares with.", limitFields(&c.Limits, limits)...),
		accepted.field(&c.Accepted),
	}
}

// limitFields are the limits that the rules have.
func limitFields(set *map[string]length.Length, limits []model.Limit) []field {
	fields := make([]field, len(limits))
	for i, l := range limits {
		fields[i] = limit(l, set)
	}
	return fields
}

// limit is a size in the map of those that a project sets.
func limit(l model.Limit, set *map[string]length.Length) field {
	return field{
		key: l.Key, doc: limitDoc(l),
		read: func(r *reader, n *yaml.Node) {
			if v, ok := r.size(n, l.Least, l.Greatest); ok {
				if *set == nil {
					*set = map[string]length.Length{}
				}
				(*set)[l.Key] = v
			}
		},
		write: func(w *writer, old *yaml.Node) *yaml.Node {
			v, given := (*set)[l.Key]
			if !given {
				return nil
			}
			return w.size(v, old)
		},
		schema: sizeSchema,
		value:  "size" + rangeText(l.Least, l.Greatest),
	}
}

// limitDoc is what a limit is for, in English.
func limitDoc(l model.Limit) string {
	unset := l.Unset.String()
	if l.Unset.Empty() {
		unset = l.Usual.String()
	}
	title := l.Title.String()
	return fmt.Sprintf("%s%s; %s where it is left out.", strings.ToUpper(title[:1]), title[1:], unset)
}

var accepted = listOf[model.Accepted]{
	key: "accepted", doc: "Findings that are accepted, each with the reason.", most: 10_000,
	sign: func(a *model.Accepted) string { return a.Rule + "\n" + a.Cabinet + "\n" + a.Front },
	item: acceptedFields,
}

func acceptedFields(a *model.Accepted) []field {
	return []field{
		text("rule", "Name of the rule.", &a.Rule).needed(),
		text("cabinet", "Name of the cabinet.", &a.Cabinet),
		count("bay", "Number of the bay, from 1 at the left.", &a.Bay, 1, maxBays),
		text("front", "Name of the front, or its number in the stack from 1 at the bottom.", &a.Front),
		size("short", "How far the figure was off when it was accepted; one that is further off is told again. Any where it is left out.", &a.Short, 0, maxSize),
		notes("reason", "Why the finding is accepted; it is printed.", &a.Reason),
	}
}
