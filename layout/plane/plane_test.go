package plane_test

import (
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout/plane"
	"frontlay/model/length"
)

func mm(left, bottom, right, top int64) plane.Rect {
	return plane.R(length.MM(left), length.MM(bottom), length.MM(right), length.MM(top))
}

func TestWhatTwoRectanglesShare(t *testing.T) {
	r := mm(0, 0, 100, 50)
	cases := map[string]struct {
		s        plane.Rect
		overlaps bool
		shared   plane.Rect
	}{
		"inside":             {mm(10, 10, 20, 20), true, mm(10, 10, 20, 20)},
		"across the corner":  {mm(90, 40, 120, 60), true, mm(90, 40, 100, 50)},
		"across the whole":   {mm(-10, 20, 110, 30), true, mm(0, 20, 100, 30)},
		"edge to edge":       {mm(100, 0, 200, 50), false, mm(100, 0, 100, 50)},
		"corner to corner":   {mm(100, 50, 200, 60), false, mm(100, 50, 100, 50)},
		"beside":             {mm(103, 0, 200, 50), false, mm(103, 0, 100, 50)},
		"a line through it":  {mm(50, -5, 50, 55), true, mm(50, 0, 50, 50)},
		"a line on its edge": {mm(100, -5, 100, 55), false, mm(100, 0, 100, 50)},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			if r.Overlaps(c.s) != c.overlaps || c.s.Overlaps(r) != c.overlaps {
				t.Errorf("overlaps: %v and %v, want %v", r.Overlaps(c.s), c.s.Overlaps(r), c.overlaps)
			}
			if got := r.Intersect(c.s); got != c.shared || c.s.Intersect(r) != got {
				t.Errorf("share %v, want %v", got, c.shared)
			}
		})
	}
}

func TestContainsItsEdges(t *testing.T) {
	r := mm(10, 20, 30, 40)
	for _, in := range []plane.Point{r.Min, r.Max, r.Centre(), {X: r.Min.X, Y: r.Max.Y}} {
		if !r.Contains(in) {
			t.Errorf("%v is not in %v", in, r)
		}
	}
	for _, out := range []plane.Point{{X: r.Min.X - 1, Y: r.Min.Y}, {X: r.Max.X, Y: r.Max.Y + 1}} {
		if r.Contains(out) {
			t.Errorf("%v is in %v", out, r)
		}
	}
}

// The centre of an odd number of nanometres lies towards Min, also left of and
// below the origin.
func TestCentre(t *testing.T) {
	for _, c := range []struct {
		r    plane.Rect
		want plane.Point
	}{
		{plane.R(0, 0, 4, 2), plane.Point{X: 2, Y: 1}},
		{plane.R(0, 0, 5, 3), plane.Point{X: 2, Y: 1}},
		{plane.R(-5, -3, 0, 0), plane.Point{X: -3, Y: -2}},
	} {
		if got := c.r.Centre(); got != c.want {
			t.Errorf("the centre of %v is %v, want %v", c.r, got, c.want)
		}
	}
}

func TestEmpty(t *testing.T) {
	for name, c := range map[string]struct {
		r    plane.Rect
		want bool
	}{
		"an area":          {mm(0, 0, 1, 1), false},
		"a line":           {mm(0, 0, 10, 0), true},
		"a point":          {mm(5, 5, 5, 5), true},
		"the wrong way":    {mm(10, 0, 0, 10), true},
		"shrunk to a line": {mm(0, 0, 10, 4).Grow(length.MM(-2)), true},
		"shrunk":           {mm(0, 0, 10, 4).Grow(length.MM(-1)), false},
	} {
		if c.r.Empty() != c.want {
			t.Errorf("%s: %v is empty: %v", name, c.r, c.r.Empty())
		}
	}
}

func anyRect(t *rapid.T, name string) plane.Rect {
	at := rapid.Custom(func(t *rapid.T) plane.Point {
		return plane.Point{X: length.Length(rapid.Int64Range(-1e10, 1e10).Draw(t, "x")), Y: length.Length(rapid.Int64Range(-1e10, 1e10).Draw(t, "y"))}
	})
	size := func(of string) length.Length { return length.Length(rapid.Int64Range(1, 1e10).Draw(t, of)) }
	min := at.Draw(t, name)
	return plane.Rect{Min: min, Max: min.Add(plane.Point{X: size("width"), Y: size("height")})}
}

// A union holds both and no less would; what both share is in each; moving and
// growing are undone by moving and growing back, to the nanometre.
func TestLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, s := anyRect(t, "r"), anyRect(t, "s")
		u := r.Union(s)
		for _, p := range []plane.Point{r.Min, r.Max, s.Min, s.Max} {
			if !u.Contains(p) {
				t.Fatalf("%v is not in the union %v", p, u)
			}
		}
		if u.Width() > r.Width()+s.Width() && r.Overlaps(s) {
			t.Fatalf("the union %v of two that overlap is wider than both", u)
		}
		if i := r.Intersect(s); i.Empty() == r.Overlaps(s) {
			t.Fatalf("they overlap: %v, and share %v", r.Overlaps(s), i)
		} else if !i.Empty() && (r.Union(i) != r || s.Union(i) != s) {
			t.Fatalf("what they share, %v, is not in both", i)
		}
		by := r.Max.Sub(s.Min)
		if got := s.Move(by); got.Min != r.Max || got.Width() != s.Width() || got.Height() != s.Height() {
			t.Fatalf("%v moved by %v is %v", s, by, got)
		}
		d := length.Length(rapid.Int64Range(0, 1e9).Draw(t, "d"))
		if got := r.Grow(d).Grow(-d); got != r {
			t.Fatalf("%v grown and shrunk by %v is %v", r, d, got)
		}
	})
}
