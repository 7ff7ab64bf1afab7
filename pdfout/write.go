// Package pdfout writes a document of finished pages as a PDF. Nothing is
// decided here but pens and where a figure stands at its dimension: which
// drawing stands on which page is the business of layout/sheet.
package pdfout

import (
	"io"
	"time"

	"frontlay/layout/sheet"
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
