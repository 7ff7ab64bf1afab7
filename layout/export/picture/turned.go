package picture

import (
	"image"
	"math"

	"frontlay/layout/ink"
	"frontlay/layout/lettering"
	"frontlay/model/length"
)

// Turned paints one line of letters, written upwards, on nothing, with so many pixels
// a millimetre: for screens whose toolkit writes flat only. The picture holds the
// letters with what reaches above capitals at its left and below the base line at its
// right (lettering.Reach), rounded up to whole pixels.
func Turned(s string, size length.Length, bold bool, per float64, f ink.Colour) (image.Image, error) {
	above, below := lettering.Reach(s, size)
	pixels := func(l length.Length) int { return min(max(int(math.Ceil(l.MM()*per)), 1), GreatestPixels) }
	r := image.Rect(0, 0, pixels(above+size+below), pixels(lettering.Width(s, size, bold)))
	c := &canvas{img: image.NewRGBA(r), clip: r, per: per}
	if err := c.load(); err != nil {
		return nil, err
	}
	c.write(ink.Point{X: (above + size).MM()}, size, bold, true, f, s)
	return c.img, c.err
}
