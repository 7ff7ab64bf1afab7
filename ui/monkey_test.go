package ui

import (
	"math/rand"
	"reflect"
	"runtime"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"frontlay/model/yamlfile"
	"frontlay/ui/replay"
)

// apart are commands that the monkey leaves alone: they open dialogs that wait
// for a person, or another project.
var apart = map[string]bool{
	"new": true, "open": true, "demo": true, "save": true, "saveas": true, "print": true, "quit": true,
	"history": true, "keys": true, "cautions": true, "hints": true, "language": true, "sheets": true, "newwindow": true, "export": true, "rules": true,
	"light": true, "dark": true, "contrast": true, "system": true, "large": true, // slow, and tested apart
}

// monkey does one random thing with the window.
func monkey(w *window, r *rand.Rand, p *replay.Pointer) {
	size := w.screen.Size()
	spot := func() fyne.Position { return fyne.NewPos(r.Float32()*size.Width, r.Float32()*size.Height) }
	switch r.Intn(9) {
	case 0, 1:
		p.Held = []fyne.KeyModifier{0, 0, fyne.KeyModifierShift, fyne.KeyModifierControl}[r.Intn(4)]
		p.Click(spot())
	case 2:
		p.Drag(spot(), spot(), 1+r.Intn(6))
	case 3: // a drag that Esc gives up
		p.Move(spot())
		p.Press(desktop.MouseButtonPrimary)
		p.Move(spot())
		w.screen.Escape()
		p.Move(spot())
		p.Release()
	case 4:
		keys := []fyne.KeyName{fyne.KeyUp, fyne.KeyDown, fyne.KeyLeft, fyne.KeyRight, fyne.KeyPageUp, fyne.KeyPageDown, fyne.KeyReturn, fyne.KeyEscape, fyne.KeyDelete}
		w.typedKey(&fyne.KeyEvent{Name: keys[r.Intn(len(keys))]})
	case 5:
		if f := w.win.Canvas().Focused(); f != nil {
			for _, c := range []string{"250", "1/2 in", "-5", "x", "600-2*18", "0"}[r.Intn(6)] {
				f.TypedRune(c)
			}
			f.TypedKey(&fyne.KeyEvent{Name: []fyne.KeyName{fyne.KeyReturn, fyne.KeyTab, fyne.KeyEscape}[r.Intn(3)]})
		}
	case 6:
		w.screen.Scrolled(&fyne.ScrollEvent{PointEvent: fyne.PointEvent{Position: spot()}, Scrolled: fyne.NewDelta(0, float32(r.Intn(3)-1))})
	default:
		c := &w.commands[r.Intn(len(w.commands))]
		if !apart[c.name] {
			w.run(c)
		}
	}
	if top := w.win.Canvas().Overlays().Top(); top != nil {
		w.win.Canvas().Overlays().Remove(top)
	}
}

// A monkey with a seed works the window: after thousands of actions the project
// can be written and read back the same, undo leads to the start exactly, and
// no goroutine is left over. (Memory is measured at the drawing: the test driver
// keeps the renderer of every widget for ever, the desktop's for a minute.)
func TestMonkey(t *testing.T) {
	const actions = 1000
	for _, seed := range []int64{1, 20260101} {
		w, _, _ := newWindow(t, "")
		w.screen.Held = func() fyne.KeyModifier { return 0 }
		start := w.session.Project().Clone()
		runtime.GC()
		before := runtime.NumGoroutine()
		r := rand.New(rand.NewSource(seed))
		p := &replay.Pointer{To: w.screen}
		for i := range actions {
			monkey(w, r, p)
			if i%250 == 0 {
				readsBack(t, w, seed, i)
			}
			if n := len(w.session.Project().Cabinets); n > 12 { // keep it a run that people have
				w.session.Go(0)
			}
		}
		w.screen.Escape()
		w.session.Cancel()
		readsBack(t, w, seed, actions)
		_, done := w.session.Steps()
		t.Logf("seed %d: %d steps in the history", seed, done)
		for {
			if _, ok := w.session.Undo(); !ok {
				break
			}
		}
		if !reflect.DeepEqual(w.session.Project(), start) {
			t.Errorf("seed %d: undo does not lead back to the start", seed)
		}
		if after := settled(before); after > before {
			t.Errorf("seed %d: %d goroutines, %d at the start", seed, after, before)
		}
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
	data, err := yamlfile.New(w.session.Committed()).Write(w.session.Committed())
	if err != nil {
		t.Fatalf("seed %d: after %d actions the project can't be written: %v", seed, after, err)
	}
	f, err := yamlfile.Read("monkey.yaml", data, sheets)
	if err != nil {
		t.Fatalf("seed %d: after %d actions the project can't be read back: %v\n%s", seed, after, err, data)
	}
	if !reflect.DeepEqual(f.Project.Cabinets, w.session.Committed().Cabinets) {
		t.Fatalf("seed %d: after %d actions the project reads back differently", seed, after)
	}
}
