package screen_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/ui/replay"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// keys presses keys where the keys are: digits as what they write.
func (d *desk) keys(names ...fyne.KeyName) {
	canvas := fyne.CurrentApp().Driver().CanvasForObject(d.Screen)
	if canvas.Focused() == nil {
		canvas.Focus(d.Screen)
	}
	for _, n := range names {
		if n[0] >= '0' && n[0] <= '9' {
			for _, r := range n {
				canvas.Focused().TypedRune(r)
			}
			continue
		}
		canvas.Focused().TypedKey(&fyne.KeyEvent{Name: n})
	}
}

// A stack is drawn by keys alone: the line is proposed in the middle of the
// selected front, arrows move it, a typed height sets it, Enter draws it, and the
// next is proposed above.
func TestDivisionsByKeys(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	d.session.Select(session.Front(model.Place{}))
	d.Take(tool.DrawDivision{})
	gap := d.session.Result().Plan.Cabinets[0].Reveals.Gap
	middle := ((d.face(1).Height() - gap) / 2).RoundTo(length.Millimetre)
	d.keys(fyne.KeyUp, fyne.KeyUp, fyne.KeyDown)
	d.held = fyne.KeyModifierShift
	d.keys(fyne.KeyUp, fyne.KeyUp)
	d.held = 0
	if d.steps() != 0 {
		t.Fatal("arrows draw")
	}
	d.keys(fyne.KeyReturn)
	if got, want := d.face(1).Height(), middle+length.Millimetre+200*length.Micrometre; got != want || d.steps() != 1 {
		t.Fatalf("the lower front is %v, want %v; steps: %d", got, want, d.steps())
	}
	d.expect(t, "what was drawn", 2)
	d.keys("60", fyne.KeyReturn)
	if got := d.face(2).Height(); got != length.MM(60) || d.steps() != 2 {
		t.Errorf("the second front is %v, want 60 mm; steps: %d, told %q", got, d.steps(), d.told)
	}
	d.expect(t, "what was drawn", 3)

	// What can't be is told and draws nothing; Esc leaves the field, then the tool.
	d.keys("9000", fyne.KeyReturn)
	if d.steps() != 2 || len(d.told) == 0 {
		t.Errorf("9 m: %d steps, told %q", d.steps(), d.told)
	}
	d.keys(fyne.KeyEscape)
	if _, still := d.Hand().(tool.DrawDivision); !still {
		t.Error("Esc in the field gives up drawing too")
	}
	d.keys(fyne.KeyEscape, fyne.KeyReturn)
	if _, idle := d.Hand().(tool.Idle); !idle || d.steps() != 2 {
		t.Errorf("%T is in the hand after Esc; steps: %d", d.Hand(), d.steps())
	}
}

func TestAPartitionByKeys(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	d.session.Select(session.Front(model.Place{}))
	d.Take(tool.DrawPartition{})
	width := func(bay int) length.Length { return d.session.Result().Plan.Cabinets[0].Bays[bay].Opening.Width() }
	d.keys(fyne.KeyRight, fyne.KeyRight, fyne.KeyReturn)
	if len(d.session.Project().Cabinets[0].Bays) != 2 || width(0)-width(1) != 4*length.Millimetre {
		t.Fatalf("the bays are %v and %v wide", width(0), width(1))
	}
	d.session.Undo()
	d.session.Select(session.Front(model.Place{}))
	d.Take(tool.DrawPartition{})
	d.keys("250", fyne.KeyReturn)
	if len(d.session.Project().Cabinets[0].Bays) != 2 || width(0) != length.MM(250) {
		t.Fatalf("the left bay is %v wide", width(0))
	}
}

func TestACabinetByKeys(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	last := func() *model.Cabinet { c := d.session.Project().Cabinets; return &c[len(c)-1] }
	n, high := len(d.session.Project().Cabinets), last().Height
	d.session.Select(session.Front(model.Place{}))
	d.Take(tool.DrawCabinet{})
	d.keys("600", fyne.KeyReturn)
	if got := len(d.session.Project().Cabinets); got != n+1 || last().Width != length.MM(600) || last().Height != high {
		t.Fatalf("%d cabinets, the last is %v × %v; told %q", got, last().Width, last().Height, d.told)
	}
	d.Take(tool.DrawCabinet{})
	d.keys("450", fyne.KeyTab, "500", fyne.KeyReturn)
	if last().Width != length.MM(450) || last().Height != length.MM(500) || d.steps() != 2 {
		t.Errorf("the last is %v × %v; steps: %d, told %q", last().Width, last().Height, d.steps(), d.told)
	}
}

