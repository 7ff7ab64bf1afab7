package sheet

import (
	"frontlay/layout/plane"
	"frontlay/model/length"
)

// tiling cuts a region of a panel into tiles that overlap.
type tiling struct {
	region     plane.Rect
	cols, rows int
	x, y       []length.Length // seams between columns and between rows
	overlap    length.Length
	keep       []plane.Rect // what crosses are not drawn on: holes, edges and pencil lines
}

// newTiling cuts the region into as few tiles as have at most the given size:
// columns about equally wide, rows as high as they can be, because the holes lie
// towards the bottom edge and tiles without any are not printed. Seams keep clear of
// holes. The overlap is at least the size of the largest hole with its cross, so that
// each is whole on some tile even where a seam has no room between them.
func newTiling(region plane.Rect, most plane.Point, overlap length.Length, bores []bore) tiling {
	t := tiling{region: region}
	var across, up []span
	for _, b := range bores {
		w := b.whole()
		overlap = max(overlap, w.Width())
		t.keep = append(t.keep, w)
		clear := max(seamClear, w.Width()/2+mm(1))
		across = append(across, span{b.at.X - clear, b.at.X + clear})
		up = append(up, span{b.at.Y - clear, b.at.Y + clear})
	}
	t.overlap = min(overlap, most.X/2, most.Y/2)
	t.x = seams(span{region.Min.X, region.Max.X}, most.X, t.overlap, across, true)
	t.y = seams(span{region.Min.Y, region.Max.Y}, most.Y, t.overlap, up, false)
	t.cols, t.rows = len(t.x)+1, len(t.y)+1
	return t
}

// seamClear is what a seam keeps from a hole's centre at least.
const seamClear = 6 * length.Millimetre

// span is a stretch of an axis.
type span struct{ lo, hi length.Length }

// seams divides a stretch into parts of at most most that overlap, and gives the
// middles of the overlaps, at whole millimetres and clear of what lies in the way:
// with a few parts more where that is needed, and where even that is not enough, as
// clear as can be.
func seams(whole span, most, overlap length.Length, clear []span, even bool) []length.Length {
	length := whole.hi - whole.lo
	if length <= most {
		return nil
	}
	step := most - overlap
	n := int((length - overlap + step - 1) / step)
	for parts := n; parts <= n+1+n/4; parts++ { // each seam moves by less than a quarter of a part
		if all, ok := seamsOf(whole, parts, most, overlap, clear, even); ok {
			return all
		}
	}
	all, _ := seamsOf(whole, n+1, most, overlap, clear, even)
	return all
}

// seamsOf places the seams of a count of parts, and tells whether all are clear.
func seamsOf(whole span, parts int, most, overlap length.Length, clear []span, even bool) (all []length.Length, ok bool) {
	half := overlap / 2
	ok = true
	start := whole.lo // of the part before the seam
	for i := 1; i < parts; i++ {
		left := length.Length(parts - i)
		// What follows must fit into the parts that are left, and no part reach past the next.
		least := max(whole.hi-left*most+(left-1)*overlap+half, start+overlap+half)
		greatest := start + most - half
		want := greatest
		if even {
			want = whole.lo + (whole.hi-whole.lo)*length.Length(i)/length.Length(parts)
		}
		v, free := clearest(min(max(want, least), greatest).FloorTo(length.Millimetre), span{least, greatest}, clear)
		ok = ok && free
		all = append(all, v)
		start = v - half
	}
	return all, ok
}

// clearest gives the place nearest to a wanted one, in whole millimetres of it, that
// lies within bounds and in none of some spans; else the one that is least deep in
// any, and false.
func clearest(want length.Length, bounds span, clear []span) (length.Length, bool) {
	depth := func(v length.Length) (deep length.Length) {
		for _, c := range clear {
			deep = max(deep, min(v-c.lo, c.hi-v))
		}
		return deep
	}
	best, least := want, depth(want)
	for off := length.Length(0); least > 0 && (want-off >= bounds.lo || want+off <= bounds.hi); off += length.Millimetre {
		for _, v := range [2]length.Length{want - off, want + off} {
			if deep := depth(v); v >= bounds.lo && v <= bounds.hi && deep < least {
				best, least = v, deep
			}
		}
	}
	return best, least <= 0
}

