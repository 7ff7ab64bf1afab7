package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
)

var backGroove = Rule{
	Name:     "back-groove",
	Title:    message.New("Groove of the back stays in the wood"),
	Wrong:    message.New("Groove of the back comes through"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("The rebate or groove of a cabinet's back is asked for so deep that it comes through the " +
		"thinnest of the boards that it is milled into, sides, bottom and top, or leaves less than " +
		"1 mm of it. What is drawn and cut is the deepest that leaves so much. Found is the depth " +
		"asked for, needed (at most) that one. Make it less deep, leave it out for half of the " +
		"thinnest board, or take thicker boards."),
	find: findBackGroove,
}

func findBackGroove(s *search) {
	for i := range s.plan.Cabinets {
		c := &s.plan.Cabinets[i]
		of := s.plan.Project.CabinetAt(c.Place)
		if of.Back.Kind == model.LaidOn || c.Back.Rect.Empty() || of.Back.Depth <= c.Back.Deepest {
			continue
		}
		asked, most := of.Back.Depth, c.Back.Deepest
		var spots []mark.Spot
		number := s.plan.Fronts[c.Bays[0].First].Number
		for _, b := range s.plan.Boards(i) {
			seen := mark.Elevation
			switch b.Kind {
			case plan.LeftSideBoard, plan.RightSideBoard:
			case plan.BottomBoard, plan.TopBoard:
				seen |= mark.Section
			default:
				continue
			}
			spots = append(spots, mark.Spot{Shape: mark.Band, In: seen, Front: number, Box: b.Rect, Near: c.Back.Near, Far: c.Back.Far})
		}
		s.add(Finding{
			Place: c.Place, Found: asked, Needed: most, Spots: spots,
			What:   message.New("the back's groove of %v comes through the thinnest of sides, bottom and top: it can be %v deep", asked, most),
			Flag:   message.New("Groove too deep by %v", asked-most),
			Change: message.New("make it %v less deep, down to %v, or take thicker boards", asked-most, most),
			Fixes:  []edit.Edit{edit.Set{At: c.Place, Key: "back.depth", Value: most}, edit.Set{At: c.Place, Key: "back.depth"}},
		})
	}
}
