package pdfout

import (
	"testing"

	"github.com/jung-kurt/gofpdf"
	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"frontlay/layout/lettering"
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

// The letters stay within what lettering says they reach, as the outlines in the
// font files tell.
func TestLettersReachNoFurtherThanSaid(t *testing.T) {
	const em = 2048 // the fonts' units
	var buffer sfnt.Buffer
	for name, data := range map[string][]byte{"regular": goregular.TTF, "bold": gobold.TTF} {
		f, err := sfnt.Parse(data)
		if err != nil {
			t.Fatal(err)
		}
		for r := rune(0x20); r < 0x180; r++ {
			i, err := f.GlyphIndex(&buffer, r)
			if err != nil || i == 0 {
				continue
			}
			b, _, err := f.GlyphBounds(&buffer, i, fixed.I(em), font.HintingNone)
			if err != nil {
				t.Fatal(err)
			}
			const capitals, slack = 1480, 65 // round letters and commas go a little beyond their lines
			above, below := lettering.Reach(string(r), capitals)
			if over, under := -b.Min.Y.Round()-capitals-int(above), b.Max.Y.Round()-int(below); over > 0 || under > slack {
				t.Errorf("%s %q reaches %d units further up, %d further down", name, r, over, under)
			}
		}
	}
}

func TestCapitalsAreAsHighAsAsked(t *testing.T) {
	// Go Regular and Go Bold: 1480 of 2048 units (OS/2 table, sCapHeight).
	if got, want := lettering.Em(37*length.Millimetre/10), 5120*length.Micrometre; got != want {
		t.Errorf("capitals of 3.7 mm need an em of %v; want %v", got, want)
	}
}
