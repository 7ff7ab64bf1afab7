package screen_test

import (
	"math"
	"runtime"
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
	"pgregory.net/rapid"

	"frontlay/layout"
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/replay"
	"frontlay/ui/screen"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// desk is a screen of the demo in a test window, with a pointer over it.
type desk struct {
	*screen.Screen
	session *session.Session
	pointer *replay.Pointer
	told    []string
	held    fyne.KeyModifier
}

func newDesk(t testing.TB, p *model.Project) *desk {
	t.Helper()
	test.NewTempApp(t)
	d := &desk{session: session.New(p, layout.Solve)}
	d.Screen = screen.New(d.session, func() message.Language { return message.Language{Unit: d.session.Project().Unit} })
	d.OnTell = func(m message.Message) { d.told = append(d.told, m.String()) }
	d.Held = func() fyne.KeyModifier { return d.held }
	w := test.NewTempWindow(t, d.Screen)
	w.Resize(fyne.NewSize(1000, 640))
	d.pointer = &replay.Pointer{To: d.Screen}
	return d
}

func (d *desk) centre(t testing.TB, name string) fyne.Position {
	t.Helper()
	p, ok := replay.Places(d.Screen)[name]
	if !ok {
		t.Fatalf("%q is not on the screen", name)
	}
	return fyne.NewPos(p.X+p.Width/2, p.Y+p.Height/2)
}

func (d *desk) face(number int) plane.Rect { return d.session.Result().Plan.Fronts[number-1].Face }

func (d *desk) steps() int { _, n := d.session.Steps(); return n }

func TestTheWholeRunIsOnTheScreen(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	for name, p := range replay.Places(d.Screen) {
		if p.X < 0 || p.Y < 0 || p.X+p.Width > 1000 || p.Y+p.Height > 640 {
			t.Errorf("%s is at %+v", name, p)
		}
	}
}

func TestADraggedDivisionSnapsToMillimetres(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	from := d.centre(t, "division above 1")
	sum := d.face(1).Height() + d.face(2).Height()
	d.pointer.Drag(from, from.AddXY(30, -37), 6)
	h := d.face(1).Height()
	if h%length.Millimetre != 0 || h <= 320*length.Millimetre {
		t.Errorf("the lower front is %v", h)
	}
	if d.face(1).Height()+d.face(2).Height() != sum {
		t.Error("the sum changed")
	}
	if d.steps() != 1 {
		t.Errorf("a drag made %d steps", d.steps())
	}
}

// The line follows the pointer at every move: it never lies further from it
// than half a step (and what a pixel is), also where fronts below are computed.
func TestTheLineIsWhereThePointerIs(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		p := projecttest.Demo(t)
		p.Cabinets = p.Cabinets[:1]
		b := &p.Cabinets[0].Bays[0]
		b.Fronts = nil
		n := rapid.IntRange(2, 6).Draw(r, "fronts")
		for i := range n {
			f := model.Front{Share: 1 + float64(rapid.IntRange(0, 5).Draw(r, "share"))/3}
			if i > 0 && rapid.Bool().Draw(r, "fixed") {
				f = model.Front{Height: length.MM(rapid.Int64Range(70, 110).Draw(r, "height"))}
			}
			b.Fronts = append(b.Fronts, f)
		}
		d := newDesk(t, p)
		k := rapid.IntRange(1, n-1).Draw(r, "division")
		at := replay.Places(d.Screen)["division above "+string(rune('0'+k))]
		from := fyne.NewPos(at.X+at.Width/2, at.Y+at.Height/2)
		d.held = fyne.KeyModifierShift
		d.pointer.Move(from)
		d.pointer.Press(desktop.MouseButtonPrimary)
		line := d.face(k).Max.Y
		scale := d.face(1).Height().MM() / float64(replay.Places(d.Screen)["front 1"].Height) // mm a screen unit
		for _, dy := range []float32{-3, -8, -15, 4, 11} {
			d.pointer.Move(from.AddXY(0, dy))
			want := line.MM() - float64(dy)*scale
			got := d.session.Result().Plan.Fronts[k-1].Face.Max.Y.MM()
			if math.Abs(got-want) > 0.06 {
				r.Fatalf("the line is at %.3f mm, the pointer at %.3f mm", got, want)
			}
		}
		d.pointer.Release()
	})
}

