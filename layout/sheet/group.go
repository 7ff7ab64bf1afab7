package sheet

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"frontlay/layout/check"
	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

// group is the fronts that one template serves: the same holes from the bottom
// edge and from their own side edge, or some of those of the first.
type group struct {
	fronts []*plan.Front
	some   []group // those of its fronts that have only some of its holes
}

// first stands for the group: it has the holes of all.
func (g group) first() *plan.Front { return g.fronts[0] }

// inOrder are the group's fronts by number.
func (g group) inOrder() []*plan.Front {
	return slices.SortedFunc(slices.Values(g.fronts), func(a, b *plan.Front) int { return a.Number - b.Number })
}

// sameHeight tells that the group's fronts have their top edge at the same height.
func (g group) sameHeight() bool {
	return !slices.ContainsFunc(g.fronts, func(f *plan.Front) bool { return f.Face.Height() != g.first().Face.Height() })
}

// only says which fronts of the group have a hole of the first; empty where all do.
func (g group) only(b bore) message.Message {
	without := map[*plan.Front]bool{}
	for _, part := range g.some {
		if !slices.Contains(cornerHoles(part.first()), cornerHoles(g.first())[b.subject.Index]) {
			for _, f := range part.fronts {
				without[f] = true
			}
		}
	}
	var numbers []string
	for _, f := range g.inOrder() {
		if !without[f] {
			numbers = append(numbers, strconv.Itoa(f.Number))
		}
	}
	switch len(numbers) {
	case len(g.fronts):
		return message.Message{}
	case 1:
		return message.New("ONLY front %v", numbers[0])
	}
	return message.New("ONLY fronts %v", strings.Join(numbers, ", "))
}

// longestNames is how many letters the names of fronts may take together; their
// numbers are enough where that is more.
const longestNames = 60

// names says which fronts the template is for.
func (g group) names() message.Message {
	if slices.ContainsFunc(g.fronts, func(f *plan.Front) bool { return f.Nth > 0 }) {
		m := g.first().Called()
		for _, f := range g.fronts[1:] {
			m = message.New("%v; %v", m, f.Called())
		}
		return m
	}
	if len(g.fronts) == 1 {
		return message.New("Front %v: %v", g.first().Number, clipped(g.first().Name, 90))
	}
	var names, numbers []string
	for _, f := range g.inOrder() {
		names = append(names, fmt.Sprintf("%d %s", f.Number, f.Name))
		numbers = append(numbers, fmt.Sprint(f.Number))
	}
	if all := strings.Join(names, ", "); len(all) <= longestNames {
		return message.New("For fronts %v", all)
	}
	return message.New("For fronts %v", clipped(strings.Join(numbers, ", "), 4*longestNames))
}

// mostSizes is how many sizes of fronts a template names.
const mostSizes = 3

// sizes says how large the panels are that the template is laid on.
func (g group) sizes(say message.Language) message.Message {
	var all []string
	for _, f := range g.inOrder() {
		if s := panelSize(f.Face.Width(), f.Face.Height(), say); !slices.Contains(all, s) {
			all = append(all, s)
		}
	}
	if len(all) > mostSizes {
		return message.New("Panels of %v sizes, see the cut list", len(all))
	}
	return said(strings.Join(all, ", "))
}

// panelSize writes the size of a panel, which no line parts.
func panelSize(w, h length.Length, say message.Language) string {
	return say.Figure(w) + "\u00a0×\u00a0" + say.Length(h)
}

// groups gathers the fronts that are asked for and drilled; same tells what must
// be equal for two fronts to share a template, and is empty where a front has
// nothing to drill.
func groups(p *plan.Plan, o Options, same func(*plan.Front) string) []group {
	var all []group
	for _, equal := range gathered(p.Fronts, func(f *plan.Front) string {
		if !o.wantsFront(f.Number) {
			return ""
		}
		return same(f)
	}) {
		all = append(all, group{fronts: equal})
	}
	return all
}

// gathered puts together what is the same, in the order of the first of each; what is
// the same as nothing, not even itself, is left out.
func gathered[T any](list []T, same func(*T) string) [][]*T {
	var all [][]*T
	at := map[string]int{}
	for i := range list {
		key := same(&list[i])
		if key == "" {
			continue
		}
		if _, ok := at[key]; !ok {
			at[key] = len(all)
			all = append(all, nil)
		}
		all[at[key]] = append(all[at[key]], &list[i])
	}
	return all
}

