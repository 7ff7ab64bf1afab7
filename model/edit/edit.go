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
