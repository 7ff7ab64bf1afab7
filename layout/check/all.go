package check

import "frontlay/layout/plan"

// All runs every rule over a plan.
func All(p *plan.Plan) []Finding { return nil }
