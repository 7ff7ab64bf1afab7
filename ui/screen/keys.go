package screen

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

func (c *Screen) focus() {
	if cv := field.CanvasOf(c); cv != nil {
		cv.Focus(c)
	}
}

// FocusGained shows the frame that tells where keys go.
func (c *Screen) FocusGained() {
	c.focused = true
	c.repaintOverlay()
}

// FocusLost hides the frame.
func (c *Screen) FocusLost() {
	c.focused = false
	c.repaintOverlay()
}

// TypedRune takes the signs for zooming, and a figure to begin a size with.
func (c *Screen) TypedRune(r rune) {
	switch {
	case r == '+':
		c.Zoom(1.25)
	case r == '-':
		c.Zoom(0.8)
	case r == '0' || r == '=':
		c.Fit()
	case r >= '1' && r <= '9':
		c.typeHeight(r)
	}
}

// typeHeight begins the height of the selected front with a digit, unless the
// hand has just been at another figure: the digit would be meant for that.
func (c *Screen) typeHeight(digit rune) {
	at := c.session.SelectedFronts()
	if len(at) != 1 {
		return
	}
	height := drawing.Subject{Kind: drawing.FrontHeight, Place: at[0]}
	seen := c.subject == Elevation || slices.ContainsFunc(c.figures, func(f figure) bool { return f.of == height })
	if !seen || slices.Equal(c.deaf, c.session.Selection()) {
		c.Tell(message.New("Click a figure that can be typed, or the front, first."))
		return
	}
	c.TypeSize(height)
	if c.typing != nil {
		c.typing.entry.TypedRune(digit) // in place of the figure, which is selected
	}
}

// TypedKey moves the selection, nudges a division or partition, opens the
// height of a front, and gives up.
func (c *Screen) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyEscape:
		c.Escape()
	case fyne.KeyUp:
		c.arrow(0, 1)
	case fyne.KeyDown:
		c.arrow(0, -1)
	case fyne.KeyLeft:
		c.arrow(-1, 0)
	case fyne.KeyRight:
		c.arrow(1, 0)
	case fyne.KeyPageUp:
		c.walk(1)
	case fyne.KeyPageDown:
		c.walk(-1)
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeyF2:
		c.typeSelected()
	case desktop.KeyMenu:
		c.menuHere()
	default:
		if c.OnKey != nil {
			c.OnKey(e)
		}
	}
}

// menuHere opens the menu over what is selected, for the keyboard.
func (c *Screen) menuHere() {
	if c.OnMenu == nil {
		return
	}
	at, size := fyne.NewPos(0, 0), c.Size()
	if sel := c.session.Selection(); len(sel) > 0 {
		if p, s, ok := c.Where(sel[0]); ok {
			at, size = p, s
		}
	}
	at = at.AddXY(size.Width/2, size.Height/2)
	c.OnMenu(fyne.CurrentApp().Driver().AbsolutePositionForObject(c).Add(at))
}

// Escape gives up what is going on; with nothing in the hand it clears the
// selection.
func (c *Screen) Escape() {
	if c.typing != nil {
		c.closeTyping()
		c.Tell(message.Message{})
		return
	}
	c.hand = c.hand.Escape(c)
	c.pressed = false
	c.Display(tool.Feedback{})
	c.Tell(message.Message{})
}

// typeSelected opens the size of what is selected.
func (c *Screen) typeSelected() {
	sel := c.session.Selection()
	if len(sel) == 0 {
		return
	}
	t := sel[0]
	switch t.Kind {
	case drawing.FrontThing, drawing.DivisionThing:
		c.TypeSize(drawing.Subject{Kind: drawing.FrontHeight, Place: t.Place})
	case drawing.BayThing, drawing.PartitionThing:
		at := t.Place
		at.Front = -1
		c.TypeSize(drawing.Subject{Kind: drawing.BayWidth, Place: at})
	case drawing.CabinetThing:
		c.TypeSize(drawing.Subject{Kind: drawing.CabinetWidth, Place: t.Place})
	}
}

