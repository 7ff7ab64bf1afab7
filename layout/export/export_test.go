package export

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"encoding/xml"
	"io"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/drawing/dxf"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// tool finds a program that the tests need; see the Makefile, which installs
// them and sets FRONTLAY_TOOLS=1.
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

// lopsided is a plan with one front whose two sides have nothing in common.
func lopsided() *plan.Plan {
	mm := length.MM
	f := plan.Front{Number: 1, Name: "Glazes & “oxides”", Face: plane.R(mm(3), mm(90), mm(600), mm(373))}
	add := func(side plan.Side, x, y, d, depth length.Length) {
		f.Holes = append(f.Holes, plan.Hole{At: plane.Point{X: x, Y: y}, Side: side, Diameter: d, Depth: depth})
	}
	add(plan.Left, mm(36), mm(64), mm(10), mm(12))
	add(plan.Left, mm(36), mm(96), mm(10), mm(12))
	add(plan.Right, mm(570), length.FromMM(51.3), mm(8), length.FromMM(11.5))
	f.HandleHoles = []plan.Hole{{At: plane.Point{X: mm(298), Y: mm(240)}, Kind: plan.HandleHole, Diameter: mm(5), Depth: mm(19)}}
	return &plan.Plan{
		Project: &model.Project{Title: "Glaze bench"}, Fronts: []plan.Front{f},
		Cabinets: []plan.Cabinet{{Name: "Glazes", Outline: plane.R(0, mm(90), mm(603), mm(450))}},
		Extent:   plane.R(0, 0, mm(603), mm(450)),
	}
}

func fileNamed(t *testing.T, files []File, suffix string) File {
	t.Helper()
	for _, f := range files {
		if strings.HasSuffix(f.Name, suffix) {
			return f
		}
	}
	t.Fatalf("no file ends in %s", suffix)
	return File{}
}

