package session

import (
	"frontlay/layout/drawing"
	"frontlay/model"
)

// Selection lists what is selected, the thing selected first at the front.
func (s *Session) Selection() []drawing.Subject { return s.history.Current().selection }

// Select selects these things and nothing else. Things that can't be selected or
// that the project does not have are left out.
func (s *Session) Select(things ...drawing.Subject) {
	s.row = nil
	now := s.history.Current()
	now.selection = existing(now.project, things)
	s.history.Amend(now)
	s.leaveFinding(now.selection)
	s.tell(Selected)
}

// Toggle adds a thing to the selection or takes it out of it. Only things of one
// kind are selected together; another kind starts a new selection.
func (s *Session) Toggle(thing drawing.Subject) {
	var rest []drawing.Subject
	found := false
	for _, t := range s.Selection() {
		if t == thing {
			found = true
		} else if t.Kind == thing.Kind {
			rest = append(rest, t)
		}
	}
	if !found {
		rest = append(rest, thing)
	}
	s.Select(rest...)
}

// IsSelected tells whether a thing is selected.
func (s *Session) IsSelected(thing drawing.Subject) bool {
	for _, t := range s.Selection() {
		if t == thing {
			return true
		}
	}
	return false
}

// Selected tells whether things of a kind are selected.
func (s *Session) Selected(kind drawing.SubjectKind) bool {
	all := s.Selection()
	return len(all) > 0 && all[0].Kind == kind
}

// SelectedFronts gives the places of the selected fronts.
func (s *Session) SelectedFronts() []model.Place { return s.placesOf(drawing.FrontThing) }

func (s *Session) placesOf(kind drawing.SubjectKind) []model.Place {
	var at []model.Place
	for _, t := range s.Selection() {
		if t.Kind == kind {
			at = append(at, t.Place)
		}
	}
	return at
}

// Here is the place that commands are about: of the thing selected first, or
// the first front where nothing is selected.
func (s *Session) Here() model.Place {
	if sel := s.Selection(); len(sel) > 0 {
		return sel[0].Place
	}
	return model.Place{}
}

// Front makes the subject of a front.
func Front(at model.Place) drawing.Subject {
	return drawing.Subject{Kind: drawing.FrontThing, Place: at}
}

// Cabinet makes the subject of the cabinet at a place.
func Cabinet(at model.Place) drawing.Subject {
	return drawing.Subject{Kind: drawing.CabinetThing, Place: model.Place{Cabinet: at.Cabinet, Bay: -1, Front: -1}}
}

// existing keeps the things that can be selected and are in the project.
func existing(p *model.Project, things []drawing.Subject) []drawing.Subject {
	var kept []drawing.Subject
	for _, t := range things {
		ok := false
		switch t.Kind {
		case drawing.FrontThing:
			ok = p.FrontAt(t.Place) != nil
		case drawing.DivisionThing:
			above := t.Place
			above.Front++
			ok = p.FrontAt(t.Place) != nil && p.FrontAt(above) != nil
		case drawing.BayThing:
			ok = p.BayAt(t.Place) != nil
		case drawing.PartitionThing:
			right := t.Place
			right.Bay++
			ok = p.BayAt(t.Place) != nil && p.BayAt(right) != nil
		case drawing.CabinetThing:
			ok = p.CabinetAt(t.Place) != nil
		}
		if ok {
			kept = append(kept, t)
		}
	}
	return kept
}

// PlaceOfCabinet is the place of a cabinet of the run, by its index.
func PlaceOfCabinet(i int) model.Place { return model.Place{Cabinet: i, Bay: -1, Front: -1} }
