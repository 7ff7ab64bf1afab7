package list

import (
	"slices"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/message"
)

// CautionsFor is the page of cautions for a plan: with those that not every job needs.
func CautionsFor(p *plan.Plan, say Speaker) Table {
	t := Cautions(say)
	if HangsOnWall(p) {
		t.Rows = append(t.Rows, Row{Cells: []string{"□", say.Say(WallCaution())}})
	}
	if slices.ContainsFunc(p.Fronts, func(f plan.Front) bool { return f.Kind == model.Door }) {
		t.Rows = append(t.Rows, Row{Cells: []string{"□", say.Say(message.New("Doors: hinges are not planned here. Drill for them by their maker's instructions, try one on scrap, and see before the runners are screwed on that the drawers pass the opened door."))}})
	}
	return t
}

// HangsOnWall tells that a cabinet of a plan hangs on the wall.
func HangsOnWall(p *plan.Plan) bool {
	return slices.ContainsFunc(p.Cabinets, func(c plan.Cabinet) bool {
		of := p.Project.CabinetAt(c.Place)
		return of != nil && of.Base.Kind == model.OnWall
	})
}

// WallCaution is said where a cabinet hangs on the wall (common practice, no source).
func WallCaution() message.Message {
	return message.New("A cabinet on the wall falls when its fixing fails: find out what the wall is made of, choose rails, hangers and anchors that their makers rate for this wall and for cabinet, contents and open drawers together, and ask a licensed person where you are not sure.")
}

// Cautions is the page of cautions. They are the trade's usual ones (common
// practice, no source) and take the place of no law, standard or document.
func Cautions(say Speaker) Table {
	t := Table{
		Name:    "cautions",
		Title:   say.Say(message.New("Before you cut, drill and hang")),
		Columns: []Column{{Head: "", Weight: 0.5}, {Head: "", Weight: 14}},
	}
	for _, m := range []message.Message{
		message.New("The maker’s instructions for runners, drawers, connectors and machines come first, then your local codes. Where they and these pages differ, they are right."),
		message.New("Compare the figures of the hardware sheet with the maker’s documents for the very parts that lie before you. The sample sheets that ship with the program have invented figures."),
		message.New("Check each 1:1 page with its two bars, drill one front on scrap, and hang it before you drill the rest."),
		message.New("Drill the rear face with a depth stop, set against the thickness of the board itself: a drill that comes through ruins the face."),
		message.New("Clamp the work and lay scrap under it. Keep hands out of the drill’s way; no gloves at turning tools."),
		message.New("Protect eyes and ears. Dust of wood, board and old finishes harms the lungs: extract it, and wear a mask that is rated for it."),
		message.New("Lift carcasses, long panels and heavy fronts with two people. Keep fingers from between carcass and floor."),
		message.New("Before drilling into a wall, find out where cables, water and gas run. Work on them is for licensed people."),
		message.New("Fix tall, narrow and free-standing cabinets to the building: several open drawers can tip them. Children climb on drawers. The check of the program shows no compliance with any standard on tipping."),
		message.New("Load drawers no more than the maker allows for runner and bottom. Heavy things belong in the lowest ones."),
	} {
		t.Rows = append(t.Rows, Row{Cells: []string{"□", say.Say(m)}})
	}
	return t
}
