package plan

import (
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// OverlayOf tells how a front's overlay at a side came about.
func (p *Plan) OverlayOf(f *Front, side Side) Sum {
	c := &p.Cabinets[f.Place.Cabinet]
	s := Sum{Name: message.New("side overlay, left"), Value: f.Overlay.Left}
	if side == Right {
		s = Sum{Name: message.New("side overlay, right"), Value: f.Overlay.Right}
	}
	value := s.Value
	if f.Inset {
		s.Terms = []Term{minus("reveal", -value)}
		return s
	}
	if part, ok := p.partitionAt(f, side); ok {
		half := middleOf(part) - part.Min.X
		if side == Left {
			half = part.Max.X - middleOf(part)
		}
		s.Terms = []Term{plus("half of the partition", half), minus("half of the gap", half-value)}
		return s
	}
	board := f.Opening.Min.X - c.Outline.Min.X
	if side == Right {
		board = c.Outline.Max.X - f.Opening.Max.X
	}
	name := "reveal"
	own := c.Reveals.Left
	if side == Right {
		own = c.Reveals.Right
	}
	if board-value != own {
		name = "half of the gap to the next cabinet"
	}
	s.Terms = []Term{plus("side thickness", board), minus(name, board-value)}
	if board < value {
		s.Terms[1] = plus("past the carcass", value-board)
	}
	return s
}

// partitionAt finds the partition that a front's side lies over.
func (p *Plan) partitionAt(f *Front, side Side) (plane.Rect, bool) {
	for _, r := range p.Cabinets[f.Place.Cabinet].Partitions {
		if side == Left && r.Max.X == f.Opening.Min.X || side == Right && r.Min.X == f.Opening.Max.X {
			return r, true
		}
	}
	return plane.Rect{}, false
}

// EdgeDistanceOf tells how the distance of the connector holes from a side edge
// came about: connector inset + side overlay, and packing where there is any.
func (p *Plan) EdgeDistanceOf(f *Front, side Side) Sum {
	overlay := p.OverlayOf(f, side)
	s := Sum{Name: message.New("edge distance, left"), Value: f.EdgeDistance.Left}
	if side == Right {
		s = Sum{Name: message.New("edge distance, right"), Value: f.EdgeDistance.Right}
	}
	s.Terms = []Term{
		plus("connector inset", f.Sheet.Connector.Inset),
		{Name: message.New("side overlay"), Value: overlay.Value, Of: &overlay},
	}
	s.Terms = append(s.Terms, packingAt(f, side)...)
	return s
}

// DropOf tells how a front's drop came about.
func (p *Plan) DropOf(f *Front) Sum {
	s := Sum{Name: message.New("drop"), Value: f.Drop}
	src := p.Project.FrontAt(f.Place)
	switch {
	case src.Drop != nil:
		return s
	case f.OnFloor:
		overlay := f.Floor - f.Face.Min.Y
		least := f.Sheet.Runner.LeastHeight
		s.Terms = []Term{plus("overlay of the shelf below", overlay), plus("least height of the runner above the shelf", least)}
		if f.OnRail {
			s.Terms = []Term{minus("gap above the rail", -overlay), plus("least height of the runner above the rail", least)}
		}
		if f.Bottommost {
			s.Terms = []Term{plus("bottom overlay", overlay), plus("least height of the runner above the carcass bottom", least)}
		}
		if up := f.Drop - overlay - least; up != 0 {
			s.Terms = append(s.Terms, plus("up to the hole row", up))
		}
	default:
		s.Terms = []Term{plus("level with the runner's lower edge", 0)}
		if f.Drop != 0 {
			s.Terms = append(s.Terms, plus("up to the hole row", f.Drop))
		}
	}
	return s
}

// HoleHeightOf tells how a hole's height above the front's bottom edge came
// about: height above the runner's lower edge + drop.
func (p *Plan) HoleHeightOf(f *Front, h *Hole) Sum {
	if h.Kind == HandleHole {
		return Sum{Name: message.New("hole height"), Value: h.At.Y}
	}
	drop := p.DropOf(f)
	return Sum{message.New("hole height"), h.At.Y, []Term{
		plus("height above the runner's lower edge", h.AboveRunner),
		{Name: drop.Name, Value: drop.Value, Of: &drop},
	}}
}

// CoverOf tells how the cover of the drawer bottom came about: drop + height of
// the drawer bottom's underside above the runner's lower edge.
func (p *Plan) CoverOf(f *Front) Sum {
	drop := p.DropOf(f)
	return Sum{message.New("cover"), f.Drawer.Cover.Bottom, []Term{
		{Name: drop.Name, Value: drop.Value, Of: &drop},
		plus("drawer bottom's underside above the runner's lower edge", f.Sheet.Bottom.Underside),
	}}
}

// RoomAboveOf tells how the room above a drawer came about, in heights above
// the floor line.
func (p *Plan) RoomAboveOf(f *Front) Sum {
	top := Sum{message.New("top of the drawer"), f.Drawer.Body.Max.Y, []Term{
		plus("runner's lower edge", f.Runner.Lower),
		plus("highest part of the drawer", f.Drawer.Body.Max.Y-f.Runner.Lower),
	}}
	return Sum{message.New("room above"), f.Drawer.RoomAbove, []Term{
		{Name: message.New("lower edge of %v", f.Drawer.Above.Say()), Value: f.Drawer.Limit},
		{Name: top.Name, Value: top.Value, Minus: true, Of: &top},
	}}
}

// DepthOf tells how the depth that a drawer takes came about.
func (p *Plan) DepthOf(f *Front) Sum {
	s := Sum{Name: message.New("depth taken"), Value: f.Runner.Start + f.Runner.Length + f.Sheet.Runner.ClearanceBehind}
	if f.Inset {
		s.Terms = append(s.Terms, plus("front thickness", f.Thickness))
	}
	s.Terms = append(s.Terms,
		plus("setback", f.Sheet.Runner.Setback),
		plus("runner", f.Runner.Length),
		plus("clearance behind", f.Sheet.Runner.ClearanceBehind))
	return s
}

// BottomWidthOf tells how the width of a drawer bottom came about.
func (p *Plan) BottomWidthOf(f *Front) Sum {
	s := Sum{Name: message.New("width of the drawer bottom"), Value: f.Drawer.BottomCut.Width, Terms: betweenPacking(f)}
	if !f.Sheet.Wooden() {
		s.Terms = append(s.Terms, minus("deduction of the hardware sheet", f.Sheet.Bottom.DeductWidth))
		return s
	}
	s.Terms = append(s.Terms, minus("side clearances", 2*f.Sheet.SideClearance))
	if b := &f.Sheet.Box; b.Bottom != model.BottomLaidOn {
		s.Terms = append(s.Terms, minus("sides of the box", 2*b.Sides), plus("grooves", 2*b.GrooveDepth))
	}
	return s
}

// packingAt is the packing at a side of a front's drawer; none where there is none.
func packingAt(f *Front, side Side) []Term {
	thick := f.Packing.Left
	if side == Right {
		thick = f.Packing.Right
	}
	if thick == 0 {
		return nil
	}
	return []Term{plus("packing", thick)}
}

// betweenPacking is the width that a drawer has, inside width less packing.
func betweenPacking(f *Front) []Term {
	terms := []Term{plus("inside width", f.Opening.Width())}
	for side := range Right + 1 {
		if k := packingAt(f, side); k != nil {
			terms = append(terms, minus("packing", k[0].Value))
		}
	}
	return terms
}

// RunnerHeightOf tells how the height of an inner drawer's runner above the floor line came
// about.
func (p *Plan) RunnerHeightOf(f *Front) Sum {
	s := Sum{Name: message.New("runner's lower edge"), Value: f.Runner.Lower}
	up := plus("the inner drawer's height", f.Runner.Lower-f.Datum())
	if f.OnFloor {
		s.Terms = []Term{plus("upper face of the board below", f.Datum()), up}
		return s
	}
	s.Terms = []Term{plus("bottom edge of the front", f.Datum()), up}
	return s
}

// InnerSums are all sums of an inner drawer.
func (p *Plan) InnerSums(f *Front) []Sum {
	return []Sum{p.RunnerHeightOf(f), p.RoomAboveOf(f), p.DepthOf(f), p.BottomWidthOf(f), p.BottomLengthOf(f), p.BackWidthOf(f), p.BackHeightOf(f)}
}

// BottomLengthOf tells how the length of a drawer bottom came about.
func (p *Plan) BottomLengthOf(f *Front) Sum {
	s := Sum{Name: message.New("length of the drawer bottom"), Value: f.Drawer.BottomCut.Length, Terms: []Term{plus("runner", f.Runner.Length)}}
	if !f.Sheet.Wooden() {
		s.Terms = append(s.Terms, minus("deduction of the hardware sheet", f.Sheet.Bottom.DeductLength))
		return s
	}
	b := &f.Sheet.Box
	s.Terms = append(s.Terms, minus("what the box is shorter", b.Shorter))
	switch b.Bottom {
	case model.UnderBack:
		s.Terms = append(s.Terms, minus("inner front", b.Front), plus("groove", b.GrooveDepth))
	case model.AllRound:
		s.Terms = append(s.Terms, minus("inner front", b.Front), minus("drawer back", f.Sheet.Back.Thickness), plus("grooves", 2*b.GrooveDepth))
	}
	return s
}

// BackWidthOf tells how the width of a drawer back came about.
func (p *Plan) BackWidthOf(f *Front) Sum {
	s := Sum{Name: message.New("width of the drawer back"), Value: f.Drawer.BackCut.Width, Terms: betweenPacking(f)}
	if !f.Sheet.Wooden() {
		s.Terms = append(s.Terms, minus("deduction of the hardware sheet", f.Sheet.Back.DeductWidth))
		return s
	}
	s.Terms = append(s.Terms, minus("side clearances", 2*f.Sheet.SideClearance))
	if b := &f.Sheet.Box; b.Corners == model.SidesThrough {
		s.Terms = append(s.Terms, minus("sides of the box", 2*b.Sides), plus("joints", 2*b.Joint))
	}
	return s
}

// BackHeightOf tells how the height of a drawer back came about: it stands on the
// drawer bottom, or has it in a groove.
func (p *Plan) BackHeightOf(f *Front) Sum {
	s := Sum{Name: message.New("height of the drawer back"), Value: f.Drawer.BackCut.Length, Terms: []Term{
		plus("top of the back above the runner's lower edge", f.Drawer.Back-f.Runner.Lower),
		minus("drawer bottom's underside above the runner's lower edge", f.Sheet.Bottom.Underside),
	}}
	if b := &f.Sheet.Box; f.Sheet.Wooden() && b.Bottom == model.AllRound {
		s.Terms = append(s.Terms, plus("height of the groove", b.GrooveHeight))
		return s
	}
	s.Terms = append(s.Terms, minus("thickness of the drawer bottom", f.Sheet.Bottom.Thickness))
	return s
}

// SideCoverOf tells how far a front reaches past its drawer at a side.
func (p *Plan) SideCoverOf(f *Front, side Side) Sum {
	s := Sum{Name: message.New("side cover, left"), Value: f.Drawer.Cover.Left}
	overlay := f.Overlay.Left
	if side == Right {
		s = Sum{Name: message.New("side cover, right"), Value: f.Drawer.Cover.Right}
		overlay = f.Overlay.Right
	}
	s.Terms = []Term{signed(message.New("side overlay"), overlay), plus("side clearance", f.Sheet.SideClearance)}
	s.Terms = append(s.Terms, packingAt(f, side)...)
	return s
}

// Explanations are all sums of a front, in the order a joiner asks for them.
func (p *Plan) Explanations(f *Front) []Sum {
	sums := []Sum{p.HeightOf(f)}
	if s, ok := p.RoomToShareOf(f); ok {
		sums = append(sums, s)
	}
	if f.Kind == model.OpenNiche {
		sums = append(sums, p.ClearHeightOf(f))
	}
	sums = append(sums, p.InsideWidthOf(f))
	if s, ok := p.WidthToShareOf(f); ok {
		sums = append(sums, s)
	}
	if f.Kind == model.OpenNiche {
		return sums
	}
	sums = append(sums, p.OverlayOf(f, Left), p.OverlayOf(f, Right), p.WidthOf(f))
	if !f.Fitted {
		return sums
	}
	sums = append(sums,
		p.EdgeDistanceOf(f, Left), p.EdgeDistanceOf(f, Right), p.DropOf(f), p.CoverOf(f), p.SideCoverOf(f, Left), p.SideCoverOf(f, Right),
		p.RoomAboveOf(f), p.DepthOf(f), p.BottomWidthOf(f), p.BottomLengthOf(f), p.BackWidthOf(f), p.BackHeightOf(f))
	told := map[length.Length]bool{} // both sides of a pair are told once
	for i := range f.Holes {
		if h := &f.Holes[i]; !told[h.AboveRunner] {
			told[h.AboveRunner] = true
			sums = append(sums, p.HoleHeightOf(f, h))
		}
	}
	return sums
}

// Sum tells how a figure came about: a name, its value, and the terms that add
// up to it exactly. A sum without terms is a figure that the user gave.
type Sum struct {
	Name  message.Message
	Value length.Length
	Terms []Term
}

// Term is one part of a sum; Minus tells that it is taken off. Of may tell how
// the term itself came about.
type Term struct {
	Name  message.Message
	Value length.Length
	Minus bool
	Of    *Sum
}

// Total adds the terms up, as a reader would.
func (s Sum) Total() length.Length {
	t := length.Length(0)
	for _, m := range s.Terms {
		if m.Minus {
			t -= m.Value
		} else {
			t += m.Value
		}
	}
	return t
}

// Say writes the sum in one line: name value = term value + term value …; a term
// that is a sum itself follows in brackets.
func (s Sum) Say() message.Message {
	return message.New("%v %v = %v", s.Name, s.Value, sayTerms(s.Terms))
}

// Sum writes the terms alone: term value + term value …
func (s Sum) Sum() message.Message { return sayTerms(s.Terms) }

// sayTerms chains terms as nested messages, so that each figure is written in
// the project's unit.
func sayTerms(terms []Term) message.Message {
	var line message.Message
	for i, t := range terms {
		term := message.New("%v %v", t.Name, t.Value)
		if t.Of != nil && len(t.Of.Terms) > 0 {
			term = message.New("%v %v (= %v)", t.Name, t.Value, sayTerms(t.Of.Terms))
		}
		switch {
		case i == 0 && t.Minus:
			line = message.New("− %v", term)
		case i == 0:
			line = term
		case t.Minus:
			line = message.New("%v − %v", line, term)
		default:
			line = message.New("%v + %v", line, term)
		}
	}
	return line
}

func plus(name string, v length.Length) Term { return Term{Name: message.New(name), Value: v} }

// signed is a term that is taken off where its value is below zero.
func signed(name message.Message, v length.Length) Term {
	return Term{Name: name, Value: v.Abs(), Minus: v < 0}
}

func minus(name string, v length.Length) Term {
	return Term{Name: message.New(name), Value: v, Minus: true}
}
