// Package desk is the drawing on its sheet: the tools above it, the bar of the check
// below, which also tells what was done, and the inspector at its right.
package desk

import (
	"fyne.io/fyne/v2"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/model/message"
	"frontlay/ui/bar"
	"frontlay/ui/command"
	"frontlay/ui/field"
	"frontlay/ui/findings"
	"frontlay/ui/inspector"
	"frontlay/ui/screen"
	"frontlay/ui/session"
	"frontlay/ui/tip"
	"frontlay/ui/tool"
)

// Host is what the desk needs of the window around it.
type Host interface {
	Session() *session.Session
	Say() message.Language
	Preferences() fyne.Preferences
	// FileName is what files of the project are called.
	FileName() string
	// Large tells that the text is large, which wants wider panels.
	Large() bool
	// Update shows in menus and buttons what can be done now.
	Update()
	// Menu opens the menu of what is selected.
	Menu(at fyne.Position)
	// Key gets the keys that the drawing has no use for.
	Key(*fyne.KeyEvent)
}

// Desk is one.
type Desk struct {
	Object    *fyne.Container
	Screen    *screen.Screen
	Inspector *inspector.Panel
	Findings  *findings.Panel

	host  Host
	told  *told
	drawn drawing.SubjectKind // what the tool in the hand draws
	under drawing.Subject     // what the pointer is over
	tools *tools
	panes *panes
	pins  *pins
}

// New makes the desk of a window. It has no tools before Furnish.
func New(h Host) *Desk {
	d := &Desk{host: h, told: newTold(), panes: newPanes()}
	s := h.Session()
	d.Screen = screen.New(s, h.Say)
	d.Screen.SetRulers(h.Preferences().Bool(prefRulers))
	d.Screen.SetSeeThrough(h.Preferences().Bool(prefThrough))
	d.Screen.SetDimensions(h.Preferences().BoolWithFallback(prefDimensions, true))
	d.Screen.OnTell = d.Refuse // a drawing tells only what can't be done
	d.Screen.OnMenu = h.Menu
	d.Screen.OnHover = d.hover
	d.Screen.OnHold = d.held
	d.Screen.OnKey = h.Key
	d.Inspector = inspector.New(s, h.Say, d.Refuse)
	d.Inspector.Remember(h.Preferences())
	d.Screen.OnRune = d.TypedRune
	d.Screen.OnEscape = d.closeList
	d.Findings = findings.New(s, h.Say, d.Tell)
	d.Findings.OnRefuse = d.Refuse
	d.Findings.OnShow = func(check.Finding) {
		d.pins.done(lookHere)
		d.Screen.Refresh()
	}
	d.Findings.OnTurn = func() {
		d.pins.done(lookHere)
		h.Update()
	}
	d.Findings.Beside(d.told.line, d.told.fit)
	d.panes.sheet, d.panes.check, d.panes.inspector, d.panes.told = d.Screen, d.Findings.Object, d.Inspector.Object, d.told
	d.panes.width, d.panes.hidden = within(float32(h.Preferences().FloatWithFallback(d.pref(prefWidth), usualInspector))), h.Preferences().Bool(prefHidden)
	d.pins = newPins(d)
	d.panes.pins = d.pins
	d.Screen.OnPainted = d.pins.place
	d.Screen.OnTyped = func() { d.pins.done(typeHere) }
	d.panes.edge.OnMoved = func() { d.Object.Refresh() }
	return d
}

// Furnish puts the tools of commands over the drawing. run is told which is
// pressed.
func (d *Desk) Furnish(t *command.Table, run func(*command.Command)) {
	d.tools = newTools(d.host, t, run)
	d.panes.tools = d.tools.object
	d.Object = d.panes.object()
	if c := t.Command("findings"); c != nil {
		d.Findings.ArrowTip = func() tip.Text { return tip.Text{Name: t.Name(c), Keys: t.Keys(c)} }
	}
}

// TypedRune takes the letter that leads to the search for figures.
func (d *Desk) TypedRune(r rune) {
	if r == '/' {
		d.Inspector.Find()
	}
}

// Watch shows another session from now on.
func (d *Desk) Watch(s *session.Session) {
	d.Tell(message.Message{})
	d.under = drawing.Subject{}
	d.Screen.Watch(s)
	d.Inspector.Watch(s)
	d.Findings.Watch(s)
}

// Changed follows a change of the session with what the bar of the check tells of it
// and of the thing under the pointer.
func (d *Desk) Changed(c session.Change) {
	if c&session.Document != 0 && d.host.Session().InGesture() {
		d.pins.done(dragHere)
	}
	d.tellChange(c)
	d.tellUnder()
}

