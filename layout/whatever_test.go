package layout_test

import (
	"bytes"
	"encoding/json"
	"math"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout"
	"frontlay/layout/drawing"
	"frontlay/layout/list"
	"frontlay/layout/projecttest"
	"frontlay/layout/view"
)

// Whatever a file can hold, however absurd, is placed, checked, drawn and listed: no panic,
// no weight below nothing, no explanation that does not add up.
func TestWhateverAFileHoldsIsSolved(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := projecttest.Any(t)
		r := layout.Solve(p)
		for i := range r.Findings {
			if g := &r.Findings[i]; math.IsNaN(g.FoundKg) || math.IsNaN(g.NeededKg) || g.What.Empty() || g.Change.Empty() {
				t.Fatalf("%s: %+v", g.Rule, g)
			}
		}
		for i := range r.Plan.Fronts {
			for _, s := range r.Plan.Explanations(&r.Plan.Fronts[i]) {
				requireTotal(t, s)
			}
		}
		for _, q := range list.Pieces(r.Plan) {
			if kg := q.WeightKg(); q.CutWidth > 0 && q.CutHeight > 0 && !(kg >= -1e-9) {
				t.Fatalf("%d × %v of %v × %v × %v weigh %v kg", q.Count, q.What, q.Width, q.Height, q.Board.Thickness, kg)
			}
		}
		list.All(r.Plan, r.Findings, list.Speaker{}, 0.1)
		var out bytes.Buffer
		if err := list.PlanJSON(&out, r.Plan); err != nil || !json.Valid(out.Bytes()) {
			t.Fatalf("%v: %s", err, &out)
		}
		drawn := []*drawing.Drawing{view.Elevation(r.Plan, view.ElevationOptions{SeeThrough: true, Found: view.Found{All: r.Findings}})}
		for i := range r.Plan.Fronts {
			drawn = append(drawn, view.Rear(&r.Plan.Fronts[i]))
		}
		for _, c := range r.Plan.Cabinets {
			for _, b := range c.Bays {
				drawn = append(drawn, view.Section(r.Plan, b.Place))
			}
		}
		for _, d := range drawn {
			if len(d.Marks) == 0 {
				t.Fatal("nothing is drawn")
			}
		}
	})
}
