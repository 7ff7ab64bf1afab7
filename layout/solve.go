// Package layout is the one door to the layout engine.
package layout

import (
	"frontlay/layout/check"
	"frontlay/layout/plan"
	"frontlay/model"
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