func TestShiftFreesADivision(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	d.held = fyne.KeyModifierShift
	from := d.centre(t, "division above 1")
	d.pointer.Drag(from, from.AddXY(0, -12), 3)
	if h := d.face(1).Height(); h%length.Millimetre == 0 || h%(100*length.Micrometre) != 0 {
		t.Errorf("a freed division is %v, want tenths", h)
	}
}

func TestADivisionSnapsToTheNeighboursLine(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	// The division above front 5 is drawn near the one above front 2.
	from := d.centre(t, "division above 5")
	to := d.centre(t, "division above 2").Y + 3
	d.pointer.Drag(from, fyne.NewPos(from.X, to), 8)
	if a, b := d.face(5).Max.Y, d.face(2).Max.Y; a != b {
		t.Errorf("the line is at %v, the neighbour's at %v", a, b)
	}
}

// Where runners must fall on hole rows, a dragged division is drawn to the
// heights at which they do: the screws' height above the floor of the carcass is
// a whole count of pitches, with no drop.
func TestADivisionSnapsToHoleRows(t *testing.T) {
	p := projecttest.Demo(t)
	p.HoleRows.Mode = model.RowsMoveRunners
	p.Cabinets = p.Cabinets[:1]
	d := newDesk(t, p)
	from := d.centre(t, "division above 1")
	for dy := float32(-30); dy <= -18; dy += 3 {
		d.pointer.Drag(from, from.AddXY(0, dy), 6)
		f := d.session.Result().Plan.Fronts[1]
		if !f.Fitted || len(f.Runner.Screws) == 0 {
			t.Fatal("the front has no runner")
		}
		y := f.Runner.Screws[0].Y - d.session.Result().Plan.Cabinets[0].Outline.Min.Y
		if y%model.UsualPitch == 0 && f.Drop == 0 {
			return
		}
		d.session.Undo()
	}
	t.Error("within half a pitch no row draws the division to it")
}

func TestEscapeGivesADraggedDivisionBack(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	before := d.face(1)
	from := d.centre(t, "division above 1")
	d.pointer.Move(from)
	d.pointer.Press(desktop.MouseButtonPrimary)
	d.pointer.Move(from.AddXY(0, -40))
	if d.face(1) == before {
		t.Fatal("the drag shows nothing")
	}
	d.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	d.pointer.Move(from.AddXY(0, -60))
	d.pointer.Release()
	if d.face(1) != before || d.steps() != 0 {
		t.Errorf("the front is %v after %d steps", d.face(1), d.steps())
	}
}

func TestClicksSelect(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	d.pointer.Click(d.centre(t, "front 4"))
	if at := d.session.SelectedFronts(); len(at) != 1 || d.session.Result().Plan.Fronts[3].Place != at[0] {
		t.Fatalf("selected %v", at)
	}
	d.pointer.Held = fyne.KeyModifierShortcutDefault
	d.pointer.Click(d.centre(t, "front 10"))
	if n := len(d.session.SelectedFronts()); n != 2 {
		t.Fatalf("%d fronts are selected", n)
	}
	d.pointer.Held = 0
	d.pointer.Click(fyne.NewPos(5, 5))
	if len(d.session.Selection()) != 0 {
		t.Fatal("a click beside the run does not clear the selection")
	}
}

