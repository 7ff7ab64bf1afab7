// Package look is how the window looks: colours, sizes, and the pens of the
// drawing.
package look

import (
	"image/color"

	"frontlay/layout/wood"
)

// Palette is a set of colours that go together. Colours of text have at least
// 4.5:1 against Bench, Panel, Sheet and Field (WCAG 2.2, success criterion
// 1.4.3), edges of fields and controls 3:1 against what they lie on (1.4.11).
type Palette struct {
	Bench     color.NRGBA // around the sheet
	Panel     color.NRGBA // bars, inspector, pages
	Sheet     color.NRGBA // of paper, under the drawing
	Field     color.NRGBA // fields, buttons, menus
	FieldEdge color.NRGBA // around fields and controls
	Line      color.NRGBA // between parts, grid; it tells nothing
	Shadow    color.NRGBA // under the sheet and cards, the darkest part of it

	Ink        color.NRGBA // text and outlines
	Soft       color.NRGBA // secondary text, dimensions
	Accent     color.NRGBA // selection, focus, the chosen tool
	OnAccent   color.NRGBA // text on Accent
	AccentTint color.NRGBA // under what is chosen
	Guide      color.NRGBA // lines the hand is drawn to

	Maple        color.NRGBA // surface of a front whose material says nothing else
	OnMaple      color.NRGBA // text on it
	OnMapleSoft  color.NRGBA // secondary text on it
	Grain        color.NRGBA // hatch of cut wood, the darkest of its grain
	Birch        color.NRGBA // carcass
	FixedPanel   color.NRGBA // surface of a fixed panel
	Niche        color.NRGBA // open niche
	Gap          color.NRGBA // shadow between fronts
	Runner       color.NRGBA // runner and drawer side
	RunnerEdge   color.NRGBA
	DrawerBottom color.NRGBA
	BottomEdge   color.NRGBA
	Hidden       color.NRGBA // edges behind something
	Cover        color.NRGBA // the band of cover

	Error, ErrorTint     color.NRGBA
	Warning, WarningTint color.NRGBA
	Advice, AdviceTint   color.NRGBA
	Good, GoodTint       color.NRGBA
	OnSign               color.NRGBA // text on Error, Warning, Advice and Good

	// Flat tells that surfaces have one colour and edges a line, without grain,
	// shade and shadow.
	Flat bool
}

func rgb(v uint32) color.NRGBA {
	return color.NRGBA{R: uint8(v >> 16), G: uint8(v >> 8), B: uint8(v), A: 255}
}

// Mode names a palette.
type Mode uint8

// The palettes. System follows the desktop. The numbers are kept in the settings
// of the program.
const (
	System Mode = iota
	LightMode
	DarkMode
	ContrastMode
	DarkContrastMode
)

// Palette gives the colours of a mode, those of LightMode for System.
func (m Mode) Palette() Palette {
	switch m {
	case DarkMode:
		return Dark()
	case ContrastMode:
		return Contrast()
	case DarkContrastMode:
		return DarkContrast()
	default:
		return Light()
	}
}

// Light is for a bright room: white paper on a bench of warm grey, boards of maple.
func Light() Palette {
	return Palette{
		Bench: rgb(0xDDD9D0), Panel: rgb(0xF3F1EC), Sheet: rgb(0xFFFEFA), Field: rgb(0xFFFFFF), FieldEdge: rgb(0x8C877B),
		Line: rgb(0xD5D0C5), Shadow: faded(rgb(0x1D2429), 0x40),
		Ink: rgb(0x1D2429), Soft: rgb(0x535B61), Accent: rgb(0x2B4C9B), OnAccent: rgb(0xFFFFFF), AccentTint: rgb(0xDCE3F4), Guide: rgb(0x8E2F6B),
		Maple: rgb(wood.Front.Light), OnMaple: rgb(0x2A1F10), OnMapleSoft: rgb(0x4A3A22), Grain: rgb(0x8A7449), Birch: rgb(wood.Carcass.Light),
		FixedPanel: rgb(0xE6D3AE), Niche: rgb(0xCFC3AC), Gap: rgb(0x3A2E20),
		Runner: rgb(0x9FADB5), RunnerEdge: rgb(0x55656F), DrawerBottom: rgb(0xD39B55), BottomEdge: rgb(0x7A4C17),
		Hidden: rgb(0x55656F), Cover: rgb(0xC3DCC9),
		Error: rgb(0xAD2418), ErrorTint: rgb(0xF9E0DB), Warning: rgb(0x7D4E00), WarningTint: rgb(0xFAE8C2),
		Advice: rgb(0x2A5C92), AdviceTint: rgb(0xDDE9F5), Good: rgb(0x24653D), GoodTint: rgb(0xDDEEE2), OnSign: rgb(0xFFFFFF),
	}
}

