// Package desk is the drawing between its panels: the buttons above it, the
// findings below, the inspector at its right, and the line that tells what was
// done.
package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/model/message"
	"frontlay/ui/command"
	"frontlay/ui/field"
	"frontlay/ui/findings"
	"frontlay/ui/inspector"
	"frontlay/ui/screen"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// Host is what the desk needs of the window around it.
type Host interface {
	Session() *session.Session
	Say() message.Language
	Preferences() fyne.Preferences
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
	Status    *field.Label // the line that tells

	host    Host
	status  *statusLine
	pointer *field.Label
	under   drawing.Subject  // what the pointer is over
	buttons *buttons         // over the drawing
	Down    *container.Split // the drawing and the findings below it
	Across  *container.Split // both and the inspector
}

// New makes the desk of a window. It has no buttons before Furnish.
func New(h Host) *Desk {
	d := &Desk{host: h, status: newStatusLine(), pointer: field.NewLabel("")}
	d.Status = d.status.label
	s := h.Session()
	d.Screen = screen.New(s, h.Say)
	d.Screen.SetRulers(h.Preferences().Bool(prefRulers))
	d.Screen.SetSeeThrough(h.Preferences().Bool(prefThrough))
	d.Screen.OnTell = d.Refuse // a drawing tells only what can't be done
	d.Screen.OnMenu = h.Menu
	d.Screen.OnHover = d.hover
	d.Screen.OnKey = h.Key
	d.Inspector = inspector.New(s, h.Say, d.Refuse)
	d.Findings = findings.New(s, h.Say, d.Tell)
	d.Findings.OnRefuse = d.Refuse
	d.Findings.OnShow = func(check.Finding) { d.Screen.Refresh() }
	d.Down = container.NewVSplit(d.Screen, d.Findings.Object)
	d.Across = container.NewHSplit(d.Down, d.Inspector.Object)
	d.Down.Offset, d.Across.Offset = d.shares()
	return d
}

// Furnish puts the buttons of commands over the drawing. run is told which is
// pressed.
func (d *Desk) Furnish(t *command.Table, run func(*command.Command)) {
	d.buttons = newButtons(d.host, t, run)
	bottom := container.NewBorder(nil, nil, nil, d.pointer, d.Status)
	d.Object = container.NewBorder(d.buttons.object, bottom, nil, nil, d.Across)
}

// Watch shows another session from now on.
func (d *Desk) Watch(s *session.Session) {
	d.Tell(message.Message{})
	d.under = drawing.Subject{}
	d.Screen.Watch(s)
	d.Inspector.Watch(s)
	d.Findings.Watch(s)
}

// Changed follows a change of the session with the status line and what is told of
// the thing under the pointer.
func (d *Desk) Changed(c session.Change) {
	d.tellChange(c)
	d.tellUnder()
}

// Update shows on the buttons what can be done.
func (d *Desk) Update() { d.buttons.update() }

// Buttons are the buttons over the drawing, by what they do.
func (d *Desk) Buttons() map[*command.Command]*field.Button { return d.buttons.of }

// Restyle shows everything in another look.
func (d *Desk) Restyle() {
	d.Screen.Refresh()
	d.Inspector.Rebuild()
	d.Findings.Update()
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
