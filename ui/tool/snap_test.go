package tool

import (
	"testing"

	"frontlay/layout/plane"
	"frontlay/model/length"
)

func TestSteps(t *testing.T) {
	for _, c := range []struct {
		name string
		unit length.Unit
		free bool
		want length.Length
	}{
		{"whole millimetres", length.UnitMM, false, length.Millimetre},
		{"tenths when freed", length.UnitMM, true, 100 * length.Micrometre},
		{"whole millimetres in centimetres", length.UnitCM, false, length.Millimetre},
		{"sixteenths of an inch", length.UnitInch, false, length.Inch / 16},
		{"1/64 in when freed", length.UnitInch, true, length.Inch64th},
		{"twentieths of decimal inches", length.UnitInchDecimal, false, length.Inch / 20},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := Step(c.unit, c.free); got != c.want {
				t.Errorf("%v, want %v", got, c.want)
			}
		})
	}
}

func TestNearestLine(t *testing.T) {
	mm := length.MM
	line := func(y length.Length) GuideLine {
		return GuideLine{From: plane.Point{Y: y}, To: plane.Point{X: mm(100), Y: y}}
	}
	lines := []GuideLine{line(mm(100)), line(mm(108)), line(mm(300))}
	for _, c := range []struct {
		name        string
		want, reach length.Length
		found       length.Length // 0: none
	}{
		{"on the line", mm(100), mm(5), mm(100)},
		{"the nearer of two", mm(105), mm(5), mm(108)},
		{"at the very end of the reach", mm(305), mm(5), mm(300)},
		{"just past it", mm(305) + 1, mm(5), 0},
		{"nothing near", mm(200), mm(5), 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, ok := nearest(c.want, c.reach, lines)
			if ok != (c.found != 0) || got.From.Y != c.found {
				t.Errorf("found %v at %v", ok, got.From.Y)
			}
		})
	}
	if j := joined(line(mm(10)), -mm(50), mm(400)); j.From.X != -mm(50) || j.To.X != mm(400) || j.From.Y != mm(10) {
		t.Errorf("joined: %+v", j)
	}
}

// A drag leaves 10 mm of a front at both sides, or what there was; of what is too
// small for that, half.
func TestDraggedParts(t *testing.T) {
	mm := length.MM
	for _, c := range []struct {
		name              string
		first, whole      length.Length
		least, wantsFirst length.Length
	}{
		{"in between", mm(40), mm(100), mm(10), mm(40)},
		{"too little below", mm(3), mm(100), mm(10), mm(10)},
		{"less than nothing", -mm(30), mm(100), mm(10), mm(10)},
		{"too little above", mm(97), mm(100), mm(10), mm(90)},
		{"little there", mm(3), mm(16), mm(10), mm(8)},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := dragged(c.first, c.whole, c.least); got != c.wantsFirst {
				t.Errorf("%v, want %v", got, c.wantsFirst)
			}
		})
	}
}
