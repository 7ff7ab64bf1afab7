package pdfout

import (
	"bytes"
	"encoding/xml"
	"io"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"frontlay/layout"
	"frontlay/layout/sheet"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
)

// line is a line of text that MuPDF reads on a page: how high its capitals are, in
// millimetres, and where it stands, from the upper left corner.
type line struct {
	text   string
	height float64
	box    box
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
	const mm = 25.4 / 72
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
		case "line":
			f := strings.Fields(attr(e, "bbox"))
			b := box{point{number(f[0]) * mm, number(f[1]) * mm}, point{number(f[2]) * mm, number(f[3]) * mm}}
			pages[last] = append(pages[last], line{text: attr(e, "text"), box: b})
		case "font":
			l := &pages[last][len(pages[last])-1]
			l.height = number(attr(e, "size")) * mm * capitals
		case "char":
			if l := &pages[last][len(pages[last])-1]; attr(e, "c") != "" {
				l.text += attr(e, "c")
			}
		}
	}
}

// benchPapers are those that templates are tried on here.
var benchPapers = []sheet.Paper{
	papers[0], papers[1], papers[2], {Name: "roll 610", Width: length.MM(610)},
}

// projects are all test projects and those that ship.
func projects(t *testing.T) map[string]*model.Project {
	t.Helper()
	all := map[string]*model.Project{}
	for _, pattern := range []string{"../testdata/projects/*.yaml", "../assets/projects/*.yaml"} {
		files, err := filepath.Glob(pattern)
		if err != nil || len(files) == 0 {
			t.Fatalf("no projects in %s (%v)", pattern, err)
		}
		for _, file := range files {
			all[filepath.Base(file)] = loaded(t, file)
		}
	}
	return all
}
