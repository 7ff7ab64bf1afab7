package session_test

import (
	"testing"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/ui/session"
)

// A chosen finding stays chosen while others come and go, until it is mended or
// something else is selected.
func TestTheChosenFindingStays(t *testing.T) {
	of := func(rule string, front int) check.Finding {
		return check.Finding{Rule: rule, Place: model.Place{Front: front}}
	}
	found := []check.Finding{of("reveal", 0), of("overlay", 1), of("overlay", 1)}
	s := session.New(bench(), func(p *model.Project) layout.Result {
		r := layout.Solve(p)
		r.Findings = found
		return r
	})
	told := 0
	s.Listen(func(c session.Change) {
		if c&session.Chosen != 0 {
			told++
		}
	})
	s.ChooseFinding(2)
	s.ChooseFinding(2)
	if got := s.ChosenFinding(); got != 2 || told != 1 {
		t.Fatalf("finding %d is chosen and told %d times, want 2 once", got, told)
	}
	found = found[1:]
	if err := s.Do(edit.SetHeight{At: model.Place{}, Height: mm(300)}); err != nil {
		t.Fatal(err)
	}
	if got := s.ChosenFinding(); got != 1 {
		t.Errorf("with the first one mended finding %d is chosen, want 1", got)
	}
	s.Select(session.Front(model.Place{Front: 1}))
	if got := s.ChosenFinding(); got != 1 {
		t.Errorf("with its front selected finding %d is chosen, want 1", got)
	}
	s.Select(session.Front(model.Place{Front: 2}))
	if got := s.ChosenFinding(); got != -1 || told != 2 {
		t.Errorf("with another front selected finding %d is chosen, told %d times", got, told)
	}
	s.ChooseFinding(0)
	found = nil
	if err := s.Do(edit.SetHeight{At: model.Place{}, Height: mm(310)}); err != nil {
		t.Fatal(err)
	}
	if got := s.ChosenFinding(); got != -1 {
		t.Errorf("with all mended finding %d is chosen", got)
	}
}
