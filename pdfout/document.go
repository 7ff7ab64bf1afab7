package pdfout

import (
	"bytes"
	"fmt"
	"slices"
	"time"

	"github.com/jung-kurt/gofpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"

	"frontlay/layout/sheet"
	"frontlay/model/message"
)

const fontName = "go"

// render makes the whole file in memory.
func render(doc sheet.Document, o Options) ([]byte, error) {
	if len(doc.Pages) == 0 {
		return nil, message.New("there is nothing to print: no page was chosen, or the project has no front that is drilled")
	}
	pdf := newPDF(doc, o)
	for i := range doc.Pages {
		if o.Progress != nil {
			if err := o.Progress(i, len(doc.Pages)); err != nil {
				return nil, err
			}
		}
		if err := renderPage(pdf, &doc.Pages[i], doc.Say); err != nil {
			return nil, fmt.Errorf("page %d, %s: %w", i+1, doc.Say.Say(doc.Pages[i].Title), err)
		}
	}
	var buf bytes.Buffer
	if err := pdf.Output(&buf); err != nil {
		return nil, fmt.Errorf("the PDF could not be made: %w", err)
	}
	return atActualSize(buf.Bytes())
}

func newPDF(doc sheet.Document, o Options) *gofpdf.Fpdf {
	created := o.Created
	if created.IsZero() {
		created = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)
	}
	pdf := gofpdf.NewCustom(&gofpdf.InitType{OrientationStr: "P", UnitStr: "pt", Size: pageSize(&doc.Pages[0])})
	pdf.SetCompression(!o.Uncompressed)
	pdf.SetAutoPageBreak(false, 0)
	pdf.SetMargins(0, 0, 0)
	pdf.SetCatalogSort(true)
	pdf.SetCreationDate(created.UTC())
	pdf.SetModificationDate(created.UTC())
	pdf.SetTitle(doc.Say.Say(doc.Title), true)
	pdf.SetCreator("frontlay", true)
	// The library writes into the font it is given, so each document has a copy.
	pdf.AddUTF8FontFromBytes(fontName, "", slices.Clone(goregular.TTF))
	pdf.AddUTF8FontFromBytes(fontName, "B", slices.Clone(gobold.TTF))
	return pdf
}

func pageSize(p *sheet.Page) gofpdf.SizeType {
	return gofpdf.SizeType{Wd: pt(p.Width), Ht: pt(p.Height)}
}

func renderPage(pdf *gofpdf.Fpdf, p *sheet.Page, say message.Language) error {
	pdf.AddPageFormat("P", pageSize(p))
	c := &canvas{pdf: pdf, height: pt(p.Height)}
	w := &writer{canvas: c, say: say}
	for i := range p.Placed {
		w.placed(&p.Placed[i])
	}
	w.letters()
	if c.err != nil {
		return c.err
	}
	return pdf.Error()
}
