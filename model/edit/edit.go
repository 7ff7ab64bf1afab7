// Package edit holds the named changes that can be made to a project. Each is a
// pure function from project to project, one a file; a finding's fix is one of
// them too.
package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// Edit is one named change. Apply returns a changed copy and leaves its
// argument as it was; where the change can't be made it returns a
// message.Message as its error, which says what would be possible.
type Edit interface {
	// Label names the change for the undo list, in a few words.
	Label() message.Message
	// Apply makes the change.
	Apply(p *model.Project) (*model.Project, error)
}

// Several is a row of edits that is one step to the user. Where one of them
// can't be made, none is.
type Several struct {
	Name  message.Message
	Edits []Edit
}

// Label names the change.
func (e Several) Label() message.Message { return e.Name }

// Apply makes the changes one after another.
func (e Several) Apply(p *model.Project) (*model.Project, error) {
	c := p.Clone()
	for _, one := range e.Edits {
		next, err := one.Apply(c)
		if err != nil {
			return nil, err
		}
		c = next
	}
	return c, nil
}

// Placed is an edit of one front, whose name says more to a person than the
// edit's label alone.
type Placed interface {
	// Place is the front's.
	Place() model.Place
}

// Place of the front whose height is set.
func (e SetHeight) Place() model.Place { return e.At }

// Place of the front that takes a share.
func (e SetShare) Place() model.Place { return e.At }

// Place of the front whose drawer is chosen.
func (e SetDrawer) Place() model.Place { return e.At }

// Place of the front whose runner is chosen.
func (e SetRunner) Place() model.Place { return e.At }

// Place of the front below the division.
func (e MoveDivision) Place() model.Place { return e.Below }
