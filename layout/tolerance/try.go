package tolerance

import (
	"cmp"
	"math"
	"math/rand/v2"
	"runtime"
	"slices"
	"sync"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Tried is what came out of runs made with random errors. Shares are from 0 to 1: of each
// gap, in the order of the budget, and of each cabinet with all its gaps.
type Tried struct {
	Runs                          int
	GapsBefore, GapsAfter         []float64
	CabinetsBefore, CabinetsAfter []float64
}

// Runs is how many runs are tried where nobody asks for another number: enough for a
// share to a hundredth.
const Runs = 2000

// chunk is how many runs share a source of random numbers, so that the outcome does not
// depend on how many of them run at the same time.
const chunk = 250

// Try makes n runs of cabinets with random errors, the same ones each time, and tells in
// how many each gap is as wanted at both its ends, as hung and after adjusting. After
// adjusting, a gap counts where the connectors of the fronts beside it can bring it there; a
// cabinet, where that holds of each of its gaps, and of the middles of all gaps of a stack,
// and of a row, at once.
//
// The errors that can be adjusted away are a convex set around none, the larger the more
// there is to adjust: with the same random numbers more adjustment, or smaller errors all
// in the same ratio, never lose a run.
func (b *Budget) Try(n int) Tried {
	s := b.trial()
	jobs := make(chan int)
	var all counts
	all.grow(b)
	var mu sync.Mutex
	var wg sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), (n+chunk-1)/chunk) {
		wg.Add(1)
		go func() {
			defer wg.Done()
			r := s.room()
			for first := range jobs {
				numbers := rand.New(rand.NewPCG(uint64(first), seed))
				for range min(chunk, n-first) {
					r.run(numbers)
				}
			}
			mu.Lock()
			all.add(&r.counts)
			mu.Unlock()
		}()
	}
	for first := 0; first < n; first += chunk {
		jobs <- first
	}
	close(jobs)
	wg.Wait()
	share := func(counts []int) []float64 {
		shares := make([]float64, len(counts))
		for i, c := range counts {
			shares[i] = float64(c) / float64(max(n, 1))
		}
		return shares
	}
	return Tried{n, share(all.gapsBefore), share(all.gapsAfter), share(all.cabinetsBefore), share(all.cabinetsAfter)}
}

// seed is that of the random numbers: any, but always the same.
const seed = 20

// counts are the runs in which gaps and cabinets are as wanted.
type counts struct{ gapsBefore, gapsAfter, cabinetsBefore, cabinetsAfter []int }

func (c *counts) grow(b *Budget) {
	gaps, cabinets := len(b.Gaps), len(b.sources.sides)
	*c = counts{make([]int, gaps), make([]int, gaps), make([]int, cabinets), make([]int, cabinets)}
}

func (c *counts) add(d *counts) {
	for _, pair := range [][2][]int{{c.gapsBefore, d.gapsBefore}, {c.gapsAfter, d.gapsAfter}, {c.cabinetsBefore, d.cabinetsBefore}, {c.cabinetsAfter, d.cabinetsAfter}} {
		for i, n := range pair[1] {
			pair[0][i] += n
		}
	}
}

// trial is a budget made ready to be tried often.
type trial struct {
	*Budget
	sd      []float64 // standard deviation of each error, mm
	limits  [][]limit // of each gap
	cabinet []int     // of each gap
	chains  [2]chain  // of stacks, from the top; of rows, from the right
}

// limit is a straight line that the errors of a gap at its ends, p and q, must not cross:
// x·p + y·q ≤ most.
type limit struct{ x, y, most float64 }

// chain is an order of fronts in which each comes before the one that it is set against.
type chain struct {
	order []int
	links [][]link     // of each front
	reach [][2]float64 // of each front, mm
}

// link is a gap of a front: the front moves it by sign times its own move, other (-1: none
// of the same cabinet) by as much the other way.
type link struct {
	gap, other int
	sign       float64
}

func (b *Budget) trial() *trial {
	s := &trial{Budget: b}
	for i := range b.sources.all {
		s.sd = append(s.sd, Likely(b.sources.all[i].parts(&b.sizes)...)/perSigma)
	}
	for i := range b.Gaps {
		s.limits = append(s.limits, b.limits(&b.Gaps[i]))
		s.cabinet = append(s.cabinet, b.Gaps[i].Front.Place.Cabinet)
	}
	s.chains = [2]chain{b.chain(false), b.chain(true)}
	return s
}

