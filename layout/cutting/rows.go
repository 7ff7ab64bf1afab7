package cutting

import (
	"cmp"
	"slices"

	"frontlay/model/length"
)

// lyingPart is a part as it lies: its size along a row and the row's height.
type lyingPart struct {
	index         int
	along, across length.Length
}

// inRows lays parts beside each other in rows, each as high as its first part and
// on the first sheet with room, the highest parts first; each part lies in the first
// row with room. Rows run along the sheet, or across it where they are upright. Parts
// whose grain does not matter lie straight where they fit so; with long, their longer
// side lies along the row.
func inRows(parts []Part, list []int, s Stock, upright, long bool) *laying {
	inside := s.Inside()
	room := inside.Width()
	if upright {
		room = inside.Height()
	}
	all := make([]lyingPart, len(list))
	for k, i := range list {
		straight, turned := fits(parts[i], inside)
		turn := !straight
		if a, b := parts[i].lying(upright); long && straight && turned {
			turn = b > a
		}
		along, across := parts[i].lying(turn != upright)
		all[k] = lyingPart{i, along, across}
	}
	slices.SortStableFunc(all, func(a, b lyingPart) int {
		return cmp.Or(cmp.Compare(b.across, a.across), cmp.Compare(b.along, a.along))
	})
	type row struct {
		parts []lyingPart
		left  length.Length
	}
	var rows []row
	for _, q := range all {
		i := slices.IndexFunc(rows, func(r row) bool { return r.left >= q.along })
		if i < 0 {
			i = len(rows)
			rows = append(rows, row{left: room})
		}
		rows[i].parts = append(rows[i].parts, q)
		rows[i].left -= q.along + s.Kerf
	}
	l := &laying{stock: s, order: list}
	var rests []*Piece // of each sheet; nil: nothing is left
	for _, r := range rows {
		i := slices.IndexFunc(rests, func(p *Piece) bool {
			return p != nil && (p.Area.Width() >= r.parts[0].across && upright || p.Area.Height() >= r.parts[0].across && !upright)
		})
		if i < 0 {
			i = len(rests)
			rests = append(rests, l.sheet())
		}
		var at *Piece
		at, rests[i] = s.near(rests[i], upright, r.parts[0].across)
		for _, q := range r.parts {
			var cell *Piece
			cell, at = s.near(at, !upright, q.along)
			cell, _ = s.near(cell, upright, q.across)
			cell.Part = q.index
		}
	}
	return l
}
