package session

import "frontlay/model/message"

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
	s.result = s.solve(s.Committed())
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
	s.history.MarkSaved()
	s.tell(Saved)
}

// MarkUnsaved notes that no version of the document is on disk.
func (s *Session) MarkUnsaved() {
	s.history.MarkUnsaved()
	s.tell(Saved)
}

// Unsaved tells that the committed document is not the one on disk.
func (s *Session) Unsaved() bool { return !s.history.Saved() }
