package sheet

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// runnerPages makes the templates of runner screws. Each row of screws that
// recurs is one strip, laid on a pencil line, so that a whole run of cabinets
// needs only a few sheets; strips stand on a sheet one below the other.
func runnerPages(p *plan.Plan, o Options, first int) []Page {
	var all []block
	for _, s := range strips(p, o) {
		all = append(all, s.block(o))
	}
	return stackPages(RunnerTemplates, o.templateHead(message.New("%v: runner templates 1:1, INSIDE FACE of carcass sides", title(p)),
		message.New("The inside face lies up, the bottom edge towards you. Draw the pencil lines and lay the level line on each."),
		headLine{onStrip(), lettering.Small, false}), all, o, first)
}

// block is the strip with the heights of its pencil lines.
func (s strip) block(o Options) block {
	side := message.New("front edge at the LEFT")
	if !s.frontLeft {
		side = message.New("front edge at the RIGHT")
	}
	lines := pencilLines{
		heads: []message.Message{message.New("Board"), message.New("Pencil lines above the bottom edge")},
	}
	for _, u := range s.uses {
		var heights []string
		for _, l := range u.lines {
			heights = append(heights, o.Say.Length(l))
		}
		lines.rows = append(lines.rows, []string{o.Say.Say(u.face.Name) + ", " + panelSize(u.face.Panel.Width(), u.face.Panel.Height(), o.Say), strings.Join(heights, ", ")})
	}
	if len(lines.rows) == 1 {
		lines.only = message.New("%v: pencil lines %v above the bottom edge", lines.rows[0][0], lines.rows[0][1])
	}
	name := message.New("Runner %v long, %v", list.MakersLength{Length: s.length, Sheet: s.holes[0].Front.Sheet}, side)
	spread := s.spread(o)
	spread.what = name
	return block{spread: spread, name: name, lines: lines}
}

// strip is a row of runner screws that recurs on several carcass faces at
// several heights: the holes from the front edge, and above a pencil line that
// goes through the first of them.
type strip struct {
	frontLeft bool
	holes     []CarcassHole // At from the front edge (positive to the back), and above the line
	length    length.Length // of the runner
	uses      []stripUse
}

// stripUse is a face and the heights of its pencil lines above its bottom edge.
type stripUse struct {
	face   *CarcassFace
	lines  []length.Length
	fronts []*plan.Front // whose runners stand on them
}

func strips(p *plan.Plan, o Options) []strip {
	var all []strip
	at := map[string]int{}
	faces := CarcassFaces(p)
	for i := range faces {
		c := &faces[i]
		c.keep(o)
		for _, row := range c.rows() {
			row.frontLeft = c.FrontLeft
			key := row.key()
			j, ok := at[key]
			if !ok {
				j = len(all)
				at[key] = j
				all = append(all, row)
				all[j].uses = nil
			}
			all[j].use(c, row.uses[0])
		}
	}
	return parted(all)
}

// mostUses is how many faces a strip names; more would push the strip off its
// page, so it is printed again for the others.
const mostUses = 12

func parted(all []strip) []strip {
	var of []strip
	for _, s := range all {
		for uses := range slices.Chunk(s.uses, mostUses) {
			part := s
			part.uses = uses
			of = append(of, part)
		}
	}
	return of
}

func (s *strip) use(c *CarcassFace, one stripUse) {
	if n := len(s.uses); n > 0 && s.uses[n-1].face == c {
		was := &s.uses[n-1]
		was.lines, was.fronts = append(was.lines, one.lines...), append(was.fronts, one.fronts...)
		return
	}
	s.uses = append(s.uses, one)
}

// fronts are those whose runners the strip is for.
func (s strip) fronts() (all []*plan.Front) {
	for _, u := range s.uses {
		for _, f := range u.fronts {
			if !slices.Contains(all, f) {
				all = append(all, f)
			}
		}
	}
	return all
}

// rows gives a strip for each runner of a face.
func (c *CarcassFace) rows() []strip {
	var all []strip
	var last *plan.Front
	for _, h := range c.Holes {
		if h.Front != last {
			last = h.Front
			all = append(all, strip{length: h.Front.Runner.Length, uses: []stripUse{{c, []length.Length{h.Up}, []*plan.Front{h.Front}}}})
		}
		s := &all[len(all)-1]
		h.At = plane.Point{X: h.Back, Y: h.Up - s.uses[0].lines[0]}
		s.holes = append(s.holes, h)
	}
	return all
}

func (s strip) key() string {
	var b strings.Builder
	fmt.Fprintln(&b, s.frontLeft)
	for _, h := range s.holes {
		fmt.Fprintln(&b, int64(h.At.X), int64(h.At.Y), int64(h.Diameter), int64(h.Depth))
	}
	return b.String()
}

// How far a strip reaches below and above its line.
const (
	stripBelow = 11 * length.Millimetre
	stripAbove = 20 * length.Millimetre
	endGap     = 6 * length.Millimetre // between the two ends of a strip
)

// piece is a part of a strip that stands by itself on its sheet; mark is the x of an
// upright mark that it is laid on, 0 where it is laid on the front edge or taped to
// another.
type piece struct {
	shown plane.Rect
	mark  length.Length
}

