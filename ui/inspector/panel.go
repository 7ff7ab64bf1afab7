package inspector

import (
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	fynelayout "fyne.io/fyne/v2/layout"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/session"
)

// Panel is the inspector: where what is selected is, what it is called, what was found
// about it, and its figures in sections that fold.
type Panel struct {
	Object fyne.CanvasObject
	// OnSheet shows a hardware sheet of the project; nil: nothing does.
	OnSheet func(name string)
	// OnPropose proposes divisions of the bay at a place; nil: nothing does.
	OnPropose func(at model.Place)

	session *session.Session
	say     func() message.Language
	tell    func(message.Message)
	folds   folds
	whole   *fyne.Container // all of it
	top     *fyne.Container // head and search, which do not scroll
	column  *fyne.Container
	scroll  *container.Scroll
	finder  *finder
	found   *thing // what the search found first; nil: nothing
	cards   *cards
	form    *form
	shown   []drawing.Subject
	unit    length.Unit
	sheets  []model.HardwareUse // whose names, drawers and runners are offered
	begun   bool
}

// New makes the panel of a session. It is empty until Begin, so that a window can
// be on the screen before its dozens of fields are made.
func New(s *session.Session, say func() message.Language, tell func(message.Message)) *Panel {
	p := &Panel{say: say, tell: tell, column: field.Column(), top: field.Column(), form: &form{}, folds: folds{open: map[string]bool{}}}
	p.finder, p.cards = newFinder(p), newCards(p)
	var scrolled fyne.CanvasObject
	p.scroll, scrolled = field.Scrolled(p.column)
	head := container.NewPadded(field.BesideBar(p.top))
	p.whole = container.New(fynelayout.NewBorderLayout(head, nil, nil, nil), head, scrolled) // Tab goes through the head first
	p.Object = p.whole
	p.Watch(s)
	return p
}

// Remember keeps in the settings of the program which sections are folded.
func (p *Panel) Remember(kept fyne.Preferences) { p.folds.kept = kept }

func (p *Panel) text(text string, args ...any) string { return p.say().Say(message.New(text, args...)) }

// Watch shows another session from now on.
func (p *Panel) Watch(s *session.Session) {
	p.session = s
	s.Listen(func(c session.Change) {
		if p.session != s {
			return
		}
		if p.say().Unit != p.unit {
			p.Rebuild()
		} else if !slices.Equal(p.shown, s.Selection()) || !slices.Equal(p.sheets, s.Project().Hardware) || p.form.stale() {
			p.show()
		} else if c&(session.Document|session.Chosen) != 0 {
			p.update()
		}
	})
	p.show()
}

// Begin fills the panel.
func (p *Panel) Begin() {
	p.begun = true
	p.show()
}

// Rebuild makes the panel anew, for another language or look.
func (p *Panel) Rebuild() {
	p.form.widgets = nil
	p.cards.all, p.cards.gone = nil, p.cards.all
	p.show()
}

// Take hands on what is typed in the panel, if anything.
func (p *Panel) Take() {
	for _, e := range p.form.entries() {
		if e.Dirty() && !e.Take() {
			e.Restore()
		}
	}
}

func (p *Panel) update() {
	for _, f := range p.form.updates {
		f()
	}
	if !p.session.InGesture() { // fixes are tried out, which is too much for each move
		p.tellFound()
	}
}

// tellFound tells what was found about what is selected.
func (p *Panel) tellFound() {
	if !p.begun {
		return
	}
	p.cards.update(p.places())
	p.head()
	p.place()
}

// places are those of what is selected, and of what is shown with it.
func (p *Panel) places() []model.Place {
	if len(p.shown) == 0 {
		return []model.Place{model.Whole}
	}
	var all []model.Place
	for _, t := range p.shown {
		switch t.Kind {
		case drawing.FrontThing, drawing.BayThing:
			all = append(all, t.Place)
		case drawing.CabinetThing:
			all = append(all, t.Place)
			if c := p.session.Project().CabinetAt(t.Place); c != nil && len(c.Bays) == 1 {
				all = append(all, model.Place{Cabinet: t.Place.Cabinet, Bay: 0, Front: -1})
			}
		}
	}
	return all
}

