package sheet

import (
	"strconv"
	"strings"

	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// LabelFormat is how stickers lie on a sheet of paper, as the pack tells: Columns and
// Rows; Left and Top from the paper's edges to the outermost stickers, the same at the
// right and the bottom; Across and Down from the edge of a sticker to the same edge of
// the next, 0 where they lie side by side.
type LabelFormat struct {
	Columns, Rows int
	Left, Top     length.Length
	Across, Down  length.Length
}

// DefaultLabels fill the sheet without margins: on A4 stickers of 70 × 37 mm.
var DefaultLabels = LabelFormat{Columns: 3, Rows: 8}

// The bounds of a format: what a printer reaches of every sticker holds what has to
// stand on it, and a slip of the finger makes no job of thousands.
const (
	mostStickers  = 20 // in a row or a column
	leastHigh     = 11 * length.Millimetre
	leastWide     = 28 * length.Millimetre
	labelSlack    = length.Millimetre     // by which what a pack tells is rounded
	stickerInside = 2 * length.Millimetre // from its edge, as no sheet is fed straight
)

// ParseLabels reads a format as it is typed: columns and rows, such as 3x8; margins at
// the left and the top, such as 7.2x12.9, or one for both; the pitch across and down,
// such as 66x33.9. Margins and pitch may be empty. Bare numbers are in u. The error is
// a message for the user.
func ParseLabels(grid, margins, pitch string, u length.Unit) (LabelFormat, error) {
	var f LabelFormat
	columns, rows, ok := crossed(grid)
	var err1, err2 error
	f.Columns, err1 = strconv.Atoi(columns)
	f.Rows, err2 = strconv.Atoi(rows)
	if !ok || err1 != nil || err2 != nil || min(f.Columns, f.Rows) < 1 || max(f.Columns, f.Rows) > mostStickers {
		return f, message.New("“%v” is no format of labels: write columns and rows, each from 1 to %v, such as 3x8", grid, mostStickers)
	}
	if f.Left, f.Top, ok = pair(margins, u); !ok || f.Left < 0 || f.Top < 0 {
		return f, message.New("“%v” are no margins of labels: write left and top, such as 7.2x12.9", margins)
	}
	if f.Across, f.Down, ok = pair(pitch, u); !ok || f.Across < 0 || f.Down < 0 {
		return f, message.New("“%v” is no pitch of labels: write across and down, from the edge of a label to the same edge of the next, such as 66x33.9", pitch)
	}
	return f, nil
}

func crossed(s string) (a, b string, ok bool) {
	a, b, ok = strings.Cut(strings.ReplaceAll(strings.ToLower(s), "×", "x"), "x")
	return strings.TrimSpace(a), strings.TrimSpace(b), ok
}

// pair reads two lengths such as 7.2x12.9, or one that counts for both; empty: 0.
func pair(s string, u length.Unit) (a, b length.Length, ok bool) {
	if strings.TrimSpace(s) == "" {
		return 0, 0, true
	}
	first, second, two := crossed(s)
	if !two {
		second = first
	}
	b, err := length.Parse(second, u)
	if err != nil {
		return 0, 0, false
	}
	a, err = length.Parse(withUnitOf(first, second), u)
	return a, b, err == nil
}

// stickers lays the format out on paper of a size: the place of the first sticker at
// the upper left, and the ways to the next; false where it does not lie there.
func (f LabelFormat) stickers(width, height length.Length) (first plane.Rect, across, down length.Length, ok bool) {
	wide, across, ok1 := along(width, f.Left, f.Across, f.Columns)
	high, down, ok2 := along(height, f.Top, f.Down, f.Rows)
	return plane.R(f.Left, height-f.Top-high, f.Left+wide, height-f.Top), across, down, ok1 && ok2
}

// CheckLabels tells whether the format of labels lies on the paper, the printer reaches
// what stands on each, and there is a label of the number to begin with. The error is a
// message for the user.
func (o Options) CheckLabels() error {
	o = o.with()
	f, w, h := o.Labels, o.Paper.Width, labelHeight(o.Paper)
	first, across, down, ok := f.stickers(w, h)
	if !ok {
		return message.New("labels %v × %v do not lie on paper of %v × %v with these margins and this pitch: measure from the paper’s edge to the first label, and from the edge of a label to the same edge of the next", f.Columns, f.Rows, w, h)
	}
	last := first.Move(plane.Point{X: across * length.Length(f.Columns-1), Y: -down * length.Length(f.Rows-1)})
	for _, one := range []plane.Rect{first, last} {
		if in := written(one, printable(w, h, o)); in.Width() < leastWide || in.Height() < leastHigh {
			return message.New("of labels of %v × %v the printer reaches no more than %v × %v to write on, and %v × %v are needed", one.Width(), one.Height(), max(in.Width(), 0), max(in.Height(), 0), leastWide, leastHigh)
		}
	}
	if n := f.Columns * f.Rows; o.First < 0 || o.First > n {
		return message.New("a sheet has no label %v to begin with: it has labels 1 to %v, counted along the rows", o.First, n)
	}
	return nil
}

// written is the part of a sticker that is written on, of what a printer reaches.
func written(sticker, reached plane.Rect) plane.Rect {
	return sticker.Grow(-stickerInside).Intersect(reached)
}

// Grid is the count of columns and rows as ParseLabels reads it.
func (f LabelFormat) Grid() string { return strconv.Itoa(f.Columns) + "x" + strconv.Itoa(f.Rows) }

// labelHeight is the height of a sheet of labels; on a roll it has the proportion of
// the ISO sheets.
func labelHeight(paper Paper) length.Length {
	if paper.Roll() {
		return paper.Width * 14142 / 10000
	}
	return paper.Height
}

// along shares an edge of the paper: how long a sticker is, and how far it is to the
// next. A sticker is as long as margins and pitch leave, a hair less where they are
// rounded.
func along(edge, margin, pitch length.Length, n int) (size, step length.Length, ok bool) {
	room := edge - 2*margin
	if pitch == 0 {
		pitch = room / length.Length(n)
	}
	size = room - length.Length(n-1)*pitch
	if size > pitch && size <= pitch+labelSlack {
		size = pitch
	}
	return size, pitch, size > 0 && (n == 1 || size <= pitch)
}
