package sheet

import (
	"slices"
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"

	"pgregory.net/rapid"
)

func TestParseLabels(t *testing.T) {
	tenth := length.Millimetre / 10
	for _, c := range []struct {
		grid, margins, pitch string
		want                 LabelFormat
	}{
		{"3x8", "", "", DefaultLabels},
		{" 2 × 7 ", "4.7x15", "102x38", LabelFormat{2, 7, 47 * tenth, mm(15), mm(102), mm(38)}},
		{"3X10", "0.5 in", "2.75x1 in", LabelFormat{3, 10, length.Inch / 2, length.Inch / 2, length.Inch * 11 / 4, length.Inch}},
	} {
		if got, err := ParseLabels(c.grid, c.margins, c.pitch, length.UnitMM); err != nil || got != c.want {
			t.Errorf("%q %q %q became %+v, %v", c.grid, c.margins, c.pitch, got, err)
		}
	}
	for _, bad := range [][3]string{{"", "", ""}, {"3", "", ""}, {"0x8", "", ""}, {"3x21", "", ""}, {"axb", "", ""}, {"3x8", "wide", ""}, {"3x8", "-1x2", ""}, {"3x8", "", "6x"}, {"3x8", "", "1x2x3"}} {
		if _, err := ParseLabels(bad[0], bad[1], bad[2], length.UnitMM); err == nil {
			t.Errorf("%q is taken", bad)
		}
	}
}

// Stickers lie where a pack says, computed by hand: 3 × 8 on A4 without margins are
// 70 × 37.125 mm; 2 × 7 with margins of 4.65 and 15.15 mm and a pitch of 101.6 × 38.1
// mm leave 210 − 9.3 − 101.6 = 99.1 mm and 297 − 30.3 − 6 · 38.1 = 38.1 mm.
func TestStickersLieAsThePackSays(t *testing.T) {
	um := length.Micrometre
	for _, c := range []struct {
		name         string
		f            LabelFormat
		wide, high   length.Length
		across, down length.Length
	}{
		{"filling", DefaultLabels, mm(70), 37125 * um, mm(70), 37125 * um},
		{"with margins", LabelFormat{2, 7, 4650 * um, 15150 * um, 101600 * um, 38100 * um}, 99100 * um, 38100 * um, 101600 * um, 38100 * um},
		{"rounded", LabelFormat{3, 8, 0, 0, mm(70), mm(37)}, mm(70), mm(37), mm(70), mm(37)},
	} {
		first, across, down, ok := c.f.stickers(mm(210), mm(297))
		if !ok || across != c.across || down != c.down || first.Width() != c.wide || first.Max != (plane.Point{X: c.f.Left + c.wide, Y: mm(297) - c.f.Top}) {
			t.Errorf("%s: %v, %v, %v, %v", c.name, first, across, down, ok)
		}
	}
	for name, f := range map[string]LabelFormat{
		"a pitch less than a sticker": {2, 2, 0, 0, mm(50), mm(100)}, "beyond the paper": {3, 8, 0, 0, mm(120), 0},
		"too narrow": {10, 2, 0, 0, 0, 0}, "too low": {2, 20, 0, 0, 0, 0}, "all margin": {1, 1, mm(105), 0, 0, 0},
	} {
		if err := (Options{Labels: f}).CheckLabels(); err == nil {
			t.Errorf("%s is taken", name)
		}
	}
	if (Options{First: 24}).CheckLabels() != nil || (Options{First: 25}).CheckLabels() == nil || (Options{First: -1}).CheckLabels() == nil {
		t.Error("the sticker to begin with is not judged by their count")
	}
}

