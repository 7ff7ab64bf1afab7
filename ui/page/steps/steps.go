// Package steps goes back and forth in what was done: by a step, or in the list of
// all of them.
package steps

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
	"frontlay/ui/ask"
	"frontlay/ui/command"
	"frontlay/ui/field"
	"frontlay/ui/session"
)

// Host is what the commands need of the window around them.
type Host interface {
	Session() *session.Session
	Ask() *ask.Asker
	Tell(message.Message)
}

// Rows are the commands to undo, to redo, and to see all steps.
func Rows(h Host) []command.Command {
	undo := func() {
		if l, ok := h.Session().Undo(); ok {
			h.Tell(message.New("Undone: %v", l))
		}
	}
	redo := func() {
		if l, ok := h.Session().Redo(); ok {
			h.Tell(message.New("Done again: %v", l))
		}
	}
	return []command.Command{
		{Name: "undo", Menu: "Edit", Words: "Undo", Button: command.Button{Icon: "undo", Group: command.Steps}, Key: fyne.KeyZ, Mod: command.Ctrl, Fields: command.DirtyFields, Do: undo,
			Can: func() bool { _, ok := h.Session().CanUndo(); return ok },
			Named: func() message.Message {
				if l, ok := h.Session().CanUndo(); ok {
					return message.New("Undo: %v", l)
				}
				return message.New("Undo")
			}},
		{Name: "redo", Menu: "Edit", Words: "Redo", Button: command.Button{Icon: "redo", Group: command.Steps}, Key: fyne.KeyY, Mod: command.Ctrl, Also: command.Chord{Key: fyne.KeyZ, Mod: command.Ctrl | command.Shift}, Fields: command.DirtyFields, Do: redo,
			Can: func() bool { _, ok := h.Session().CanRedo(); return ok },
			Named: func() message.Message {
				if l, ok := h.Session().CanRedo(); ok {
					return message.New("Redo: %v", l)
				}
				return message.New("Redo")
			}},
		{Name: "history", Menu: "Edit", Words: "Steps…", Do: func() { Show(h) }},
	}
}

// Show lists every step; a click or the arrow keys go to the state after
// one.
func Show(h Host) {
	a := h.Ask()
	s := newList(h)
	hint := field.NewLabel(a.Text("Choose a step to go to what was after it: Up and Down, or a click."))
	hint.Wrapping, hint.Importance = fyne.TextWrapWord, widget.LowImportance
	box := container.New(minSize{fyne.NewSize(460, 340)}, container.NewBorder(hint, nil, nil, nil, s))
	s.close = a.Notice(a.Text("Steps"), a.Text("Close"), box, nil, nil).Hide
	a.Win.Canvas().Focus(s)
	s.ScrollTo(s.done)
}

// minSize is a layout that gives an object all the room, at least a size.
type minSize struct{ fyne.Size }

func (m minSize) MinSize([]fyne.CanvasObject) fyne.Size { return m.Size }

func (m minSize) Layout(o []fyne.CanvasObject, s fyne.Size) { o[0].Resize(s) }

// list is the list of the steps with the keys of a list to choose from.
type list struct {
	widget.List
	field.Ring
	host   Host
	labels []message.Message
	done   int
	close  func()
}

func newList(h Host) *list {
	s := &list{host: h}
	s.labels, s.done = h.Session().Steps()
	s.Length = func() int { return len(s.labels) + 1 }
	s.CreateItem = func() fyne.CanvasObject {
		l := field.NewLabel("")
		l.Truncation = fyne.TextTruncateEllipsis
		return l
	}
	s.UpdateItem = func(i widget.ListItemID, o fyne.CanvasObject) { s.fill(i, o.(*field.Label)) }
	s.HideSeparators = true
	s.ExtendBaseWidget(s)
	s.Select(s.done)
	s.OnSelected = func(i widget.ListItemID) {
		if i != s.done {
			s.done = i
			h.Session().Go(i)
			s.Refresh()
		}
	}
	return s
}

// FocusGained shows the ring. Fyne's own mark of the focus would stand on the
// first row, whatever step is shown.
func (s *list) FocusGained() { s.Gain(s, nil) }

// FocusLost takes the ring away.
func (s *list) FocusLost() { s.Lose(s, nil) }

// CreateRenderer draws the list with its ring.
func (s *list) CreateRenderer() fyne.WidgetRenderer {
	return s.Around(s.List.CreateRenderer())
}

// fill writes a row: the step that is shown is bold, those after it are grey.
func (s *list) fill(i int, l *field.Label) {
	text := s.host.Ask().Text("As it was opened")
	if i > 0 {
		text = s.host.Ask().Say().Say(s.labels[i-1])
	}
	l.TextStyle.Bold = i == s.done
	l.Importance = widget.MediumImportance
	if i > s.done {
		l.Importance = widget.LowImportance
	}
	l.SetText(text)
}

// TypedKey goes a step up or down, or closes the list.
func (s *list) TypedKey(e *fyne.KeyEvent) {
	to := s.done
	switch e.Name {
	case fyne.KeyUp:
		to--
	case fyne.KeyDown:
		to++
	case fyne.KeyPageUp:
		to -= 10
	case fyne.KeyPageDown:
		to += 10
	case fyne.KeyHome:
		to = 0
	case fyne.KeyEnd:
		to = len(s.labels)
	case fyne.KeyEscape, fyne.KeyReturn, fyne.KeyEnter:
		s.close()
		return
	}
	s.Select(min(max(to, 0), len(s.labels)))
}
