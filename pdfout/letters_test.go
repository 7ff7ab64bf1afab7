package pdfout

import (
	"bytes"
	"encoding/xml"
	"io"
	"os/exec"
	"strings"
	"testing"

	"frontlay/layout"
	"frontlay/layout/projecttest"
	"frontlay/layout/sheet"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// line is a line of text that MuPDF reads on a page, and how high its capitals are, in
// millimetres.
type line struct {
	text   string
	height float64
}

// capitals is how high capitals are in an em of the Go fonts (their OS/2 table:
// sCapHeight 1480 of 2048).
const capitals = 1480.0 / 2048

// read reads the lines of text of each page with MuPDF.
func read(t *testing.T, pdf string) [][]line {
	t.Helper()
	out, err := exec.Command(tool(t, "mutool"), "draw", "-q", "-F", "stext", pdf).Output()
	if err != nil {
		t.Fatal(err)
	}
	var pages [][]line
	for dec := xml.NewDecoder(bytes.NewReader(out)); ; {
		token, err := dec.Token()
		if err == io.EOF {
			return pages
		}
		if err != nil {
			t.Fatal(err)
		}
		e, ok := token.(xml.StartElement)
		if !ok {
			continue
		}
		last := len(pages) - 1
		switch e.Name.Local {
		case "page":
			pages = append(pages, nil)
		case "font": // a line has one, or more where it goes on in another
			pages[last] = append(pages[last], line{height: number(attr(e, "size")) * 25.4 / 72 * capitals})
		case "char":
			pages[last][len(pages[last])-1].text += attr(e, "c")
		}
	}
}

// benchPapers are those that templates are tried on here.
var benchPapers = []sheet.Paper{
	papers[0], papers[1], papers[2], {Name: "roll 610", Width: length.MM(610)},
}

// Templates of all test projects and those that ship, on all papers of a bench: each
// hole is where the sheet says and is told on it, two templates on a sheet and pieces of
// a roll included; each page says what it belongs to; and it can be read at the bench.
// Capitals are 2.5 mm high at least, holes 3.5 mm, what keeps from drilling
// the mirror of a front 5 mm.
func TestTemplatesOfProjects(t *testing.T) {
	shared := 0
	for name, p := range projecttest.All(t, "..") {
		r := layout.Solve(p)
		for _, paper := range benchPapers {
			t.Run(name+", "+paper.Name, func(t *testing.T) {
				d := sheet.Make(r.Plan, r.Findings, sheet.Options{
					Paper: paper, Date: "2026-11-28 07:30", Say: message.Language{Unit: p.Unit},
					Parts: []sheet.Part{sheet.CornerTemplates, sheet.RunnerTemplates, sheet.HandleTemplates},
				})
				pdf := written(t, d)
				paths, texts := traced(t, pdf), read(t, pdf)
				for i := range d.Pages {
					page := &d.Pages[i]
					holes := comparePage(t, page, paths[i])
					if holes == 0 && page.Kind != string(sheet.HandleTemplates) { // there a sheet may have the edge alone
						t.Errorf("page %d shows no hole", i+1)
					}
					if len(page.Placed) > 2 {
						shared++
					}
					readable(t, i+1, page, holes, texts[i])
					belongs(t, i+1, d, p, texts[i])
				}
			})
		}
	}
	if shared < 20 {
		t.Errorf("%d sheets are shared; want more", shared)
	}
}

// readable holds the letters of a page with so many holes to their least heights.
func readable(t *testing.T, n int, page *sheet.Page, holes int, lines []line) {
	t.Helper()
	const off = 0.005 // what the file rounds a size by
	warning, told := "", 0
	for _, l := range lines {
		if strings.TrimSpace(l.text) == "" {
			continue
		}
		least := 2.5
		switch text := strings.ReplaceAll(l.text, "\u00a0", " "); {
		case strings.HasPrefix(text, "Ø"), strings.HasPrefix(text, "ONLY"):
			least = 3.5
		}
		if l.height < least-off {
			t.Errorf("page %d: %q is %.2f mm high; want %.1f", n, l.text, l.height, least)
		}
		if l.height > 5-off { // in one line or more
			warning += strings.TrimSpace(l.text) + " "
		}
		if l.height > 3.5-off {
			told += strings.Count(l.text, "↑") + strings.Count(l.text, "↓")
		}
	}
	if page.Kind == string(sheet.CornerTemplates) && !strings.Contains(warning, "Left on this paper is RIGHT in the room.") {
		t.Errorf("page %d does not say which side is which", n)
	}
	if told < holes {
		t.Errorf("page %d has %d holes and says of %d where they are, in letters of 3.5 mm", n, holes, told)
	}
}

// belongs looks for what tells a page from those of another job or plan.
func belongs(t *testing.T, n int, d sheet.Document, p *model.Project, lines []line) {
	t.Helper()
	var words []string
	for _, l := range lines {
		words = append(words, l.text)
	}
	all := strings.ReplaceAll(strings.Join(words, " "), "\u00a0", " ")
	for _, want := range []string{"2026-11-28 07:30", d.Paper.Plan.String(), p.Revision} {
		if !strings.Contains(all, want) {
			t.Errorf("page %d does not say %q", n, want)
		}
	}
	if !strings.Contains(all, " × ") && !strings.Contains(all, "sizes, see the cut list") {
		t.Errorf("page %d does not say how large its panel is", n)
	}
}

// A chest of three drawers takes three sheets of templates, the demo nine at most.
func TestFewSheets(t *testing.T) {
	for _, test := range []struct {
		name, paper string
		most        int
	}{
		{"new-cabinet", "A4", 3}, {"one-cabinet", "A4", 3}, {"glaze-bench", "A4", 9},
		// Holes that are too high for a head above them have it beside them.
		{"hanging-fronts", "A4", 4}, {"everything", "A4", 10}, {"glaze-bench", "Letter", 9}, {"one-cabinet", "Letter", 5},
	} {
		paper, err := sheet.ParsePaper(test.paper, length.UnitMM)
		if err != nil {
			t.Fatal(err)
		}
		r := layout.Solve(projecttest.All(t, "..")[test.name])
		d := sheet.Make(r.Plan, nil, sheet.Options{Paper: paper, Parts: []sheet.Part{sheet.CornerTemplates, sheet.RunnerTemplates}})
		if n := len(d.Pages); n > test.most {
			t.Errorf("%s takes %d sheets of %s; want %d at most", test.name, n, test.paper, test.most)
		}
	}
}

// On shop sheets and jig pages nothing that a hand acts upon is below 2.5 mm, read from
// the PDF: only the foot, which tells papers apart.
func TestBenchSheetsOfProjects(t *testing.T) {
	for name, p := range projecttest.All(t, "..") {
		t.Run(name, func(t *testing.T) {
			r := layout.Solve(p)
			d := sheet.Make(r.Plan, r.Findings, sheet.Options{
				Say: message.Language{Unit: p.Unit}, Parts: []sheet.Part{sheet.ShopSheets, sheet.JigSettings},
			})
			large := 0
			for i, lines := range read(t, written(t, d)) {
				for _, l := range lines {
					text := strings.TrimSpace(l.text)
					switch figure := strings.Trim(text, "0123456789. /≈\u00a0") == ""; {
					case text == "" || strings.Contains(text, "stamp"):
					case l.height < 2.495:
						t.Errorf("page %d: %q is %.2f mm high", i+1, text, l.height)
					case l.height > 6.995 && figure:
						large++
					}
				}
			}
			if large == 0 && len(r.Plan.Fronts) > 0 {
				t.Error("no setting of the jig is 7 mm high")
			}
		})
	}
}