// Dark is for a dim room.
func Dark() Palette {
	return Palette{
		Bench: rgb(0x121416), Panel: rgb(0x1D2023), Sheet: rgb(0x262A2E), Field: rgb(0x2C3136), FieldEdge: rgb(0x7C858D),
		Line: rgb(0x363C42), Shadow: faded(rgb(0x000000), 0x80),
		Ink: rgb(0xF0EDE6), Soft: rgb(0xB2BAC1), Accent: rgb(0x8FB0FF), OnAccent: rgb(0x0E1A38), AccentTint: rgb(0x2B3A5E), Guide: rgb(0xF09ACB),
		Maple: rgb(wood.Front.Dark), OnMaple: rgb(0xFFFBF2), OnMapleSoft: rgb(0xE6DCC8), Grain: rgb(0xA08A5C), Birch: rgb(wood.Carcass.Dark),
		FixedPanel: rgb(0x5C4E38), Niche: rgb(0x33302A), Gap: rgb(0x0C0B09),
		Runner: rgb(0x7F97A6), RunnerEdge: rgb(0xB4C3CD), DrawerBottom: rgb(0xB8813F), BottomEdge: rgb(0xF0C382),
		Hidden: rgb(0xB4C3CD), Cover: rgb(0x2C5540),
		Error: rgb(0xFF9485), ErrorTint: rgb(0x43251F), Warning: rgb(0xF0BD5B), WarningTint: rgb(0x3D3119),
		Advice: rgb(0x9CC4F5), AdviceTint: rgb(0x1F3247), Good: rgb(0x8AD3A4), GoodTint: rgb(0x1E3628), OnSign: rgb(0x14100C),
	}
}

// Contrast is black on white with strong colours.
func Contrast() Palette {
	return Palette{
		Bench: rgb(0xFFFFFF), Panel: rgb(0xFFFFFF), Sheet: rgb(0xFFFFFF), Field: rgb(0xFFFFFF), FieldEdge: rgb(0x000000),
		Line: rgb(0x606060),
		Ink:  rgb(0x000000), Soft: rgb(0x3A3A3A), Accent: rgb(0x00308F), OnAccent: rgb(0xFFFFFF), AccentTint: rgb(0xDCE6FF), Guide: rgb(0x8A0060),
		Maple: rgb(0xFFFFFF), OnMaple: rgb(0x000000), OnMapleSoft: rgb(0x303030), Grain: rgb(0x404040), Birch: rgb(0xE8E8E8),
		FixedPanel: rgb(0xF2F2F2), Niche: rgb(0xD8D8D8), Gap: rgb(0x000000),
		Runner: rgb(0xC4CCD2), RunnerEdge: rgb(0x101820), DrawerBottom: rgb(0xE6CFA6), BottomEdge: rgb(0x4A2E00),
		Hidden: rgb(0x303030), Cover: rgb(0xCFE8D8),
		Error: rgb(0x9E0000), ErrorTint: rgb(0xFFE6E2), Warning: rgb(0x5C3A00), WarningTint: rgb(0xFFEFC8),
		Advice: rgb(0x00308F), AdviceTint: rgb(0xE4ECFF), Good: rgb(0x00471B), GoodTint: rgb(0xDDF3E4), OnSign: rgb(0xFFFFFF),
		Flat: true,
	}
}

// DarkContrast is white on black with strong colours.
func DarkContrast() Palette {
	return Palette{
		Bench: rgb(0x000000), Panel: rgb(0x000000), Sheet: rgb(0x000000), Field: rgb(0x000000), FieldEdge: rgb(0xFFFFFF),
		Line: rgb(0x9A9A9A),
		Ink:  rgb(0xFFFFFF), Soft: rgb(0xD4D4D4), Accent: rgb(0x9CC2FF), OnAccent: rgb(0x000000), AccentTint: rgb(0x0B2550), Guide: rgb(0xFF9FDC),
		Maple: rgb(0x000000), OnMaple: rgb(0xFFFFFF), OnMapleSoft: rgb(0xDADADA), Grain: rgb(0xB0B0B0), Birch: rgb(0x202020),
		FixedPanel: rgb(0x161616), Niche: rgb(0x303030), Gap: rgb(0xFFFFFF),
		Runner: rgb(0x36424A), RunnerEdge: rgb(0xE4F0F8), DrawerBottom: rgb(0x4A3412), BottomEdge: rgb(0xFFD79A),
		Hidden: rgb(0xD0D0D0), Cover: rgb(0x11402A),
		Error: rgb(0xFFA79A), ErrorTint: rgb(0x401008), Warning: rgb(0xFFD36B), WarningTint: rgb(0x382600),
		Advice: rgb(0xA9D0FF), AdviceTint: rgb(0x06284C), Good: rgb(0x93EBB2), GoodTint: rgb(0x063A1D), OnSign: rgb(0x000000),
		Flat: true,
	}
}
