// Package layout is the one door to the layout engine.
package layout

import (
	"reflect"
	"slices"

	"frontlay/layout/check"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
)

// Result is what the engine works out from a project.
type Result struct {
	Plan     *plan.Plan
	Findings []check.Finding
}

// Solve places everything and checks it. It never fails: what can't be placed
// is a finding. The project is not changed. It is deterministic.
func Solve(p *model.Project) Result {
	pl := plan.Make(p)
	return Result{Plan: pl, Findings: check.All(pl)}
}

// Offered gives those of a finding's fixes that really mend it: applied to the
// project they can be made, the finding is gone (or, where there are several of
// its rule at its place, fewer), and no error is there that was not before. Of
// changes that come to the same the first is given, and no more than a person
// likes to choose from.
func Offered(p *model.Project, r Result, f check.Finding) []edit.Edit {
	const most = 4
	var good []edit.Edit
	var made []*model.Project
	before := tally(r.Findings)
	for _, e := range f.Fixes {
		if len(good) == most {
			break
		}
		changed, err := e.Apply(p)
		if err != nil || slices.ContainsFunc(made, func(q *model.Project) bool { return reflect.DeepEqual(q, changed) }) {
			continue
		}
		after := tally(Solve(changed).Findings)
		k := spot{f.Rule, f.Place}
		if after[k].all < before[k].all && !worse(before, after) {
			good, made = append(good, e), append(made, changed)
		}
	}
	return good
}

// Worse tells that of two results' findings the second have an error where the first
// have none, or more of one rule at a place.
func Worse(before, after []check.Finding) bool { return worse(tally(before), tally(after)) }

type spot struct {
	rule  string
	place model.Place
}

type count struct{ all, errors int }

func tally(found []check.Finding) map[spot]count {
	t := make(map[spot]count, len(found))
	for i := range found {
		k := spot{found[i].Rule, found[i].Place}
		c := t[k]
		c.all++
		if found[i].Severity == check.Error {
			c.errors++
		}
		t[k] = c
	}
	return t
}

func worse(before, after map[spot]count) bool {
	for k, c := range after {
		if c.errors > before[k].errors {
			return true
		}
	}
	return false
}
