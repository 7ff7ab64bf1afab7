package ui

import (
	"flag"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
)

var picture = flag.Bool("picture", false, "paint the README's picture anew")

// TestPictureIsPainted paints the window with the demo, see-through, as the
// README shows it: with Fyne's own software painter, so that it needs no display.
func TestPictureIsPainted(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.win.Resize(fyne.NewSize(1240, 690))
	w.desk.Screen.SetSeeThrough(true)
	w.session.Select(w.face(2))
	w.Update()
	img := w.win.Canvas().Capture()
	colours := map[[3]uint32]bool{}
	for y := img.Bounds().Min.Y; y < img.Bounds().Max.Y; y += 3 {
		for x := img.Bounds().Min.X; x < img.Bounds().Max.X; x += 3 {
			r, g, b, _ := img.At(x, y).RGBA()
			colours[[3]uint32{r, g, b}] = true
		}
	}
	if len(colours) < 20 {
		t.Fatalf("the picture has %d colours: nothing was painted", len(colours))
	}
	if !*picture {
		return
	}
	f, err := os.Create(filepath.Join("..", "assets", "pictures", "window.png"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	if err := (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(f, img); err != nil {
		t.Fatal(err)
	}
}
