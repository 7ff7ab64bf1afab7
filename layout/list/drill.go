package list

import (
	"strconv"

	"frontlay/layout/check"
	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

// DrillList is the table of every hole of every front as it lies face down, and
// of the handles' holes, which are drilled from the face. Rows of a front with
// open errors among the findings say so.
func DrillList(p *plan.Plan, findings []check.Finding, say Speaker) Table {
	return drillTable(p, findings, say, false)
}

func drillTable(p *plan.Plan, findings []check.Finding, say Speaker, forFiles bool) Table {
	t := drillHead(p, say, forFiles)
	w := newWarner(p, findings, say, forFiles)
	for i := range p.Fronts {
		f := &p.Fronts[i]
		if len(f.Holes)+len(f.HandleHoles) == 0 {
			continue
		}
		t.Rows = append(t.Rows, Row{Group: true, Cells: []string{
			say.Say(message.New("Front %v: %v, %v wide, %v high", f.Number, f.Name, f.Face.Width(), f.Face.Height())),
		}})
		for _, h := range Drilling(f) {
			t.Rows = append(t.Rows, w.row(f, h.cells(f, say, forFiles)))
		}
	}
	w.column(&t)
	if len(t.Rows) == 0 {
		t.Notes = append(t.Notes, say.Say(message.New("No front of this project is drilled.")))
	}
	t.noteRounded(say)
	return t
}

// drillHead is the drill list without its rows. Files have a column for the face
// that lies up, as there the sentences above the table are missing.
func drillHead(p *plan.Plan, say Speaker, forFiles bool) Table {
	head := func(m string) string { return say.Say(message.New(m)) }
	columns := []Column{
		{Head: "", Weight: 0.5},
		{Head: head("Front"), Weight: 0.9, Right: true},
		{Head: head("Hole"), Weight: 1.8},
	}
	if forFiles {
		columns = append(columns, Column{Head: head("Face"), Weight: 1.5})
	}
	return Table{
		Name:  "drill",
		Title: head("Drill list"),
		Intro: []string{say.Say(message.New("Sizes in %v. Handle holes are drilled from the face, which lies up.", UnitWord(say.Unit))), say.Say(DepthStop(p))},
		Repeat: []string{
			head("Rear face: the front lies face down, its bottom edge towards you; left and right are as it lies: left is RIGHT in the room."),
		},
		Columns: append(columns,
			Column{Head: head("Side in the room"), Weight: 1.5},
			Column{Head: head("From left, as it lies"), Weight: 1.5, Right: true, Length: true},
			Column{Head: head("From right, as it lies"), Weight: 1.5, Right: true, Length: true},
			Column{Head: head("From bottom"), Weight: 1.6, Right: true, Length: true},
			Column{Head: "Ø", Weight: 1, Right: true, Length: true},
			Column{Head: head("Depth"), Weight: 1.2, Right: true, Length: true},
		),
	}
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

func (h DrilledHole) cells(f *plan.Front, say Speaker, forFiles bool) []string {
	face, side, depth := message.New("REAR FACE up"), say.Say(SideName(h.Side)), drillFigure(h.Depth, f, say, forFiles)
	diameter := drillFigure(h.Diameter, f, say, forFiles)
	if h.Kind == plan.HandleHole {
		face, side, depth = message.New("FACE up"), "", say.Say(message.New("through"))
		diameter = say.Figure(h.Diameter) // the project's, not the hardware sheet's
	}
	cells := []string{"□", strconv.Itoa(f.Number), say.Say(HoleName(h.Kind))}
	if forFiles {
		cells = append(cells, say.Say(face))
	}
	return append(cells, side, say.Figure(h.FromLeft), say.Figure(h.FromRight), say.Figure(h.FromBottom), diameter, depth)
}

// HoleName says what a hole is for.
func HoleName(k plan.HoleKind) message.Message {
	switch k {
	case plan.RailHole:
		return message.New("rail")
	case plan.StabiliserHole:
		return message.New("stabiliser")
	case plan.HandleHole:
		return message.New("handle: drill from the FACE")
	}
	return message.New("connector")
}
