package plan

import "frontlay/model"

// Make works out the plan of a project.
func Make(p *model.Project) *Plan { return &Plan{Project: p} }
