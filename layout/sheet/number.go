package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/layout/sheet/lettering"
	"frontlay/model/message"
)

// number writes “page n of m” at the lower right corner of every page, inside
// its margins, and before it the correction that it is printed with.
func number(pages []Page, o Options) {
	for i := range pages {
		area := printable(pages[i].Width, pages[i].Height, o)
		own := pages[i].Placed[len(pages[i].Placed)-1].Drawing
		own.Add(&drawing.Text{
			Tag:    drawing.Tag{Meaning: drawing.Label},
			At:     plane.Point{X: area.Max.X - mm(1), Y: area.Min.Y + mm(1)},
			Anchor: drawing.BottomRight,
			Size:   lettering.Tiny,
			Say:    footer(i+1, len(pages), o.Correction),
		})
	}
}

func footer(page, pages int, c Correction) message.Message {
	m := message.New("page %v of %v", page, pages)
	if c.None() {
		return m
	}
	return message.New("%v  %v", c.say(), m)
}
