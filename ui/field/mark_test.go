package field

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
)

// A press ticks a box that is half ticked, whatever the first of the things is
// that it is about; the next one takes the tick away from all.
func TestHalfTickedBecomesTicked(t *testing.T) {
	presses := map[string]func(m *Mark){
		"space": func(m *Mark) { m.TypedRune(' ') },
		"Enter": func(m *Mark) { m.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn}) },
		"tap":   func(m *Mark) { test.Tap(m) },
	}
	for name, press := range presses {
		for _, things := range [][]bool{{true, false}, {false, true}} {
			test.NewTempApp(t)
			m := NewMark("locked", func() bool { return things[0] }, func(on bool) { things[0], things[1] = on, on })
			m.Mixed = func() bool { return things[0] != things[1] }
			m.Update()
			w := test.NewTempWindow(t, m)
			w.Resize(m.MinSize())
			if !m.Partial {
				t.Fatal("it is not half ticked")
			}
			press(m)
			if !things[0] || !things[1] || !m.Checked || m.Partial {
				t.Errorf("%s: the things are %v", name, things)
			}
			press(m)
			if things[0] || things[1] || m.Checked {
				t.Errorf("%s again: the things are %v", name, things)
			}
			things[1] = true
			m.Update()
			if !m.Partial {
				t.Errorf("%s: it is not half ticked again", name)
			}
		}
	}
}

// A box stays half ticked where nothing can be done about it.
func TestHalfTickedStaysWhereRefused(t *testing.T) {
	test.NewTempApp(t)
	asked := 0
	m := NewMark("locked", func() bool { return true }, func(bool) { asked++ })
	m.Mixed = func() bool { return true }
	m.Update()
	m.TypedRune(' ')
	m.TypedRune(' ')
	if asked != 2 || !m.Partial {
		t.Errorf("asked %d times, half ticked %v", asked, m.Partial)
	}
}
