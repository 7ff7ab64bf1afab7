package season

import (
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// FixingKind tells what is fixed across the grain.
type FixingKind uint8

// What is fixed across the grain of solid wood: a front to its connectors one above the
// other, or to both sides of a drawer; a handle by two screws; a runner to a carcass side.
const (
	Connectors FixingKind = iota
	BothSides
	HandleScrews
	RunnerScrews
)

// Fixing is what is held by several screws across the grain. Term's size is the spread of
// the outermost of them. Play is how far a screw can slip in its slot, from end to end.
type Fixing struct {
	Kind  FixingKind
	Front *plan.Front
	Term  Term
	Play  length.Length
}

// Needed is the play that it needs: by how much the wood moves between the outermost
// screws through the year.
func (x Fixing) Needed(y Year) length.Length { return x.Term.Change(y.Change()) }

// Room is how much of the slot must be left free today: on the side to which the wood
// swells, and on the other one.
func (x Fixing) Room(y Year) (swell, shrink length.Length) {
	return x.Term.Change(y.Damper()), x.Term.Change(y.Drier())
}

// fixings are those of a front and of its runners.
func (w wood) fixings(f *plan.Front) []Fixing {
	var all []Fixing
	add := func(kind FixingKind, what message.Message, spread length.Length, b *model.Board, play length.Length) {
		if t, ok := w.term(what, spread, b); ok {
			all = append(all, Fixing{kind, f, t, play})
		}
	}
	if f.Fitted && len(f.Holes) > 0 && frame(f) == nil {
		b := &f.Made.Board
		across, high := spread(f.Holes)
		if up(b) {
			add(BothSides, message.New("between the connectors"), across, b, 0)
		} else {
			add(Connectors, message.New("between the outermost holes"), high, b, f.Sheet.Connector.Play)
		}
	}
	for i := range f.Handles {
		h := &f.Handles[i]
		zone := f.ZoneAt(&h.Holes[0])
		b := zone.Of(f)
		if len(h.Holes) == 2 && h.Upright != up(&b) && zone.Part == f.ZoneAt(&h.Holes[1]).Part {
			play := 2 * max(h.Holes[0].Diameter-model.UsualHandleScrew, 0) // both screws slip
			add(HandleScrews, message.New("between the screws of the handle"), h.Spacing(), &b, play)
			break // a second one is alike
		}
	}
	if b := &w.plan.Project.Boards.Carcass; f.Fitted && len(f.Runner.Screws) > 0 && b.Grain != "horizontal" {
		near, far := f.Runner.Screws[0].Back, f.Runner.Screws[0].Back
		for _, s := range f.Runner.Screws {
			near, far = min(near, s.Back), max(far, s.Back)
		}
		add(RunnerScrews, message.New("between the outermost screws of the runner"), far-near, b, f.Sheet.Runner.Play)
	}
	return all
}

// spread is how far the outermost holes are apart, across and up.
func spread(holes []plan.Hole) (across, high length.Length) {
	lo, hi := holes[0].At, holes[0].At
	for i := range holes {
		at := holes[i].At
		lo.X, lo.Y, hi.X, hi.Y = min(lo.X, at.X), min(lo.Y, at.Y), max(hi.X, at.X), max(hi.Y, at.Y)
	}
	return hi.X - lo.X, hi.Y - lo.Y
}

// Panel is a panel of solid wood that floats in the groove of a frame. Term's size is what
// is cut across its grain. Room is what each of its edges keeps from the groove's bottom,
// Reach how far each reaches into the groove.
type Panel struct {
	Front       *plan.Front
	Term        Term
	Room, Reach length.Length
}

// NeededRoom is what each edge has to keep from the groove's bottom today, so that the
// panel in the middle has room when it is dampest. What the rails move is not counted.
func (v Panel) NeededRoom(y Year) length.Length { return v.Term.Change(y.Damper()) / 2 }

// ReachDry is how far each edge still reaches into the groove when the panel is driest.
func (v Panel) ReachDry(y Year) length.Length { return v.Reach - v.Term.Change(y.Drier())/2 }

func (w wood) panel(f *plan.Front) (Panel, bool) {
	z := frame(f)[plan.PanelPart]
	if z == nil {
		return Panel{}, false
	}
	b := z.Of(f)
	what, size := message.New("height of the panel"), z.Whole.Height()
	if up(&b) {
		what, size = message.New("width of the panel"), z.Whole.Width()
	}
	t, ok := w.term(what, size, &b)
	groove := f.Made.Filled().Panel
	return Panel{Front: f, Term: t, Room: min(groove.Room, groove.Groove), Reach: max(groove.Groove-groove.Room, 0)}, ok
}

// FixingKinds are all kinds.
func FixingKinds() []FixingKind {
	return []FixingKind{Connectors, BothSides, HandleScrews, RunnerScrews}
}

// Advice says what to do about a fixing that holds too fast.
func (x Fixing) Advice(y Year) message.Message {
	swell, shrink := x.Room(y)
	needed := Shown(x.Needed(y))
	switch x.Kind {
	case Connectors:
		return message.New("fix the lowest holes fast and let the screws above slip in slots that give %v; leave %v of them free above the highest screw and %v below", needed, Shown(swell), Shown(shrink))
	case HandleScrews:
		return message.New("drill the handle's holes %v wide and put washers under the screws, or turn the handle along the grain", Shown(model.UsualHandleScrew+x.Needed(y)/2).CeilTo(length.Millimetre/2))
	case RunnerScrews:
		return message.New("fix the runner fast in front and let the screws behind slip in slots that give %v; leave %v of them free behind the last screw and %v before it", needed, Shown(swell), Shown(shrink))
	}
	return message.New("let the grain run from side to side, or use a frame: a drawer's two sides do not give way")
}
