package main

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"path/filepath"

	"frontlay/layout"
	"frontlay/layout/export"
	"frontlay/layout/sheet"
	"frontlay/model/message"
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
	_, err := lp.Print(ctx, lp.Local, lp.Job{Printer: j.Printer, Title: j.Title, Copies: j.Copies, Paper: j.Paper, PDF: pdf.Bytes()})
	return err
}

// exportFiles writes the files for machines and other programs into a folder
// and tells how many there are.
func exportFiles(folder string, r layout.Result, say message.Language) (int, error) {
	files, err := export.Files(r.Plan, r.Findings, export.Options{Say: say})
	if err != nil {
		return 0, err
	}
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return 0, plain(err)
	}
	for _, f := range files {
		if err := saveBytes(filepath.Join(folder, f.Name), f.Data); err != nil {
			return 0, err
		}
	}
	return len(files), nil
}

// writePages writes finished pages as a PDF for the window, telling how far it
// is. Nothing is written where progress ends it.
func writePages(path string, doc sheet.Document, progress func(page, pages int) error) error {
	var pdf bytes.Buffer
	if err := pdfout.Write(&pdf, doc, pdfout.Options{Progress: progress}); err != nil {
		return fmt.Errorf("%s: the PDF could not be made: %w", path, err)
	}
	return plain(saveBytes(path, pdf.Bytes()))
}
