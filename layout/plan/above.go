package plan

import (
	"frontlay/model"
	"frontlay/model/length"
)

// limit is a height, run frame, that a drawer must stay below, and what is there.
type limit struct {
	at   length.Length
	kind AboveKind
}

func (l limit) lower(at length.Length, kind AboveKind) limit {
	if at < l.at {
		return limit{at, kind}
	}
	return l
}

// limitsAbove gives, for each front of a cabinet in the order of the plan, what
// its drawer must stay below: the lowest of what is above it in all the bays
// that it covers.
func (m *maker) limitsAbove(pc *Cabinet) []limit {
	first := pc.Bays[0].First
	last := &pc.Bays[len(pc.Bays)-1]
	limits := make([]limit, last.First+last.Count-first)
	for k := range limits {
		limits[k] = m.underTop(pc)
	}
	for j := range pc.Bays {
		col := pc.Bays[j].Column
		for at, k := range col {
			l := &limits[k-first]
			if at+1 < len(col) {
				*l = m.under(&m.plan.Fronts[col[at+1]], *l)
			}
			if y, ok := m.shelfOver(&m.plan.Fronts[k]); ok {
				*l = l.lower(y, ShelfAbove)
			}
		}
	}
	return limits
}

// underTop is the limit under the carcass top, or under the finger-pull channel
// that hangs from it.
func (m *maker) underTop(pc *Cabinet) limit {
	under := limit{pc.Inside.Max.Y, CarcassAbove}
	if c := &m.p.Cabinets[pc.Place.Cabinet]; c.Channel > 0 {
		return under.lower(pc.underChannel(c), ChannelAbove)
	}
	return under
}

// under is the limit under the next front above: its panel, which a drawer that
// rises behind it would hit when it is pulled, its drawer, or the shelf under it.
func (m *maker) under(g *Front, l limit) limit {
	if g.Kind == model.OpenNiche {
		return l.lower(g.Clear.Min.Y-m.p.Boards.Carcass.Thickness, ShelfAbove)
	}
	if y, ok := m.shelfUnder(g); ok {
		return l.lower(y, ShelfAbove)
	}
	if g.Kind == model.DrawerFront && g.Sheet != nil {
		l = l.lower(g.Runner.Lower+min(0, g.Sheet.Bottom.Underside), DrawerAbove)
	}
	return l.lower(g.Face.Min.Y, FrontAbove)
}
