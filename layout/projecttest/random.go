package projecttest

import (
	"fmt"
	"math"
	"strings"

	"pgregory.net/rapid"

	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/length"
)

const mm = length.Millimetre

// Tenths draws a length from a to b mm in steps of 0.2 mm, so that halves are
// exact too.
func Tenths(t *rapid.T, a, b int64, label string) length.Length {
	return length.Length(rapid.Int64Range(a*5, b*5).Draw(t, label)) * mm / 5
}

// oneIn draws true once in n times.
func oneIn(t *rapid.T, n int, label string) bool { return rapid.IntRange(0, n-1).Draw(t, label) == n-1 }

// count draws a whole number from a to b.
func count(t *rapid.T, a, b int, label string) int { return rapid.IntRange(a, b).Draw(t, label) }

// of draws one of some values.
func of[T any](t *rapid.T, label string, some ...T) T { return rapid.SampledFrom(some).Draw(t, label) }

// Random draws a project as a person might make one: most of it sound, some of it
// not, all of it what a file can hold. Of the widths of a cabinet's bays all but one
// are fixed. In many draws every key of the format is used, and every word that a key
// can have.
func Random(t *rapid.T) *model.Project {
	p := &model.Project{
		Unit:     of(t, "unit", length.UnitMM, length.UnitMM, length.UnitMM, length.UnitCM, length.UnitInch, length.UnitInchDecimal),
		Hardware: []model.HardwareUse{{Name: "main", Sheet: metalSided(t, "main")}, {Name: "other", Sheet: metalSided(t, "other")}, {Name: "boxes", Sheet: wooden(t)}},
		Boards:   boards(t),
		Board:    of(t, "board", "", "", "frames", "slabs"),
		Reveals: model.Reveals{
			Left: Tenths(t, of[int64](t, "least reveal", 0, 0, 0, -25), 4, "left"), Right: Tenths(t, of[int64](t, "least reveal", 0, 0, 0, -25), 4, "right"),
			Top: Tenths(t, 0, 5, "top"), Bottom: Tenths(t, of[int64](t, "least reveal", 0, 0, 0, -20), 4, "bottom"), Gap: Tenths(t, 0, 7, "gap"),
		},
		SharedGaps: rapid.Bool().Draw(t, "shared"),
		OnePlinth:  rapid.Bool().Draw(t, "one plinth"),
		HoleRows: model.HoleRows{
			Mode: model.RowMode(count(t, 0, 2, "rows")), Datum: Tenths(t, 10, 60, "datum"),
			Pitch: of(t, "pitch", 0, 0, 25*mm), Setback: of(t, "rows' setback", 0, 0, 50*mm),
		},
		Matched: matched(t),
		Species: []model.Species{{Name: "own", Radial: 0.0016, Tangential: 0.0037}},
		Saw:     model.Saw{Kerf: Tenths(t, 0, 5, "kerf"), Trim: Tenths(t, 0, 15, "trim")},
	}
	if oneIn(t, 3, "title block") {
		p.Title, p.Number, p.Client, p.DrawnBy, p.Revision = words(t, "Glaze bench"), "2026-07", words(t, "The pottery"), "nobody", "B"
		p.Notes = "Invented.\nTo be tried."
	}
	if oneIn(t, 4, "rounding") {
		p.Rounding = model.Rounding{Step: of(t, "step", 0, mm/2, 5*mm), Rest: model.RestTo(count(t, 0, 1, "rest"))}
	}
	if oneIn(t, 4, "project's handle") {
		p.Handle = Handle(t)
	}
	for i, n := 0, count(t, 1, 3, "cabinets"); i < n; i++ {
		p.Cabinets = append(p.Cabinets, cabinet(t, p, i))
	}
	if oneIn(t, 3, "seasons") {
		p.Climate = model.Climate{Driest: air(t), Dampest: air(t), Today: air(t)}
	}
	if oneIn(t, 3, "how exact") {
		p.Process = Process(t)
	}
	if oneIn(t, 6, "tipping load") {
		p.TippingLoad = 30
	}
	if oneIn(t, 8, "in a niche") {
		wide, high := length.Length(0), length.Length(0)
		for i := range p.Cabinets {
			c := &p.Cabinets[i]
			wide, high = wide+c.Left.Filler+c.Width+c.Right.Filler, max(high, c.Plinth+c.Height+c.Worktop)
		}
		p.Niche = measured(t, wide, high)
	}
	p.Checks = checks(t, p)
	return p
}

