package edit_test

import (
	"testing"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
)

func applied(t *testing.T, p *model.Project, edits ...edit.Edit) *model.Project {
	t.Helper()
	for _, e := range edits {
		next, err := e.Apply(p)
		if err != nil {
			t.Fatalf("%v: %v", e.Label(), err)
		}
		p = next
	}
	return p
}

// Boards of fronts are chosen from the front outwards, and whoever has chosen one follows
// its name, or falls back to what is around where it is taken away.
func TestBoardsOfFronts(t *testing.T) {
	cabinet := model.Place{Cabinet: 0, Bay: -1, Front: -1}
	first, second := model.Place{}, model.Place{Front: 1}
	p := &model.Project{
		Boards:   model.Boards{Front: model.Board{Thickness: 19 * length.Millimetre}},
		Cabinets: []model.Cabinet{{Bays: []model.Bay{{Fronts: make([]model.Front, 2)}}}, {Bays: []model.Bay{{Fronts: make([]model.Front, 1)}}}},
	}
	of := func(p *model.Project, want ...string) {
		t.Helper()
		for i, at := range []model.Place{first, second, {Cabinet: 1}} {
			if got := p.BoardOf(at).Name; got != want[i] {
				t.Errorf("front %d is of %q, want %q", i+1, got, want[i])
			}
		}
	}
	of(p, model.PlainBoard, model.PlainBoard, model.PlainBoard)
	p = applied(t, p, edit.AddFrontBoard{Kind: model.Frame, At: []model.Place{model.Whole}}, edit.AddFrontBoard{Kind: model.GripEdged, At: []model.Place{cabinet}},
		edit.AddFrontBoard{Kind: model.Frame, At: []model.Place{first}}, edit.Set{At: second, Key: "board", Value: model.PlainBoard})
	of(p, "frames 2", model.PlainBoard, "frames")
	if b := p.BoardOf(first); b.Thickness != 19*length.Millimetre || b.Build.Kind != model.Frame {
		t.Errorf("a new board of frames is %+v", b)
	}
	p = applied(t, p, edit.RenameFrontBoard{Name: "frames 2", To: "oak"}, edit.Set{At: second, Key: "board"})
	of(p, "oak", "grip", "frames")
	for _, to := range []string{"grip", model.PlainBoard, " "} {
		if _, err := (edit.RenameFrontBoard{Name: "oak", To: to}).Apply(p); err == nil {
			t.Errorf("a board is renamed to %q", to)
		}
	}
	q := applied(t, p, edit.RemoveFrontBoard{Name: "oak"}, edit.RemoveFrontBoard{Name: "frames"})
	of(q, "grip", "grip", model.PlainBoard)
	of(p, "oak", "grip", "frames") // as it was
	pasted := applied(t, &model.Project{Cabinets: make([]model.Cabinet, 1)}, edit.PasteCabinet{At: model.Place{Cabinet: 1}, Cabinet: p.Cabinets[0]})
	if c := pasted.Cabinets[1]; c.Board != "" || c.Bays[0].Fronts[0].Board != "" {
		t.Errorf("what is pasted is of boards that are not there: %q, %q", c.Board, c.Bays[0].Fronts[0].Board)
	}
}
