package pdfout

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"
)

func allPages() sheet.Document {
	return sheet.Make(bench(), nil, sheet.Options{Parts: sheet.Parts()})
}

func TestSameBytesTwice(t *testing.T) {
	for _, o := range []Options{{}, {Uncompressed: true}} {
		var a, b bytes.Buffer
		if err := Write(&a, allPages(), o); err != nil {
			t.Fatal(err)
		}
		if err := Write(&b, allPages(), o); err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(a.Bytes(), b.Bytes()) {
			t.Errorf("two writes of the same pages (uncompressed %v) differ", o.Uncompressed)
		}
	}
}

func TestFileIsSound(t *testing.T) {
	path := written(t, allPages())
	if out, err := exec.Command(tool(t, "qpdf"), "--check", path).CombinedOutput(); err != nil {
		t.Errorf("qpdf --check: %v\n%s", err, out)
	}
	out, err := exec.Command(tool(t, "mutool"), "show", path, "trailer/Root/ViewerPreferences").CombinedOutput()
	if err != nil || !strings.Contains(string(out), "/PrintScaling /None") {
		t.Errorf("the viewer is not asked for actual size: %v %s", err, out)
	}
}

func TestTextIsText(t *testing.T) {
	path := written(t, allPages())
	out, err := exec.Command(tool(t, "pdftotext"), "-layout", path, "-").Output()
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"REAR FACE, LEFT", "REAR FACE, RIGHT", "Ø 10 mm, 12 mm deep", "page 1 of"} {
		if !strings.Contains(strings.ReplaceAll(string(out), "\u00a0", " "), want) {
			t.Errorf("the pages do not say %q", want)
		}
	}
}

func page(marks ...drawing.Mark) sheet.Document {
	return sheet.Document{Pages: []sheet.Page{{
		Width: length.MM(210), Height: length.MM(297), Title: message.New("Test page"),
		Placed: []drawing.Placed{{Drawing: &drawing.Drawing{Marks: marks}, ScaleNum: 1, ScaleDen: 1}},
	}}}
}

func TestFaultsAreTold(t *testing.T) {
	boundless := page(&drawing.Line{To: plane.Point{X: 1 << 62}})
	noScale := page(&drawing.Line{To: plane.Point{X: length.MM(10)}})
	noScale.Pages[0].Placed[0].ScaleDen = 0
	stop := errors.New("stopped")
	for _, c := range []struct {
		name string
		doc  sheet.Document
		o    Options
		want string
	}{
		{"no pages", sheet.Document{}, Options{}, "nothing to print"},
		{"a length beyond every page", boundless, Options{}, "can't be written"},
		{"a scale of 1:0", noScale, Options{}, "can't be written"},
		{"stopped by the caller", allPages(), Options{Progress: func(i, n int) error {
			if i == 2 {
				return stop
			}
			return nil
		}}, "stopped"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var out bytes.Buffer
			err := Write(&out, c.doc, c.o)
			if err == nil || !strings.Contains(err.Error(), c.want) {
				t.Errorf("got %v; want an error with %q", err, c.want)
			}
			if out.Len() > 0 {
				t.Errorf("%d bytes were written before the fault", out.Len())
			}
		})
	}
}

func TestLettersBeyondTheFont(t *testing.T) {
	d := page(&drawing.Text{At: plane.Point{X: length.MM(20), Y: length.MM(20)}, Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: length.MM(5), Say: message.New("clay \U0001F3FA\nand 釉")})
	var out bytes.Buffer
	if err := Write(&out, d, Options{}); err != nil {
		t.Error(err)
	}
}

func TestWriterFaultIsTold(t *testing.T) {
	full, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
	if err != nil {
		t.Skip("no device that is always full")
	}
	defer func() { _ = full.Close() }()
	if err := Write(full, allPages(), Options{}); err == nil {
		t.Error("a full disk was not told")
	}
}

// The reader's outline, read by MuPDF, names the parts in order with the pages
// on which they begin, and the contents of the cover lead there.
func TestOutlineLeadsToThePages(t *testing.T) {
	d := sheet.Drawings.Document(bench(), nil, sheet.Options{For: sheet.Everything})
	path := written(t, d)
	out, err := exec.Command(tool(t, "mutool"), "show", path, "outline").Output()
	if err != nil {
		t.Fatal(err)
	}
	for _, b := range d.Bookmarks {
		want := fmt.Sprintf("\"%s\"\t#page=%d&", b.Title, b.Page+1)
		if !strings.Contains(string(out), want) {
			t.Errorf("the outline has no %q:\n%s", want, out)
		}
	}
	if n := strings.Count(string(out), "#page="); n != len(d.Bookmarks) || n < 12 {
		t.Errorf("%d entries; want all %d bookmarks", n, len(d.Bookmarks))
	}
	links, err := exec.Command(tool(t, "mutool"), "show", path, "pages/1/Annots/*/Dest/1/Type").CombinedOutput()
	if err != nil {
		t.Fatalf("%v %s", err, links)
	}
	if n := strings.Count(string(links), "/Page"); n != len(d.Pages[0].Links) || n == 0 {
		t.Errorf("%d links on the cover lead to pages; want %d\n%s", n, len(d.Pages[0].Links), links)
	}
}

func TestDecimals(t *testing.T) {
	for n, want := range map[int64]string{
		0: "0", 1: "0.0001", -1: "-0.0001", 10000: "1", -25000: "-2.5", 90_7087: "90.7087", 1_000_100: "100.01", 123_456_000: "12345.6",
	} {
		if got := string(appendDecimal(nil, n)); got != want {
			t.Errorf("%d ten-thousandths became %s; want %s", n, got, want)
		}
	}
}
