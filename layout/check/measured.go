package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/opening"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var measuredAgain = Rule{
	Name:     "measured-again",
	Title:    message.New("Measured figures agree"),
	Wrong:    message.New("Measured figures contradict each other"),
	Severity: Advice,
	Forbids:  Nothing,
	Doc: message.New("The figures that a tape told of an opening or a niche can't all be right, each to within " +
		"what it may be off: one is a slip of the tape, or a board is bowed. Named are those " +
		"without which all others agree; with sides and diagonals alone it may be any. Found is " +
		"how far at least one is off, needed (at most) what it may be. Measure them again."),
	find: findMeasuredAgain,
}

var openingNarrow = Rule{
	Name:     "opening-narrow",
	Title:    message.New("Measured opening has room for the drawers"),
	Wrong:    message.New("Opening too narrow for a drawer"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("Where a drawer's runners go, in front or behind, the measured opening is narrower than the " +
		"clear width that the drawer is planned for: by the hardware sheet drawer and runners take " +
		"all of it. The drawer jams, or does not go in. Found is the measured width, needed what " +
		"the plan takes. Plan the bay narrower and pack out what is left elsewhere."),
	find: findOpeningNarrow,
}

var niche = Rule{
	Name:     "niche",
	Title:    message.New("Run fits its niche"),
	Wrong:    message.New("Niche too small for the run"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("The niche that the run stands in is narrower at its narrowest place than the run without its " +
		"fillers, or lower than the run, set up level on the highest place of the floor. Found is " +
		"what the niche has, needed what the run takes. Make the run narrower or lower."),
	find: findNiche,
}

func findMeasuredAgain(s *search) {
	tell := func(which message.Message, shape *opening.Shape, at model.Place, around plane.Rect, fronts []int) {
		if shape.Doubt.Agree() {
			return
		}
		s.add(Finding{
			Place: at, Found: opening.Shown(length.FromMM(shape.Doubt.Off)), Needed: shape.Within,
			What: message.New("%v: %v", which, shape.Contradiction()), Change: shape.MeasureAgain(),
			Flag: message.New("Measure again"), Spots: s.aboutMeasured(around, fronts),
		})
	}
	for _, b := range opening.Bays(s.plan) {
		tell(message.New("opening as measured"), b.Shape, b.Bay.Place, b.Bay.Opening, b.Bay.Column)
	}
	if n := opening.OfNiche(s.plan); n != nil {
		tell(message.New("niche as measured"), n.Shape, model.Whole, s.plan.Extent, s.firstColumn())
	}
}

// aboutMeasured is what was measured, in the elevation, and in a section the lowest of some fronts there.
func (s *search) aboutMeasured(what plane.Rect, fronts []int) []mark.Spot {
	spots := []mark.Spot{{Shape: mark.Outline, In: mark.Elevation, Box: what}}
	if len(fronts) > 0 {
		f := &s.plan.Fronts[fronts[0]]
		spots = append(spots, onBoard(f, mark.Outline, mark.Section, f.Face))
	}
	return spots
}

func findOpeningNarrow(s *search) {
	for _, b := range opening.Bays(s.plan) {
		s.narrow(b)
	}
}

// narrow tells of the drawers of a bay for which its opening is too narrow.
func (s *search) narrow(study *opening.Bay) {
	c, b, packed := study.Cabinet, study.Bay, study.Packing
	most := length.Length(0)
	for k := range packed {
		most = max(most, opening.Shown(packed[k].Narrow()))
	}
	fit := (b.Opening.Width() - most).FloorTo(opening.PackingStep)
	for k := range packed {
		q := &packed[k]
		short := opening.Shown(q.Narrow())
		if short <= 0 {
			continue
		}
		where := message.New("in front")
		if e := q.Ends[1]; e.Known && opening.Shown(-e.Spare) == short {
			where = message.New("behind")
		}
		f := Finding{
			Found: q.Need - short, Needed: q.Need,
			What:   message.New("the opening is %v wide %v at the runners, %v less than the drawer is planned for", q.Need-short, where, short),
			Change: message.New("plan the bay %v wide, so that all its drawers go in; what is left elsewhere is packed out", fit),
			Spots:  runners(q.Front),
			Flag:   message.New("Opening too narrow by %v", short),
			Fixes:  []edit.Edit{edit.Set{At: b.Place, Key: "width", Value: fit}},
		}
		if len(c.Bays) == 1 {
			wide := c.Outline.Width() - b.Opening.Width() + fit
			f.Change = message.New("plan the cabinet %v wide, so that all its drawers go in; what is left elsewhere is packed out", wide)
			f.Fixes = []edit.Edit{edit.SetCabinet(b.Place, "width", wide)}
		}
		s.front(q.Front, f)
	}
}

func findNiche(s *search) {
	n := opening.OfNiche(s.plan)
	if n == nil {
		return
	}
	tell := func(found, needed length.Length, what, change, flag message.Message) {
		s.add(Finding{
			Place: model.Whole, Found: found, Needed: needed, What: what, Change: change, Flag: flag,
			Spots: s.aboutMeasured(s.plan.Extent, s.firstColumn()),
		})
	}
	if short := opening.Shown(n.Short()); short > 0 {
		fixed := s.plan.Extent.Width() - n.Left.Planned - n.Right.Planned
		tell(fixed-short, fixed, message.New("the niche is narrower by %v than the run without its fillers", short),
			message.New("make the run narrower by %v", short), message.New("Niche too narrow by %v", short))
	}
	if low := opening.Shown(n.Low()); low > 0 {
		high := s.plan.Extent.Max.Y
		tell(high-low, high, message.New("the niche is lower by %v than the run, set up level on the highest place of the floor", low),
			message.New("make the run lower by %v", low), message.New("Niche too low by %v", low))
	}
}

// firstColumn are the fronts of the run's first bay; none where it has none.
func (s *search) firstColumn() []int {
	if len(s.plan.Cabinets) == 0 || len(s.plan.Cabinets[0].Bays) == 0 {
		return nil
	}
	return s.plan.Cabinets[0].Bays[0].Column
}
