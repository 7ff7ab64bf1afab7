// Package field holds the fields of forms: sizes, texts, choices. A field shows
// what the document holds and hands on what is typed; it keeps nothing itself.
package field

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"frontlay/model/length"
	"frontlay/model/message"
)

// Value is what a field shows: a text of its own, or a grey one that says what
// holds where nothing is given.
type Value struct {
	Text string
	Grey string
}

// Source reads and writes what a field is about.
type Source struct {
	// Get gives what the document holds.
	Get func() Value
	// Put takes what was typed; an error tells what would be possible.
	Put func(text string) error
	// Check judges what is being typed, without changing anything.
	Check func(text string) error
	// Step changes the value by steps; nil where there are none.
	Step func(steps int) error
	// Held is told when a stepper begins to be held and when it is let go: the steps
	// in between are one change. nil: each is one of its own.
	Held func(on bool)
	// Unit stands behind a figure that names none of its own; it may be empty.
	Unit string
	// Bad tells that what the document holds is at fault; nil: it never is.
	Bad func() bool
	// Figure tells that it is a figure; see Input.
	Figure bool
	// Focused is told when the field gets the focus; nil: nobody asks.
	Focused func()
	// Sample is a text for which the field shall have room besides what it shows;
	// it may be empty.
	Sample string
	// Refused is told why something typed was given up when the field was left; nil:
	// nobody asks.
	Refused func(message.Message)
	// Tell shows a message beside the field; an empty one takes it away.
	Tell func(message.Message)
}

// Entry is a field for one line. Enter, Tab and leaving the field take what was
// typed, Esc gives back what was, the up and down keys step.
type Entry struct {
	Input
	source Source
	tail   *tail // nil: the field has neither a unit nor steps
	was    string
	left   func() // is told when it has lost the focus; may be nil
	grown  func() // lays the row out anew when a text came that is cut; may be nil
}

// NewEntry makes a field.
func NewEntry(s Source) *Entry {
	e := &Entry{source: s}
	e.ExtendBaseWidget(e)
	e.Figure = s.Figure
	if s.Unit != "" || s.Step != nil {
		e.tail = newTail(e)
		e.ActionItem = e.tail
	}
	e.OnSubmitted = func(string) { e.Take() }
	e.OnChanged = func(text string) {
		if e.tail != nil {
			e.tail.Refresh()
		}
		if e.source.Check == nil || text == e.was {
			e.tell(message.Message{})
			return
		}
		e.tell(message.Of(e.source.Check(text)))
	}
	e.Update()
	return e
}

// Use makes the field tell of another thing from now on. What is being typed was
// about the one before, and is given up.
func (e *Entry) Use(s Source) {
	e.source = s
	e.Restore()
	e.Update()
	if e.on && !e.MultiLine {
		e.TypedShortcut(&fyne.ShortcutSelectAll{})
	}
}

// Update shows what the document holds, unless something else is being typed.
func (e *Entry) Update() {
	v := e.source.Get()
	e.mark(e.source.Bad != nil && e.source.Bad())
	typing := e.Text != e.was
	if e.PlaceHolder != v.Grey {
		e.SetPlaceHolder(v.Grey)
	}
	if typing || e.Text == v.Text {
		if !typing {
			e.was = v.Text
		}
		return
	}
	e.was = v.Text
	e.SetText(v.Text)
	if e.grown != nil && e.Size().Width > 0 && e.Need() > e.Size().Width {
		e.grown()
	}
}

// Need is the width that shows what the document holds. It does not ask what is
// being typed: fields would jump under the hand.
func (e *Entry) Need() float32 {
	if e.MultiLine {
		return e.MinSize().Width // it breaks its lines
	}
	return entryNeed(e.was, e.PlaceHolder, e.source.Sample) + wide(&e.source)
}

// ownUnit tells that the figure names its unit itself, or that a word stands there.
func (e *Entry) ownUnit() bool {
	shown := strings.TrimSpace(e.Text)
	if e.Text == "" {
		shown = e.PlaceHolder
	}
	last, _ := utf8.DecodeLastRuneInString(shown)
	return unicode.IsLetter(last)
}

// MouseIn shows the steppers.
func (e *Entry) MouseIn(*desktop.MouseEvent) { e.hover(true) }

