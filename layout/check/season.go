package check

import (
	"fmt"
	"iter"

	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/season"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var (
	fixingGive = model.Limit{Key: "fixing_give", Title: message.New("what fixings that hold fast give way"), Usual: length.Millimetre / 2, Greatest: 2 * length.Metre}
	panelReach = model.Limit{Key: "panel_reach", Title: message.New("least reach of a dry panel into its groove"), Usual: 3 * length.Millimetre, Greatest: 2 * length.Metre}
)

var gapThroughYear = Rule{
	Name:     "gap-through-year",
	Title:    message.New("Gaps stay open through the year"),
	Wrong:    message.New("Gap closes in the damp season"),
	Severity: Warning,
	Forbids:  Nothing,
	Doc: message.New("Fronts of solid wood swell until a gap beside them closes: they rub, and drawers can't " +
		"be opened. Told where the project gives the room's climate and the species of a board, " +
		"once for each kind of gap of a cabinet, or between two. Found is the gap in the season in which it is " +
		"least, built as planned, needed the project's least gap. Make the gap larger, or use " +
		"boards that move less: quarter-sawn, lower fronts, or frames."),
	find: findGapThroughYear,
}

var fixingsAcross = Rule{
	Name:     "fixings-across-grain",
	Title:    message.New("Fixings let solid wood move"),
	Wrong:    message.New("Fixings across the grain hold too fast"),
	Severity: Warning,
	Forbids:  Nothing,
	Limits:   []model.Limit{fixingGive},
	Doc: message.New("Solid wood is held by several screws across its grain that do not let it swell and " +
		"shrink: it splits, or pulls the fixings apart. So it is with a front on the holes of its " +
		"connectors, one above the other, with an upright handle on grain that runs from side to " +
		"side, and with runners on sides of solid wood. Found is how far the screws can slip by " +
		"the hardware sheet, or by the diameter of a handle's holes, needed what the wood moves " +
		"between the outermost ones from the driest to the dampest season; up to the project's " +
		"limit (0.5 mm, from memory) is not told. Fix the lowest screws fast and let those above " +
		"slip in slots. Told once for each cabinet and kind of fixing, of the worst."),
	find: findFixingsAcross,
}

var panelRoom = Rule{
	Name:     "panel-room",
	Title:    message.New("Panels have room in their groove"),
	Wrong:    message.New("Panel swells or shrinks too much for its groove"),
	Severity: Warning,
	Forbids:  Nothing,
	Limits:   []model.Limit{panelReach},
	Doc: message.New("A panel of solid wood that fills its groove bursts the frame when it swells; one that " +
		"reaches too little into it falls out when it shrinks. Found is the room that each edge " +
		"keeps from the groove's bottom, or how far it reaches into the groove when it is driest; " +
		"needed what each edge of a panel in the middle swells, or the project's limit (3 mm, from " +
		"memory). Give it more room in the groove, make the groove deeper, or don't glue it."),
	find: findPanelRoom,
}

// year is how the plan's solid wood moves, worked out once for all rules.
func (s *search) year() *season.Study {
	if s.moves == nil {
		s.moves = new(season.Study)
		if study, ok := season.Of(s.plan); ok {
			s.moves = study
		}
	}
	return s.moves
}

