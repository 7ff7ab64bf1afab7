package ui

import (
	"slices"
	"testing"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
)

// stack gives the heights of a bay of the first cabinet as they are laid out.
func (w *window) stack(bay int) []length.Length {
	pl := w.session.CommittedResult().Plan
	b := pl.BayAt(model.Place{Bay: bay, Front: -1})
	var all []length.Length
	for _, f := range pl.Fronts[b.First : b.First+b.Count] {
		all = append(all, f.Face.Height())
	}
	return all
}

// Commands for several selected fronts leave the others of the stack as high as
// they are, whatever rule the bay was divided by.
func TestCommandsForSomeFrontsLeaveTheOthers(t *testing.T) {
	step := model.Division{Rule: model.DivideStep, Step: length.MM(40)}
	for _, c := range []struct {
		name, command, says string
		before              edit.Edit
		good                func(h []length.Length) bool
	}{
		{"equal in a bay graduated by a step", "equal", "Equal heights", edit.SetDivision{Division: step, Free: true},
			func(h []length.Length) bool { return (h[0] - h[1]).Abs() <= length.Millimetre }},
		{"equal beside a typed height", "equal", "Equal heights", edit.SetHeight{At: model.Place{Front: 2}, Height: length.MM(150)},
			func(h []length.Length) bool { return (h[0] - h[1]).Abs() <= length.Millimetre }},
		{"graduate beside a typed height", "graduate", "Graduate 2 fronts by a factor of 1.25", edit.SetHeight{At: model.Place{Front: 2}, Height: length.MM(150)},
			func(h []length.Length) bool {
				return h[0] > h[1]+h[1]/5 && h[0] < h[1]+h[1]*3/10
			}},
	} {
		t.Run(c.name, func(t *testing.T) {
			w, _, _ := newWindow(t, "")
			w.Do(c.before)
			before := w.stack(0)
			w.session.Select(w.face(1), w.face(2))
			w.do(c.command)
			after := w.stack(0)
			if !slices.Equal(before[2:], after[2:]) || before[0]+before[1] != after[0]+after[1] || !c.good(after) {
				t.Errorf("heights were %v and are %v", before, after)
			}
			if w.says() != c.says {
				t.Errorf("the line says %q", w.says())
			}
		})
	}
}

// With one front selected the whole bay is meant, and the step says so.
func TestCommandsForTheWholeBaySaySo(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.Do(edit.SetDivision{Division: model.Division{Rule: model.DivideStep, Step: length.MM(40)}, Free: true})
	w.session.Select(w.face(2))
	w.do("equal")
	if h := w.stack(0); slices.Max(h)-slices.Min(h) > 2*length.Millimetre || w.says() != "Equal heights in the whole bay" {
		t.Errorf("%q gives %v", w.says(), h)
	}
	w.do("graduate")
	if h := w.stack(0); !(h[0] > h[1] && h[1] > h[2]) || w.says() != "Graduate the whole bay by a factor of 1.25" {
		t.Errorf("%q gives %v", w.says(), h)
	}
}

// Limits that leave no equal height are told instead of a success.
func TestEqualHeightsThatCantBeAreRefused(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.Do(edit.Set{At: model.Place{Front: 2}, Key: "greatest", Value: length.MM(90)})
	before := w.stack(0)
	w.session.Select(w.face(1))
	w.do("equal")
	if !slices.Equal(before, w.stack(0)) || w.says() == "Equal heights in the whole bay" {
		t.Errorf("%q gives %v after %v", w.says(), w.stack(0), before)
	}
}

// A copied stack is as high front by front as the one it was copied from.
func TestACopiedStackIsTheSame(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.Do(edit.AddBay{At: model.Place{Front: -1}})
	for _, d := range []model.Division{{Rule: model.DivideStep, Step: length.MM(40)}, {Rule: model.DivideRatio, Ratio: 1.3}} {
		w.Do(edit.SetDivision{Division: d, Free: true})
		w.session.Select(w.face(1))
		w.do("copystack")
		if a, b := w.stack(0), w.stack(1); !slices.Equal(a, b) {
			t.Errorf("rule %v: %v beside %v", d.Rule, a, b)
		}
	}
	if w.says() != "Copy the stack to 1 bay" {
		t.Errorf("the line says %q", w.says())
	}
}
