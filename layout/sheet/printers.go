package sheet

import (
	"encoding/json"
	"fmt"
	"io"

	"frontlay/model/length"
	"frontlay/model/message"
)

// Printers is what is known of the user's printers: a correction and margins for
// each printer with each paper.
type Printers struct {
	known []KnownPrinter
}

// KnownPrinter is a printer with a paper. Margins are zero where they were never
// set.
type KnownPrinter struct {
	Correction Correction
	Margins    Margins
}

// Find gives what is known of a printer with a paper; the zero correction and
// margins where nothing is.
func (p *Printers) Find(printer, paper string) KnownPrinter {
	for _, k := range p.known {
		if k.Correction.Printer == printer && k.Correction.Paper == paper {
			return k
		}
	}
	return KnownPrinter{Correction: Correction{Printer: printer, Paper: paper, Across: 1, Up: 1}}
}

// Set keeps what is known of a printer with a paper, in place of what was known
// before.
func (p *Printers) Set(k KnownPrinter) {
	for i := range p.known {
		if p.known[i].Correction.Printer == k.Correction.Printer && p.known[i].Correction.Paper == k.Correction.Paper {
			p.known[i] = k
			return
		}
	}
	p.known = append(p.known, k)
}

// All lists what is known, in the order in which it was first set.
func (p *Printers) All() []KnownPrinter { return append([]KnownPrinter(nil), p.known...) }

type printersFile struct {
	Format   string         `json:"format"`
	Version  int            `json:"version"`
	Printers []printerEntry `json:"printers"`
}

type printerEntry struct {
	Correction
	SideMM json.Number `json:"side_margin_mm,omitempty"`
	EndMM  json.Number `json:"end_margin_mm,omitempty"`
}

const printersFormat = "frontlay printers"

// WritePrinters writes what is known of printers as JSON.
func WritePrinters(w io.Writer, p *Printers) error {
	f := printersFile{Format: printersFormat, Version: 1, Printers: []printerEntry{}}
	for _, k := range p.known {
		e := printerEntry{Correction: k.Correction.filled()}
		if k.Margins != (Margins{}) {
			e.SideMM = json.Number(length.UnitMM.Format(k.Margins.Side))
			e.EndMM = json.Number(length.UnitMM.Format(k.Margins.End))
		}
		f.Printers = append(f.Printers, e)
	}
	enc := json.NewEncoder(w)
	enc.SetIndent("", "  ")
	return enc.Encode(f)
}

// maxPrinters bounds what a broken file can cost.
const maxPrinters = 1 << 20

// ReadPrinters reads what WritePrinters wrote. It refuses corrections beyond the
// limits of Measured and margins that no paper has; the error says which.
func ReadPrinters(r io.Reader) (*Printers, error) {
	var f printersFile
	if err := json.NewDecoder(io.LimitReader(r, maxPrinters)).Decode(&f); err != nil {
		return nil, message.New("the file of printers can’t be read: %v", err)
	}
	if f.Format != printersFormat || f.Version != 1 {
		return nil, message.New("this is not a file of printers that this version knows (format “%v”, version %v)", f.Format, f.Version)
	}
	p := &Printers{}
	for _, e := range f.Printers {
		k, err := e.known()
		if err != nil {
			return nil, message.New("printer “%v” with paper “%v”: %v", e.Printer, e.Paper, err)
		}
		p.Set(k)
	}
	return p, nil
}

func (e printerEntry) known() (KnownPrinter, error) {
	k := KnownPrinter{Correction: e.filled()}
	if off(k.Correction.Across) > refuseAbove || off(k.Correction.Up) > refuseAbove || k.Correction.Across < 0 || k.Correction.Up < 0 {
		return k, fmt.Errorf("a correction of %v across and %v up is beyond what a printer is off", e.Across, e.Up)
	}
	for _, m := range []struct {
		text json.Number
		to   *length.Length
	}{{e.SideMM, &k.Margins.Side}, {e.EndMM, &k.Margins.End}} {
		if m.text == "" {
			continue
		}
		v, err := length.Parse(string(m.text), length.UnitMM)
		if err != nil || v < LeastMargin || v > GreatestMargin {
			return k, fmt.Errorf("a margin of %v mm is not from %v to %v", m.text, LeastMargin, GreatestMargin)
		}
		*m.to = v
	}
	return k, nil
}
