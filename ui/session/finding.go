package session

import (
	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
)

// chosen names a finding while the document changes: the nth of its rule at its
// place.
type chosen struct {
	rule  string
	place model.Place
	nth   int
}

// ChooseFinding chooses the finding that the window tells of, by its index in the
// findings of Result; another index, such as -1, chooses none.
func (s *Session) ChooseFinding(i int) {
	all := s.Result().Findings
	was := s.chosen
	s.chosen = nil
	if i >= 0 && i < len(all) {
		c := chosen{rule: all[i].Rule, place: all[i].Place}
		for k := range all[:i] {
			if c.names(&all[k]) {
				c.nth++
			}
		}
		s.chosen = &c
	}
	if was != s.chosen && (was == nil || s.chosen == nil || *was != *s.chosen) {
		s.tell(Chosen)
	}
}

// ChosenFinding is the index of the chosen finding in the findings of Result; -1
// where none is chosen, or where it is mended.
func (s *Session) ChosenFinding() int {
	if s.chosen == nil {
		return -1
	}
	at, met := -1, 0
	all := s.Result().Findings
	for i := range all {
		if s.chosen.names(&all[i]) && met <= s.chosen.nth {
			at, met = i, met+1
		}
	}
	return at
}

func (c *chosen) names(f *check.Finding) bool { return f.Rule == c.rule && f.Place == c.place }

// finding tells findings of one result apart.
type finding struct {
	rule  string
	place model.Place
	what  string
}

// Offered are the changes that mend a finding of CommittedResult, the best first. Each
// is tried out on the whole document, once until that changes; that is still too much
// for every move of a gesture.
func (s *Session) Offered(f check.Finding) []edit.Edit {
	of := finding{f.Rule, f.Place, f.What.String()}
	all, known := s.offered[of]
	if !known {
		all = layout.Offered(s.Committed(), s.result, f)
		if s.offered == nil {
			s.offered = map[finding][]edit.Edit{}
		}
		s.offered[of] = all
	}
	return all
}

// leaveFinding chooses none where other things are selected than the chosen
// finding is about.
func (s *Session) leaveFinding(things []drawing.Subject) {
	if s.chosen == nil || len(things) == 0 {
		return
	}
	for _, t := range things {
		if meet(t.Place, s.chosen.place) {
			return
		}
	}
	s.chosen = nil
	s.tell(Chosen)
}

// meet tells that one of two places is the other, or a part of it: below zero
// stands for all.
func meet(a, b model.Place) bool {
	same := func(i, k int) bool { return i < 0 || k < 0 || i == k }
	return same(a.Cabinet, b.Cabinet) && same(a.Bay, b.Bay) && same(a.Front, b.Front)
}
