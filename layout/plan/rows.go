package plan

// moveToRows chooses the fronts' heights so that runners fall on hole rows.
func (m *maker) moveToRows(i, j int, s *stack) {}