// ends gives the two ends of a strip, as they lie from the left, where they stand
// beside each other in a width, what is between them being left out: the one at the
// front edge, and one that is laid on a mark at a round distance from it. Nil where
// they don't fit, or the spread is no strip.
func (s spread) ends(width length.Length, o Options) []piece {
	if !s.onLine {
		return nil
	}
	bores := slices.SortedFunc(slices.Values(s.bores), func(a, b bore) int { return cmp.Compare(a.at.X.Abs(), b.at.X.Abs()) })
	hand := length.Length(-s.datum)
	part := func(from, to, mark length.Length) piece {
		r := plane.R(hand*from, s.region.Min.Y, hand*to, s.region.Max.Y)
		return piece{plane.R(min(r.Min.X, r.Max.X), r.Min.Y, max(r.Min.X, r.Max.X), r.Max.Y), hand * mark}
	}
	fits := width
	var best []piece
	for i := 1; i < len(bores); i++ {
		_, to := stretch(bores[:i])
		from, end := stretch(bores[i:])
		mark := markAmong(bores[i:], o)
		first, last := to+mm(1), min(from, mark-mm(4))-mm(1) // what is left out lies between
		w := func() length.Length { return beyond + first + endGap + max(end, mark+mm(4)) + mm(1) - last }
		if least := w(); least <= fits && first < last {
			fits = least
			spare := min(width-least, last-first)
			first += min(spare, mm(20))
			last -= max(spare-mm(20), 0)
			best = []piece{part(-beyond, first, 0), part(last, max(end, mark+mm(4))+mm(1), mark)}
		}
	}
	if hand < 0 {
		slices.Reverse(best)
	}
	return best
}

// stretch is how far from the front edge holes with their crosses begin and end.
func stretch(bores []bore) (from, to length.Length) {
	from = bores[0].at.X.Abs()
	for _, b := range bores {
		from, to = min(from, b.at.X.Abs()-b.whole().Width()/2), max(to, b.at.X.Abs()+b.whole().Width()/2)
	}
	return from, to
}

// markAmong is a round distance from the front edge at which a mark lies clear of
// holes: in the middle of the widest room between them, or before a single one.
func markAmong(bores []bore, o Options) length.Length {
	step := length.Centimetre
	if o.Say.Unit.Inches() {
		step = length.Inch / 2
	}
	mark, widest := (bores[0].at.X.Abs() - bores[0].whole().Width()/2 - mm(6)).FloorTo(step), mm(30)
	for i := 1; i < len(bores); i++ {
		_, from := stretch(bores[i-1 : i])
		to, _ := stretch(bores[i : i+1])
		if to-from > widest {
			mark, widest = ((from + to) / 2).RoundTo(step), to-from
		}
	}
	return mark
}

// spread shows the strip with its front edge at x = 0 and its line at y = 0; to
// the left of 0 where the front edge is at the right.
func (s strip) spread(o Options) spread {
	hand := length.Length(1)
	if !s.frontLeft {
		hand = -1
	}
	var bores []bore
	far := length.Length(0)
	for i, h := range s.holes {
		bores = append(bores, bore{
			at: plane.Point{X: hand * h.At.X, Y: h.At.Y}, diameter: h.Diameter, depth: h.Depth, sheet: h.Front.Sheet,
			subject: drawing.Subject{Kind: drawing.RunnerThing, Place: h.Front.Place, Index: i},
		})
		far = max(far, h.At.X)
	}
	far += mm(16)
	region := plane.R(-beyond, -stripBelow, far, stripAbove)
	if hand < 0 {
		region = plane.R(-far, -stripBelow, beyond, stripAbove)
	}
	for _, b := range bores {
		region = region.Union(b.whole())
	}
	panel := &drawing.Drawing{Title: message.New("Screws of a runner %v long", s.length)}
	register := drawing.Tag{Meaning: drawing.Register}
	panel.Add(&drawing.Line{Tag: register, From: plane.Point{Y: region.Min.Y}, To: plane.Point{Y: region.Max.Y + lettering.Pitch(holeLetters)}})
	panel.Add(pencilLine(plane.Point{}, plane.Point{X: hand * far}, bores)...)
	for _, b := range bores {
		panel.Add(b.marks()...)
	}
	return spread{
		kind:     RunnerTemplates,
		stop:     o.refusal(check.Screwing, s.fronts()),
		title:    message.New("Runner screws, %v", s.names(o)),
		job:      message.New("Draw pencil lines above the bottom edge at: %v. Lay the level line on each.", s.heights(o)),
		panel:    panel,
		region:   region,
		bores:    bores,
		blind:    plane.Rect{}, // only lines to lay on: nothing is an outline
		datum:    -int(hand),
		how:      onStrip(),
		place:    func(b bore) string { return arrows(o.Say, s.frontLeft, b.at.X, b.at.Y) },
		leftName: frontEdge(s.frontLeft),
		onLine:   true,
	}
}

// onStrip says what the arrows at the holes and crosses of a strip mean.
func onStrip() message.Message {
	return message.New("At holes and crosses: → or ← from the front edge; ↑ above the pencil line, ↓ below it, ↑ 0 on it.")
}

func frontEdge(left bool) message.Message {
	if left {
		return message.New("← FRONT edge: fold here")
	}
	return message.New("FRONT edge: fold here →")
}

func (s strip) names(o Options) string {
	var all []string
	for _, u := range s.uses {
		all = append(all, o.Say.Say(u.face.Name))
	}
	return strings.Join(all, "; ")
}

// heights says for each face where its pencil lines are.
func (s strip) heights(o Options) string {
	var all []string
	for _, u := range s.uses {
		var lines []string
		for _, l := range u.lines {
			lines = append(lines, o.Say.Length(l))
		}
		all = append(all, o.Say.Say(u.face.Name)+" "+strings.Join(lines, ", "))
	}
	return strings.Join(all, "; ")
}
