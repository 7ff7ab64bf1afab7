package inspector

import (
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// bayForm are the sections of a bay, and of what lies between two fronts or two bays.
type bayForm struct{ *form }

// bay shows a bay: its width, its hardware, and how its fronts share it.
func (f bayForm) bay(at model.Place) {
	at.Front = -1
	doc := func() *model.Bay {
		if b := f.session.Project().BayAt(at); b != nil {
			return b
		}
		return &model.Bay{}
	}
	headForm(f).path(at)
	headForm(f).called(f.text("Bay %v", at.Bay+1))
	f.section(message.New("Size"), true, func() string {
		if b := f.session.Result().Plan.BayAt(at); b != nil {
			return f.say().Length(b.Opening.Width())
		}
		return ""
	})
	f.sizeOf(at, "width", f.usual([]model.Place{at}, "width", func(at model.Place) length.Length {
		if b := f.session.Result().Plan.BayAt(at); b != nil {
			return b.Opening.Width()
		}
		return 0
	}))
	f.section(message.New("Drawers"), true, func() string { return f.sheetName(at) })
	f.sheetOf(func() *model.HardwareSheet { return f.sheetAt(at) })
	f.hardware(at)
	f.sizes([]model.Place{at}, "packing.left", "packing.right")
	f.divisionRule(at, doc)
	boardForm(f).matched(at)
	f.buttons(
		button{"Propose a division…", func() {
			if f.onPropose != nil {
				f.onPropose(at)
			}
		}},
		button{"Remove bay", func() { f.do(edit.RemoveBay{At: at}) }},
	)
	openingForm(f).bay(at)
}

// bays is how many bays the cabinet at a place has.
func (f *form) bays(at model.Place) int {
	if c := f.session.Project().CabinetAt(at); c != nil {
		return len(c.Bays)
	}
	return 0
}

// hardware chooses the bay's hardware sheet.
func (f bayForm) hardware(at model.Place) {
	p := f.session.Project()
	var names []string
	for _, h := range p.Hardware {
		names = append(names, h.Name)
	}
	f.choice(message.New("Hardware"), names, func() int {
		b := f.session.Project().BayAt(at)
		if b == nil {
			return -1
		}
		for i, n := range names {
			if n == b.Hardware || b.Hardware == "" {
				return i
			}
		}
		return -1
	}, func(i int) edit.Edit { return edit.ChooseHardware{At: at, Name: names[i]} })
}

// sheetAt is the hardware sheet that a bay uses; nil: the project has none.
func (f *form) sheetAt(at model.Place) *model.HardwareSheet {
	p := f.session.Project()
	b := p.BayAt(at)
	switch {
	case b == nil || len(p.Hardware) == 0:
		return nil
	case b.Hardware == "":
		return p.Hardware[0].Sheet
	default:
		return p.Sheet(b.Hardware)
	}
}

// sheetName is what the hardware sheet of a bay is called.
func (f *form) sheetName(at model.Place) string {
	if s := f.sheetAt(at); s != nil {
		return s.Name
	}
	return f.text("none")
}

// sheetOf tells the name of a hardware sheet, and leads to it.
func (f *form) sheetOf(sheet func() *model.HardwareSheet) {
	f.link("Hardware sheet", func() string {
		if s := sheet(); s != nil {
			return s.Name
		}
		return f.text("No hardware sheet")
	}, func() {
		s := sheet()
		for _, u := range f.session.Project().Hardware {
			if u.Sheet == s && f.onSheet != nil {
				f.onSheet(u.Name)
			}
		}
	})
}

// divisionRule chooses the rule by which the fronts share what is left.
func (f bayForm) divisionRule(at model.Place, doc func() *model.Bay) {
	rules := []string{f.text("by shares"), f.text("equal"), f.text("by a step"), f.text("by a factor")}
	f.choice(message.New("Division"), rules, func() int { return int(doc().Division.Rule) }, func(i int) edit.Edit {
		d := doc().Division
		d.Rule = model.DivisionRule(i)
		if d.Rule == model.DivideStep && d.Step == 0 {
			d.Step = 40 * length.Millimetre
		}
		if d.Rule == model.DivideRatio && d.Ratio == 0 {
			d.Ratio = 1.25
		}
		return edit.SetDivision{At: at, Division: d}
	})
	switch decides(f.form, func() model.DivisionRule { return doc().Division.Rule }) { // what another rule would ask for does nothing
	case model.DivideStep:
		f.divisionStep(at, doc)
	case model.DivideRatio:
		f.divisionRatio(at, doc)
	}
	f.note(f.text("Fronts with a height of their own keep it; the others share what is left, the lower ones taller."))
}

// divisionStep is by how much a front is taller than the one above it.
func (f bayForm) divisionStep(at model.Place, doc func() *model.Bay) {
	f.size(message.New("Step to the next"), size{
		get: func() (length.Length, bool, bool) {
			return doc().Division.Step, doc().Division.Rule == model.DivideStep, false
		},
		put: func(v length.Length) edit.Edit {
			return edit.SetDivision{At: at, Division: model.Division{Rule: model.DivideStep, Step: v}}
		},
	})
}

// divisionRatio is by which factor a front is taller than the one above it.
func (f bayForm) divisionRatio(at model.Place, doc func() *model.Bay) {
	f.number(message.New("Factor to the next"), "", func() (float64, bool, bool) {
		return doc().Division.Ratio, doc().Division.Rule == model.DivideRatio, false
	}, func(v float64) edit.Edit {
		return edit.SetDivision{At: at, Division: model.Division{Rule: model.DivideRatio, Ratio: v}}
	})
}

// division shows the two heights at a division.
func (f bayForm) division(at model.Place) {
	above := at
	above.Front++
	height := func(a model.Place) length.Length {
		if pf := f.session.Result().Plan.FrontAt(a); pf != nil {
			return pf.Face.Height()
		}
		return 0
	}
	headForm(f).path(at)
	headForm(f).called(f.text("Division"))
	f.section(message.New("Heights of the two fronts"), true, func() string {
		return f.say().Figure(height(at)) + " | " + f.say().Length(height(above))
	})
	f.size(message.New("Below"), size{
		get: func() (length.Length, bool, bool) { return height(at), true, false },
		put: func(v length.Length) edit.Edit {
			return edit.MoveDivision{Below: at, Lower: v, Upper: height(at) + height(above) - v}
		},
	})
	f.size(message.New("Above"), size{
		get: func() (length.Length, bool, bool) { return height(above), true, false },
		put: func(v length.Length) edit.Edit {
			return edit.MoveDivision{Below: at, Lower: height(at) + height(above) - v, Upper: v}
		},
	})
	f.note(f.text("Drag the division, or nudge it with the up and down keys; with Shift ten steps at once."))
	f.section(message.New("Gap"), true, func() string { return f.say().Length(f.session.Project().GapAbove(at)) })
	boardForm(f).lines([]model.Place{at})
	boardForm(f).rail([]model.Place{at})
}

// partition shows the two clear widths at a partition.
func (f bayForm) partition(at model.Place) {
	next := at
	next.Bay++
	width := func(a model.Place) length.Length {
		if b := f.session.Result().Plan.BayAt(a); b != nil {
			return b.Opening.Width()
		}
		return 0
	}
	headForm(f).path(model.Place{Cabinet: at.Cabinet, Bay: max(at.Bay, 0), Front: -1})
	headForm(f).called(f.text("Partition"))
	f.section(message.New("Clear widths beside it"), true, func() string {
		return f.say().Figure(width(at)) + " | " + f.say().Length(width(next))
	})
	f.size(message.New("Clear width left"), size{
		get: func() (length.Length, bool, bool) { return width(at), true, false },
		put: func(v length.Length) edit.Edit {
			return edit.MovePartition{Left: at, WidthLeft: v, WidthRight: width(at) + width(next) - v}
		},
	})
	f.size(message.New("Clear width right"), size{
		get: func() (length.Length, bool, bool) { return width(next), true, false },
		put: func(v length.Length) edit.Edit {
			return edit.MovePartition{Left: at, WidthLeft: width(at) + width(next) - v, WidthRight: v}
		},
	})
	f.note(f.text("Drag the partition, or nudge it with the left and right keys; with Shift ten steps at once."))
}
