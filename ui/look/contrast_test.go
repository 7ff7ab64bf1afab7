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

// Text must have a contrast of at least 4.5:1 (WCAG 2.2, success criterion
// 1.4.3) against everything it stands on.
func TestTextContrast(t *testing.T) {
	for name, p := range map[string]Palette{"light": Light(), "dark": Dark(), "contrast": Contrast()} {
		for text, c := range map[string]color.NRGBA{
			"ink": p.Ink, "soft": p.Soft, "accent": p.Accent, "error": p.Error, "warning": p.Warning,
			"advice": p.Advice, "good": p.Good, "guide": p.Guide,
		} {
			for on, b := range map[string]color.NRGBA{"desk": p.Desk, "paper": p.Paper, "raised": p.Raised} {
				if r := contrast(c, b); r < 4.5 {
					t.Errorf("%s: %s on %s has %.2f:1", name, text, on, r)
				}
			}
		}
		for on, b := range map[string]color.NRGBA{"front": p.Front, "panel": p.Panel, "niche": p.Inside, "cover": p.Cover, "carcass": p.Carcass, "drawer bottom": p.BottomIn} {
			if r := contrast(p.Ink, b); r < 4.5 {
				t.Errorf("%s: ink on %s has %.2f:1", name, on, r)
			}
		}
		for text, c := range map[string]color.NRGBA{
			"error": p.Error, "warning": p.Warning, "advice": p.Advice, "accepted": p.Soft, "a note": p.Letters(drawing.Note), "good": p.Good,
		} {
			for on, b := range map[string]color.NRGBA{"a front": p.Front, "a panel": p.Panel, "paper": p.Paper} {
				if r := contrast(c, b); r < 4.5 {
					t.Errorf("%s: %s on %s has %.2f:1", name, text, on, r)
				}
			}
		}
		if r := contrast(p.OnAccent, p.Accent); r < 4.5 {
			t.Errorf("%s: text on accent has %.2f:1", name, r)
		}
	}
}

// What Fyne's menus make of the text colour for an item's keys must still be
// legible; the arithmetic is that of Fyne 2.7.4, widget/menu_item.go.
func TestKeysInMenusAreLegible(t *testing.T) {
	for name, p := range map[string]Palette{"light": Light(), "dark": Dark(), "contrast": Contrast()} {
		r, g, b, a := ink{p.Ink}.RGBA()
		faded := color.NRGBA{R: uint8(r), G: uint8(g), B: uint8(b), A: uint8(uint32(float32(a) * 0.95))}
		mix := func(over, under uint8) uint8 {
			return uint8((int(over)*int(faded.A) + int(under)*(255-int(faded.A))) / 255)
		}
		shown := color.NRGBA{R: mix(faded.R, p.Paper.R), G: mix(faded.G, p.Paper.G), B: mix(faded.B, p.Paper.B), A: 255}
		if c := contrast(shown, p.Paper); c < 4.5 {
			t.Errorf("%s: keys in menus have %.2f:1", name, c)
		}
	}
}

// A finding's severity must be told without colour too (WCAG 2.2, success
// criterion 1.4.1, from memory), and marks must have the colour of their words.
func TestSeveritiesDiffer(t *testing.T) {
	all := []drawing.Severity{drawing.OfError, drawing.OfWarning, drawing.OfAdvice, drawing.OfAccepted}
	for name, p := range map[string]Palette{"light": Light(), "dark": Dark(), "contrast": Contrast()} {
		for i, a := range all {
			sign, c := p.Severity(a)
			if pen := p.TagPen(drawing.Tag{Meaning: drawing.Shortfall, Severity: a}); pen.Line != c {
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
