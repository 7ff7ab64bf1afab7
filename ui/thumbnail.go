package ui

import (
	"frontlay/layout/drawing"
)

// withoutDimensions is a drawing for a small picture: no dimensions and no texts.
func withoutDimensions(d *drawing.Drawing) *drawing.Drawing {
	small := &drawing.Drawing{Title: d.Title}
	for _, m := range d.Marks {
		switch m.(type) {
		case *drawing.Dimension, *drawing.Text:
		default:
			small.Add(m)
		}
	}
	return small
}
