package list

import (
	"math"
	"slices"
	"strconv"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// DefaultSpare is how much more of the small parts to order than is needed.
const DefaultSpare = 0.1

// hardwareRow is one thing to order. Small parts are lost, so spares are added.
type hardwareRow struct {
	what  message.Message
	unit  message.Message
	count int
	small bool
}

// HardwareList is the table of what to order: runners by length, drawers by
// height, connectors, rails, stabilisers, screws and handles, for each hardware
// sheet. spare is the part added to small parts (0.1 for a tenth; below zero:
// none), rounded up.
func HardwareList(p *plan.Plan, say Speaker, spare float64) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	spare = max(spare, 0)
	t := Table{
		Name:  "hardware",
		Title: head("Hardware list"),
		Intro: []string{
			say.Say(message.New("Counted from the plan. To order: small parts with %v %% spare, rounded up. Compare with what the maker’s sets already hold before you order.", math.Round(spare*100))),
		},
		Columns: []Column{
			{Head: "", Weight: 0.5},
			{Head: head("What"), Weight: 6},
			{Head: head("Unit"), Weight: 1.4},
			{Head: head("Needed"), Weight: 1.3, Right: true},
			{Head: head("To order"), Weight: 1.3, Right: true},
		},
	}
	for _, s := range sheetsUsed(p) {
		t.Rows = append(t.Rows, Row{Group: true, Cells: []string{s.Name}})
		for _, r := range countHardware(p, s) {
			t.Rows = append(t.Rows, orderRow(r, spare, say))
		}
	}
	if handles := countHandles(p); len(handles) > 0 {
		t.Rows = append(t.Rows, Row{Group: true, Cells: []string{head("Handles")}})
		for _, r := range handles {
			t.Rows = append(t.Rows, orderRow(r, spare, say))
		}
	}
	if feet := countFeet(p); len(feet) > 0 {
		t.Rows = append(t.Rows, Row{Group: true, Cells: []string{head("Carcasses")}})
		for _, r := range feet {
			t.Rows = append(t.Rows, orderRow(r, spare, say))
		}
	}
	if HangsOnWall(p) {
		t.Notes = append(t.Notes, say.Say(WallCaution()))
	}
	if len(t.Rows) == 0 {
		t.Notes = append(t.Notes, head("This project has no drawer with a hardware sheet."))
	}
	t.noteRounded(say)
	return t
}

func orderRow(r hardwareRow, spare float64, say Speaker) Row {
	order := r.count
	if r.small && spare > 0 {
		// A hair less, so that a tenth of 20 is 2 and not, by a float's rounding, 3.
		order = int(math.Ceil(float64(r.count)*(1+spare) - 1e-9))
	}
	return Row{Cells: []string{"□", say.Say(r.what), say.Say(r.unit), strconv.Itoa(r.count), strconv.Itoa(order)}}
}

// Order says what to order but small parts, without spares: runners, drawers,
// connectors, rails, stabilisers and handles with how many of each are needed.
func Order(p *plan.Plan) []message.Message {
	var rows []hardwareRow
	for _, s := range sheetsUsed(p) {
		rows = append(rows, countHardware(p, s)...)
	}
	var all []message.Message
	for _, r := range slices.Concat(rows, countHandles(p), countFeet(p)) {
		if !r.small {
			all = append(all, message.New("%v × %v (%v)", r.count, r.what, r.unit))
		}
	}
	return all
}

// sheetsUsed are the hardware sheets of fitted drawers, in order of first use.
func sheetsUsed(p *plan.Plan) []*model.HardwareSheet {
	var all []*model.HardwareSheet
	seen := map[*model.HardwareSheet]bool{}
	for i := range p.Fronts {
		if f := &p.Fronts[i]; f.Fitted && !seen[f.Sheet] {
			seen[f.Sheet] = true
			all = append(all, f.Sheet)
		}
	}
	return all
}

func countHardware(p *plan.Plan, s *model.HardwareSheet) []hardwareRow {
	rows := toOrder{at: map[string]int{}}
	add := rows.add
	pair, piece, set := message.New("pairs"), message.New("pieces"), message.New("sets")
	each := func(do func(f *plan.Front)) {
		for i := range p.Fronts {
			if f := &p.Fronts[i]; f.Fitted && f.Sheet == s {
				do(f)
			}
		}
	}
	each(func(f *plan.Front) { add(1, false, pair, runners(f)) })
	each(func(f *plan.Front) {
		if b := f.Drawer.Box; b != nil {
			add(1, false, piece, message.New("wooden boxes, height “%v”, outside %v wide × %v high × %v long", f.Height.Name, b.Width, b.Height, b.Length))
			return
		}
		add(1, false, set, message.New("drawers, height “%v”, for %v", f.Height.Name, runnerOf(f)))
	})
	if s.Connector.Kind == model.Pair {
		each(func(f *plan.Front) { add(1, false, pair, message.New("front connectors")) })
	}
	each(func(f *plan.Front) {
		if f.Height.RailTop > 0 {
			add(1, false, pair, message.New("rails or high sides, height “%v”, for %v", f.Height.Name, runnerOf(f)))
		}
	})
	each(func(f *plan.Front) {
		if f.Stabilised {
			add(1, false, piece, message.New("stabilisers, for an inside width of %v", f.Opening.Width()))
		}
	})
	each(func(f *plan.Front) { addScrews(f, piece, add) })
	return rows.all
}

