package list

import (
	"strconv"
	"strings"

	"frontlay/layout/check"
	"frontlay/layout/plan"
	"frontlay/layout/season"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Season is the table of how solid wood moves through the year: gaps, fronts, what is fixed
// across the grain, panels in their groove. Without rows where nothing is to be studied.
func Season(p *plan.Plan, say Speaker) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	t := Table{
		Name: "season", Title: head("Solid wood through the year"),
		Columns: []Column{
			{Head: head("What moves"), Weight: 2.6}, {Head: head("Today"), Weight: 0.9, Right: true, Length: true},
			{Head: head("Driest"), Weight: 0.9, Right: true, Length: true}, {Head: head("Dampest"), Weight: 0.9, Right: true, Length: true}, {Head: head("What to do, or how it comes about"), Weight: 4.2},
		},
	}
	s, ok := season.Of(p)
	if !ok {
		return t
	}
	t.Intro = []string{say.Sentence(s.Told()), head("Wood of one species differs from tree to tree, and finished wood follows the air slowly: what comes out is what to expect, not what will be measured."), say.Say(message.New("Sizes in %v.", UnitWord(say.Unit)))}
	group := func(m string, some bool) {
		if some {
			t.Rows = append(t.Rows, Row{Group: true, Cells: []string{head(m)}})
		}
	}
	row := func(what message.Message, today, dry, damp length.Length, do message.Message) {
		t.Rows = append(t.Rows, Row{Cells: []string{say.Say(what), say.Figure(season.Shown(today)), say.Figure(season.Shown(dry)), say.Figure(season.Shown(damp)), say.Sentence(do)}})
	}
	y := s.Year
	group("Gaps", len(s.Gaps) > 0)
	least, greatest := check.GapsWanted(p.Project)
	for i := range s.Gaps {
		g := &s.Gaps[i]
		from, to, fits := g.Today(y, least, greatest)
		var do message.Message
		switch {
		case !fits:
			do = message.New("it moves more than lies between %v and %v: build it %v, so that it stays open", least, greatest, from.CeilTo(check.GapStep(p.Project)))
		case from <= g.Size && g.Size <= to:
			do = message.New("nothing: built today from %v to %v, it stays between %v and %v", season.Shown(from), season.Shown(to), least, greatest)
		default:
			do = message.New("build it %v to %v today, so that it stays between %v and %v", season.Shown(from), season.Shown(to), least, greatest)
		}
		row(GapName(&g.Gap), g.Size, g.In(y, y.Driest), g.In(y, y.Dampest), do)
	}
	group("Fronts", len(s.Fronts) > 0)
	for i := range s.Fronts {
		f := &s.Fronts[i]
		for _, side := range []struct {
			what  message.Message
			size  length.Length
			terms season.Terms
		}{{message.New("Width of front %v", Called(f.Front)), f.Face.Width(), f.Width}, {message.New("Height of front %v", Called(f.Front)), f.Face.Height(), f.Height}} {
			if len(side.terms) > 0 {
				row(side.what, side.size, side.size-side.terms.Change(y.Today-y.Driest), side.size+side.terms.Change(y.Dampest-y.Today),
					message.New("%v = %v from driest to dampest", side.terms.Say(y.Change()), season.Shown(side.terms.Change(y.Change()))))
			}
		}
	}
	group("Fixings across the grain", len(s.Fixings) > 0)
	for i, x := range s.Fixings {
		who, first := alike(s.Fixings, i)
		if !first {
			continue
		}
		swell, shrink := x.Room(y)
		do := message.New("nothing: the screws can slip by %v", x.Play)
		if x.Needed(y) > x.Play {
			do = x.Advice(y)
		}
		row(message.New("Front %v: %v", who, x.Term.What), x.Term.Size, x.Term.Size-shrink, x.Term.Size+swell, do)
	}
	group("Panels", len(s.Panels) > 0)
	for _, v := range s.Panels {
		row(message.New("Front %v: %v", Called(v.Front), v.Term.What), v.Term.Size, v.Term.Size-v.Term.Change(y.Drier()), v.Term.Size+v.Term.Change(y.Damper()),
			message.New("don't glue it; keep each edge %v or more from the groove's bottom (it has %v); driest, it still reaches %v into the groove", season.Shown(v.NeededRoom(y)), v.Room, season.Shown(v.ReachDry(y))))
	}
	t.Notes = []string{
		head("Change = size across the grain · coefficient of the species and cut · change of moisture in per cent (Wood Handbook, FPL-GTR-190, Eq. 13-2, coefficients of Table 13-5 or your own); moisture from the air by the Handbook's equation of Ch. 4 (from memory). Along the grain wood does not move."),
		head("A front is taken to be held at its lowest holes, and to move up from there; one whose grain runs upwards evenly to both sides; of a frame only stiles and rails move, and a rail evenly both ways."),
	}
	if y.Middle {
		t.Notes = append(t.Notes, head("The moisture of the wood today is not given: the middle of the year is taken. Measure it before you cut."))
	}
	if y.Outside() {
		t.Notes = append(t.Notes, head("The equation holds from 6 to 14 per cent; some of these moistures lie outside, so that the figures are rough."))
	}
	return t
}

// alike are the numbers of the fronts that have a fixing like the i-th one, told at the
// first of them.
func alike(all []season.Fixing, i int) (numbers string, first bool) {
	first = true
	var list []string
	for k, x := range all {
		if x.Kind == all[i].Kind && x.Term.Size == all[i].Term.Size && x.Term.Rate() == all[i].Term.Rate() && x.Play == all[i].Play {
			first = first && k >= i
			list = append(list, strconv.Itoa(x.Front.Number))
		}
	}
	return strings.Join(list, ", "), first
}

// Called names a front by its number, and its name where it has one of its own.
func Called(f *plan.Front) message.Message {
	if !f.Named() {
		return message.New("%v", f.Number)
	}
	return message.New("%v (%v)", f.Number, f.Name)
}

// GapName says where a gap is.
func GapName(g *plan.Gap) message.Message {
	switch g.Edge {
	case plan.LeftEdge:
		return message.New("Left of front %v", Called(g.Front))
	case plan.RightEdge:
		return message.New("Right of front %v", Called(g.Front))
	case plan.TopEdge:
		return message.New("Over front %v", Called(g.Front))
	}
	return message.New("Under front %v", Called(g.Front))
}