func saved(t *testing.T, f File) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), f.Name)
	if err := os.WriteFile(path, f.Data, 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

type hole struct{ x, y, r float64 }

// wanted are the holes of the plan's front as it lies face down.
func wanted(p *plan.Plan) map[string][]hole {
	f := &p.Fronts[0]
	all := map[string][]hole{}
	for _, h := range f.Holes {
		l := holeLayer(h.Diameter, h.Depth)
		all[l] = append(all[l], hole{f.Face.Width().MM() - h.At.X.MM(), h.At.Y.MM(), h.Diameter.MM() / 2})
	}
	for _, h := range f.HandleHoles {
		l := "THROUGH_D" + figure(h.Diameter)
		all[l] = append(all[l], hole{f.Face.Width().MM() - h.At.X.MM(), h.At.Y.MM(), h.Diameter.MM() / 2})
	}
	return all
}

// ezdxf, an independent reader, finds no fault and the plan's holes.
func TestDXFReadByEzdxf(t *testing.T) {
	python := tool(t, "/usr/bin/python3") // Debian’s, which has python3-ezdxf
	p := lopsided()
	files, err := Files(p, nil, Options{Kinds: []Kind{DXF}})
	if err != nil {
		t.Fatal(err)
	}
	script := `
import sys, ezdxf
d = ezdxf.readfile(sys.argv[1])
a = d.audit()
print("version", d.dxfversion, "faults", len(a.errors) + len(a.fixes))
for e in d.modelspace():
    if e.dxftype() == "CIRCLE":
        print("circle", e.dxf.layer, repr(e.dxf.center.x), repr(e.dxf.center.y), repr(e.dxf.radius))
    if e.dxftype() == "POLYLINE":
        print("outline", e.dxf.layer, e.is_closed, *[repr(v) for p in e.points() for v in (p.x, p.y)])
    if e.dxftype() == "TEXT" and e.dxf.layer == "NOTE":
        print("note at", e.dxf.align_point.x, e.dxf.align_point.y, e.dxf.text)
`
	for _, f := range files {
		out, err := exec.Command(python, "-c", script, saved(t, f)).CombinedOutput()
		if err != nil {
			t.Fatalf("%s: ezdxf: %v\n%s", f.Name, err, out)
		}
		if !strings.Contains(string(out), "version AC1009 faults 0\n") {
			t.Errorf("%s: %s", f.Name, out)
		}
		if !strings.HasPrefix(f.Name, "front-01") {
			continue
		}
		if !strings.Contains(string(out), "note at 0.0 -8.0 REAR FACE, bottom edge down, left here is RIGHT in the room\n") {
			t.Errorf("nothing says how the front lies: %s", out)
		}
		if !strings.Contains(string(out), "outline OUTLINE True 0.0 0.0 597.0 0.0 597.0 283.0 0.0 283.0") {
			t.Errorf("the outline is not that of the front: %s", out)
		}
		got := map[string][]hole{}
		for _, line := range strings.Split(string(out), "\n") {
			if w := strings.Fields(line); len(w) == 5 && w[0] == "circle" {
				got[w[1]] = append(got[w[1]], hole{parse(t, w[2]), parse(t, w[3]), parse(t, w[4])})
			}
		}
		compareHoles(t, got, wanted(p), 1e-6)
	}
}

// GDAL, a second reader, finds as many holes.
func TestDXFReadByGDAL(t *testing.T) {
	ogrinfo := tool(t, "ogrinfo")
	files, err := Files(lopsided(), nil, Options{Kinds: []Kind{DXF}})
	if err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command(ogrinfo, "-al", "-q", saved(t, fileNamed(t, files, "oxides-rear-face.dxf"))).CombinedOutput()
	if err != nil {
		t.Fatalf("ogrinfo: %v\n%s", err, out)
	}
	if n := len(regexp.MustCompile(`Layer \(String\) = (HOLE|THROUGH)_D`).FindAll(out, -1)); n != 4 {
		t.Errorf("GDAL finds %d holes; want 4\n%s", n, out)
	}
}

func parse(t *testing.T, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func compareHoles(t *testing.T, got, want map[string][]hole, tolerance float64) {
	t.Helper()
	if len(got) != len(want) {
		t.Errorf("layers %v; want %v", got, want)
	}
	for layer, holes := range want {
		if len(got[layer]) != len(holes) {
			t.Errorf("layer %s has %d holes; want %d", layer, len(got[layer]), len(holes))
			continue
		}
		for i, h := range holes {
			g := got[layer][i]
			if math.Abs(g.x-h.x) > tolerance || math.Abs(g.y-h.y) > tolerance || math.Abs(g.r-h.r) > tolerance {
				t.Errorf("layer %s hole %d: %+v; want %+v", layer, i, g, h)
			}
		}
	}
}

// MuPDF renders the SVG of a rear face at full size; the circles it draws are
// the plan's holes.
func TestSVGReadByMuPDF(t *testing.T) {
	p := lopsided()
	files, err := Files(p, nil, Options{Kinds: []Kind{SVG}})
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		if err := xml.Unmarshal(f.Data, new(struct{})); err != nil {
			t.Errorf("%s is not XML: %v", f.Name, err)
		}
	}
	out, err := exec.Command(tool(t, "mutool"), "trace", saved(t, fileNamed(t, files, "oxides-rear-face.svg"))).Output()
	if err != nil {
		t.Fatal(err)
	}
	var outline *[2]float64 // lower left corner
	got := []hole{}
	for _, path := range strings.Split(string(out), "<stroke_path") {
		lo, hi, curves := extent(t, path)
		switch {
		case curves == 0 && near(hi[0]-lo[0], 597) && near(hi[1]-lo[1], 283):
			outline = &[2]float64{lo[0], hi[1]}
		case curves > 0 && outline != nil:
			got = append(got, hole{(lo[0]+hi[0])/2 - outline[0], outline[1] - (lo[1]+hi[1])/2, (hi[0] - lo[0]) / 2})
		}
	}
	want := []hole{}
	front := &p.Fronts[0]
	for _, h := range append(append([]plan.Hole{}, front.Holes...), front.HandleHoles...) {
		want = append(want, hole{front.Face.Width().MM() - h.At.X.MM(), h.At.Y.MM(), h.Diameter.MM() / 2})
	}
	compareHoles(t, map[string][]hole{"": got}, map[string][]hole{"": want}, 0.005)
}

func near(a, b float64) bool { return math.Abs(a-b) < 0.005 }

var (
	transformed = regexp.MustCompile(`transform="([^"]*)"`)
	placesOf    = regexp.MustCompile(` x3?="([^"]*)" y3?="([^"]*)"`)
)

// extent is the box around a traced path in millimetres, and its count of
// curves.
func extent(t *testing.T, path string) (lo, hi [2]float64, curves int) {
	t.Helper()
	m := transformed.FindStringSubmatch(path)
	if m == nil {
		return lo, hi, 0
	}
	var k [6]float64
	for i, s := range strings.Fields(m[1]) {
		k[i] = parse(t, s)
	}
	path, _, _ = strings.Cut(path, "</stroke_path>")
	lo, hi = [2]float64{math.Inf(1), math.Inf(1)}, [2]float64{math.Inf(-1), math.Inf(-1)}
	for _, line := range strings.Split(path, "\n") {
		s := regexp.MustCompile(`x[13]?="[^"]*" y[13]?="[^"]*"( x2="[^"]*" y2="[^"]*")? x3=`).FindString(line)
		if s != "" {
			curves++
		}
		for _, q := range placesOf.FindAllStringSubmatch(line, -1) {
			x, y := parse(t, q[1]), parse(t, q[2])
			at := [2]float64{(k[0]*x + k[2]*y + k[4]) * 25.4 / 72, (k[1]*x + k[3]*y + k[5]) * 25.4 / 72}
			for i := range at {
				lo[i], hi[i] = math.Min(lo[i], at[i]), math.Max(hi[i], at[i])
			}
		}
	}
	return lo, hi, curves
}

func TestCSVHasOneHeaderAndPlainNumbers(t *testing.T) {
	files, err := Files(lopsided(), nil, Options{Kinds: []Kind{CSV}, Say: message.Language{Unit: length.UnitMM, Comma: true}})
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		rows, err := csv.NewReader(bytes.NewReader(f.Data)).ReadAll()
		if err != nil {
			t.Errorf("%s: %v", f.Name, err) // also where rows differ in their count of cells
			continue
		}
		if f.Name != "drill.csv" {
			continue
		}
		if len(rows) != 5 {
			t.Fatalf("%d rows; want a header and 4 holes", len(rows))
		}
		at := map[string]int{}
		for i, h := range rows[0] {
			at[h] = i
		}
		if got := rows[3][at["From bottom (mm)"]]; got != "51.3" {
			t.Errorf("hole 3 is %q from the bottom; want 51.3, with a point", got)
		}
		if got := rows[1][at["From left, as it lies (mm)"]]; got != "561" {
			t.Errorf("hole 1 is %q from the left; want 597 − 36", got)
		}
	}
}

