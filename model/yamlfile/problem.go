package yamlfile

import (
	"errors"
	"fmt"
	"strings"

	"frontlay/model/message"
)

// ErrNewer is matched by errors.Is where a file has a newer format version than
// this program knows. Such a file must not be written over.
var ErrNewer = errors.New("the file has a newer format version")

// maxProblems is how many problems of one file are told; a file with more is
// rarely a file of ours.
const maxProblems = 20

// Problem is one thing that is wrong in a file. Line and Column count from 1
// and are 0 where the problem has no place (Column alone is 0 where only the
// line is known). Path is the way to the value by keys and indexes from 0.
type Problem struct {
	File         string
	Line, Column int
	Path         string
	Message      message.Message // what is wrong
	Advice       message.Message // what to do
	newer        bool
}

// Error is the problem in one line: file:line:column: what; what to do.
func (p *Problem) Error() string { return p.Say(message.Language{}) }

// Say is Error in another language.
func (p *Problem) Say(l message.Language) string {
	var b strings.Builder
	b.WriteString(p.File)
	if p.Line > 0 {
		fmt.Fprintf(&b, ":%d", p.Line)
		if p.Column > 0 {
			fmt.Fprintf(&b, ":%d", p.Column)
		}
	}
	if b.Len() > 0 {
		b.WriteString(": ")
	}
	b.WriteString(l.Say(p.Message))
	if !p.Advice.Empty() {
		b.WriteString("; " + l.Say(p.Advice))
	}
	return b.String()
}

// Is tells errors.Is that a problem is about a newer format version.
func (p *Problem) Is(target error) bool { return target == ErrNewer && p.newer }

// Problems are all that was found wrong in a file, at least one, in the order
// of the file.
type Problems []*Problem

// Error lists the problems, one a line.
func (ps Problems) Error() string { return ps.Say(message.Language{}) }

// Say is Error in another language.
func (ps Problems) Say(l message.Language) string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.Say(l)
	}
	return strings.Join(lines, "\n")
}

// Is tells errors.Is whether one of the problems is target.
func (ps Problems) Is(target error) bool {
	for _, p := range ps {
		if p.Is(target) {
			return true
		}
	}
	return false
}
