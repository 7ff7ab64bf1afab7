package pdfout

import (
	"bytes"
	"io"
	"testing"

	"github.com/jung-kurt/gofpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"

	"frontlay/layout/ink"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/sheet"
	"frontlay/layout/sheet/lettering"
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

// tally counts what a document consists of.
type tally struct{ lines, rects, circles, triangles, clips, texts, letters int }

func (t *tally) Line(ink.Pen, ink.Point, ink.Point)                   { t.lines++ }
func (t *tally) Rect(*ink.Pen, *ink.Colour, ink.Point, ink.Point)     { t.rects++ }
func (t *tally) Circle(ink.Pen, ink.Point, float64)                   { t.circles++ }
func (t *tally) Triangle(ink.Colour, ink.Point, ink.Point, ink.Point) { t.triangles++ }
func (t *tally) Clip(ink.Point, ink.Point)                            { t.clips++ }
func (t *tally) Unclip()                                              {}
func (t *tally) Text(_ ink.Point, _ length.Length, _ bool, _ ink.Colour, s string) {
	t.texts++
	t.letters += len(s)
}

// straight draws as many lines, rectangles, circles and texts as the document
// has on each of its pages, straight with the library.
func straight(w io.Writer, pages []tally) error {
	pdf := gofpdf.New("P", "pt", "A4", "")
	pdf.SetCompression(true)
	pdf.SetAutoPageBreak(false, 0)
	pdf.AddUTF8FontFromBytes("go", "", bytes.Clone(goregular.TTF))
	pdf.AddUTF8FontFromBytes("go", "B", bytes.Clone(gobold.TTF))
	const text = "36.5 mm from the side edge, 210 mm from the bottom edge; Ø 10 mm, 12 mm deep, REAR FACE"
	for _, t := range pages {
		pdf.AddPage()
		for i := range t.lines {
			pdf.SetLineWidth(0.5)
			pdf.Line(float64(i)+0.123, 20.456, float64(i)+50.789, 90.123)
		}
		for i := range t.rects {
			pdf.Rect(float64(i)+0.123, 20.456, 100.789, 50.123, "D")
		}
		for i := range t.circles {
			pdf.Circle(float64(i)+100.123, 200.456, 14.17, "D")
		}
		for i := range t.triangles {
			pdf.Polygon([]gofpdf.PointType{{X: float64(i), Y: 10.5}, {X: 8.25, Y: 9.75}, {X: 8.25, Y: 11.25}}, "F")
		}
		for range t.clips {
			pdf.ClipRect(10.5, 10.5, 500.25, 700.75, false)
			pdf.ClipEnd()
		}
		for i := range t.texts {
			if i%3 == 0 {
				pdf.SetFont("go", "B", pt(lettering.Em(lettering.Tiny)))
			} else {
				pdf.SetFont("go", "", pt(lettering.Em(lettering.Small)))
			}
			pdf.Text(50.5, float64(i)*5.25, text[:min(t.letters/t.texts, len(text))])
		}
	}
	return pdf.Output(w)
}

// BenchmarkTemplates compares the templates of 100 fronts, from the plan to the
// PDF, with the same count of lines, circles and texts drawn straight with the
// library. The aim is at most 1.2 times its time and memory.
func BenchmarkTemplates(b *testing.B) {
	p := hundred()
	var pages []tally
	d := sheet.Make(p, nil, sheet.Options{Parts: []sheet.Part{sheet.CornerTemplates}})
	for i := range d.Pages {
		var t tally
		ink.Page(&t, &d.Pages[i], d.Say)
		pages = append(pages, t)
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
