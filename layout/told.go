package layout

import (
	"frontlay/layout/asbuilt"
	"frontlay/layout/opening"
	"frontlay/layout/plan"
	"frontlay/layout/season"
	"frontlay/layout/tipping"
	"frontlay/layout/tolerance"
	"frontlay/model/message"
)

// Told is what the studies of a job come to, in a sentence each: those whose figures the
// project gives.
func Told(p *plan.Plan) []message.Message {
	var all []message.Message
	add := func(m message.Message) {
		if !m.Empty() {
			all = append(all, m)
		}
	}
	for i := range p.Cabinets {
		s := tipping.Of(p, i)
		add(s.Told())
	}
	for _, s := range opening.Bays(p) {
		add(s.Told())
	}
	add(opening.OfNiche(p).Told())
	if s, ok := season.Of(p); ok {
		add(s.Told())
	}
	if p.Project.Process != nil {
		b := tolerance.Of(p)
		add(b.Told(b.Try(tolerance.Runs)))
	}
	add(asbuilt.Of(p).Told())
	return all
}
