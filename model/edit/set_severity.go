package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// SetSeverity says how bad the findings of a rule are in this project: "error",
// "warning", "advice" or "off"; empty for what is usual.
type SetSeverity struct {
	Rule     string
	Severity string
}

// Label names the change.
func (e SetSeverity) Label() message.Message { return message.New("Settings of the check") }

// Apply makes the change.
func (e SetSeverity) Apply(p *model.Project) (*model.Project, error) {
	switch e.Severity {
	case "", "error", "warning", "advice", "off":
	default:
		return nil, message.New("A rule is an error, a warning, advice, or off.")
	}
	c := p.Clone()
	if c.Checks.Severity == nil {
		c.Checks.Severity = map[string]string{}
	}
	delete(c.Checks.Severity, e.Rule)
	if e.Severity != "" {
		c.Checks.Severity[e.Rule] = e.Severity
	}
	if len(c.Checks.Severity) == 0 {
		c.Checks.Severity = nil
	}
	return c, nil
}
