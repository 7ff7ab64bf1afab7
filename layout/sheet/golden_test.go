package sheet

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write the goldens anew")

// One page of each kind of template, as text: what moves shows in a review.
func TestPagesAsTheyWere(t *testing.T) {
	for _, c := range []struct {
		name string
		d    Document
	}{
		{"corner", Make(planOf(lopsided()), nil, Options{Parts: []Part{CornerTemplates}})},
		{"whole", Make(planOf(lopsided()), nil, Options{Parts: []Part{WholeTemplates}})},
		{"runners", Make(pedestal(), nil, Options{Parts: []Part{RunnerTemplates}})},
		{"calibration", Calibration(Options{})},
	} {
		t.Run(c.name, func(t *testing.T) {
			path := filepath.Join("testdata", c.name+".txt")
			got := dump(c.d.Pages[0])
			if *update {
				if err := os.MkdirAll("testdata", 0o755); err != nil {
					t.Fatal(err)
				}
				if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			if got != string(want) {
				t.Errorf("the page differs from %s (write it anew with -update and look at the difference):\n%s", path, firstDifference(got, string(want)))
			}
		})
	}
}

func dump(p Page) string {
	var b strings.Builder
	fmt.Fprintf(&b, "page %v × %v, %s\n", p.Width, p.Height, p.Kind)
	for _, placed := range p.Drawings() {
		fmt.Fprintf(&b, "placed %v of the drawing at %v, scale %d:%d, clip %v\n%s", placed.Origin, placed.At, placed.ScaleNum, placed.ScaleDen, placed.Clip, placed.Drawing.Dump())
	}
	return b.String()
}

func firstDifference(got, want string) string {
	g, w := strings.Split(got, "\n"), strings.Split(want, "\n")
	for i := range min(len(g), len(w)) {
		if g[i] != w[i] {
			return fmt.Sprintf("line %d\n got %s\nwant %s", i+1, g[i], w[i])
		}
	}
	return fmt.Sprintf("%d lines; want %d", len(g), len(w))
}
