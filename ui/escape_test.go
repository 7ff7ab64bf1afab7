package ui

import (
	"os"
	"testing"

	"fyne.io/fyne/v2"

	"frontlay/ui/ask"
)

// press gives a key to the window as the desktop does: to what has the focus, or
// to the window itself.
func press(w *window, key fyne.KeyName) {
	e := &fyne.KeyEvent{Name: key}
	if f := w.win.Canvas().Focused(); f != nil {
		f.TypedKey(e)
		return
	}
	w.win.Canvas().OnTypedKey()(e)
}

// Over a field in which something is typed, one Esc closes a message, the next
// gives back what the field was, and the third leaves it.
func TestEscapeGoesOneStepAtATime(t *testing.T) {
	for _, c := range []struct {
		name string
		show func(w *window)
	}{
		{"message", func(w *window) { w.ask.Complain(os.ErrPermission) }},
		{"page", func(w *window) { w.do("keys") }},
		{"question", func(w *window) {
			w.ask.Choose(ask.Question{Title: "Title", Text: "Question", Answers: []string{"Yes", "No"}}, func(int) {})
		}},
		{"path", func(w *window) { w.ask.Path("Save as", "x", ".yaml", func(string) {}) }},
	} {
		for _, tabs := range []int{0, 1} {
			t.Run(c.name, func(t *testing.T) {
				w, _, _ := newWindow(t, "")
				w.session.Select(w.face(2))
				e := w.desk.Inspector.Fields()["Height"]
				was := e.Text
				w.win.Canvas().Focus(e)
				if c.name != "page" { // a command takes what is typed
					e.SetText("foo")
				}
				c.show(w)
				for range tabs {
					w.win.Canvas().FocusNext()
				}
				press(w, fyne.KeyEscape)
				if w.win.Canvas().Overlays().Top() != nil {
					t.Fatal("Esc does not close it")
				}
				if w.win.Canvas().Focused() != e {
					t.Fatal("the field has lost the focus")
				}
				if c.name != "page" {
					if e.Text != "foo" {
						t.Fatalf("the same Esc gave back what the field was: %q", e.Text)
					}
					press(w, fyne.KeyEscape)
				}
				if e.Text != was || w.win.Canvas().Focused() != e {
					t.Fatalf("the second Esc leaves %q", e.Text)
				}
				press(w, fyne.KeyEscape)
				if w.win.Canvas().Focused() != nil {
					t.Error("the last Esc does not lead back to the drawing")
				}
			})
		}
	}
}

// A page that is only to be read is moved by the keys.
func TestKeysScrollAPage(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.do("keys")
	c, ok := w.win.Canvas().Focused().(*ask.Dismiss)
	if !ok || c.Scroll == nil {
		t.Fatal("the page has no key that moves it")
	}
	press(w, fyne.KeyEnd)
	end := c.Scroll.Offset.Y
	press(w, fyne.KeyPageUp)
	if up := c.Scroll.Offset.Y; end <= 0 || up >= end {
		t.Errorf("End leads to %v, the page up key from there to %v", end, up)
	}
}

// F1 shows the keys on every page.
func TestKeysOnEveryPage(t *testing.T) {
	for name, show := range map[string]func(w *window){
		"start":    func(w *window) { w.showStart(nil) },
		"print":    func(w *window) { w.do("print") },
		"hardware": func(w *window) { w.do("sheets") },
		"drawing":  func(w *window) { w.stage.showDesk() },
	} {
		t.Run(name, func(t *testing.T) {
			w, _, _ := newWindow(t, "")
			show(w)
			press(w, fyne.KeyF1)
			if w.win.Canvas().Overlays().Top() == nil {
				t.Error("F1 shows nothing")
			}
		})
	}
}

// A dialog keeps its Esc where another window changes the language of both.
func TestEscapeAfterAnotherLanguage(t *testing.T) {
	w, _, _ := newWindow(t, "")
	other := w.another()
	other.beginning().Begin()
	other.closeOverlays()
	other.ask.Path("Save as", "x", ".yaml", func(string) {})
	other.win.Canvas().Unfocus()
	w.speak("de")
	press(other, fyne.KeyEscape)
	if other.win.Canvas().Overlays().Top() != nil {
		t.Error("Esc does not close the dialog any more")
	}
}
