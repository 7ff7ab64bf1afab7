package sheet

import (
	"bytes"
	"slices"
	"strings"
	"testing"

	"frontlay/model/length"
)

func TestPrintersComeBack(t *testing.T) {
	var p Printers
	p.Set(KnownPrinter{Correction: Correction{Printer: "shop", Paper: "A4", Across: 1.004, Up: 0.998}})
	p.Set(KnownPrinter{Correction: Correction{Printer: "shop", Paper: "A3", Across: 1.002, Up: 1}, Margins: Margins{mm(5), 127 * length.Millimetre / 10}})
	p.Set(KnownPrinter{Correction: Correction{Printer: "shop", Paper: "A4", Across: 1.005, Up: 0.999}}) // measured again
	var b bytes.Buffer
	if err := WritePrinters(&b, &p); err != nil {
		t.Fatal(err)
	}
	q, err := ReadPrinters(&b)
	if err != nil || !slices.Equal(q.All(), p.All()) || len(q.All()) != 2 {
		t.Errorf("%v became %v, %v", p.All(), q.All(), err)
	}
	if k := q.Find("shop", "A4"); k.Correction.Across != 1.005 {
		t.Errorf("the later measure of shop on A4 is lost: %v", k)
	}
	if k := q.Find("other", "A4"); !k.Correction.None() || k.Margins != (Margins{}) {
		t.Errorf("an unknown printer has %v", k)
	}
}

func TestBrokenFilesOfPrinters(t *testing.T) {
	for text, want := range map[string]string{
		``:               "can’t be read",
		`{"format":"x"}`: "not a file of printers",
		`{"format":"frontlay printers","version":9}`:                                                                                  "version 9",
		`{"format":"frontlay printers","version":1,"printers":[{"printer":"a","paper":"A4","across":1.2,"up":1}]}`:                    "beyond",
		`{"format":"frontlay printers","version":1,"printers":[{"printer":"a","paper":"A4","across":-1,"up":1}]}`:                     "beyond",
		`{"format":"frontlay printers","version":1,"printers":[{"printer":"a","paper":"A4","across":1,"up":1,"side_margin_mm":900}]}`: "margin",
	} {
		if _, err := ReadPrinters(strings.NewReader(text)); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v; want an error with %q", text, err, want)
		}
	}
}

func TestUsageCountsSheetsAndRoll(t *testing.T) {
	f := lopsided()
	sheets := Usage(Make(planOf(f), nil, Options{Parts: []Part{JigSettings, CornerTemplates}}), Papers()[0])
	if len(sheets) != 2 || sheets[0].Part != JigSettings || sheets[1].Sheets != 1 || sheets[1].Say().String() != "Corner templates: 1 sheet" {
		t.Errorf("%+v", sheets)
	}
	roll := Paper{Name: "roll", Width: mm(610)}
	d := Make(planOf(f), nil, Options{Paper: roll, Parts: []Part{WholeTemplates}})
	u := Usage(d, roll)
	// The front is 597 wide: with its edges, margins and bar too wide for the
	// roll, so it lies along it.
	if len(u) != 1 || u[0].Sheets != 1 || u[0].Roll < mm(597) || u[0].Roll > mm(660) || d.Pages[0].Height != mm(610) {
		t.Errorf("%+v on a page %v × %v", u, d.Pages[0].Width, d.Pages[0].Height)
	}
}

func FuzzReadPrinters(f *testing.F) {
	f.Add(`{"format":"frontlay printers","version":1,"printers":[{"printer":"a","paper":"A4","across":1,"up":1,"end_margin_mm":12.7}]}`)
	f.Add(`{"printers":[{"side_margin_mm":1e99}]}`)
	f.Fuzz(func(t *testing.T, text string) {
		p, err := ReadPrinters(strings.NewReader(text))
		if err != nil {
			return
		}
		for _, k := range p.All() {
			if off(k.Correction.Across) > refuseAbove || off(k.Correction.Up) > refuseAbove || k.Margins.Side > GreatestMargin || k.Margins.End > GreatestMargin {
				t.Errorf("%s gave %+v", text, k)
			}
		}
		var b bytes.Buffer
		if err := WritePrinters(&b, p); err != nil {
			t.Errorf("%s can be read but not written: %v", text, err)
		}
	})
}