// show shows what is selected. Where it is of the same kind as before its fields
// stay where they are, and tell of another thing.
func (p *Panel) show() {
	if !p.begun {
		return
	}
	defer p.keepFocus(p.form.focus)()
	sel := p.session.Selection()
	same := kindOf(sel) == kindOf(p.shown)
	p.shown, p.unit = slices.Clone(sel), p.say().Unit
	p.sheets = p.session.Project().Hardware
	p.form = p.newForm(p.form.widgets)
	p.form.fill(sel)
	p.form.before = nil
	p.finder.restyle()
	p.cards.update(p.places())
	p.head()
	p.filter()
	if !same {
		p.scroll.ScrollToTop()
	}
}

// newForm is an empty form that takes the widgets of another.
func (p *Panel) newForm(before map[part]any) *form {
	return &form{session: p.session, say: p.say, tell: p.tell, folds: &p.folds, onSheet: p.OnSheet, onPropose: p.OnPropose, before: before, widgets: map[part]any{}}
}

// fill shows some things of one kind.
func (f *form) fill(sel []drawing.Subject) {
	switch kindOf(sel) {
	case drawing.FrontThing:
		at := make([]model.Place, len(sel))
		for i, t := range sel {
			at[i] = t.Place
		}
		(&frontForm{f, at}).fill()
	case drawing.DivisionThing:
		bayForm{f}.division(sel[0].Place)
	case drawing.PartitionThing:
		bayForm{f}.partition(sel[0].Place)
	case drawing.BayThing:
		bayForm{f}.bay(sel[0].Place)
	case drawing.CabinetThing:
		cabinetForm{f}.fill(sel[0].Place)
	default:
		projectForm{f}.fill()
	}
}

// head shows the head of the form, with the ring of a front as the check has it.
func (p *Panel) head() {
	h := &p.form.head
	h.badge = nil
	if len(p.shown) == 1 && p.shown[0].Kind == drawing.FrontThing {
		if f := p.session.Result().Plan.FrontAt(p.shown[0].Place); f != nil {
			h.badge = badge(f.Number, p.cards.worst())
		}
	}
	p.top.Objects = nil
	if len(h.path) > 0 {
		p.top.Objects = append(p.top.Objects, field.Flow(0, h.path...))
	}
	p.top.Objects = append(p.top.Objects, field.Spacer(2), h.headline(), field.Spacer(6), p.finder, p.finder.hint, field.Spacer(2))
}

// place puts head, cards and sections into their places.
func (p *Panel) place() {
	p.column.Objects = []fyne.CanvasObject{p.cards.box}
	for _, s := range p.form.sections {
		p.column.Objects = append(p.column.Objects, s.fold, s.body)
	}
	for _, c := range []*fyne.Container{p.top, p.whole, p.column} {
		c.Layout.Layout(c.Objects, c.Size()) // what is new needs no refresh
	}
	p.scroll.Refresh() // its bar
	fynecanvas.Refresh(p.whole)
}

// keepFocus brings the keyboard from a field that is gone to the new one of its
// label, the same of those that share it, or back to the drawing where there is
// none: the old one would take keys unseen, another one change another thing.
func (p *Panel) keepFocus(before []labelled) func() {
	c := field.CanvasOf(p.Object)
	if c == nil || c.Focused() == nil {
		return func() {}
	}
	i := slices.IndexFunc(before, func(l labelled) bool { return l.of == c.Focused() })
	if i < 0 {
		return func() {}
	}
	gone := before[i]
	return func() {
		for _, l := range p.form.focus {
			if l.of == gone.of {
				return
			}
		}
		if e, ok := gone.of.(*field.Entry); ok && e.Dirty() {
			e.Restore() // what it was about is shown no more
		}
		for _, l := range p.form.focus {
			if l.part == gone.part {
				c.Focus(l.of)
				return
			}
		}
		c.Unfocus()
	}
}

func kindOf(sel []drawing.Subject) drawing.SubjectKind {
	if len(sel) == 0 {
		return drawing.Nothing
	}
	return sel[0].Kind
}

// Fields gives the fields by their English labels; of several with one label the
// first.
func (p *Panel) Fields() map[string]*field.Entry {
	all := map[string]*field.Entry{}
	for _, l := range p.form.focus {
		if e, ok := l.of.(*field.Entry); ok && all[l.text] == nil {
			all[l.text] = e
		}
	}
	return all
}
