package inspector

import (
	"frontlay/layout/season"
	"frontlay/layout/tolerance"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// seasonForm asks for the room's climate through the year.
type seasonForm struct{ *form }

// fill shows the climate, and what solid wood does in it.
func (f seasonForm) fill() {
	year := func() (season.Year, bool) { return season.YearOf(f.session.Project().Climate) }
	f.section(message.New("Solid wood through the year"), false, func() string {
		if y, ok := year(); ok {
			return f.say().Number(season.Percent(y.Driest)) + " – " + f.say().Number(season.Percent(y.Dampest)) + " %"
		}
		return ""
	})
	for _, air := range []string{"climate.driest", "climate.dampest", "climate.today"} {
		for _, key := range []string{".humidity", ".temperature", ".moisture"} {
			row := f.value(model.Whole, air+key)
			f.number(message.New("%v: %v", f.value(model.Whole, air).Name, row.Name), row.Value.(*figure.Number).Unit, func() (float64, bool, bool) {
				v := *f.value(model.Whole, air+key).Value.(*figure.Number).At
				if v == 0 && key == ".temperature" {
					return model.UsualTemperature, false, false
				}
				return v, v > 0, false
			}, func(v float64) edit.Edit { return set([]model.Place{model.Whole}, air+key, v) })
		}
	}
	told(f.form, func() string {
		if _, ok := year(); !ok {
			return f.text("Give the air of both seasons, or the moisture of the wood in them.")
		}
		if s, ok := season.Of(f.session.Result().Plan); ok {
			return f.say().Sentence(s.Told())
		}
		return f.text("No board is said to be of solid wood: choose its species where its material is.")
	})
}

// spreadForm asks how exactly things are made.
type spreadForm struct{ *form }

// fill shows the figures of the process, and what comes of them.
func (f spreadForm) fill() {
	whole := []model.Place{model.Whole}
	process := func() *model.Process { return f.session.Project().Process }
	f.section(f.value(model.Whole, "process").Name, false, func() string {
		if process() == nil {
			return f.text("not said")
		}
		return "± " + f.say().Length(*process().Filled().Within)
	})
	f.choiceOf(model.Whole, "process.drilling", f.text("jig"), f.text("template"), f.text("machine"))
	drilling := decides(f.form, func() model.Drilling { return process().Filled().Drilling })
	for _, row := range model.ProcessFigures() {
		if !drilling.Counts(row.Key) {
			continue
		}
		f.sizeOf(model.Whole, "process."+row.Key, f.usual(whole, "process."+row.Key, func(model.Place) length.Length { return row.Usual }))
	}
	told(f.form, func() string {
		if process() == nil {
			return f.text("Grey figures are from memory: measure your own. Once one is given, the spread of every gap is worked out.")
		}
		b := tolerance.Of(f.session.Result().Plan)
		return f.say().Sentence(b.Told(b.Try(tolerance.Runs)))
	})
	if decides(f.form, func() bool { return process() != nil }) {
		f.buttons(button{"Forget these figures", func() { f.do(edit.Set{At: model.Whole, Key: "process"}) }})
	}
}
