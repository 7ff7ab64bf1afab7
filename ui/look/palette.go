// Package look is how the window looks: colours, sizes, and the pens of the
// drawing.
package look

import "image/color"

// Palette is a set of colours that go together. Text colours have at least
// 4.5:1 against Paper and Desk (WCAG 2.2, success criterion 1.4.3).
type Palette struct {
	Desk     color.NRGBA // around the paper
	Paper    color.NRGBA // behind text and fields
	Raised   color.NRGBA // buttons, menus
	Ink      color.NRGBA // text and outlines
	Soft     color.NRGBA // secondary text, dimensions
	Faint    color.NRGBA // separators, grid
	Accent   color.NRGBA // selection, focus, primary buttons
	OnAccent color.NRGBA
	Front    color.NRGBA // surface of a front
	Panel    color.NRGBA // surface of a fixed panel
	Carcass  color.NRGBA // surface of the carcass
	Inside   color.NRGBA // open niche
	Hidden   color.NRGBA // edges behind something
	Bottom   color.NRGBA // edge of a drawer bottom
	BottomIn color.NRGBA // surface of a drawer bottom
	Cover    color.NRGBA // the band of cover
	Guide    color.NRGBA // lines the hand is drawn to
	Error    color.NRGBA
	Warning  color.NRGBA
	Advice   color.NRGBA
	Good     color.NRGBA
}

func rgb(v uint32) color.NRGBA {
	return color.NRGBA{R: uint8(v >> 16), G: uint8(v >> 8), B: uint8(v), A: 255}
}

// Mode names a palette.
type Mode uint8

// The palettes. System follows the desktop.
const (
	System Mode = iota
	LightMode
	DarkMode
	ContrastMode
)

// Light is for a bright room: warm grey desk, ink of a blue-black pencil.
func Light() Palette {
	return Palette{
		Desk: rgb(0xE7E4DC), Paper: rgb(0xFBFAF6), Raised: rgb(0xF1EEE6), Ink: rgb(0x1F2A33), Soft: rgb(0x4E5A63),
		Faint: rgb(0xCFCABD), Accent: rgb(0x1C5F73), OnAccent: rgb(0xFFFFFF),
		Front: rgb(0xF6EBD3), Panel: rgb(0xE9E2D0), Carcass: rgb(0xDDD3BC), Inside: rgb(0xD3CDC0),
		Hidden: rgb(0x6A7178), Bottom: rgb(0x7A5A2C), BottomIn: rgb(0xDCC08E), Cover: rgb(0xC9DDD2), Guide: rgb(0xA03A7A),
		Error: rgb(0xA8201A), Warning: rgb(0x7A4E00), Advice: rgb(0x2C5486), Good: rgb(0x2B6340),
	}
}

// Dark is for a dim room.
func Dark() Palette {
	return Palette{
		Desk: rgb(0x1B1F22), Paper: rgb(0x242A2E), Raised: rgb(0x30373C), Ink: rgb(0xECE8DE), Soft: rgb(0xB4BCC1),
		Faint: rgb(0x444C52), Accent: rgb(0x7CC4D8), OnAccent: rgb(0x10252C),
		Front: rgb(0x4A4436), Panel: rgb(0x3F3C35), Carcass: rgb(0x35322B), Inside: rgb(0x202325),
		Hidden: rgb(0xA0A7AC), Bottom: rgb(0xD0A868), BottomIn: rgb(0x6B5735), Cover: rgb(0x35544A), Guide: rgb(0xF09ACB),
		Error: rgb(0xFF9A8F), Warning: rgb(0xF2BE5C), Advice: rgb(0x9CC4F5), Good: rgb(0x8FD3A5),
	}
}

// Contrast is black on white with strong colours.
func Contrast() Palette {
	return Palette{
		Desk: rgb(0xFFFFFF), Paper: rgb(0xFFFFFF), Raised: rgb(0xFFFFFF), Ink: rgb(0x000000), Soft: rgb(0x4A4A4A),
		Faint: rgb(0x606060), Accent: rgb(0x00308F), OnAccent: rgb(0xFFFFFF),
		Front: rgb(0xFFFFFF), Panel: rgb(0xF0F0F0), Carcass: rgb(0xE2E2E2), Inside: rgb(0xCFCFCF),
		Hidden: rgb(0x303030), Bottom: rgb(0x5A3A00), BottomIn: rgb(0xE6CFA6), Cover: rgb(0xCFE8D8), Guide: rgb(0x8A0060),
		Error: rgb(0x9E0000), Warning: rgb(0x5C3A00), Advice: rgb(0x00308F), Good: rgb(0x00471B),
	}
}
