package sheet

import (
	"testing"

	"frontlay/layout/plane"
	"frontlay/model/length"
)

// A person measures up or down from the line, never minus something up.
func TestPlacesOnAStripAreSaidUpOrDown(t *testing.T) {
	for want, at := range map[string]plane.Point{
		"37 mm from the front edge, 7.5 mm below the line": {X: mm(37), Y: -length.FromMM(7.5)},
		"37 mm from the front edge, on the line":           {X: mm(37)},
		"37 mm from the front edge, 9 mm above the line":   {X: -mm(37), Y: mm(9)},
	} {
		if got := placeOnStrip(bore{at: at}).String(); got != want {
			t.Errorf("said %q; want %q", got, want)
		}
	}
}

func TestPlacesBesideALineAreSaidLeftOrRight(t *testing.T) {
	for want, x := range map[string]length.Length{
		"on the line": 0, "12 mm to the left of the line": -mm(12), "12 mm to the right of the line": mm(12),
	} {
		if got := besideLine(x).String(); got != want {
			t.Errorf("said %q; want %q", got, want)
		}
	}
}
