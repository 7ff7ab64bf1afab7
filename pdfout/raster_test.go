package pdfout

import (
	"bytes"
	"image"
	"image/png"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"
)

// One corner template is rendered at 600 dots an inch; the crosses of its holes
// are looked for in the picture and their distances compared with the plan.
func TestCrossesMeasuredInAPicture(t *testing.T) {
	p := lopsided()
	f := &p.Fronts[0]
	d := sheet.Make(p, nil, sheet.Options{Parts: []sheet.Part{sheet.CornerTemplates}})
	// Only the panel with its holes, so that nothing else lies at a cross.
	d.Pages = d.Pages[:1]
	d.Pages[0].Placed = d.Pages[0].Placed[:1]
	at := d.Pages[0].Placed[0]
	out := filepath.Join(t.TempDir(), "page.png")
	if msg, err := exec.Command(tool(t, "mutool"), "draw", "-q", "-r", "600", "-c", "gray", "-o", out, written(t, d), "1").CombinedOutput(); err != nil {
		t.Fatalf("mutool draw: %v %s", err, msg)
	}
	data, err := os.ReadFile(out)
	if err != nil {
		t.Fatal(err)
	}
	img, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	seen := 0
	for _, h := range f.Holes {
		want := f.Rear(h.At).Add(at.At).Sub(at.Origin)
		if !at.Clip.Contains(want) {
			continue
		}
		seen++
		x, y := crossIn(img, want.X.MM(), d.Pages[0].Height.MM()-want.Y.MM(), h.Diameter.MM()/2)
		if dx, dy := x-want.X.MM(), d.Pages[0].Height.MM()-y-want.Y.MM(); dx > 0.02 || dx < -0.02 || dy > 0.02 || dy < -0.02 {
			t.Errorf("the cross of the hole at %v is %.4f, %.4f mm off in the picture", h.At, dx, dy)
		}
	}
	if seen < 2 {
		t.Fatalf("%d holes on the page; the test needs 2", seen)
	}
}

// crossIn finds a cross near a place (mm from the upper left corner): the middle
// of darkness of its upright arm, and of its level arm, off its centre.
func crossIn(img image.Image, x, y, r float64) (cx, cy float64) {
	const dot = 25.4 / 600
	dark := func(px, py int) float64 {
		g, _, _, _ := img.At(px, py).RGBA()
		return 1 - float64(g)/0xffff
	}
	off, reach := r/2, 28 // 1.2 mm
	middle := func(at func(i int) (int, int), centre int) float64 {
		sum, weight := 0.0, 0.0
		for i := centre - reach; i <= centre+reach; i++ {
			px, py := at(i)
			d := dark(px, py)
			sum += d * (float64(i) + 0.5)
			weight += d
		}
		return sum / weight * dot
	}
	row, col := int((y-off)/dot), int((x-off)/dot)
	cx = middle(func(i int) (int, int) { return i, row }, int(x/dot))
	cy = middle(func(i int) (int, int) { return col, i }, int(y/dot))
	return cx, cy
}

// Every kind of mark comes out, with letters, and the page is sound.
func TestEveryKindOfMark(t *testing.T) {
	at := func(x, y int64) plane.Point { return plane.Point{X: length.MM(x), Y: length.MM(y)} }
	r := plane.R(length.MM(20), length.MM(20), length.MM(60), length.MM(50))
	marks := []drawing.Mark{
		&drawing.Line{From: at(20, 100), To: at(60, 110)},
		&drawing.Line{From: at(20, 105), To: at(60, 115), Dashed: true},
		&drawing.Rectangle{Rect: r},
		&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.DrawerBottom}, Rect: r.Move(at(60, 0)), Filled: true},
		&drawing.Circle{Centre: at(40, 80), Radius: length.MM(9)},
		&drawing.Text{At: at(100, 100), Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: length.MM(5), Say: message.New("Glaze %v", length.MM(5))},
		&drawing.Dimension{From: at(20, 150), To: at(90, 150), Line: length.MM(160), Value: length.MM(70), Prefix: "Ø"},
		&drawing.Dimension{From: at(120, 150), To: at(122, 153), Vertical: true, Line: length.MM(130), Value: length.MM(3)},
		&drawing.Hatch{Rect: r.Move(at(0, 200))},
	}
	paths := traced(t, written(t, page(marks...)))[0]
	var circles, rects, lines int
	for _, p := range paths {
		switch {
		case p.curves == 8:
			circles++
		case p.kind == "stroke_path" && len(p.points) == 4:
			rects++
		case p.kind == "stroke_path" && len(p.points) == 2:
			lines++
		}
	}
	// Two lines; two dimensions with 4 and 5; the hatch 33 lines 1.5 mm apart.
	if circles != 1 || rects != 2 || lines < 2+6+30 {
		t.Errorf("%d circles, %d rectangles, %d lines", circles, rects, lines)
	}
}
