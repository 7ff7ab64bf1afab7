package sheet

import (
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
)

// Every column of holes, the handle's and both of a stabiliser too, has its
// distance from the nearer edge, each on a level of its own.
func TestRearFacesDimensionEveryColumn(t *testing.T) {
	f := lopsided() // 597 wide: columns 36 from the left in the room, 27 from the right
	for _, x := range []int64{220, 240} {
		h := hole(plan.Left, mm(x), mm(40), mm(8))
		h.Kind = plan.StabiliserHole
		f.Holes = append(f.Holes, h)
	}
	f.HandleHoles = []plan.Hole{{At: plane.Point{X: mm(280), Y: mm(200)}, Kind: plan.HandleHole, Diameter: mm(5)}}
	page := Make(planOf(f), nil, Options{Parts: []Part{RearFaces}}).Pages[0]
	levels := map[length.Length][]length.Length{}
	for _, m := range page.Placed[len(page.Placed)-1].Drawing.Marks {
		if d, ok := m.(*drawing.Dimension); ok && !d.Vertical {
			levels[d.Value] = append(levels[d.Value], d.Line)
		}
	}
	for _, want := range []int64{36, 27, 220, 240, 280, 597} {
		if len(levels[mm(want)]) != 1 {
			t.Errorf("%d mm is dimensioned %d times; want once", want, len(levels[mm(want)]))
		}
	}
	if levels[mm(220)][0] == levels[mm(240)][0] {
		t.Error("the two columns of the stabiliser share a level")
	}
	// The drawing itself has no words that centre lines cross.
	for _, placed := range page.Placed[:len(page.Placed)-1] {
		for _, m := range placed.Drawing.Marks {
			if text, ok := m.(*drawing.Text); ok {
				t.Errorf("%q stands on the face", text.Say)
			}
		}
	}
	if s := words(page); !strings.Contains(s, "REAR FACE. Front 1") || !strings.Contains(s, "from left from bottom") {
		t.Errorf("the block says %s", s)
	}
}
