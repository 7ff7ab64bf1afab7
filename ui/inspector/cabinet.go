package inspector

import (
	"strings"

	"frontlay/layout/tipping"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// cabinetForm are the sections of a cabinet.
type cabinetForm struct{ *form }

// fill shows a carcass.
func (f cabinetForm) fill(at model.Place) {
	doc := func() *model.Cabinet {
		if c := f.session.Project().CabinetAt(at); c != nil {
			return c
		}
		return &model.Cabinet{}
	}
	headForm(f).path(at)
	headForm(f).named(at, "name", func() string {
		if doc().Name != "" {
			return doc().Name
		}
		return f.text("Cabinet %v", at.Cabinet+1)
	}, func(s string) edit.Edit { return edit.RenameCabinet{At: at, Name: s} })
	headForm(f).kindly(f.text("cabinet"))
	f.section(message.New("Size"), true, func() string {
		return f.say().Figure(doc().Width) + " × " + f.say().Figure(doc().Height) + " × " + f.say().Length(doc().Depth)
	})
	f.sheetsOf(at, doc)
	for _, key := range []string{"width", "height", "depth", "plinth", "worktop", "channel.height"} {
		f.sizeOf(at, key, f.always(at, key))
	}
	if decides(f.form, func() bool { return doc().Channel.Height > 0 }) {
		f.sizes([]model.Place{at}, "channel.depth")
	}
	f.choiceOf(at, "mount", f.text("overlay"), f.text("inset"))
	f.placeInRun(at)
	if decides(f.form, func() int { return f.bays(at) }) == 1 {
		bay := model.Place{Cabinet: at.Cabinet, Bay: 0, Front: -1}
		f.section(message.New("Bay"), true, func() string { return f.sheetName(bay) })
		one := bayForm(f)
		one.hardware(bay)
		one.divisionRule(bay, func() *model.Bay {
			if b := f.session.Project().BayAt(bay); b != nil {
				return b
			}
			return &model.Bay{}
		})
	}
	boardForm(f).frontBoard([]model.Place{at})
	f.section(message.New("Carcass"), false, func() string { return f.built(doc()) })
	f.choiceOf(at, "back.kind", f.text("laid on"), f.text("rebated"), f.text("grooved"))
	if decides(f.form, func() bool { return doc().Back.Kind != model.LaidOn }) {
		f.sizes([]model.Place{at}, "back.depth", "back.setback")
	}
	if decides(f.form, func() bool { return doc().Mount == model.Inset }) {
		f.sizes([]model.Place{at}, "rail.height")
		f.sizeOf(at, "rail.depth", f.usual([]model.Place{at}, "rail.depth", func(model.Place) length.Length { return model.UsualRailDepth }))
	}
	f.choiceOf(at, "base.kind", f.text("plinth"), f.text("feet"), f.text("wall"))
	base := decides(f.form, func() model.BaseKind { return doc().Base.Kind })
	if base == model.OnPlinth {
		f.sizes([]model.Place{at}, "base.setback")
	}
	if base != model.OnWall {
		f.number(f.value(at, "base.feet").Name, "", func() (float64, bool, bool) {
			return float64(doc().Feet()), doc().Base.FeetCount > 0, false
		}, func(n float64) edit.Edit { return edit.Set{At: at, Key: "base.feet", Value: int(n)} })
	}
	f.tipping(at, doc)
	f.section(message.New("Reveals of this cabinet"), false, func() string {
		if doc().Reveals == nil {
			return f.text("as the project")
		}
		return f.text("its own")
	})
	f.reveals(at)
	handleForm(f).handleSection(at)
	f.beside(at)
}

// tipping asks what keeps a cabinet from tipping, and tells what its weights come to.
func (f cabinetForm) tipping(at model.Place, doc func() *model.Cabinet) {
	if doc().Base.Kind == model.OnWall {
		return
	}
	words := []string{f.text("not said"), f.text("its own weight"), f.text("the wall it is fixed to")}
	f.section(message.New("Tipping"), false, func() string { return words[doc().Base.Stands] })
	f.choiceOf(at, "base.stands", words...)
	if doc().Base.Stands == model.NotSaid {
		return
	}
	f.sizeOf(at, "base.fixed_at", f.usual([]model.Place{at}, "base.fixed_at", func(model.Place) length.Length { return doc().Plinth + doc().Height }))
	load := f.value(model.Whole, "tipping_load")
	f.number(load.Name, load.Value.(*figure.Number).Unit, func() (float64, bool, bool) {
		p := f.session.Project()
		return p.EdgeLoad(), p.TippingLoad > 0, false
	}, func(v float64) edit.Edit { return set([]model.Place{model.Whole}, "tipping_load", v) })
	told(f.form, func() string {
		if pl := f.session.Result().Plan; at.Cabinet < len(pl.Cabinets) {
			s := tipping.Of(pl, at.Cabinet)
			return f.say().Sentence(s.Told())
		}
		return ""
	})
}

// built tells in short how the carcass is built.
func (f cabinetForm) built(c *model.Cabinet) string {
	back := []string{f.text("back laid on"), f.text("back rebated"), f.text("back grooved")}[c.Back.Kind]
	on := []string{f.text("on a plinth"), f.text("on feet"), f.text("on the wall")}[c.Base.Kind]
	if c.Plinth == 0 && c.Base.Kind != model.OnWall {
		return back
	}
	return back + ", " + on
}

// sheetsOf names the hardware sheets of a cabinet's bays, each once.
func (f cabinetForm) sheetsOf(at model.Place, doc func() *model.Cabinet) {
	named := map[*model.HardwareSheet]bool{}
	for i := range doc().Bays {
		bay := model.Place{Cabinet: at.Cabinet, Bay: i, Front: -1}
		if s := f.sheetAt(bay); !named[s] {
			named[s] = true
			f.sheetOf(func() *model.HardwareSheet { return f.sheetAt(bay) })
		}
	}
}

// beside tells what stands at the cabinet's sides.
func (f cabinetForm) beside(at model.Place) {
	for _, side := range []string{"left", "right"} {
		f.section(f.value(at, side).Name, false, func() string { return f.stands(at, side) })
		f.sizeOf(at, side+".side", f.usual([]model.Place{at}, side+".side", func(model.Place) length.Length {
			return f.session.Project().Boards.Carcass.Thickness
		}))
		f.sizes([]model.Place{at}, side+".end_panel", side+".filler")
		f.markOf(at, side+".wall")
		f.sizes([]model.Place{at}, side+".projection")
	}
}

// stands tells in short what stands at a side of a cabinet.
func (f cabinetForm) stands(at model.Place, side string) string {
	var all []string
	for _, key := range []string{side + ".end_panel", side + ".filler"} {
		if v, given := f.sized(at, key); given && v > 0 {
			all = append(all, f.say().Say(f.value(at, key).Name)+" "+f.say().Length(v))
		}
	}
	if *f.value(at, side+".wall").Value.(*figure.Flag).At {
		all = append(all, f.text("wall"))
	}
	if len(all) == 0 {
		return f.text("nothing")
	}
	return strings.Join(all, ", ")
}

// placeInRun tells which cabinet of the run this is, and moves it. Where it is the
// only one there is nothing to move.
func (f cabinetForm) placeInRun(at model.Place) {
	count := func() int { return len(f.session.Project().Cabinets) }
	if decides(f.form, count) < 2 {
		return
	}
	f.figure("Place from the left", func() string { return f.text("%v of %v", at.Cabinet+1, count()) })
	move := func(by int) func() {
		return func() {
			to := at
			to.Cabinet += by
			if err := f.session.Do(edit.MoveCabinet{At: at, To: to.Cabinet}); err != nil {
				f.tell(tool.Said(err))
				return
			}
			f.session.Select(session.Cabinet(to))
		}
	}
	f.buttons(button{"Move left", move(-1)}, button{"Move right", move(1)})
}
