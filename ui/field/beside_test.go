package field

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
)

// entryWith is a field that shows a text.
func entryWith(text string) *Entry {
	return NewEntry(Source{Get: func() Value { return Value{Text: text} }})
}

// laid lays a column out in a width, as the window does in the end.
func laid(width float32, rows ...fyne.CanvasObject) {
	c := Column(rows...)
	c.Resize(fyne.NewSize(width, 400))
	c.Resize(fyne.NewSize(width, 401))
}

// parts gives the label and the field of a row.
func parts(row fyne.CanvasObject) (*caption, fyne.CanvasObject) {
	o := row.(*fyne.Container).Objects
	return o[0].(*caption), o[1]
}

func TestALabelIsNeverCut(t *testing.T) {
	test.NewTempApp(t)
	const long = "Schubladenhöhe über alles"
	for _, c := range []struct {
		name  string
		width float32
		value string
		lines int
		above bool
	}{
		{"room for both", 600, "12", 1, false},
		{"the label breaks", 260, "12", 2, false},
		{"the value needs the row", 220, "≈ 115 63/64 or so", 1, true},
		{"narrow", 140, "1234567", 2, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			e := entryWith(c.value)
			row := Labelled(long, e)
			laid(c.width, row)
			label, _ := parts(row)
			if len(label.lines) != c.lines {
				t.Errorf("the label has %d lines, want %d", len(label.lines), c.lines)
			}
			if above := e.Position().X == 0; above != c.above {
				t.Errorf("the label above: %v, want %v", above, c.above)
			}
			for _, l := range label.lines {
				if end := l.Position().X + measure(l.Text); end > label.Size().Width {
					t.Errorf("%q ends at %v of %v", l.Text, end, label.Size().Width)
				}
			}
			last := label.lines[len(label.lines)-1]
			if c.above && label.Position().Y+last.Position().Y+last.Size().Height > e.Position().Y+1 {
				t.Error("the label lies over its field")
			}
			if e.Size().Width < e.Need() && c.width > 200 {
				t.Errorf("the field has %v, it needs %v", e.Size().Width, e.Need())
			}
			if row.Size().Height < e.Position().Y+e.MinSize().Height {
				t.Errorf("the row is %v high, its field ends at %v", row.Size().Height, e.Position().Y+e.MinSize().Height)
			}
		})
	}
}

// The fields of a column begin in one line where they can.
func TestRowsShareTheRoomForLabels(t *testing.T) {
	test.NewTempApp(t)
	short, long := entryWith("1"), entryWith("≈ 115 63/64")
	rows := []fyne.CanvasObject{Labelled("Width", short), Column(Labelled("Finger-pull channel", long)), Labelled("Kind", entryWith("2"))}
	laid(2*long.Need(), rows...)
	if short.Position().X == 0 || short.Position().X != long.Position().X {
		t.Errorf("the fields begin at %v and %v", short.Position().X, long.Position().X)
	}
}

// A value that comes later is whole too.
func TestARowMakesRoomForALongerValue(t *testing.T) {
	test.NewTempApp(t)
	text := "1"
	r := NewRow("Height of carcass", "in", Source{Get: func() Value { return Value{Text: text} }, Step: func(int) error { return nil }}, nil)
	laid(230, r.Object)
	text = "≈ 115 63/64"
	r.Entry.Update()
	if r.Entry.Size().Width < r.Entry.Need() {
		t.Errorf("the field has %v, it needs %v", r.Entry.Size().Width, r.Entry.Need())
	}
}

// What gets the focus is scrolled to where it is seen, in both directions.
func TestTheFocusIsScrolledTo(t *testing.T) {
	test.NewTempApp(t)
	column := Column()
	var all []*Button
	for range 30 {
		b := NewButton("x", nil)
		all = append(all, b)
		column.Add(b)
	}
	scroll, o := Scrolled(column)
	w := test.NewTempWindow(t, container.NewStack(o))
	w.Resize(fyne.NewSize(200, 200))
	seen := func(b *Button) bool {
		y := fyne.CurrentApp().Driver().AbsolutePositionForObject(b).Y - fyne.CurrentApp().Driver().AbsolutePositionForObject(scroll).Y
		return y >= 0 && y+b.Size().Height <= scroll.Size().Height
	}
	for _, i := range []int{29, 0, 15} {
		w.Canvas().Focus(all[i])
		if !seen(all[i]) {
			t.Errorf("button %d has the focus and is not seen", i)
		}
	}
}
