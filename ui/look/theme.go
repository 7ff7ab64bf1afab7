package look

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynetheme "fyne.io/fyne/v2/theme"
)

// Theme is our look for Fyne's widgets.
type Theme struct {
	Mode  Mode
	Large bool // text half as large again
}

// Palette gives the colours that hold under a desktop's variant.
func (t *Theme) Palette(v fyne.ThemeVariant) Palette {
	switch {
	case t.Mode == ContrastMode:
		return Contrast()
	case t.Mode == DarkMode, t.Mode == System && v == fynetheme.VariantDark:
		return Dark()
	default:
		return Light()
	}
}

// Color gives Fyne the colour of a name.
func (t *Theme) Color(n fyne.ThemeColorName, v fyne.ThemeVariant) color.Color {
	p := t.Palette(v)
	switch n {
	case fynetheme.ColorNameBackground:
		return p.Desk
	case fynetheme.ColorNameInputBackground, fynetheme.ColorNameMenuBackground, fynetheme.ColorNameOverlayBackground:
		return p.Paper
	case fynetheme.ColorNameButton, fynetheme.ColorNameHeaderBackground, fynetheme.ColorNameDisabledButton:
		return p.Raised
	case fynetheme.ColorNameForeground:
		return ink{p.Ink}
	case fynetheme.ColorNamePlaceHolder, fynetheme.ColorNameDisabled:
		return p.Soft
	case fynetheme.ColorNamePrimary, fynetheme.ColorNameHyperlink:
		return p.Accent
	case fynetheme.ColorNameFocus:
		return faded(p.Accent, 0x70)
	case fynetheme.ColorNameSelection:
		return faded(p.Accent, 0x38)
	case fynetheme.ColorNameHover:
		return faded(p.Ink, 0x14)
	case fynetheme.ColorNamePressed:
		return faded(p.Ink, 0x28)
	case fynetheme.ColorNameInputBorder, fynetheme.ColorNameSeparator:
		return p.Faint
	case fynetheme.ColorNameScrollBar:
		return faded(p.Ink, 0x60)
	case fynetheme.ColorNameScrollBarBackground:
		return faded(p.Ink, 0x10)
	case fynetheme.ColorNameError:
		return p.Error
	case fynetheme.ColorNameWarning:
		return p.Warning
	case fynetheme.ColorNameSuccess:
		return p.Good
	case fynetheme.ColorNameForegroundOnPrimary, fynetheme.ColorNameForegroundOnError,
		fynetheme.ColorNameForegroundOnSuccess, fynetheme.ColorNameForegroundOnWarning:
		return p.OnAccent
	}
	return fynetheme.DefaultTheme().Color(n, v)
}

// Font gives Fyne's own letters.
func (t *Theme) Font(s fyne.TextStyle) fyne.Resource { return fynetheme.DefaultTheme().Font(s) }

// Icon gives Fyne's own icons.
func (t *Theme) Icon(n fyne.ThemeIconName) fyne.Resource { return fynetheme.DefaultTheme().Icon(n) }

// Size gives Fyne the size of a name.
func (t *Theme) Size(n fyne.ThemeSizeName) float32 {
	s := fynetheme.DefaultTheme().Size(n)
	switch n {
	case fynetheme.SizeNameInputRadius, fynetheme.SizeNameSelectionRadius:
		s = 3
	case fynetheme.SizeNameText:
		s = 13
	case fynetheme.SizeNameSubHeadingText:
		s = 16
	case fynetheme.SizeNameHeadingText:
		s = 21
	case fynetheme.SizeNameInnerPadding:
		s = 6
	}
	if t.Large {
		switch n {
		case fynetheme.SizeNameText, fynetheme.SizeNameCaptionText, fynetheme.SizeNameHeadingText,
			fynetheme.SizeNameSubHeadingText, fynetheme.SizeNameInlineIcon:
			s *= 1.4
		}
	}
	return s
}

func faded(c color.NRGBA, alpha uint8) color.NRGBA {
	c.A = alpha
	return c
}

// Current gives the palette of the running application, the light one where its
// theme is not ours.
func Current() Palette {
	a := fyne.CurrentApp()
	if a == nil {
		return Light()
	}
	if t, ok := a.Settings().Theme().(*Theme); ok {
		return t.Palette(a.Settings().ThemeVariant())
	}
	return Light()
}

// Text is the size of plain text, as the user has chosen it.
func Text() float32 { return fynetheme.Size(fynetheme.SizeNameText) }

// ink is a text colour that Fyne's menus can fade. They show the keys of an item
// in the text colour with 95 % of its alpha, but keep only the low byte of that
// 16-bit figure: of a full alpha 0x32 is left, which is too pale to read. The
// alpha here is 98.7 %, of which 0xFF is left.
type ink struct{ color.NRGBA }

// alphaForMenus is the 16-bit alpha whose 95 % ends in 0xFF.
const alphaForMenus = 0xFCA1

// RGBA gives the colour, premultiplied, in 16 bits.
func (c ink) RGBA() (r, g, b, a uint32) {
	const byteTo16 = 0x101
	return uint32(c.R) * byteTo16, uint32(c.G) * byteTo16, uint32(c.B) * byteTo16, alphaForMenus
}
