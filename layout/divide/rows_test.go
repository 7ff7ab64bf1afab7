package divide

import (
	"testing"

	"pgregory.net/rapid"

	"frontlay/model/length"
)

// searchFor is a search before it has begun to look.
func searchFor(low, high, gap, pitch length.Length, parts []RowPart) *rowSearch {
	r := &rowSearch{}
	r.begin(low, high, gap, pitch, parts)
	return r
}

// bruteRows tries every choice of bottom edges on a grid of 1 mm. In the tests
// all sizes are whole millimetres, so an optimal choice lies on the grid.
func bruteRows(low, high, gap, pitch length.Length, parts []RowPart) (best cost, ok bool) {
	r := searchFor(low, high, gap, pitch, parts)
	var try func(i int, y length.Length, c cost)
	try = func(i int, y length.Length, c cost) {
		if ok && !c.less(best) {
			return
		}
		if i == len(parts)-1 {
			if r.fits(i, high-y) {
				best, ok = c, true
			}
			return
		}
		for next := y + gap + mm; next <= high; next += mm {
			if !r.fits(i, next-gap-y) || parts[i+1].Fixed && next != parts[i+1].Wanted {
				continue
			}
			d := c
			d.move += (next - parts[i+1].Wanted).Abs()
			if !r.onRow(i+1, next) {
				d.off++
			}
			try(i+1, next, d)
		}
	}
	try(0, low, cost{})
	return best, ok
}

func costOf(r *rowSearch, at []length.Length) cost {
	var c cost
	for i := 1; i < len(at); i++ {
		c.move += (at[i] - r.parts[i].Wanted).Abs()
		if !r.onRow(i, at[i]) {
			c.off++
		}
	}
	return c
}

// TestRowsAreOptimal proves the dynamic programming by trying every choice of
// small stacks: on rows as often as can be, and then with the least moves.
func TestRowsAreOptimal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 4).Draw(t, "fronts")
		high := length.MM(rapid.Int64Range(20, 60).Draw(t, "height"))
		gap := length.MM(rapid.Int64Range(0, 2).Draw(t, "gap"))
		pitch := length.MM(rapid.Int64Range(3, 12).Draw(t, "pitch"))
		parts := make([]RowPart, n)
		for i := range parts {
			p := &parts[i]
			p.Wanted = length.MM(rapid.Int64Range(0, 60).Draw(t, "wanted"))
			p.Bound = rapid.Bool().Draw(t, "bound")
			p.Phase = length.MM(rapid.Int64Range(-20, 70).Draw(t, "phase"))
			p.Fixed = i > 0 && rapid.IntRange(0, 9).Draw(t, "fixed") == 0
			p.Least = length.MM(rapid.Int64Range(1, 12).Draw(t, "least"))
			if rapid.IntRange(0, 2).Draw(t, "bounded") == 0 {
				p.Greatest = p.Least + length.MM(rapid.Int64Range(0, 20).Draw(t, "more"))
			}
		}
		want, possible := bruteRows(0, high, gap, pitch, parts)
		got, ok := new(RowFinder).Rows(0, high, gap, pitch, parts)
		if ok != possible {
			t.Fatalf("found a choice: %v; there is one: %v", ok, possible)
		}
		if !ok {
			return
		}
		r := searchFor(0, high, gap, pitch, parts)
		for i := range got {
			top := high
			if i+1 < n {
				top = got[i+1] - gap
			}
			if !r.fits(i, top-got[i]) {
				t.Fatalf("front %d of %v breaks its bounds", i, got)
			}
		}
		if c := costOf(r, got); c != want {
			t.Fatalf("cost %+v at %v, the best is %+v", c, got, want)
		}
	})
}

func TestRowsKeepWhatFits(t *testing.T) {
	// Three fronts with rows at 0, 32, 64 …: 95 is nearest to 96, 200 to 192.
	parts := []RowPart{{Least: mm}, {Wanted: 95 * mm, Bound: true, Least: mm}, {Wanted: 200 * mm, Bound: true, Least: mm}}
	got, ok := new(RowFinder).Rows(0, 300*mm, 3*mm, 32*mm, parts)
	if !ok || got[0] != 0 || got[1] != 96*mm || got[2] != 192*mm {
		t.Errorf("got %v, want 0, 96, 192 mm", got)
	}
}
