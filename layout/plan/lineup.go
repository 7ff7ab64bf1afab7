package plan

import (
	"strconv"

	"frontlay/model"
	"frontlay/model/length"
)

// nameKey is how a line-up names a front.
type nameKey struct {
	cabinet string
	bay     int
	front   string
}

// pins works out the heights at which fronts of a stack must end because they
// line up with others, bottom to top.
func (m *maker) pins(i, j int, s *stack) []pin {
	var pins []pin
	fronts := m.p.Cabinets[i].Bays[j].Fronts
	least := s.low // the lowest that the next front can end
	for k := range fronts {
		gap := m.gapAbove(i, j, k)
		least += m.leastHeight(i, j, k)
		if up := fronts[k].LineUp; up != nil {
			at := model.Place{Cabinet: i, Bay: j, Front: k}
			y, ok := m.lineOf(at, up)
			switch {
			case !ok:
			case k == len(fronts)-1:
				if y != s.high {
					m.problem(Problem{Kind: LineUpNoRoom, Place: at, Line: y, Amount: y - s.high})
				}
			case y < least:
				m.problem(Problem{Kind: LineUpNoRoom, Place: at, Line: y, Amount: y - least})
			case y > s.high-gap-length.Millimetre:
				m.problem(Problem{Kind: LineUpNoRoom, Place: at, Line: y, Amount: y - (s.high - gap - length.Millimetre)})
			default:
				pins = append(pins, pin{k, y})
				least = y
			}
		}
		least += gap
	}
	return pins
}

// leastHeight is the least height that a front can have: its own, its bound, or the
// step to which heights are rounded, as when they are divided.
func (m *maker) leastHeight(i, j, k int) length.Length {
	if h := m.fixedHeight(i, j, k); h > 0 {
		return h
	}
	return max(m.p.Cabinets[i].Bays[j].Fronts[k].Least, m.p.RoundingStep())
}

// lineOf finds the edge that a front lines up with, run frame.
func (m *maker) lineOf(from model.Place, up *model.LineUp) (length.Length, bool) {
	key := nameKey{up.Cabinet, max(up.Bay, 1), up.Front}
	if key.cabinet == "" {
		key.cabinet = m.p.Cabinets[from.Cabinet].Name
	}
	to, ok := m.named(key)
	if !ok {
		m.problem(Problem{Kind: LineUpUnknown, Place: from, Name: up.Front})
		return 0, false
	}
	if !m.solveStack(to.Cabinet, to.Bay) {
		m.problem(Problem{Kind: LineUpCircle, Place: from, Name: up.Front, Others: []model.Place{to}})
		return 0, false
	}
	s := &m.stacks[to.Cabinet][to.Bay]
	if up.Bottom {
		return s.bottom[to.Front], true
	}
	return s.top[to.Front], true
}

// named finds a front by its cabinet's name, its bay's number and its own name
// or number. A name that is given twice names none.
func (m *maker) named(k nameKey) (model.Place, bool) {
	if m.names == nil {
		m.names = map[nameKey][]model.Place{}
		for i := range m.p.Cabinets {
			c := &m.p.Cabinets[i]
			for j := range c.Bays {
				for f := range c.Bays[j].Fronts {
					at := model.Place{Cabinet: i, Bay: j, Front: f}
					name := c.Bays[j].Fronts[f].Name
					number := strconv.Itoa(f + 1)
					key := nameKey{c.Name, j + 1, number}
					m.names[key] = append(m.names[key], at)
					if name != "" && name != number {
						key.front = name
						m.names[key] = append(m.names[key], at)
					}
				}
			}
		}
	}
	at := m.names[k]
	if len(at) != 1 {
		return model.Place{}, false
	}
	return at[0], true
}