// What is ordered by the file and by the printed list is the same.
func TestHardwareFileCountsSparesAsOnPaper(t *testing.T) {
	p := lopsided()
	f := &p.Fronts[0]
	f.Fitted, f.Sheet, f.Height = true, &model.HardwareSheet{Name: "invented"}, &model.DrawerHeight{Name: "low"}
	f.Drawer.BottomCut = plan.Size{}
	files, err := Files(p, nil, Options{Kinds: []Kind{CSV}})
	if err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(bytes.NewReader(fileNamed(t, files, "hardware.csv").Data)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var file, paper []string
	for _, r := range rows[1:] {
		file = append(file, strings.Join(r[1:], "|"))
	}
	for _, r := range list.HardwareList(p, list.StockPlans(p), list.ForFiles(message.Language{}), list.DefaultSpare).Rows {
		if !r.Group {
			paper = append(paper, strings.Join(r.Cells[1:], "|"))
		}
	}
	if !slices.Equal(file, paper) || !slices.Contains(file, "fixings in fronts, hole Ø 10 mm, 12 mm deep|pieces|2|3") {
		t.Errorf("the file has\n%q, paper\n%q", file, paper)
	}
}

func TestPlanAsJSON(t *testing.T) {
	files, err := Files(lopsided(), nil, Options{Kinds: []Kind{JSON}})
	if err != nil {
		t.Fatal(err)
	}
	var got struct {
		Unit   string
		Fronts []struct {
			Name  string
			Face  struct{ Left, Bottom, Width, Height float64 }
			Holes []struct{ X, Y, Diameter, Depth float64 }
		}
	}
	if err := json.Unmarshal(files[0].Data, &got); err != nil {
		t.Fatal(err)
	}
	f := got.Fronts[0]
	if got.Unit != "mm" || f.Name != "Glazes & “oxides”" || f.Face.Left != 3 || f.Face.Width != 597 || len(f.Holes) != 3 || f.Holes[2].Y != 51.3 || f.Holes[2].Depth != 11.5 {
		t.Errorf("got %+v", got)
	}
}

// Kinds and sizes have the words of the trade and of the project's file: a fixed
// panel is "fixed", a drawer back has a height.
func TestPlanAsJSONSpeaksTheTrade(t *testing.T) {
	p := lopsided()
	drawer := &p.Fronts[0]
	drawer.Fitted, drawer.Sheet, drawer.Height = true, &model.HardwareSheet{Name: "invented"}, &model.DrawerHeight{Name: "low"}
	drawer.Drawer.BackCut = plan.Size{Width: length.MM(500), Length: length.MM(82)}
	p.Fronts = append(p.Fronts, plan.Front{Number: 2, Kind: model.FixedPanel})
	files, err := Files(p, nil, Options{Kinds: []Kind{JSON}})
	if err != nil {
		t.Fatal(err)
	}
	var got struct {
		Version int
		Fronts  []struct {
			Kind   string
			Drawer struct{ Back map[string]float64 }
		}
	}
	if err := json.Unmarshal(files[0].Data, &got); err != nil {
		t.Fatal(err)
	}
	back := got.Fronts[0].Drawer.Back
	if got.Version != 2 || got.Fronts[1].Kind != "fixed" || len(back) != 2 || back["width"] != 500 || back["height"] != 82 {
		t.Errorf("got %+v", got)
	}
}

// Both faces of carcass sides are drilled from the inside: the name of the file
// and a text in it say so, and where the front edge lies.
func TestFilesOfSidesSayWhichFace(t *testing.T) {
	p := lopsided()
	f := &p.Fronts[0]
	f.Fitted, f.Sheet, f.Height = true, &model.HardwareSheet{Name: "invented"}, &model.DrawerHeight{Name: "low"}
	f.Opening = plane.R(length.MM(19), length.MM(109), length.MM(584), length.MM(431))
	f.Runner = plan.Runner{Length: length.MM(300), Screws: []plan.SideHole{{Back: length.MM(37), Y: length.MM(130), Diameter: length.MM(5), Depth: length.MM(9)}}}
	p.Cabinets[0].Depth, p.Cabinets[0].Sides = length.MM(400), length.MM(400)
	files, err := Files(p, nil, Options{Kinds: []Kind{DXF, SVG}})
	if err != nil {
		t.Fatal(err)
	}
	for suffix, want := range map[string]string{
		"left-side-inside-face.dxf": "INSIDE FACE, bottom edge down, front edge at the LEFT", "right-side-inside-face.dxf": "INSIDE FACE, bottom edge down, front edge at the RIGHT",
		"left-side-inside-face.svg": "front edge at the LEFT", "oxides-rear-face.svg": "left here is RIGHT in the room",
	} {
		if data := string(fileNamed(t, files, suffix).Data); strings.Count(data, want) != 1 {
			t.Errorf("%s does not say %q once", suffix, want)
		}
	}
}

func TestFileNamesAreTame(t *testing.T) {
	for in, want := range map[string]string{
		"front-01-Glazes & “oxides”": "front-01-Glazes-oxides",
		"side-02-../../etc, left":    "side-02-etc-left",
		"front-03-釉":                 "front-03",
	} {
		if got := fileName(in); got != want {
			t.Errorf("%q became %q; want %q", in, got, want)
		}
	}
}

func TestUnknownKindIsTold(t *testing.T) {
	if _, err := Files(lopsided(), nil, Options{Kinds: []Kind{"step"}}); err == nil || !strings.Contains(err.Error(), "step") {
		t.Errorf("got %v; want an error that names the kind", err)
	}
}

func TestWriteFaultIsTold(t *testing.T) {
	d := &drawing.Drawing{Marks: []drawing.Mark{&drawing.Line{}}}
	if err := dxf.Write(failing{}, d, dxf.Options{}); err == nil {
		t.Error("a writer that fails was not told")
	}
}

type failing struct{}

func (failing) Write([]byte) (int, error) { return 0, io.ErrShortWrite }