// air draws that of a room.
func air(t *rapid.T) model.Air {
	return model.Air{Humidity: float64(count(t, 25, 75, "humidity")), Temperature: of(t, "temperature", 0, 18.0), Moisture: of(t, "moisture", 0, 0, 8.5)}
}

// measured draws what a tape says of an opening that is about as wide and high as that;
// some of it is not taken, and some of it contradicts the rest.
func measured(t *rapid.T, wide, high length.Length) *model.Measured {
	near := func(size length.Length) length.Length {
		return of(t, "taken", 0, size, size, max(size+Tenths(t, -6, 6, "off"), mm))
	}
	leans := func() *length.Length {
		if rapid.Bool().Draw(t, "by plumb or level") {
			return nil
		}
		by := Tenths(t, -4, 4, "leans")
		return &by
	}
	m := &model.Measured{
		Widths:  model.MeasuredWidths{Bottom: near(wide), Middle: near(wide), Top: near(wide)},
		Heights: model.MeasuredHeights{Left: near(high), Middle: near(high), Right: near(high)},
		Back:    model.MeasuredWidths{Bottom: near(wide), Middle: near(wide), Top: near(wide)},
		Within:  of(t, "within", 0, 0, mm),
	}
	across := length.Length(math.Hypot(float64(wide), float64(high)))
	m.Rising, m.Falling = near(across), near(across)
	m.PlumbLeft, m.PlumbRight, m.Level = leans(), leans(), leans()
	return m
}

// Process draws how exactly things are made: figures from nothing to more than anybody
// makes, and some left out.
func Process(t *rapid.T) *model.Process {
	p := &model.Process{Drilling: model.Drilling(count(t, 0, 2, "drilling"))}
	for _, f := range model.ProcessFigures() {
		if !oneIn(t, 4, "usual "+f.Key) {
			v := Tenths(t, 0, 2, f.Key)
			*f.At(p) = &v
		}
	}
	return p
}

// words are one, or many more than there is room for.
func words(t *rapid.T, word string) string {
	return strings.TrimSpace(strings.Repeat(word+" ", of(t, "words", 1, 1, 1, 2, 4, 12)))
}

func matched(t *rapid.T) string {
	return of(t, "matched", "", "", "", model.NotMatched, model.MatchedUpright, model.MatchedAcross)
}

func grain(t *rapid.T) string { return of(t, "grain", "", "horizontal", "vertical") }

// board draws a board of a thickness from a to b mm.
func board(t *rapid.T, a, b int64, label string) model.Board {
	d := model.Board{Thickness: Tenths(t, a, b, label), Density: float64(of(t, "density", 0, 450, 700, 720)), Grain: grain(t)}
	d.Material = of(t, "material", "", "birch plywood", "oak")
	if rapid.Bool().Draw(t, "lipped") {
		d.Lipping = Tenths(t, 0, 3, "lipping")
	}
	if oneIn(t, 3, "stock") {
		d.Stock = model.Stock{Length: 2500 * mm, Width: 1250 * mm, Plain: rapid.Bool().Draw(t, "plain")}
	}
	if oneIn(t, 4, "solid") {
		d.Species, d.Sawn = of(t, "species", "own", (&model.Project{}).SpeciesNames()[0]), model.Sawn(count(t, 0, 1, "sawn"))
	}
	if oneIn(t, 4, "priced") {
		d.Price, d.Edging.Price = 31.5, 0.9
	}
	return d
}

