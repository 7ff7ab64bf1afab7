package edit

import (
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Redivide gives a bay another stack, of drawers alone. Fronts are bottom to top. The
// rule of Division is that of the fronts without a height. What else the bay's fronts
// had (board, cover, handle, packing, what is above them) is that of the front at the
// same place: the lowest takes it from the lowest, the highest from the highest. Where
// there are as many fronts as before they keep their names; a name that says what a
// drawer is to hold goes where that goes. The weight of the contents goes with the name.
// What was behind the fronts is gone, and so are gaps that were measured.
type Redivide struct {
	At       model.Place
	Hardware string // a sheet by its name; empty: that of the bay
	Division model.Division
	Fronts   []NewFront
}

// NewFront is one drawer of the new stack. Height 0 takes a share of what is left.
// Drop is nil for the drop that the layout works out. Holds names what it is to hold,
// which is Contents high; empty and 0: nothing in particular.
type NewFront struct {
	Height   length.Length
	Drop     *length.Length
	Holds    string
	Contents length.Length
}

// Label names the change.
func (e Redivide) Label() message.Message {
	if len(e.Fronts) == 1 {
		return message.New("Divide the bay into 1 drawer")
	}
	return message.New("Divide the bay into %v drawers", len(e.Fronts))
}

// Apply makes the change. It is refused where a front of the bay is locked or spans
// several bays.
func (e Redivide) Apply(p *model.Project) (*model.Project, error) {
	c, b, err := bay(p, e.At)
	if err != nil {
		return nil, err
	}
	if len(e.Fronts) == 0 {
		return nil, message.New("A bay needs at least one front. Make this one an open niche, or remove the bay.")
	}
	for i := range b.Fronts {
		if err := unlocked(&b.Fronts[i]); err != nil {
			return nil, err
		}
		if b.Fronts[i].Span > 1 {
			return nil, message.New("A front of this bay spans several bays. Let it span one, or divide another bay.")
		}
	}
	if e.Hardware != "" {
		if c.Sheet(e.Hardware) == nil {
			return nil, message.New("There is no hardware sheet “%v” in the project.", e.Hardware)
		}
		b.Hardware = e.Hardware
	}
	was := b.Fronts
	b.Fronts = make([]model.Front, len(e.Fronts))
	for i, n := range e.Fronts {
		f := &b.Fronts[i]
		if old := madeLike(was, i, len(e.Fronts)).Clone(); len(was) > 0 {
			*f = model.Front{Board: old.Board, Cover: old.Cover, GapAbove: old.GapAbove, Channel: old.Channel, Rail: old.Rail, Handle: old.Handle}
			if len(was) == len(e.Fronts) && e.Hardware == "" {
				f.Hardware = old.Hardware
			}
			if old.Kind == model.DrawerFront {
				f.Packing = old.Packing
			}
		}
		f.Kind, f.Drawer, f.Share = model.DrawerFront, model.DrawerAuto, 1
		if n.Height > 0 {
			fix(f, n.Height)
		}
		if n.Drop != nil {
			drop := *n.Drop
			f.Drop = &drop
		}
		f.Contents.Height = n.Contents
	}
	nameAnew(was, b.Fronts, e.Fronts)
	for i := range b.Fronts {
		for k := range was {
			if f := &b.Fronts[i]; f.Name != "" && f.Name == was[k].Name {
				f.Contents.Weight = was[k].Contents.Weight
			}
		}
		if err := figure.Refused(figure.Front(&model.Front{}), figure.Front(&b.Fronts[i])); err != nil {
			return nil, err
		}
	}
	by := model.Division{Rule: e.Division.Rule} // what the rule does not ask for is nobody's wish
	switch by.Rule {
	case model.DivideStep:
		by.Step = e.Division.Step
	case model.DivideRatio:
		by.Ratio = e.Division.Ratio
	}
	return SetDivision{At: e.At, Division: by}.Apply(c)
}

// madeLike is the front of a stack that the i-th of n new ones is made like.
func madeLike(was []model.Front, i, n int) model.Front {
	last := len(was) - 1
	switch {
	case last < 0:
		return model.Front{}
	case i == n-1:
		return was[last]
	}
	return was[min(i, max(last-1, 0))]
}

// nameAnew names the fronts of a new stack: by what they hold where that is named as a
// front before or their number has changed, else as before.
func nameAnew(was, now []model.Front, by []NewFront) {
	had, used := map[string]bool{}, map[string]bool{}
	for i := range was {
		had[was[i].Name] = true
	}
	same := len(was) == len(now)
	for i, n := range by {
		if name := oneLine(n.Holds); name != "" && !used[name] && (!same || had[name]) {
			now[i].Name, used[name] = name, true
		}
	}
	for i, n := range by {
		if now[i].Name != "" {
			continue
		}
		switch name := oneLine(n.Holds); {
		case same && was[i].Name != "" && !used[was[i].Name]:
			now[i].Name = was[i].Name
		case name != "" && !used[name]:
			now[i].Name = name
		}
		used[now[i].Name] = true
	}
	for i := range was { // names that have lost their front
		if name := was[i].Name; same && !used[name] {
			for k := range now {
				if now[k].Name == "" {
					now[k].Name, used[name] = name, true
					break
				}
			}
		}
	}
}
