package inspector

import (
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/session"
)

// Panel is the inspector.
type Panel struct {
	Object fyne.CanvasObject

	session *session.Session
	say     func() message.Language
	tell    func(message.Message)
	column  *fyne.Container
	scroll  *container.Scroll
	form    *form
	shown   []drawing.Subject
	unit    length.Unit
	sheets  []model.HardwareUse // whose names, drawers and runners are offered
	outline outline
	begun   bool
}

// outline is what decides which fields the things selected have: whether the
// front is a drawer, of which sheet, whether one fits, and how many bays and
// neighbours the cabinet has.
type outline struct {
	kind           model.Kind
	sheet          *model.HardwareSheet
	fitted         bool
	cabinets, bays int
}

func outlineOf(s *session.Session) outline {
	o := outline{cabinets: len(s.Project().Cabinets)}
	here := s.Here()
	if f := session.FrontOf(s.Result().Plan, here); f != nil {
		o.kind, o.sheet, o.fitted = f.Kind, f.Sheet, f.Fitted
	}
	if c := s.Project().CabinetAt(here); c != nil {
		o.bays = len(c.Bays)
	}
	return o
}

// New makes the panel of a session. It is empty until Begin, so that a window can
// be on the screen before its dozens of fields are made.
func New(s *session.Session, say func() message.Language, tell func(message.Message)) *Panel {
	p := &Panel{say: say, tell: tell, column: field.Column(), form: &form{}}
	p.scroll, p.Object = field.Scrolled(p.column)
	p.Watch(s)
	return p
}

// Watch shows another session from now on.
func (p *Panel) Watch(s *session.Session) {
	p.session = s
	s.Listen(func(c session.Change) {
		if p.session != s {
			return
		}
		if p.say().Unit != p.unit {
			p.Rebuild()
		} else if !slices.Equal(p.shown, s.Selection()) || !slices.Equal(p.sheets, s.Project().Hardware) || p.outline != outlineOf(s) {
			p.show()
		} else if c&session.Document != 0 {
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
	p.sheets, p.outline = p.session.Project().Hardware, outlineOf(p.session)
	f := &form{session: p.session, say: p.say, tell: p.tell, before: p.form.widgets, widgets: map[part]any{}}
	p.form = f
	switch kindOf(sel) {
	case drawing.FrontThing:
		f.fronts(p.session.SelectedFronts())
	case drawing.DivisionThing:
		f.division(sel[0].Place)
	case drawing.PartitionThing:
		f.partition(sel[0].Place)
	case drawing.BayThing:
		f.bay(sel[0].Place)
	case drawing.CabinetThing:
		f.cabinet(sel[0].Place)
	default:
		f.project()
	}
	f.before = nil
	p.column.Objects = f.objects
	p.column.Layout.Layout(p.column.Objects, p.column.Size()) // what is new needs no refresh
	if same {
		p.scroll.Refresh() // its bar
	} else {
		p.scroll.ScrollToTop()
	}
	fynecanvas.Refresh(p.column)
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
			if l.text == gone.text && l.nth == gone.nth {
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
