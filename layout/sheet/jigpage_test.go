package sheet

import (
	"fmt"
	"strings"
	"testing"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

// many are fronts of two drops, more than a box has room for.
func many(n int) []plan.Front {
	var all []plan.Front
	for i := range n {
		f := lopsided()
		f.Number, f.Name = i+1, fmt.Sprint("Front ", i+1)
		if i%2 == 1 {
			f.Drop += length.MM(16)
		}
		all = append(all, f)
	}
	return all
}

// Every hand of every front has a box to tick for every setting that drills it, and
// only those; left in the room is the right hand.
func TestTheJigPageHasABoxForEachHand(t *testing.T) {
	fronts := many(60)
	resets := list.Resets(planOf(fronts...))
	want, got := map[string]int{}, map[string]int{}
	for i, r := range resets {
		for _, w := range r.Work {
			want[fmt.Sprint(i+1, " ", w.Front.Number, " ", w.Side == plan.Right)]++
		}
	}
	const most = 7
	for _, b := range jigBoxes(resets, most) {
		if len(b.row.fronts) > most {
			t.Errorf("a box has %d fronts", len(b.row.fronts))
		}
		for _, f := range b.row.fronts {
			for _, left := range []bool{true, false} {
				if left && f.left || !left && f.right {
					got[fmt.Sprint(b.number, " ", f.front.Number, " ", left)]++
				}
			}
		}
	}
	if len(got) != len(want) {
		t.Errorf("%d boxes to tick, want %d", len(got), len(want))
	}
	for k, n := range got {
		if n != 1 || want[k] != 1 {
			t.Errorf("setting, front, left hand %s: %d times, needed %d times", k, n, want[k])
		}
	}
}

// The two figures that the stops are set to are 7 mm high, those of bushings 5, and
// nothing else that a hand acts upon is below 2.5.
func TestTheJigPageIsReadAtArmsLength(t *testing.T) {
	pages := Make(planOf(many(4)...), nil, Options{Parts: []Part{JigSettings}}).Pages
	edge := lopsided().Holes[0].At.X
	sizes := map[string]length.Length{}
	for _, p := range pages {
		for _, m := range p.Drawings()[len(p.Drawings())-1].Drawing.Marks {
			if text, ok := m.(*drawing.Text); ok {
				sizes[text.Say.String()] = max(sizes[text.Say.String()], text.Size)
				if text.Size < lettering.Small && !strings.Contains(text.Say.String(), "page ") {
					t.Errorf("%q is %v high", text.Say.String(), text.Size)
				}
			}
		}
	}
	say := message.Language{}
	if s := sizes[say.Figure(edge)]; s < lettering.Huge {
		t.Errorf("the edge distance %v is %v high: %v", edge, s, sizes)
	}
}

func TestTheJigPageTellsWhatMustNotBeDrilled(t *testing.T) {
	fronts := many(2)
	pages := Make(planOf(fronts...), []check.Finding{{Forbids: check.Drilling, Front: 2}}, Options{Parts: []Part{JigSettings}}).Pages
	if all := words(pages[0]); !strings.Contains(all, "2  DO NOT DRILL") || strings.Contains(all, "1  DO NOT DRILL") {
		t.Errorf("the page says %q", all)
	}
}

func TestTheJigPageOfNothing(t *testing.T) {
	pages := Make(planOf(), nil, Options{Parts: []Part{JigSettings}}).Pages
	if len(pages) != 1 || !strings.Contains(words(pages[0]), "No front of this project is drilled.") {
		t.Errorf("%d pages", len(pages))
	}
	f := lopsided()
	f.Stabilised = true
	pages = Make(planOf(f), nil, Options{Parts: []Part{JigSettings}}).Pages
	if !strings.Contains(words(pages[0]), "stabiliser") {
		t.Error("where the stabiliser's holes are is not told")
	}
}
