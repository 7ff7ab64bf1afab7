package propose

import (
	"slices"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
)

// setup is a number of fronts with a hardware sheet and a way to set drops. Its
// divisions differ in heights and in what goes where alone.
type setup struct {
	n      int
	sheet  string // empty: the bay's
	level  bool   // all drawers have the drop of the lowest, for one setting of the jig
	fronts []front
	// The stack, run frame.
	low, high length.Length
	gaps      []length.Length // above each front but the highest
	beside    beside
}

// front is what holds for the front at a place of a stack whatever its height. It is
// measured on plans, not worked out a second time: how a runner stands over its front's
// bottom edge, and what ends the room above.
type front struct {
	sheet   *model.HardwareSheet
	upper   bool          // it stands on nothing but its front
	drop    length.Length // runner's lower edge over the bottom edge, off the rows
	onRows  bool          // the runner goes up to the next row
	row     length.Length // the y of a runner's lower edge on a row, where there are rows
	pitch   length.Length
	bottom  length.Length // runner's lower edge to the drawer bottom's upper face
	ceiling length.Length // from the next front's bottom edge (the highest: from the top of the stack) to what is above, the drawer above apart
	drawers []drawer
}

// drawer is a drawer height: how high a room it takes above the runner's lower edge,
// and how far its highest hole, with what must stay above it, lies there.
type drawer struct{ top, holes length.Length }

// redivided is the edit that gives a setup's bay n fronts of some heights, all but one
// of which are fixed: that at the end which takes the odd rest. No heights: all equal.
func (s *search) redivided(u *setup, heights []length.Length, by model.Division, things []int) edit.Redivide {
	e := edit.Redivide{At: s.q.At, Hardware: u.sheet, Division: by, Fronts: make([]edit.NewFront, u.n)}
	rest := 0
	if s.p.Rounding.Rest == model.RestTop {
		rest = u.n - 1
	}
	for k := range e.Fronts {
		f := &e.Fronts[k]
		if heights != nil && k != rest {
			f.Height = heights[k]
		}
		if u.level && k > 0 {
			drop := u.fronts[0].drop
			f.Drop = &drop
		}
		if things != nil && things[k] >= 0 {
			f.Holds, f.Contents = s.q.Things[things[k]].Name, s.q.Things[things[k]].Height
		}
	}
	return e
}

// planned places a bay with n equal fronts in a project with hole rows of some mode.
func (s *search) planned(u *setup, mode model.RowMode, drop *length.Length) (*plan.Plan, error) {
	e := s.redivided(u, nil, model.Division{Rule: model.DivideEqual}, nil)
	for k := range e.Fronts {
		if drop != nil {
			e.Fronts[k].Drop = drop
		}
	}
	p, err := e.Apply(s.p)
	if err != nil {
		return nil, err
	}
	p.HoleRows.Mode = mode
	return plan.Make(p), nil
}

// measured makes a setup; nil where its drawers can't be placed at all.
func (s *search) measured(n int, sheet string) *setup {
	u := &setup{n: n, sheet: sheet, fronts: make([]front, n), gaps: make([]length.Length, n)}
	far := 200 * length.Millimetre // so that the drawer above is never what ends the room
	free, err := s.planned(u, model.RowsFree, nil)
	if err != nil {
		return nil
	}
	high, err1 := s.planned(u, model.RowsFree, &far)
	rows, err2 := s.planned(u, model.RowsMoveRunners, nil)
	if err1 != nil || err2 != nil {
		return nil
	}
	at := s.q.At
	b := free.BayAt(at)
	u.low = free.Fronts[b.First].Face.Min.Y
	u.high = u.low + b.Room
	u.beside = linesBeside(free, at)
	held := s.p.HoleRows.Mode != model.RowsFree
	for k := range u.fronts {
		f, above, onRow := &free.Fronts[b.First+k], &high.Fronts[b.First+k], &rows.Fronts[b.First+k]
		if !f.Fitted {
			return nil
		}
		at.Front = k
		g := &u.fronts[k]
		*g = front{sheet: f.Sheet, upper: !f.OnFloor, drop: f.Drop, bottom: f.Drawer.Bottom.Max.Y - f.Runner.Lower, drawers: s.drawers(free, f)}
		u.gaps[k] = free.Project.GapAbove(at)
		next := u.high
		if k+1 < n {
			next = high.Fronts[b.First+k+1].Face.Min.Y
		}
		g.ceiling = above.Drawer.Limit - next
		if len(onRow.Runner.Screws) > 0 {
			g.row, g.pitch = onRow.Runner.Lower, s.p.HoleRows.Filled().Pitch
			g.onRows = held
			if held {
				// As the layout does: a runner goes up from where the cover is enough.
				g.drop = max(g.drop, free.Project.FrontAt(at).Cover-f.Sheet.Bottom.Underside)
			}
		}
		if u.level && k > 0 {
			g.drop, g.onRows = u.fronts[0].drop, false
		}
	}
	return u
}