// toOrder are rows of which each names another thing.
type toOrder struct {
	all []hardwareRow
	at  map[string]int
}

func (t *toOrder) add(n int, small bool, unit, what message.Message) {
	name := what.String()
	i, ok := t.at[name]
	if !ok {
		i = len(t.all)
		t.at[name] = i
		t.all = append(t.all, hardwareRow{what: what, unit: unit, small: small})
	}
	t.all[i].count += n
}

// runners names the pair of runners of a drawer. A drawer for which there is none
// is counted too: otherwise the list would order too few without a word.
func runners(f *plan.Front) message.Message {
	if f.Runner.Length > 0 && f.Runner.Load > 0 {
		return message.New("%v, for %v", runnerOf(f), message.Kilograms(f.Runner.Load))
	}
	return runnerOf(f)
}

// runnerOf names a drawer's runners by their length.
func runnerOf(f *plan.Front) message.Message {
	if f.Runner.Length <= 0 {
		return message.New("runners: %v (front %v)", NoRunner(), f.Number)
	}
	return message.New("runners %v long", MakersLength{f.Runner.Length, f.Sheet})
}

// NoRunner stands where a runner's figures would, if one did fit.
func NoRunner() message.Message { return message.New("no runner fits, see Findings") }

// addScrews counts the fixings: one for each hole, by diameter.
func addScrews(f *plan.Front, piece message.Message, add func(int, bool, message.Message, message.Message)) {
	own := func(l length.Length) MakersLength { return MakersLength{l, f.Sheet} }
	for _, s := range f.Runner.Screws {
		add(2, true, piece, message.New("screws for runners, hole Ø %v", own(s.Diameter)))
	}
	for _, h := range f.Holes {
		if f.Sheet.Connector.Kind == model.Screws && (h.Kind == plan.ConnectorHole || h.Kind == plan.RailHole) {
			through := f.Sheet.Box.Front
			if through <= 0 { // nobody has said what they go through
				add(1, true, piece, message.New("screws for fronts, hole Ø %v, %v deep", own(h.Diameter), own(h.Depth)))
				continue
			}
			add(1, true, piece, message.New("screws for fronts, %v long: through the inner front of %v, %v into the front, hole Ø %v", own(through+h.Depth), own(through), own(h.Depth), own(h.Diameter)))
			continue
		}
		add(1, true, piece, message.New("fixings in fronts, hole Ø %v, %v deep", own(h.Diameter), own(h.Depth)))
	}
}

func countHandles(p *plan.Plan) []hardwareRow {
	rows := toOrder{at: map[string]int{}}
	pieces := message.New("pieces")
	screws := 0
	for i := range p.Fronts {
		f := &p.Fronts[i]
		screws += len(f.HandleHoles)
		for k := range f.Handles {
			what := message.New("handles or knobs with one screw")
			if apart := f.Handles[k].Spacing(); apart > 0 {
				what = message.New("handles, screws %v apart", apart)
			}
			rows.add(1, false, pieces, what)
		}
	}
	if screws > 0 {
		rows.add(screws, true, pieces, message.New("handle screws"))
	}
	return rows.all
}

// countFeet counts what carries the cabinets: feet by their height, and what fixes those to
// the wall that hang there, of which the project says nothing but that it is needed.
func countFeet(p *plan.Plan) []hardwareRow {
	rows := toOrder{at: map[string]int{}}
	for i := range p.Cabinets {
		c := p.Project.CabinetAt(p.Cabinets[i].Place)
		if c == nil {
			continue
		}
		rows.addSome(c.Feet(), message.New("pieces"), message.New("feet, for %v above the floor", c.Plinth))
		if c.Base.Kind == model.OnWall {
			rows.addSome(1, message.New("sets"), message.New("fixings to hang a cabinet on the wall, for its own weight and its load"))
		}
	}
	return rows.all
}

// addSome adds what is not small, if there is any.
func (t *toOrder) addSome(n int, unit, what message.Message) {
	if n > 0 {
		t.add(n, false, unit, what)
	}
}