// limits are the lines around the errors of a gap that adjusting can bring to where it is
// wanted: a box as large as the band, swept by what each connector moves the two ends.
func (b *Budget) limits(g *Gap) []limit {
	type move struct{ p, q, least, most float64 }
	var moves []move
	coefficient := map[int]term{}
	for _, t := range g.terms {
		coefficient[t.source] = t
	}
	for _, i := range []int{g.front, g.other} {
		if i < 0 {
			continue
		}
		f := &b.sources.fronts[i]
		for _, up := range f.up {
			t := coefficient[up]
			moves = append(moves, move{t.p, t.q, -f.down, f.lift})
		}
		l, r := coefficient[f.across[0]], coefficient[f.across[1]]
		moves = append(moves, move{l.p + r.p, l.q + r.q, -f.side, f.side})
	}
	normals := [][2]float64{{1, 0}, {0, 1}}
	for _, m := range moves {
		if m.p != 0 || m.q != 0 {
			normals = append(normals, [2]float64{m.q, -m.p})
		}
	}
	var lines []limit
	for _, n := range normals {
		for _, sign := range []float64{1, -1} {
			x, y := sign*n[0], sign*n[1]
			most := b.band() * (math.Abs(x) + math.Abs(y))
			for _, m := range moves {
				along := x*m.p + y*m.q
				most += max(-m.least*along, -m.most*along)
			}
			lines = append(lines, limit{x, y, most + tiny})
		}
	}
	return lines
}

// chain orders the fronts of stacks, or of rows.
func (b *Budget) chain(across bool) chain {
	c := chain{links: make([][]link, len(b.sources.fronts))}
	for i := range b.Gaps {
		g := &b.Gaps[i]
		if g.Vertical != across {
			continue
		}
		l := link{gap: i, other: -1, sign: g.Edge.Sign()}
		if g.other >= 0 {
			if g.Other.Place.Cabinet != g.Front.Place.Cabinet {
				continue // it is judged by itself
			}
			l.other = g.other
			if g.Edge == plan.RightEdge { // the one at the right comes first
				c.links[g.other] = append(c.links[g.other], link{i, g.front, -l.sign})
				continue
			}
		}
		c.links[g.front] = append(c.links[g.front], l)
	}
	at := func(i int) int64 {
		f := &b.sources.plan.Fronts[i].Face
		if across {
			return int64(f.Min.X)
		}
		return int64(f.Min.Y)
	}
	for i := range b.sources.fronts {
		f := &b.sources.fronts[i]
		if b.sources.plan.Fronts[i].Kind != model.OpenNiche {
			c.order = append(c.order, i)
		}
		if across {
			c.reach = append(c.reach, [2]float64{-f.side, f.side})
		} else {
			c.reach = append(c.reach, [2]float64{-f.down, f.lift})
		}
	}
	slices.SortStableFunc(c.order, func(i, j int) int { return cmp.Compare(at(j), at(i)) })
	return c
}

// room is what one of the goroutines needs to make runs.
type room struct {
	*trial
	errors        []float64
	middle        []float64
	before, after []bool // of each cabinet
	moves         [][2]float64
	counts        counts
}

func (s *trial) room() *room {
	r := &room{trial: s, errors: make([]float64, len(s.sd)), middle: make([]float64, len(s.Gaps)), moves: make([][2]float64, len(s.sources.fronts))}
	r.before, r.after = make([]bool, len(s.sources.sides)), make([]bool, len(s.sources.sides))
	r.counts.grow(s.Budget)
	return r
}

// run makes one run and counts what of it is as wanted.
func (r *room) run(numbers *rand.Rand) {
	for i, sd := range r.sd {
		r.errors[i] = sd * numbers.NormFloat64()
	}
	for i := range r.before {
		r.before[i], r.after[i] = true, true
	}
	band := r.band()
	for i := range r.Gaps {
		p, q := 0.0, 0.0
		for _, t := range r.Gaps[i].terms {
			e := r.errors[t.source]
			p, q = p+t.p*e, q+t.q*e
		}
		r.middle[i] = (p + q) / 2
		if math.Abs(p) <= band && math.Abs(q) <= band {
			r.counts.gapsBefore[i]++
			r.counts.gapsAfter[i]++
			continue
		}
		r.before[r.cabinet[i]] = false
		if keeps(r.limits[i], p, q) {
			r.counts.gapsAfter[i]++
		} else {
			r.after[r.cabinet[i]] = false
		}
	}
	for i := range r.chains {
		r.follow(&r.chains[i], band)
	}
	for i := range r.before {
		if r.before[i] {
			r.counts.cabinetsBefore[i]++
		}
		if r.after[i] {
			r.counts.cabinetsAfter[i]++
		}
	}
}

