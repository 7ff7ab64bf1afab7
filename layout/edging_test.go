package layout_test

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout"
	"frontlay/layout/list"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// By hand (common practice, no source). Fronts are 597 wide with an edging of 0.5 at left
// and right: to cut 596 × their height. The boards are 560 - 8 of the back = 552 deep. Sides
// of 552 × 720 have 1 at the front edge: 551 × 720, 0.72 m each. Bottom and top, 564 × 552,
// have the front edge and both ends: 562 × 551, 0.564 + 2 × 0.552 = 1.668 m each. The
// shelves under and over the niche, 564 × 552, have all four: 562 × 550,
// 2 × (0.564 + 0.552) = 2.232 m each.
//
// Carcass: 2 × 0.72 + 2 × 1.668 + 2 × 2.232 = 9.24 m, told as 9.3; with a tenth 10.23, so
// 11 m at 2: 22. Fronts: Low's 300 and High's rest, each twice, above 0.91 m and with a
// tenth below 2 m at 1.5: 3. Two knobs at 7.25: 14.50. In all 39.50.
func TestEdgingByHand(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "edging.yaml"))
	r := layout.Solve(p)
	for _, f := range r.Findings {
		t.Errorf("found: %s: %s", f.Where, f.What)
	}
	type cut struct{ w, h length.Length }
	want := map[string]cut{"side": {551 * mm, 720 * mm}, "bottom, top": {562 * mm, 551 * mm}, "front": {596 * mm, 300 * mm}, "shelf under Niche": {562 * mm, 550 * mm}}
	for _, q := range list.Pieces(r.Plan) {
		if c, ok := want[q.What.String()]; ok && (q.CutWidth != c.w || q.CutHeight != c.h) {
			t.Errorf("%s: %v × %v to cut; want %v × %v", q.What, q.CutWidth, q.CutHeight, c.w, c.h)
		}
		delete(want, q.What.String())
	}
	if len(want) > 0 {
		t.Errorf("not listed: %v", want)
	}
	// The front of High: the stack ends 2 below the carcass's top.
	high := r.Plan.Fronts[2].Face.Height()
	metres := 2 * (300*mm + high).MM() / 1000
	table := list.HardwareList(r.Plan, list.StockPlans(r.Plan), message.Language{}, 0.1)
	row := func(of string) []string {
		i := slices.IndexFunc(table.Rows, func(r list.Row) bool { return len(r.Cells) > 5 && strings.HasPrefix(r.Cells[1], of) })
		if i < 0 {
			t.Fatalf("no row %q in %v", of, table.Rows)
		}
		return table.Rows[i].Cells[2:]
	}
	if got := row("Board 18 mm, lipping 1 mm"); !slices.Equal(got, []string{"m", "9.3", "11", "22.00"}) {
		t.Errorf("edging of the carcass: %v", got)
	}
	if metres < 0.91 || metres > 1.8 {
		t.Errorf("edging of the fronts is %v m", metres)
	}
	if got := row("Board 19 mm, lipping 0.5 mm"); !slices.Equal(got[2:], []string{"2", "3.00"}) {
		t.Errorf("edging of the fronts: %v", got)
	}
	if got := row("handles or knobs"); !slices.Equal(got, []string{"pieces", "2", "2", "14.50"}) {
		t.Errorf("knobs: %v", got)
	}
	if got := row("in all"); got[3] != "39.50" { // 22 + 3 + 14.50
		t.Errorf("costs in all: %v", got)
	}
}

// A hole at the top edge of a front that has no lipping there is not in it.
func TestHolesKnowWhichEdgesAreLipped(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "rules", "hole-lipping", "flagged.yaml"))
	p.Boards.Front.Edging.Fronts = model.EdgeNone
	for _, f := range layout.Solve(p).Findings {
		if f.Rule == "hole-lipping" {
			t.Errorf("found without a lipping: %s", f.What)
		}
	}
}

// Cut size and edging make the finished size, whichever edges get it.
func TestCutAndEdgingMakeTheFinishedSize(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := projecttest.Random(t)
		p.Boards.Carcass.Lipping = projecttest.Tenths(t, 0, 30, "lipping")
		draw := func(words ...string) string { return rapid.SampledFrom(words).Draw(t, "edges") }
		all := []string{"", model.EdgeNone, model.EdgeFront, model.EdgeFrontBack, model.EdgeFrontEnds, model.EdgeAll}
		p.Boards.Carcass.Edging = model.Edging{Sides: draw(all...), Bottoms: draw(all...), Partitions: draw(all...), Shelves: draw(all...)}
		p.Boards.Front.Edging = model.Edging{EndPanels: draw(all...), Fronts: draw("", model.EdgeNone, model.EdgeAll, model.EdgeSides, model.EdgeTopBottom, model.EdgeTop)}
		for _, q := range list.Pieces(layout.Solve(p).Plan) {
			lip := q.Board.Lipping
			if q.Framed || q.Matched > 0 {
				continue // a rail is cut longer by its tenons
			}
			if q.CutWidth+length.Length(q.Edged.AlongHeight)*lip != q.Width || q.CutHeight+length.Length(q.Edged.AlongWidth)*lip != q.Height {
				t.Fatalf("%s: %v × %v to cut, %v × %v finished with %v of %v", q.What, q.CutWidth, q.CutHeight, q.Width, q.Height, q.Edged, lip)
			}
			if most := 2 * float64(q.Count) * (q.Width + q.Height).MM() / 1000; q.EdgingMetres() > most+1e-9 || (q.EdgingMetres() > 0) != (lip > 0 && q.Edged.AlongWidth+q.Edged.AlongHeight > 0) {
				t.Fatalf("%s takes %v m of edging of at most %v", q.What, q.EdgingMetres(), most)
			}
		}
	})
}
