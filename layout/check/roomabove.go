package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var roomAbove = Rule{
	Name:     "room-above",
	Title:    message.New("Room above the drawer"),
	Wrong:    message.New("No room above the drawer"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("The drawer's sides, back or rails, or what it is to hold, come closer to the " +
		"next thing above than the hardware allows, so the drawer can't be hung in or its " +
		"contents jam. Found is the room above the highest of them, needed the sheet's " +
		"clearance. Choose a lower drawer, or make the front higher."),
	find: findRoomAbove,
}

func findRoomAbove(s *search) {
	s.everyDrawer(func(f *plan.Front) {
		top, what := f.Drawer.Body.Max.Y, message.New("the drawer")
		if h := s.contents(f).Height; h > 0 && f.Drawer.Bottom.Max.Y+h > top {
			top, what = f.Drawer.Bottom.Max.Y+h, message.New("what the drawer holds")
		}
		found, needed := f.Drawer.Limit-top, f.Sheet.Runner.ClearanceAbove
		if found >= needed {
			return
		}
		contents := top > f.Drawer.Body.Max.Y
		var fixes []edit.Edit
		if !contents {
			fixes = lowerDrawers(f)
		}
		if f.Nth > 0 && f.Drawer.Limit > f.Runner.Lower {
			fixes = append(fixes, raise(f, found-needed))
		}
		if over := s.innerOver(f); over != nil {
			fixes = append(fixes, raise(over, needed-found))
		}
		fixes = append(append(fixes, s.higher(f, needed-found)...), s.ownDrops(f)...)
		say := message.New("%v has %v of room %v; needed is %v", what, found, upTo(f.Drawer.Above), needed)
		if found < 0 {
			say = message.New("%v reaches %v %v; needed is %v of room", what, -found, into(f.Drawer.Above), needed)
		}
		s.front(f, Finding{
			Found: found, Needed: needed, What: say,
			Change: s.moreRoom(f, contents, needed-found),
			Spots:  []mark.Spot{behind(f, top+min(0, found), top+max(needed, 0))},
			Flag:   message.New("Room short by %v", needed-found),
			Fixes:  fixes,
		})
	})
}

// moreRoom says what to change where room is short above a drawer or above what
// it holds.
func (s *search) moreRoom(f *plan.Front, contents bool, short length.Length) message.Message {
	if over := s.innerOver(f); over != nil {
		return message.New("raise inner drawer %v by %v, to %v above where it is measured from, or choose a lower drawer below it", over.Nth, short, over.Runner.Lower+short-over.Datum())
	}
	to := s.height(f, short)
	by := to - f.Face.Height()
	switch {
	case contents:
		return message.New("keep what the drawer holds lower by %v, or make this front higher by %v, to %v", short, by, to)
	case len(lowerDrawers(f)) == 0:
		return message.New("make this front higher by %v, to %v; there is no lower drawer in the hardware sheet", by, to)
	default:
		return message.New("choose a lower drawer, or make this front higher by %v, to %v", by, to)
	}
}

// innerOver is the inner drawer that a drawer behind the same front has its room up to;
// nil where that is something else.
func (s *search) innerOver(f *plan.Front) *plan.Front {
	front := s.plan.FrontAt(f.Place)
	for k := range front.Inner {
		if g := &front.Inner[k]; g.Nth != f.Nth && g.Fitted && g.Runner.Lower+g.Sheet.Lowest() == f.Drawer.Limit {
			return g
		}
	}
	return nil
}

// lowerDrawers are the changes to each lower drawer height, the tallest first.
func lowerDrawers(f *plan.Front) []edit.Edit {
	var fixes []edit.Edit
	under := f.Height.Top()
	for {
		next, name := length.Length(-1), ""
		for i := range f.Sheet.Drawers {
			if d := &f.Sheet.Drawers[i]; d.Top() < under && d.Top() > next {
				next, name = d.Top(), d.Name
			}
		}
		if name == "" {
			return fixes
		}
		if f.Nth > 0 {
			fixes = append(fixes, setInner(f, "drawer", name))
		} else {
			fixes = append(fixes, edit.SetDrawer{At: f.Place, Drawer: name})
		}
		under = next
	}
}

// into says what a drawer reaches into. The preposition stands in the text, as
// other languages bend the name behind it.
func into(k plan.AboveKind) message.Message {
	switch k {
	case plan.DrawerAbove:
		return message.New("into the drawer above")
	case plan.ShelfAbove:
		return message.New("into the shelf above")
	case plan.FrontAbove:
		return message.New("up behind the front above")
	case plan.ChannelAbove:
		return message.New("into the finger-pull channel")
	default:
		return message.New("into the carcass top")
	}
}

// upTo says what ends the room above a drawer.
func upTo(k plan.AboveKind) message.Message {
	switch k {
	case plan.DrawerAbove:
		return message.New("up to the drawer above")
	case plan.ShelfAbove:
		return message.New("up to the shelf above")
	case plan.FrontAbove:
		return message.New("up to the front above")
	case plan.ChannelAbove:
		return message.New("up to the finger-pull channel")
	default:
		return message.New("up to the carcass top")
	}
}
