package inspector

import (
	"slices"
	"strings"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
)

// projectForm are the sections of the project.
type projectForm struct{ *form }

// fill shows what holds for the whole document; it is there when nothing is
// selected.
func (f projectForm) fill() {
	doc := f.session.Project
	headForm(f).named(model.Whole, "title", func() string {
		if doc().Title != "" {
			return doc().Title
		}
		return f.text("Without a title")
	}, func(s string) edit.Edit { return edit.Set{At: model.Whole, Key: "title", Value: s} })
	headForm(f).kindly(f.text("project"))
	f.section(message.New("Boards"), true, func() string {
		b := doc().Boards
		return f.say().Figure(b.Carcass.Thickness) + " | " + f.say().Figure(b.Front.Thickness) + " | " + f.say().Length(b.Back.Thickness)
	})
	for _, b := range []struct {
		label message.Message
		key   string
	}{{message.New("Carcass"), "carcass"}, {message.New("Fronts"), "front"}, {message.New("Back"), "back"}} {
		f.size(b.label, f.always(model.Whole, "boards."+b.key+".thickness"))
	}
	f.choice(message.New("Unit"), field.Units(f.say().Say),
		func() int { return int(doc().Unit) },
		func(i int) edit.Edit { return edit.SetUnit{Unit: length.Unit(i)} })
	whole := []model.Place{model.Whole}
	boards := boardForm(f)
	boards.frontBoard(whole)
	f.section(message.New("Reveals"), true, func() string { return f.say().Length(doc().Reveals.Gap) })
	f.reveals(model.Whole)
	f.markOf(model.Whole, "shared_gaps")
	f.markOf(model.Whole, "one_plinth")
	f.section(message.New("Heights"), true, nil)
	f.sizeOf(model.Whole, "rounding.step", f.usual(whole, "rounding.step", func(model.Place) length.Length { return length.Millimetre }))
	f.choiceOf(model.Whole, "rounding.rest", f.text("the lowest without a height"), f.text("the highest without a height"))
	f.holeRows(whole)
	handleForm(f).handleSection(model.Whole)
	details := func(board string, parts ...string) {
		boards.details(f.value(model.Whole, board).Name, board, boards.notDrawn(), parts...)
	}
	details("boards.carcass", "sides", "bottoms", "partitions", "shelves")
	details("boards.front", "fronts", "end_panels")
	details("boards.back")
	boards.saw()
	openingForm(f).niche()
	seasonForm(f).fill()
	spreadForm(f).fill()
	f.titleBlock()
	f.notes()
}

// titleBlock is what tells papers of this job from others.
func (f projectForm) titleBlock() {
	f.section(message.New("On every page"), false, func() string {
		p := f.session.Project()
		return strings.Join(slices.DeleteFunc([]string{p.Number, p.Revision}, func(s string) bool { return s == "" }), " | ")
	})
	for _, key := range []string{"number", "revision", "client", "drawn_by"} {
		f.lineOf(model.Whole, key, func() string { return "" })
	}
}

// holeRows tells whether runners stand on hole rows; where those are matters only then.
func (f projectForm) holeRows(whole []model.Place) {
	modes := []string{f.text("anywhere"), f.text("move up to a row"), f.text("on rows, fronts give way")}
	f.section(message.New("Hole rows in the carcass sides"), true, func() string { return modes[f.session.Project().HoleRows.Mode] })
	f.choiceOf(model.Whole, "hole_rows.mode", modes...)
	if decides(f.form, func() model.RowMode { return f.session.Project().HoleRows.Mode }) == model.RowsFree {
		return
	}
	for _, r := range []struct {
		key   string
		usual length.Length
	}{{"hole_rows.pitch", model.UsualPitch}, {"hole_rows.datum", 0}, {"hole_rows.setback", model.UsualSetback}} {
		f.sizeOf(model.Whole, r.key, f.usual(whole, r.key, func(model.Place) length.Length { return r.usual }))
	}
}

// notes are the project's, of as many lines as it takes. What can't be taken is
// told where everything else is that can't be done.
func (f projectForm) notes() {
	f.section(message.New("Notes"), true, func() string {
		first, _, _ := strings.Cut(f.session.Project().Notes, "\n")
		const most = 24
		if r := []rune(first); len(r) > most {
			return string(r[:most]) + "…"
		}
		return first
	})
	get := func() string { return f.session.Project().Notes }
	s := field.Source{
		Get:  func() field.Value { return field.Value{Text: get(), Grey: f.text("what the bench should know")} },
		Put:  func(text string) error { return f.session.Do(edit.Set{At: model.Whole, Key: "notes", Value: text}) },
		Tell: func(m message.Message) { f.refused(m) },
	}
	e, at := take(f.form, "lines", "Notes", func(e *field.Entry) { e.Use(s) }, func() *field.Entry { return field.NewLines(s, 4) })
	f.add(e, f.text("Notes"), at, e)
}

// refused tells what can't be taken, and nothing where that is taken away.
func (f projectForm) refused(m message.Message) {
	if !m.Empty() {
		f.tell(m)
	}
}
