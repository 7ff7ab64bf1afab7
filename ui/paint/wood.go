package paint

import (
	"image/color"
	"math"
	"strings"

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

// material is a board by the words that people use for it.
type material struct {
	words       message.Message // parted by commas
	light, dark uint32          // under a light and under a dark palette
	figure      float64
}

// materials are what a board can be told to be of; what is first counts where a
// name has the words of several, so that a black walnut is a walnut.
var materials = []material{
	{message.New("oak"), 0xDDBF8E, 0x62503A, 1},
	{message.New("beech"), 0xE6C4A0, 0x6A5240, 0.6},
	{message.New("walnut"), 0x7C593E, 0x4B382A, 1},
	{message.New("pine, spruce"), 0xEFD69F, 0x6E5B39, 1},
	{message.New("birch"), 0xE5D5B2, 0x5F5545, 0.6},
	{message.New("white"), 0xF5F3EE, 0x5B5E61, 0},
	{message.New("grey, gray"), 0xBDC0C1, 0x4C5054, 0},
	{message.New("black"), 0x38393B, 0x1B1C1E, 0},
}

// WoodOf tells how a board is painted: by the word for its material in a
// language or in English, else as maple.
func WoodOf(b model.Board, say message.Language, p look.Palette) Wood {
	w := Maple(p)
	if !p.Flat {
		name := strings.ToLower(b.Material)
		for _, m := range materials {
			if m.names(name, say) {
				c := m.light
				if dark(p.Sheet) {
					c = m.dark
				}
				w = wooden(color.NRGBA{R: uint8(c >> 16), G: uint8(c >> 8), B: uint8(c), A: 255}, m.figure, p)
				break
			}
		}
	}
	w.Upright = b.Grain == "vertical"
	return w
}

// Maple is how a board is painted that tells no other material.
func Maple(p look.Palette) Wood { return wooden(p.Maple, 1, p) }

// CarcassWood is how the carcass is painted.
func CarcassWood(p look.Palette) Wood { return wooden(p.Birch, 0.6, p) }

// names tells that a name in small letters has one of the material's words.
func (m material) names(name string, say message.Language) bool {
	for _, words := range []string{say.Say(m.words), m.words.Text} {
		for word := range strings.SplitSeq(words, ",") {
			if strings.Contains(name, strings.ToLower(strings.TrimSpace(word))) {
				return true
			}
		}
	}
	return false
}

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
