package look

import (
	"bytes"
	"fmt"
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/assets"
	"frontlay/layout/drawing"
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
	return fyne.NewStaticResource(iconName(name, line, over), svg)
}

// SetIcon gives a picture the line icon of a name, and paints it where it was another
// one: Fyne reads the icon's drawing anew for every refresh.
func SetIcon(i *fynecanvas.Image, name string, line, over color.NRGBA) {
	if was := i.Resource; was != nil && was.Name() == iconName(name, line, over) {
		return
	}
	i.Resource = Icon(name, line, over)
	i.Refresh()
}

// iconName tells icons apart; Fyne keeps what it has painted by it.
func iconName(name string, line, over color.NRGBA) string {
	return name + hex(line) + hex(over) + ".svg"
}

// SeverityIcon names the icon that stands for a severity; they differ by their shape.
func SeverityIcon(s drawing.Severity) string {
	switch s {
	case drawing.OfWarning:
		return "warning"
	case drawing.OfAdvice:
		return "advice"
	case drawing.OfAccepted:
		return "accepted"
	default:
		return "error"
	}
}

func hex(c color.NRGBA) string { return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B) }
