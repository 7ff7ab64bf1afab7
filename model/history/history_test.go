package history

import (
	"testing"

	"pgregory.net/rapid"

	"frontlay/model/message"
)

func TestUndoAndRedoSayWhatTheyDo(t *testing.T) {
	h := New(0, 10)
	if _, ok := h.Undo(); ok {
		t.Fatal("there is nothing to undo at the start")
	}
	h.Do(message.New("one"), 1)
	h.Do(message.New("two"), 2)
	if l, ok := h.CanUndo(); !ok || l.Text != "two" {
		t.Fatalf("can undo %v, %v", l, ok)
	}
	if l, _ := h.Undo(); l.Text != "two" || h.Current() != 1 {
		t.Fatalf("undid %v, state %d", l, h.Current())
	}
	if l, ok := h.CanRedo(); !ok || l.Text != "two" {
		t.Fatalf("can redo %v, %v", l, ok)
	}
	h.Do(message.New("three"), 3)
	if _, ok := h.Redo(); ok {
		t.Fatal("a new step must end what was undone")
	}
	if labels, done := h.Labels(); len(labels) != 2 || done != 2 || labels[1].Text != "three" {
		t.Fatalf("labels %v, done %d", labels, done)
	}
}

func TestSavedMark(t *testing.T) {
	h := New("a", 10)
	if !h.Saved() {
		t.Fatal("a new history is saved")
	}
	h.Do(message.New("b"), "b")
	h.MarkSaved()
	h.Undo()
	if h.Saved() {
		t.Fatal("the state before the save is not the one on disk")
	}
	h.Do(message.New("c"), "c")
	h.Undo()
	h.Redo()
	if h.Saved() {
		t.Fatal("the saved state is gone, so nothing is saved")
	}
}

// The history must agree with a plain list of states.
func TestHistoryAgainstAList(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		const limit = 5
		h := New(0, limit)
		list, at, saved := []int{0}, 0, 0
		for n := range rapid.IntRange(1, 60).Draw(t, "steps") {
			switch rapid.IntRange(0, 3).Draw(t, "action") {
			case 0:
				h.Do(message.New("step"), n+1)
				list = append(list[:at+1], n+1)
				at++
				if len(list) > limit+1 {
					list, at = list[1:], at-1
				}
			case 1:
				h.Undo()
				at = max(at-1, 0)
			case 2:
				h.Redo()
				at = min(at+1, len(list)-1)
			case 3:
				h.MarkSaved()
				saved = list[at]
			}
			if h.Current() != list[at] {
				t.Fatalf("state %d, want %d", h.Current(), list[at])
			}
			if h.Saved() != (list[at] == saved) {
				t.Fatalf("saved %v at state %d, on disk %d", h.Saved(), list[at], saved)
			}
		}
	})
}
