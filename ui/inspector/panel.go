package inspector

import (
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"frontlay/layout/drawing"
	"frontlay/model"
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
	unit    message.Language
	sheets  []model.HardwareUse // whose names, drawers and runners are offered
	begun   bool
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
		if !same(p.shown, s.Selection()) || p.say().Unit != p.unit.Unit || !slices.Equal(p.sheets, s.Project().Hardware) {
			p.rebuild()
		} else if c&session.Document != 0 {
			p.update()
		}
	})
	p.rebuild()
}

// Begin fills the panel.
func (p *Panel) Begin() {
	p.begun = true
	p.rebuild()
}

// Rebuild makes the panel anew, for another language or look.
func (p *Panel) Rebuild() { p.rebuild() }

// Take hands on what is typed in the panel, if anything.
func (p *Panel) Take() {
	for _, e := range p.form.entries() {
		if e.Dirty() && !e.Take() {
			e.Restore()
		}
	}
}

func same(a, b []drawing.Subject) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i] != b[i] {
			return false
		}
	}
	return true
}

func (p *Panel) update() {
	for _, f := range p.form.updates {
		f()
	}
}

func (p *Panel) rebuild() {
	if !p.begun {
		return
	}
	defer p.keepFocus()()
	sel := p.session.Selection()
	p.shown, p.unit = append([]drawing.Subject(nil), sel...), p.say()
	p.sheets = p.session.Project().Hardware
	f := &form{session: p.session, say: p.say, tell: p.tell}
	p.form = f
	switch kind := kindOf(sel); kind {
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
	p.column.Objects = f.objects
	p.column.Layout.Layout(p.column.Objects, p.column.Size()) // they are new: no need to refresh them
	p.scroll.ScrollToTop()
	fynecanvas.Refresh(p.column)
}

// keepFocus brings the keyboard from a field that is made anew to the new one of
// its label, the same of those that share it, or back to the drawing where there
// is none: the old one would take keys unseen, another one change another thing.
func (p *Panel) keepFocus() func() {
	c := field.CanvasOf(p.Object)
	if c == nil || c.Focused() == nil {
		return func() {}
	}
	i := slices.IndexFunc(p.form.focus, func(l labelled) bool { return l.of == c.Focused() })
	if i < 0 {
		return func() {}
	}
	gone, which := p.form.focus[i], 0 // of those with its label
	for _, l := range p.form.focus[:i] {
		if l.name == gone.name {
			which++
		}
	}
	return func() {
		if e, ok := gone.of.(*field.Entry); ok && e.Dirty() {
			e.Restore() // what it was about is shown no more
		}
		for _, l := range p.form.focus {
			if l.name != gone.name {
				continue
			}
			if which == 0 {
				c.Focus(l.of)
				return
			}
			which--
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
		if e, ok := l.of.(*field.Entry); ok && all[l.name] == nil {
			all[l.name] = e
		}
	}
	return all
}
