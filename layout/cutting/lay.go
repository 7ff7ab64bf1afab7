package cutting

import (
	"cmp"
	"math"
	"math/rand/v2"
	"slices"

	"frontlay/layout/plane"
	"frontlay/model/length"
)

// Lay lays parts on as few sheets as it finds, and of such layings takes the one
// whose largest offcut is largest, then the one with the fewest cuts. It tries each
// order of parts with each way to choose a free piece and to cut it, rows as high
// as their first part among them (so it is never worse than those), then shuffles
// the best order a little, always in the same way: the same parts give the same
// sheets. Fewest is not proved, but told by least where no laying can have fewer.
func Lay(parts []Part, s Stock) Plan {
	inside := s.Inside()
	p := Plan{Stock: s}
	var list []int
	for i, q := range parts {
		straight, turned := fits(q, inside)
		if !straight && !turned {
			p.TooLarge = append(p.TooLarge, i)
			continue
		}
		list = append(list, i)
	}
	if len(list) == 0 {
		return p
	}
	best := &laying{}
	least := Least(parts, s)
	take := func(l *laying) {
		if best.sheets == nil || l.better(best) {
			best = l
		}
	}
	for _, by := range orders {
		sorted := slices.Clone(list)
		slices.SortStableFunc(sorted, func(i, j int) int { return by(parts[j], parts[i]) })
		for _, way := range ways {
			take(laid(parts, sorted, s, way))
		}
	}
	for _, upright := range [2]bool{false, true} {
		for _, long := range [2]bool{false, true} {
			take(inRows(parts, list, s, upright, long))
		}
	}
	random := rand.New(rand.NewPCG(1, 2))
	for range tries(len(list)) {
		if len(best.sheets) <= least {
			break
		}
		order := slices.Clone(best.order)
		for range 1 + random.IntN(3) {
			i, j := random.IntN(len(order)), random.IntN(len(order))
			order[i], order[j] = order[j], order[i]
		}
		take(laid(parts, order, s, ways[random.IntN(len(ways))]))
	}
	p.Sheets = best.sheets
	for _, sheet := range p.Sheets {
		sheet.number()
	}
	return p
}

// tries is how often an order is shuffled: each try takes a time that grows with
// the square of the count of parts, and nobody should wait.
func tries(parts int) int { return min(400, 4_000_000/(parts*parts)) }

// Least is a count of sheets that no laying can do without: their area, each
// part with the kerf that parts it from the next.
func Least(parts []Part, s Stock) int {
	inside := s.Inside()
	area := 0.0
	for _, q := range parts {
		if a, b := fits(q, inside); a || b {
			area += (q.Along + s.Kerf).MM() * (q.Across + s.Kerf).MM()
		}
	}
	whole := (inside.Width() + s.Kerf).MM() * (inside.Height() + s.Kerf).MM()
	if area == 0 || whole <= 0 {
		return 0
	}
	return int(math.Ceil(area/whole - 1e-9))
}

// fits tells whether a part fits in an area as its grain asks, and turned.
func fits(q Part, area plane.Rect) (straight, turned bool) {
	if q.Along <= 0 || q.Across <= 0 || area.Empty() {
		return false, false
	}
	w, h := area.Width(), area.Height()
	return q.Along <= w && q.Across <= h, q.Turns && q.Across <= w && q.Along <= h
}

// orders are the orders in which parts are laid, the greatest first.
var orders = []func(a, b Part) int{
	func(a, b Part) int {
		return cmp.Or(cmp.Compare(a.Across, b.Across), cmp.Compare(a.Along, b.Along))
	},
	func(a, b Part) int {
		return cmp.Or(cmp.Compare(a.Along, b.Along), cmp.Compare(a.Across, b.Across))
	},
	func(a, b Part) int {
		return cmp.Compare(length.AreaM2(a.Along, a.Across), length.AreaM2(b.Along, b.Across))
	},
	func(a, b Part) int {
		return cmp.Or(cmp.Compare(max(a.Along, a.Across), max(b.Along, b.Across)), cmp.Compare(min(a.Along, a.Across), min(b.Along, b.Across)))
	},
	func(a, b Part) int {
		return cmp.Or(cmp.Compare(min(a.Along, a.Across), min(b.Along, b.Across)), cmp.Compare(max(a.Along, a.Across), max(b.Along, b.Across)))
	},
	func(a, b Part) int { return cmp.Compare(a.Along+a.Across, b.Along+b.Across) },
}

// way is how a free piece is chosen for a part, and cut. The lowest waste is the
// best.
type way struct {
	waste func(w, h length.Length) float64 // of what is left across and up; nil: the first that has room
	split split
}

// split says which of the two cuts around a part comes first.
type split uint8

// The cut along the part's upper edge comes first, the one at its right, or the one
// that leaves the larger single piece or the smaller.
const (
	levelFirst split = iota
	uprightFirst
	leaveLarge
	leaveSmall
)

var ways = allWays()

