package sheet

import (
	"strconv"
	"strings"

	"frontlay/layout/check"
	"frontlay/model/message"
)

// refused are the numbers of the fronts that must not be drilled as they are
// planned: those with an open error of a rule that forbids it.
func refused(findings []check.Finding) map[int]bool {
	fronts := map[int]bool{}
	for i := range findings {
		if f := &findings[i]; f.Open() && f.Front > 0 && f.Forbids == check.Drilling {
			fronts[f.Front] = true
		}
	}
	return fronts
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
	case 1:
		return message.New("DO NOT DRILL front %v: error, see Findings", numbers[0])
	}
	return message.New("DO NOT DRILL fronts %v: error, see Findings", strings.Join(numbers, ", "))
}