// levelled is a setup with the drop of the lowest drawer for all; nil where that is
// what they have anyway, or where rows say where runners are.
func (s *search) levelled(u *setup) *setup {
	if s.p.HoleRows.Mode != model.RowsFree || s.q.Rows || u.n == 1 {
		return nil
	}
	l := *u
	l.level, l.fronts = true, slices.Clone(u.fronts)
	same := true
	for k := range l.fronts {
		same = same && l.fronts[k].drop == l.fronts[0].drop
		l.fronts[k].drop = l.fronts[0].drop
	}
	if same {
		return nil
	}
	return &l
}

// drawers are the drawer heights that a front can have.
func (s *search) drawers(pl *plan.Plan, f *plan.Front) []drawer {
	all := make([]drawer, len(f.Sheet.Drawers))
	edge := f.Sheet.Connector.Diameter/2 + plan.HoleEdgeIn(pl.Project, f.Sheet.Connector.Diameter)
	for i := range f.Sheet.Drawers {
		d := &f.Sheet.Drawers[i]
		all[i].top = d.Top()
		for _, up := range slices.Concat(d.Holes, d.RailHoles) {
			all[i].holes = max(all[i].holes, up+edge)
		}
	}
	return all
}

// dropAt is the drop of a front whose bottom edge is at y, run frame.
func (f *front) dropAt(y length.Length) length.Length {
	if !f.onRows {
		return f.drop
	}
	return f.drop + (f.row - y - f.drop) - (f.row - y - f.drop).FloorTo(f.pitch)
}

// usable is how high something can stand in the drawer of a front from y to the next
// front's bottom edge at next (the highest: to the top of the stack), above it.
func (u *setup) usable(k int, y, next length.Length) length.Length {
	f := &u.fronts[k]
	limit := next + f.ceiling
	if k+1 < u.n {
		g := &u.fronts[k+1]
		limit = min(limit, next+g.dropAt(next)+g.sheet.Lowest())
	}
	return limit - f.sheet.Runner.ClearanceAbove - y - f.dropAt(y) - f.bottom
}

// height is that of a front from y to the next one's bottom edge.
func (u *setup) height(k int, y, next length.Length) length.Length {
	if k+1 < u.n {
		return next - u.gaps[k] - y
	}
	return next - y
}

// fits tells that a drawer of its sheet has room behind a front, with its holes in it,
// and so much usable height.
func (u *setup) fits(k int, y, next, usable, need length.Length) bool {
	f := &u.fronts[k]
	if usable < need {
		return false
	}
	h, room, drop := u.height(k, y, next), usable+f.bottom, f.dropAt(y)
	for _, d := range f.drawers {
		if d.top <= room && d.holes+drop <= h {
			return h > 0
		}
	}
	return false
}

// around is what a front takes at least from its bottom edge to the next one's beside
// what can stand in its drawer.
func (u *setup) around(k int) length.Length {
	f := &u.fronts[k]
	return f.drop + f.bottom + f.sheet.Runner.ClearanceAbove - f.ceiling
}

// span is the least from its bottom edge to the next one's, with so much usable height.
func (u *setup) span(k int, need length.Length) length.Length {
	f := &u.fronts[k]
	gap := length.Length(0)
	if k+1 < u.n {
		gap = u.gaps[k]
	}
	least := length.Length(0)
	for i, d := range f.drawers {
		if h := max(d.top-f.bottom+u.around(k), d.holes+f.drop+gap); i == 0 || h < least {
			least = h
		}
	}
	return max(least, need+u.around(k), gap+1)
}

// places are the bottom edges, run frame, that the front at a place of the stack can
// have: on the grid, counted from the end of the stack that does not take the odd rest,
// or where its runner is on a row; those of the lowest front and of what is above the
// highest are given.
func (s *search) places(u *setup, k int) []length.Length {
	switch {
	case k == 0:
		return []length.Length{u.low}
	case k == u.n:
		return []length.Length{u.high}
	}
	f, from, step := &u.fronts[k], u.low, s.grid
	if s.p.Rounding.Rest == model.RestTop {
		for _, g := range u.gaps[:k] {
			from += g
		}
	} else {
		from = u.high
		for _, g := range u.gaps[k : u.n-1] {
			from -= g
		}
	}
	if f.pitch > 0 && (s.q.Rows || s.p.HoleRows.Mode == model.RowsMoveFronts) {
		from, step = f.row-f.drop, f.pitch
	}
	var all []length.Length
	for y := u.low + (from - u.low) - (from - u.low).FloorTo(step); y < u.high; y += step {
		if y > u.low {
			all = append(all, y)
		}
	}
	return all
}
