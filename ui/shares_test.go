package ui

import (
	"testing"

	"fyne.io/fyne/v2"

	"frontlay/ui/look"
)

// menuBar is how high Fyne's row of menus is, which the test's window has not.
const menuBar = 26

// The sheet has at least 65 % of a small window, more of a wide one and with the
// inspector hidden, and 55 % with the widest words in large letters.
func TestSharesOfTheSheet(t *testing.T) {
	hd, small := fyne.NewSize(1920, 1080), fyne.NewSize(1366, 768)
	for _, c := range []struct {
		name string
		look appearance
		size fyne.Size
		hide bool
		want float32
	}{
		{"small", appearances[0], small, false, 0.65},
		{"small, without the inspector", appearances[0], small, true, 0.84},
		{"large screen", appearances[0], hd, false, 0.74},
		{"large screen, without the inspector", appearances[0], hd, true, 0.88},
		{"German in large letters", appearance{language: "de", large: true}, small, false, 0.55},
		{"German in large letters, on a large screen", appearance{language: "de", large: true}, hd, false, 0.65},
	} {
		t.Run(c.name, func(t *testing.T) {
			w := dressed(t, c.look)
			if c.hide {
				w.do("inspector")
			}
			sized(w, c.size.SubtractWidthHeight(0, menuBar*scaleOfLetters(c.look)))
			s := w.desk.Screen.Size()
			if got := s.Width * s.Height / (c.size.Width * c.size.Height); got < c.want {
				t.Errorf("the sheet has %.1f %% of the window (%v of %v), want %.0f %%", 100*got, s, c.size, 100*c.want)
			}
		})
	}
}

// sized gives a window a size, in which everything is laid out anew.
func sized(w *window, s fyne.Size) {
	w.win.Resize(s.AddWidthHeight(1, 0))
	w.win.Resize(s)
}

func scaleOfLetters(a appearance) float32 {
	if a.large {
		return 1.3
	}
	return 1
}

// What a wide window has more than a small one is the sheet's.
func TestTheSheetHasWhatIsNew(t *testing.T) {
	w := dressed(t, appearance{mode: look.LightMode})
	sized(w, small)
	before := w.desk.Screen.Size()
	sized(w, small.AddWidthHeight(500, 300))
	if got := w.desk.Screen.Size().Subtract(before); got != fyne.NewSize(500, 300) {
		t.Errorf("of 500 × 300 the sheet has %v", got)
	}
}

// The tools stand in one row however narrow the window is, and none is cut or lies
// over another.
func TestToolsStandInOneRow(t *testing.T) {
	for _, a := range []appearance{{}, {language: "de"}, {large: true}, {language: "de", large: true}} {
		w := dressed(t, a)
		for _, wide := range []float32{1920, 1366, 1200, 1024, 900} {
			sized(w, fyne.NewSize(wide, 700))
			room := w.win.Canvas().Size().Width
			type span struct{ from, to float32 }
			var all []span
			for c, b := range w.desk.Tools() {
				at := fyne.CurrentApp().Driver().AbsolutePositionForObject(b)
				all = append(all, span{at.X, at.X + b.Size().Width})
				if b.Size().Width < b.MinSize().Width || at.X < 0 || at.X+b.Size().Width > room || at.Y > 20 {
					t.Errorf("%+v, %v wide: %s is cut or out of its row: %v, %v of %v", a, wide, c.Name, at, b.Size(), b.MinSize())
				}
			}
			for i, one := range all {
				for _, other := range all[:i] {
					if one.from < other.to-0.5 && other.from < one.to-0.5 {
						t.Errorf("%+v, %v wide: two tools lie over each other at %v", a, wide, max(one.from, other.from))
					}
				}
			}
		}
	}
}
