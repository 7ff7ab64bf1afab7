package ui

import (
	"fmt"
	"math/rand"
	"os"
	"path/filepath"
	"reflect"
	"runtime"
	"runtime/debug"
	"strconv"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"frontlay/assets/language"
	"frontlay/layout/check"
	"frontlay/model/yamlfile"
	"frontlay/ui/field"
	"frontlay/ui/replay"
)

// apart are commands that the monkey leaves alone: they go to other projects and
// files, or end the window.
var apart = map[string]bool{
	"new": true, "open": true, "example": true, "save": true, "saveas": true, "print": true, "quit": true,
	"language": true, "sheets": true, "newsheet": true, "readsheet": true, "nextgroup": true, "lastgroup": true, "writesheet": true, "newwindow": true, "export": true,
}

// monkey works a window at random, by a seed.
type monkey struct {
	w       *window
	r       *rand.Rand
	pointer replay.Pointer
	saves   string // where it saves
}

func newMonkey(w *window, seed int64, saves string) *monkey {
	w.desk.Screen.Held = func() fyne.KeyModifier { return 0 }
	return &monkey{w: w, r: rand.New(rand.NewSource(seed)), saves: saves}
}

// spot is anywhere on the drawing.
func (m *monkey) spot() fyne.Position {
	size := m.w.desk.Screen.Size()
	return fyne.NewPos(m.r.Float32()*size.Width, m.r.Float32()*size.Height)
}

// act does one random thing, and puts away what it has opened.
func (m *monkey) act() {
	m.pointer.To = m.w.desk.Screen // another one after another language
	switch n := m.r.Intn(100); {
	case m.w.stage.front.Visible():
		m.onPage()
	case n < 18:
		m.pointer.Held = []fyne.KeyModifier{0, 0, fyne.KeyModifierShift, fyne.KeyModifierControl}[m.r.Intn(4)]
		m.pointer.Click(m.spot())
	case n < 30:
		m.pointer.Drag(m.spot(), m.spot(), 1+m.r.Intn(6))
	case n < 35: // a drag that Esc gives up
		m.pointer.Move(m.spot())
		m.pointer.Press(desktop.MouseButtonPrimary)
		m.pointer.Move(m.spot())
		m.w.desk.Screen.Escape()
		m.pointer.Move(m.spot())
		m.pointer.Release()
	case n < 40:
		m.reorder()
	case n < 50:
		keys := []fyne.KeyName{fyne.KeyUp, fyne.KeyDown, fyne.KeyLeft, fyne.KeyRight, fyne.KeyPageUp, fyne.KeyPageDown,
			fyne.KeyReturn, fyne.KeyEscape, fyne.KeyDelete, desktop.KeyMenu, fyne.KeyF10}
		m.w.typedKey(&fyne.KeyEvent{Name: keys[m.r.Intn(len(keys))]})
	case n < 58:
		if f := m.w.win.Canvas().Focused(); f != nil {
			m.typeInto(f)
		}
	case n < 63:
		m.w.desk.Screen.Scrolled(&fyne.ScrollEvent{PointEvent: fyne.PointEvent{Position: m.spot()}, Scrolled: fyne.NewDelta(0, float32(m.r.Intn(3)-1))})
	case n < 71:
		m.inPanel()
	case n < 76:
		m.menu()
	case n < 78:
		m.openPage()
	case n < 79:
		m.w.speak([]string{language.English, "de"}[m.r.Intn(2)])
	default:
		if c := &m.w.table.Rows[m.r.Intn(len(m.w.table.Rows))]; !apart[c.Name] {
			m.w.run(c)
		}
	}
	m.putAway()
}

// typeInto types something, sensible or not.
func (m *monkey) typeInto(f fyne.Focusable) {
	for _, c := range []string{"250", "1/2 in", "-5", "x", "600-2*18", "0", "Größe", "99999999"}[m.r.Intn(8)] {
		f.TypedRune(c)
	}
	f.TypedKey(&fyne.KeyEvent{Name: []fyne.KeyName{fyne.KeyReturn, fyne.KeyTab, fyne.KeyEscape, fyne.KeyUp, fyne.KeyBackspace}[m.r.Intn(5)]})
}

// reorder selects a front and drags it to another one.
func (m *monkey) reorder() {
	fronts := m.w.session.Result().Plan.Fronts
	middle := func() (fyne.Position, bool) {
		r, ok := replay.Places(m.w.desk.Screen)[fmt.Sprintf("front %d", 1+m.r.Intn(len(fronts)))]
		return fyne.NewPos(r.X+r.Width/2, r.Y+r.Height/2), ok
	}
	from, ok := middle()
	to, also := middle()
	if ok && also {
		m.pointer.Held = 0
		m.pointer.Click(from)
		m.pointer.Drag(from, to, 1+m.r.Intn(4))
	}
}

// inPanel types into a field of the inspector, or chooses or ticks there.
func (m *monkey) inPanel() { m.use(m.w.desk.Inspector.Object) }

// use works one of the controls in an object.
func (m *monkey) use(in fyne.CanvasObject) {
	var all []fyne.Focusable
	for _, o := range test.LaidOutObjects(in) {
		if f, ok := o.(fyne.Focusable); ok && o.Visible() {
			all = append(all, f)
		}
	}
	if len(all) == 0 {
		return
	}
	f := all[m.r.Intn(len(all))]
	if d, ok := f.(fyne.Disableable); ok && d.Disabled() {
		return
	}
	m.w.win.Canvas().Focus(f)
	switch v := f.(type) {
	case *field.Choice:
		if len(v.Options) > 0 {
			v.SetSelectedIndex(m.r.Intn(len(v.Options)))
		}
	case fyne.Tappable:
		v.Tapped(&fyne.PointEvent{})
	default:
		m.typeInto(f)
	}
	if _, ok := f.(*field.Entry); ok {
		m.typeInto(f)
	}
}