func TestTypingASize(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	canvas := fyne.CurrentApp().Driver().CanvasForObject(d.Screen)
	field := func() fyne.Focusable { return canvas.Focused() }
	d.pointer.Click(d.centre(t, "height of 2"))
	type enterer interface{ SetText(string) }
	field().(enterer).SetText("250+8.5")
	field().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if h := d.face(2).Height(); h != 258500*length.Micrometre {
		t.Fatalf("the front is %v", h)
	}
	if field() != fyne.Focusable(d.Screen) {
		t.Error("the drawing does not get the focus back")
	}

	d.pointer.Click(d.centre(t, "height of 2"))
	field().(enterer).SetText("9000")
	field().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if h := d.face(2).Height(); h != 258500*length.Micrometre {
		t.Fatalf("a height that can't be was taken: %v", h)
	}
	if len(d.told) == 0 {
		t.Error("nothing tells why")
	}
	field().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if d.steps() != 1 {
		t.Errorf("%d steps", d.steps())
	}

	// Tab takes what is typed and goes on to the next dimension.
	d.pointer.Click(d.centre(t, "height of 1"))
	field().(enterer).SetText("300")
	field().TypedKey(&fyne.KeyEvent{Name: fyne.KeyTab})
	field().(enterer).SetText("200")
	field().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if a, b := d.face(1).Height(), d.face(2).Height(); a != length.MM(300) || b != length.MM(200) {
		t.Errorf("the fronts are %v and %v", a, b)
	}
}

// A double click on a figure of the drawing opens it with all of it selected: the
// second press is on the field that the first click has opened.
func TestADoubleClickOnAFigure(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	canvas := fyne.CurrentApp().Driver().CanvasForObject(d.Screen)
	d.pointer.Click(d.centre(t, "height of 2"))
	replay.Click(canvas.Focused().(desktop.Mouseable), fyne.NewPos(20, 10))
	for _, r := range "255" {
		canvas.Focused().TypedRune(r)
	}
	canvas.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if h := d.face(2).Height(); h != length.MM(255) {
		t.Errorf("the front is %v", h)
	}
}

// Digits begin the height of the selected front, but not where the hand has just
// been at another figure: they would change what nobody looks at.
func TestDigitsGoNowhereElse(t *testing.T) {
	const chosen = 3
	for name, c := range map[string]struct {
		do    func(d *desk, enter func(text string))
		begin bool
	}{
		"selected":                          {func(d *desk, _ func(string)) {}, true},
		"its height typed":                  {func(d *desk, enter func(string)) { d.pointer.Click(d.centre(t, "height of 3")); enter("225") }, true},
		"another height typed":              {func(d *desk, enter func(string)) { d.pointer.Click(d.centre(t, "height of 1")); enter("300") }, false},
		"another height given up":           {func(d *desk, enter func(string)) { d.pointer.Click(d.centre(t, "height of 1")); enter("") }, false},
		"a width typed":                     {func(d *desk, enter func(string)) { d.pointer.Click(d.centre(t, "width of cabinet 1")); enter("705") }, false},
		"a figure that follows from others": {func(d *desk, _ func(string)) { d.ShowPicture(screen.RearFace); d.clickFixed(t) }, false},
		"the same, and back to the elevation": {func(d *desk, _ func(string)) {
			d.ShowPicture(screen.RearFace)
			d.clickFixed(t)
			d.ShowPicture(screen.Elevation)
		}, false},
		"no height in the picture": {func(d *desk, _ func(string)) { d.ShowPicture(screen.DrawerPlan) }, false},
		"a width typed, then its face clicked": {func(d *desk, enter func(string)) {
			d.pointer.Click(d.centre(t, "width of cabinet 1"))
			enter("705")
			d.pointer.Click(d.centre(t, "front 3").AddXY(40, 0))
		}, true},
	} {
		t.Run(name, func(t *testing.T) {
			d := newDesk(t, projecttest.Demo(t))
			canvas := fyne.CurrentApp().Driver().CanvasForObject(d.Screen)
			canvas.Focus(d.Screen)
			d.session.Select(session.Front(d.session.Result().Plan.Fronts[chosen-1].Place))
			c.do(d, func(text string) {
				for _, r := range text {
					canvas.Focused().TypedRune(r)
				}
				key := fyne.KeyReturn
				if text == "" {
					key = fyne.KeyEscape
				}
				canvas.Focused().TypedKey(&fyne.KeyEvent{Name: key})
			})
			if canvas.Focused() != fyne.Focusable(d.Screen) {
				t.Fatal("the drawing has not got the keys")
			}
			d.told = nil
			d.Screen.TypedRune('2')
			if begun := canvas.Focused() != fyne.Focusable(d.Screen); begun != c.begin {
				t.Errorf("a field is open for the 2: %v", begun)
			}
			if !c.begin && len(d.told) == 0 {
				t.Error("nothing tells why")
			}
		})
	}
}

