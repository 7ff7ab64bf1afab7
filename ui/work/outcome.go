package work

import "frontlay/model/message"

// Outcome is what came of a step. A window shows it in the order of its fields.
type Outcome struct {
	// Show tells that another project has taken the place of what was open: the
	// work has another session.
	Show bool
	// File is the path of a file that was opened or saved; empty: none was.
	File string
	// Told is told in passing; it may be empty.
	Told message.Message
	// Err is told until it is read.
	Err error
	// Ask and Path are questions without whose answer the step does not go on; at
	// most one is there.
	Ask  *Question
	Path *PathQuestion
	// Done tells that the step has done all that it was asked for.
	Done bool
}

// Question asks for one of several answers. The last one changes nothing.
type Question struct {
	Title, Text message.Message
	Answers     []Answer
}

// Answer is an answer with the step that it leads to; nil: to none.
type Answer struct {
	Text message.Message
	Then func() Outcome
}

// Choose goes on with an answer.
func (q *Question) Choose(i int) Outcome {
	if then := q.Answers[i].Then; then != nil {
		return then()
	}
	return Outcome{}
}

// PathQuestion asks where to save a project.
type PathQuestion struct {
	Title message.Message
	Name  string // of the file, without its extension
	Then  func(path string) Outcome
}

// cancel is the answer that changes nothing.
var cancel = Answer{Text: message.New("Cancel")}
