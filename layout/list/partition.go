package list

import (
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/message"
)

// endedPartitions tells of each partition that a spanning front cuts off: it
// hangs or stands on nothing there unless a rail or shelf carries it.
func endedPartitions(p *plan.Plan, say Speaker) []string {
	var notes []string
	for i := range p.Cabinets {
		c := &p.Cabinets[i]
		for j, r := range c.Partitions {
			for _, f := range spanning(p, i, j) {
				above := r.Min.Y > c.Inside.Min.Y && f.Face.Centre().Y < r.Centre().Y && endsAt(p, i, j, f, r)
				below := r.Max.Y < c.Inside.Max.Y && f.Face.Centre().Y > r.Centre().Y && endsAt(p, i, j, f, r)
				if above {
					notes = append(notes, say.Say(message.New("%v: partition %v ends above the front %v %v, which spans it. It needs a rail or shelf there to stand on, which is not listed.", c.Name, j+1, f.Number, f.Name)))
				}
				if below {
					notes = append(notes, say.Say(message.New("%v: partition %v ends below the front %v %v, which spans it. It needs a rail or shelf there to hold it, which is not listed.", c.Name, j+1, f.Number, f.Name)))
				}
			}
		}
	}
	return notes
}

// spanning are the fronts that pass a partition: all but open niches, whose
// shelves are listed.
func spanning(p *plan.Plan, cabinet, partition int) []*plan.Front {
	var all []*plan.Front
	for i := range p.Fronts {
		f := &p.Fronts[i]
		if f.Bays > 1 && f.Kind != model.OpenNiche && f.Place.Cabinet == cabinet &&
			f.Place.Bay <= partition && partition+1 < f.Place.Bay+f.Bays {
			all = append(all, f)
		}
	}
	return all
}

// endsAt tells that no other spanning front lies between a front and the
// partition that it passes.
func endsAt(p *plan.Plan, cabinet, partition int, f *plan.Front, r plane.Rect) bool {
	for _, g := range spanning(p, cabinet, partition) {
		between := g.Face.Centre().Y
		low, high := min(f.Face.Centre().Y, r.Centre().Y), max(f.Face.Centre().Y, r.Centre().Y)
		if g != f && between > low && between < high {
			return false
		}
	}
	return true
}