// arrow nudges a selected division or partition, and otherwise goes to the
// neighbour of the selected front.
func (c *Screen) arrow(dx, dy int) {
	sel := c.session.Selection()
	if len(sel) == 0 {
		c.session.Select(session.Front(model.Place{}))
		return
	}
	t := sel[0]
	switch {
	case t.Kind == drawing.DivisionThing && dy != 0:
		c.nudgeDivision(t.Place, c.nudge(dy))
	case t.Kind == drawing.PartitionThing && dx != 0:
		c.nudgePartition(t.Place, c.nudge(dx))
	case dy != 0:
		c.step(dy)
	default:
		c.beside(dx)
	}
}

// nudge is one step, or ten with Shift.
func (c *Screen) nudge(sign int) length.Length {
	by := tool.Step(c.session.Project().Unit, false)
	if c.held()&fyne.KeyModifierShift != 0 {
		by *= 10
	}
	return by * length.Length(sign)
}

func (c *Screen) nudgeDivision(at model.Place, by length.Length) {
	pl := c.session.Result().Plan
	above := at
	above.Front++
	lo, up := session.FrontOf(pl, at), session.FrontOf(pl, above)
	if lo == nil || up == nil {
		return
	}
	c.do(edit.MoveDivision{Below: at, Lower: lo.Face.Height() + by, Upper: up.Face.Height() - by})
}

func (c *Screen) nudgePartition(at model.Place, by length.Length) {
	pl := c.session.Result().Plan
	next := at
	next.Bay++
	l, r := session.BayOf(pl, at), session.BayOf(pl, next)
	if l == nil || r == nil {
		return
	}
	c.do(edit.MovePartition{Left: at, WidthLeft: l.Opening.Width() + by, WidthRight: r.Opening.Width() - by})
}

// do makes an edit and tells where it can't be made.
func (c *Screen) do(e edit.Edit) {
	if err := c.session.Do(e); err != nil {
		c.Tell(tool.Said(err))
	}
}

// step selects the front above or below.
func (c *Screen) step(dy int) {
	at := c.session.Here()
	sel := c.session.Selection()
	switch {
	case len(sel) == 0 || at.Bay < 0 || at.Front < 0:
		at = model.Place{Cabinet: max(at.Cabinet, 0), Bay: max(at.Bay, 0)}
	case sel[0].Kind == drawing.FrontThing:
		at.Front += dy
	case dy > 0:
		at.Front++
	}
	if c.session.Project().FrontAt(at) != nil {
		c.session.Select(session.Front(at))
	}
}

// walk goes up or down through fronts and the divisions between them.
func (c *Screen) walk(dy int) {
	sel := c.session.Selection()
	if len(sel) == 0 || sel[0].Kind != drawing.FrontThing && sel[0].Kind != drawing.DivisionThing {
		c.step(dy)
		return
	}
	at := sel[0].Place
	division := drawing.Subject{Kind: drawing.DivisionThing, Place: at}
	switch {
	case sel[0].Kind == drawing.FrontThing && dy > 0:
	case sel[0].Kind == drawing.FrontThing:
		division.Place.Front--
	case dy > 0:
		at.Front++
		c.session.Select(session.Front(at))
		return
	default:
		c.session.Select(session.Front(at))
		return
	}
	above := division.Place
	above.Front++
	p := c.session.Project()
	if p.FrontAt(division.Place) != nil && p.FrontAt(above) != nil {
		c.session.Select(division)
	}
}

// beside selects the front of the neighbouring bay that is level with the
// selected one; from the first and last bay the partition or cabinet beside.
func (c *Screen) beside(dx int) {
	p := c.session.Project()
	at := c.session.Here()
	from := session.FrontOf(c.session.Result().Plan, model.Place{Cabinet: at.Cabinet, Bay: max(at.Bay, 0), Front: max(at.Front, 0)})
	next := model.Place{Cabinet: at.Cabinet, Bay: max(at.Bay, 0) + dx}
	if p.BayAt(next) == nil {
		next.Cabinet += dx
		cab := p.CabinetAt(next)
		if cab == nil {
			return
		}
		next.Bay = 0
		if dx < 0 {
			next.Bay = len(cab.Bays) - 1
		}
	}
	best, off := next, length.Length(0)
	for i := range p.BayAt(next).Fronts {
		one := next
		one.Front = i
		f := session.FrontOf(c.session.Result().Plan, one)
		if f == nil || from == nil {
			continue
		}
		if d := (f.Face.Centre().Y - from.Face.Centre().Y).Abs(); i == 0 || d < off {
			best, off = one, d
		}
	}
	c.session.Select(session.Front(best))
}
