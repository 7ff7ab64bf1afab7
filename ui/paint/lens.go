package paint

import (
	"math"

	"fyne.io/fyne/v2"

	"frontlay/layout/plane"
	"frontlay/model/length"
)

// Lens maps lengths of a drawing to units of the screen: Scale is units a
// millimetre, X and Y are where the drawing's origin is.
type Lens struct {
	Scale float64
	X, Y  float64
}

// Bounds of the zoom: from a whole workshop to a tenth of a millimetre a unit.
const (
	LeastScale    = 0.01
	GreatestScale = 20
)

// PX gives the place of an x on the screen, PY that of a y.
func (v Lens) PX(x length.Length) float32 { return float32(v.X + x.MM()*v.Scale) }

// PY gives the place of a y on the screen, which is counted down there.
func (v Lens) PY(y length.Length) float32 { return float32(v.Y - y.MM()*v.Scale) }

// At gives the place of a point on the screen.
func (v Lens) At(p plane.Point) fyne.Position { return fyne.NewPos(v.PX(p.X), v.PY(p.Y)) }

// Run gives the point at a place on the screen.
func (v Lens) Run(p fyne.Position) plane.Point {
	return plane.Point{
		X: length.FromMM((float64(p.X) - v.X) / v.Scale),
		Y: length.FromMM((v.Y - float64(p.Y)) / v.Scale),
	}
}

// Size gives the length that is so many units of the screen long.
func (v Lens) Size(units float32) length.Length { return length.FromMM(float64(units) / v.Scale) }

// Box gives the exact place and size of a rectangle on the screen.
func (v Lens) Box(r plane.Rect) (fyne.Position, fyne.Size) {
	a, b := v.At(plane.Point{X: r.Min.X, Y: r.Max.Y}), v.At(plane.Point{X: r.Max.X, Y: r.Min.Y})
	return a, fyne.NewSize(b.X-a.X, b.Y-a.Y)
}

// Zoomed keeps the drawing's point at a place on the screen while zooming.
func (v Lens) Zoomed(factor float64, at fyne.Position) Lens {
	s := min(max(v.Scale*factor, LeastScale), GreatestScale)
	f := s / v.Scale
	return Lens{Scale: s, X: float64(at.X) - (float64(at.X)-v.X)*f, Y: float64(at.Y) - (float64(at.Y)-v.Y)*f}
}

// whole is the lens whose origin lies on a whole pixel, with so many pixels a
// unit: a picture that is moved moves as one.
func (v Lens) whole(pixels float64) Lens {
	v.X, v.Y = math.Round(v.X*pixels)/pixels, math.Round(v.Y*pixels)/pixels
	return v
}

// Margins are what a picture needs around its marks for dimensions, in units of
// the screen.
type Margins struct{ Left, Right, Bottom, Top float32 }

// over is how much of the height that a picture leaves free is above it: less than
// below, where cards and buttons stand.
const over = 0.15

// Fitted shows a rectangle of a drawing as large as a size on the screen allows.
func Fitted(r plane.Rect, m Margins, size fyne.Size) Lens {
	w, h := float64(size.Width-m.Left-m.Right), float64(size.Height-m.Top-m.Bottom)
	rw, rh := max(r.Width().MM(), 1), max(r.Height().MM(), 1)
	s := min(max(min(w/rw, h/rh), LeastScale), GreatestScale)
	return Lens{
		Scale: s,
		X:     float64(m.Left) + (w-rw*s)/2 - r.Min.X.MM()*s,
		Y:     float64(m.Top) + (h-rh*s)*over + rh*s + r.Min.Y.MM()*s,
	}
}