func boards(t *rapid.T) model.Boards {
	edges := func() string {
		return of(t, "edges", "", model.EdgeNone, model.EdgeFront, model.EdgeFrontBack, model.EdgeFrontEnds, model.EdgeAll)
	}
	around := func() string {
		return of(t, "edges of fronts", "", "", model.EdgeNone, model.EdgeAll, model.EdgeSides, model.EdgeTopBottom, model.EdgeTop)
	}
	b := model.Boards{Carcass: board(t, 15, 25, "carcass"), Front: board(t, 15, 25, "front"), Back: board(t, 3, 10, "back")}
	c := &b.Carcass.Edging
	c.Sides, c.Bottoms, c.Partitions, c.Shelves = edges(), edges(), edges(), edges()
	b.Front.Edging.Fronts, b.Front.Edging.EndPanels = around(), edges()
	b.Back.Edging = model.Edging{}
	if b.Front.Density == 0 {
		b.Front.Density = 700
	}
	frames := model.FrontBoard{Name: "frames", Board: board(t, 18, 24, "frames"), Build: model.Build{
		Kind: model.Frame, Stile: of(t, "stile", 0, Tenths(t, 40, 70, "stile's width")), Tenon: Tenths(t, 0, 20, "tenon"),
		TopRail: of(t, "top rail", 0, 55*mm), BottomRail: of(t, "bottom rail", 0, 70*mm),
		Panel: model.Panel{Recess: Tenths(t, 0, 8, "recess"), Groove: of(t, "groove", 0, 0, 9*mm), Room: of(t, "room", 0, mm, 2*mm)},
	}}
	panel := board(t, 4, 12, "panel")
	panel.Lipping, panel.Edging = 0, model.Edging{}
	panel.Thickness = of(t, "panel's thickness", 0, panel.Thickness)
	frames.Build.Panel.Board = panel
	grips := model.FrontBoard{Name: "grips", Board: board(t, 18, 24, "grips"), Build: model.Build{
		Kind: model.GripEdged, Edge: model.GripEdge(count(t, 0, 1, "edge")), Height: of(t, "grip", 0, 28*mm, 45*mm), Left: of(t, "left of it", 0, 8*mm, 12*mm),
	}}
	b.Fronts = []model.FrontBoard{frames, grips, {Name: "slabs", Board: board(t, 10, 30, "slabs")}}
	for i := range b.Fronts {
		b.Fronts[i].Edging.Fronts = around()
	}
	return b
}

// checks draws settings of the check: mostly none.
func checks(t *rapid.T, p *model.Project) model.Checks {
	c := model.Checks{}
	limits := map[string]length.Length{}
	if oneIn(t, 8, "far apart") {
		limits["hole_gap"] = 28 * mm // more than two holes 32 mm apart leave
	}
	if oneIn(t, 8, "much overlay") {
		limits["least_overlay"] = 7 * mm // more than half of a thin partition less half of a wide gap
	}
	if oneIn(t, 4, "a limit") {
		l := of(t, "limit", check.Limits()...)
		limits[l.Key] = max(l.Least, min(l.Greatest, l.Usual+of(t, "more", -mm, mm, 2*mm)))
	}
	if least, greatest := limits["least_reveal"], limits["greatest_reveal"]; greatest > 0 && least > greatest {
		delete(limits, "least_reveal")
	}
	if len(limits) > 0 {
		c.Limits = limits
	}
	rule := func() string { return of(t, "rule", check.Rules()...).Name }
	if oneIn(t, 8, "severity") {
		c.Severity = map[string]string{rule(): of(t, "how bad", check.Error.String(), check.Warning.String(), check.Advice.String())}
	}
	if oneIn(t, 8, "accepted") {
		c.Accepted = []model.Accepted{{
			Rule: rule(), Cabinet: p.Cabinets[0].Name, Bay: 1, Front: p.Cabinets[0].Bays[0].Fronts[0].Name,
			Short: of(t, "short", 0, 2*mm), Reason: "it is not seen",
		}}
	}
	return c
}

func cabinet(t *rapid.T, p *model.Project, i int) model.Cabinet {
	c := model.Cabinet{
		Name:    words(t, fmt.Sprintf("C%d", i+1)),
		Height:  Tenths(t, 500, 900, "height"),
		Depth:   Tenths(t, 300, 620, "depth"),
		Plinth:  Tenths(t, 0, 100, "plinth"),
		Mount:   model.Mount(count(t, 0, 1, "mount")),
		Board:   of(t, "cabinet's board", "", "", "", "", model.PlainBoard, "frames", "grips"),
		Matched: matched(t),
	}
	if oneIn(t, 8, "tall") {
		c.Height = Tenths(t, 900, 2100, "greater height")
	}
	if rapid.Bool().Draw(t, "base") {
		c.Base = model.Base{Kind: model.BaseKind(count(t, 0, 2, "stands on")), Setback: Tenths(t, 0, 60, "toe"), FeetCount: of(t, "feet", 0, 0, 4, 6), Stands: model.Standing(count(t, 0, 2, "stands"))}
		c.Base.FixedAt = of(t, "fixed at", 0, 0, 800*mm)
	}
	if rapid.Bool().Draw(t, "back let in") {
		c.Back = model.BackFit{Kind: model.BackKind(count(t, 0, 2, "back")), Depth: of(t, "groove of the back", 0, 6*mm, 9*mm), Setback: Tenths(t, 0, 20, "back set in")}
	}
	if oneIn(t, 3, "rail") {
		c.Rail = rail(t)
	}
	if oneIn(t, 6, "cabinet's reveals") {
		c.Reveals = &model.Reveals{Left: Tenths(t, 0, 3, "own left"), Right: Tenths(t, 0, 3, "own right"), Top: Tenths(t, 0, 5, "own top"), Bottom: Tenths(t, 0, 3, "own bottom"), Gap: Tenths(t, 1, 5, "own gap")}
	}
	if oneIn(t, 6, "channel at the top") {
		c.Channel = channel(t)
	}
	if oneIn(t, 6, "cabinet's handle") {
		c.Handle = Handle(t)
	}
	if oneIn(t, 4, "beside?") {
		c.Left = model.Beside{EndPanel: 18 * mm, Filler: Tenths(t, 0, 30, "filler"), Wall: true, Projection: Tenths(t, 0, 50, "projection")}
		c.Worktop = 38 * mm
	}
	if oneIn(t, 4, "at its right?") {
		c.Right = model.Beside{EndPanel: 19 * mm, Filler: Tenths(t, 0, 30, "right filler"), Wall: rapid.Bool().Draw(t, "wall"), Projection: Tenths(t, 0, 50, "right projection")}
	}
	c.Left.Side, c.Right.Side = side(t), side(t)
	c.Width = thick(p, c.Left.Side) + thick(p, c.Right.Side)
	n := count(t, 1, 3, "bays")
	for j := range n {
		b, w := bay(t, p, i, j, n)
		c.Width += w
		c.Bays = append(c.Bays, b)
	}
	return c
}

