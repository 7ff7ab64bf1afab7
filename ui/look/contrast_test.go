package look

import (
	"image/color"
	"math"
	"testing"

	"frontlay/layout/drawing"
)

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

func contrast(a, b color.NRGBA) float64 {
	x, y := luminance(a), luminance(b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

var palettes = map[string]Palette{"light": Light(), "dark": Dark(), "contrast": Contrast(), "dark contrast": DarkContrast()}

// atLeast fails where one of the colours has less contrast than a ratio on one of
// the grounds.
func atLeast(t *testing.T, ratio float64, name string, colours, grounds map[string]color.NRGBA) {
	t.Helper()
	for what, c := range colours {
		for on, b := range grounds {
			if r := contrast(c, b); r < ratio {
				t.Errorf("%s: %s on %s has %.2f:1, less than %v:1", name, what, on, r, ratio)
			}
		}
	}
}

// Text must have a contrast of at least 4.5:1 (WCAG 2.2, success criterion
// 1.4.3, from memory) against everything it stands on.
func TestTextContrast(t *testing.T) {
	const text = 4.5
	type colours = map[string]color.NRGBA
	for name, p := range palettes {
		grounds := colours{"bench": p.Bench, "panel": p.Panel, "sheet": p.Sheet, "field": p.Field, "accent tint": p.AccentTint}
		signs := colours{"error": p.Error, "warning": p.Warning, "advice": p.Advice, "good": p.Good}
		tints := colours{"error tint": p.ErrorTint, "warning tint": p.WarningTint, "advice tint": p.AdviceTint, "good tint": p.GoodTint}
		boards := colours{"front": p.Maple, "fixed panel": p.FixedPanel, "carcass": p.Birch, "niche": p.Niche}
		atLeast(t, text, name, colours{"ink": p.Ink, "soft": p.Soft, "accent": p.Accent, "guide": p.Guide, "a note": p.Letters(drawing.Note)}, grounds)
		atLeast(t, text, name, signs, grounds)
		atLeast(t, text, name, colours{"ink": p.Ink, "soft": p.Soft}, tints)
		for _, s := range []drawing.Severity{drawing.OfError, drawing.OfWarning, drawing.OfAdvice, drawing.OfAccepted} {
			_, c := p.Severity(s)
			atLeast(t, text, name, colours{"its severity": c}, colours{"its tint": p.Tint(s)})
		}
		atLeast(t, text, name, colours{"good": p.Good}, colours{"its tint": p.GoodTint})
		atLeast(t, text, name, colours{"on a sign": p.OnSign}, signs)
		atLeast(t, text, name, colours{"on accent": p.OnAccent}, colours{"accent": p.Accent})
		atLeast(t, text, name, colours{"ink": p.Ink, "a name": p.OnMaple}, boards)
		atLeast(t, text, name, colours{"a height": p.OnMapleSoft}, colours{"front": p.Maple, "fixed panel": p.FixedPanel})
	}
}

// Edges of fields and controls, and of what is told by its edge in the drawing,
// must have at least 3:1 (WCAG 2.2, success criterion 1.4.11, from memory).
func TestEdgeContrast(t *testing.T) {
	const edge = 3
	type colours = map[string]color.NRGBA
	for name, p := range palettes {
		grounds := colours{"panel": p.Panel, "sheet": p.Sheet, "field": p.Field}
		atLeast(t, edge, name, colours{"a field's edge": p.FieldEdge, "accent": p.Accent}, grounds)
		atLeast(t, edge, name, colours{"a runner's edge": p.RunnerEdge, "a drawer bottom's edge": p.BottomEdge, "a hidden edge": p.Hidden},
			colours{"sheet": p.Sheet, "front": p.Maple})
		atLeast(t, edge, name, colours{"error": p.Error, "warning": p.Warning, "advice": p.Advice}, colours{"front": p.Maple})
	}
}

// What Fyne's menus make of the text colour for an item's keys must still be
// legible; the arithmetic is that of Fyne 2.7.4, widget/menu_item.go.
func TestKeysInMenusAreLegible(t *testing.T) {
	for name, p := range palettes {
		r, g, b, a := ink{p.Ink}.RGBA()
		faded := color.NRGBA{R: uint8(r), G: uint8(g), B: uint8(b), A: uint8(uint32(float32(a) * 0.95))}
		mix := func(over, under uint8) uint8 {
			return uint8((int(over)*int(faded.A) + int(under)*(255-int(faded.A))) / 255)
		}
		shown := color.NRGBA{R: mix(faded.R, p.Field.R), G: mix(faded.G, p.Field.G), B: mix(faded.B, p.Field.B), A: 255}
		if c := contrast(shown, p.Field); c < 4.5 {
			t.Errorf("%s: keys in menus have %.2f:1", name, c)
		}
	}
}

// The text colour keeps its brightness when its alpha is divided out again, as Fyne
// does for icons in the colour of text.
func TestTextColourIsSound(t *testing.T) {
	for name, p := range palettes {
		c := color.NRGBAModel.Convert(ink{p.Ink}).(color.NRGBA)
		if r := contrast(c, p.Ink); r > 1.1 {
			t.Errorf("%s: an icon in the colour of text is %v, not %v", name, c, p.Ink)
		}
	}
}

// A finding's severity must be told without colour too (WCAG 2.2, success
// criterion 1.4.1, from memory), and marks must have the colour of their words.
func TestSeveritiesDiffer(t *testing.T) {
	all := []drawing.Severity{drawing.OfError, drawing.OfWarning, drawing.OfAdvice, drawing.OfAccepted}
	for name, p := range palettes {
		for i, a := range all {
			sign, c := p.Severity(a)
			if pen := p.TagPen(drawing.Tag{Meaning: drawing.FindingMark, Severity: a}); pen.Line != c {
				t.Errorf("%s: the hatch of severity %v is drawn in %v, its words in %v", name, a, pen.Line, c)
			}
			for _, b := range all[:i] {
				if s, d := p.Severity(b); s == sign || d == c {
					t.Errorf("%s: severities %v and %v have the same sign or colour", name, a, b)
				}
			}
		}
	}
}
