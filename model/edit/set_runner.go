package edit

import (
	"strings"

	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetRunner asks for a runner of a length of the hardware sheet; 0 asks for the
// longest that fits.
type SetRunner struct {
	At     model.Place
	Length length.Length
}

// Label names the change.
func (e SetRunner) Label() message.Message {
	if e.Length == 0 {
		return message.New("Longest runner that fits")
	}
	return message.New("Runner %v", e.Length)
}

// Apply makes the change. A length that the sheet does not have is refused with
// those that it has.
func (e SetRunner) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.Length != 0 {
		s := sheetOf(c, c.BayAt(e.At), f)
		if s == nil {
			return nil, message.New("This bay has no hardware sheet yet. Choose one for it first.")
		}
		if !hasRunner(s, e.Length) {
			var have []string
			for _, r := range s.Runner.Lengths {
				have = append(have, r.Length.String())
			}
			return nil, message.New("The hardware sheet has no runner of %v. It has: %v.", e.Length, strings.Join(have, ", "))
		}
	}
	f.Runner = e.Length
	return c, nil
}
