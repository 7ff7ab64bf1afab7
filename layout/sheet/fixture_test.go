package sheet

import (
	"fmt"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"

	"pgregory.net/rapid"
)

// lopsided is a front whose two sides have nothing in common, so that a
// mirrored or swapped side shows.
func lopsided() plan.Front {
	f := front(1, mm(597), mm(283))
	f.EdgeDistance = plan.Edges{Left: mm(36), Right: mm(27)}
	f.Drop = mm(16)
	f.Holes = []plan.Hole{
		hole(plan.Left, mm(36), mm(64), mm(10)),
		hole(plan.Left, mm(36), mm(96), mm(10)),
		hole(plan.Left, mm(36), mm(160), mm(10)),
		hole(plan.Right, mm(597-27), mm(51), mm(8)),
		hole(plan.Right, mm(597-27), mm(83), mm(8)),
	}
	return f
}

func front(number int, w, h length.Length) plan.Front {
	return plan.Front{
		Number: number, Name: fmt.Sprintf("Glaze %d", number),
		Place: model.Place{Front: number - 1},
		Face:  plane.R(0, 0, w, h),
	}
}

func hole(side plan.Side, x, y, diameter length.Length) plan.Hole {
	return plan.Hole{At: plane.Point{X: x, Y: y}, Side: side, Diameter: diameter, Depth: mm(12)}
}

func planOf(fronts ...plan.Front) *plan.Plan {
	return &plan.Plan{Project: &model.Project{Title: "Glaze bench"}, Fronts: fronts}
}

// randomFront draws a front with up to four holes a side, anywhere on it.
func randomFront(t *rapid.T, number int) plan.Front {
	f := front(number, mm(rapid.Int64Range(80, 1500).Draw(t, "width")), mm(rapid.Int64Range(60, 900).Draw(t, "height")))
	for _, side := range []plan.Side{plan.Left, plan.Right} {
		in := tenths(t, mm(8), min(mm(90), f.Face.Width()/2), "edge distance")
		n := rapid.IntRange(0, 4).Draw(t, "holes")
		for range n {
			x := in
			if side == plan.Right {
				x = f.Face.Width() - in
			}
			y := tenths(t, 0, f.Face.Height(), "height")
			f.Holes = append(f.Holes, hole(side, x, y, mm(rapid.Int64Range(2, 35).Draw(t, "diameter"))))
		}
	}
	return f
}

func randomPaper(t *rapid.T) Paper {
	all := append(Papers(), Paper{"custom", mm(200), mm(250)}, Paper{"least", leastEdge, leastEdge}, Paper{"roll", mm(610), 0})
	return all[rapid.IntRange(0, len(all)-1).Draw(t, "paper")]
}

func tenths(t *rapid.T, lo, hi length.Length, name string) length.Length {
	const tenth = length.Millimetre / 10
	return tenth * length.Length(rapid.Int64Range(int64(lo/tenth), int64(hi/tenth)).Draw(t, name))
}
