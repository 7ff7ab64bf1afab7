package list

import (
	"math/rand/v2"
	"slices"
	"testing"

	"frontlay/model/length"
)

// settings are different ones at random, of few edge distances and drops.
func settings(r *rand.Rand, n, edges, drops int) []Reset {
	var all []Reset
	for len(all) < min(n, edges*drops) {
		s := Setting{length.MM(r.Int64N(int64(edges))), length.MM(r.Int64N(int64(drops)))}
		if !slices.ContainsFunc(all, func(o Reset) bool { return o.Setting == s }) {
			all = append(all, Reset{Setting: s})
		}
	}
	return all
}

// movesOf counts how often a stop is set, the first setting's two among them.
func movesOf(all []Reset) int {
	n := 2
	for i := 1; i < len(all); i++ {
		n += 2
		if sharing(all[i-1].Setting, all[i].Setting) {
			n--
		}
	}
	return n
}

// fewest tries every order.
func fewest(done, left []Reset) int {
	if len(left) == 0 {
		return movesOf(done)
	}
	best := 1 << 30
	for i := range left {
		rest := slices.Delete(slices.Clone(left), i, i+1)
		best = min(best, fewest(append(slices.Clip(done), left[i]), rest))
	}
	return best
}

// The order of settings moves the stops as seldom as the best of all orders; none
// is lost or told twice.
func TestOrderHasTheFewestMoves(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 300 {
		all := settings(r, 1+r.IntN(7), 1+r.IntN(5), 1+r.IntN(5))
		got := ordered(all)
		if want := fewest(nil, all); movesOf(got) != want {
			t.Fatalf("%v moves, the best order has %v: %v", movesOf(got), want, got)
		}
		sameSettings(t, all, got)
	}
}

// Where there are too many settings to try them all, joining runs needs seldom a
// move more than the search in full, never more than one.
func TestManySettingsAreOrderedToo(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	worse := 0
	for range 200 {
		all := settings(r, 12, 2+r.IntN(9), 2+r.IntN(9))
		exact := movesOf(ordered(all))
		var got []Reset
		for _, group := range connected(all) {
			s := make([]Setting, len(group))
			for i, k := range group {
				s[i] = all[k].Setting
			}
			for _, i := range joinedRuns(s) {
				got = append(got, all[group[i]])
			}
		}
		sameSettings(t, all, got)
		joined := movesOf(got)
		if joined > exact {
			worse++
		}
		if joined < exact || joined > exact+1 {
			t.Fatalf("%d moves, the fewest are %d", joined, exact)
		}
	}
	if worse > 10 {
		t.Errorf("more moves than needed in %d of 200", worse)
	}
	all := settings(r, 300, 40, 40)
	sameSettings(t, all, ordered(all))
}

func sameSettings(t *testing.T, all, got []Reset) {
	t.Helper()
	if len(got) != len(all) {
		t.Fatalf("%d settings of %d", len(got), len(all))
	}
	for _, a := range all {
		if !slices.ContainsFunc(got, func(g Reset) bool { return g.Setting == a.Setting }) {
			t.Fatalf("%v is lost", a.Setting)
		}
	}
}
