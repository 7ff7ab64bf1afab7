package field

import (
	"time"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// tail is what stands at the right inside of a field: the unit of its figure, and,
// while the pointer is over the field or the field has the focus, two steppers, one
// above the other. Tab passes them by, as the field's own up and down keys do the
// same. Held they repeat, and what they do until they are let go is one change.
type tail struct {
	widget.BaseWidget
	entry   *Entry
	held    int  // what the stepper that is held steps by; 0: none is
	over    int  // what the one under the pointer would
	under   bool // the pointer is over the field
	unit    fynecanvas.Text
	arrows  [4]fynecanvas.Line
	surface fynecanvas.Rectangle // of the stepper under the pointer
	// after runs something later and gives what calls that off.
	after func(time.Duration, func()) (stop func())
	stop  func()
}

// How long a stepper is held before it repeats, and how often it does then.
const (
	holdFor   = 400 * time.Millisecond
	holdAgain = 70 * time.Millisecond
)

func newTail(e *Entry) *tail {
	t := &tail{entry: e, stop: func() {}, after: func(d time.Duration, do func()) func() {
		timer := time.AfterFunc(d, func() { fyne.Do(do) })
		return func() { timer.Stop() }
	}}
	t.ExtendBaseWidget(t)
	return t
}

// stepsWide is the width of the steppers.
func stepsWide() float32 { return 1.4 * fynetheme.Size(fynetheme.SizeNameText) }

// wide is the room that the tail of a source takes.
func wide(s *Source) float32 {
	w := float32(0)
	if s.Unit != "" {
		w = fyne.MeasureText(s.Unit, fynetheme.Size(fynetheme.SizeNameCaptionText), fyne.TextStyle{}).Width + around()
	}
	if s.Step != nil {
		w += stepsWide()
	}
	return w
}

// stepping tells that the steppers are shown.
func (t *tail) stepping() bool {
	return t.entry.source.Step != nil && (t.under || t.entry.on || t.held != 0)
}

// at is which of the steppers lies at a place.
func (t *tail) at(p fyne.Position) int {
	switch {
	case !t.stepping() || p.X < t.Size().Width-stepsWide():
		return 0
	case p.Y < t.Size().Height/2:
		return 1
	default:
		return -1
	}
}

// MouseIn tells the field, which no longer hears of the pointer itself.
func (t *tail) MouseIn(e *desktop.MouseEvent) {
	t.under = true
	t.MouseMoved(e)
	t.Refresh()
}

// MouseMoved shows which stepper a press would take.
func (t *tail) MouseMoved(e *desktop.MouseEvent) {
	if over := t.at(e.Position); over != t.over {
		t.over = over
		t.Refresh()
	}
}

// MouseOut ends what MouseIn began.
func (t *tail) MouseOut() {
	t.under, t.over = false, 0
	t.letGo()
	t.Refresh()
}

// MouseDown steps, and again and again while the button is held. Beside the steppers
// it is the field's.
func (t *tail) MouseDown(e *desktop.MouseEvent) {
	t.held = t.at(e.Position)
	if t.held == 0 || e.Button != desktop.MouseButtonPrimary {
		t.held = 0
		inside := *e
		inside.Position = e.Position.Add(t.Position())
		t.entry.MouseDown(&inside)
		return
	}
	if c := CanvasOf(t.entry); c != nil {
		c.Focus(t.entry)
	}
	if !t.entry.Take() {
		t.held = 0
		return
	}
	if t.entry.source.Held != nil {
		t.entry.source.Held(true)
	}
	t.again(holdFor)
}

// again steps and waits for the next time.
func (t *tail) again(wait time.Duration) {
	t.entry.stepBy(t.held)
	t.entry.SelectAll()
	t.stop = t.after(wait, func() {
		if t.held != 0 {
			t.again(holdAgain)
		}
	})
}

// MouseUp lets go.
func (t *tail) MouseUp(*desktop.MouseEvent) { t.letGo() }

// Dragged keeps a press that moves a little from selecting a part of the figure.
func (t *tail) Dragged(*fyne.DragEvent) {}

// DragEnd lets go: after a drag the desktop tells no MouseUp.
func (t *tail) DragEnd() { t.letGo() }

func (t *tail) letGo() {
	if t.held == 0 {
		return
	}
	t.held = 0
	t.stop()
	if t.entry.source.Held != nil {
		t.entry.source.Held(false)
	}
	t.Refresh()
}

// Cursor is an arrow over the steppers.
func (t *tail) Cursor() desktop.Cursor {
	if t.over != 0 {
		return desktop.DefaultCursor
	}
	return desktop.TextCursor
}

// CreateRenderer makes the renderer; everything is kept in the widget.
func (t *tail) CreateRenderer() fyne.WidgetRenderer {
	r := &tailRenderer{t}
	r.colour()
	return r
}

type tailRenderer struct{ *tail }

// Layout puts the unit at the right, or at the left of the steppers.
func (r *tailRenderer) Layout(s fyne.Size) {
	box := r.unit.MinSize()
	x := s.Width - around()
	if r.stepping() {
		x = s.Width - stepsWide() - around()/4
	}
	r.unit.Move(fyne.NewPos(x-box.Width, (s.Height-box.Height)/2))
	r.unit.Resize(box)
	middle, half := s.Width-stepsWide()/2-1, stepsWide()/5
	for i, up := range []float32{1, -1} {
		y := s.Height/2 - up*s.Height/4
		a, b := &r.arrows[2*i], &r.arrows[2*i+1]
		a.Position1, a.Position2 = fyne.NewPos(middle-half, y+up*half/2), fyne.NewPos(middle, y-up*half/2)
		b.Position1, b.Position2 = fyne.NewPos(middle, y-up*half/2), fyne.NewPos(middle+half, y+up*half/2)
	}
	r.surface.Resize(fyne.NewSize(stepsWide()-2, s.Height/2-1))
	r.surface.Move(fyne.NewPos(s.Width-stepsWide(), 1))
	if r.over < 0 {
		r.surface.Move(fyne.NewPos(s.Width-stepsWide(), s.Height/2))
	}
}

// MinSize is the room that a figure leaves at its right.
func (r *tailRenderer) MinSize() fyne.Size { return fyne.NewSize(wide(&r.entry.source), 1) }

func (r *tailRenderer) Refresh() {
	r.colour()
	r.Layout(r.Size())
	fynecanvas.Refresh(r.tail)
}

func (r *tailRenderer) colour() {
	r.unit.Text, r.unit.TextSize = r.entry.source.Unit, fynetheme.Size(fynetheme.SizeNameCaptionText)
	r.unit.Color = fynetheme.Color(fynetheme.ColorNamePlaceHolder)
	r.unit.Hidden = r.entry.ownUnit()
	for i := range r.arrows {
		r.arrows[i].StrokeColor, r.arrows[i].StrokeWidth = fynetheme.Color(fynetheme.ColorNameForeground), 1.5
		r.arrows[i].Hidden = !r.stepping()
	}
	r.surface.FillColor, r.surface.CornerRadius = fynetheme.Color(fynetheme.ColorNameHover), 3
	if r.held != 0 {
		r.surface.FillColor = fynetheme.Color(fynetheme.ColorNamePressed)
	}
	r.surface.Hidden = r.over == 0 || !r.stepping()
}

func (r *tailRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{&r.surface, &r.unit, &r.arrows[0], &r.arrows[1], &r.arrows[2], &r.arrows[3]}
}

func (r *tailRenderer) Destroy() {}

// Hold steps as often as a stepper does that is held, and lets go.
func (e *Entry) Hold(by, times int) {
	if !e.Take() {
		return
	}
	if e.source.Held != nil {
		e.source.Held(true)
		defer e.source.Held(false)
	}
	for range times {
		e.stepBy(by)
	}
}
