package session_test

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout"
	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/session"
)

func mm(v int64) length.Length { return length.MM(v) }

func bench() *model.Project {
	return &model.Project{
		Title:   "Glaze bench",
		Boards:  model.Boards{Carcass: model.Board{Thickness: mm(18)}, Front: model.Board{Thickness: mm(22)}, Back: model.Board{Thickness: mm(8)}},
		Reveals: model.Reveals{Top: mm(2), Gap: mm(3)},
		Cabinets: []model.Cabinet{{Name: "Glazes", Width: mm(864), Height: mm(760), Depth: mm(560), Bays: []model.Bay{
			{Fronts: []model.Front{{Name: "Buckets", Height: mm(320)}, {Name: "Jars", Share: 2}, {Name: "Brushes", Share: 1}}},
		}}},
	}
}

func TestAGestureIsOneStep(t *testing.T) {
	s := session.New(bench(), layout.Solve)
	s.Begin()
	for h := int64(300); h < 340; h++ {
		if err := s.Preview(edit.SetHeight{At: model.Place{}, Height: mm(h)}); err != nil {
			t.Fatal(err)
		}
		if got := s.Result().Plan.FrontAt(model.Place{}).Face.Height(); got != mm(h) {
			t.Fatalf("the preview shows %v, want %d mm", got, h)
		}
	}
	if s.Committed().FrontAt(model.Place{}).Height != mm(320) {
		t.Fatal("a preview is not a change yet")
	}
	s.Commit()
	if labels, done := s.Steps(); len(labels) != 1 || done != 1 || labels[0].String() != "Front height 339 mm" {
		t.Fatalf("steps %v", labels)
	}
	if !s.Unsaved() {
		t.Fatal("the change is not saved")
	}
	s.Undo()
	if !reflect.DeepEqual(s.Project(), bench()) || s.Unsaved() {
		t.Fatal("undo does not lead back to the start")
	}
}

// Notches of a wheel and a key that repeats are one step, until something else is done.
func TestARowOfChangesIsOneStep(t *testing.T) {
	higher := func(s *session.Session, of any, to int64) {
		t.Helper()
		if err := s.More(of, edit.SetHeight{Height: mm(to)}); err != nil {
			t.Fatal(err)
		}
		if got := s.Result().Plan.FrontAt(model.Place{}).Face.Height(); got != mm(to) {
			t.Fatalf("the front is %v high, want %d mm", got, to)
		}
	}
	for name, of := range map[string]struct {
		between func(*session.Session)
		steps   int
		back    int64 // the height after one undo
	}{
		"nothing":      {func(*session.Session) {}, 1, 320},
		"a selection":  {func(s *session.Session) { s.Select() }, 2, 322},
		"a save":       {(*session.Session).MarkSaved, 2, 322},
		"another row":  {func(s *session.Session) { higher(s, "other", 350) }, 3, 350},
		"another edit": {func(s *session.Session) { _ = s.Do(edit.SetHeight{Height: mm(350)}) }, 3, 350},
		"there again":  {func(s *session.Session) { s.Undo(); s.Redo() }, 2, 322},
	} {
		t.Run(name, func(t *testing.T) {
			s := session.New(bench(), layout.Solve)
			higher(s, "height", 321)
			higher(s, "height", 322)
			of.between(s)
			higher(s, "height", 323)
			if labels, done := s.Steps(); done != of.steps || labels[done-1].String() != "Front height 323 mm" {
				t.Errorf("steps %v", labels)
			}
			s.Undo()
			if got := s.Project().FrontAt(model.Place{}).Height; got != mm(of.back) {
				t.Errorf("one undo leads to %v, want %d mm", got, of.back)
			}
		})
	}
	s := session.New(bench(), layout.Solve)
	higher(s, "height", 321)
	higher(s, "height", 320) // there and back again
	if _, done := s.Steps(); done != 0 || s.Unsaved() {
		t.Errorf("%d steps lead back to the start", done)
	}
}

func TestCancelGivesBackWhatWas(t *testing.T) {
	s := session.New(bench(), layout.Solve)
	s.Begin()
	if err := s.Preview(edit.SetHeight{Height: mm(100)}); err != nil {
		t.Fatal(err)
	}
	s.Cancel()
	s.Commit()
	if !reflect.DeepEqual(s.Project(), bench()) {
		t.Fatal("a cancelled gesture left something behind")
	}
	if labels, _ := s.Steps(); len(labels) != 0 {
		t.Fatalf("steps %v", labels)
	}
}

