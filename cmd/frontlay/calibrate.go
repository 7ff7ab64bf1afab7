package main

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/model/store"
	"frontlay/pdfout"
)

// calibrating writes the page that measures a printer or, with --measured,
// keeps what the rule said.
func calibrating(fs *flag.FlagSet) task {
	out := fs.String("o", "", "the `FILE` to write: a page to print and measure")
	paper := addPaper(fs)
	printer := fs.String("printer", "", "the `NAME` of the printer that was measured; with --measured")
	measured := fs.String("measured", "", "keep what the rule says of the page, `ACROSSxUP`, such as "+measuredExample())
	sure := fs.Bool("sure", false, "keep it although it is far off, once a second measurement says the same")
	return func(rest []string, c console) int {
		var o sheet.Options
		var err error
		if len(rest) > 0 {
			fmt.Fprintf(c.err, "frontlay calibrate: %s is not understood. See frontlay --help.\n", strings.Join(rest, " "))
			return exitFailed
		}
		if o.Paper, err = sheet.ParsePaper(*paper, length.UnitMM); err != nil {
			fmt.Fprintln(c.err, "frontlay calibrate:", err)
			return exitFailed
		}
		switch {
		case *measured != "":
			return keepMeasured(o, *printer, *measured, *sure, c)
		case *out == "":
			fmt.Fprintln(c.err, "frontlay calibrate: say where to write the page (-o OUT.pdf), or what the rule said (--printer NAME --measured ACROSSxUP).")
			return exitFailed
		}
		var pdf bytes.Buffer
		if err := pdfout.Write(&pdf, sheet.Calibration(o), pdfout.Options{}); err != nil {
			fmt.Fprintln(c.err, "frontlay calibrate:", err)
			return exitFailed
		}
		if err := saveBytes(*out, pdf.Bytes()); err != nil {
			fmt.Fprintln(c.err, err)
			return exitFailed
		}
		across, up := sheet.CalibrationBars(o)
		u := o.RuleUnit()
		fmt.Fprintf(c.out, "%s: print it at actual size, measure the long bars (they should be %s across and %s up), then write:\n  frontlay calibrate --printer NAME --paper %s --measured ACROSSxUP\n", *out, u.WithSymbol(across), u.WithSymbol(up), *paper)
		return exitFine
	}
}

// measuredExample is what a rule may say of the page on A4: little off.
func measuredExample() string {
	across, up := sheet.CalibrationBars(sheet.Options{})
	return length.UnitMM.Format(across-8*length.Millimetre/10) + "x" + length.UnitMM.Format(up+length.Millimetre)
}

// keepMeasured turns what the rule said into a correction and keeps it.
func keepMeasured(o sheet.Options, printer, measured string, sure bool, c console) int {
	a, u, ok := strings.Cut(measured, "x")
	across, err := length.Parse(a, o.RuleUnit())
	up, err2 := length.Parse(u, o.RuleUnit())
	if err = errors.Join(err, err2); !ok || err != nil || printer == "" {
		fmt.Fprintln(c.err, "frontlay calibrate: write the printer's name and both lengths, such as --printer workshop --measured", measuredExample())
		return exitFailed
	}
	nominalAcross, nominalUp := sheet.CalibrationBars(o)
	correction, verdict, what := sheet.Measured(printer, o.Paper.Name, nominalAcross, nominalUp, across, up)
	fmt.Fprintln(c.out, message.Language{Unit: o.RuleUnit()}.Say(what))
	switch {
	case verdict == sheet.Refuse:
		return exitFailed
	case verdict == sheet.Ask && !sure:
		fmt.Fprintln(c.err, "Nothing is kept. Where a second measurement says the same, add --sure.")
		return exitFailed
	}
	known, err := loadPrinters()
	if err == nil {
		k := known.Find(printer, o.Paper.Name)
		k.Correction = correction
		known.Set(k)
		err = savePrinters(known)
	}
	if err != nil {
		fmt.Fprintln(c.err, err)
		return exitFailed
	}
	fmt.Fprintf(c.out, "Kept. Use it with: frontlay print … --printer %s\n", printer)
	return exitFine
}

// printersFile is where what is known of printers is kept.
func printersFile() (string, error) {
	home, err := keptIn()
	return filepath.Join(home, "printers.json"), err
}

// loadPrinters reads what is known of printers; nothing where there is no file.
func loadPrinters() (*sheet.Printers, error) {
	path, err := printersFile()
	if err != nil {
		return nil, err
	}
	f, err := os.Open(path)
	if errors.Is(err, fs.ErrNotExist) {
		return &sheet.Printers{}, nil
	}
	if err != nil {
		return nil, plain(err)
	}
	defer f.Close()
	p, err := sheet.ReadPrinters(f)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	return p, nil
}

// savePrinters keeps what is known of printers, whole or not at all.
func savePrinters(p *sheet.Printers) error {
	path, err := printersFile()
	if err != nil {
		return err
	}
	var data bytes.Buffer
	if err := sheet.WritePrinters(&data, p); err != nil {
		return err
	}
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		return plain(err)
	}
	return store.Replace(store.OS{}, path, data.Bytes())
}

// knownPrinters is what is known of the user's printers, the same for the window
// and for the commands.
type knownPrinters struct{}

func (knownPrinters) Load() (*sheet.Printers, error)   { return loadPrinters() }
func (knownPrinters) Save(known *sheet.Printers) error { return savePrinters(known) }
