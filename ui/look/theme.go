package look

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynetheme "fyne.io/fyne/v2/theme"
)

// Theme is our look for Fyne's widgets.
type Theme struct {
	Mode  Mode
	Large bool // letters larger by largerBy
}

// Palette gives the colours that hold under a desktop's variant.
func (t *Theme) Palette(v fyne.ThemeVariant) Palette {
	if t.Mode == System && v == fynetheme.VariantDark {
		return Dark()
	}
	return t.Mode.Palette()
}

// Color gives Fyne the colour of a name.
func (t *Theme) Color(n fyne.ThemeColorName, v fyne.ThemeVariant) color.Color {
	p := t.Palette(v)
	switch n {
	case fynetheme.ColorNameBackground:
		return p.Panel
	case fynetheme.ColorNameInputBackground, fynetheme.ColorNameMenuBackground, fynetheme.ColorNameOverlayBackground,
		fynetheme.ColorNameButton, fynetheme.ColorNameDisabledButton:
		return p.Field
	case fynetheme.ColorNameHeaderBackground:
		return p.Panel
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
	case fynetheme.ColorNameInputBorder:
		return p.FieldEdge
	case fynetheme.ColorNameSeparator:
		return p.Line
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
	case fynetheme.ColorNameForegroundOnPrimary:
		return p.OnAccent
	case fynetheme.ColorNameForegroundOnError, fynetheme.ColorNameForegroundOnSuccess, fynetheme.ColorNameForegroundOnWarning:
		return p.OnSign
	}
	return fynetheme.DefaultTheme().Color(n, v)
}

// Font gives Fyne's own letters.
func (t *Theme) Font(s fyne.TextStyle) fyne.Resource { return fynetheme.DefaultTheme().Font(s) }

// Icon gives Fyne's own icons.
func (t *Theme) Icon(n fyne.ThemeIconName) fyne.Resource { return fynetheme.DefaultTheme().Icon(n) }

// Sizes of letters, in units of the screen. Large text is larger by largerBy.
const (
	captionText   = 11.5 // labels and units
	secondaryText = 12.5 // chips, what is told beside
	bodyText      = 13   // body, fields, figures; bold: heads of sections
	nameText      = 18   // bold: the name of what is selected
	titleText     = 21   // titles of pages
	largerBy      = 1.4
)

// Size gives Fyne the size of a name.
func (t *Theme) Size(n fyne.ThemeSizeName) float32 {
	switch n {
	case fynetheme.SizeNameInputRadius, fynetheme.SizeNameSelectionRadius:
		return 5
	case fynetheme.SizeNameInnerPadding:
		return 6
	case fynetheme.SizeNameInputBorder, fynetheme.SizeNameSeparatorThickness:
		return 1
	}
	s := fynetheme.DefaultTheme().Size(n)
	switch n {
	case fynetheme.SizeNameCaptionText:
		s = captionText
	case fynetheme.SizeNameText:
		s = bodyText
	case fynetheme.SizeNameSubHeadingText:
		s = nameText
	case fynetheme.SizeNameHeadingText:
		s = titleText
	case fynetheme.SizeNameInlineIcon: // grows with the letters beside it
	default:
		return s
	}
	if t.Large {
		s *= largerBy
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

// Large tells that the letters are larger than usual.
func Large() bool { return Text() > bodyText }

// Sizes of letters as the user has chosen them, in units of the screen.

// Caption is the size of labels and units.
func Caption() float32 { return fynetheme.Size(fynetheme.SizeNameCaptionText) }

// Secondary is the size of chips and of what is told beside.
func Secondary() float32 { return Text() * secondaryText / bodyText }

// Text is the size of plain text and, bold, of heads of sections.
func Text() float32 { return fynetheme.Size(fynetheme.SizeNameText) }

// Title is the size of titles of pages.
func Title() float32 { return fynetheme.Size(fynetheme.SizeNameHeadingText) }

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
	part := func(v uint8) uint32 { return min(uint32(v)*byteTo16, alphaForMenus) }
	return part(c.R), part(c.G), part(c.B), alphaForMenus
}
