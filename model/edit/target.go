package edit

import (
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// front gives a copy of the project and the front in it at a place.
func front(p *model.Project, at model.Place) (*model.Project, *model.Front, error) {
	if p.FrontAt(at) == nil {
		return nil, nil, message.New("There is no front at this place any more. Select one in the drawing.")
	}
	c := p.Clone()
	return c, c.FrontAt(at), nil
}

// bay gives a copy of the project and the bay in it at a place.
func bay(p *model.Project, at model.Place) (*model.Project, *model.Bay, error) {
	if p.BayAt(at) == nil {
		return nil, nil, message.New("There is no bay at this place any more. Select one in the drawing.")
	}
	c := p.Clone()
	return c, c.BayAt(at), nil
}

// cabinet gives a copy of the project and the cabinet in it at a place.
func cabinet(p *model.Project, at model.Place) (*model.Project, *model.Cabinet, error) {
	if p.CabinetAt(at) == nil {
		return nil, nil, message.New("There is no cabinet at this place any more. Select one in the drawing.")
	}
	c := p.Clone()
	return c, c.CabinetAt(at), nil
}

// within refuses a size outside of a closed range and says the range.
func within(v, least, greatest length.Length) error {
	if v < least || v > greatest {
		return message.New("%v is not possible here: write a size from %v to %v.", v, least, greatest)
	}
	return nil
}

// refused tells what the bounds of a row have against a value for it.
func refused(rows []figure.Row, key string, v any) error {
	row, _ := figure.Find(rows, key)
	var f *figure.Fault
	switch r := row.Value.(type) {
	case *figure.Size:
		f = r.Refuse(row.Word(), v.(length.Length))
	case *figure.Number:
		f = r.Refuse(row.Word(), v.(float64))
	}
	if f != nil {
		return f.Named()
	}
	return nil
}

// parts refuses sizes of two parts of a thing that the row of such a size does not
// allow: a division or partition has both its fronts or bays.
func parts(rows []figure.Row, key string, sizes ...length.Length) error {
	for _, v := range sizes {
		if err := refused(rows, key, v); err != nil {
			return err
		}
	}
	return nil
}

// unlocked refuses to change the height of a locked front.
func unlocked(f *model.Front) error {
	if f.Locked {
		return message.New("The front is locked. Unlock it first, or change a neighbour's height.")
	}
	return nil
}

// fix gives a front a height of its own. It takes no share and lines up with
// nothing from then.
func fix(f *model.Front, height length.Length) {
	f.Height, f.Clear, f.Share, f.LineUp = height, false, 0, nil
}

// sheetOf is the hardware sheet of a front: its own, or the bay's.
func sheetOf(p *model.Project, b *model.Bay, f *model.Front) *model.HardwareSheet {
	if f.Hardware != "" {
		return p.Sheet(f.Hardware)
	}
	return p.SheetFor(b)
}

// refit lets the drawers of a bay that its hardware sheets do not have be the
// tallest that fit, and runners be the longest.
func refit(p *model.Project, b *model.Bay) {
	for i := range b.Fronts {
		f := &b.Fronts[i]
		s := sheetOf(p, b, f)
		fit := func(drawer *string, runner *length.Length) {
			if s == nil || s.Drawer(*drawer) == nil {
				*drawer = model.DrawerAuto
			}
			if *runner > 0 && (s == nil || !hasRunner(s, *runner)) {
				*runner = 0
			}
		}
		if f.Kind == model.DrawerFront {
			fit(&f.Drawer, &f.Runner)
		}
		for k := range f.Inner {
			fit(&f.Inner[k].Drawer, &f.Inner[k].Runner)
		}
	}
}

func hasRunner(s *model.HardwareSheet, l length.Length) bool {
	for i := range s.Runner.Lengths {
		if s.Runner.Lengths[i].Length == l {
			return true
		}
	}
	return false
}
