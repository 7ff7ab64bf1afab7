package inspector

import (
	"slices"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
)

// project shows what holds for the whole document; it is there when nothing is
// selected.
func (f *form) project() {
	doc := f.session.Project
	f.heading(f.text("Project"))
	f.lineOf(model.Whole, "title", func() string { return f.text("untitled") })
	f.choice(message.New("Unit"), field.Units(f.say().Say),
		func() int { return int(doc().Unit) },
		func(i int) edit.Edit { return edit.SetUnit{Unit: length.Unit(i)} })
	f.heading(f.text("Boards"))
	for _, b := range []struct {
		label message.Message
		key   string
	}{{message.New("Carcass"), "carcass"}, {message.New("Fronts"), "front"}, {message.New("Back"), "back"}} {
		f.size(b.label, f.always(model.Whole, "boards."+b.key+".thickness"))
	}
	f.heading(f.text("Reveals"))
	f.reveals(model.Whole)
	f.markOf(model.Whole, "shared_gaps")
	f.heading(f.text("Heights"))
	whole := []model.Place{model.Whole}
	f.sizeOf(model.Whole, "rounding.step", f.usual(whole, "rounding.step", func(model.Place) length.Length { return length.Millimetre }))
	f.choiceOf(model.Whole, "rounding.rest", f.text("the lowest without a height"), f.text("the highest without a height"))
	f.heading(f.text("Hole rows in the carcass sides"))
	f.choiceOf(model.Whole, "hole_rows.mode", f.text("anywhere"), f.text("move up to a row"), f.text("on rows, fronts give way"))
	for _, r := range []struct {
		key   string
		usual length.Length
	}{{"hole_rows.pitch", model.UsualPitch}, {"hole_rows.datum", 0}, {"hole_rows.setback", model.UsualSetback}} {
		f.sizeOf(model.Whole, r.key, f.usual(whole, r.key, func(model.Place) length.Length { return r.usual }))
	}
	f.boardDetails("boards.carcass")
	f.boardDetails("boards.front")
	f.sizes(whole, "boards.front.lipping")
	f.notes()
	f.note(f.text("Select a front, a division or a cabinet in the drawing to change it."))
}

// boardDetails are what lists and weights need to know of a board.
func (f *form) boardDetails(board string) {
	f.heading(f.say().Say(f.value(model.Whole, board).Name))
	f.lineOf(model.Whole, board+".material", func() string { return "" })
	f.numberOf([]model.Place{model.Whole}, board+".density")
	grain := board + ".grain"
	words := append([]string{""}, f.value(model.Whole, grain).Value.(*figure.Text).OneOf...)
	f.choice(f.value(model.Whole, grain).Name, []string{f.text("none"), f.text("horizontal"), f.text("vertical")},
		func() int { return slices.Index(words, *f.value(model.Whole, grain).Value.(*figure.Text).At) },
		func(i int) edit.Edit { return edit.Set{At: model.Whole, Key: grain, Value: words[i]} })
}

// notes are the project's, of as many lines as it takes. What can't be taken is
// told where everything else is that can't be done.
func (f *form) notes() {
	f.heading(f.text("Notes"))
	get := func() string { return f.session.Project().Notes }
	s := field.Source{
		Get:  func() field.Value { return field.Value{Text: get(), Grey: f.text("what the bench should know")} },
		Put:  func(text string) error { return f.session.Do(edit.Set{At: model.Whole, Key: "notes", Value: text}) },
		Tell: func(m message.Message) { f.refused(m) },
	}
	e, at := take(f, "lines", "Notes", func(e *field.Entry) { e.Use(s) }, func() *field.Entry { return field.NewLines(s, 4) })
	f.add(e, at, e)
}

// refused tells what can't be taken, and nothing where that is taken away.
func (f *form) refused(m message.Message) {
	if !m.Empty() {
		f.tell(m)
	}
}