// A field for what is only proposed draws nothing when it is left.
func TestAProposalIsOnlyDrawnByEnter(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	d.session.Select(session.Front(model.Place{}))
	d.Take(tool.DrawDivision{})
	d.keys("60")
	d.pointer.Click(fyne.NewPos(5, 5))
	if d.steps() != 0 {
		t.Errorf("a click elsewhere has drawn it; steps: %d", d.steps())
	}
}

// A click beside the upper half of the run draws a cabinet as high as its neighbour;
// further down, or above, it is as high as the pointer.
func TestTheHeightOfADrawnCabinet(t *testing.T) {
	for part, level := range map[float32]bool{-0.3: false, 0.05: true, 0.45: true, 0.7: false} {
		d := newDesk(t, projecttest.Demo(t))
		d.Take(tool.DrawCabinet{})
		run, n := d.run(), len(d.session.Project().Cabinets)
		d.pointer.Click(fyne.NewPos(run.X+run.Width+60, run.Y+part*run.Height))
		all := d.session.Project().Cabinets
		if len(all) != n+1 {
			t.Fatalf("no cabinet is drawn at %v: %q", part, d.told)
		}
		if got, beside := all[n].Height, all[n-1].Height; got == beside != level {
			t.Errorf("at %v of the run's height it is %v high beside one of %v", part, got, beside)
		}
	}
}

// With the tool for cabinets in the hand there is room for one at both ends of the
// run, and one can be drawn there; back in the view that fits, the run is whole.
func TestRoomForACabinet(t *testing.T) {
	for name, c := range map[string]struct {
		at func(run replay.Spot) fyne.Position
	}{
		"right": {func(run replay.Spot) fyne.Position { return fyne.NewPos(run.X+run.Width+60, run.Y) }},
		"left":  {func(run replay.Spot) fyne.Position { return fyne.NewPos(run.X-60, run.Y) }},
	} {
		t.Run(name, func(t *testing.T) {
			d := newDesk(t, projecttest.Demo(t))
			d.Take(tool.DrawCabinet{})
			run := d.run()
			if run.X < 100 || run.X+run.Width > 900 {
				t.Fatalf("the run takes %+v: no room beside it", run)
			}
			n := len(d.session.Project().Cabinets)
			d.pointer.Click(c.at(run))
			cabs := d.session.Project().Cabinets
			if len(cabs) != n+1 {
				t.Fatalf("no cabinet is drawn: %q", d.told)
			}
			at := n
			if name == "left" {
				at = 0
			}
			if !d.session.IsSelected(session.Cabinet(session.PlaceOfCabinet(at))) {
				t.Errorf("selected %v", d.session.Selection())
			}
			if run := d.run(); run.X < 0 || run.X+run.Width > 1000 || run.Width < 700 {
				t.Errorf("afterwards the run takes %+v", run)
			}
		})
	}
}

// run is where the run is on the screen.
func (d *desk) run() replay.Spot {
	places := replay.Places(d.Screen)
	first, last := places["cabinet 1"], places["cabinet "+string(rune('0'+len(d.session.Project().Cabinets)))]
	return replay.Spot{X: first.X, Y: first.Y, Width: last.X + last.Width - first.X, Height: first.Height}
}

// The pointer that goes away takes what was proposed with it: no key draws what is
// not seen.
func TestNothingUnseenIsDrawn(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	d.Take(tool.DrawDivision{})
	d.pointer.Move(d.centre(t, "front 1"))
	d.MouseOut()
	d.keys(fyne.KeyReturn) // proposes
	if d.steps() != 0 {
		t.Error("Enter has drawn what was under the pointer")
	}
	d.pointer.Move(d.centre(t, "front 2"))
	d.pointer.Press(desktop.MouseButtonPrimary)
	d.pointer.Release()
	if d.steps() != 1 {
		t.Error("a click draws nothing")
	}
}
