package sheet

import (
	"frontlay/layout/plane"
	"frontlay/model/length"
)

// tiling cuts a region of a panel into tiles that overlap.
type tiling struct {
	region     plane.Rect
	cols, rows int
	tile       plane.Point // size of a tile
	overlap    length.Length
}

// newTiling cuts the region into as few tiles as have at most the given size:
// columns equally wide, rows as high as they can be, because the holes lie
// towards the bottom edge and tiles without any are not printed. The overlap is at least the size of the largest hole with
// its cross, so that each is whole on some tile.
func newTiling(region plane.Rect, most plane.Point, overlap length.Length, bores []bore) tiling {
	for _, b := range bores {
		overlap = max(overlap, b.whole().Width())
	}
	overlap = min(overlap, most.X/2, most.Y/2)
	t := tiling{region: region, overlap: overlap}
	t.cols, t.tile.X = evenly(region.Width(), most.X, overlap)
	t.rows, t.tile.Y = evenly(region.Height(), most.Y, overlap)
	t.tile.Y = min(most.Y, region.Height())
	return t
}

// evenly divides a length into parts of at most most that overlap, all of the
// same size, rounded up to a whole millimetre where that still fits.
func evenly(whole, most, overlap length.Length) (n int, size length.Length) {
	if whole <= most {
		return 1, whole
	}
	step := most - overlap
	count := (whole - overlap + step - 1) / step
	size = (whole + (count-1)*overlap + count - 1) / count
	return int(count), min(size.CeilTo(length.Millimetre), most)
}

// at is a tile's area, column and row counted from the lower left. Tiles at the
// right and top end where the region ends.
func (t tiling) at(col, row int) plane.Rect {
	step := plane.Point{X: t.tile.X - t.overlap, Y: t.tile.Y - t.overlap}
	r := plane.R(0, 0, t.tile.X, t.tile.Y).Move(t.region.Min)
	r = r.Move(plane.Point{X: length.Length(col) * step.X, Y: length.Length(row) * step.Y})
	return r.Intersect(t.region)
}

// seamX is the x of the middle of the overlap of two columns, col and the next,
// at a whole millimetre.
func (t tiling) seamX(col int) length.Length {
	return ((t.at(col, 0).Max.X + t.at(col+1, 0).Min.X) / 2).RoundTo(length.Millimetre)
}

// seamY is the y of the middle of the overlap of two rows, row and the next, at
// a whole millimetre.
func (t tiling) seamY(row int) length.Length {
	return ((t.at(0, row).Max.Y + t.at(0, row+1).Min.Y) / 2).RoundTo(length.Millimetre)
}

// cross is a registration cross and the tile beyond its seam.
type cross struct {
	at       plane.Point
	col, row int
}

// crosses are the registration crosses that lie on a tile, two a seam, at whole
// millimetres. They depend on the seam alone, so that both neighbours carry the
// same.
func (t tiling) crosses(col, row int) []cross {
	var all []cross
	r := t.inner(col, row)
	x1, x2 := (r.Min.X + r.Width()/4).RoundTo(length.Millimetre), (r.Max.X - r.Width()/4).RoundTo(length.Millimetre)
	y1, y2 := (r.Min.Y + r.Height()/4).RoundTo(length.Millimetre), (r.Max.Y - r.Height()/4).RoundTo(length.Millimetre)
	for _, side := range []int{-1, 1} {
		if c := col + side; c >= 0 && c < t.cols {
			x := t.seamX(min(c, col))
			all = append(all, cross{plane.Point{X: x, Y: y1}, c, row}, cross{plane.Point{X: x, Y: y2}, c, row})
		}
		if c := row + side; c >= 0 && c < t.rows {
			y := t.seamY(min(c, row))
			all = append(all, cross{plane.Point{X: x1, Y: y}, col, c}, cross{plane.Point{X: x2, Y: y}, col, c})
		}
	}
	return all
}

// inner is a tile without its overlaps, seam to seam: the same along a seam for
// both neighbours.
func (t tiling) inner(col, row int) plane.Rect {
	r := t.at(col, row)
	if col > 0 {
		r.Min.X = t.seamX(col - 1)
	}
	if col+1 < t.cols {
		r.Max.X = t.seamX(col)
	}
	if row > 0 {
		r.Min.Y = t.seamY(row - 1)
	}
	if row+1 < t.rows {
		r.Max.Y = t.seamY(row)
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
