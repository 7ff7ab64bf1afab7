package drawing_test

import (
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/mark"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

func at(x, y int64) plane.Point { return plane.Point{X: length.MM(x), Y: length.MM(y)} }

func box(left, bottom, right, top int64) plane.Rect {
	return plane.Rect{Min: at(left, bottom), Max: at(right, top)}
}

// marks is one mark of each kind of the closed set, with a front of its own each.
func marks() []drawing.Mark {
	tag := func(front int, m drawing.Meaning) drawing.Tag {
		return drawing.Tag{Meaning: m, Of: drawing.Subject{Kind: drawing.FrontThing, Place: model.Place{Front: front}}}
	}
	return []drawing.Mark{
		&drawing.Line{Tag: tag(0, drawing.Hidden), From: at(10, 20), To: at(0, 5), Dashed: true},
		&drawing.Rectangle{Tag: tag(1, drawing.Face), Rect: box(0, 0, 30, 40), Filled: true},
		&drawing.Circle{Tag: tag(2, drawing.HoleEdge), Centre: at(50, 60), Radius: length.MM(5)},
		&drawing.Text{Tag: tag(3, drawing.Label), At: at(7, 8), Anchor: drawing.Anchor{X: 1}, Say: message.New("Jars")},
		&drawing.Dimension{Tag: tag(4, drawing.DimensionLine), From: at(0, 0), To: at(30, 0), Line: length.MM(-10), Level: 2, Value: length.MM(30)},
		&drawing.Dimension{Tag: tag(5, drawing.DimensionLine), From: at(0, 0), To: at(0, 40), Vertical: true, Line: length.MM(-12), Value: length.MM(40), Prefix: "Ø"},
		&drawing.Hatch{Tag: tag(6, drawing.Carcass), Rect: box(1, 2, 3, 4), Falling: true},
		&drawing.Spot{Tag: tag(7, drawing.FindingMark), Shape: mark.Ring, Rect: box(5, 6, 7, 8), Chosen: true},
	}
}

func TestBounds(t *testing.T) {
	want := []plane.Rect{
		box(0, 5, 10, 20),   // whichever end comes first
		box(0, 0, 30, 40),   //
		box(45, 55, 55, 65), //
		box(7, 8, 7, 8),     // letters do not count
		box(0, -10, 30, 0),  // with its line, without its level
		box(-12, 0, 0, 40),
		box(1, 2, 3, 4),
		box(5, 6, 7, 8),
	}
	var d drawing.Drawing
	if !d.Bounds().Empty() {
		t.Errorf("a drawing without marks has the bounds %v", d.Bounds())
	}
	for i, m := range marks() {
		if got := m.Bounds(); got != want[i] {
			t.Errorf("mark %d has the bounds %v, want %v", i, got, want[i])
		}
		d.Add(m)
	}
	if got, want := d.Bounds(), box(-12, -10, 55, 65); got != want {
		t.Errorf("all have the bounds %v, want %v", got, want)
	}
}

// Every mark is written with its meaning, its kind, its figures and what it is of,
// by names; what a severity adds stands last.
func TestDump(t *testing.T) {
	d := drawing.Drawing{Title: message.New("One of each")}
	d.Add(marks()...)
	d.Add(&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.FindingMark, Severity: drawing.OfAdvice}, Rect: box(0, 0, 1, 1)})
	want := `drawing "One of each"
hidden line 10,20 0,5 dashed of front at 0/0/0
face rectangle 0,0 30,40 filled of front at 0/0/1
hole circle 50,60 radius 5 of front at 0/0/2
label text 7,8 bottom-right "Jars" of front at 0/0/3
dimension dimension 0,0 30,0 at -10 level 2 30 of front at 0/0/4
dimension dimension 0,0 0,40 at -12 level 0 Ø40 of front at 0/0/5
carcass hatch 1,2 3,4 falling of front at 0/0/6
finding ring 5,6 7,8 chosen of front at 0/0/7
finding rectangle 0,0 1,1 advice
`
	if got := d.Dump(); got != want {
		t.Errorf("written as\n%s\nwant\n%s", got, want)
	}
}

// Names of meanings and kinds are there, and each is another one: a kind
// that was added without a name shows here.
func TestNamesAreDistinct(t *testing.T) {
	check := func(what string, count int, name func(int) string) {
		seen := map[string]bool{}
		for i := range count {
			n := name(i)
			if n == "" || n == "unknown" || seen[n] || strings.Contains(n, " ") {
				t.Errorf("%s %d has the name %q", what, i, n)
			}
			seen[n] = true
		}
		if n := name(count); n != "unknown" {
			t.Errorf("%s %d is %q; is the last one no longer the last?", what, count, n)
		}
	}
	check("meaning", int(drawing.HandlePart)+1, func(i int) string { return drawing.Meaning(i).String() })
	check("kind", int(drawing.FrontName)+1, func(i int) string { return drawing.SubjectKind(i).String() })
	for a, want := range map[drawing.Anchor]string{{}: "bottom-left", {X: 0.5, Y: 0.5}: "middle-centre", {X: 1, Y: 1}: "top-right"} {
		if got := a.String(); got != want {
			t.Errorf("the anchor is %q, want %q", got, want)
		}
	}
	check("shape", int(mark.Reach)+1, func(i int) string { return mark.Shape(i).String() })
}