// clickFixed clicks a figure that can't be typed.
func (d *desk) clickFixed(t *testing.T) {
	t.Helper()
	d.told = nil
	at, size, ok := d.Where(drawing.Subject{}) // what can't be typed stands for nothing
	if !ok {
		t.Fatal("there is no such figure")
	}
	d.pointer.Click(at.AddXY(size.Width/2, size.Height/2))
	if !slices.Contains(d.told, "This size follows from the others.") {
		t.Errorf("the click tells %q", d.told)
	}
}

// A click on another figure opens that one, also where what was typed before it
// moves the figures.
func TestAClickOnAFigureThatMoves(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	canvas := fyne.CurrentApp().Driver().CanvasForObject(d.Screen)
	d.pointer.Click(d.centre(t, "width of cabinet 1"))
	for _, r := range "1500" {
		canvas.Focused().TypedRune(r)
	}
	d.pointer.Click(d.centre(t, "height of 7"))
	if d.session.Project().Cabinets[0].Width != length.MM(1500) {
		t.Fatal("the width was not taken")
	}
	if canvas.Focused() == fyne.Focusable(d.Screen) {
		t.Fatal("no figure is open")
	}
	for _, r := range "301" {
		canvas.Focused().TypedRune(r)
	}
	canvas.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if h := d.face(7).Height(); h != length.MM(301) {
		t.Errorf("the front that was clicked is %v", h)
	}
}

func TestKeysMoveTheSelectionAndDivisions(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	key := func(names ...fyne.KeyName) {
		for _, n := range names {
			d.TypedKey(&fyne.KeyEvent{Name: n})
		}
	}
	key(fyne.KeyUp, fyne.KeyUp)
	if !d.session.IsSelected(session.Front(model.Place{Front: 1})) {
		t.Fatalf("selected %v", d.session.Selection())
	}
	key(fyne.KeyPageDown)
	if sel := d.session.Selection(); len(sel) != 1 || sel[0].Kind != drawing.DivisionThing || sel[0].Place.Front != 0 {
		t.Fatalf("selected %v", sel)
	}
	key(fyne.KeyUp, fyne.KeyUp)
	d.held = fyne.KeyModifierShift
	key(fyne.KeyDown)
	if h := d.face(1).Height(); h != length.MM(320+2-10) {
		t.Errorf("the lower front is %v", h)
	}
	d.held = 0
	key(fyne.KeyPageUp, fyne.KeyRight)
	if at := d.session.Here(); at.Cabinet != 1 {
		t.Errorf("the key to the right leads to %v", at)
	}
	key(fyne.KeyEscape)
	if len(d.session.Selection()) != 0 {
		t.Error("Esc does not clear the selection")
	}
}

