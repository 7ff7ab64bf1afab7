// Package history keeps the versions of a document with their names, so that
// they can be undone and done again. Documents are values that are never changed
// in place; the package only holds and returns them.
package history

import "frontlay/model/message"

// History is a line of steps with a place in it. The zero value is not usable;
// see New.
type History[T any] struct {
	steps []step[T]
	at    int // index of the current state
	saved int // index of the state that is on disk, -1 when it can't come back
	limit int
}

// step is a state and how it came about. The label of the first is empty.
type step[T any] struct {
	label message.Message
	state T
}

// New makes a history that begins with a state and keeps at most limit steps
// behind it (at least 1). The first state counts as saved.
func New[T any](first T, limit int) *History[T] {
	return &History[T]{steps: []step[T]{{state: first}}, limit: max(limit, 1)}
}

// Current is the state now.
func (h *History[T]) Current() T { return h.steps[h.at].state }

// Do adds a step after the current one; steps that were undone are forgotten.
func (h *History[T]) Do(label message.Message, state T) {
	if h.saved > h.at {
		h.saved = -1
	}
	h.steps = append(h.steps[:h.at+1:h.at+1], step[T]{label, state})
	h.at++
	if over := len(h.steps) - 1 - h.limit; over > 0 {
		h.steps = append([]step[T](nil), h.steps[over:]...)
		h.at -= over
		h.saved = max(h.saved-over, -1)
	}
}

// Amend replaces the current state without a new step, for what belongs to it
// but is no change of the document, such as the selection.
func (h *History[T]) Amend(state T) { h.steps[h.at].state = state }

// Undo goes one step back and returns the label of the step that is undone.
func (h *History[T]) Undo() (message.Message, bool) {
	if h.at == 0 {
		return message.Message{}, false
	}
	label := h.steps[h.at].label
	h.at--
	return label, true
}

// Redo goes one step forward and returns the label of the step done again.
func (h *History[T]) Redo() (message.Message, bool) {
	if h.at+1 >= len(h.steps) {
		return message.Message{}, false
	}
	h.at++
	return h.steps[h.at].label, true
}

// CanUndo gives the label of the step that Undo would undo.
func (h *History[T]) CanUndo() (message.Message, bool) {
	if h.at == 0 {
		return message.Message{}, false
	}
	return h.steps[h.at].label, true
}

// CanRedo gives the label of the step that Redo would do again.
func (h *History[T]) CanRedo() (message.Message, bool) {
	if h.at+1 >= len(h.steps) {
		return message.Message{}, false
	}
	return h.steps[h.at+1].label, true
}

// Labels lists the names of all steps, oldest first, and how many of them are
// done; the others have been undone.
func (h *History[T]) Labels() (labels []message.Message, done int) {
	for _, s := range h.steps[1:] {
		labels = append(labels, s.label)
	}
	return labels, h.at
}

// Go goes to the state after a number of done steps, within what there is.
func (h *History[T]) Go(done int) { h.at = min(max(done, 0), len(h.steps)-1) }

// MarkSaved notes that the current state is on disk.
func (h *History[T]) MarkSaved() { h.saved = h.at }

// MarkUnsaved notes that no state is on disk.
func (h *History[T]) MarkUnsaved() { h.saved = -1 }

// Saved tells that the current state is the one on disk.
func (h *History[T]) Saved() bool { return h.saved == h.at }
