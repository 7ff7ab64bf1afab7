package field_test

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/replay"
)

// source is a document of one text that takes anything but "bad".
type source struct {
	text, told string
	puts       int
}

func (s *source) source() field.Source {
	judge := func(text string) error {
		if text == "bad" {
			return message.New("this can't be")
		}
		return nil
	}
	return field.Source{
		Get: func() field.Value { return field.Value{Text: s.text, Grey: "grey"} },
		Put: func(text string) error {
			if err := judge(text); err != nil {
				return err
			}
			s.text = text
			s.puts++
			return nil
		},
		Check: judge,
		Step:  func(n int) error { s.text += "+"; return nil },
		Tell:  func(m message.Message) { s.told = m.String() },
	}
}

func key(n fyne.KeyName) *fyne.KeyEvent { return &fyne.KeyEvent{Name: n} }

func TestAnEntryKeepsNothingItself(t *testing.T) {
	test.NewTempApp(t)
	s := &source{text: "one"}
	e := field.NewEntry(s.source())
	if e.Text != "one" || e.PlaceHolder != "grey" || e.Dirty() {
		t.Fatalf("shows %q", e.Text)
	}
	e.SetText("two")
	if !e.Dirty() || s.text != "one" {
		t.Fatal("typing alone changes the document")
	}
	e.TypedKey(key(fyne.KeyReturn))
	if s.text != "two" || e.Dirty() {
		t.Fatalf("Enter does not take it: %q", s.text)
	}
	e.SetText("three")
	e.FocusLost()
	if s.text != "three" {
		t.Fatal("leaving the field does not take what was typed")
	}
	e.SetText("four")
	e.TypedKey(key(fyne.KeyEscape))
	if e.Text != "three" || s.text != "three" {
		t.Fatalf("Esc does not give back what was: %q", e.Text)
	}
	s.text = "changed elsewhere"
	e.Update()
	if e.Text != "changed elsewhere" {
		t.Fatal("the field does not follow the document")
	}
	e.TypedKey(key(fyne.KeyUp))
	if e.Text != "changed elsewhere+" {
		t.Fatalf("the up key does not step: %q", e.Text)
	}
}

func TestAnEntryTellsWhatCantBe(t *testing.T) {
	test.NewTempApp(t)
	s := &source{text: "one"}
	e := field.NewEntry(s.source())
	e.SetText("bad")
	if s.told != "this can't be" {
		t.Fatalf("while typing it tells %q", s.told)
	}
	if e.Take() || s.puts != 0 {
		t.Fatal("it was taken")
	}
	e.Update()
	if e.Text != "bad" {
		t.Fatal("a change elsewhere takes away what is being typed")
	}
	e.FocusLost()
	if want := "“bad” was not taken: this can't be"; e.Text != "one" || s.told != want {
		t.Fatalf("after leaving it shows %q and tells %q", e.Text, s.told)
	}
	e.FocusGained()
	if s.told != "" {
		t.Errorf("in the field again it still tells %q", s.told)
	}
}

// What is typed into a field that was reached by Tab replaces what it holds; a
// click puts the cursor into it.
func TestTypingReplacesWhatAFieldHolds(t *testing.T) {
	test.NewTempApp(t)
	s := &source{text: "333"}
	e := field.NewEntry(s.source())
	c := test.NewTempWindow(t, e).Canvas()
	c.FocusNext()
	for _, r := range "22" {
		c.Focused().TypedRune(r)
	}
	if e.Text != "22" {
		t.Errorf("typed over 333: %q", e.Text)
	}
	e.TypedKey(key(fyne.KeyEscape))
	c.Unfocus()
	e.MouseDown(&desktop.MouseEvent{Button: desktop.MouseButtonPrimary, PointEvent: fyne.PointEvent{Position: fyne.NewPos(300, 10)}})
	e.MouseUp(&desktop.MouseEvent{Button: desktop.MouseButtonPrimary})
	e.TypedRune('4')
	if e.Text != "3334" {
		t.Errorf("clicked behind 333 and typed 4: %q", e.Text)
	}
}

// A click into a figure selects all of it, wherever it is made, and a double click
// too: half of it changed would be a wrong figure. A second click and a drag are
// for who wants to change a part.
func TestAClickSelectsAFigure(t *testing.T) {
	test.NewTempApp(t)
	for _, x := range []float32{10, 16, 22, 150} {
		for name, click := range map[string]func(desktop.Mouseable, fyne.Position){"click": replay.Click, "double click": replay.DoubleClick} {
			s := &source{text: "1.5"}
			of := s.source()
			of.Figure = true
			e := field.NewEntry(of)
			plain := field.NewText("")
			plain.Figure = true
			plain.SetText("1.5")
			c := test.NewTempWindow(t, container.NewVBox(e, plain)).Canvas()
			c.(test.WindowlessCanvas).Resize(fyne.NewSize(200, 100))
			for _, one := range []interface {
				desktop.Mouseable
				fyne.Focusable
			}{e, plain} {
				click(one, fyne.NewPos(x, 10))
				c.Focused().TypedRune('2')
			}
			if e.Text != "2" || plain.Text != "2" {
				t.Errorf("1.5, a %s at %v and a typed 2 give %s and %s", name, x, e.Text, plain.Text)
			}
		}
	}
}

func TestPartOfAFigureCanBeChanged(t *testing.T) {
	test.NewTempApp(t)
	s := &source{text: "1234.5"}
	of := s.source()
	of.Figure = true
	e := field.NewEntry(of)
	test.NewTempWindow(t, e).Resize(fyne.NewSize(200, 60))
	replay.Click(e, fyne.NewPos(190, 10))
	replay.Click(e, fyne.NewPos(190, 10))
	e.TypedRune('6')
	if e.Text != "1234.56" {
		t.Errorf("a second click at the end and a typed 6 give %s", e.Text)
	}
	e.Restore()
	e.FocusLost()
	e.FocusGained()
	at := func(x float32) fyne.PointEvent { return fyne.PointEvent{Position: fyne.NewPos(x, 10)} }
	e.MouseDown(&desktop.MouseEvent{Button: desktop.MouseButtonPrimary, PointEvent: at(190)})
	e.Dragged(&fyne.DragEvent{PointEvent: at(100), Dragged: fyne.NewDelta(-90, 0)})
	e.Dragged(&fyne.DragEvent{PointEvent: at(30), Dragged: fyne.NewDelta(-70, 0)})
	e.MouseUp(&desktop.MouseEvent{Button: desktop.MouseButtonPrimary, PointEvent: at(30)})
	e.DragEnd()
	if got := e.SelectedText(); got == "" || got == "1234.5" || !strings.HasSuffix("1234.5", got) {
		t.Errorf("a drag selects %q", got)
	}
}

func TestAChoiceShowsTheDocument(t *testing.T) {
	test.NewTempApp(t)
	at, put := 1, -1
	c := field.NewChoice([]string{"a", "b", "c"}, func() int { return at }, func(i int) { put = i })
	if c.Selected != "b" || put != -1 {
		t.Fatalf("shows %q, put %d", c.Selected, put)
	}
	c.SetSelected("c")
	if put != 2 || c.Selected != "b" {
		t.Errorf("a choice that the document does not take stays: %q, put %d", c.Selected, put)
	}
	at = -1
	c.Update()
	if c.Selected != "" {
		t.Errorf("several different ones show as %q", c.Selected)
	}
}