// cornerGroups gathers the fronts that share corner templates. A front whose holes
// are some of another's shares that one's, which say what is not for all.
func cornerGroups(p *plan.Plan, o Options) []group {
	all := groups(p, o, sameCorners)
	most := slices.Clone(all)
	slices.SortStableFunc(most, func(a, b group) int { return len(b.first().Holes) - len(a.first().Holes) })
	serves := map[*plan.Front][]group{} // by the first of the group that serves them
	served := map[*plan.Front]bool{}
	having := map[string][]*plan.Front{} // the firsts of groups that serve, by each of their holes
	for _, g := range most {
		own := cornerHoles(g.first())
		common := having[own[0]]
		for _, k := range own[1:] {
			common = slices.DeleteFunc(slices.Clone(common), func(f *plan.Front) bool { return !slices.Contains(having[k], f) })
		}
		if len(common) > 0 {
			serves[common[0]], served[g.first()] = append(serves[common[0]], g), true
			continue
		}
		for _, k := range own {
			having[k] = append(having[k], g.first())
		}
	}
	var kept []group
	for _, g := range all {
		if served[g.first()] {
			continue
		}
		g.some = serves[g.first()]
		for _, part := range g.some {
			g.fronts = append(g.fronts, part.fronts...)
		}
		kept = append(kept, g)
	}
	return kept
}

// cornerHoles holds what a pair of corner templates shows of each of a front's
// holes; the same of all in its middle, which it does not show.
func cornerHoles(f *plan.Front) []string {
	var all []string
	for _, h := range f.Holes {
		in := h.At.X
		if h.Side == plan.Right {
			in = f.Face.Width() - h.At.X
		}
		key := fmt.Sprintln(h.Side, int64(in), int64(h.At.Y), int64(h.Diameter), int64(h.Depth))
		if h.Kind == plan.StabiliserHole {
			key = ""
		}
		all = append(all, key)
	}
	return all
}

// sameCorners holds what a pair of corner templates shows.
func sameCorners(f *plan.Front) string { return strings.Join(cornerHoles(f), "") }

// sameWhole holds what a whole-front template shows.
func sameWhole(f *plan.Front) string {
	if len(f.Holes) == 0 {
		return ""
	}
	return fmt.Sprintln(int64(f.Face.Width()), int64(f.Face.Height())) + sameCorners(f) + middleKey(f)
}

// fromSide is how far a hole in the rear frame lies from its own side edge.
func fromSide(f *plan.Front, b bore) length.Length {
	if b.side == plan.Left {
		return f.Face.Width() - b.at.X // the left in the room is the right on paper
	}
	return b.at.X
}

// alike tells that all fronts of a group are of one board, and built alike.
func (g group) alike() bool {
	return !slices.ContainsFunc(g.fronts, func(f *plan.Front) bool { return f.Made != g.first().Made })
}

// forbidden is work for the front of a number that must not be done as it is
// planned.
type forbidden struct {
	work  check.Work
	front int
}

// refused is the work that open errors forbid.
func refused(findings []check.Finding) map[forbidden]bool {
	all := map[forbidden]bool{}
	for i := range findings {
		if f := &findings[i]; f.Open() && f.Forbids != check.Nothing {
			all[forbidden{f.Forbids, f.Front}], all[forbidden{f.Forbids, f.Other}] = true, true
		}
	}
	return all
}

// refusal is what stands in a template's own block where it must not be drilled
// for some of its fronts; empty where it may be for all.
func (o Options) refusal(w check.Work, fronts []*plan.Front) message.Message {
	var numbers []string
	for _, f := range fronts {
		if o.refused[forbidden{w, f.Number}] {
			numbers = append(numbers, strconv.Itoa(f.Number))
		}
	}
	switch len(numbers) {
	case 0:
		return message.Message{}
	case len(fronts):
		return message.New("DO NOT DRILL: error, see Findings")
	case 1:
		return message.New("DO NOT DRILL front %v: error, see Findings", numbers[0])
	}
	return message.New("DO NOT DRILL fronts %v: error, see Findings", strings.Join(numbers, ", "))
}
