package pdfout

import (
	"bytes"
	"io"
	"testing"

	"github.com/jung-kurt/gofpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"

	"frontlay/layout/ink"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/sheet"
	"frontlay/model"
	"frontlay/model/length"
)

// hundred is a plan of 100 drilled fronts, no two alike.
func hundred() *plan.Plan {
	p := &plan.Plan{Project: &model.Project{Title: "Glaze bench"}}
	for i := range 100 {
		f := lopsided().Fronts[0]
		f.Number = i + 1
		f.Face = plane.R(0, 0, length.MM(int64(500+i)), length.MM(283))
		f.Holes = append([]plan.Hole(nil), f.Holes...)
		for j := range f.Holes {
			f.Holes[j].At.Y += length.Length(i) * 100 * length.Micrometre
		}
		p.Fronts = append(p.Fronts, f)
	}
	return p
}

// recorder keeps what a page consists of, to draw it again.
type recorder struct{ draw []func(*gofpdf.Fpdf) }

// recordedHeight is the height of a page in points; the library's y runs down.
const recordedHeight = 297 * perMM

func x(p ink.Point) float64 { return p.X * perMM }
func y(p ink.Point) float64 { return recordedHeight - p.Y*perMM }

func (r *recorder) add(f func(*gofpdf.Fpdf)) { r.draw = append(r.draw, f) }

func (r *recorder) Line(p ink.Pen, a, b ink.Point) {
	r.add(func(f *gofpdf.Fpdf) {
		f.SetLineWidth(p.Width * perMM)
		f.Line(x(a), y(a), x(b), y(b))
	})
}

func (r *recorder) Rect(edge *ink.Pen, fill *ink.Colour, lo, hi ink.Point) {
	style := "D"
	if fill != nil {
		style = "F"
	}
	r.add(func(f *gofpdf.Fpdf) { f.Rect(x(lo), y(hi), (hi.X-lo.X)*perMM, (hi.Y-lo.Y)*perMM, style) })
}

func (r *recorder) Circle(p ink.Pen, m ink.Point, radius float64) {
	r.add(func(f *gofpdf.Fpdf) { f.Circle(x(m), y(m), radius*perMM, "D") })
}

func (r *recorder) Triangle(_ ink.Colour, a, b, c ink.Point) {
	r.add(func(f *gofpdf.Fpdf) {
		f.Polygon([]gofpdf.PointType{{X: x(a), Y: y(a)}, {X: x(b), Y: y(b)}, {X: x(c), Y: y(c)}}, "F")
	})
}

func (r *recorder) Clip(lo, hi ink.Point) {
	r.add(func(f *gofpdf.Fpdf) { f.ClipRect(x(lo), y(hi), (hi.X-lo.X)*perMM, (hi.Y-lo.Y)*perMM, false) })
}

func (r *recorder) Unclip() { r.add(func(f *gofpdf.Fpdf) { f.ClipEnd() }) }

func (r *recorder) Text(at ink.Point, size length.Length, bold, _ bool, _ ink.Colour, s string) {
	style, em := "", pt(lettering.Em(size))
	if bold {
		style = "B"
	}
	r.add(func(f *gofpdf.Fpdf) {
		f.SetFont("go", style, em)
		f.Text(x(at), y(at), s)
	})
}

// straight draws the same lines, rectangles, circles and texts straight with
// the library.
func straight(w io.Writer, pages []recorder) error {
	pdf := gofpdf.New("P", "pt", "A4", "")
	pdf.SetCompression(true)
	pdf.SetAutoPageBreak(false, 0)
	pdf.AddUTF8FontFromBytes("go", "", bytes.Clone(goregular.TTF))
	pdf.AddUTF8FontFromBytes("go", "B", bytes.Clone(gobold.TTF))
	for _, p := range pages {
		pdf.AddPage()
		for _, draw := range p.draw {
			draw(pdf)
		}
	}
	return pdf.Output(w)
}

// BenchmarkTemplates compares the templates of 100 fronts, from the plan to the
// PDF, with the same lines, circles and texts drawn straight with the library. The aim is at most 1.2 times its time and memory.
func BenchmarkTemplates(b *testing.B) {
	p := hundred()
	var pages []recorder
	d := sheet.Make(p, nil, sheet.Options{Parts: []sheet.Part{sheet.CornerTemplates}})
	for i := range d.Pages {
		var r recorder
		ink.Draw(&r, d.Pages[i].Drawings(), d.Pages[i].LetterArea(), d.Say)
		pages = append(pages, r)
	}
	b.Run("frontlay", func(b *testing.B) {
		b.ReportAllocs()
		for range b.N {
			d := sheet.Make(p, nil, sheet.Options{Parts: []sheet.Part{sheet.CornerTemplates}})
			if err := Write(io.Discard, d, Options{}); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("straight", func(b *testing.B) {
		b.ReportAllocs()
		for range b.N {
			if err := straight(io.Discard, pages); err != nil {
				b.Fatal(err)
			}
		}
	})
}
