package sheet

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// lineSpread makes a template of holes that lie too far from a side edge to hook
// over it: it is laid on a pencil line at the middle of the holes, and on the
// bottom or the top edge, whichever is nearer.
func lineSpread(f *plan.Front, panel *drawing.Drawing, bores []bore, say message.Language) spread {
	area := bores[0].whole()
	for _, b := range bores {
		area = area.Union(b.whole())
	}
	x := area.Centre().X
	s := spread{
		panel: panel, blind: f.Blind(), bores: bores, keepAll: true, line: x,
		region: area.Union(plane.R(x-mm(40), area.Min.Y, x+mm(40), area.Max.Y)).Grow(mm(12)),
		how:    besideLine(),
		place: func(b bore) string {
			up := b.at.Y
			if up > f.Face.Height()/2 {
				up -= f.Face.Height()
			}
			return arrows(say, b.at.X >= x, b.at.X-x, up)
		},
	}
	if area.Centre().Y > f.Face.Height()/2 {
		s.region.Max.Y = max(s.region.Max.Y, f.Face.Height()+beyond)
	} else {
		s.region.Min.Y = min(s.region.Min.Y, -beyond)
	}
	panel.Add(pencilLine(plane.Point{X: x, Y: s.region.Min.Y}, plane.Point{X: x, Y: s.region.Max.Y}, bores)...)
	return s
}

// pencilLine draws the line that a sheet is laid on, level or upright, with a break
// where a hole lies on it: there the cross goes on.
func pencilLine(from, to plane.Point, bores []bore) []drawing.Mark {
	level := from.Y == to.Y
	on := func(p plane.Point) (along, off length.Length) {
		if level {
			return p.X, p.Y - from.Y
		}
		return p.Y, p.X - from.X
	}
	at := func(v length.Length) plane.Point {
		if level {
			return plane.Point{X: v, Y: from.Y}
		}
		return plane.Point{X: from.X, Y: v}
	}
	a, _ := on(from)
	b, _ := on(to)
	lo, hi := min(a, b), max(a, b)
	sorted := slices.SortedFunc(slices.Values(bores), func(p, q bore) int {
		v, _ := on(p.at)
		w, _ := on(q.at)
		return cmp.Compare(v, w)
	})
	var marks []drawing.Mark
	line := func(from, to length.Length) {
		if from < to {
			marks = append(marks, &drawing.Line{Tag: drawing.Tag{Meaning: drawing.Register}, From: at(from), To: at(to)})
		}
	}
	for _, b := range sorted {
		v, off := on(b.at)
		reach := b.whole().Width() / 2
		if off.Abs() >= reach || v-reach > hi {
			continue
		}
		line(lo, v-reach)
		lo = max(lo, v+reach)
	}
	line(lo, hi)
	return marks
}

// besideLine says what the arrows at the holes and crosses of a sheet mean that is
// laid on an upright line.
func besideLine() message.Message {
	return message.New("At holes and crosses: → right and ← left of the pencil line, ↑ from the bottom edge, ↓ from the top edge.")
}

// pencil says where the line is drawn on the front, in the frame of the sheet.
func (s spread) pencil() message.Message {
	return message.New("Draw a pencil line %v from the left edge as the front lies before you (%v from the right) and lay the upright line on it.",
		s.line-s.blind.Min.X, s.blind.Max.X-s.line)
}

// middlePages makes the templates of stabilisers, whose holes are in the middle
// of wide fronts. The rear face lies up.
func middlePages(p *plan.Plan, o Options, first int) []Page {
	blocks := lineBlocks(p, o, CornerTemplates, faceDown(), func(f *plan.Front) (spread, bool) {
		bores := stabiliserBores(f)
		if len(bores) == 0 {
			return spread{}, false
		}
		return lineSpread(f, rearPanel(f), bores, o.Say), true
	})
	for i := range blocks {
		blocks[i].spread.what = message.New("Stabiliser template 1:1, REAR FACE. %v", blocks[i].name)
	}
	return stackPages(CornerTemplates, o.templateHead(message.New("%v: stabiliser templates 1:1, REAR FACE", title(p)), faceDown(), layUpright(), headLine{besideLine(), lettering.Small, false}), blocks, o, first)
}

func layUpright() headLine {
	return headLine{message.New("Draw the pencil line as the front lies before you and lay the upright line on it."), lettering.Small, false}
}

// lineBlocks makes the blocks of templates that are laid on an upright pencil
// line; fronts whose sheets would show the same share one, however wide they
// are. of gives a front's own, false where it has none.
func lineBlocks(p *plan.Plan, o Options, kind Part, lies message.Message, of func(*plan.Front) (spread, bool)) []block {
	var blocks []block
	for _, g := range groups(p, o, func(f *plan.Front) string {
		if s, ok := of(f); ok {
			return s.sharedKey()
		}
		return ""
	}) {
		s, _ := of(g.first())
		s.kind, s.title, s.lies, s.job, s.stop = kind, g.names(), lies, s.pencil(), o.refusal(check.Drilling, g.fronts)
		b := block{spread: s, name: message.New("%v. %v", g.names(), g.sizes(o.Say)), sketch: s.blind, lines: pencilLines{
			heads: []message.Message{message.New("Front"), message.New("Pencil line from the left edge"), message.New("from the right edge")},
		}}
		for _, f := range g.fronts {
			own, _ := of(f)
			left, right := o.Say.Length(own.line-own.blind.Min.X), o.Say.Length(own.blind.Max.X-own.line)
			b.lines.add(fmt.Sprint(f.Number), left, right)
			if own.twice {
				b.lines.add(fmt.Sprint(f.Number), right, left)
			}
		}
		if len(b.lines.rows) == 1 {
			b.lines.only = message.New("Pencil line %v from the left edge, %v from the right edge", b.lines.rows[0][1], b.lines.rows[0][2])
		}
		if len(b.lines.rows) > 1 { // where the sheet has no table
			b.spread.job = b.lines.sentence(o)
		}
		blocks = append(blocks, b)
	}
	return blocks
}

