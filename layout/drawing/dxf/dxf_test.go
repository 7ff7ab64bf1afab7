package dxf

import (
	"bytes"
	"strconv"
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/mark"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// groups reads the pairs of a DXF file; it fails where one is not a code and a
// value.
func groups(t *testing.T, data []byte) [][2]string {
	t.Helper()
	lines := strings.Split(strings.TrimSuffix(string(data), "\n"), "\n")
	if len(lines)%2 != 0 {
		t.Fatalf("%d lines are no pairs", len(lines))
	}
	var all [][2]string
	for i := 0; i < len(lines); i += 2 {
		code := strings.TrimSpace(lines[i])
		if _, err := strconv.Atoi(code); err != nil {
			t.Fatalf("line %d: %q is no code", i+1, lines[i])
		}
		all = append(all, [2]string{code, lines[i+1]})
	}
	return all
}

func TestEveryKindOfMark(t *testing.T) {
	at := func(x, y int64) plane.Point { return plane.Point{X: length.MM(x), Y: length.MM(y)} }
	r := plane.R(0, 0, length.MM(40), length.MM(30))
	d := &drawing.Drawing{Marks: []drawing.Mark{
		&drawing.Line{From: at(0, 0), To: at(40, 10)},
		&drawing.Rectangle{Rect: r},
		&drawing.Circle{Tag: drawing.Tag{Meaning: drawing.HoleEdge}, Centre: at(20, 15), Radius: 5 * length.Millimetre / 2},
		&drawing.Text{At: at(20, 50), Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Say: message.New("Größe Ø %v 釉", length.MM(5))},
		&drawing.Dimension{From: at(0, 30), To: at(40, 30), Line: length.MM(45), Value: length.MM(40)},
		&drawing.Hatch{Rect: r},
		&drawing.Spot{Shape: mark.Ring, Rect: r},
		&drawing.Spot{Shape: mark.Cross, Rect: r},
	}}
	var b bytes.Buffer
	if err := Write(&b, d, Options{}); err != nil {
		t.Fatal(err)
	}
	for _, c := range b.Bytes() {
		if c > 0x7e {
			t.Fatal("the file is not ASCII")
		}
	}
	count := map[string]int{}
	values := map[string]bool{}
	for _, g := range groups(t, b.Bytes()) {
		if g[0] == "0" {
			count[g[1]]++
		}
		values[g[0]+" "+g[1]] = true
	}
	if count["LINE"] != 4 || count["POLYLINE"] != 2 || count["VERTEX"] != 8 || count["CIRCLE"] != 2 || count["TEXT"] != 2 || count["EOF"] != 1 {
		t.Errorf("%v", count)
	}
	for _, want := range []string{"40 2.5", "1 Groesse %%c 5 mm ?", "1 40", "1 AC1009", "70 4"} {
		if !values[want] {
			t.Errorf("no pair %q", want)
		}
	}
}

func TestLayerNames(t *testing.T) {
	for in, want := range map[string]string{
		"hole D10": "HOLE_D10", "": "0", "ä/b": "__B", strings.Repeat("x", 40): strings.Repeat("X", 31),
	} {
		if got := Name(in); got != want {
			t.Errorf("%q became %q; want %q", in, got, want)
		}
	}
}

func TestMarksWithoutALayerAreLeftOut(t *testing.T) {
	d := &drawing.Drawing{Marks: []drawing.Mark{&drawing.Line{To: plane.Point{X: 1}}}}
	var b bytes.Buffer
	if err := Write(&b, d, Options{Layer: func(drawing.Mark) string { return "" }}); err != nil {
		t.Fatal(err)
	}
	for _, g := range groups(t, b.Bytes()) {
		if g == [2]string{"0", "LINE"} {
			t.Error("a line without a layer was written")
		}
	}
}
