package check

import (
	"math"

	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var leastHoleGap = model.Limit{Key: "hole_gap", Title: message.New("between the edges of two holes"), Usual: 2 * length.Millimetre, Greatest: 2 * length.Metre}

var holeGap = Rule{
	Name:     "hole-gap",
	Title:    message.New("Holes keep away from each other"),
	Wrong:    message.New("Holes too close"),
	Severity: Error,
	Forbids:  Drilling,
	Limits:   []model.Limit{leastHoleGap},
	Doc: message.New("Two holes of a front run into each other or leave too little between them: two " +
		"connectors on a narrow front, or a connector and a handle's hole. Found is the " +
		"material between them (negative: they overlap), needed the project's limit. Move " +
		"the handle, or make the front wider."),
	find: findHoleGap,
}

func findHoleGap(s *search) {
	needed := leastHoleGap.In(s.plan.Project)
	for i := range s.plan.Fronts {
		f := &s.plan.Fronts[i]
		all := f.Holes
		if len(f.HandleHoles) > 0 {
			all = append(append([]plan.Hole(nil), f.Holes...), f.HandleHoles...)
		}
		worst, a, b := needed, (*plan.Hole)(nil), (*plan.Hole)(nil)
		for j := range all {
			for k := range all[:j] {
				if d := between(&all[j], &all[k], worst); d < worst {
					worst, a, b = d, &all[j], &all[k]
				}
			}
		}
		if a == nil {
			continue
		}
		short := needed - worst
		what := message.New("the holes at %v and at %v above the bottom edge leave %v between them; needed is %v", b.At.Y, a.At.Y, worst, needed)
		if worst < 0 {
			what = message.New("the holes at %v and at %v above the bottom edge overlap by %v; needed is %v between them", b.At.Y, a.At.Y, -worst, needed)
		}
		var fixes []edit.Edit
		change := message.New("choose another drawer, or make the front wider, so that they are %v further apart", short)
		if a.Kind == plan.HandleHole || b.Kind == plan.HandleHole {
			change = message.New("move the handle by %v", short)
			h, other := a, b
			if a.Kind != plan.HandleHole {
				h, other = b, a
			}
			up := short
			if h.At.Y < other.At.Y {
				up = -short
			}
			fixes = append(s.moveHandle(f, h, plane.Point{Y: up}), s.moveHandle(f, h, plane.Point{Y: -up})...)
		}
		s.front(f, Finding{
			Found: worst, Needed: needed, What: what, Change: change,
			Spots: []mark.Spot{hole(f, a), hole(f, b)},
			Flag:  message.New("Holes %v too close", short),
			Fixes: fixes,
		})
	}
}

// between is the material between two holes' edges; holes that are further
// apart than far along one axis give far.
func between(a, b *plan.Hole, far length.Length) length.Length {
	radii := (a.Diameter + b.Diameter) / 2
	dx, dy := (a.At.X - b.At.X).Abs(), (a.At.Y - b.At.Y).Abs()
	if dx-radii >= far || dy-radii >= far {
		return far
	}
	return hypot(dx, dy) - radii
}

// hypot is the distance over two legs, rounded to the nearest nanometre.
func hypot(dx, dy length.Length) length.Length {
	return length.FromMM(math.Hypot(dx.MM(), dy.MM()))
}
