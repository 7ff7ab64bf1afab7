package hardware

import (
	"math/rand"
	"reflect"
	"slices"
	"testing"

	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/yamlfile"
)

// A person with a seed types, adds, removes, clicks and changes the unit at
// random: nothing panics, the sheets that were there stay as they were, the
// fields show what the sheet holds, and undo leads back to the start exactly.
func TestRandomWalk(t *testing.T) {
	const actions = 100
	for _, seed := range []int64{1, 20261125} {
		start := sample(t)
		kept := start.Clone()
		p, w, _ := open(t, start)
		r := rand.New(rand.NewSource(seed))
		texts := []string{"0", "12", "-3", "48; 80", "1/2 in", "9999", "x", "", "2*12+40", "mid", "1000 m"}
		for i := range actions {
			rows := p.form.all()
			switch r.Intn(8) {
			case 0, 1, 2:
				row := rows[r.Intn(len(rows))]
				if w.Canvas().Focus(row.entry); w.Canvas().Focused() == row.entry { // it is there to type in
					enter(w, row, texts[r.Intn(len(texts))])
				}
			case 3:
				press(t, p, "Add", r.Intn(3))
			case 4:
				p.chosen = chosen{r.Intn(6), r.Intn(6), r.Intn(6), r.Intn(6)}
				p.form.giveUp()
				p.update()
			case 5:
				p.Undo()
			case 6:
				p.Redo()
			default:
				rows := p.form.all()
				p.goTo(rows[r.Intn(len(rows))].path)
				p.change(func(k *picked) { k.sheet.Unit = length.Unit(r.Intn(4)) })
				if found := p.Problems(); len(found) > 0 {
					p.goToPath(found[r.Intn(len(found))].Path)
				}
			}
			w.Canvas().Unfocus()
			for _, r := range p.form.single {
				if r.entry.Dirty() {
					t.Fatalf("seed %d, action %d: the field of %s holds %q, which is not in the sheet", seed, i, r.path, r.entry.Text)
				}
			}
			if len(p.Problems()) == 0 {
				if _, err := yamlfile.NewSheet(p.sheet).Write(p.sheet); err != nil {
					t.Fatalf("seed %d, action %d: a sheet without fault can't be written: %v", seed, i, err)
				}
			}
		}
		steps := 0
		for p.Undo() {
			steps++
		}
		if p.Sheet() != start || !reflect.DeepEqual(start, kept) {
			t.Errorf("seed %d: %d undos do not lead back to the start", seed, steps)
		}
		if steps < actions/10 {
			t.Errorf("seed %d: only %d steps were made", seed, steps)
		}
	}
}

// Keys go from group to group, past those that hold no figure, and stay at the ends.
func TestGroupsAreWalked(t *testing.T) {
	s := sample(t)
	s.Drawers[0].More, s.Stabiliser.Holes = nil, nil
	p, w, _ := open(t, s)
	p.Begin()
	var forward, back []string
	at := func() string { return p.about.path }
	for was := ""; was != at(); {
		was = at()
		forward = append(forward, was)
		if p.form.rowOf(was) == nil || w.Canvas().Focused() == nil {
			t.Errorf("%s has not got the keys", was)
		}
		p.NextGroup()
	}
	for was := ""; was != at(); {
		was = at()
		back = append(back, was)
		p.LastGroup()
	}
	want := []string{"side_clearance", "runner.lengths[].length", "runner.lengths[].screws[].back", "connector.inset", "drawers[].name",
		"drawers[].back_top", "bottom.underside", "back.thickness", "box.sides", "stabiliser.from_width", "connector.per_turn"}
	if !slices.Equal(forward, want) {
		t.Errorf("forward it goes to %q", forward)
	}
	slices.Reverse(back)
	if !slices.Equal(back, append([]string{"name"}, want...)) {
		t.Errorf("the way back is %q", back)
	}
}

// A step of a figure that is left out begins at what holds in its place.
func TestAStepBeginsAtWhatHolds(t *testing.T) {
	s := sample(t)
	s.Bottom.LeastWidth = 0
	p, _, _ := open(t, s)
	if err := p.field(t, "bottom.least_width").source().Step(-1); err != nil {
		t.Fatal(err)
	}
	if got := p.Sheet().Bottom.LeastWidth; got != model.UsualLeastWidth-mm {
		t.Errorf("a step down from nothing leads to %v", got)
	}
}
