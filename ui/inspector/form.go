// Package inspector is the panel that shows what is selected, and only what
// matters for it, with fields to change it.
package inspector

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// form builds the fields for what is selected.
type form struct {
	session *session.Session
	say     func() message.Language
	tell    func(message.Message)
	objects []fyne.CanvasObject
	updates []func()
	focus   []labelled
}

// labelled is what can have the focus, with the English label that names it.
// Several can have one label, such as what stands at a cabinet's left and right.
type labelled struct {
	name string
	of   fyne.Focusable
}

func (f *form) text(text string, args ...any) string { return f.say().Say(message.New(text, args...)) }

func (f *form) heading(text string) {
	if len(f.objects) > 0 {
		f.objects = append(f.objects, widget.NewSeparator())
	}
	f.objects = append(f.objects, field.Heading(text))
}

// note is a text of several lines.
func (f *form) note(text string) {
	l := field.NewLabel(text)
	l.Wrapping = fyne.TextWrapWord
	l.Importance = widget.LowImportance
	f.objects = append(f.objects, l)
}

func (f *form) row(label, unit string, s field.Source) {
	s.Refused = f.tell
	r := field.NewRow(f.text(label), unit, s, func(m message.Message) string { return f.say().Say(m) })
	f.add(r.Object, label, r.Entry)
}

// control is what can have the focus and shows what the document holds.
type control interface {
	fyne.Focusable
	Update()
}

// add adds an object with the control in it that a label names.
func (f *form) add(o fyne.CanvasObject, label string, c control) {
	f.objects = append(f.objects, o)
	f.focus = append(f.focus, labelled{label, c})
	f.updates = append(f.updates, c.Update)
}

// entries are the fields to type into, in their order.
func (f *form) entries() []*field.Entry {
	var all []*field.Entry
	for _, l := range f.focus {
		if e, ok := l.of.(*field.Entry); ok {
			all = append(all, e)
		}
	}
	return all
}

// size is a field for a length. get tells the value and whether it is given (a
// size that is not is grey) or differs between the things selected. put makes
// the edit for a size; clear the one for an emptied field, nil where it can't
// be empty.
type size struct {
	get   func() (v length.Length, given, mixed bool)
	put   func(length.Length) edit.Edit
	clear func() edit.Edit
	none  bool // nothing is there where no size is given, rather than a computed one
}

func (f *form) size(label string, s size) {
	unit := func() length.Unit { return f.session.Project().Unit }
	parse := func(text string) (edit.Edit, error) {
		if strings.TrimSpace(text) == "" && s.clear != nil {
			return s.clear(), nil
		}
		v, err := field.ParseSize(text, unit())
		if err != nil {
			return nil, err
		}
		return s.put(v), nil
	}
	f.row(label, unit().Symbol(), field.Source{
		Get: func() field.Value {
			v, given, mixed := s.get()
			switch {
			case mixed:
				return field.Value{Grey: f.text("several")}
			case given:
				return field.Value{Text: f.say().Figure(v)}
			case s.none:
				return field.Value{Grey: f.text("none")}
			default:
				return field.Value{Grey: f.say().Figure(v)}
			}
		},
		Sample: sampleOf(unit()),
		Put: func(text string) error {
			e, err := parse(text)
			if err != nil {
				return err
			}
			if err := f.session.Judge(e); err != nil {
				return err
			}
			return f.session.Do(e)
		},
		Check: func(text string) error {
			e, err := parse(text)
			if err != nil {
				return err
			}
			return f.session.Judge(e)
		},
		Step: func(n int) error {
			v, _, _ := s.get()
			step := tool.Step(unit(), false)
			return f.session.Do(s.put(v + length.Length(n)*step))
		},
	})
}

// sampleOf is about the longest figure that fields of a unit show.
func sampleOf(u length.Unit) string {
	if u == length.UnitInch {
		return "≈ 88 63/64"
	}
	return "8888.88"
}

// number is a field for a plain number.
func (f *form) number(label, unit string, get func() (v float64, given, mixed bool), put func(float64) edit.Edit) {
	f.row(label, unit, field.Source{
		Get: func() field.Value {
			v, given, mixed := get()
			if mixed {
				return field.Value{Grey: f.text("several")}
			}
			s := strconv.FormatFloat(v, 'g', 6, 64)
			if f.say().Comma {
				s = strings.Replace(s, ".", ",", 1)
			}
			if !given {
				return field.Value{Grey: s}
			}
			return field.Value{Text: s}
		},
		Put: func(text string) error {
			v, err := strconv.ParseFloat(strings.Replace(strings.TrimSpace(text), ",", ".", 1), 64)
			if err != nil {
				return message.New("“%v” is not a number. Write one such as 1 or 2.5.", text)
			}
			return f.session.Do(put(v))
		},
	})
}

// line is a field for a name or note.
func (f *form) line(label string, get func() (text, grey string), put func(string) edit.Edit) {
	f.row(label, "", field.Source{
		Get: func() field.Value { t, g := get(); return field.Value{Text: t, Grey: g} },
		Put: func(text string) error { return f.session.Do(put(text)) },
		Check: func(text string) error {
			_, err := put(text).Apply(f.session.Committed())
			return err
		},
	})
}

func (f *form) choice(label string, options []string, get func() int, put func(int) edit.Edit) {
	c := field.NewChoice(options, get, func(i int) {
		if i >= 0 {
			f.do(put(i))
		}
	})
	c.PlaceHolder = f.text("several")
	if c.Selected == "" {
		c.Refresh()
	}
	f.add(field.Labelled(f.text(label), c), label, c)
}

// mark is a box to tick; mixed tells that the things selected differ, and may be
// nil.
func (f *form) mark(label string, get, mixed func() bool, put func(bool) edit.Edit) {
	m := field.NewMark(f.text(label), get, func(on bool) { f.do(put(on)) })
	m.Mixed = mixed
	m.Update()
	f.add(m, label, m)
}

// figure shows what the layout works out; it can't be typed.
func (f *form) figure(label string, get func() string) {
	l := field.NewFigure(f.text(label), get())
	f.objects = append(f.objects, l.Object)
	f.updates = append(f.updates, func() { l.SetText(get()) })
}

type button struct {
	label string
	do    func()
}

func (f *form) buttons(b ...button) {
	var o []fyne.CanvasObject
	for _, one := range b {
		made := field.NewButton(f.text(one.label), one.do)
		f.focus = append(f.focus, labelled{one.label, made})
		o = append(o, made)
	}
	f.objects = append(f.objects, container.NewGridWithColumns(2, o...))
}

// do makes an edit and tells where it can't be made.
func (f *form) do(e edit.Edit) {
	if err := f.session.Do(e); err != nil {
		f.tell(tool.Said(err))
	}
}
