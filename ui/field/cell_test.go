package field

import (
	"image/color"

	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	"frontlay/model/message"
)

func cellFor(label, text string) *Row {
	return NewCell(label, "mm", Source{Get: func() Value { return Value{Text: text} }, Put: func(string) error { return message.New("this figure can't be in any cabinet of this height") }},
		func(m message.Message) string { return m.String() })
}

// Two cells share a row where both are whole in half of it; one that needs more has
// a row of its own, and fields of a row stand on one line whatever their labels need.
func TestCells(t *testing.T) {
	test.NewTempApp(t)
	a, b, long, c, d := cellFor("Height", "288"), cellFor("Share of the rest that others leave", "2"), cellFor("Wide", "≈ 115 63/64 and more"), cellFor("Drop", "1"), cellFor("Cover", "2")
	box := Cells(a.Object, b.Object, long.Object, c.Object, d.Object)
	w := test.NewTempWindow(t, box)
	w.Resize(fyne.NewSize(268, 600))
	w.Resize(fyne.NewSize(268, 601))
	at := func(r *Row) fyne.Position {
		return fyne.CurrentApp().Driver().AbsolutePositionForObject(r.Entry)
	}
	if at(a).Y != at(b).Y || at(a).X >= at(b).X {
		t.Errorf("the first two stand at %v and %v", at(a), at(b))
	}
	if at(long).Y <= at(a).Y || at(c).Y <= at(long).Y || at(c).Y != at(d).Y {
		t.Errorf("the others stand at %v, %v and %v", at(long), at(c), at(d))
	}
	for _, r := range []*Row{a, b, long, c, d} {
		if r.Entry.Size().Width < r.Entry.Need() {
			t.Errorf("a field is %v wide and needs %v", r.Entry.Size().Width, r.Entry.Need())
		}
		label, _ := parts(r.Object)
		if bottom := label.Position().Y + label.Size().Height; bottom > r.Entry.Position().Y {
			t.Error("a label lies over its field")
		}
	}
	if box.MinSize().Height > 601 {
		t.Errorf("it needs %v", box.MinSize().Height)
	}
}

// What is wrong with a field stands below its row, over the whole width of it, and
// moves what follows down.
func TestWhatIsWrongStandsBelowTheRow(t *testing.T) {
	test.NewTempApp(t)
	a, b, c := cellFor("Height", "1"), cellFor("Drop", "2"), cellFor("Cover", "3")
	box := Cells(a.Object, b.Object, c.Object)
	w := test.NewTempWindow(t, container.NewVBox(box))
	w.Resize(fyne.NewSize(300, 400))
	w.Resize(fyne.NewSize(300, 401))
	driver := fyne.CurrentApp().Driver()
	before := driver.AbsolutePositionForObject(c.Entry).Y
	b.Entry.SetText("9")
	b.Entry.Take()
	if !b.problem.Visible() {
		t.Fatal("nothing is said")
	}
	w.Resize(fyne.NewSize(300, 402)) // the desktop's canvas lays out what needs more room by itself
	note, after := driver.AbsolutePositionForObject(b.problem), driver.AbsolutePositionForObject(c.Entry).Y
	if note.X != driver.AbsolutePositionForObject(a.Object).X || b.problem.Size().Width != box.Size().Width {
		t.Errorf("it begins at %v and is %v wide", note.X, b.problem.Size().Width)
	}
	if end := note.Y + b.problem.Size().Height; after <= before || end > after {
		t.Errorf("it ends at %v; the next field was at %v and is at %v", end, before, after)
	}
}

// Whatever has room of its own around its letters stands in line with the fields of a
// column all the same, at its left as at its right.
func TestLettersStandInLineWithFields(t *testing.T) {
	test.NewTempApp(t)
	note := NewLabel("Heights of the two fronts, which the division parts, and more of them in a second line")
	note.Wrapping = fyne.TextWrapWord
	outcome := NewOutcome("Height")
	outcome.Use(func() string { return "861 H" }, func() *Pill { return nil }, func() string { return "" })
	for name, o := range map[string]fyne.CanvasObject{
		"a note": note, "a way on": Flow(0, NewLink("Hardware", func() {})), "what is worked out": outcome,
		"a box to tick": NewCheck("Locked", nil), "a figure": NewFigure("Hands", "2 H").Object,
	} {
		const left, wide = 20, 200
		ground, column := fynecanvas.NewRectangle(color.Black), Cells(o)
		w := test.NewTempWindow(t, container.NewWithoutLayout(ground, column))
		w.SetPadded(false)
		w.Resize(fyne.NewSize(wide+2*left, 120))
		ground.Resize(w.Canvas().Size())
		column.Move(fyne.NewPos(left, left))
		column.Resize(fyne.NewSize(wide, 80))
		picture, first, last := w.Canvas().Capture(), wide, 0
		for x := range picture.Bounds().Dx() {
			for y := range picture.Bounds().Dy() {
				if r, g, b, _ := picture.At(x, y).RGBA(); max(r, g, b) > 0x6000 {
					first, last = min(first, x), max(last, x)
				}
			}
		}
		if first < left || first > left+3 || last > left+wide {
			t.Errorf("%s is seen from %d to %d of a column from %d to %d", name, first, last, left, left+wide)
		}
		if at := left + wide - 3; (name == "a figure" || name == "what is worked out") && last < at {
			t.Errorf("%s ends at %d, before the column's edge", name, last)
		}
	}
}
