package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
)

// says is what stands in the status line.
func (w *window) says() string {
	text, _ := w.desk.Says()
	return text
}

// refuses tells that it says why something can't be done.
func (w *window) refuses() bool {
	_, refused := w.desk.Says()
	return refused
}

// The status line speaks of the last thing done and of nothing before it.
func TestTheStatusLineForgets(t *testing.T) {
	lock := func(w *window) {
		w.session.Select(w.face(1))
		w.do("lock")
	}
	for _, c := range []struct {
		name   string
		before func(*window)
		said   string
		then   func(*window)
		want   string
	}{
		{"a step", lock, "Lock height", func(w *window) { w.do("undo") }, "Undone: Lock height"},
		{"a selection after undo", func(w *window) { lock(w); w.do("undo") }, "Undone: Lock height",
			func(w *window) { w.session.Select(w.face(2)) }, ""},
		{"a step in a field", func(w *window) { lock(w); w.do("undo") }, "Undone: Lock height", func(w *window) {
			w.desk.Inspector.Fields()["Name"].SetText("Pails")
			w.desk.Inspector.Fields()["Name"].Take()
		}, "Name the front “Pails”"},
		{"a drag that begins", lock, "Lock height", func(w *window) {
			w.session.Begin()
			_ = w.session.Preview(edit.Set{At: model.Whole, Key: "title", Value: "x"})
		}, ""},
		{"another project", lock, "Lock height", func(w *window) { w.session.MarkSaved(); w.files.Example("glaze-bench") }, ""},
		{"another language", lock, "Lock height", func(w *window) { w.speak("de") }, ""},
		{"saving keeps what it says", lock, "Lock height", func(w *window) { w.session.MarkSaved() }, "Lock height"},
	} {
		t.Run(c.name, func(t *testing.T) {
			w, _, _ := newWindow(t, "")
			c.before(w)
			if w.says() != c.said {
				t.Fatalf("it says %q first", w.says())
			}
			c.then(w)
			if w.says() != c.want {
				t.Errorf("it says %q, want %q", w.says(), c.want)
			}
		})
	}
}

// What can't be done is marked by colour and sign, and stays until the next
// action whatever the pointer does; Esc in the field of a size takes it away.
func TestARefusalStaysUntilTheNextAction(t *testing.T) {
	w, _, _ := newWindow(t, "")
	if w.Do(edit.SetHeight{At: w.face(1).Place, Height: -1}) {
		t.Fatal("a negative height was taken")
	}
	refusal := w.says()
	if !strings.HasPrefix(refusal, "×  ") || !w.refuses() {
		t.Errorf("%q is not marked", refusal)
	}
	height := drawing.Subject{Kind: drawing.FrontHeight, Place: w.face(1).Place}
	w.desk.Screen.OnHover(height)
	if w.says() != refusal {
		t.Errorf("the pointer takes the refusal away: %q", w.says())
	}
	w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Another"})
	if w.says() != "Title “Another”" || w.refuses() {
		t.Errorf("after the next step it says %q", w.says())
	}
	w.desk.Screen.TypeSize(height)
	w.win.Canvas().Focused().TypedRune('x')
	w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if !w.refuses() {
		t.Errorf("a typed size that is none is not refused: %q", w.says())
	}
	w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if w.says() != "" {
		t.Errorf("after Esc it says %q", w.says())
	}
}

// While the pointer rests on a figure the line explains it, and then says again
// what it said.
func TestTheStatusLineExplainsUnderThePointer(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Another"})
	w.desk.Screen.OnHover(drawing.Subject{Kind: drawing.FrontHeight, Place: w.face(2).Place})
	if w.says() == "Title “Another”" || w.says() == "" {
		t.Errorf("the height is not explained: %q", w.says())
	}
	w.desk.Screen.OnHover(drawing.Subject{})
	if w.says() != "Title “Another”" {
		t.Errorf("it says %q", w.says())
	}
}

// What was pasted, copied or moved is selected, and the line still names the
// step.
func TestTheStatusLineNamesWhatItSelects(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.session.Select(w.face(2))
	for _, c := range []struct{ name, want string }{
		{"up", "Move front up"}, {"copy", "Copied fronts: 1"}, {"paste", "Paste fronts: 1"},
		{"cabinet", ""}, {"duplicate", "Copy a cabinet"},
	} {
		if w.do(c.name); w.says() != c.want {
			t.Errorf("after %s it says %q", c.name, w.says())
		}
	}
}

// What is told of the thing under the pointer is what it is now.
func TestTheThingUnderThePointerIsToldAsItIs(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.desk.Screen.OnHover(w.face(2))
	before := w.desk.Under()
	w.session.Select(w.face(2))
	w.do("equal")
	f := w.session.Result().Plan.Fronts[1]
	if want := w.text("Front %v, %v: %v × %v", 2, f.Name, f.Face.Width(), f.Face.Height()); w.desk.Under() != want || want == before {
		t.Errorf("it says %q, want %q", w.desk.Under(), want)
	}
}
