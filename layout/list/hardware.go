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

// hardwareRow is one thing to order. Small parts are lost, and edging is cut off, so
// spares are added. Price is that of each; 0: not given.
type hardwareRow struct {
	what  message.Message
	unit  message.Message
	count float64 // of edging metres or feet, else a whole number
	small bool
	price float64
}

// HardwareList is the table of what to order: runners by length, drawers by
// height, connectors, rails, stabilisers and screws, for each hardware sheet, handles,
// and edging. spare is the part added to small parts and edging (0.1 for a tenth; below
// zero: none), rounded up, stock what StockPlans gives. Where something has a price
// there is a column of costs, and one sum with the sheets to buy.
func HardwareList(p *plan.Plan, stock []StockPlan, say Speaker, spare float64) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	spare = max(spare, 0)
	t := Table{
		Name:  "hardware",
		Title: head("Hardware list"),
		Intro: []string{
			say.Say(message.New("Counted from the plan. To order: small parts and edging with %v %% spare, rounded up. Compare with what the maker’s sets already hold before you order.", math.Round(spare*100))),
		},
		Columns: []Column{
			{Head: "", Weight: 0.5},
			{Head: head("What"), Weight: 6},
			{Head: head("Unit"), Weight: 1.4},
			{Head: head("Needed"), Weight: 1.3, Right: true},
			{Head: head("To order"), Weight: 1.3, Right: true},
		},
	}
	sum := 0.0
	group := func(name string, rows []hardwareRow) {
		if len(rows) > 0 {
			t.Rows = append(t.Rows, Row{Group: true, Cells: []string{name}})
		}
		for i := range rows {
			cost := rows[i].order(spare) * rows[i].price
			sum += cost
			t.Rows = append(t.Rows, Row{Cells: append(rows[i].cells(spare, say), money(say, cost))})
		}
	}
	for _, s := range sheetsUsed(p) {
		group(s.Name, countHardware(p, s))
	}
	group(head("Handles"), countHandles(p))
	group(head("Edging"), countEdging(p, say))
	group(head("Carcasses"), countFeet(p))
	if HangsOnWall(p) {
		t.Notes = append(t.Notes, say.Say(WallCaution()))
	}
	if len(t.Rows) == 0 {
		t.Notes = append(t.Notes, head("This project has no drawer with a hardware sheet."))
	}
	t.addCosts(sum, stockCosts(stock), say)
	t.noteRounded(say)
	return t
}

// addCosts heads the column of costs and adds their sum, with what the sheets to buy
// cost; where nothing has a price it takes the column away.
func (t *Table) addCosts(sum, sheets float64, say Speaker) {
	if sum == 0 {
		for i := range t.Rows {
			if r := &t.Rows[i]; !r.Group {
				r.Cells = r.Cells[:len(t.Columns)]
			}
		}
		return
	}
	t.Columns = append(t.Columns, Column{Head: say.Say(message.New("Price")), Weight: 1.4, Right: true})
	total := func(what message.Message, v float64) {
		t.Rows = append(t.Rows, Row{Total: true, Cells: []string{"", say.Say(what), "", "", "", money(say, v)}})
	}
	total(message.New("in all"), sum)
	if sheets > 0 {
		total(message.New("sheets to buy"), sheets)
		total(message.New("in all, with the sheets"), sum+sheets)
	}
	t.Notes = append(t.Notes, say.Say(message.New("Prices are those that were typed, for what is to be ordered, without anything that has none.")))
}

// money writes an amount; empty where it is 0.
func money(say Speaker, v float64) string {
	if v == 0 {
		return ""
	}
	return fixed(say, v, 2)
}

// order is how much to order.
func (r *hardwareRow) order(spare float64) float64 {
	if !r.small {
		return r.count
	}
	// A hair less, so that a tenth of 20 is 2 and not, by a float's rounding, 3.
	return math.Ceil(r.count*(1+spare) - 1e-9)
}

