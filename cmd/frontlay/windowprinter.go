package main

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"path/filepath"

	"frontlay/layout/export"
	"frontlay/layout/sheet"
	"frontlay/pdfout"
	"frontlay/pdfout/lp"
	"frontlay/ui"
)

// windowPrinter prints for the window through lp.
type windowPrinter struct{}

// printerHere is the printing system of this computer, nil where it has no lp.
func printerHere() ui.Printer {
	if !lp.Available() {
		return nil
	}
	return windowPrinter{}
}

// Printers lists the printers and the default one.
func (windowPrinter) Printers(ctx context.Context) (names []string, standard string, err error) {
	return lp.Printers(ctx, lp.Local)
}

// Print makes the pages and hands them to the printing system.
func (windowPrinter) Print(ctx context.Context, j ui.PrintJob) error {
	var pdf bytes.Buffer
	progress := func(page, pages int) error {
		if j.Progress != nil {
			j.Progress(page, pages)
		}
		return ctx.Err()
	}
	if err := pdfout.Write(&pdf, j.Document, pdfout.Options{Progress: progress}); err != nil {
		return err
	}
	if _, err := lp.Print(ctx, lp.Local, lp.Job{Printer: j.Printer, Title: j.Title, Copies: j.Copies, Paper: j.Paper, PDF: pdf.Bytes()}); err != nil {
		return err
	}
	return plain(keepPaper(j.Document.Paper))
}

// writeFiles writes files for machines and other programs into a folder, until the
// context ends.
func writeFiles(ctx context.Context, folder string, files []export.File, progress func(done, of int)) error {
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return plain(err)
	}
	for i, f := range files {
		if ctx.Err() != nil {
			return ctx.Err()
		}
		if err := saveBytes(filepath.Join(folder, f.Name), f.Data); err != nil {
			return plain(err)
		}
		progress(i+1, len(files))
	}
	return nil
}

// writePages writes finished pages as a PDF for the window, telling how far it
// is. Nothing is written where progress ends it.
func writePages(path string, doc sheet.Document, progress func(page, pages int) error) error {
	var pdf bytes.Buffer
	if err := pdfout.Write(&pdf, doc, pdfout.Options{Progress: progress}); err != nil {
		return fmt.Errorf("%s: the PDF could not be made: %w", path, err)
	}
	if err := saveBytes(path, pdf.Bytes()); err != nil {
		return plain(err)
	}
	return plain(keepPaper(doc.Paper))
}
