package inspector

import (
	"strings"

	"fyne.io/fyne/v2"

	"frontlay/model/message"
	"frontlay/ui/field"
)

// section is a part of the panel under a head that folds it.
type section struct {
	title  message.Message
	name   string // English, by which it is remembered
	fold   *field.Fold
	body   *fyne.Container
	things []thing
	brief  func() string // what it says in short; nil: nothing
	usual  bool          // it is open until a person folds it
	opened []func()      // brings up to date what nobody saw
}

// thing is an object of a section, and what the search knows of it.
type thing struct {
	object fyne.CanvasObject
	called string         // empty: the search does not find it
	of     fyne.Focusable // nil: it is only read
}

// folds remembers which sections are folded, in the settings of the program where it
// is given those.
type folds struct {
	kept fyne.Preferences // nil: until the program ends
	open map[string]bool
}

func (k *folds) is(name string, usual bool) bool {
	if k.kept != nil {
		return k.kept.BoolWithFallback("inspector open: "+name, usual)
	}
	if open, known := k.open[name]; known {
		return open
	}
	return usual
}

func (k *folds) set(name string, open bool) {
	if k.kept != nil {
		k.kept.SetBool("inspector open: "+name, open)
		return
	}
	k.open[name] = open
}

// section begins a section that is usually open, or folded until a person opens it.
func (f *form) section(title message.Message, open bool, brief func() string) *section {
	s := &section{name: title.Text, title: title, brief: brief, usual: open}
	var at part
	again := func(one *field.Fold) { one.SetOpen(f.folds.is(s.name, open)) }
	s.fold, at = take(f, "section", s.name, again, func() *field.Fold {
		return field.NewFold(f.say().Say(title), f.folds.is(s.name, open))
	})
	s.body, _ = take(f, "body", s.name, func(*fyne.Container) {}, func() *fyne.Container { return field.Cells() })
	s.fold.OnFold = func(open bool) {
		f.folds.set(s.name, open)
		s.show()
	}
	f.focus = append(f.focus, labelled{at, s.fold})
	f.sections = append(f.sections, s)
	if brief != nil {
		f.updates = append(f.updates, func() { s.fold.Tell(brief()) })
	}
	return s
}

// end puts the things of each section into its body.
func (f *form) end() {
	for _, s := range f.sections {
		s.fill()
		if s.brief != nil {
			s.fold.Tell(s.brief())
		} else {
			s.fold.Tell("")
		}
		s.fold.Show()
		s.fold.SetOpen(f.folds.is(s.name, s.usual)) // a search opens what it finds
		s.show()
	}
}

// fill puts the things of the section into its body, all to be seen.
func (s *section) fill() {
	s.body.Objects = nil
	for _, t := range s.things {
		t.object.Show()
		s.body.Objects = append(s.body.Objects, t.object)
	}
}

// show shows the body where the section is open.
func (s *section) show() {
	s.body.Hidden = !s.fold.Open()
	if s.fold.Open() {
		for _, update := range s.opened {
			update()
		}
	}
	s.body.Refresh()
	s.fold.Refresh()
}

// search shows only the things whose labels, or whose section's, have a word in them,
// wherever they are, and tells which of them comes first; nil: none has it.
func (f *form) search(word string) *thing {
	var first *thing
	for _, s := range f.sections {
		s.fill()
		met, all := 0, has(f.say().Say(s.title), word)
		for i := range s.things {
			t := &s.things[i]
			if !all && !has(t.called, word) {
				t.object.Hide()
				continue
			}
			met++
			if first == nil || first.of == nil && t.of != nil {
				first = t
			}
		}
		s.fold.Hidden = met == 0
		s.fold.SetOpen(met > 0)
		s.show()
	}
	return first
}

// has tells that what a figure is called has a word in it, in letters of whatever size.
func has(called, word string) bool {
	return strings.Contains(strings.ToLower(called), strings.ToLower(strings.TrimSpace(word)))
}

// count tells how many figures a folded section holds.
func (f *frontForm) count(s *section) func() string {
	return func() string {
		n := 0
		for _, t := range s.things {
			if t.of != nil {
				n++
			}
		}
		if n == 1 {
			return f.text("1 figure")
		}
		return f.text("%v figures", n)
	}
}