// side draws the thickness of a cabinet's side; mostly that of the carcass board.
func side(t *rapid.T) length.Length {
	return of(t, "side", 0, 0, 0, 22*mm, 25*mm)
}

// thick is what a side takes.
func thick(p *model.Project, own length.Length) length.Length {
	if own > 0 {
		return own
	}
	return p.Boards.Carcass.Thickness
}

func rail(t *rapid.T) model.Rail {
	return model.Rail{Height: Tenths(t, 0, 40, "rail's height"), Depth: Tenths(t, 0, 90, "rail's depth")}
}

func channel(t *rapid.T) model.Channel {
	return model.Channel{Height: Tenths(t, 15, 40, "channel"), Depth: Tenths(t, 0, 40, "channel's depth")}
}

// bay draws the j-th of n bays, and what it takes of the cabinet's width. The first has
// no width of its own.
func bay(t *rapid.T, p *model.Project, i, j, n int) (model.Bay, length.Length) {
	w := Tenths(t, 300, 900, "bay")
	b := model.Bay{Hardware: of(t, "bay's hardware", "", "main", "main", "boxes"), Width: w, Matched: matched(t)}
	if j == 0 {
		b.Width, b.Share = 0, of(t, "bay's share", 0, 0, 1.5)
	}
	if j < n-1 {
		b.Partition = of(t, "partition", 0, Tenths(t, 16, 26, "its thickness"))
		w += thick(p, b.Partition)
	}
	b.Division = model.Division{Rule: model.DivisionRule(count(t, 0, 3, "rule")), Step: 15 * mm, Ratio: 1.2}
	for k, m := 0, count(t, 1, 5, "fronts"); k < m; k++ {
		b.Fronts = append(b.Fronts, front(t, k))
	}
	if oneIn(t, 6, "packing") {
		b.Packing = packing(t)
	}
	if oneIn(t, 8, "measured") {
		b.Measured = measured(t, w, 700*mm)
	}
	if j == 0 && n > 1 && oneIn(t, 4, "spans") {
		b.Fronts[of(t, "spanning", 0, len(b.Fronts)-1)].Span = count(t, 1, n-j, "span")
	}
	if oneIn(t, 8, "line-up") {
		l := &model.LineUp{Front: fmt.Sprint(count(t, 1, 5, "with")), Bottom: rapid.Bool().Draw(t, "its bottom")}
		if bays := count(t, 0, n, "of bay"); bays > 0 {
			l.Bay = bays
		}
		if k := count(t, 0, i, "of cabinet"); k < i {
			l.Cabinet = p.Cabinets[k].Name
		}
		b.Fronts[count(t, 0, len(b.Fronts)-1, "lined up")].LineUp = l
	}
	return b, w
}

