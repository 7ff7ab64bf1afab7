package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"frontlay/layout"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/replay"
)

// BenchmarkWindowDrag measures what one pointer move costs while a division of a
// run of 100 fronts is dragged: solving, checking, and every panel brought up to
// date, the painting of the frame left out.
func BenchmarkWindowDrag(b *testing.B) {
	w, _, _ := newWindow(b, "")
	for len(w.session.Result().Plan.Fronts) < 100 {
		if err := w.session.Do(edit.CopyCabinet{At: model.Place{Cabinet: 0}}); err != nil {
			b.Fatal(err)
		}
	}
	w.desk.Screen.Fit()
	spot := replay.Places(w.desk.Screen)["division above 1"]
	from := fyne.NewPos(spot.X+spot.Width/2, spot.Y+spot.Height/2)
	p := &replay.Pointer{To: w.desk.Screen}
	p.Move(from)
	p.Press(desktop.MouseButtonPrimary)
	b.ResetTimer()
	for i := range b.N {
		p.Move(from.AddXY(0, float32(-3-i%5)))
	}
	p.Release()
}

// BenchmarkSelect measures what it costs to select another front: the inspector
// is made anew.
func BenchmarkSelect(b *testing.B) {
	w, _, _ := newWindow(b, "")
	b.ResetTimer()
	for i := range b.N {
		w.session.Select(w.face(1 + i%2))
	}
}

// BenchmarkOpen measures what it costs to open the window on the demo, before
// its first frame.
func BenchmarkOpen(b *testing.B) {
	for range b.N {
		newWindow(b, "")
	}
}

// BenchmarkHundredFindings measures what a step costs while every front of 100 has
// findings, with the list of them closed and open, in the time that the same step
// takes to solve.
func BenchmarkHundredFindings(b *testing.B) {
	w, _, _ := newWindow(b, "")
	for len(w.session.Result().Plan.Fronts) < 100 {
		if err := w.session.Do(edit.CopyCabinet{At: model.Place{Cabinet: 0}}); err != nil {
			b.Fatal(err)
		}
	}
	var spoil edit.Several
	for _, f := range w.session.Result().Plan.Fronts {
		spoil.Edits = append(spoil.Edits, edit.Set{At: f.Place, Key: "drop", Value: -30 * length.Millimetre})
	}
	if err := w.session.Do(spoil); err != nil {
		b.Fatal(err)
	}
	step := func(b *testing.B) {
		for range b.N {
			w.desk.Findings.Update()
		}
	}
	b.Run("solve", func(b *testing.B) {
		for range b.N {
			layout.Solve(w.session.Project())
		}
	})
	b.Run("closed", step)
	w.do("findings")
	w.desk.Findings.Choose(1)
	b.Run("open", step)
	b.Run("next", func(b *testing.B) {
		for range b.N {
			w.desk.Findings.Choose(1)
		}
	})
	b.Logf("%d findings", len(w.session.Result().Findings))
}
