package check

import (
	"frontlay/model"
	"frontlay/model/length"
)

// limits are a project's limits with every default filled in. HoleEdge is nil
// where the hole's own diameter counts.
type limits struct {
	leastReveal, greatestReveal, leastOverlay, web, drillPoint length.Length
	holeGap, nearlyLevel, wideFront, besideClear               length.Length
	holeEdge                                                   *length.Length
}

func limitsOf(p *model.Project) limits {
	l := &p.Checks.Limits
	or := func(v *length.Length, mm int64) length.Length {
		if v != nil {
			return *v
		}
		return length.MM(mm)
	}
	return limits{
		leastReveal:    or(l.LeastReveal, 1),
		greatestReveal: or(l.GreatestReveal, 6),
		leastOverlay:   or(l.LeastOverlay, 1),
		web:            or(l.Web, 3),
		drillPoint:     or(l.DrillPoint, 0),
		holeGap:        or(l.HoleGap, 2),
		nearlyLevel:    or(l.NearlyLevel, 3),
		wideFront:      or(l.WideFront, 900),
		besideClear:    or(l.BesideClear, 3),
		holeEdge:       l.HoleEdge,
	}
}

// edgeFor is what must stay between a hole's edge and the panel's.
func (l limits) edgeFor(diameter length.Length) length.Length {
	if l.holeEdge != nil {
		return *l.holeEdge
	}
	return diameter
}