func findGapThroughYear(s *search) {
	study := s.year()
	least := leastGap.In(s.plan.Project)
	for home := range s.homes() {
		c := &s.plan.Cabinets[home.last]
		for _, which := range []oneReveal{gapReveal(), topReveal(), bottomReveal(), leftReveal(), rightReveal()} {
			var worst *season.Gap
			var spots []mark.Spot
			for k := range study.Gaps {
				g := &study.Gaps[k]
				if !home.has(&g.Gap) || revealOf(s.plan, &g.Gap).key != which.key || g.Least(study.Year) >= least || g.Size < least {
					continue // too small a gap is told by another rule
				}
				spots = append(spots, gapSpot(&g.Gap))
				if worst == nil || g.Least(study.Year) < worst.Least(study.Year) {
					worst = g
				}
			}
			if worst == nil {
				continue
			}
			from, _, _ := worst.Today(study.Year, least, greatestGap.In(s.plan.Project))
			to := from.CeilTo(GapStep(s.plan.Project))
			found := worst.Least(study.Year)
			s.add(Finding{
				Place: c.Place, Found: found, Needed: least,
				What:   message.New("through the year the gap %v, at front %v, goes from %v to %v; needed is at least %v", which.where, called(worst.Front), season.Shown(found), season.Shown(worst.Greatest(study.Year)), least),
				Change: message.New("make the gap %v where it is built, or use boards that move less", to),
				Spots:  spots,
				Flag:   message.New("%v in the damp season", season.Shown(found)),
				Fixes:  s.otherReveal(c, which, to),
			})
		}
	}
}

// GapStep is a step in which gaps are set.
func GapStep(p *model.Project) length.Length {
	if p.Unit.Inches() {
		return length.Inch64th
	}
	return length.Millimetre / 2
}

// revealOf tells which of the reveals a gap is.
func revealOf(p *plan.Plan, g *plan.Gap) oneReveal {
	c := &p.Cabinets[g.Front.Place.Cabinet]
	edge := c.Outline
	if g.Front.Inset {
		edge = c.Inside
	}
	switch {
	case g.Other != nil:
	case g.Edge == plan.TopEdge && g.Against == edge.Max.Y:
		return topReveal()
	case g.Edge == plan.BottomEdge && g.Against == edge.Min.Y:
		return bottomReveal()
	case g.Edge == plan.LeftEdge:
		return leftReveal()
	case g.Edge == plan.RightEdge:
		return rightReveal()
	}
	return gapReveal()
}

// home is where findings of gaps are told once: in a cabinet, or between two.
type home struct{ first, last int }

// homes are all of a run: each cabinet, and before it what lies between it and the one to its left.
func (s *search) homes() iter.Seq[home] {
	return func(yield func(home) bool) {
		for i := range s.plan.Cabinets {
			if i > 0 && !yield(home{i - 1, i}) || !yield(home{i, i}) {
				return
			}
		}
	}
}

// has tells that a gap lies there.
func (h home) has(g *plan.Gap) bool {
	a, b := g.Front.Place.Cabinet, g.Front.Place.Cabinet
	if g.Other != nil {
		b = g.Other.Place.Cabinet
	}
	return home{min(a, b), max(a, b)} == h
}

// gapSpot is a gap as it is seen from the room.
func gapSpot(g *plan.Gap) mark.Spot {
	f := g.Front
	switch g.Edge {
	case plan.LeftEdge:
		return onBoard(f, mark.Gap, mark.Elevation|mark.Plan, plane.R(g.Against, f.Face.Min.Y, f.Face.Min.X, f.Face.Max.Y))
	case plan.RightEdge:
		return onBoard(f, mark.Gap, mark.Elevation|mark.Plan, plane.R(f.Face.Max.X, f.Face.Min.Y, g.Against, f.Face.Max.Y))
	case plan.TopEdge:
		return onBoard(f, mark.Gap, inDepth, across(f, f.Face.Max.Y, g.Against))
	}
	return onBoard(f, mark.Gap, inDepth, across(f, g.Against, f.Face.Min.Y))
}

func findFixingsAcross(s *search) {
	study := s.year()
	give := fixingGive.In(s.plan.Project)
	for i := range s.plan.Cabinets {
		for _, kind := range season.FixingKinds() {
			var worst *season.Fixing
			over := length.Length(0)
			var spots []mark.Spot
			for k := range study.Fixings {
				x := &study.Fixings[k]
				miss := x.Needed(study.Year) - x.Play
				if x.Kind != kind || x.Front.Place.Cabinet != i || miss <= give {
					continue
				}
				spots = append(spots, fixingSpots(x)...)
				if worst == nil || miss > over {
					worst, over = x, miss
				}
			}
			if worst == nil {
				continue
			}
			slip := message.New("the screws hold fast")
			if worst.Play > 0 {
				slip = message.New("the screws can slip by only %v", worst.Play)
			}
			s.add(Finding{
				Place: s.plan.Cabinets[i].Place, Found: worst.Play, Needed: worst.Needed(study.Year),
				What: message.New("front %v: the %v of %v %v move by %v through the year, and %v",
					called(worst.Front), worst.Term.Size, worst.Term.Species.Say(), worst.Term.What, season.Shown(worst.Needed(study.Year)), slip),
				Change: worst.Advice(study.Year),
				Spots:  spots,
				Flag:   message.New("moves by %v", season.Shown(worst.Needed(study.Year))),
			})
		}
	}
}

