// Package inspector is the panel that shows what is selected, and only what
// matters for it, with fields to change it.
package inspector

import (
	"slices"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// form builds the fields for what is selected. It takes the widgets of the form
// before it where that has some of the same kind and label: one that is pressed
// while another front is selected is still there when it is let go.
type form struct {
	session   *session.Session
	say       func() message.Language
	tell      func(message.Message)
	folds     *folds
	onSheet   func(name string)
	onPropose func(at model.Place)
	before    map[part]any // widgets of the form before, as far as they are not taken
	widgets   map[part]any
	head      head
	sections  []*section
	updates   []func()
	decided   []func() bool // whether what decides which fields there are is as it was
	focus     []labelled
}

// decides reads what decides which fields a form has, or what they offer: the panel is
// filled anew once it is another.
func decides[T comparable](f *form, get func() T) T {
	was := get()
	f.decided = append(f.decided, func() bool { return get() == was })
	return was
}

// stale tells that the form would have other fields now.
func (f *form) stale() bool {
	return slices.ContainsFunc(f.decided, func(same func() bool) bool { return !same() })
}

// part names a widget of a form: by its kind, its label or text, and by which it
// is of those. Several can have one, such as what stands at a cabinet's
// left and right.
type part struct {
	kind, text string
	nth        int
}

// labelled is what can have the focus.
type labelled struct {
	part
	of fyne.Focusable
}

// take is a part as the form before had it, given anew by again, or a new one.
func take[W any](f *form, kind, label string, again func(W), made func() W) (W, part) {
	key := part{kind, label, 0}
	for f.widgets[key] != nil {
		key.nth++
	}
	w, ok := f.before[key].(W)
	if ok {
		again(w)
	} else {
		w = made()
	}
	f.widgets[key] = w
	return w, key
}

func (f *form) text(text string, args ...any) string { return f.say().Say(message.New(text, args...)) }

// put adds an object to the section at work. called is what the search finds it by;
// empty: it is found by none.
func (f *form) put(o fyne.CanvasObject, called string, of fyne.Focusable) {
	s := f.sections[len(f.sections)-1]
	s.things = append(s.things, thing{o, called, of})
}

// note is a text of several lines that only explains.
func (f *form) note(text string) {
	told(f, func() string { return text }).Importance = widget.LowImportance
}

// told is a text of several lines that follows from the document.
func told(f *form, get func() string) *field.Label {
	l, _ := take(f, "told", "", func(*field.Label) {}, func() *field.Label {
		l := field.NewLabel("")
		l.Wrapping = fyne.TextWrapWord
		return l
	})
	l.Importance = widget.MediumImportance
	s := f.sections[len(f.sections)-1]
	show := func() {
		if !s.fold.Open() {
			return // some take a while to work out
		}
		if text := get(); text != l.Text {
			l.SetText(text)
		}
	}
	s.opened = append(s.opened, show)
	f.put(l, "", nil)
	f.updates = append(f.updates, show)
	return l
}

// row is a label, a field and its unit; kind tells what is typed in it.
func (f *form) row(kind string, label message.Message, unit string, s field.Source) {
	s.Refused = f.tell
	r, at := take(f, kind, label.Text, func(r *field.Row) { r.Use(s) }, func() *field.Row {
		return field.NewCell(f.say().Say(label), unit, s, func(m message.Message) string { return f.say().Say(m) })
	})
	f.add(r.Object, f.say().Say(label), at, r.Entry)
}

// control is what can have the focus and shows what the document holds.
type control interface {
	fyne.Focusable
	Update()
}

// add adds an object with the control in it.
func (f *form) add(o fyne.CanvasObject, called string, at part, c control) {
	f.put(o, called, c)
	f.reach(at, c)
}

// reach lets a control have the focus, and show what the document holds.
func (f *form) reach(at part, c control) {
	f.focus = append(f.focus, labelled{at, c})
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
	get     func() (v length.Length, given, mixed bool)
	put     func(length.Length) edit.Edit
	clear   func() edit.Edit
	none    bool   // nothing is there where no size is given, rather than a computed one
	focused func() // is told when the field gets the focus; nil: nobody asks
	// bad tells that the check blames the size; nil: it never does.
	bad func() bool
}

func (f *form) size(label message.Message, s size) {
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
	f.row("size", label, unit().Symbol(), field.Source{
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
		Figure: true,
		Bad:    s.bad,
		Held:   f.held,
		Focused: func() {
			f.session.Apart()
			if s.focused != nil {
				s.focused()
			}
		},
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
			e := s.put(v + length.Length(n)*tool.Step(unit(), false))
			if f.session.InGesture() {
				return f.session.Preview(e)
			}
			return f.session.More(label.Text, e)
		},
	})
}

