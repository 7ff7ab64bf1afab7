package list

import (
	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

// DrillList is the table of every hole of every front as it lies face down, and
// of the handles' holes, which are drilled from the face.
func DrillList(p *plan.Plan, say Speaker) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	t := Table{
		Name:  "drill",
		Title: head("Drill list"),
		Intro: []string{
			say.Say(message.New("Sizes in %v. Rear face: the front lies face down, its bottom edge towards you, and left and right are as it lies: left is RIGHT in the room. Handle holes are drilled from the face, which lies up.", say.Unit.Symbol())),
		},
		Columns: []Column{
			{Head: "", Weight: 0.5},
			{Head: head("Front"), Weight: 0.9, Right: true},
			{Head: head("Hole"), Weight: 1.8},
			{Head: head("Side in the room"), Weight: 1.5},
			{Head: head("From left"), Weight: 1.5, Right: true, Length: true},
			{Head: head("From right"), Weight: 1.5, Right: true, Length: true},
			{Head: head("From bottom"), Weight: 1.6, Right: true, Length: true},
			{Head: "Ø", Weight: 1, Right: true, Length: true},
			{Head: head("Depth"), Weight: 1.2, Right: true, Length: true},
		},
	}
	for i := range p.Fronts {
		f := &p.Fronts[i]
		if len(f.Holes)+len(f.HandleHoles) == 0 {
			continue
		}
		t.Rows = append(t.Rows, Row{Group: true, Cells: []string{
			say.Say(message.New("Front %v: %v, %v wide, %v high", f.Number, f.Name, f.Face.Width(), f.Face.Height())),
		}})
		for _, h := range Drilling(f) {
			t.Rows = append(t.Rows, Row{Cells: h.cells(f, say)})
		}
	}
	if len(t.Rows) == 0 {
		t.Notes = append(t.Notes, head("No front of this project is drilled."))
	}
	return t
}

// DrilledHole is a hole as the front lies when it is drilled: FromLeft and
// FromBottom from its edges as they lie, rear face up; for a handle the face.
type DrilledHole struct {
	plan.Hole
	FromLeft, FromRight, FromBottom length.Length
}

// Drilling lists a front's holes, left side in the room first, lowest first,
// then the handle's.
func Drilling(f *plan.Front) []DrilledHole {
	var all []DrilledHole
	for _, side := range []plan.Side{plan.Left, plan.Right} {
		for _, h := range f.Holes {
			if h.Side == side {
				r := f.Rear(h.At)
				all = append(all, DrilledHole{h, r.X, f.Face.Width() - r.X, r.Y})
			}
		}
	}
	for _, h := range f.HandleHoles {
		all = append(all, DrilledHole{h, h.At.X, f.Face.Width() - h.At.X, h.At.Y})
	}
	return all
}

func (h DrilledHole) cells(f *plan.Front, say Speaker) []string {
	side, depth := say.Say(SideName(h.Side)), say.Figure(h.Depth)
	if h.Kind == plan.HandleHole {
		side, depth = "", say.Say(message.New("through"))
	}
	return []string{
		"□", say.Say(message.New("%v", f.Number)), say.Say(HoleName(h.Kind)), side,
		say.Figure(h.FromLeft), say.Figure(h.FromRight), say.Figure(h.FromBottom), say.Figure(h.Diameter), depth,
	}
}

// HoleName says what a hole is for.
func HoleName(k plan.HoleKind) message.Message {
	switch k {
	case plan.RailHole:
		return message.New("rail")
	case plan.StabiliserHole:
		return message.New("stabiliser")
	case plan.HandleHole:
		return message.New("handle, from the face")
	}
	return message.New("connector")
}
