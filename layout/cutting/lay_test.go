package cutting

import (
	"cmp"
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout/plane"
	"frontlay/model/length"
)

var mm = length.MM

// A stock sheet and parts with and without grain, most of which fit.
func job(t *rapid.T, most int) ([]Part, Stock) {
	size := func(name string, low, high int64) length.Length {
		return mm(rapid.Int64Range(low, high).Draw(t, name))
	}
	s := Stock{Length: size("length", 300, 2800), Width: size("width", 300, 2070), Kerf: size("kerf", 0, 5), Trim: size("trim", 0, 20)}
	parts := make([]Part, rapid.IntRange(0, most).Draw(t, "parts"))
	for i := range parts {
		parts[i] = Part{size("along", 0, 900), size("across", 0, 900), rapid.Bool().Draw(t, "turns")}
	}
	return parts, s
}

// Every part lies on exactly one sheet in its size and its grain, inside what
// trimming leaves; the cuts are from edge to edge and cross none; everything that
// is cut adds up to the sheet.
func TestWhatIsCutAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		parts, s := job(t, 40)
		plan := Lay(parts, s)
		lies := make([]int, len(parts))
		for _, i := range plan.TooLarge {
			lies[i]++
			if a, b := fits(parts[i], s.Inside()); a || b {
				t.Fatalf("part %d would fit", i)
			}
		}
		for n, sheet := range plan.Sheets {
			if sheet.Area != s.Inside() {
				t.Fatalf("sheet %d is %v, trimmed %v", n, sheet.Area, s.Inside())
			}
			placed := sheet.Parts(parts)
			if len(placed) == 0 {
				t.Fatalf("sheet %d is empty", n)
			}
			for i, p := range placed {
				q := parts[p.Part]
				lies[p.Part]++
				along, across := p.Area.Width(), p.Area.Height()
				if p.Turned {
					along, across = across, along
				}
				if along != q.Along || across != q.Across || p.Turned && !q.Turns {
					t.Fatalf("part %v lies as %v, turned %v", q, p.Area, p.Turned)
				}
				for _, other := range placed[:i] {
					if p.Area.Grow(s.Kerf).Overlaps(other.Area) && s.Kerf > 0 || p.Area.Overlaps(other.Area) {
						t.Fatalf("parts %v and %v are nearer than the kerf", p.Area, other.Area)
					}
				}
			}
			piecesAddUp(t, sheet, s.Kerf)
			for i, cut := range sheet.Cuts() {
				if cut.Cut.Number != i+1 {
					t.Fatalf("cut %d has number %d", i+1, cut.Cut.Number)
				}
			}
		}
		for i, n := range lies {
			if n != 1 {
				t.Fatalf("part %d lies in %d places", i, n)
			}
		}
		if got := len(plan.Sheets); got < Least(parts, s) {
			t.Fatalf("%d sheets are fewer than the least, %d", got, Least(parts, s))
		}
	})
}

// piecesAddUp follows the saw: near piece, kerf and far piece are the whole piece.
func piecesAddUp(t *rapid.T, p *Piece, kerf length.Length) {
	if p.Cut == nil {
		return
	}
	near, whole := p.Cut.Near.Area, p.Area
	got := near
	if p.Cut.Far != nil {
		got = got.Union(p.Cut.Far.Area)
	}
	blade := whole
	if p.Cut.Upright {
		blade.Min.X, blade.Max.X = p.Cut.At, min(p.Cut.At+kerf, whole.Max.X)
	} else {
		blade.Min.Y, blade.Max.Y = p.Cut.At, min(p.Cut.At+kerf, whole.Max.Y)
	}
	if got = got.Union(blade); got != whole || near.Overlaps(blade) || p.Cut.Far != nil && (p.Cut.Far.Area.Overlaps(blade) || p.Cut.Far.Area.Overlaps(near)) {
		t.Fatalf("%v is cut into %v and %v at %v", whole, near, p.Cut.Far, blade)
	}
	if p.Part >= 0 {
		t.Fatalf("part %d is cut", p.Part)
	}
	piecesAddUp(t, p.Cut.Near, kerf)
	if p.Cut.Far != nil {
		piecesAddUp(t, p.Cut.Far, kerf)
	}
}

