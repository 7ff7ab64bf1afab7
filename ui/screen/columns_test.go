package screen

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// TestColumnsFindWhatMeets compares what columns give with a look through all
// boxes, after some were added and the last ones taken out again.
func TestColumnsFindWhatMeets(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		const width = 500
		x := rapid.Float32Range(-200, width+200)
		var c columns
		c.widen(width)
		var boxes []box
		for _, put := range rapid.SliceOfN(rapid.Bool(), 0, 60).Draw(t, "put") {
			if n := len(boxes); !put && n > 0 {
				c.drop(boxes[n-1])
				boxes = boxes[:n-1]
				continue
			}
			x1 := x.Draw(t, "x1")
			b := box{X1: x1, X2: x1 + rapid.Float32Range(0, 300).Draw(t, "wide"), Y2: 10}
			c.add(len(boxes), b)
			boxes = append(boxes, b)
		}
		from := x.Draw(t, "from")
		look := box{X1: from, X2: from + rapid.Float32Range(0, 100).Draw(t, "to"), Y2: 10}
		given := slices.Sorted(c.near(look.X1, look.X2))
		if once := slices.Compact(slices.Clone(given)); len(once) != len(given) {
			t.Fatalf("%v are given more than once", given)
		}
		for i, b := range boxes {
			if _, ok := slices.BinarySearch(given, i); !ok && b.X1 <= look.X2 && look.X1 <= b.X2 {
				t.Fatalf("box %d from %v to %v is not near %v to %v", i, b.X1, b.X2, look.X1, look.X2)
			}
		}
	})
}

// TestATextLooksAtItsNeighboursOnly counts what a text looks at that is looked a
// place for in a run, and in one four times as long.
func TestATextLooksAtItsNeighboursOnly(t *testing.T) {
	st := newStage(t)
	count := func(cabs int, width float32) int {
		st.show(scene{"", cabinets(t, cabs, 300, 360, 5)}, manners(t)[0])
		c := st.screen
		c.Resize(c.Size().AddWidthHeight(width-c.Size().Width, 0))
		c.SetSeeThrough(true)
		p := c.painter()
		p.paint(c.shown())
		at := p.taken[len(p.taken)/2].ink()
		return len(slices.Collect(p.strokesIn.near(at.X1, at.X2))) + len(slices.Collect(p.takenIn.near(at.X1, at.X2)))
	}
	few, many := count(20, 1000), count(80, 4000)
	if few == 0 || many > 2*few {
		t.Errorf("in a run of 20 cabinets a text looks at %d things, in one of 80 at %d", few, many)
	}
}
