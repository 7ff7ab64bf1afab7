package pdfout

import (
	"bytes"
	"encoding/xml"
	"io"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"frontlay/layout/sheet"
)

// tool finds a program that the tests need. It fails the test where
// FRONTLAY_TOOLS=1 says that they are installed, and skips it otherwise.
func tool(t *testing.T, name string) string {
	t.Helper()
	path, err := exec.LookPath(name)
	if err != nil {
		if os.Getenv("FRONTLAY_TOOLS") == "1" {
			t.Fatalf("%s is not installed", name)
		}
		t.Skipf("%s is not installed (make test installs it)", name)
	}
	return path
}

// written writes a document uncompressed into a file.
func written(t *testing.T, d sheet.Document) string {
	t.Helper()
	var buf bytes.Buffer
	if err := Write(&buf, d, Options{Uncompressed: true}); err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(t.TempDir(), "pages.pdf")
	if err := os.WriteFile(path, buf.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

// point is a place in millimetres from the upper left corner of the page, y
// down; box an area.
type point struct{ x, y float64 }

type box struct{ lo, hi point }

// tracedPath is one path that MuPDF found on a page.
type tracedPath struct {
	kind   string // stroke_path, fill_path, clip_path
	points []point
	curves int
	closed bool
	width  float64 // of the line
}

// traced reads a PDF with MuPDF: the paths of each page.
func traced(t *testing.T, pdf string) [][]tracedPath {
	t.Helper()
	cmd := exec.Command(tool(t, "mutool"), "trace", pdf)
	var stderr bytes.Buffer
	cmd.Stderr = &stderr
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("mutool trace: %v\n%s", err, stderr.String())
	}
	if stderr.Len() > 0 {
		t.Fatalf("mutool complains: %s", stderr.String())
	}
	var pages [][]tracedPath
	var path *tracedPath
	var m [6]float64
	for dec := xml.NewDecoder(bytes.NewReader(out)); ; {
		token, err := dec.Token()
		if err == io.EOF {
			return pages
		}
		if err != nil {
			t.Fatal(err)
		}
		switch e := token.(type) {
		case xml.StartElement:
			switch e.Name.Local {
			case "page":
				pages = append(pages, nil)
			case "stroke_path", "fill_path", "clip_path":
				path = &tracedPath{kind: e.Name.Local, width: number(attr(e, "linewidth")) * 25.4 / 72}
				for i, s := range strings.Fields(attr(e, "transform")) {
					m[i] = number(s)
				}
			case "moveto", "lineto":
				path.points = append(path.points, inMM(m, attr(e, "x"), attr(e, "y")))
			case "curveto":
				path.curves++
				path.points = append(path.points, inMM(m, attr(e, "x3"), attr(e, "y3")))
			case "closepath":
				path.closed = true
			}
		case xml.EndElement:
			if path != nil && e.Name.Local == path.kind {
				last := len(pages) - 1
				pages[last] = append(pages[last], *path)
				path = nil
			}
		}
	}
}

func attr(e xml.StartElement, name string) string {
	for _, a := range e.Attr {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

func number(s string) float64 {
	v, _ := strconv.ParseFloat(s, 64)
	return v
}

func inMM(m [6]float64, xs, ys string) point {
	x, y := number(xs), number(ys)
	return point{(m[0]*x + m[2]*y + m[4]) * 25.4 / 72, (m[1]*x + m[3]*y + m[5]) * 25.4 / 72}
}

// extent is the least box around a path's points.
func (p tracedPath) extent() box {
	b := box{point{math.Inf(1), math.Inf(1)}, point{math.Inf(-1), math.Inf(-1)}}
	for _, q := range p.points {
		b.lo.x, b.lo.y = math.Min(b.lo.x, q.x), math.Min(b.lo.y, q.y)
		b.hi.x, b.hi.y = math.Max(b.hi.x, q.x), math.Max(b.hi.y, q.y)
	}
	return b
}

// circle tells whether the path is one of our circles, its centre and diameter.
func (p tracedPath) circle() (centre point, diameter float64, ok bool) {
	if p.curves != 8 {
		return point{}, 0, false
	}
	b := p.extent()
	return point{(b.lo.x + b.hi.x) / 2, (b.lo.y + b.hi.y) / 2}, b.hi.x - b.lo.x, true
}
