// Package picture paints a page as a PNG: the marks that paper shows, in pixels, their
// edges smoothed.
package picture

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"math"

	"frontlay/layout/ink"
	"frontlay/layout/sheet"
	"frontlay/model/message"
)

// The pixels that the longer edge of a picture can have, and has where nobody says.
const (
	LeastPixels    = 200
	GreatestPixels = 12_000
	DefaultPixels  = 2400
)

// Check tells whether the longer edge of a picture can have so many pixels; the error
// is a message for the user.
func Check(pixels int) error {
	if pixels < LeastPixels || pixels > GreatestPixels {
		return message.New("a picture of %v pixels can’t be made: its longer edge has from %v to %v", pixels, LeastPixels, GreatestPixels)
	}
	return nil
}

// PNG paints a page so many pixels wide or high, whichever is more. The same page
// gives the same bytes. The error tells a count out of bounds, or a page that can't be
// painted.
func PNG(p *sheet.Page, say message.Language, pixels int) ([]byte, error) {
	if err := Check(pixels); err != nil {
		return nil, err
	}
	longer := max(p.Width, p.Height)
	if longer <= 0 || min(p.Width, p.Height) <= 0 {
		return nil, fmt.Errorf("a page of %v × %v can’t be painted", p.Width, p.Height)
	}
	per := float64(pixels) / longer.MM()
	size := func(mm float64) int { return max(int(math.Round(mm*per)), 1) }
	c, err := newCanvas(image.Rect(0, 0, size(p.Width.MM()), size(p.Height.MM())), per)
	if err != nil {
		return nil, err
	}
	ink.Draw(c, p.Drawings(), p.LetterArea(), say)
	if c.err != nil {
		return nil, c.err
	}
	var b bytes.Buffer
	err = png.Encode(&b, c.img)
	return b.Bytes(), err
}

// newCanvas is white paper of so many pixels a millimetre.
func newCanvas(r image.Rectangle, per float64) (*canvas, error) {
	c := &canvas{img: image.NewRGBA(r), clip: r, per: per}
	draw.Draw(c.img, r, image.NewUniform(color.White), image.Point{}, draw.Src)
	return c, c.load()
}
