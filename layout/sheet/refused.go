package sheet

import (
	"strconv"
	"strings"

	"frontlay/layout/check"
	"frontlay/model/message"
)

// refused are the numbers of the fronts that must not be drilled as they are
// planned: those with an error about their holes, or about the drawer that they
// belong to, that the user does not accept.
func refused(findings []check.Finding) map[int]bool {
	fronts := map[int]bool{}
	for _, f := range findings {
		if f.Severity == check.Error && f.Accepted == "" && f.Front > 0 && aboutHoles(f.Rule) {
			fronts[f.Front] = true
		}
	}
	return fronts
}

func aboutHoles(rule string) bool {
	switch rule {
	case "hole-edge", "hole-gap", "hole-lipping", "hole-depth", "drawer-size":
		return true
	}
	return false
}

// refusal is what stands in a template's own block where some of its fronts must
// not be drilled; empty where all may be.
func (g group) refusal(o Options) message.Message {
	var numbers []string
	for _, f := range g.fronts {
		if o.refused[f.Number] {
			numbers = append(numbers, strconv.Itoa(f.Number))
		}
	}
	switch len(numbers) {
	case 0:
		return message.Message{}
	case len(g.fronts):
		return message.New("DO NOT DRILL: error, see Findings")
	}
	return message.New("DO NOT DRILL fronts %v: error, see Findings", strings.Join(numbers, ", "))
}