// menu opens the menu of what is selected and chooses from it by keys.
func (m *monkey) menu() {
	m.w.Menu(m.spot())
	for range 1 + m.r.Intn(12) {
		if f := m.w.win.Canvas().Focused(); f != nil {
			f.TypedKey(&fyne.KeyEvent{Name: fyne.KeyDown})
		}
	}
	if f := m.w.win.Canvas().Focused(); f != nil {
		f.TypedKey(&fyne.KeyEvent{Name: []fyne.KeyName{fyne.KeyReturn, fyne.KeyEscape}[m.r.Intn(2)]})
	}
}

// openPage shows a page over the drawing, or saves.
func (m *monkey) openPage() {
	switch m.r.Intn(4) {
	case 0:
		m.w.do("print")
	case 1:
		m.w.do("new")
	case 2:
		m.w.saveTo(m.saves)
	default:
		m.w.do("sheets")
	}
}

// onPage does something on a page over the drawing, or leaves it. The new cabinet
// of the start page is another project, and is left alone.
func (m *monkey) onPage() {
	switch {
	case m.w.sheets() != nil && m.r.Intn(4) > 0:
		m.use(m.w.stage.front)
	case m.w.sheets() != nil:
		m.w.sheets().Leave(m.w.stage.showDesk)
	case m.r.Intn(2) == 0:
		m.w.do([]string{"undo", "fit", "dark", "light", "save", "inch", "mm"}[m.r.Intn(7)])
	default:
		m.w.typedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	}
}

// putAway answers questions and closes what lies over the window.
func (m *monkey) putAway() {
	c := m.w.win.Canvas()
	for top := c.Overlays().Top(); top != nil; top = c.Overlays().Top() {
		var answers []*field.Button
		for _, o := range test.LaidOutObjects(top) {
			if a, ok := o.(*field.Button); ok {
				answers = append(answers, a)
			}
		}
		switch {
		case len(answers) > 0 && m.r.Intn(2) == 0:
			answers[m.r.Intn(len(answers))].OnTapped()
		default:
			m.use(top)
		}
		if c.Overlays().Top() == top && c.OnTypedKey() != nil {
			c.OnTypedKey()(&fyne.KeyEvent{Name: fyne.KeyEscape})
		}
		if c.Overlays().Top() == top {
			c.Overlays().Remove(top)
		}
	}
}

// A monkey with a seed works the window: after hundreds of actions the project
// can be written and read back the same, undo leads to the start exactly, and
// no goroutine is left over. What is left of memory is another test's. For a
// longer walk, FRONTLAY_SOAK is the count of its actions.
func TestMonkey(t *testing.T) {
	actions, err := strconv.Atoi(os.Getenv("FRONTLAY_SOAK"))
	if err != nil {
		actions = 400
	}
	for _, seed := range []int64{1, 20260101} {
		t.Run(strconv.FormatInt(seed, 10), func(t *testing.T) {
			w, _, _ := newWindow(t, "")
			start := w.session.Project().Clone()
			defer debug.SetGCPercent(debug.SetGCPercent(400)) // the test driver never lets go of a widget
			runtime.GC()
			before := runtime.NumGoroutine()
			m := newMonkey(w, seed, filepath.Join(t.TempDir(), "monkey.yaml"))
			for i := range actions {
				m.act()
				if i%100 == 0 {
					readsBack(t, w, seed, i)
				}
				if n := len(w.session.Project().Cabinets); n > 12 { // keep it a run that people have
					w.session.Go(0)
				}
			}
			w.desk.Screen.Escape()
			w.session.Cancel()
			readsBack(t, w, seed, actions)
			_, done := w.session.Steps()
			t.Logf("%d steps in the history", done)
			for {
				if _, ok := w.session.Undo(); !ok {
					break
				}
			}
			if !reflect.DeepEqual(w.session.Project(), start) {
				t.Error("undo does not lead back to the start")
			}
			if after := settled(before); after > before {
				t.Errorf("%d goroutines, %d at the start", after, before)
			}
		})
	}
}

// settled waits a little for goroutines that are about to end.
func settled(want int) int {
	for range 50 {
		if runtime.NumGoroutine() <= want {
			break
		}
		time.Sleep(10 * time.Millisecond)
	}
	return runtime.NumGoroutine()
}

func readsBack(t *testing.T, w *window, seed int64, after int) {
	t.Helper()
	data, err := yamlfile.New(w.session.Committed(), check.Limits()).Write(w.session.Committed())
	if err != nil {
		t.Fatalf("seed %d: after %d actions the project can't be written: %v", seed, after, err)
	}
	f, err := yamlfile.Read("monkey.yaml", data, samples, check.Limits())
	if err != nil {
		t.Fatalf("seed %d: after %d actions the project can't be read back: %v\n%s", seed, after, err, data)
	}
	if !reflect.DeepEqual(f.Project.Cabinets, w.session.Committed().Cabinets) {
		t.Fatalf("seed %d: after %d actions the project reads back differently", seed, after)
	}
}
