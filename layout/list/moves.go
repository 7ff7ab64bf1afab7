package list

import (
	"math/bits"
	"slices"
)

// exactMoves is up to how many settings, connected by shared stops, the order with
// the fewest moves is searched for in full: 2^12 sets of settings take about a
// millisecond. Beyond that runs are begun and joined, which finds the fewest moves
// too in nearly all cases, but can't prove it.
const exactMoves = 12

// ordered puts settings into an order in which the two stops of the jig are moved as
// seldom as can be. From one setting to the next one stop moves where they share
// the other, else both do: so the settings are parted into as few runs as can be,
// in each of which neighbours share a stop. Settings connected by shared stops are
// taken one group after the other, each in the order of its first front.
func ordered(all []Reset) []Reset {
	done := make([]Reset, 0, len(all))
	for _, group := range connected(all) {
		settings := make([]Setting, len(group))
		for i, k := range group {
			settings[i] = all[k].Setting
		}
		for _, i := range fewestRuns(settings) {
			done = append(done, all[group[i]])
		}
	}
	return done
}

// sharing tells that only one stop is moved from one setting to the other.
func sharing(a, b Setting) bool { return a.EdgeDistance == b.EdgeDistance || a.Drop == b.Drop }

// connected parts settings into groups that share no stop with each other.
func connected(all []Reset) [][]int {
	var groups [][]int
	taken := make([]bool, len(all))
	for i := range all {
		if taken[i] {
			continue
		}
		taken[i] = true
		group := []int{i}
		for n := 0; n < len(group); n++ {
			for j := range all {
				if !taken[j] && sharing(all[group[n]].Setting, all[j].Setting) {
					taken[j] = true
					group = append(group, j)
				}
			}
		}
		slices.Sort(group)
		groups = append(groups, group)
	}
	return groups
}

// fewestRuns orders a group so that the fewest neighbours share no stop.
func fewestRuns(s []Setting) []int {
	if len(s) > exactMoves {
		return joinedRuns(s)
	}
	// breaks[set][last] is the fewest neighbours without a shared stop in an order
	// of the set that ends with last; the order is read back from it.
	n := len(s)
	breaks := make([][]uint8, 1<<n)
	const never = 255
	for set := 1; set < 1<<n; set++ {
		breaks[set] = make([]uint8, n)
		for last := range n {
			best := uint8(never)
			switch before := set &^ (1 << last); {
			case set&(1<<last) == 0:
			case before == 0:
				best = 0
			default:
				for b := before; b != 0; b &= b - 1 {
					best = min(best, step(s, breaks[before], bits.TrailingZeros(uint(b)), last))
				}
			}
			breaks[set][last] = best
		}
	}
	order := make([]int, 0, n)
	set := 1<<n - 1
	last := first(n, func(i int) uint8 { return breaks[set][i] })
	for {
		order = append(order, last)
		if set &^= 1 << last; set == 0 {
			return order // backwards is as good, and begins with an early front as often
		}
		next := last
		last = first(n, func(i int) uint8 {
			if set&(1<<i) == 0 {
				return never
			}
			return step(s, breaks[set], i, next)
		})
	}
}

// step is the breaks of an order that ends with last once another follows.
func step(s []Setting, breaks []uint8, last, next int) uint8 {
	if sharing(s[last], s[next]) {
		return breaks[last]
	}
	return breaks[last] + 1
}

// first is the first of n with the least cost.
func first(n int, cost func(int) uint8) int {
	best := 0
	for i := 1; i < n; i++ {
		if cost(i) < cost(best) {
			best = i
		}
	}
	return best
}

// joinedRuns makes a run longer while it can: at its end by a setting that is left,
// the one with the fewest ways on first; where there is none, the run is turned
// about within itself (from a setting that shares a stop with its end on) until
// another end is found from which it goes on. Then the next run begins.
func joinedRuns(s []Setting) []int {
	var done []int
	left := make([]bool, len(s))
	for i := range left {
		left[i] = true
	}
	ways := func(i int) (n int) {
		for j := range s {
			if left[j] && sharing(s[i], s[j]) {
				n++
			}
		}
		return n
	}
	onward := func(end int) int {
		best, least := -1, 0
		for j := range s {
			if left[j] && sharing(s[end], s[j]) {
				if w := ways(j); best < 0 || w < least {
					best, least = j, w
				}
			}
		}
		return best
	}
	for len(done) < len(s) {
		start := slices.Index(left, true)
		for i := range s {
			if left[i] && ways(i) < ways(start) {
				start = i
			}
		}
		run := []int{start}
		left[start] = false
		for tried := map[int]bool{}; ; {
			if next := onward(run[len(run)-1]); next >= 0 {
				run, left[next] = append(run, next), false
				clear(tried)
				continue
			}
			if !turned(s, run, tried) {
				if back := onward(run[0]); back >= 0 {
					slices.Reverse(run)
					clear(tried)
					continue
				}
				break
			}
		}
		done = append(done, run...)
	}
	return done
}

// turned gives a run another end that was not tried: where its end shares a stop
// with a setting within, what follows that is turned about. It tells whether there
// is one.
func turned(s []Setting, run []int, tried map[int]bool) bool {
	end := run[len(run)-1]
	tried[end] = true
	for i := len(run) - 3; i >= 0; i-- {
		if sharing(s[run[i]], s[end]) && !tried[run[i+1]] {
			slices.Reverse(run[i+1:])
			return true
		}
	}
	return false
}
