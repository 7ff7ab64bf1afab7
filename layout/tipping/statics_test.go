package tipping

import (
	"math"
	"testing"

	"frontlay/layout/plan"
	"frontlay/model/length"
)

// Statics (computed): pivot at the front foot. 40 kg, centre 0.225 m behind it, hold
// 9.0 kg·m. Four open 3 kg drawers, centres 0.20 m in front, tip 2.4: it stands. 27.2155 kg
// (60 lb) on an open drawer at 0.40 m add 10.886 → 13.286 > 9.0: it tips.
func TestWorkedCase(t *testing.T) {
	mm := length.MM
	s := Study{Edge: &plan.Front{}, EdgeOut: mm(400), LoadKg: 27.2155, Height: mm(1000), Parts: []Part{{Kg: 40, Behind: mm(225)}}}
	for range 4 {
		s.Parts = append(s.Parts, Part{Kg: 3, Behind: mm(200), Reach: mm(400)})
	}
	s.weigh()
	open, loaded := &s.States[2], &s.States[3]
	for _, of := range []struct {
		what      string
		got, want float64 // kg·m
	}{
		{"holds", open.Holds / Gravity, 9}, {"tips", open.Tips / Gravity, 2.4}, {"with the load", loaded.Tips / Gravity, 13.286},
		{"the edge holds", s.EdgeKg() * 0.4, 9 - 2.4}, {"the fixing at 1 m", s.Pull(loaded) / Gravity, 13.286 - 9},
	} {
		if math.Abs(of.got-of.want) > 5e-4 {
			t.Errorf("%s: %.4f kg·m, not %.4f", of.what, of.got, of.want)
		}
	}
	if open.Margin() < 0 || loaded.Margin() >= 0 || s.Pull(open) != 0 {
		t.Error("it stands open and tips under the load")
	}
}
