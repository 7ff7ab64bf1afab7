package assets_test

import (
	"bytes"
	"image/png"
	"slices"
	"strings"
	"testing"

	"frontlay/assets"
)

func TestSheetsAreFoundByNameOnly(t *testing.T) {
	if got := assets.SheetNames(); !slices.Equal(got, []string{"sample-a", "sample-b"}) {
		t.Errorf("samples: %v", got)
	}
	for _, name := range assets.SheetNames() {
		if data, ok := assets.Sheet(name); !ok || len(data) == 0 {
			t.Errorf("%s is listed but not there", name)
		}
	}
	for _, name := range []string{"", ".", "..", "no-such-sheet", "../projects/glaze-bench", "sheets/sample-a", "sample-a.yaml"} {
		if data, ok := assets.Sheet(name); ok {
			t.Errorf("%q gives a sheet of %d bytes", name, len(data))
		}
	}
}

func TestSamplesSayThatTheirFiguresAreInvented(t *testing.T) {
	texts := map[string][]byte{}
	for _, name := range assets.Examples() {
		texts[name], _ = assets.Example(name)
	}
	for _, name := range assets.SheetNames() {
		texts[name], _ = assets.Sheet(name)
	}
	for name, text := range texts {
		if !strings.Contains(strings.ToLower(string(text)), "invented") {
			t.Errorf("%s does not say so", name)
		}
	}
}

// A user finds a figure by its comment: every one that stands alone has one
// above it or above its neighbour without a blank line between.
func TestEveryFigureOfASampleHasAComment(t *testing.T) {
	for _, name := range assets.SheetNames() {
		data, _ := assets.Sheet(name)
		explained := false
		for i, line := range strings.Split(string(data), "\n") {
			switch text := strings.TrimSpace(line); {
			case text == "" || strings.HasSuffix(text, ":") && !strings.HasPrefix(line, " ") && text != "drawers:":
				explained = false
			case strings.HasPrefix(text, "#"):
				explained = true
			case strings.ContainsAny(text, "0123456789") && !explained && !strings.HasPrefix(text, "frontlay_hardware"):
				t.Errorf("%s:%d: %s has no comment", name, i+1, text)
			}
		}
	}
}

func TestIconsAreThere(t *testing.T) {
	img, err := png.Decode(bytes.NewReader(assets.IconPNG()))
	if err != nil || img.Bounds().Dx() != 256 || img.Bounds().Dy() != 256 {
		t.Errorf("icon.png: %v, %v", img.Bounds(), err)
	}
}
