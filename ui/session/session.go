// Package session is what the window works on, without any widget: the project
// with its history, what the layout works out from it, what is selected, and
// the gesture that is going on.
package session

import (
	"reflect"

	"frontlay/layout"
	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/history"
	"frontlay/model/message"
)

// steps is how many changes can be undone.
const steps = 1000

// Solver works out what follows from a project. It is layout.Solve but in
// tests.
type Solver func(*model.Project) layout.Result

// Change tells listeners what is different.
type Change uint8

// What can be different; several are added up.
const (
	Document Change = 1 << iota // the project or what follows from it
	Selected
	Saved
	Chosen // another finding
)

// state is one step of the history.
type state struct {
	project   *model.Project
	selection []drawing.Subject
}

// Session holds one open project. It is not safe for several goroutines.
type Session struct {
	solve   Solver
	history *history.History[state]
	result  layout.Result
	gesture *gesture
	row     any                     // what the last step was made of by More; nil: by something else
	chosen  *chosen                 // nil: no finding is
	offered map[finding][]edit.Edit // what is known to mend findings of result
	listen  []func(Change)
}

// gesture is a change in the making.
type gesture struct {
	edit    edit.Edit // the last one that could be made
	project *model.Project
	result  layout.Result
}

// New opens a session on a project, which it will not change in place.
func New(p *model.Project, solve Solver) *Session {
	s := &Session{solve: solve, history: history.New(state{project: p}, steps)}
	s.result = solve(p)
	return s
}

// Listen adds a function that is called after every change.
func (s *Session) Listen(f func(Change)) { s.listen = append(s.listen, f) }

// Forget takes every listener away, before a window is made anew.
func (s *Session) Forget() { s.listen = nil }

func (s *Session) tell(c Change) {
	for _, f := range s.listen {
		f(c)
	}
}

// Project is the document as it is shown: with the gesture that is going on.
func (s *Session) Project() *model.Project {
	if s.gesture != nil && s.gesture.edit != nil {
		return s.gesture.project
	}
	return s.history.Current().project
}

// Committed is the document without the gesture that is going on.
func (s *Session) Committed() *model.Project { return s.history.Current().project }

// Result is what follows from Project.
func (s *Session) Result() layout.Result {
	if s.gesture != nil && s.gesture.edit != nil {
		return s.gesture.result
	}
	return s.result
}

// CommittedResult is what follows from Committed.
func (s *Session) CommittedResult() layout.Result { return s.result }

// Do makes a change as one step. A gesture that is going on is given up. Where
// the change can't be made or changes nothing, the document stays as it is.
func (s *Session) Do(e edit.Edit) error {
	s.gesture, s.row = nil, nil
	next, err := e.Apply(s.Committed())
	if err != nil {
		return err
	}
	s.put(e.Label(), next, nil)
	return nil
}

// More makes a change as Do does, as one step with the changes before it that were
// made of the same: notches of a wheel, a key that repeats. Whatever else is done in
// between begins another step. of is comparable.
func (s *Session) More(of any, e edit.Edit) error {
	going := s.row == of
	next, err := e.Apply(s.Committed())
	if err != nil {
		return err
	}
	if going {
		s.history.Undo() // the step becomes another
		if reflect.DeepEqual(next, s.Committed()) {
			s.moved() // back where it began
			return nil
		}
	}
	s.gesture = nil
	s.put(e.Label(), next, nil)
	s.row = of
	return nil
}

// Apart makes the next change a step of its own.
func (s *Session) Apart() { s.row = nil }

// put makes a project that is different from the one before a step. Where its
// result is not known yet it is worked out.
func (s *Session) put(label message.Message, next *model.Project, known *layout.Result) {
	if reflect.DeepEqual(next, s.Committed()) {
		return
	}
	sel := s.Selection()
	if known == nil {
		solved := s.solve(next)
		known = &solved
	}
	s.result, s.offered = *known, nil
	s.history.Do(label, state{next, existing(next, sel)})
	s.tell(Document | Selected | Saved)
}

// Begin starts a gesture: a row of previews of which the last becomes one step.
func (s *Session) Begin() { s.gesture, s.row = &gesture{}, nil }

// InGesture tells that a gesture is going on.
func (s *Session) InGesture() bool { return s.gesture != nil }

// Preview shows the document with an edit made, in place of the preview before.
// Where the edit can't be made, the preview before stays.
func (s *Session) Preview(e edit.Edit) error {
	if s.gesture == nil {
		s.Begin()
	}
	next, err := e.Apply(s.Committed())
	if err != nil {
		return err
	}
	s.gesture.edit, s.gesture.project, s.gesture.result = e, next, s.solve(next)
	s.tell(Document)
	return nil
}

// Commit makes the last preview one step. Without a preview, or where that has
// changed nothing in the end, there is no step.
func (s *Session) Commit() {
	g := s.gesture
	s.gesture = nil
	if g == nil || g.edit == nil {
		return
	}
	s.put(g.edit.Label(), g.project, &g.result)
}

// Cancel gives up the gesture; everything is as it was before Begin.
func (s *Session) Cancel() {
	g := s.gesture
	s.gesture = nil
	if g != nil && g.edit != nil {
		s.tell(Document)
	}
}

// Undo takes the last step back and gives its label.
func (s *Session) Undo() (message.Message, bool) {
	s.Cancel()
	l, ok := s.history.Undo()
	if ok {
		s.moved()
	}
	return l, ok
}

// Redo makes the step that was undone again and gives its label.
func (s *Session) Redo() (message.Message, bool) {
	s.Cancel()
	l, ok := s.history.Redo()
	if ok {
		s.moved()
	}
	return l, ok
}

// Go goes to the state after a number of done steps (see Steps).
func (s *Session) Go(done int) {
	s.Cancel()
	s.history.Go(done)
	s.moved()
}

func (s *Session) moved() {
	s.row = nil
	s.result, s.offered = s.solve(s.Committed()), nil
	s.tell(Document | Selected | Saved)
}

// CanUndo gives the label of the step that Undo would take back.
func (s *Session) CanUndo() (message.Message, bool) { return s.history.CanUndo() }

// CanRedo gives the label of the step that Redo would make again.
func (s *Session) CanRedo() (message.Message, bool) { return s.history.CanRedo() }

// Steps lists the labels of all steps, oldest first, and how many are done.
func (s *Session) Steps() ([]message.Message, int) { return s.history.Labels() }

// MarkSaved notes that the committed document is on disk.
func (s *Session) MarkSaved() {
	s.row = nil
	s.history.MarkSaved()
	s.tell(Saved)
}

// MarkUnsaved notes that no version of the document is on disk.
func (s *Session) MarkUnsaved() {
	s.row = nil
	s.history.MarkUnsaved()
	s.tell(Saved)
}

// Unsaved tells that the committed document is not the one on disk.
func (s *Session) Unsaved() bool { return !s.history.Saved() }