func TestDrawingTools(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	d.Take(tool.DrawDivision{})
	n := len(d.session.Result().Plan.Fronts)
	whole := d.face(1)
	d.pointer.Click(d.centre(t, "front 1"))
	if len(d.session.Result().Plan.Fronts) != n+1 {
		t.Fatalf("no division was drawn: %v", d.told)
	}
	gap := d.session.Project().Reveals.Gap
	if d.face(1).Height()+gap+d.face(2).Height() != whole.Height() {
		t.Errorf("%v and %v with %v between do not fill %v", d.face(1).Height(), d.face(2).Height(), gap, whole.Height())
	}
	d.Take(tool.DrawPartition{})
	d.pointer.Click(d.centre(t, "front 1"))
	if bays := len(d.session.Project().Cabinets[0].Bays); bays != 2 {
		t.Fatalf("%d bays: %v", bays, d.told)
	}
	d.Take(tool.DrawCabinet{})
	d.Zoom(0.6)
	cabs := len(d.session.Project().Cabinets)
	last := replay.Places(d.Screen)["cabinet "+string(rune('0'+cabs))]
	d.pointer.Click(fyne.NewPos(last.X+last.Width+80, last.Y+2))
	if len(d.session.Project().Cabinets) != cabs+1 {
		t.Fatalf("no cabinet was drawn: %v", d.told)
	}
	p := d.session.Project()
	if p.Cabinets[cabs].Height != p.Cabinets[cabs-1].Height {
		t.Errorf("the new cabinet is %v high beside one of %v", p.Cabinets[cabs].Height, p.Cabinets[cabs-1].Height)
	}
	for d.steps() > 0 {
		d.session.Undo()
	}
	if got := len(d.session.Result().Plan.Fronts); got != n {
		t.Errorf("undo leads to %d fronts, not %d", got, n)
	}
}

func TestDraggingPartitionsAndEdges(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	widths := func(cab int) (w []length.Length) {
		for _, b := range d.session.Result().Plan.Cabinets[cab].Bays {
			w = append(w, b.Opening.Width())
		}
		return w
	}
	before := widths(1)
	sum := before[0] + before[1]
	// The partition of the second cabinet is taken hold of between its fronts.
	p5, p8 := replay.Places(d.Screen)["front 5"], replay.Places(d.Screen)["front 8"]
	from := fyne.NewPos((p5.X+p5.Width+p8.X)/2, p5.Y+20)
	d.pointer.Drag(from, from.AddXY(18, 5), 4)
	after := widths(1)
	if after[0] <= before[0] || after[0]+after[1] != sum {
		t.Errorf("the bays were %v and are %v", before, after)
	}
	if after[0]%length.Millimetre != 0 {
		t.Errorf("the partition does not snap: %v", after[0])
	}
	// The right edge of the run is a little beside its fronts, the top edge above.
	last := len(d.session.Project().Cabinets) - 1
	cab := replay.Places(d.Screen)["cabinet "+string(rune('1'+last))]
	width, height := d.session.Project().Cabinets[last].Width, d.session.Project().Cabinets[last].Height
	d.pointer.Drag(fyne.NewPos(cab.X+cab.Width+2, cab.Y+60), fyne.NewPos(cab.X+cab.Width+22, cab.Y+64), 4)
	if got := d.session.Project().Cabinets[last].Width; got <= width {
		t.Errorf("the cabinet is %v wide, it was %v", got, width)
	}
	cab = replay.Places(d.Screen)["cabinet "+string(rune('1'+last))]
	d.pointer.Drag(fyne.NewPos(cab.X+cab.Width/2, cab.Y-3), fyne.NewPos(cab.X+cab.Width/2, cab.Y-23), 4)
	if got := d.session.Project().Cabinets[last].Height; got <= height {
		t.Errorf("the cabinet is %v high, it was %v", got, height)
	}
	if d.steps() != 3 {
		t.Errorf("three drags made %d steps", d.steps())
	}
}

// Dragging and undoing thousands of times leaves no memory behind.
func TestDraggingLeavesNoMemory(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	from := d.centre(t, "division above 1")
	drags := func(n int) int64 {
		for i := range n {
			d.pointer.Drag(from, from.AddXY(0, float32(-10-i%20)), 3)
			d.session.Undo()
		}
		runtime.GC()
		var m runtime.MemStats
		runtime.ReadMemStats(&m)
		return int64(m.HeapAlloc)
	}
	before := drags(100)
	after := drags(700)
	t.Logf("%d KB before, %d KB after 2,100 previews more", before>>10, after>>10)
	if after-before > 4<<20 {
		t.Errorf("%d KB are left over", (after-before)>>10)
	}
}

