package main

import (
	"bytes"
	"fmt"

	"frontlay/layout/sheet"
	"frontlay/pdfout"
)

// writePages writes finished pages as a PDF for the window, telling how far it
// is. Nothing is written where progress ends it.
func writePages(path string, doc sheet.Document, progress func(page, pages int) error) error {
	var pdf bytes.Buffer
	if err := pdfout.Write(&pdf, doc, pdfout.Options{Progress: progress}); err != nil {
		return fmt.Errorf("%s: the PDF could not be made: %w", path, err)
	}
	return plain(saveBytes(path, pdf.Bytes()))
}
