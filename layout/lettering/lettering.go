// Package lettering measures text before it is drawn, so that pages can be laid
// out without a renderer. It knows the widths of the Go fonts, in which all our
// paper is lettered.
package lettering

import (
	"strings"

	"frontlay/model/length"
)

// Lettering heights of ISO 3098 (series from memory): the height of a capital.
const (
	Tiny   = 1800 * length.Micrometre
	Small  = 2500 * length.Micrometre
	Medium = 3500 * length.Micrometre
	Large  = 5 * length.Millimetre
	Huge   = 7 * length.Millimetre
)

// The Go fonts' own proportions, in units of which an em has 2048.
const (
	unitsPerEm = 2048
	capHeight  = 1480
	descent    = 432
)

// Em is the font size (the em) at which capitals are as high as size.
func Em(size length.Length) length.Length { return size * unitsPerEm / capHeight }

// Pitch is the distance of the base lines of two lines of text.
func Pitch(size length.Length) length.Length { return size * 17 / 10 }

// Descent is how far letters such as g reach below the base line.
func Descent(size length.Length) length.Length { return Em(size) * descent / unitsPerEm }

// Reach is how far the letters of a text of the given height reach above that
// height, as stems and accents do, and below the base line, as tails do. It is
// never less than the letters ask for, as far as the pages' letters go.
func Reach(s string, size length.Length) (above, below length.Length) {
	for _, r := range s {
		a, b := reach(r)
		above, below = max(above, a*size/capHeight), max(below, b*size/capHeight)
	}
	return above, below
}

// reach is that of a letter in units of the fonts, as their outlines tell it; one
// for all letters of a kind.
func reach(r rune) (above, below length.Length) {
	const stem, accent, highest = 165, 275, 595
	switch {
	case r < 0x80 && strings.ContainsRune("$(),;JQ[\\]_gjpqy{|}/", r):
		return stem, descent
	case r < 0x80, r == '…':
		return stem, 0
	case r >= 'à' && r <= 'ü' && r != 'ç':
		return accent, 0
	case r >= 'À' && r <= 'ß' && r != 'Ç':
		return highest, 0
	}
	return highest, descent
}

// Width is how wide a text of one line is, letters of the given height.
func Width(s string, size length.Length, isBold bool) length.Length {
	return units(s, isBold) * size / capHeight
}

// units is the width of a text in units of the fonts. There is no kerning: the
// widths of parts add up.
func units(s string, isBold bool) length.Length {
	sum := length.Length(0)
	for _, r := range s {
		sum += length.Length(advance(r, isBold))
	}
	return sum
}

func advance(r rune, isBold bool) uint16 {
	if i := int(r) - 0x20; i >= 0 && i < len(regular) {
		w := regular[i]
		if isBold {
			w = bold[i]
		}
		if w > 0 {
			return w
		}
	}
	for _, o := range others {
		if o.letter == r {
			if isBold {
				return o.bold
			}
			return o.regular
		}
	}
	return unitsPerEm
}

// others are the letters beyond the tables that our pages use.
var others = []struct {
	letter        rune
	regular, bold uint16
}{
	{'–', 1024, 1139}, {'—', 2048, 2048}, {'‘', 455, 569}, {'’', 455, 569},
	{'“', 854, 1024}, {'”', 854, 1024}, {'„', 854, 1024}, {'…', 2048, 2048},
	{'−', 1196, 1196}, {'≈', 1124, 1124}, {'→', 2048, 2048}, {'←', 2048, 2048},
	{'↑', 1024, 1024}, {'↓', 1024, 1024}, {'↕', 1024, 1024},
	{'►', 2027, 2027}, {'◄', 2027, 2027}, {'▲', 2027, 2027}, {'▼', 2027, 2027},
	{'≤', 1124, 1124}, {'≥', 1124, 1124}, {'•', 717, 717}, {'□', 1237, 1237},
	{'€', 1139, 1139}, {'≠', 1196, 1124},
}

// Shorten cuts a text to the width, with … at its end where it was cut.
func Shorten(s string, size length.Length, isBold bool, width length.Length) string {
	if Width(s, size, isBold) <= width {
		return s
	}
	letters := []rune(s)
	for n := len(letters) - 1; n > 0; n-- {
		short := strings.TrimRight(string(letters[:n]), " ") + "…"
		if Width(short, size, isBold) <= width {
			return short
		}
	}
	return ""
}

// OnPaper measures the letters of our paper in millimetres, as where they stand is
// worked out.
type OnPaper struct{}

// Sizes are a height and the lower ones of the series down to Tiny.
func (OnPaper) Sizes(paper length.Length) []float64 {
	sizes := []float64{paper.MM()}
	for _, s := range []length.Length{Medium, Small, Tiny} {
		if s < paper {
			sizes = append(sizes, s.MM())
		}
	}
	return sizes
}

// Width is how wide a text is whose capitals are so high.
func (OnPaper) Width(s string, size float64, isBold bool) float64 {
	return float64(units(s, isBold)) * size / capHeight
}

// Reach is how far its letters reach above capitals and below the base line.
func (OnPaper) Reach(s string, size float64) (above, below float64) {
	a, b := Reach(s, capHeight)
	return float64(a) * size / capHeight, float64(b) * size / capHeight
}