func TestReorderingByDragging(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	d.pointer.Click(d.centre(t, "front 1"))
	d.pointer.Drag(d.centre(t, "front 1"), d.centre(t, "front 3").AddXY(0, -4), 8)
	if name := d.session.Project().FrontAt(model.Place{Front: 2}).Name; name != "Buckets" {
		t.Errorf("on top is %q", name)
	}
	if d.steps() != 1 {
		t.Errorf("%d steps", d.steps())
	}
}

// A selected front is dragged by its holes as by its face.
func TestReorderingByAHole(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	d.SetSeeThrough(true)
	d.pointer.Click(d.centre(t, "front 1"))
	f := d.session.Result().Plan.Fronts[0]
	box := replay.Places(d.Screen)["front 1"]
	scale := box.Height / float32(f.Face.Height().MM())
	hole := f.Holes[0].At
	from := fyne.NewPos(box.X+float32(hole.X.MM())*scale, box.Y+box.Height-float32(hole.Y.MM())*scale)
	d.pointer.Drag(from, from.AddXY(0, d.centre(t, "front 3").Y-from.Y-8), 8)
	if name := d.session.Project().FrontAt(model.Place{Front: 2}).Name; name != "Buckets" {
		t.Errorf("on top is %q", name)
	}
}

func TestRulersHaveStepsThatCanBeRead(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	before := len(d.Objects())
	d.SetRulers(true)
	if len(d.Objects()) <= before {
		t.Fatal("the rulers show nothing")
	}
	for range 40 {
		d.Zoom(1.3) // to a few tenths of a millimetre a unit
	}
	if n := len(d.Objects()); n > 400 {
		t.Errorf("close up the screen has %d objects", n)
	}
	for range 80 {
		d.Zoom(0.7)
	}
	if n := len(d.Objects()); n > 1500 {
		t.Errorf("far away the screen has %d objects", n)
	}
}

func TestZoomKeepsWhatIsUnderThePointer(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	at := d.centre(t, "front 8")
	for _, dy := range []float32{25, 25, 25, -25, 250, -3} {
		d.Scrolled(&fyne.ScrollEvent{PointEvent: fyne.PointEvent{Position: at}, Scrolled: fyne.NewDelta(0, dy)})
		if now := d.centre(t, "front 8"); math.Abs(float64(now.X-at.X)) > 0.5 || math.Abs(float64(now.Y-at.Y)) > 0.5 {
			t.Fatalf("the front went from %v to %v", at, now)
		}
	}
}

// Let go over another panel, a drag has ended: the pointer that comes back moves
// nothing, and the drawing has the keys.
func TestLettingGoElsewhereEndsTheDrag(t *testing.T) {
	for _, name := range []string{"over a button", "unseen"} {
		t.Run(name, func(t *testing.T) {
			d := newDesk(t, projecttest.Demo(t))
			from := d.centre(t, "division above 1")
			d.pointer.Move(from)
			d.pointer.Press(desktop.MouseButtonPrimary)
			d.pointer.Move(from.AddXY(0, -20))
			dragged := d.face(1)
			if name == "unseen" {
				d.pointer = &replay.Pointer{To: d.Screen} // comes without its button
			} else {
				canvas := fyne.CurrentApp().Driver().CanvasForObject(d.Screen)
				canvas.Unfocus() // as a press elsewhere does
				d.pointer.ReleaseElsewhere()
				if focused := canvas.Focused(); d.steps() != 1 || focused != fyne.Focusable(d.Screen) {
					t.Errorf("%d steps, the focus is on %v", d.steps(), focused)
				}
			}
			d.pointer.Move(from.AddXY(0, -60))
			d.pointer.Click(from.AddXY(300, 150))
			if d.face(1) != dragged || d.steps() != 1 {
				t.Errorf("let go at %v, the front is %v after %d steps", dragged, d.face(1), d.steps())
			}
		})
	}
}