// held makes one change of all that a stepper does while it is held.
func (f *form) held(on bool) {
	if on {
		f.session.Begin()
	} else {
		f.session.Commit()
	}
}

// sampleOf is about the longest figure that fields of a unit show.
func sampleOf(u length.Unit) string {
	if u == length.UnitInch {
		return "≈ 88 63/64"
	}
	return "8888.88"
}

// number is a field for a plain number.
func (f *form) number(label message.Message, unit string, get func() (v float64, given, mixed bool), put func(float64) edit.Edit) {
	f.row("number", label, unit, field.Source{
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
		Figure: true,
	})
}

// line is a field for a name or note.
func (f *form) line(label message.Message, get func() (text, grey string), put func(string) edit.Edit) {
	f.row("line", label, "", field.Source{
		Get: func() field.Value { t, g := get(); return field.Value{Text: t, Grey: g} },
		Put: func(text string) error { return f.session.Do(put(text)) },
		Check: func(text string) error {
			_, err := put(text).Apply(f.session.Committed())
			return err
		},
	})
}

func (f *form) choice(label message.Message, options []string, get func() int, put func(int) edit.Edit) {
	chosen := func(i int) {
		if i >= 0 {
			f.do(put(i))
		}
	}
	c, at := take(f, "choice", label.Text, func(c *choice) { c.Use(options, get, chosen) }, func() *choice {
		c := field.NewChoice(options, get, chosen)
		c.PlaceHolder = f.text("several")
		if c.Selected == "" {
			c.Refresh()
		}
		return &choice{c, field.Above(f.say().Say(label), c)}
	})
	f.add(c.row, f.say().Say(label), at, c.Choice)
}

// choice is a choice with its label.
type choice struct {
	*field.Choice
	row fyne.CanvasObject
}

// mark is a box to tick; mixed tells that the things selected differ, and may be
// nil.
func (f *form) mark(label message.Message, get, mixed func() bool, put func(bool) edit.Edit) {
	ticked := func(on bool) { f.do(put(on)) }
	m, at := take(f, "mark", label.Text, func(m *field.Mark) { m.Use(get, ticked) }, func() *field.Mark {
		return field.NewMark(f.say().Say(label), get, ticked)
	})
	m.Mixed = mixed
	m.Update()
	f.add(m, f.say().Say(label), at, m)
}

// figure shows what the layout works out; it can't be typed.
func (f *form) figure(label string, get func() string) {
	l, _ := take(f, "figure", label, func(l *field.Figure) { l.SetText(get()) }, func() *field.Figure {
		return field.NewFigure(f.text(label), get())
	})
	f.put(l.Object, f.text(label), nil)
	f.updates = append(f.updates, func() { l.SetText(get()) })
}

// link is a way to somewhere else, in words of the moment.
func (f *form) link(name string, get func() string, to func()) {
	l, at := take(f, "link", name, func(l *link) { l.use(get, to) }, func() *link {
		l := &link{Words: field.NewLink(get(), to)}
		l.use(get, to)
		return l
	})
	f.put(field.Flow(0, l.Words), "", nil)
	f.focus = append(f.focus, labelled{at, l.Words})
	f.updates = append(f.updates, l.Update)
}

// link is words that follow the document.
type link struct {
	*field.Words
	get func() string
}

func (l *link) use(get func() string, to func()) {
	l.get, l.OnTapped = get, to
	l.Update()
}

// Update says what holds now.
func (l *link) Update() { l.SetText(l.get()) }

type button struct {
	label string
	do    func()
}

func (f *form) buttons(b ...button) {
	var o []fyne.CanvasObject
	for _, one := range b {
		made, at := take(f, "button", one.label, func(b *field.Button) { b.OnTapped = one.do }, func() *field.Button {
			return field.NewButton(f.text(one.label), one.do)
		})
		f.focus = append(f.focus, labelled{at, made})
		o = append(o, made)
	}
	f.put(field.Flow(8, o...), "", nil)
}

// do makes an edit and tells where it can't be made.
func (f *form) do(e edit.Edit) {
	if err := f.session.Do(e); err != nil {
		f.tell(tool.Said(err))
	}
}