func allWays() []way {
	var all []way
	wastes := []func(w, h length.Length) float64{
		func(w, h length.Length) float64 { return math.Min(w.MM(), h.MM()) },
		func(w, h length.Length) float64 { return math.Max(w.MM(), h.MM()) },
		nil,
	}
	for _, waste := range wastes {
		for s := levelFirst; s <= leaveSmall; s++ {
			all = append(all, way{waste, s})
		}
	}
	return all
}

// laying is sheets on which parts are being laid.
type laying struct {
	stock  Stock
	order  []int
	sheets []*Piece
	free   []*Piece      // where a part may lie
	small  length.Length // the shortest side of any part: nothing lies on less
}

func laid(parts []Part, order []int, s Stock, w way) *laying {
	l := &laying{stock: s, order: order, small: math.MaxInt64}
	for _, i := range order {
		l.small = min(l.small, parts[i].Along, parts[i].Across)
	}
	for _, i := range order {
		l.lay(i, parts[i], w)
	}
	return l
}

// lay lays one part on the best free piece, or on a new sheet.
func (l *laying) lay(index int, q Part, w way) {
	best, turn, least := -1, false, math.Inf(1)
	for k, p := range l.free {
		straight, turned := fits(q, p.Area)
		for _, t := range [2]bool{false, true} {
			if t && !turned || !t && !straight {
				continue
			}
			waste := float64(0)
			if across, up := q.lying(t); w.waste != nil {
				waste = w.waste(p.Area.Width()-across, p.Area.Height()-up)
			}
			if waste < least {
				best, turn, least = k, t, waste
			}
		}
		if w.waste == nil && best >= 0 {
			break
		}
	}
	if best < 0 {
		best = len(l.free)
		straight, _ := fits(q, l.sheet().Area)
		turn = !straight
	}
	p := l.free[best]
	across, up := q.lying(turn)
	free := slices.DeleteFunc(l.stock.part(p, index, across, up, w.split), func(p *Piece) bool {
		return min(p.Area.Width(), p.Area.Height()) < l.small
	})
	l.free = slices.Replace(l.free, best, best+1, free...)
}

// sheet takes a new sheet, the last free piece.
func (l *laying) sheet() *Piece {
	p := &Piece{Area: l.stock.Inside(), Part: -1}
	l.sheets, l.free = append(l.sheets, p), append(l.free, p)
	return p
}

// lying is a part's size along the sheet and across it.
func (q Part) lying(turned bool) (along, across length.Length) {
	if turned {
		return q.Across, q.Along
	}
	return q.Along, q.Across
}

// part cuts a part off the lower left corner of a free piece and gives what is
// left free: what the second cut leaves, then what the first does.
func (s Stock) part(p *Piece, index int, across, up length.Length, how split) []*Piece {
	right, above := p.Area.Width()-across, p.Area.Height()-up
	upright := how == uprightFirst
	if how == leaveLarge || how == leaveSmall {
		// With the upright cut first the piece at the right is as high as all.
		upright = (right.MM()*p.Area.Height().MM() > above.MM()*p.Area.Width().MM()) == (how == leaveLarge)
	}
	var free []*Piece
	for _, u := range [2]bool{upright, !upright} {
		size := up
		if u {
			size = across
		}
		var far *Piece
		if p, far = s.near(p, u, size); far != nil {
			free = append(free, far)
		}
	}
	p.Part = index
	slices.Reverse(free)
	return free
}

// near cuts a piece so that the one before the blade has a size, and gives that one
// and what lies behind the blade, nil where nothing does. Nothing is cut where the
// piece has that size.
func (s Stock) near(p *Piece, upright bool, size length.Length) (near, far *Piece) {
	before, behind := p.Area, p.Area
	var at, end length.Length
	if upright {
		at, end = p.Area.Min.X+size, p.Area.Max.X
		before.Max.X, behind.Min.X = at, at+s.Kerf
	} else {
		at, end = p.Area.Min.Y+size, p.Area.Max.Y
		before.Max.Y, behind.Min.Y = at, at+s.Kerf
	}
	if at >= end {
		return p, nil
	}
	near = &Piece{Area: before, Part: -1}
	if !behind.Empty() {
		far = &Piece{Area: behind, Part: -1}
	}
	p.Cut = &Cut{Upright: upright, At: at, Near: near, Far: far}
	return near, far
}

// better compares two layings of the same parts.
func (l *laying) better(than *laying) bool {
	if len(l.sheets) != len(than.sheets) {
		return len(l.sheets) < len(than.sheets)
	}
	if a, b := l.largest(), than.largest(); a != b {
		return a > b
	}
	return l.cuts() < than.cuts()
}

// largest is the area of the largest offcut, in m².
func (l *laying) largest() float64 {
	most := 0.0
	for _, sheet := range l.sheets {
		for _, left := range sheet.Offcuts() {
			most = math.Max(most, length.AreaM2(left.Width(), left.Height()))
		}
	}
	return most
}

func (l *laying) cuts() int {
	n := 0
	for _, p := range l.sheets {
		n += len(p.Cuts())
	}
	return n
}