func TestWhatChangesNothingIsNoStep(t *testing.T) {
	s := session.New(bench(), layout.Solve)
	if err := s.Do(edit.SetUnit{Unit: length.UnitMM}); err != nil {
		t.Fatal(err)
	}
	s.Begin()
	for _, h := range []int64{300, 320} { // there and back again
		if err := s.Preview(edit.SetHeight{Height: mm(h)}); err != nil {
			t.Fatal(err)
		}
	}
	s.Commit()
	if labels, _ := s.Steps(); len(labels) != 0 || s.Unsaved() || s.InGesture() {
		t.Fatalf("steps %v", labels)
	}
}

func TestAnImpossiblePreviewKeepsTheOneBefore(t *testing.T) {
	s := session.New(bench(), layout.Solve)
	s.Begin()
	if err := s.Preview(edit.SetHeight{Height: mm(200)}); err != nil {
		t.Fatal(err)
	}
	if err := s.Preview(edit.SetHeight{Height: -1}); err == nil {
		t.Fatal("a negative height was taken")
	}
	s.Commit()
	if h := s.Project().FrontAt(model.Place{}).Height; h != mm(200) {
		t.Fatalf("committed %v", h)
	}
}

func TestUndoKeepsTheSelection(t *testing.T) {
	s := session.New(bench(), layout.Solve)
	jars := session.Front(model.Place{Front: 1})
	s.Select(jars)
	if err := s.Do(edit.RemoveFront{At: model.Place{Front: 2}}); err != nil {
		t.Fatal(err)
	}
	if !s.IsSelected(jars) {
		t.Fatal("the selection is lost by a change elsewhere")
	}
	s.Select()
	s.Undo()
	if !s.IsSelected(jars) {
		t.Fatal("undo does not give the selection back")
	}
}

func TestWhatIsGoneIsNotSelected(t *testing.T) {
	s := session.New(bench(), layout.Solve)
	s.Select(session.Front(model.Place{Front: 2}), drawing.Subject{Kind: drawing.DivisionThing, Place: model.Place{Front: 1}})
	if err := s.Do(edit.RemoveFront{At: model.Place{Front: 2}}); err != nil {
		t.Fatal(err)
	}
	if sel := s.Selection(); len(sel) != 0 {
		t.Fatalf("selected: %v", sel)
	}
}

func TestJudgeSaysTheGreatestHeight(t *testing.T) {
	s := session.New(bench(), layout.Solve)
	// 758 mm of stack and two gaps of 3 mm leave 752 mm for the three fronts, of
	// which the two others keep a step of rounding, 1 mm, each.
	for _, c := range []struct {
		height int64
		want   string
	}{
		{900, "900 mm is too high for this stack: at most 750 mm is possible beside the other fronts."},
		{99999, "99999 mm is too high for this stack: at most 750 mm is possible beside the other fronts."},
		{0, "Height is 0 mm and must be more than 0; write the size, or nothing where it can be left out"},
		{-5, "Height is -5 mm and must be more than 0; write the size, or nothing where it can be left out"},
	} {
		err := s.Judge(edit.SetHeight{Height: mm(c.height)})
		if err == nil || err.Error() != c.want {
			t.Errorf("got %v\nwant %s", err, c.want)
		}
	}
	if err := s.Judge(edit.SetHeight{Height: mm(750)}); err != nil {
		t.Fatal(err)
	}
}

// Any row of changes, undone step by step, leads back to the start, and done
// again to the end.
func TestUndoLeadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := session.New(bench(), layout.Solve)
		var states []*model.Project
		for range rapid.IntRange(1, 20).Draw(t, "steps") {
			at := model.Place{Front: rapid.IntRange(0, 4).Draw(t, "front")}
			v := mm(rapid.Int64Range(5, 700).Draw(t, "mm"))
			e := []edit.Edit{
				edit.SetHeight{At: at, Height: v}, edit.SplitFront{At: at, Lower: v / 2, Upper: v / 2},
				edit.RemoveFront{At: at, Freed: v}, edit.ReorderFront{At: at, To: 0}, edit.AddBay{At: at},
			}[rapid.IntRange(0, 4).Draw(t, "edit")]
			before := s.Project()
			if s.Do(e) == nil && s.Project() != before { // what changes nothing is no step
				states = append(states, before)
			}
		}
		end := s.Project().Clone()
		for i := len(states) - 1; i >= 0; i-- {
			s.Undo()
			if !reflect.DeepEqual(s.Project(), states[i]) {
				t.Fatalf("after undo %d the project differs", len(states)-i)
			}
		}
		if !reflect.DeepEqual(s.Project(), bench()) {
			t.Fatal("the start is not what it was")
		}
		for range states {
			s.Redo()
		}
		if !reflect.DeepEqual(s.Project(), end) {
			t.Fatal("redo does not lead to the end")
		}
	})
}
