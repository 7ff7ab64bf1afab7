package sheet

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"frontlay/layout/list"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Options choose what is printed and on what. The zero value is what the bench
// needs, on A4 with the default margins, in English and millimetres.
type Options struct {
	Paper   Paper            // zero: A4
	Margins Margins          // zero: DefaultMargins
	Parts   []Part           // empty: those of For
	For     Preset           // empty: Bench
	Fronts  []int            // numbers of the fronts that get templates; empty: all
	Spare   float64          // part added to small parts of the hardware list; zero: a tenth; below zero: none
	Overlap length.Length    // of tiles; zero: 10 mm; at most 30 mm
	Say     message.Language // language, and the unit of the figures
	Labels  LabelFormat      // how stickers lie on their sheets; zero: DefaultLabels
	First   int              // sticker of the first sheet to begin with, from 1, where others are used up; 0: 1
	// Correction undoes a fault of the printer’s scale.
	Correction Correction
	wraps      wraps
	warn       message.Message    // what stands on templates while the check has errors
	depth      message.Message    // how the depths of holes are meant
	stamp      stamp              // what tells the pages from others
	refused    map[forbidden]bool // what errors forbid that are not accepted
	sparing    bool               // no pages of parts that are not needed
	Date       string             // and time of printing, as it shall be printed; may be empty
}

// with fills in what was left open.
func (o Options) with() Options {
	if o.Paper.Width == 0 {
		o.Paper = Papers()[0]
	}
	if o.Margins == (Margins{}) {
		o.Margins = DefaultMargins
	}
	o.Margins.Side = min(max(o.Margins.Side, LeastMargin), GreatestMargin)
	o.Margins.End = min(max(o.Margins.End, LeastMargin), GreatestMargin)
	if len(o.Parts) == 0 {
		o.For = cmp.Or(o.For, Bench)
		o.Parts, o.sparing = o.For.Parts(), o.For == Bench
	}
	if o.Labels == (LabelFormat{}) {
		o.Labels = DefaultLabels
	}
	if o.wraps == nil {
		o.wraps = wraps{}
	}
	if o.Spare == 0 {
		o.Spare = list.DefaultSpare
	}
	if o.Overlap <= 0 {
		o.Overlap = mm(10)
	}
	o.Overlap = min(o.Overlap, mm(30))
	return o
}

// on gives the margins and the correction of a page of the given size by its own
// sides. They belong to the paper's sides: where the page lies turned on the
// paper, they change places.
func (o Options) on(width, height length.Length) (Margins, Correction) {
	m, c := o.Margins, o.Correction
	if width == o.Paper.Width || height != o.Paper.Width {
		return m, c
	}
	c.Across, c.Up, c.turned = c.Up, c.Across, true
	return Margins{Side: m.End, End: m.Side}, c
}

func (o Options) wants(p Part) bool { return slices.Contains(o.Parts, p) }

// ParseFronts reads the numbers and ranges of fronts that get templates, such as
// 2, 5-7, of a project that has so many; empty text means all, which is nil. The
// error is a message for the user.
func ParseFronts(s string, have int) ([]int, error) {
	var all []int
	for _, part := range strings.FieldsFunc(s, func(r rune) bool { return r == ',' || r == ';' || r == ' ' }) {
		from, to, ranged := strings.Cut(part, "-")
		a, err := strconv.Atoi(from)
		b := a
		if err == nil && ranged {
			b, err = strconv.Atoi(to)
		}
		if err != nil || a < 1 || b > have || a > b {
			return nil, message.New("“%v” is no front of this project: it has fronts 1 to %v.", part, have)
		}
		for n := a; n <= b; n++ {
			all = append(all, n)
		}
	}
	return all, nil
}

func (o Options) wantsFront(number int) bool {
	return len(o.Fronts) == 0 || slices.Contains(o.Fronts, number)
}
