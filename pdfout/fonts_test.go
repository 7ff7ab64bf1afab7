package pdfout

import (
	"testing"

	"github.com/jung-kurt/gofpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"

	"frontlay/layout/sheet/lettering"
	"frontlay/model/length"
)

// The widths by which pages are laid out must be those of the fonts with which
// they are written, here as the PDF library reads them.
func TestLetteringKnowsTheFonts(t *testing.T) {
	pdf := gofpdf.New("P", "pt", "A4", "")
	pdf.AddUTF8FontFromBytes("go", "", append([]byte(nil), goregular.TTF...))
	pdf.AddUTF8FontFromBytes("go", "B", append([]byte(nil), gobold.TTF...))
	const size = lettering.Large
	for _, bold := range []bool{false, true} {
		style := ""
		if bold {
			style = "B"
		}
		pdf.SetFont("go", style, pt(lettering.Em(size)))
		letters := "–—‘’“”„…−≈→←↑↓▲▼≤≥•□€≠"
		for r := rune(0x20); r < 0x180; r++ {
			if r < 0x7f || r > 0x9f {
				letters += string(r)
			}
		}
		for _, r := range letters {
			want := pdf.GetStringWidth(string(r)) * 25.4 / 72
			got := lettering.Width(string(r), size, bold).MM()
			// The library keeps widths in whole thousandths of an em.
			if diff := got - want; diff > 0.01 || diff < -0.01 {
				t.Errorf("%q bold %v is %.3f mm wide; the font says %.3f", r, bold, got, want)
			}
		}
	}
	if err := pdf.Error(); err != nil {
		t.Fatal(err)
	}
}

func TestCapitalsAreAsHighAsAsked(t *testing.T) {
	// Go Regular and Go Bold: 1480 of 2048 units (OS/2 table, sCapHeight).
	if got, want := lettering.Em(37*length.Millimetre/10), 5120*length.Micrometre; got != want {
		t.Errorf("capitals of 3.7 mm need an em of %v; want %v", got, want)
	}
}