func TestFigureOfADimension(t *testing.T) {
	across := &drawing.Dimension{From: at(10, 0), To: at(30, 0), Line: length.MM(-10), Level: -2}
	if got, want := across.Figure(length.MM(7)), at(20, -24); got != want {
		t.Errorf("across: %v, want %v", got, want)
	}
	up := &drawing.Dimension{From: at(0, 40), To: at(0, 10), Vertical: true, Line: length.MM(50), Level: 1}
	if got, want := up.Figure(length.MM(7)), at(57, 25); got != want {
		t.Errorf("up: %v, want %v", got, want)
	}
}

// What a hand takes hold of goes before what lies around it, whatever was painted
// last; of two of a kind it is the one that was.
func TestHit(t *testing.T) {
	of := func(k drawing.SubjectKind, front int) drawing.Tag {
		return drawing.Tag{Meaning: drawing.Face, Of: drawing.Subject{Kind: k, Place: model.Place{Front: front}}}
	}
	grip := of(drawing.DivisionThing, 0)
	grip.Meaning = drawing.Grip
	finding := of(drawing.FrontThing, 0)
	finding.Meaning = drawing.FindingMark
	d := drawing.Drawing{}
	d.Add(
		&drawing.Dimension{Tag: of(drawing.FrontHeight, 0), From: at(80, 0), To: at(80, 40), Vertical: true, Line: length.MM(80)},
		&drawing.Circle{Tag: of(drawing.HoleThing, 0), Centre: at(20, 20), Radius: length.MM(5)},
		&drawing.Rectangle{Tag: grip, Rect: box(0, 40, 100, 43)},
		&drawing.Rectangle{Tag: of(drawing.FrontThing, 0), Rect: box(0, 0, 100, 40)},
		&drawing.Rectangle{Tag: of(drawing.FrontThing, 1), Rect: box(0, 43, 100, 80)},
		&drawing.Rectangle{Tag: finding, Rect: box(40, 30, 60, 50)},
		&drawing.Rectangle{Tag: finding, Rect: box(100, 20, 108, 30)},
		&drawing.Rectangle{Tag: of(drawing.CabinetThing, 0), Rect: box(-10, -10, 110, 90)},
		&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.Grid}, Rect: box(-500, -500, 500, 500)},
		&drawing.Rectangle{Tag: of(drawing.FrontThing, 2), Rect: box(90, 60, 100, 80)},
	)
	reach := drawing.Reach{Near: length.MM(2), Level: length.MM(8), FigureX: length.MM(6), FigureY: length.MM(3)}
	cases := map[string]struct {
		at   plane.Point
		want drawing.Tag
		none bool
	}{
		"the front":                    {at: at(50, 10), want: of(drawing.FrontThing, 0)},
		"a hole in it":                 {at: at(20, 20), want: of(drawing.HoleThing, 0)},
		"near the hole":                {at: at(26, 20), want: of(drawing.HoleThing, 0)},
		"too far from the hole":        {at: at(28, 20), want: of(drawing.FrontThing, 0)},
		"the figure before the front":  {at: at(84, 22), want: of(drawing.FrontHeight, 0)},
		"beside the figure":            {at: at(84, 25), want: of(drawing.FrontThing, 0)},
		"the division":                 {at: at(20, 41), want: grip},
		"near the division":            {at: at(20, 38), want: grip},
		"the front below it":           {at: at(20, 37), want: of(drawing.FrontThing, 0)},
		"no division beside the bay":   {at: at(102, 41), want: of(drawing.CabinetThing, 0)},
		"a finding over the next":      {at: at(50, 48), want: of(drawing.FrontThing, 1)},
		"a finding beside its front":   {at: at(105, 25), want: of(drawing.FrontThing, 0)},
		"of two fronts the later":      {at: at(95, 70), want: of(drawing.FrontThing, 2)},
		"the cabinet around":           {at: at(-5, -5), want: of(drawing.CabinetThing, 0)},
		"what stands for nothing":      {at: at(300, 300), none: true},
		"the drawing's own empty room": {at: at(900, 900), none: true},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			got, ok := d.Hit(c.at, reach)
			if ok == c.none || ok && got != c.want.Of {
				t.Errorf("hit %v at %v, %v; want %v", got.Kind, got.Place, ok, c.want.Of.Kind)
			}
		})
	}
}
