package edit

import (
	"strings"

	"frontlay/model"
	"frontlay/model/length"
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

// SetCheckLimit sets a limit of the check, within its bounds; nil for what is
// usual.
type SetCheckLimit struct {
	Limit model.Limit
	Value *length.Length
}

// Label names the change.
func (e SetCheckLimit) Label() message.Message { return message.New("Limits of the check") }

// Apply makes the change. A limit must not pass the one that it is the other end
// of, where the project sets that.
func (e SetCheckLimit) Apply(p *model.Project) (*model.Project, error) {
	c := p.Clone()
	if e.Value == nil {
		delete(c.Checks.Limits, e.Limit.Key)
		if len(c.Checks.Limits) == 0 {
			c.Checks.Limits = nil
		}
		return c, nil
	}
	v := *e.Value
	if err := within(v, e.Limit.Least, e.Limit.Greatest); err != nil {
		return nil, err
	}
	if end, set := c.Checks.Limits[e.Limit.NotAbove]; set && v > end {
		return nil, message.New("The least of %v would be above the greatest of %v. Change one of the two.", v, end)
	}
	if end, set := c.Checks.Limits[e.Limit.NotBelow]; set && v < end {
		return nil, message.New("The greatest of %v would be below the least of %v. Change one of the two.", v, end)
	}
	if c.Checks.Limits == nil {
		c.Checks.Limits = map[string]length.Length{}
	}
	c.Checks.Limits[e.Limit.Key] = v
	return c, nil
}

// AcceptFinding notes in the project that a finding is accepted, with the
// reason, or takes that back.
type AcceptFinding struct {
	Finding model.Accepted
	Revoke  bool
}

// Label names the change.
func (e AcceptFinding) Label() message.Message {
	if e.Revoke {
		return message.New("Finding no longer accepted")
	}
	return message.New("Accept a finding")
}

// Apply makes the change. A reason of at least three letters is needed.
func (e AcceptFinding) Apply(p *model.Project) (*model.Project, error) {
	reason := strings.TrimSpace(lines(e.Finding.Reason))
	if !e.Revoke && len([]rune(reason)) < 3 {
		return nil, message.New("Write the reason in a few words. It is kept in the project and printed.")
	}
	if len([]rune(reason)) > 500 {
		return nil, message.New("A reason has at most %v letters.", 500)
	}
	c := p.Clone()
	kept := c.Checks.Accepted[:0]
	for _, a := range c.Checks.Accepted {
		if a.Rule != e.Finding.Rule || a.Cabinet != e.Finding.Cabinet || a.Bay != e.Finding.Bay || a.Front != e.Finding.Front {
			kept = append(kept, a)
		}
	}
	if c.Checks.Accepted = kept; len(kept) == 0 {
		c.Checks.Accepted = nil
	}
	if !e.Revoke {
		f := e.Finding
		f.Reason = reason
		c.Checks.Accepted = append(c.Checks.Accepted, f)
	}
	return c, nil
}
