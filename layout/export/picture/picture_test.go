package picture

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/layout/sheet"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

func mm(v int64) length.Length { return length.MM(v) }

// page is a page of 100 × 50 mm with some marks.
func page(marks ...drawing.Mark) *sheet.Page {
	return &sheet.Page{Width: mm(100), Height: mm(50), Placed: []drawing.Placed{{Drawing: &drawing.Drawing{Marks: marks}, ScaleNum: 1, ScaleDen: 1}}}
}

func painted(t *testing.T, p *sheet.Page, pixels int) image.Image {
	t.Helper()
	data, err := PNG(p, message.Language{}, pixels)
	if err != nil {
		t.Fatal(err)
	}
	again, _ := PNG(p, message.Language{}, pixels)
	if !bytes.Equal(data, again) {
		t.Error("the same page gives other bytes")
	}
	img, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return img
}

func at(img image.Image, x, y int) color.RGBA {
	return color.RGBAModel.Convert(img.At(x, y)).(color.RGBA)
}

// The longer edge has the pixels that are asked for; a place of the page is where it
// is on paper, and a board has the tone of its material.
func TestPlacesAndTones(t *testing.T) {
	tag := drawing.Tag{Meaning: drawing.Face}
	img := painted(t, page(
		&drawing.Rectangle{Tag: tag, Filled: true, Rect: plane.R(mm(10), mm(10), mm(40), mm(40)), Board: &model.Board{Material: "walnut"}},
		&drawing.Circle{Tag: drawing.Tag{Meaning: drawing.HoleEdge}, Centre: plane.Point{X: mm(70), Y: mm(20)}, Radius: mm(10)},
		&drawing.Line{Tag: drawing.Tag{Meaning: drawing.Register}, From: plane.Point{X: mm(50), Y: mm(45)}, To: plane.Point{X: mm(90), Y: mm(45)}},
	), 1000)
	if b := img.Bounds(); b.Dx() != 1000 || b.Dy() != 500 {
		t.Fatalf("the picture has %v", b)
	}
	white, walnut, black := color.RGBA{255, 255, 255, 255}, color.RGBA{0x7C, 0x59, 0x3E, 255}, color.RGBA{0, 0, 0, 255}
	for _, c := range []struct {
		name string
		x, y int
		want color.RGBA
	}{
		{"beside all", 5, 5, white},
		{"inside the board", 250, 250, walnut},
		{"left of the board", 95, 250, white},
		{"inside the circle", 700, 300, white},
		{"at the right of the circle", 800, 300, black},
		{"at the top of the circle", 700, 200, black},
		{"on the line", 700, 50, black},
		{"above the line", 700, 46, white},
	} {
		if got := at(img, c.x, c.y); got != c.want {
			t.Errorf("%s, at %d,%d: %v; want %v", c.name, c.x, c.y, got, c.want)
		}
	}
}

// Letters are as high as on paper and have smooth edges.
func TestLettersAreAsHighAsOnPaper(t *testing.T) {
	img := painted(t, page(&drawing.Text{
		Tag: drawing.Tag{Meaning: drawing.Label}, At: plane.Point{X: mm(10), Y: mm(20)}, Size: mm(10), Say: message.New("H"),
	}), 1000)
	top, bottom, grey := 500, 0, 0
	for y := range 500 {
		for x := range 1000 {
			c := at(img, x, y)
			if c.R < 128 {
				top, bottom = min(top, y), max(bottom, y)
			}
			if c.R > 0 && c.R < 255 {
				grey++
			}
		}
	}
	// 10 mm above a base line 30 mm below the top, ten pixels a millimetre.
	if max(top-200, 200-top) > 1 || max(bottom-299, 299-bottom) > 1 {
		t.Errorf("an H reaches from pixel %d to %d; want 200 to 299", top, bottom)
	}
	if grey == 0 {
		t.Error("edges are not smooth")
	}
}

func TestPixelsHaveBounds(t *testing.T) {
	for _, n := range []int{-1, 0, LeastPixels - 1, GreatestPixels + 1} {
		if _, err := PNG(page(), message.Language{}, n); err == nil {
			t.Errorf("%d pixels are taken", n)
		}
	}
	if _, err := PNG(&sheet.Page{}, message.Language{}, 1000); err == nil {
		t.Error("a page without a size is taken")
	}
}

// Marks far outside of the page, and lines without end, cost nothing and hurt nothing.
func TestMarksOutsideOfThePage(t *testing.T) {
	far := 2 * length.Metre
	img := painted(t, page(
		&drawing.Line{Tag: drawing.Tag{Meaning: drawing.Hidden}, Dashed: true, From: plane.Point{X: -far, Y: mm(25)}, To: plane.Point{X: far, Y: mm(25)}},
		&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.Carcass}, Filled: true, Rect: plane.R(far, far, 2*far, 2*far)},
	), 400)
	dark := 0
	for x := range 400 {
		if at(img, x, 100).R < 128 {
			dark++
		}
	}
	if dark < 200 || dark > 360 { // strokes of 2 mm, gaps of 1
		t.Errorf("%d pixels of 400 are dark along a dashed line", dark)
	}
}