// Whatever the format, all that is written lies on a sticker, and where the printer
// reaches; each board has its own sticker, in order, from the one asked for on.
func TestLabelsStayOnTheirStickers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := stackOf(rapid.IntRange(1, 30).Draw(t, "fronts"))
		f := LabelFormat{
			Columns: rapid.IntRange(1, 4).Draw(t, "columns"), Rows: rapid.IntRange(1, 12).Draw(t, "rows"),
			Left: mm(rapid.Int64Range(0, 12).Draw(t, "left")), Top: mm(rapid.Int64Range(0, 15).Draw(t, "top")),
		}
		say := message.Language{Unit: rapid.SampledFrom([]length.Unit{length.UnitMM, length.UnitInch}).Draw(t, "unit")}
		o := Options{Labels: f, First: rapid.IntRange(1, f.Columns*f.Rows).Draw(t, "first"), Say: say, Date: "2026-11-28 12:00"}.with()
		o.stamp = stampOf(p, p.Paper(), say)
		if o.CheckLabels() != nil {
			t.Skip("no format")
		}
		first, across, down, _ := f.stickers(o.Paper.Width, o.Paper.Height)
		pages := labelPages(p, o)
		used := map[int]string{}
		for i := range pages {
			var taken []plane.Rect
			for _, m := range pages[i].Placed[0].Drawing.Marks {
				text := m.(*drawing.Text)
				area := drawing.TextArea(text.At, text.Anchor, text.Size, text.Bold, say.Say(text.Say))
				column, row := (area.Centre().X-first.Min.X)/across, (first.Max.Y-area.Centre().Y)/down
				on := first.Move(plane.Point{X: column * across, Y: -row * down})
				if in := on.Intersect(pages[i].Inside); area.Intersect(in) != area {
					t.Fatalf("%q lies at %v, the sticker where the printer reaches at %v", say.Say(text.Say), area, in)
				}
				if slices.ContainsFunc(taken, area.Overlaps) {
					t.Fatalf("%q at %v lies over another text", say.Say(text.Say), area)
				}
				taken = append(taken, area)
				at := i*f.Columns*f.Rows + int(row)*f.Columns + int(column)
				used[at] += say.Say(text.Say) + "|"
			}
		}
		labels := list.Labels(p)
		if len(used) != len(labels) {
			t.Fatalf("%d stickers for %d boards", len(used), len(labels))
		}
		for i, l := range labels {
			got := strings.ReplaceAll(strings.ReplaceAll(used[o.First-1+i], "|", " "), "\u00a0", " ")
			if !strings.Contains(got, " "+l.Size(say)) {
				t.Fatalf("sticker %d says %q; want the size of board %d, %v", o.First+i, got, i, l.Size(say))
			}
		}
	})
}

// A sticker says what the jig page and the templates say of the rear face: the left
// hand is right in the room. Sides have their front edge at the hand at which it is on
// their inside face.
func TestLabelsSayWhatIsAtEachHand(t *testing.T) {
	p := stackOf(1)
	p.Cabinets[0].Depth, p.Cabinets[0].Sides, p.Cabinets[0].Inside = mm(552), mm(552), p.Cabinets[0].Outline.Grow(-mm(18))
	p.Project.Boards = model.Boards{Carcass: model.Board{Thickness: mm(18), Grain: "vertical"}}
	p.Fronts[0].Made.Board = model.Board{Thickness: mm(19), Lipping: mm(1), Grain: "horizontal"}
	var got []string
	say := message.Language{}
	for _, l := range list.Labels(p) {
		got = append(got, strings.Join([]string{say.Say(l.What), l.Size(say), l.CutSize(say), say.Say(l.Left), say.Say(l.Right), say.Say(l.In), say.Say(l.Up), l.GrainArrow()}, "|"))
	}
	want := []string{
		"front|597 × 757 × 19|595 × 755|RIGHT|LEFT|in the room|up|←→",
		"left side|552 × 760 × 18||front edge|back edge||up|↕", "right side|552 × 760 × 18||back edge|front edge||up|↕",
		"bottom|564 × 552 × 18|||||back edge|←→", "top|564 × 552 × 18|||||back edge|←→",
	}
	if !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	for _, f := range CarcassFaces(withRunner(p)) {
		if left := strings.Contains(say.Say(f.Name), "left"); left != f.FrontLeft {
			t.Errorf("the front edge of %q is at the left: %v, against what its label says", say.Say(f.Name), f.FrontLeft)
		}
	}
}

// withRunner gives the front of a plan a runner with a screw, so that its sides are drilled.
func withRunner(p *plan.Plan) *plan.Plan {
	f := &p.Fronts[0]
	f.Opening = plane.R(mm(18), mm(18), mm(582), mm(742))
	f.Runner = plan.Runner{Length: mm(300), Screws: []plan.SideHole{{Back: mm(37), Y: mm(130), Diameter: mm(5), Depth: mm(9)}}}
	return p
}
