package paint

import (
	"image/color"
	"math"

	"frontlay/layout/wood"
	"frontlay/model"
	"frontlay/model/message"
	"frontlay/ui/look"
)

// Wood is how a board is painted.
type Wood struct {
	Base  color.NRGBA
	Light color.NRGBA // its edges above and at the left
	Shade color.NRGBA // and below and at the right
	// Figure is how much of the depth of grain it shows: 0 to 1.
	Figure float64
	// On is the colour of texts on it, OnSoft that of those that matter less.
	On, OnSoft color.NRGBA
	// Upright tells that its grain runs up and down.
	Upright bool
}

// WoodOf tells how a board is painted: by the word for its material in a
// language or in English, else as maple.
func WoodOf(b model.Board, say message.Language, p look.Palette) Wood {
	w := Maple(p)
	if t, ok := wood.Of(b, say); ok && !p.Flat {
		c := t.Light
		if dark(p.Sheet) {
			c = t.Dark
		}
		w = wooden(color.NRGBA{R: uint8(c >> 16), G: uint8(c >> 8), B: uint8(c), A: 255}, t.Figure, p)
	}
	w.Upright = b.Grain == "vertical"
	return w
}

// Maple is how a board is painted that tells no other material.
func Maple(p look.Palette) Wood { return wooden(p.Maple, wood.Front.Figure, p) }

// CarcassWood is how the carcass is painted.
func CarcassWood(p look.Palette) Wood { return wooden(p.Birch, wood.Carcass.Figure, p) }

// wooden makes a wood of its colour.
func wooden(base color.NRGBA, figure float64, p look.Palette) Wood {
	w := Wood{Base: base, Figure: figure, On: p.OnMaple, OnSoft: p.OnMapleSoft}
	light, shade := 0.55, 0.15
	if dark(base) {
		light, shade = 0.14, 0.3
	}
	w.Light = mixed(base, color.NRGBA{R: 255, G: 250, B: 240, A: 255}, light)
	w.Shade = mixed(base, color.NRGBA{A: 255}, shade)
	if p.Flat {
		w.Figure, w.Light, w.Shade = 0, base, base
		return w
	}
	if contrast(w.OnSoft, base) < legible {
		w.On = color.NRGBA{R: 0x1E, G: 0x17, B: 0x0E, A: 255}
		if dark(base) {
			w.On = color.NRGBA{R: 0xFF, G: 0xFB, B: 0xF2, A: 255}
		}
		w.OnSoft = mixed(w.On, base, 0.12)
	}
	return w
}

// Glass is how a front is painted through which one sees: a third of its wood on
// the sheet.
func Glass(w Wood, p look.Palette) Wood {
	g := wooden(mixed(p.Sheet, w.Base, 1.0/3), 0, p)
	g.Shade = mixed(w.Base, w.Shade, 0.3)
	return g
}

// legible is the contrast that texts have at least with what they stand on where
// that is lightened and darkened by grain: a little more than the 4.5:1 of WCAG
// 2.2, success criterion 1.4.3.
const legible = 5.2

// dark tells that light letters stand on a colour.
func dark(c color.NRGBA) bool { return luminance(c) < 0.18 }

// luminance is the relative luminance of WCAG 2.2 (W3C Recommendation, section
// "relative luminance", from memory).
func luminance(c color.NRGBA) float64 {
	f := func(v uint8) float64 {
		s := float64(v) / 255
		if s <= 0.04045 {
			return s / 12.92
		}
		return math.Pow((s+0.055)/1.055, 2.4)
	}
	return 0.2126*f(c.R) + 0.7152*f(c.G) + 0.0722*f(c.B)
}

// contrast is the contrast ratio of two colours, 1 to 21.
func contrast(a, b color.NRGBA) float64 {
	x, y := luminance(a), luminance(b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}