func keeps(lines []limit, p, q float64) bool {
	for _, l := range lines {
		if l.x*p+l.y*q > l.most {
			return false
		}
	}
	return true
}

// follow tells whether the middles of all gaps of a stack, or of a row, can be brought to
// where they are wanted at once: for each front, from the end, the moves that are left to
// it are an interval.
func (r *room) follow(c *chain, band float64) {
	copy(r.moves, c.reach)
	for _, i := range c.order {
		cabinet := r.sources.plan.Fronts[i].Place.Cabinet
		if !r.after[cabinet] {
			continue
		}
		mine := r.moves[i]
		for _, l := range c.links[i] { // |middle + sign·mine| ≤ band
			if m := l.sign * r.middle[l.gap]; l.other < 0 {
				mine = [2]float64{max(mine[0], -band-m), min(mine[1], band-m)}
			}
		}
		if mine[0] > mine[1]+tiny {
			r.after[cabinet] = false
			continue
		}
		for _, l := range c.links[i] {
			if l.other >= 0 {
				other, m := &r.moves[l.other], l.sign*r.middle[l.gap]
				*other = [2]float64{max(other[0], mine[0]+m-band), min(other[1], mine[1]+m+band)}
			}
		}
	}
}

// Told is what the budget and what was tried of it come to, in a sentence or two: of the
// cabinet that comes out worst.
func (b *Budget) Told(tried Tried) message.Message {
	if len(tried.CabinetsAfter) == 0 || len(b.Gaps) == 0 {
		return message.Message{}
	}
	worst := 0
	for i := range tried.CabinetsAfter {
		if cmp.Or(cmp.Compare(tried.CabinetsAfter[i], tried.CabinetsAfter[worst]), cmp.Compare(tried.CabinetsBefore[i], tried.CabinetsBefore[worst])) < 0 {
			worst = i
		}
	}
	said := message.New("of 100 cabinets, %v come out with all gaps within ± %v as they are hung, and %v after adjusting", OfHundred(tried.CabinetsBefore[worst]), *b.Process.Within, OfHundred(tried.CabinetsAfter[worst]))
	if p := b.sources.plan; len(p.Cabinets) > 1 {
		said = message.New("%v, which comes out worst: %v", p.Project.CabinetName(p.Cabinets[worst].Place), said)
	}
	step, some := b.Largest()
	if !some {
		return said
	}
	g := &b.Gaps[0]
	for i := range b.Gaps {
		if b.Spread(&b.Gaps[i]).End > b.Spread(g).End {
			g = &b.Gaps[i]
		}
	}
	half := b.Halved(step)
	return message.New("%v; most comes from %v (± %v): half of it would bring the widest spread, at front %v, from ± %v to ± %v, and %v of 100 as they are hung",
		said, step.Say(), b.Size(step), g.Front.Number, Shown(b.Spread(g).End), Shown(half.Spread(g).End), OfHundred(half.Try(tried.Runs).CabinetsBefore[worst]))
}

// OfHundred is how many of a hundred a share is, none more than there are.
func OfHundred(share float64) int { return int(math.Floor(share*100 + tiny)) }

// Own tells whether the user gave the figure of a step.
func (s Step) Own(p *model.Process) bool {
	if p == nil {
		return false
	}
	switch s {
	case Cutting:
		return p.Cutting != nil
	case Drilling:
		return []*length.Length{p.Jig, p.Template, p.Machine}[p.Drilling] != nil
	case Printing:
		return p.Drilling == model.ByTemplate && p.Print != nil
	case Paper:
		return p.Drilling == model.ByTemplate && p.Paper != nil
	case RunnerHeight:
		return p.Runner != nil
	}
	return p.Connector != nil
}
