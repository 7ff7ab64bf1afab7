package ui

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	fynelayout "fyne.io/fyne/v2/layout"

	"frontlay/model/message"
	"frontlay/ui/ask"
	"frontlay/ui/command"
	"frontlay/ui/desk"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/tip"
)

// page is what lies over the desk.
type page interface {
	// Own runs a command by what is on the page, or tells why that can't be; false:
	// it is not about that.
	Own(c *command.Command) bool
	// Leave goes on once nothing on the page can be lost by it.
	Leave(then func())
}

// reading is a page that knows no commands, and on which nothing is changed. It is
// the chapter of the manual that tells of it.
type reading string

func (reading) Own(*command.Command) bool { return false }

func (reading) Leave(then func()) { then() }

// stage is what a window shows, the desk or a page over it, and runs the commands
// that make sense there.
type stage struct {
	win   fyne.Window
	ask   *ask.Asker
	desk  *desk.Desk
	table *command.Table

	front  *fyne.Container // what lies over the desk
	page   page            // that, nil where nothing does
	opened bool            // a project is on the desk
}

// furnish puts a desk and the commands on the stage, and the page away.
func (s *stage) furnish(d *desk.Desk, t *command.Table) {
	s.desk, s.table, s.front = d, t, container.NewStack()
	s.win.SetPadded(false) // the desk goes to the window's edges, pages do not
	s.win.SetContent(tip.Over(container.NewStack(d.Object, container.NewPadded(s.front))))
	s.win.SetMainMenu(t.MainMenu(s.run))
	t.AddOthers(s.win.Canvas(), s.run)
}

// do runs a command by name, if it makes sense now.
func (s *stage) do(name string) {
	if c := s.table.Command(name); c != nil {
		s.run(c)
	}
}

// run does what a command says, if it makes sense now. What is being typed is taken
// first. While a page lies over the drawing nothing changes unseen: a command that
// is about the drawing brings that back. While no project is open, what is about
// one does nothing.
func (s *stage) run(c *command.Command) {
	if s.field(c) || s.win.Canvas().Overlays().Top() != nil {
		return // a question on top: nothing changes behind it
	}
	if s.page == nil {
		s.perform(c)
		return
	}
	switch {
	case s.page.Own(c):
	case c.Scope != command.Anywhere && !s.opened:
	case c.Leaves:
		s.page.Leave(func() { s.perform(c) })
	case c.Scope == command.Drawing:
		s.page.Leave(func() {
			s.showDesk()
			s.perform(c)
		})
	default:
		s.perform(c)
	}
}

func (s *stage) perform(c *command.Command) {
	s.desk.Inspector.Take()
	if !c.Possible() {
		s.desk.Refuse(message.New("“%v” is not possible now.", message.New(c.Words)))
		return
	}
	c.Do()
}

// field hands a command on to the field that has the focus, where that knows it
// too: a menu gets its keys before a field does.
func (s *stage) field(c *command.Command) bool {
	focused := s.win.Canvas().Focused()
	to, ok := focused.(fyne.Shortcutable)
	if c.Fields == command.NoField || !ok || focused == fyne.Focusable(s.desk.Screen) {
		return false
	}
	if e, ok := to.(*field.Entry); ok && c.Fields == command.DirtyFields && !e.Dirty() {
		return false
	}
	to.TypedShortcut(c.Shortcut())
	return true
}

// typedKey takes keys that no widget wants.
func (s *stage) typedKey(e *fyne.KeyEvent) {
	switch {
	case s.page == nil:
		s.desk.TypedKey(e)
	case command.FunctionKey(e.Name):
		s.key(e)
	case e.Name == fyne.KeyEscape && s.opened:
		s.page.Leave(s.showDesk)
	}
}

// typedRune takes letters that no widget wants.
func (s *stage) typedRune(r rune) {
	if s.page == nil {
		s.desk.TypedRune(r)
	}
}

// key takes keys that the drawing has no use for.
func (s *stage) key(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyDelete, fyne.KeyBackspace:
		s.do("remove")
	case fyne.KeyF10:
		if s.page == nil && s.shifted() {
			s.desk.Screen.TypedKey(&fyne.KeyEvent{Name: desktop.KeyMenu})
		} else {
			s.openMenus()
		}
	default:
		if c := s.table.OfKey(e.Name); c != nil {
			s.run(c)
		}
	}
}

// shifted tells that Shift is held.
func (s *stage) shifted() bool {
	if s.desk.Screen.Held != nil {
		return s.desk.Screen.Held()&command.Shift != 0
	}
	d, ok := fyne.CurrentApp().Driver().(desktop.Driver)
	return ok && d.CurrentKeyModifiers()&command.Shift != 0
}

// openMenus goes to the row of menus, as letting go of Alt does in Fyne. The
// canvases of the desktop can do that, but no interface says so.
func (s *stage) openMenus() {
	if c, ok := s.win.Canvas().(interface{ ToggleMenu() }); ok {
		c.ToggleMenu()
	}
}

// settle takes what is being typed, and goes on once nothing on the page can be
// lost.
func (s *stage) settle(then func()) {
	typed := func() {
		s.desk.Inspector.Take()
		then()
	}
	if s.page != nil {
		s.page.Leave(typed)
		return
	}
	typed()
}

// showDesk puts the drawing in front again.
func (s *stage) showDesk() {
	s.opened = true
	s.clear()
	s.win.Canvas().Focus(s.desk.Screen)
}

// clear takes the page away.
func (s *stage) clear() {
	s.page = nil
	s.front.Hide()
	s.desk.Object.Show()
}

// showOver puts a page in front of the desk, below its title, what stands beside
// that, and the way back to the drawing.
func (s *stage) showOver(p page, title string, o fyne.CanvasObject, beside ...fyne.CanvasObject) {
	text := fynecanvas.NewText(title, look.Current().Ink)
	text.TextSize, text.TextStyle.Bold = look.Title(), true
	head := container.NewHBox(append([]fyne.CanvasObject{text, fynelayout.NewSpacer()}, beside...)...)
	if s.opened {
		head.Add(field.NewButton(s.ask.Text("Back to the drawing"), func() { p.Leave(s.showDesk) }))
	}
	s.page = p
	s.front.Objects = []fyne.CanvasObject{container.NewBorder(container.NewPadded(head), nil, nil, nil, o)}
	s.front.Refresh()
	s.desk.Object.Hide()
	s.front.Show()
	s.win.Canvas().Unfocus()
}