// No more sheets than rows of parts need, each row as high as its first part, the
// parts by their height, each in the first row with room ("first fit decreasing
// height": Coffman, Garey, Johnson and Tarjan, Performance bounds for
// level-oriented two-dimensional packing algorithms, SIAM J. Comput. 9, 1980, from
// memory; rows into sheets likewise).
func TestNeverWorseThanRows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		parts, s := job(t, 60)
		got := len(Lay(parts, s).Sheets)
		if rows := rowSheets(parts, s); got > rows {
			t.Fatalf("%d sheets, rows need %d", got, rows)
		}
	})
}

func rowSheets(parts []Part, s Stock) int {
	inside := s.Inside()
	type row struct{ left, height length.Length }
	var sorted []Part
	for _, q := range parts {
		straight, turned := fits(q, inside)
		switch {
		case straight:
			sorted = append(sorted, q)
		case turned:
			sorted = append(sorted, Part{q.Across, q.Along, true})
		}
	}
	slices.SortStableFunc(sorted, func(a, b Part) int {
		return cmp.Or(cmp.Compare(b.Across, a.Across), cmp.Compare(b.Along, a.Along))
	})
	var rows []row
next:
	for _, q := range sorted {
		for i := range rows {
			if rows[i].left >= q.Along {
				rows[i].left -= q.Along + s.Kerf
				continue next
			}
		}
		rows = append(rows, row{inside.Width() - q.Along - s.Kerf, q.Across})
	}
	var sheets []length.Length
nextRow:
	for _, r := range rows {
		for i := range sheets {
			if sheets[i] >= r.height {
				sheets[i] -= r.height + s.Kerf
				continue nextRow
			}
		}
		sheets = append(sheets, inside.Height()-r.height-s.Kerf)
	}
	return len(sheets)
}

// Of few parts every way to cut them is tried: never fewer sheets than that, and
// how often as few.
func TestAgainstEveryWay(t *testing.T) {
	same, all := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		s := Stock{Length: mm(1000), Width: mm(700), Kerf: mm(4), Trim: mm(10)}
		parts := make([]Part, rapid.IntRange(1, 5).Draw(t, "parts"))
		for i := range parts {
			parts[i] = Part{mm(50 * rapid.Int64Range(3, 14).Draw(t, "along")), mm(50 * rapid.Int64Range(3, 12).Draw(t, "across")), rapid.Bool().Draw(t, "turns")}
		}
		got, least := len(Lay(parts, s).Sheets), fewest(parts, s)
		if got < least {
			t.Fatalf("%d sheets, where every way needs %d", got, least)
		}
		all++
		if got == least {
			same++
		}
	})
	t.Logf("as few as can be in %d of %d", same, all)
	if same*100 < all*97 {
		t.Errorf("as few as can be in only %d of %d", same, all)
	}
}