// MouseMoved is of no interest.
func (e *Entry) MouseMoved(*desktop.MouseEvent) {}

// MouseOut takes away what MouseIn shows.
func (e *Entry) MouseOut() { e.hover(false) }

func (e *Entry) hover(on bool) {
	if e.tail != nil && e.tail.under != on {
		e.tail.under = on
		e.tail.Refresh()
	}
}

// Wheel steps by the wheel; it is false where the wheel is not the field's. Only the
// field with the focus takes it: over any other a form scrolls, and no figure is
// changed by who only wants to see what stands below. An empty one holds no figure
// that could be seen to change.
func (e *Entry) Wheel(up bool) bool {
	if !e.on || e.source.Step == nil || e.Text == "" {
		return false
	}
	if up {
		e.step(1)
	} else {
		e.step(-1)
	}
	e.SelectAll()
	return true
}

// Take hands on what was typed, if anything. It is false where that can't be.
func (e *Entry) Take() bool { return e.take() == nil }

func (e *Entry) take() error {
	if e.Text == e.was {
		e.tell(message.Message{})
		return nil
	}
	if err := e.source.Put(e.Text); err != nil {
		e.tell(message.Of(err))
		return err
	}
	e.was = e.Text
	e.tell(message.Message{})
	e.Update()
	return nil
}

// Restore gives back what the document holds.
func (e *Entry) Restore() {
	e.was = e.source.Get().Text
	e.SetText(e.was)
	e.tell(message.Message{})
}

// Dirty tells that something was typed that is not in the document.
func (e *Entry) Dirty() bool { return e.Text != e.was }

// FocusGained tells who asks for it. What the field holds is selected, so that
// what is typed replaces it.
func (e *Entry) FocusGained() {
	e.Input.FocusGained()
	if !e.Dirty() {
		e.tell(message.Message{})
		if !e.MultiLine {
			e.SelectAll()
		}
	}
	if e.source.Focused != nil {
		e.source.Focused()
	}
}

// FocusLost takes what was typed; what can't be is given up, and that is told.
func (e *Entry) FocusLost() {
	e.Input.FocusLost()
	if e.left != nil {
		defer e.left()
	}
	err := e.take()
	if err == nil {
		return
	}
	given := message.New("“%v” was not taken: %v", e.Text, message.Of(err))
	e.Restore()
	e.tell(given)
	if e.source.Refused != nil {
		e.source.Refused(given)
	}
}

// TypedKey knows Esc and the steps.
func (e *Entry) TypedKey(k *fyne.KeyEvent) {
	switch {
	case k.Name == fyne.KeyEscape && e.Dirty():
		e.Restore()
	case k.Name == fyne.KeyEscape: // a second time
		Leave(e, k)
	case k.Name == fyne.KeyUp && e.source.Step != nil:
		e.step(1)
	case k.Name == fyne.KeyDown && e.source.Step != nil:
		e.step(-1)
	default:
		if !HandOn(e, k) {
			e.Entry.TypedKey(k)
		}
	}
}

func (e *Entry) step(n int) {
	if e.Take() {
		e.stepBy(n)
	}
}

// stepBy steps where nothing is being typed.
func (e *Entry) stepBy(n int) {
	e.tell(message.Of(e.source.Step(n)))
	e.Update()
}

func (e *Entry) tell(m message.Message) {
	e.mark(!m.Empty() || e.source.Bad != nil && e.source.Bad())
	if e.source.Tell != nil {
		e.source.Tell(m)
	}
}

// ParseSize reads a typed size and says what is wrong with it as a message.
func ParseSize(text string, u length.Unit) (length.Length, error) {
	v, err := length.Parse(text, u)
	if err != nil {
		return 0, message.Of(err)
	}
	return v, nil
}

// NewLines makes a field for several lines, of which rows are seen. Enter begins
// a line; leaving the field takes what was typed.
func NewLines(s Source, rows int) *Entry {
	e := NewEntry(s)
	e.MultiLine, e.Wrapping = true, fyne.TextWrapWord
	e.SetMinRowsVisible(rows)
	return e
}

// AcceptsTab lets Tab leave the field, also one of several lines.
func (e *Entry) AcceptsTab() bool { return false }
