package yamlfile

import (
	"strings"

	"gopkg.in/yaml.v3"

	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// meant is advice for a name that nothing bears.
func meant(name string, names []string) message.Message {
	if near := nearest(name, names); near != "" {
		return message.New("did you mean %v?", near)
	}
	if len(names) == 0 {
		return message.New("name one under hardware, such as hardware: {main: sample-a}")
	}
	return message.New("write one of %v", strings.Join(names, ", "))
}

var checkFigure = message.New("one of the two figures must be wrong: check both on the maker's document")

// checkSheet finds figures that contradict one another.
func (r *reader) checkSheet(s *model.HardwareSheet) {
	if len(s.Runner.Lengths) == 0 {
		r.fail(r.nodes[s], message.New("the hardware sheet has no runner lengths"), r.advice(message.New("add those that can be ordered under lengths"), message.New("add those that can be ordered")))
	}
	if len(s.Drawers) == 0 {
		r.fail(r.nodes[s], message.New("the hardware sheet has no drawer heights"), r.advice(message.New("add at least one under drawers"), message.New("add at least one")))
	}
	r.checkRunners(s)
	r.checkBottom(s)
	names := map[string]bool{}
	for i := range s.Drawers {
		d := &s.Drawers[i]
		r.enter("drawers")
		r.enterAt(i)
		switch {
		case d.Name == model.DrawerAuto:
			r.fail(r.nodes[&d.Name], message.New("a drawer height can't be named %v, which asks for the tallest that fits", d.Name), message.New("choose another name"))
		case names[d.Name]:
			r.fail(r.nodes[&d.Name], message.New("two drawer heights are named %v", shown(d.Name)), message.New("give each its own name"))
		}
		names[d.Name] = true
		r.checkDrawer(s, d)
		r.leave()
		r.leave()
	}
}

func (r *reader) checkRunners(s *model.HardwareSheet) {
	seen := map[length.Length]bool{}
	for i := range s.Runner.Lengths {
		l := &s.Runner.Lengths[i]
		if seen[l.Length] {
			r.fail(r.nodes[&l.Length], message.New("the runner length %v stands here twice", l.Length), message.New("remove one of the two"))
		}
		seen[l.Length] = true
		if l.Length <= s.Bottom.DeductLength {
			r.fail(r.nodes[&s.Bottom.DeductLength], message.New("%v deducted from the runner of %v leaves no drawer bottom", s.Bottom.DeductLength, l.Length), checkFigure)
		}
		for j := range l.Screws {
			if h := &l.Screws[j]; h.Back > s.Runner.Setback+l.Length {
				r.fail(r.nodes[&h.Back], message.New("a screw hole at %v lies behind the runner, which ends at %v", h.Back, s.Runner.Setback+l.Length), checkFigure)
			}
		}
	}
}

func (r *reader) checkBottom(s *model.HardwareSheet) {
	if b := &s.Bottom; b.DeductWidth < 2*s.SideClearance {
		r.fail(r.first(&b.DeductWidth, s), message.New("a drawer bottom %v narrower than the bay does not fit between runners that take %v", b.DeductWidth, 2*s.SideClearance), checkFigure)
	}
	if b := &s.Back; b.DeductWidth < 2*s.SideClearance {
		r.fail(r.first(&b.DeductWidth, s), message.New("a drawer back %v narrower than the bay does not fit between runners that take %v", b.DeductWidth, 2*s.SideClearance), checkFigure)
	}
}

func (r *reader) checkDrawer(s *model.HardwareSheet, d *model.DrawerHeight) {
	if under := s.Bottom.Underside + s.Bottom.Thickness; d.SideTop <= under {
		r.fail(r.nodes[&d.SideTop], message.New("the drawer side of %v ends at %v, below the drawer bottom's upper face at %v", shown(d.Name), d.SideTop, under), checkFigure)
	}
	if d.RailTop > 0 && d.RailTop <= d.SideTop {
		r.fail(r.nodes[&d.RailTop], message.New("the rail of %v ends at %v, below the top of the drawer side at %v", shown(d.Name), d.RailTop, d.SideTop), checkFigure)
	}
	if len(d.RailHoles) > 0 && d.RailTop == 0 {
		r.fail(r.nodes[&d.RailHoles], message.New("%v has rail holes but no rail", shown(d.Name)), r.advice(message.New("add rail_top, or remove rail_holes"), message.New("write the top of the rail, or empty the field of its holes")))
	}
	if len(d.Holes) == 0 {
		r.fail(r.nodes[d], message.New("%v has no connector holes", shown(d.Name)), r.advice(message.New("add their heights under holes, such as [48, 80]"), message.New("write their heights, such as 48; 80")))
	}
	r.checkHoles(d, &d.Holes, d.SideTop, message.New("the drawer side"))
	if d.RailTop > 0 {
		r.checkHoles(d, &d.RailHoles, d.RailTop, message.New("the rail"))
	}
}

func (r *reader) checkHoles(d *model.DrawerHeight, holes *[]length.Length, top length.Length, of message.Message) {
	seen := map[length.Length]bool{}
	for _, h := range *holes {
		switch {
		case h > top:
			r.fail(r.nodes[holes], message.New("a hole of %v at %v lies above the top of %v at %v", shown(d.Name), h, of, top), checkFigure)
		case seen[h]:
			r.fail(r.nodes[holes], message.New("the hole of %v at %v stands here twice", shown(d.Name), h), message.New("remove one of the two"))
		}
		seen[h] = true
	}
}

// first is where a value stands, or the mapping it is missing from.
func (r *reader) first(v, within any) *yaml.Node {
	if n := r.nodes[v]; n != nil {
		return n
	}
	return r.nodes[within]
}
