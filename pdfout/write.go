// Package pdfout writes a document of finished pages as a PDF. Nothing is decided
// here: which drawing stands on which page is the business of layout/sheet, pens
// and where a figure stands at its dimension that of layout/ink.
package pdfout

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"slices"
	"strconv"
	"time"

	"frontlay/layout/ink"
	"frontlay/layout/sheet"
	"frontlay/model/message"

	"github.com/jung-kurt/gofpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
)

// Options say how a PDF is written. The zero value is good for use.
type Options struct {
	Created      time.Time // written into the file; zero: 1 January 2000, UTC
	Uncompressed bool      // leave the pages readable, for tests and the curious
	// Progress, where it is given, is called before each page with its number
	// from 0 and the count of pages. An error from it ends the work: Write
	// gives that error and has written nothing. Give ctx.Err() to cancel.
	Progress func(page, pages int) error
}

// Write writes the document as a PDF that asks for being printed at actual
// size. The same document and options give the same bytes. It writes nothing
// before the whole document is made, and fails on a document without pages, on
// lengths that can't be written, on what Progress says, and where w fails.
func Write(w io.Writer, doc sheet.Document, o Options) error {
	return render(w, doc, o)
}

const fontName = "go"

// render makes the whole file in memory, then writes it.
func render(w io.Writer, doc sheet.Document, o Options) error {
	if len(doc.Pages) == 0 {
		return message.New("there is nothing to print: no page was chosen, or the project has no front that is drilled")
	}
	pdf := newPDF(doc, o)
	marks := doc.Bookmarks
	for i := range doc.Pages {
		// One for each page, in order, so that a page's number names its link.
		pdf.SetLink(pdf.AddLink(), 0, i+1)
	}
	for i := range doc.Pages {
		if o.Progress != nil {
			if err := o.Progress(i, len(doc.Pages)); err != nil {
				return err
			}
		}
		if err := renderPage(pdf, &doc, i, &marks); err != nil {
			return fmt.Errorf("page %d, %s: %w", i+1, doc.Say.Say(doc.Pages[i].Title), err)
		}
	}
	pdf.Close()
	if err := pdf.Error(); err != nil {
		return fmt.Errorf("the PDF could not be made: %w", err)
	}
	return pdf.Output(actualSize{w})
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

func renderPage(pdf *gofpdf.Fpdf, doc *sheet.Document, i int, marks *[]sheet.Bookmark) error {
	p := &doc.Pages[i]
	pdf.AddPageFormat("P", pageSize(p))
	across, up := p.Correction.Factors()
	c := &canvas{
		pdf: pdf, height: pt(p.Height),
		middle: ink.Point{X: p.Width.MM() / 2, Y: p.Height.MM() / 2}, factor: ink.Point{X: across, Y: up},
	}
	bookmarks(c, doc, i, marks)
	ink.Draw(c, p.Drawings(), p.LetterArea(), doc.Say)
	c.flush()
	links(c, doc, i)
	if c.err != nil {
		return c.err
	}
	return pdf.Error()
}

// bookmarks adds the entries of the reader's outline that point to a page; marks
// are those that are left, in the order of pages.
func bookmarks(c *canvas, doc *sheet.Document, page int, marks *[]sheet.Bookmark) {
	for ; len(*marks) > 0 && (*marks)[0].Page == page; *marks = (*marks)[1:] {
		b := (*marks)[0]
		c.font(true, 10) // the library writes an outline in the font in use
		c.pdf.Bookmark(writable(doc.Say.Say(b.Title)), b.Level, 0)
	}
}

// links lets areas of a page lead to other pages. The links were made before
// the first page, one for each page, numbered from 1.
func links(c *canvas, doc *sheet.Document, page int) {
	p := &doc.Pages[page]
	for _, l := range p.Links {
		if l.Page < 0 || l.Page >= len(doc.Pages) {
			continue
		}
		lo := c.inPoints(ink.Point{X: l.Area.Min.X.MM(), Y: l.Area.Min.Y.MM()})
		hi := c.inPoints(ink.Point{X: l.Area.Max.X.MM(), Y: l.Area.Max.Y.MM()})
		c.pdf.Link(lo.X, c.height-hi.Y, hi.X-lo.X, hi.Y-lo.Y, l.Page+1)
	}
}

// actualSize writes a whole PDF with the viewer preference PrintScaling None
// (ISO 32000-1:2008 Table 150), which asks the print dialog for actual size and
// which the library can't write. The catalogue is the last object of its files,
// so that only startxref moves.
type actualSize struct{ to io.Writer }

// Write takes the whole file at once, as the library gives it, and copies none of
// it; it refuses a part.
func (a actualSize) Write(pdf []byte) (int, error) {
	catalogue := bytes.LastIndex(pdf, []byte("/Type /Catalog\n"))
	start := bytes.LastIndex(pdf, []byte("\nstartxref\n"))
	xref := bytes.LastIndex(pdf, []byte("\nxref\n"))
	if catalogue < 0 || start < 0 || xref < catalogue || !bytes.HasPrefix(pdf, []byte("%PDF-1.")) {
		return 0, errors.New("the PDF has no catalogue where it was expected")
	}
	at := catalogue + len("/Type /Catalog\n")
	const wish = "/ViewerPreferences <</PrintScaling /None>>\n"
	end := strconv.Itoa(xref+1+len(wish)) + "\n%%EOF\n"
	for _, part := range [][]byte{
		[]byte("%PDF-1.7"), pdf[len("%PDF-1.7"):at], []byte(wish), pdf[at : start+len("\nstartxref\n")], []byte(end),
	} {
		if _, err := a.to.Write(part); err != nil {
			return 0, err
		}
	}
	return len(pdf), nil
}