// fixingSpots are the places of what is fixed across the grain.
func fixingSpots(x *season.Fixing) []mark.Spot {
	var spots []mark.Spot
	switch x.Kind {
	case season.RunnerScrews:
		return runners(x.Front)
	case season.HandleScrews:
		for i := range x.Front.HandleHoles {
			spots = append(spots, hole(x.Front, &x.Front.HandleHoles[i]))
		}
	default:
		for i := range x.Front.Holes {
			spots = append(spots, hole(x.Front, &x.Front.Holes[i]))
		}
	}
	return spots
}

func findPanelRoom(s *search) {
	study := s.year()
	reach := panelReach.In(s.plan.Project)
	for i := range s.plan.Cabinets {
		var tight, loose *season.Panel
		for k := range study.Panels {
			v := &study.Panels[k]
			if v.Front.Place.Cabinet != i {
				continue
			}
			if v.Room < v.NeededRoom(study.Year) && (tight == nil || v.NeededRoom(study.Year)-v.Room > tight.NeededRoom(study.Year)-tight.Room) {
				tight = v
			}
			if v.ReachDry(study.Year) < reach && (loose == nil || v.ReachDry(study.Year) < loose.ReachDry(study.Year)) {
				loose = v
			}
		}
		if tight != nil {
			needed := tight.NeededRoom(study.Year)
			to := needed.CeilTo(GapStep(s.plan.Project))
			s.front(tight.Front, Finding{
				Found: tight.Room, Needed: needed,
				What:   message.New("each edge of the panel swells by %v from today; it has %v of room in its groove", season.Shown(needed), tight.Room),
				Change: message.New("cut the panel so that each edge keeps %v from the groove's bottom, and don't glue it", to),
				Spots:  panelSpots(tight.Front),
				Flag:   message.New("panel has no room"),
				Fixes:  s.panelKey(tight.Front, "room", to),
			})
		}
		if loose != nil {
			found := loose.ReachDry(study.Year)
			deeper := (loose.Reach + loose.Room + reach - found).CeilTo(GapStep(s.plan.Project))
			s.front(loose.Front, Finding{
				Found: found, Needed: reach,
				What:   message.New("when it is driest, the panel reaches %v into its groove; needed is %v", season.Shown(found), reach),
				Change: message.New("make the groove %v deep and the panel larger with it", deeper),
				Spots:  panelSpots(loose.Front),
				Flag:   message.New("panel comes loose"),
				Fixes:  s.panelKey(loose.Front, "groove", deeper),
			})
		}
	}
}

func panelSpots(f *plan.Front) []mark.Spot {
	for i := range f.Zones {
		if z := &f.Zones[i]; z.Part == plan.PanelPart {
			return []mark.Spot{onBoard(f, mark.Outline, onFace, z.Rect.Move(f.Face.Min))}
		}
	}
	return nil
}

// panelKey is the change of a figure of the panel of a front's board.
func (m mender) panelKey(f *plan.Front, key string, to length.Length) []edit.Edit {
	for i := range m.plan.Project.Boards.Fronts {
		if m.plan.Project.Boards.Fronts[i].Name == f.Made.Name {
			return []edit.Edit{edit.Set{At: model.Whole, Key: fmt.Sprintf("boards.fronts[%d].build.panel.%s", i, key), Value: to}}
		}
	}
	return nil
}
