package edit

import (
	"strings"

	"frontlay/model"
	"frontlay/model/message"
)

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