// at is a tile's area, column and row counted from the lower left. Tiles at the
// right and top end where the region ends.
func (t tiling) at(col, row int) plane.Rect {
	r, half := t.region, t.overlap/2
	if col > 0 {
		r.Min.X = t.x[col-1] - half
	}
	if col < len(t.x) {
		r.Max.X = t.x[col] + half
	}
	if row > 0 {
		r.Min.Y = t.y[row-1] - half
	}
	if row < len(t.y) {
		r.Max.Y = t.y[row] + half
	}
	return r
}

// cross is a registration cross and the tile beyond its seam.
type cross struct {
	at       plane.Point
	col, row int
}

// crossArm is half the length of a registration cross.
const crossArm = 4 * length.Millimetre

// crosses are the registration crosses that lie on a tile, two a seam, at whole
// millimetres, clear of holes and lines where the seam is long enough. They depend on
// the seam alone, so that both neighbours carry the same.
func (t tiling) crosses(col, row int) []cross {
	var all []cross
	r := t.inner(col, row)
	two := func(from, to length.Length, at func(v length.Length) cross) {
		quarter := (to - from) / 4
		for _, v := range [2]length.Length{from + quarter, to - quarter} {
			v = v.RoundTo(length.Millimetre)
			clear, _ := clearest(v, span{v - quarter/2, v + quarter/2}, t.inTheWay(at))
			all = append(all, at(clear))
		}
	}
	for _, side := range []int{-1, 1} {
		if c := col + side; c >= 0 && c < t.cols {
			two(r.Min.Y, r.Max.Y, func(v length.Length) cross { return cross{plane.Point{X: t.x[min(c, col)], Y: v}, c, row} })
		}
		if c := row + side; c >= 0 && c < t.rows {
			two(r.Min.X, r.Max.X, func(v length.Length) cross { return cross{plane.Point{X: v, Y: t.y[min(c, row)]}, col, c} })
		}
	}
	return all
}

// inTheWay gives the stretches of a seam in which a cross would run through something.
func (t tiling) inTheWay(at func(v length.Length) cross) []span {
	var all []span
	upright := at(0).at.X == at(1).at.X
	for _, k := range t.keep {
		k = k.Grow(crossArm + mm(1))
		switch p := at(0).at; {
		case upright && k.Min.X < p.X && p.X < k.Max.X:
			all = append(all, span{k.Min.Y, k.Max.Y})
		case !upright && k.Min.Y < p.Y && p.Y < k.Max.Y:
			all = append(all, span{k.Min.X, k.Max.X})
		}
	}
	return all
}

// inner is a tile without its overlaps, seam to seam: the same along a seam for
// both neighbours.
func (t tiling) inner(col, row int) plane.Rect {
	r := t.region
	if col > 0 {
		r.Min.X = t.x[col-1]
	}
	if col < len(t.x) {
		r.Max.X = t.x[col]
	}
	if row > 0 {
		r.Min.Y = t.y[row-1]
	}
	if row < len(t.y) {
		r.Max.Y = t.y[row]
	}
	return r
}

// owner is the tile on which a hole is whole and farthest from the tile's end.
func (t tiling) owner(b bore) (col, row int) {
	col = ownerAlong(t.cols, b.at.X, func(i int) (lo, hi length.Length) { r := t.at(i, 0); return r.Min.X, r.Max.X })
	row = ownerAlong(t.rows, b.at.Y, func(i int) (lo, hi length.Length) { r := t.at(0, i); return r.Min.Y, r.Max.Y })
	return col, row
}

func ownerAlong(n int, v length.Length, span func(int) (lo, hi length.Length)) int {
	best, room := 0, length.Length(0)
	for i := range n {
		lo, hi := span(i)
		if r := min(v-lo, hi-v); i == 0 || r > room {
			best, room = i, r
		}
	}
	return best
}

// needed tells which tiles are printed: those that own a hole, and those
// between them and a side edge and the bottom edge, so that each sheet joins
// others as far as an edge. The side edge is the left one (datum −1), the right
// (1) or the nearer (0). Index: row*cols + col.
func (t tiling) needed(bores []bore, datum int) []bool {
	need := make([]bool, t.cols*t.rows)
	for _, b := range bores {
		col, row := t.owner(b)
		for r := row; r >= 0; r-- {
			need[r*t.cols+col] = true
		}
		if datum < 0 || datum == 0 && col < t.cols-1-col {
			for c := col; c >= 0; c-- {
				need[row*t.cols+c] = true
			}
		} else {
			for c := col; c < t.cols; c++ {
				need[row*t.cols+c] = true
			}
		}
	}
	return need
}
