// Package screen is the drawing on the screen: it turns drawings into Fyne's
// objects, and the pointer into run coordinates for the tool of the moment.
package screen

import (
	"fyne.io/fyne/v2"

	"frontlay/layout/plane"
	"frontlay/model/length"
)

// lens maps the run to the screen: scale is screen units a millimetre, x and y
// are where the run's origin is.
type lens struct {
	scale float64
	x, y  float64
}

// Bounds of the zoom: from a whole workshop to a tenth of a millimetre a unit.
const (
	leastScale    = 0.01
	greatestScale = 20
)

func (v lens) px(x length.Length) float32 { return float32(v.x + x.MM()*v.scale) }
func (v lens) py(y length.Length) float32 { return float32(v.y - y.MM()*v.scale) }

// at gives the screen place of a point of the run.
func (v lens) at(p plane.Point) fyne.Position { return fyne.NewPos(v.px(p.X), v.py(p.Y)) }

// run gives the point of the run at a place on the screen.
func (v lens) run(p fyne.Position) plane.Point {
	return plane.Point{
		X: length.FromMM((float64(p.X) - v.x) / v.scale),
		Y: length.FromMM((v.y - float64(p.Y)) / v.scale),
	}
}

// size gives the length that is so many screen units long.
func (v lens) size(px float32) length.Length { return length.FromMM(float64(px) / v.scale) }

// zoomed keeps the run's point at a place on the screen while zooming.
func (v lens) zoomed(factor float64, at fyne.Position) lens {
	s := min(max(v.scale*factor, leastScale), greatestScale)
	f := s / v.scale
	return lens{scale: s, x: float64(at.X) - (float64(at.X)-v.x)*f, y: float64(at.Y) - (float64(at.Y)-v.y)*f}
}

// margins are what a picture needs around its marks for dimensions, in screen
// units.
type margins struct{ left, right, bottom, top float32 }

// fitted shows a rectangle of the run as large as a size on the screen allows.
func fitted(r plane.Rect, m margins, size fyne.Size) lens {
	w, h := float64(size.Width-m.left-m.right), float64(size.Height-m.top-m.bottom)
	rw, rh := max(r.Width().MM(), 1), max(r.Height().MM(), 1)
	s := min(max(min(w/rw, h/rh), leastScale), greatestScale)
	return lens{
		scale: s,
		x:     float64(m.left) + (w-rw*s)/2 - r.Min.X.MM()*s,
		y:     float64(m.top) + (h+rh*s)/2 + r.Min.Y.MM()*s,
	}
}