// cells are those of the row up to its price.
func (r *hardwareRow) cells(spare float64, say Speaker) []string {
	needed := strconv.FormatFloat(r.count, 'f', -1, 64)
	if r.count != math.Trunc(r.count) {
		needed = fixed(say, r.count, 1)
	}
	return []string{"□", say.Say(r.what), say.Say(r.unit), needed, strconv.FormatFloat(r.order(spare), 'f', -1, 64)}
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
			all = append(all, message.New("%v × %v (%v)", int(r.count), r.what, r.unit))
		}
	}
	return all
}

// sheetsUsed are the hardware sheets of fitted drawers, in order of first use.
func sheetsUsed(p *plan.Plan) []*model.HardwareSheet {
	var all []*model.HardwareSheet
	seen := map[*model.HardwareSheet]bool{}
	for f := range p.Drawers() {
		if !seen[f.Sheet] {
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
		for f := range p.Drawers() {
			if f.Sheet == s {
				do(f)
			}
		}
	}
	each(func(f *plan.Front) { rows.priced(1, false, pair, runners(f), f.Runner.Price) })
	each(func(f *plan.Front) {
		if b := f.Drawer.Box; b != nil {
			rows.priced(1, false, piece, message.New("wooden boxes, height “%v”, outside %v wide × %v high × %v long", f.Height.Name, b.Width, b.Height, b.Length), f.Height.Price)
			return
		}
		rows.priced(1, false, set, message.New("drawers, height “%v”, for %v", f.Height.Name, runnerOf(f)), f.Height.Price)
	})
	if s.Connector.Kind == model.Pair {
		each(func(f *plan.Front) {
			if f.Nth == 0 {
				rows.priced(1, false, pair, message.New("front connectors"), s.Connector.Price)
			}
		})
	}
	each(func(f *plan.Front) {
		if f.Nth > 0 && !s.Wooden() { // whose box has an inner front
			add(1, false, set, message.New("front pieces of inner drawers, height “%v”, for an inside width of %v, as their maker has them", f.Height.Name, f.Between().Width()))
		}
	})
	each(func(f *plan.Front) {
		if f.Height.RailTop > 0 {
			add(1, false, pair, message.New("rails or high sides, height “%v”, for %v", f.Height.Name, runnerOf(f)))
		}
	})
	each(func(f *plan.Front) {
		if f.Stabilised {
			add(1, false, piece, message.New("stabilisers, for an inside width of %v", f.Between().Width()))
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
	t.priced(n, small, unit, what, 0)
}

func (t *toOrder) priced(n int, small bool, unit, what message.Message, price float64) {
	name := what.String() + strconv.FormatFloat(price, 'g', -1, 64)
	i, ok := t.at[name]
	if !ok {
		i = len(t.all)
		t.at[name] = i
		t.all = append(t.all, hardwareRow{what: what, unit: unit, small: small, price: price})
	}
	t.all[i].count += float64(n)
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
	screws := toOrder{at: map[string]int{}}
	for i := range p.Fronts {
		f := &p.Fronts[i]
		for k := range f.HandleHoles {
			screws.add(1, true, pieces, handleScrew(f, &f.HandleHoles[k]))
		}
		for k := range f.Handles {
			what := message.New("handles or knobs with one screw")
			if apart := f.Handles[k].Spacing(); apart > 0 {
				what = message.New("handles, screws %v apart", apart)
			}
			rows.priced(1, false, pieces, what, f.Handles[k].Price)
		}
	}
	return append(rows.all, screws.all...)
}

// handleScrew names the screw in a hole of a handle by the wood that it goes through: the
// front where the hole is, and the inner front of a wooden box where that is behind it.
func handleScrew(f *plan.Front, h *plan.Hole) message.Message {
	through := f.ZoneAt(h).Thickness
	if f.Drawer.Box != nil {
		if in := f.Drawer.Box.Part(plan.BoxFront); in != nil && in.Rect.Contains(h.At.Add(f.Face.Min)) {
			return message.New("handle screws, through %v: a front of %v and an inner front of %v", through+in.Thickness, through, in.Thickness)
		}
	}
	return message.New("handle screws, through a front of %v", through)
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