func front(t *rapid.T, k int) model.Front {
	f := model.Front{Name: words(t, fmt.Sprintf("F%d", k+1)), Share: rapid.Float64Range(0.5, 3).Draw(t, "share")}
	if oneIn(t, 6, "nameless") {
		f.Name = ""
	}
	sort := count(t, 0, 7, "sort")
	switch sort {
	case 0:
		f.Height, f.Share = Tenths(t, 90, 260, "fixed"), 0
		f.Locked = rapid.Bool().Draw(t, "locked")
	case 1:
		f.Kind = model.Kind(count(t, 1, 3, "kind"))
		if f.Kind == model.OpenNiche && rapid.Bool().Draw(t, "clear") {
			f.Height, f.Share, f.Clear = Tenths(t, 90, 260, "clear height"), 0, true
		}
	case 2:
		d := Tenths(t, -20, 30, "drop")
		f.Drop = &d
	case 3:
		f.Cover = Tenths(t, 0, 12, "cover")
		f.Contents = model.Contents{Height: Tenths(t, 0, 200, "contents"), Weight: float64(count(t, 0, 400, "weight")) / 10}
	case 4:
		f.Least = of(t, "least", 0, Tenths(t, 50, 120, "least height"))
		f.Greatest = of(t, "greatest", 0, Tenths(t, 200, 600, "greatest height"))
	}
	switch count(t, 0, 9, "line") {
	case 0:
		gap := Tenths(t, 0, 30, "gap above")
		f.GapAbove = &gap
	case 1:
		f.Channel = channel(t)
	case 2:
		r := rail(t)
		f.Rail = &r
	}
	f.Board = of(t, "front's board", "", "", "", "", model.PlainBoard, "frames", "grips", "slabs")
	if f.Kind == model.DrawerFront {
		f.Drawer = of(t, "drawer", "", model.DrawerAuto, "low", "mid", "tall")
	}
	if oneIn(t, 5, "other") {
		f.Hardware = of(t, "hardware", "other", "boxes")
	}
	if oneIn(t, 5, "runner") {
		f.Runner = length.MM(of[int64](t, "length", 250, 350, 450, 550))
	}
	if oneIn(t, 5, "handle") {
		f.Handle = Handle(t)
	}
	if f.Kind == model.Door {
		f.Hinged = of(t, "hinged", model.HingedLeft, model.HingedRight)
	}
	if oneIn(t, 10, "front's packing") {
		k := packing(t)
		f.Packing = &k
	}
	if oneIn(t, 8, "hung") {
		ends := func() model.GapEnds { return model.GapEnds{First: measuredGap(t), Second: measuredGap(t)} }
		f.AsBuilt = &model.AsBuilt{Left: ends(), Right: ends(), Below: ends(), Above: ends()}
	}
	if f.Kind.Holds() && oneIn(t, 4, "inner") {
		f.Inner = inner(t)
	}
	return f
}

func packing(t *rapid.T) model.Packing {
	return model.Packing{Left: Tenths(t, 0, 40, "packing left"), Right: Tenths(t, 0, 40, "packing right")}
}

// inner draws one or two inner drawers, seldom where they have room.
func inner(t *rapid.T) []model.InnerDrawer {
	all := make([]model.InnerDrawer, count(t, 1, 2, "inner drawers"))
	for i := range all {
		all[i] = model.InnerDrawer{Up: Tenths(t, 0, 300, "up"), Drawer: of(t, "inner drawer", "", model.DrawerAuto, "low", "mid")}
		if oneIn(t, 4, "its runner") {
			all[i].Runner = length.MM(of[int64](t, "its length", 250, 350))
		}
		if oneIn(t, 4, "its contents") {
			all[i].Contents = model.Contents{Height: Tenths(t, 0, 100, "its height"), Weight: float64(count(t, 0, 200, "its weight")) / 10}
		}
	}
	return all
}

// measuredGap draws an end of a gap as it was measured; some are not.
func measuredGap(t *rapid.T) *length.Length {
	if rapid.Bool().Draw(t, "not measured") {
		return nil
	}
	gap := Tenths(t, -1, 8, "as built")
	return &gap
}

// Handle draws a pattern of handles.
func Handle(t *rapid.T) *model.Handle {
	h := &model.Handle{
		None: oneIn(t, 10, "no handle"), Count: count(t, 0, 2, "handles"),
		Spacing: of(t, "spacing", 0, 96*mm, 128*mm), Upright: rapid.Bool().Draw(t, "upright"),
		Diameter: of(t, "handle's holes", 0, 5*mm), Price: of(t, "handle's price", 0, 12.5),
	}
	*of(t, "height by", &h.FromTop, &h.FromBottom, &h.AboveMiddle, &h.OnLine) = Tenths(t, 0, 90, "handle's height")
	*of(t, "across by", &h.FromLeft, &h.FromRight, &h.BesideMiddle) = Tenths(t, 0, 90, "handle's place")
	return h
}
