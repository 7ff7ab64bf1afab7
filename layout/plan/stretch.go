package plan

import (
	"frontlay/layout/divide"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// stretch is what the fronts between two lines of a stack, or the bays of a
// cabinet, divide among them: it is kept to tell how each came by its size.
type stretch struct {
	whole    length.Length // from end to end
	between  length.Length // gaps, or partitions
	fixed    length.Length // what has a size of its own
	room     length.Length // what is shared by weight
	weights  float64
	computed int
	step     length.Length // sizes are rounded to it
	by       model.Division
	line     *model.LineUp // what its upper end lines up with
	above    bool          // it begins above a line
}

// part is how one front or bay came by its size: from a stretch, as a share of it,
// or as its own size where that is fixed.
type part struct {
	of    *stretch
	share divide.Share
	size  length.Length
}

// newStretch keeps a division; whole and between are the room that was divided and
// what lies between its parts.
func newStretch(whole, between length.Length, parts []divide.Part, got *divide.Result, by model.Division, step length.Length) *stretch {
	s := &stretch{whole: whole, between: between, room: got.Room, weights: got.Weights, step: step, by: by}
	for _, p := range parts {
		s.fixed += p.Fixed
		if p.Fixed <= 0 {
			s.computed++
		}
	}
	return s
}

// terms tell how a computed part came by its size: its share of the room, or its
// bound, and what rounding did; room tells of the room where one part has it all.
func (p *part) terms(room []Term) []Term {
	var all []Term
	want := p.share.Want
	switch s := p.of; {
	case p.share.Held:
		all = []Term{plus("least or greatest size asked for", want)}
	case s.computed == 1:
		all, want = room, s.whole-s.between-s.fixed
	default:
		all = []Term{{Name: message.New("share (%v in %v of %v)", p.share.Weight, s.weights, s.room), Value: want - p.share.Offset}}
		if p.share.Offset != 0 {
			all = append(all, Term{Name: message.New("steps of %v to those above", s.by.Step), Value: p.share.Offset})
		}
	}
	// One part takes what is less than a step; it is so much off the whole steps.
	left := p.of.whole - p.of.between - p.of.fixed
	odd := left - left.FloorTo(p.of.step)
	if odd == 0 || p.size-p.size.FloorTo(p.of.step) != odd || p.of.computed == 1 || p.share.Held {
		odd = 0
	}
	if up := p.size - odd - want; up != 0 {
		all = append(all, signed(message.New("rounded to whole steps of %v", p.of.step), up))
	}
	if odd != 0 {
		all = append(all, plus("odd rest", odd))
	}
	return all
}

// shares tells that a part is one of several that share by weight.
func (p *part) shares() bool {
	return p.of != nil && p.of.computed > 1 && !p.share.Held && p.share.Want > 0
}

// roomOf tells how the room that fronts share came about.
func (p *Plan) roomOf(f *Front) []Term {
	s := f.part.of
	whole := message.New("height of the stack")
	switch {
	case s.line != nil:
		whole = message.New("height up to the line of front “%v”", s.line.Front)
	case s.above:
		whole = message.New("height above the line")
	}
	between := "gaps"
	if b := p.BayAt(f.Place); b != nil && len(b.Rails) > 0 {
		between = "gaps and rails"
	}
	return s.roomTerms(whole, "fronts with a height of their own", between)
}

func (s *stretch) roomTerms(whole message.Message, fixed, between string) []Term {
	all := []Term{{Name: whole, Value: s.whole}}
	if s.fixed != 0 {
		all = append(all, minus(fixed, s.fixed))
	}
	if s.between != 0 {
		all = append(all, minus(between, s.between))
	}
	return all
}

// RoomToShareOf tells how the room came about that a front's height is a share of;
// false where it is none.
func (p *Plan) RoomToShareOf(f *Front) (Sum, bool) {
	if !f.part.shares() {
		return Sum{}, false
	}
	s := f.part.of
	return s.toShare(message.New("height to share"), p.roomOf(f)), true
}

func (s *stretch) toShare(name message.Message, terms []Term) Sum {
	if less := s.whole - s.between - s.fixed - s.room; less != 0 {
		terms = append(terms, signed(message.New("what bounds and steps take first"), -less))
	}
	return Sum{name, s.room, terms}
}

// HeightOf tells how a front's height came about: as it was asked for, or as a share
// of what its stack has, rounded; and how far hole rows moved it from that.
func (p *Plan) HeightOf(f *Front) Sum {
	s := Sum{Name: message.New("front height"), Value: f.Face.Height()}
	src := p.Project.FrontAt(f.Place)
	moved := s.Value - f.part.size
	switch clear := src.Clear && f.Kind == model.OpenNiche; {
	case src.Height > 0 && clear:
		s.Terms = []Term{
			plus("clear height", src.Height),
			plus("board below, behind the front line", f.Clear.Min.Y-f.Face.Min.Y),
			plus("board above, behind the front line", f.Face.Max.Y-f.Clear.Max.Y),
		}
		if up := f.part.size - s.Total(); up > 0 && f.part.size == length.Millimetre { // see maker.fixedHeight
			s.Terms = append(s.Terms, plus("up to the least height of a place in the stack", up))
		}
	case src.Height > 0 && moved == 0:
		return s
	case src.Height > 0:
		s.Terms = []Term{plus("height asked for", src.Height)}
	default:
		s.Terms = f.part.terms(p.roomOf(f))
	}
	if moved != 0 {
		s.Terms = append(s.Terms, signed(message.New("moved to the hole rows"), moved))
	}
	return s
}

// ClearHeightOf tells how the clear height of an open niche came about.
func (p *Plan) ClearHeightOf(f *Front) Sum {
	return Sum{message.New("clear height"), f.Clear.Height(), []Term{
		plus("front height", f.Face.Height()),
		minus("board below, behind the front line", f.Clear.Min.Y-f.Face.Min.Y),
		minus("board above, behind the front line", f.Face.Max.Y-f.Clear.Max.Y),
	}}
}

// InsideWidthOf tells how the clear width behind a front came about: as it was asked
// for, or as a share of the cabinet's inside width; bays and partitions where the
// front spans them.
func (p *Plan) InsideWidthOf(f *Front) Sum {
	c := &p.Cabinets[f.Place.Cabinet]
	s := Sum{Name: message.New("inside width"), Value: f.Opening.Width()}
	if f.Bays > 1 {
		for j := f.Place.Bay; j < f.Place.Bay+f.Bays; j++ {
			b := p.bayWidth(c, j)
			s.Terms = append(s.Terms, Term{Name: message.New("bay %v", j+1), Value: b.Value, Of: &b})
			if j+1 < f.Place.Bay+f.Bays {
				s.Terms = append(s.Terms, plus("partition", c.Partitions[j].Width()))
			}
		}
		return s
	}
	s.Terms = p.bayWidth(c, f.Place.Bay).Terms
	return s
}

func (p *Plan) bayWidth(c *Cabinet, j int) Sum {
	b := &c.Bays[j]
	s := Sum{Name: message.New("inside width"), Value: b.Opening.Width()}
	if p.Project.BayAt(b.Place).Width <= 0 {
		s.Terms = b.part.terms(c.widthTerms(b.part.of))
	}
	return s
}

func (c *Cabinet) widthTerms(s *stretch) []Term {
	return append([]Term{plus("width of the carcass", c.Outline.Width()), minus("both sides", c.Outline.Width()-c.Inside.Width())},
		s.roomTerms(message.Message{}, "bays with a width of their own", "partitions")[1:]...)
}

// WidthToShareOf tells how the width came about that the bay behind a front has a
// share of; false where it is none.
func (p *Plan) WidthToShareOf(f *Front) (Sum, bool) {
	c := &p.Cabinets[f.Place.Cabinet]
	b := &c.Bays[f.Place.Bay]
	if f.Bays > 1 || !b.part.shares() {
		return Sum{}, false
	}
	return b.part.of.toShare(message.New("width to share"), c.widthTerms(b.part.of)), true
}

// WidthOf tells how a front's width came about: inside width and what the front
// overlays at both sides, or less the reveals of an inset front.
func (p *Plan) WidthOf(f *Front) Sum {
	s := Sum{Name: message.New("front width"), Value: f.Face.Width()}
	s.Terms = []Term{plus("inside width", f.Opening.Width())}
	if f.Inset {
		s.Terms = append(s.Terms, minus("reveal, left", -f.Overlay.Left), minus("reveal, right", -f.Overlay.Right))
		return s
	}
	s.Terms = append(s.Terms, signed(message.New("side overlay, left"), f.Overlay.Left), signed(message.New("side overlay, right"), f.Overlay.Right))
	return s
}
