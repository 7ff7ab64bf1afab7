package list

import (
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// Worked by hand: three fronts over a carcass 600 × 716, reveals 3 at every edge and gap
// 2: 594 wide, 716 - 6 - 4 = 706 high together; 200, 200 and 306. Their blank, trimmed by
// 10 all around and cut by a saw of 3.2, which takes more than the gap hides: 614 by
// 10 + 306 + 3.2 + 200 + 3.2 + 200 + 10.
func TestABlankOfAStack(t *testing.T) {
	p := matchedPlan(func(p *model.Project) { p.Matched = model.MatchedUpright })
	all := Blanks(p)
	if len(all) != 1 || all[0].Size != (plane.Point{X: mm(614), Y: 732*length.Millimetre + 400*length.Micrometre}) {
		t.Fatalf("%+v", all)
	}
	if got, want := all[0].Places[1], plane.R(mm(10), 319*length.Millimetre+200*length.Micrometre, mm(604), 519*length.Millimetre+200*length.Micrometre); got != want {
		t.Errorf("the second lies at %v, want %v", got, want)
	}
	rows := CutList(p, Speaker{}).Rows
	if got := rows[1].Cells; got[2] != "blank 1" || got[3] != "matched fronts 1–3" || got[5] != "732.4" || got[7] != "0.450" {
		t.Errorf("%q", got)
	}
	if got := rows[2].Cells; got[2] != "fixed panel, of blank 1" || got[5] != "306" || got[7] != "" {
		t.Errorf("%q", got)
	}
}

// The grain runs on across what the gap and both lippings hide: a saw of 3.2 mm takes
// less than a gap of 2 mm between lippings of 1 mm.
func TestAGapHidesLippings(t *testing.T) {
	p := matchedPlan(func(p *model.Project) { p.Matched, p.Boards.Front.Lipping = model.MatchedUpright, mm(1) })
	b := Blanks(p)[0]
	if got := b.Places[1].Min.Y - b.Places[0].Max.Y; got != mm(4) {
		t.Errorf("%v between two fronts", got)
	}
}

// A niche, another board, a frame and a bay's own word part what would be matched.
func TestWhatIsNotMatched(t *testing.T) {
	for name, change := range map[string]func(p *model.Project){
		"not asked for": func(p *model.Project) { p.Matched = "" },
		"a bay's own word": func(p *model.Project) {
			p.Cabinets[0].Bays[0].Matched = model.NotMatched
		},
		"a niche between": func(p *model.Project) { p.Cabinets[0].Bays[0].Fronts[1].Kind = model.OpenNiche },
		"another board between": func(p *model.Project) {
			p.Boards.Fronts = []model.FrontBoard{{Name: "other", Board: p.Boards.Front}}
			p.Cabinets[0].Bays[0].Fronts[1].Board = "other"
		},
		"a frame between": func(p *model.Project) {
			p.Boards.Fronts = []model.FrontBoard{{Name: "frames", Board: p.Boards.Front, Build: model.Build{Kind: model.Frame}}}
			p.Cabinets[0].Bays[0].Fronts[1].Board = "frames"
		},
	} {
		p := matchedPlan(func(p *model.Project) { p.Matched = model.MatchedUpright; change(p) })
		if all := Blanks(p); len(all) != 0 {
			t.Errorf("%s: %+v", name, all)
		}
	}
}

// Fronts of neighbouring cabinets that are level are one row; of three rows three
// blanks, each as wide as both, their gap and what is trimmed off.
func TestBlanksOfRows(t *testing.T) {
	p := matchedPlan(func(p *model.Project) {
		p.Cabinets[0].Matched = model.MatchedAcross
		p.Cabinets = append(p.Cabinets, p.Cabinets[0])
	})
	all := Blanks(p)
	if len(all) != 3 {
		t.Fatalf("%+v", all)
	}
	for _, b := range all { // 594 twice, 3 + 3 between two cabinets
		if b.Size.X != mm(10+594+6+594+10) || len(b.Fronts) != 2 || b.Fronts[0].Place.Cabinet != 0 || b.Fronts[1].Place.Cabinet != 1 {
			t.Errorf("%+v", b)
		}
	}
}

// A blank holds its fronts and the kerfs between them, none over another.
func TestABlankHoldsItsFronts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tenth := func(name string, most int64) length.Length {
			return length.Length(rapid.Int64Range(0, most).Draw(t, name)) * length.Millimetre / 10
		}
		p := matchedPlan(func(p *model.Project) {
			p.Matched = rapid.SampledFrom([]string{model.MatchedUpright, model.MatchedAcross}).Draw(t, "matched")
			p.Saw = model.Saw{Kerf: tenth("kerf", 60), Trim: tenth("trim", 300)}
			p.Reveals.Gap, p.Boards.Front.Lipping = tenth("gap", 80), tenth("lipping", 30)
			for range rapid.IntRange(0, 3).Draw(t, "more") {
				p.Cabinets = append(p.Cabinets, p.Cabinets[0])
			}
		})
		for _, b := range Blanks(p) {
			whole := plane.R(0, 0, b.Size.X, b.Size.Y).Grow(-p.Project.Saw.Trim)
			sum := -p.Project.Saw.Kerf
			for i, r := range b.Places {
				sum += p.Project.Saw.Kerf
				if b.Upright {
					sum += r.Height()
				} else {
					sum += r.Width()
				}
				if r.Intersect(whole) != r || i > 0 && r.Overlaps(b.Places[i-1].Grow(p.Project.Saw.Kerf)) {
					t.Fatalf("%v lies in %v beside %v", r, whole, b.Places)
				}
			}
			if room := map[bool]length.Length{true: whole.Height(), false: whole.Width()}[b.Upright]; sum > room {
				t.Fatalf("fronts and kerfs take %v of %v", sum, room)
			}
		}
	})
}

func matchedPlan(change func(*model.Project)) *plan.Plan {
	project := &model.Project{
		Boards:  model.Boards{Carcass: model.Board{Thickness: mm(18)}, Front: model.Board{Thickness: mm(20), Material: "ash", Grain: "vertical"}},
		Reveals: model.Reveals{Left: mm(3), Right: mm(3), Top: mm(3), Bottom: mm(3), Gap: mm(2)},
		Saw:     model.Saw{Kerf: 3*length.Millimetre + 200*length.Micrometre, Trim: mm(10)},
		Cabinets: []model.Cabinet{{Name: "Low", Width: mm(600), Height: mm(716), Depth: mm(500), Bays: []model.Bay{{Fronts: []model.Front{
			{Kind: model.FixedPanel, Height: mm(306)}, {Kind: model.FixedPanel, Height: mm(200)}, {Kind: model.FixedPanel, Height: mm(200)},
		}}}}},
	}
	change(project)
	return plan.Make(project)
}