// add adds a front to the row with the same distances.
func (l *pencilLines) add(front, left, right string) {
	for _, r := range l.rows {
		if r[1] == left && r[2] == right {
			r[0] += ", " + front
			return
		}
	}
	l.rows = append(l.rows, []string{front, left, right})
}

// sentence says what the table says.
func (l pencilLines) sentence(o Options) message.Message {
	var all []string
	for _, r := range l.rows {
		all = append(all, o.Say.Say(message.New("front %v: %v from the left edge, %v from the right edge", r[0], r[1], r[2])))
	}
	return message.New("Pencil lines, as the fronts lie before you: %v. Lay the upright line on them.", strings.Join(all, "; "))
}

func stabiliserBores(f *plan.Front) []bore {
	var of []bore
	for _, b := range rearBores(f) {
		if b.kind == plan.StabiliserHole {
			of = append(of, b)
		}
	}
	return of
}

// middleKey tells fronts apart by their stabilisers' holes from the middle and
// the bottom edge.
func middleKey(f *plan.Front) string {
	if len(stabiliserBores(f)) == 0 {
		return ""
	}
	key := fmt.Sprintln(int64(f.Face.Width()))
	for _, b := range stabiliserBores(f) {
		key += fmt.Sprintln(int64(b.at.X), int64(b.at.Y), int64(b.diameter), int64(b.depth))
	}
	return key
}

// handlePages makes the templates of handles. They are drilled from the face,
// which lies up: nothing is mirrored. Of two that stand alike the sheet has the left
// one, and is laid on a pencil line for each.
func handlePages(p *plan.Plan, o Options, first int) []Page {
	lies := message.New("The face lies up, the bottom edge towards you: left on this paper is left in the room. Lay scrap under the front, or the face chips where the drill comes out.")
	blocks := lineBlocks(p, o, HandleTemplates, lies, func(f *plan.Front) (spread, bool) {
		bores := faceBores(f)
		if len(bores) == 0 {
			return spread{}, false
		}
		twice := len(f.Handles) == 2
		if twice {
			bores = bores[:len(f.Handles[0].Holes)]
		}
		s := lineSpread(f, facePanel(f, bores), bores, o.Say)
		s.twice = twice
		return s, true
	})
	for i := range blocks {
		blocks[i].spread.what = message.New("Handle template 1:1, FACE. %v", blocks[i].name)
	}
	return stackPages(HandleTemplates, o.templateHead(message.New("%v: handle templates 1:1, FACE", title(p)), lies, layUpright(), headLine{besideLine(), lettering.Small, false}), blocks, o, first)
}

func handleKey(f *plan.Front) string {
	if len(f.HandleHoles) == 0 {
		return ""
	}
	key := fmt.Sprintln(int64(f.Face.Width()), int64(f.Face.Height()))
	for _, h := range f.HandleHoles {
		key += fmt.Sprintln(int64(h.At.X), int64(h.At.Y), int64(h.Diameter))
	}
	return key
}

// faceBores are a front's handle holes in the face frame; they go through.
func faceBores(f *plan.Front) []bore {
	var bores []bore
	for i, h := range f.HandleHoles {
		bores = append(bores, bore{
			at: h.At, diameter: h.Diameter, side: h.Side, kind: h.Kind, through: true,
			subject: drawing.Subject{Kind: drawing.HoleThing, Place: f.Place, Index: len(f.Holes) + i},
		})
	}
	return bores
}

func facePanel(f *plan.Front, bores []bore) *drawing.Drawing {
	d := &drawing.Drawing{Title: message.New("Face of front %v, %v", f.Number, f.Name)}
	d.Add(&drawing.Rectangle{
		Tag:  drawing.Tag{Meaning: drawing.Register, Of: drawing.Subject{Kind: drawing.FrontThing, Place: f.Place}},
		Rect: f.Blind(),
	})
	for _, b := range bores {
		d.Add(b.marks()...)
	}
	return d
}

// sharedKey tells fronts apart by what their sheet shows: the holes from the
// pencil line and from the edge that they are measured from, and the edges.
func (s spread) sharedKey() string {
	from := plane.Point{X: s.line}
	if s.region.Max.Y > s.blind.Max.Y {
		from.Y = s.blind.Max.Y
	}
	back := plane.Point{X: -from.X, Y: -from.Y}
	key := fmt.Sprintln(s.region.Intersect(s.blind).Move(back), s.region.Move(back))
	for _, b := range s.bores {
		key += fmt.Sprintln(b.at.Sub(from), int64(b.diameter), int64(b.depth), b.through)
	}
	return key
}
