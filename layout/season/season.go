package season

import (
	"math"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Study is how the solid wood of a plan moves through a year.
type Study struct {
	Year    Year
	Fronts  []Front // those of solid wood, in the order of the run
	Gaps    []Gap   // those that change, in the order of plan.Gaps
	Fixings []Fixing
	Panels  []Panel
}

// Of studies a plan; false where the room's climate is not given or nothing is of solid
// wood.
func Of(p *plan.Plan) (*Study, bool) {
	y, known := YearOf(p.Project.Climate)
	if !known {
		return nil, false
	}
	s := &Study{Year: y}
	w := wood{p}
	for i := range p.Fronts {
		f := &p.Fronts[i]
		if f.Kind == model.OpenNiche {
			continue
		}
		if v := w.front(f); len(v.Width)+len(v.Height) > 0 {
			s.Fronts = append(s.Fronts, v)
		}
		s.Fixings = append(s.Fixings, w.fixings(f)...)
		if v, ok := w.panel(f); ok {
			s.Panels = append(s.Panels, v)
		}
	}
	for _, g := range p.Gaps() {
		if v := w.gap(g); v.Rate != 0 {
			s.Gaps = append(s.Gaps, v)
		}
	}
	return s, len(s.Fronts)+len(s.Gaps)+len(s.Fixings)+len(s.Panels) > 0
}

// Term is a size across the grain that changes: Size · Coefficient for 1 % of moisture.
// Part tells that only half of it shows there.
type Term struct {
	What    message.Message
	Size    length.Length
	Species model.Species
	Sawn    model.Sawn
	Half    bool
}

// Rate is the change in mm for 1 % of moisture.
func (t Term) Rate() float64 {
	r := t.Size.MM() * t.Species.Across(t.Sawn)
	if t.Half {
		r /= 2
	}
	return r
}

// Change is what comes of a change of moisture in %.
func (t Term) Change(moisture float64) length.Length { return length.FromMM(t.Rate() * moisture) }

// Terms are what a size changes by together.
type Terms []Term

// Rate is the change in mm for 1 % of moisture.
func (t Terms) Rate() float64 {
	sum := 0.0
	for _, m := range t {
		sum += m.Rate()
	}
	return sum
}

// Change is what comes of a change of moisture in %.
func (t Terms) Change(moisture float64) length.Length { return length.FromMM(t.Rate() * moisture) }

// Say writes the sum for a change of moisture in %: size · coefficient · change + …
func (t Terms) Say(moisture float64) message.Message {
	var line message.Message
	for i, m := range t {
		term := message.New("%v %v · %v · %v %%", m.What, m.Size, m.Species.Across(m.Sawn), Percent(moisture))
		if m.Half {
			term = message.New("half of %v", term)
		}
		if i == 0 {
			line = term
		} else {
			line = message.New("%v + %v", line, term)
		}
	}
	return line
}

// Front is a front of solid wood: what of its width and of its height moves.
type Front struct {
	*plan.Front
	Width, Height Terms
}

// Gap is a gap that changes: Rate is by how many mm it grows for 1 % of moisture, below
// zero where it closes as the wood swells.
type Gap struct {
	plan.Gap
	Rate float64
}

// In is the gap's size in wood of a moisture content in %, built today as it is planned.
func (g Gap) In(y Year, moisture float64) length.Length {
	return g.Size + length.FromMM(g.Rate*(moisture-y.Today))
}

// Least and Greatest are its sizes through the year.
func (g Gap) Least(y Year) length.Length {
	return g.Size - length.FromMM(max(-g.Rate*y.Damper(), g.Rate*y.Drier()))
}

// Greatest is its size when it is widest.
func (g Gap) Greatest(y Year) length.Length {
	return g.Size + length.FromMM(max(g.Rate*y.Damper(), -g.Rate*y.Drier()))
}

// Today is from where to where the gap may be built today so that through the year it
// never gets below least nor above greatest; false where it changes by more than lies
// between them, and then from is the one that keeps it open.
func (g Gap) Today(y Year, least, greatest length.Length) (from, to length.Length, ok bool) {
	from, to = least+g.Size-g.Least(y), greatest-(g.Greatest(y)-g.Size)
	return from, to, from <= to
}

// Shown is a size as it is told to people: to a tenth of a millimetre, which is more than
// anybody knows of wood.
func Shown(l length.Length) length.Length { return l.RoundTo(length.Millimetre / 10) }

// Percent is a moisture content or a change of it as it is told: to a tenth of a per cent.
func Percent(moisture float64) float64 { return math.Round(moisture*10) / 10 }

// Told is what the study comes to, in a sentence or two.
func (s *Study) Told() message.Message {
	if s == nil {
		return message.Message{}
	}
	y := s.Year
	gaps, fixings := length.Length(0), length.Length(0)
	for _, g := range s.Gaps {
		gaps = max(gaps, g.Greatest(y)-g.Least(y))
	}
	for _, x := range s.Fixings {
		fixings = max(fixings, x.Needed(y))
	}
	said := message.New("the moisture of solid wood goes from %v to %v %% through the year and is %v %% today: gaps change by up to %v", Percent(y.Driest), Percent(y.Dampest), Percent(y.Today), Shown(gaps))
	if fixings > 0 {
		said = message.New("%v, and what is fixed across the grain moves by up to %v", said, Shown(fixings))
	}
	if y.Outside() {
		said = message.New("%v (roughly: the equation holds from %v to %v %%)", said, LeastMoisture, GreatestMoisture)
	}
	return said
}
