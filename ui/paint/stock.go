package paint

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
)

// Stock keeps the images of boards from one picture to the next: what only moved
// is not painted anew, and not handed to the graphics card anew. The zero value
// is an empty one.
type Stock struct {
	boards map[drawing.Tag]*piece
	now    int

	striped map[stripes]image.Image // bands of findings

	of    *drawing.Drawing // whose edges are known
	known *edgesOf
}

// piece is an image on the screen.
type piece struct {
	spec   spec
	raster *fynecanvas.Raster
	used   int
}

// edges are those of a drawing.
func (s *Stock) edges(d *drawing.Drawing) *edgesOf {
	if s.of != d {
		s.of, s.known = d, findEdges(d)
	}
	return s.known
}

func (s *Stock) begin() { s.now++ }

// end throws away what the picture has no use for.
func (s *Stock) end() {
	for t, b := range s.boards {
		if b.used != s.now {
			delete(s.boards, t)
		}
	}
}

// take gives the image for a mark, the one of the picture before where it has
// not changed. It lies at a place and has a size in units of the screen.
func (s *Stock) take(t drawing.Tag, want spec, b Box) *fynecanvas.Raster {
	if s.boards == nil {
		s.boards = map[drawing.Tag]*piece{}
	}
	have := s.boards[t]
	if have == nil || have.spec != want {
		have = &piece{spec: want, raster: fynecanvas.NewRaster(want.paint)}
		have.raster.ScaleMode = fynecanvas.ImageScalePixels
		s.boards[t] = have
	}
	have.used = s.now
	moveTo(have.raster, b)
	return have.raster
}

// moveTo places an object without a refresh of what did not change.
func moveTo(o fyne.CanvasObject, b Box) {
	if o.Position() != b.Place() {
		o.Move(b.Place())
	}
	if o.Size() != b.Extent() {
		o.Resize(b.Extent())
	}
}