// fewest is the least count of sheets by trying every way to part the parts and
// every cut from edge to edge. A cut need only run where parts end that are pushed
// to the lower left.
func fewest(parts []Part, s Stock) int {
	var list []Part
	for _, q := range parts {
		if a, b := fits(q, s.Inside()); a || b {
			list = append(list, q)
		}
	}
	n := len(list)
	type key struct {
		set  int
		w, h length.Length
	}
	memory := map[key]bool{}
	var fit func(set int, w, h length.Length) bool
	fit = func(set int, w, h length.Length) bool {
		if set == 0 {
			return true
		}
		if w <= 0 || h <= 0 {
			return false
		}
		k := key{set, w, h}
		if v, ok := memory[k]; ok {
			return v
		}
		v := false
		if set&(set-1) == 0 {
			for i, q := range list {
				if set == 1<<i {
					a, b := fits(q, plane.R(0, 0, w, h))
					v = a || b
				}
			}
		} else {
			sizes := func(set int) []length.Length {
				sums := map[length.Length]bool{0: true}
				for i, q := range list {
					if set&(1<<i) == 0 {
						continue
					}
					for _, d := range []length.Length{q.Along, q.Across} {
						for _, at := range keys(sums) {
							sums[at+d+s.Kerf] = true
						}
					}
				}
				return keys(sums)
			}
		search:
			for sub := (set - 1) & set; sub > 0; sub = (sub - 1) & set {
				for _, at := range sizes(sub) {
					if at > 0 && (at-s.Kerf < w && fit(sub, at-s.Kerf, h) && fit(set&^sub, w-at, h) || at-s.Kerf < h && fit(sub, w, at-s.Kerf) && fit(set&^sub, w, h-at)) {
						v = true
						break search
					}
				}
			}
		}
		memory[k] = v
		return v
	}
	least := make([]int, 1<<n)
	for set := 1; set < 1<<n; set++ {
		least[set] = n + 1
		for sub := set; sub > 0; sub = (sub - 1) & set {
			if least[set&^sub]+1 < least[set] && fit(sub, s.Inside().Width(), s.Inside().Height()) {
				least[set] = least[set&^sub] + 1
			}
		}
	}
	return least[1<<n-1]
}

func keys(m map[length.Length]bool) []length.Length {
	all := make([]length.Length, 0, len(m))
	for k := range m {
		all = append(all, k)
	}
	slices.Sort(all)
	return all
}

// Worked by hand: four parts of half a sheet each way, with 3 mm kerf and 10 mm
// trim: (2080 - 20 - 3) / 2 by (1040 - 20 - 3) / 2.
func TestFourOnASheet(t *testing.T) {
	s := Stock{Length: mm(2080), Width: mm(1040), Kerf: mm(3), Trim: mm(10)}
	q := Part{Along: 1028*length.Millimetre + 500*length.Micrometre, Across: 508*length.Millimetre + 500*length.Micrometre}
	plan := Lay([]Part{q, q, q, q, q}, s)
	if len(plan.Sheets) != 2 || len(plan.Sheets[0].Parts([]Part{q, q, q, q, q})) != 4 {
		t.Fatalf("%d sheets, %d on the first", len(plan.Sheets), len(plan.Sheets[0].Parts([]Part{q, q, q, q, q})))
	}
	if cuts := plan.Sheets[0].Cuts(); len(cuts) != 3 || len(plan.Sheets[0].Offcuts()) != 0 {
		t.Errorf("%d cuts, offcuts %v", len(cuts), plan.Sheets[0].Offcuts())
	}
}

func TestTheSameEveryTime(t *testing.T) {
	var parts []Part
	for i := range int64(40) {
		parts = append(parts, Part{mm(200 + i*37%500), mm(150 + i*53%400), i%2 == 0})
	}
	s := Stock{mm(2440), mm(1220), mm(4), mm(10)}
	say := func() (said string) {
		for _, sheet := range Lay(parts, s).Sheets {
			said += fmt.Sprintln(sheet.Parts(parts), sheet.Offcuts())
		}
		return said
	}
	if first, second := say(), say(); first != second {
		t.Error("two layings of the same parts differ")
	}
}

// BenchmarkLay compares laying with trying every way on five parts, and tells
// how many more sheets it takes than area alone would (sheets/least).
func BenchmarkLay(b *testing.B) {
	var parts []Part
	for i := range int64(100) {
		parts = append(parts, Part{mm(200 + i*37%500), mm(150 + i*53%400), i%3 == 0})
	}
	s := Stock{mm(2440), mm(1220), mm(4), mm(10)}
	b.Run("100", func(b *testing.B) {
		n := 0
		for b.Loop() {
			n = len(Lay(parts, s).Sheets)
		}
		b.ReportMetric(float64(n)/float64(Least(parts, s)), "sheets/least")
	})
	small := Stock{mm(1000), mm(700), mm(4), mm(10)}
	b.Run("5", func(b *testing.B) {
		for b.Loop() {
			Lay(parts[:5], small)
		}
	})
	b.Run("5EveryWay", func(b *testing.B) {
		for b.Loop() {
			fewest(parts[:5], small)
		}
	})
}
