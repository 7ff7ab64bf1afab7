package yamlfile

import (
	"errors"
	"strconv"
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
	cause        error
}

// Error is the problem in one line: file:line:column: what; what to do.
func (p *Problem) Error() string { return p.Say(message.Language{}) }

// Say is Error in another language.
func (p *Problem) Say(l message.Language) string { return l.Say(p.told()) }

// As lets errors.As find a message.Message in the error.
func (p *Problem) As(target any) bool { return asMessage(target, p.told()) }

func (p *Problem) told() message.Message {
	m := p.Message
	if !p.Advice.Empty() {
		m = message.New("%v; %v", m, p.Advice)
	}
	place := p.File
	if p.Line > 0 {
		place += ":" + strconv.Itoa(p.Line)
		if p.Column > 0 {
			place += ":" + strconv.Itoa(p.Column)
		}
	}
	if place == "" {
		return m
	}
	return message.New("%v: %v", place, m)
}

// asMessage puts a message where errors.As asks for one.
func asMessage(target any, m message.Message) bool {
	to, ok := target.(*message.Message)
	if ok {
		*to = m
	}
	return ok
}

// Unwrap gives the error of a SheetSource that kept a hardware sheet from being
// read, nil for other problems.
func (p *Problem) Unwrap() error { return p.cause }

// Is tells errors.Is that a problem is about a newer format version.
func (p *Problem) Is(target error) bool { return target == ErrNewer && p.newer }

// Problems are all that was found wrong in a file, at least one, in the order
// of the file.
type Problems []*Problem

// Error lists the problems, one a line.
func (ps Problems) Error() string { return ps.Say(message.Language{}) }

// Say is Error in another language.
func (ps Problems) Say(l message.Language) string { return l.Say(ps.told()) }

// As lets errors.As find a message.Message in the error.
func (ps Problems) As(target any) bool { return asMessage(target, ps.told()) }

func (ps Problems) told() message.Message {
	args := make([]any, len(ps))
	for i, p := range ps {
		args[i] = p.told()
	}
	return message.Message{Text: strings.TrimSuffix(strings.Repeat("%v\n", len(ps)), "\n"), Args: args}
}

// Unwrap gives the problems, so that errors.Is and errors.As look into them.
func (ps Problems) Unwrap() []error {
	all := make([]error, len(ps))
	for i, p := range ps {
		all[i] = p
	}
	return all
}