// Update shows on the tools what can be done, and the state of the file.
func (d *Desk) Update(state message.Message) {
	d.tools.update(d.host.FileName(), d.host.Say().Say(state))
}

// Tools are the buttons over the drawing, by what they do.
func (d *Desk) Tools() map[*command.Command]*bar.Button { return d.tools.of }

// TypedKey takes keys that no widget wants: Esc closes the list of findings, all else
// is the drawing's.
func (d *Desk) TypedKey(e *fyne.KeyEvent) {
	if e.Name == fyne.KeyEscape && d.closeList() {
		return
	}
	d.Screen.TypedKey(e)
}

// closeList closes the list of findings; it is false where that is not open.
func (d *Desk) closeList() bool {
	open := d.Findings.Open()
	d.Findings.Close()
	return open
}

// nextPane brings the keyboard from the drawing to the inspector, from there to the
// check, and back. Below a page it leaves the keyboard where it is.
func (d *Desk) nextPane() {
	c := field.CanvasOf(d.Screen)
	if c == nil || !d.Object.Visible() {
		return
	}
	switch at := c.Focused(); {
	case d.Findings.Holds(at):
		c.Focus(d.Screen)
	case d.panes.hidden, lies(at, d.Inspector.Object):
		d.Inspector.Take()
		d.Findings.Enter()
	default:
		d.Inspector.Find()
	}
}

// lies tells that what has the keyboard is seen within a pane.
func lies(f fyne.Focusable, pane fyne.CanvasObject) bool {
	o, ok := f.(fyne.CanvasObject)
	if !ok {
		return false
	}
	driver := fyne.CurrentApp().Driver()
	at, from := driver.AbsolutePositionForObject(o), driver.AbsolutePositionForObject(pane)
	return at.X >= from.X && at.Y >= from.Y && at.X < from.X+pane.Size().Width && at.Y < from.Y+pane.Size().Height
}

// Restyle shows everything in another look.
func (d *Desk) Restyle() {
	d.panes.colour()
	d.tools.colour()
	d.told.write()
	d.pins.place()
	d.Screen.Refresh()
	d.Inspector.Rebuild()
	d.Findings.Update()
}

// Names of the settings that are kept.
const (
	prefRulers     = "rulers"
	prefThrough    = "see through"
	prefDimensions = "dimensions"
	prefWidth      = "width of the inspector"
	prefHidden     = "inspector hidden"
)

// pref is the name of a setting that large text has another one of.
func (d *Desk) pref(name string) string {
	if d.host.Large() {
		return name + ", large text"
	}
	return name
}

// KeepShares notes how the desk is divided.
func (d *Desk) KeepShares() {
	d.host.Preferences().SetFloat(d.pref(prefWidth), float64(d.panes.width))
	d.host.Preferences().SetBool(prefHidden, d.panes.hidden)
}

// Divided tells how wide the inspector is, in units of small letters, and whether it
// is hidden.
func (d *Desk) Divided() (width float32, hidden bool) { return d.panes.width, d.panes.hidden }

// widen makes the inspector wider by units of the screen.
func (d *Desk) widen(by float32) {
	d.panes.widen(by)
	d.Object.Refresh()
}

// turnInspector shows the inspector or hides it.
func (d *Desk) turnInspector() {
	if d.panes.hide(!d.panes.hidden); d.panes.hidden {
		d.Inspector.Take()
		if c := field.CanvasOf(d.Screen); c != nil && c.Focused() != nil && c.Focused() != fyne.Focusable(d.Screen) {
			c.Focus(d.Screen) // what is hidden would take keys unseen
		}
	}
	d.Object.Refresh()
	d.KeepShares()
	d.host.Update()
}

// take hands a tool to the drawing.
func (d *Desk) take(t tool.Tool, hint message.Message) {
	if _, idle := t.(tool.Idle); !idle && d.Screen.Picture() != screen.Elevation {
		d.Screen.ShowPicture(screen.Elevation)
	}
	d.Screen.Take(t)
	d.Tell(hint)
	d.host.Update()
	if c := field.CanvasOf(d.Screen); c != nil {
		c.Focus(d.Screen)
	}
}

// fix makes the best change that mends the chosen finding.
func (d *Desk) fix() {
	if !d.Findings.Fix() {
		d.Refuse(message.New("Choose a finding that the program can mend: its changes stand beside it."))
	}
}
