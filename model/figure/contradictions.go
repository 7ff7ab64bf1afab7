package figure

import (
	"fmt"

	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

var checkFigure = message.New("one of the two figures must be wrong: check both on the maker's document")

// SheetFaults are what keeps a hardware sheet from being used: values that are
// missing or out of their bounds, or else figures that contradict one another. It is
// nil for a sheet without fault.
func SheetFaults(s *model.HardwareSheet) []*Fault {
	if faults := Faults(Sheet(s)); len(faults) > 0 {
		return faults // what follows from a fault is not told again
	}
	return Contradictions(s)
}

// Contradictions are figures of a hardware sheet that can't be right together.
func Contradictions(s *model.HardwareSheet) []*Fault {
	j := new(judge)
	j.sheet(s)
	return j.faults
}

func (j *judge) sheet(s *model.HardwareSheet) {
	if len(s.Runner.Lengths) == 0 {
		j.fail("runner.lengths", message.New("the hardware sheet has no runner lengths"), message.New("add those that can be ordered"))
	}
	if len(s.Drawers) == 0 {
		j.fail("drawers", message.New("the hardware sheet has no drawer heights"), message.New("add at least one"))
	}
	j.runners(s)
	j.panels(s)
	names := map[string]bool{}
	for i := range s.Drawers {
		d := &s.Drawers[i]
		j.enter("drawers")
		j.enterAt(i)
		switch {
		case d.Name == model.DrawerAuto:
			j.fail("name", message.New("a drawer height can't be named %v, which asks for the tallest that fits", d.Name), message.New("choose another name"))
		case names[d.Name]:
			j.fail("name", message.New("two drawer heights are named %v", Quote(d.Name)), message.New("give each its own name"))
		}
		names[d.Name] = true
		j.drawer(s, d)
		j.leave()
		j.leave()
	}
}

func (j *judge) runners(s *model.HardwareSheet) {
	seen := map[length.Length]bool{}
	for i := range s.Runner.Lengths {
		l := &s.Runner.Lengths[i]
		if seen[l.Length] {
			j.fail(fmt.Sprintf("runner.lengths[%d].length", i), message.New("the runner length %v stands here twice", l.Length), message.New("remove one of the two"))
		}
		seen[l.Length] = true
		if _, less := s.BottomDeducts(); l.Length <= less {
			key := "bottom.deduct_length"
			if s.Wooden() {
				key = "box.shorter"
			}
			j.fail(key, message.New("%v deducted from the runner of %v leaves no drawer bottom", less, l.Length), checkFigure)
		}
		for k := range l.Screws {
			if h := &l.Screws[k]; h.Back > s.Runner.Setback+l.Length {
				j.fail(fmt.Sprintf("runner.lengths[%d].screws[%d].back", i, k), message.New("a screw hole at %v lies behind the runner, which ends at %v", h.Back, s.Runner.Setback+l.Length), checkFigure)
			}
		}
	}
}

func (j *judge) panels(s *model.HardwareSheet) {
	if s.Wooden() {
		j.box(s)
		return
	}
	if s.Box != (model.BoxFigures{}) {
		j.fail("box.sides", message.New("the wooden box has figures, but its sides have no thickness"), message.New("give their thickness, or remove the box"))
	}
	if b := &s.Bottom; b.DeductWidth < 2*s.SideClearance {
		j.fail("bottom.deduct_width", message.New("a drawer bottom %v narrower than the bay does not fit between runners that take %v", b.DeductWidth, 2*s.SideClearance), checkFigure)
	}
	if b := &s.Back; b.DeductWidth < 2*s.SideClearance {
		j.fail("back.deduct_width", message.New("a drawer back %v narrower than the bay does not fit between runners that take %v", b.DeductWidth, 2*s.SideClearance), checkFigure)
	}
}

// box judges the figures of a wooden box.
func (j *judge) box(s *model.HardwareSheet) {
	b := &s.Box
	least := func(key string, v length.Length, of message.Message) {
		if v <= 0 {
			j.fail(key, message.New("the thickness of %v of the wooden box is missing", of), message.New("give it"))
		}
	}
	least("box.front", b.Front, message.New("the inner front"))
	least("back.thickness", s.Back.Thickness, message.New("the back"))
	follows := func(key string, v length.Length) {
		if v != 0 {
			row, _ := Find(Sheet(s), key)
			j.fail(key, message.New("%v follows from the figures of the wooden box", row.Word()), message.New("leave it out"))
		}
	}
	follows("bottom.deduct_width", s.Bottom.DeductWidth)
	follows("bottom.deduct_length", s.Bottom.DeductLength)
	follows("back.deduct_width", s.Back.DeductWidth)
	through := b.Sides
	if b.Corners == model.FrontsThrough {
		through = min(b.Front, s.Back.Thickness)
	}
	if b.Joint > through {
		j.fail("box.joint", message.New("a joint %v deep comes through the board of %v that it is in", b.Joint, through), checkFigure)
	}
	grooved := min(b.Sides, b.Front)
	if b.Bottom == model.AllRound {
		grooved = min(grooved, s.Back.Thickness)
	}
	switch {
	case b.Bottom == model.BottomLaidOn && (b.GrooveDepth > 0 || b.GrooveHeight > 0):
		j.fail("box.groove_depth", message.New("a bottom that is laid on has no groove"), message.New("leave out depth and height of the groove, or have the bottom in grooves"))
	case b.Bottom != model.BottomLaidOn && b.GrooveDepth >= grooved:
		j.fail("box.groove_depth", message.New("a groove %v deep comes through the board of %v that it is in", b.GrooveDepth, grooved), checkFigure)
	}
}

func (j *judge) drawer(s *model.HardwareSheet, d *model.DrawerHeight) {
	if under := s.Bottom.Underside + s.Bottom.Thickness; d.SideTop <= under {
		j.fail("side_top", message.New("the drawer side of %v ends at %v, below the drawer bottom's upper face at %v", Quote(d.Name), d.SideTop, under), checkFigure)
	}
	if d.RailTop > 0 && d.RailTop <= d.SideTop {
		j.fail("rail_top", message.New("the rail of %v ends at %v, below the top of the drawer side at %v", Quote(d.Name), d.RailTop, d.SideTop), checkFigure)
	}
	if len(d.RailHoles) > 0 && d.RailTop == 0 {
		j.fail("rail_holes", message.New("%v has rail holes but no rail", Quote(d.Name)), message.New("give the top of the rail, or remove its holes"))
	}
	if len(d.Holes) == 0 {
		j.fail("holes", message.New("%v has no connector holes", Quote(d.Name)), message.New("give their heights, such as 48 and 80"))
	}
	j.holes(d, "holes", d.Holes, d.SideTop, message.New("the drawer side"))
	for _, h := range d.Holes {
		if low := s.SideLower(); s.Wooden() && s.Connector.Kind == model.Screws && h < low {
			j.fail("holes", message.New("a screw of %v at %v lies below the inner front, which begins at %v", Quote(d.Name), h, low), checkFigure)
		}
	}
	if d.RailTop > 0 {
		j.holes(d, "rail_holes", d.RailHoles, d.RailTop, message.New("the rail"))
	}
}

func (j *judge) holes(d *model.DrawerHeight, key string, holes []length.Length, top length.Length, of message.Message) {
	seen := map[length.Length]bool{}
	for _, h := range holes {
		switch {
		case h > top:
			j.fail(key, message.New("a hole of %v at %v lies above the top of %v at %v", Quote(d.Name), h, of, top), checkFigure)
		case seen[h]:
			j.fail(key, message.New("the hole of %v at %v stands here twice", Quote(d.Name), h), message.New("remove one of the two"))
		}
		seen[h] = true
	}
}
