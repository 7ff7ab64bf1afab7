package look

import (
	"bytes"
	"fmt"
	"image/color"

	"fyne.io/fyne/v2"

	"frontlay/assets"
)

// IconSize is the side of a line icon in units of the screen, with the letters as
// the user has chosen them.
func IconSize() float32 { return 20 * Text() / bodyText }

// Icon is a line icon of the program in a colour, with another one over its filled
// parts; nil: there is none of that name.
func Icon(name string, line, over color.NRGBA) fyne.Resource {
	svg, ok := assets.Icon(name)
	if !ok {
		return nil
	}
	svg = bytes.ReplaceAll(svg, []byte("currentColor"), []byte(hex(line)))
	svg = bytes.ReplaceAll(svg, []byte("white"), []byte(hex(over)))
	// Fyne keeps what it has painted by the name.
	return fyne.NewStaticResource(name+hex(line)+hex(over)+".svg", svg)
}

func hex(c color.NRGBA) string { return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B) }
