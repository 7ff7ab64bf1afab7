package look

import "image/color"

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
