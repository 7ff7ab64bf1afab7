package inspector

import (
	"fmt"
	"slices"
	"strings"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// boardForm are the sections of boards and of what is cut from them.
type boardForm struct{ *form }

// frontBoard chooses the board of the fronts at places, the project, a cabinet or
// fronts, and whether its grain is matched, and shows the figures of how it is built. A
// way to build that the project has no board for yet makes one.
func (f boardForm) frontBoard(at []model.Place) {
	chosen := func(a model.Place) string { return f.session.Project().BoardOf(a).Name }
	f.section(message.New("Build of fronts"), false, func() string {
		if !alike(at, chosen) {
			return f.text("several")
		}
		return f.boardName(chosen(at[0]))
	})
	var names, options []string
	switch first := at[0]; {
	case first.Bay >= 0:
		names, options = []string{""}, []string{f.text("as the cabinet")}
	case first.Cabinet >= 0:
		names, options = []string{""}, []string{f.text("as the project")}
	}
	for _, name := range append([]string{model.PlainBoard}, f.namedBoards()...) {
		names, options = append(names, name), append(options, f.boardName(name))
	}
	known := len(names)
	makes := []model.BuildKind{model.Frame, model.GripEdged}
	options = append(options, f.text("new: frames with a panel"), f.text("new: with a grip"))
	own := func(a model.Place) string {
		name := *f.value(a, "board").Value.(*figure.Text).At
		if a.Cabinet < 0 && name == "" {
			return model.PlainBoard
		}
		return name
	}
	f.choice(message.New("Front board"), options, func() int { return oneOf(at, names, own) }, func(i int) edit.Edit {
		if i >= known {
			return edit.AddFrontBoard{Kind: makes[i-known], At: at}
		}
		if names[i] == "" {
			return set(at, "board", nil)
		}
		return set(at, "board", names[i])
	})
	if at[0].Front < 0 {
		f.matched(at[0])
	}
	decides(f.form, func() string { return strings.Join(f.namedBoards(), "\n") }) // which are offered
	name := decides(f.form, func() string {
		if !alike(at, chosen) {
			return ""
		}
		return chosen(at[0])
	})
	if i := slices.Index(f.namedBoards(), name); i >= 0 {
		f.boardFigures(i)
	}
}

// namedBoards are the names of the project's front boards.
func (f boardForm) namedBoards() []string {
	var names []string
	for _, b := range f.session.Project().Boards.Fronts {
		names = append(names, b.Name)
	}
	return names
}

// boardName says which board it is: the plain one by its thickness.
func (f boardForm) boardName(name string) string {
	if name == model.PlainBoard {
		return f.text("plain, %v", f.session.Project().Boards.Front.Thickness)
	}
	return name
}

// boardFigures are the figures of a front board of the project, which hold for all
// fronts of it, beside a section through one: how it is built, and in a section of its
// own what it is of.
func (f boardForm) boardFigures(at int) {
	path := fmt.Sprintf("boards.fronts[%d].", at)
	whole := []model.Place{model.Whole}
	board := func() *model.FrontBoard {
		if all := f.session.Project().Boards.Fronts; at < len(all) {
			return &all[at]
		}
		return &model.FrontBoard{}
	}
	f.line(message.New("Name of the board"), func() (string, string) { return board().Name, "" },
		func(s string) edit.Edit { return edit.RenameFrontBoard{Name: board().Name, To: s} })
	f.choiceOf(model.Whole, path+"build.kind", f.text("board as it is"), f.text("frame with a panel"), f.text("board with a grip"))
	drawn := f.buildSection(board)
	named := func(key string) message.Message { return f.value(model.Whole, path+key).Name }
	drawn.size(named("thickness"), "thickness", f.always(model.Whole, path+"thickness"))
	usual := func(label message.Message, key string, of func(model.Build) length.Length) {
		drawn.size(label, key, f.usual(whole, path+key, func(model.Place) length.Length { return of(board().Filled()) }))
	}
	kind := decides(f.form, func() model.BuildKind { return board().Build.Kind })
	switch kind {
	case model.Frame:
		usual(named("build.stile"), "build.stile", func(b model.Build) length.Length { return b.Stile })
		usual(named("build.top_rail"), "build.top_rail", func(b model.Build) length.Length { return b.TopRail })
		usual(named("build.bottom_rail"), "build.bottom_rail", func(b model.Build) length.Length { return b.BottomRail })
		usual(named("build.tenon"), "build.tenon", func(b model.Build) length.Length { return b.Tenon })
		usual(message.New("Panel, thick"), "build.panel.thickness", func(b model.Build) length.Length { return b.Panel.Thickness })
		usual(message.New("Panel set in by"), "build.panel.recess", func(b model.Build) length.Length { return b.Panel.Recess })
		usual(named("build.panel.groove"), "build.panel.groove", func(b model.Build) length.Length { return b.Panel.Groove })
	case model.GripEdged:
		f.choiceOf(model.Whole, path+"build.edge", f.text("the top edge"), f.text("the bottom edge"))
		usual(named("build.height"), "build.height", func(b model.Build) length.Length { return b.Height })
		usual(named("build.thickness_left"), "build.thickness_left", func(b model.Build) length.Length { return b.Left })
	}
	f.buttons(button{"Remove this board", func() { f.do(edit.RemoveFrontBoard{Name: board().Name}) }})
	f.note(f.text("These figures hold for every front of this board."))
	f.details(message.New("Wood and edging of the board"), path[:len(path)-1], drawn, "fronts")
	if kind == model.Frame {
		f.section(message.New("Wood of the panel"), false, func() string { return board().PanelBoard().Material })
		f.wood(path+"build.panel", func() string { return board().Material })
	}
}

// details are what lists and weights need to know of a board, and its edging where parts
// of it can have one; in is the drawing that shows it.
func (f boardForm) details(title message.Message, board string, in *drawnBuild, parts ...string) {
	f.section(title, false, func() string {
		return *f.value(model.Whole, board+".material").Value.(*figure.Text).At
	})
	f.wood(board, func() string { return "" })
	if len(parts) > 0 {
		f.edging(board, in, parts...)
	}
}

// wood is what a board is of, and how it is bought.
func (f boardForm) wood(board string, material func() string) {
	f.lineOf(model.Whole, board+".material", material)
	f.numberOf([]model.Place{model.Whole}, board+".density")
	grain := board + ".grain"
	words := append([]string{""}, f.value(model.Whole, grain).Value.(*figure.Text).OneOf...)
	f.words(model.Whole, grain, words, []string{f.text("none"), f.text("horizontal"), f.text("vertical")})
	species, named := []string{""}, []string{f.text("none, it does not move")}
	for _, name := range f.session.Project().SpeciesNames() {
		species, named = append(species, name), append(named, f.say().Say(model.SpeciesSay(name)))
	}
	f.words(model.Whole, board+".species", species, named)
	if decides(f.form, func() string { return *f.value(model.Whole, board+".species").Value.(*figure.Text).At }) != "" {
		f.choiceOf(model.Whole, board+".sawn", f.text("flat-sawn"), f.text("quarter-sawn"))
	}
	f.stock(board)
}

// lines are the gap and the channel above fronts, where they are not as elsewhere.
func (f boardForm) lines(at []model.Place) {
	p := func() *model.Project { return f.session.Project() }
	f.sizeOf(at[0], "gap_above", f.usual(at, "gap_above", func(a model.Place) length.Length { return p().GapAbove(a) }))
	f.sizes(at, "channel.height")
	if decides(f.form, func() bool {
		return slices.ContainsFunc(at, func(a model.Place) bool { return p().FrontAt(a) != nil && p().FrontAt(a).Channel.Height > 0 })
	}) {
		f.sizes(at, "channel.depth")
	}
}

// rail is the rail above inset fronts, where it is not as in the cabinet: one that is
// emptied is again, 0 is none.
func (f boardForm) rail(at []model.Place) {
	p := func() *model.Project { return f.session.Project() }
	can := func(a model.Place) bool {
		c, b := p().CabinetAt(a), p().BayAt(a)
		return b != nil && c.Mount == model.Inset && a.Front+1 < len(b.Fronts)
	}
	if !decides(f.form, func() bool { return slices.ContainsFunc(at, can) }) {
		return
	}
	high := f.given(at, "rail.height")
	high.get = common(at, func(a model.Place) (length.Length, bool) {
		own := p().FrontAt(a)
		if own != nil && own.Rail != nil {
			return own.Rail.Height, true
		}
		return p().RailAbove(a).Height, false
	})
	high.none, high.clear = false, func() edit.Edit { return set(at, "rail", nil) }
	f.sizeOf(at[0], "rail.height", high)
	there := func(a model.Place) bool { return p().RailAbove(a).Height > 0 }
	if decides(f.form, func() bool { return slices.ContainsFunc(at, there) }) {
		f.sizeOf(at[0], "rail.depth", f.usual(at, "rail.depth", func(a model.Place) length.Length { return p().RailAbove(a).Depth }))
	}
}

// stock is the size in which a board is bought and what it costs.
func (f boardForm) stock(board string) {
	whole := []model.Place{model.Whole}
	f.size(message.New("Stock sheet, along the grain"), f.given(whole, board+".stock.length"))
	f.size(message.New("Stock sheet, across"), f.given(whole, board+".stock.width"))
	f.markOf(model.Whole, board+".stock.plain")
	f.numberOf(whole, board+".price")
}

// edging says which edges of the parts of a board get its edging, where it has one.
func (f boardForm) edging(board string, in *drawnBuild, parts ...string) {
	whole := []model.Place{model.Whole}
	in.size(f.value(model.Whole, board+".lipping").Name, "lipping", f.given(whole, board+".lipping"))
	if !decides(f.form, func() bool { v, _ := f.sized(model.Whole, board+".lipping"); return v > 0 }) {
		return
	}
	for _, part := range parts {
		key := board + ".edging." + part
		words := f.value(model.Whole, key).Value.(*figure.Text).OneOf
		var options []string
		for _, w := range words {
			options = append(options, f.say().Say(model.SayEdges(w)))
		}
		f.words(model.Whole, key, words, options)
	}
	f.numberOf(whole, board+".edging.price")
}

// saw is how stock sheets are cut.
func (f boardForm) saw() {
	f.section(f.value(model.Whole, "saw").Name, false, func() string { return f.say().Length(f.session.Project().Saw.Kerf) })
	f.sizes([]model.Place{model.Whole}, "saw.kerf", "saw.trim")
}

// matched chooses which fronts the grain runs on through.
func (f boardForm) matched(at model.Place) {
	unsaid := f.text("as the cabinet")
	switch {
	case at.Cabinet < 0:
		unsaid = f.text("none")
	case at.Bay < 0:
		unsaid = f.text("as the project")
	}
	words, options := []string{"", model.MatchedUpright, model.MatchedAcross}, []string{unsaid, f.text("through the stack"), f.text("through the run")}
	if at.Cabinet >= 0 {
		words, options = append(words, model.NotMatched), append(options, f.text("none"))
	}
	f.words(at, "matched", words, options)
}

// words is the choice of a row that is kept as text; options say its words to a person,
// the first also what is not among them.
func (f boardForm) words(at model.Place, key string, words, options []string) {
	f.choice(f.value(at, key).Name, options, func() int { return max(slices.Index(words, *f.value(at, key).Value.(*figure.Text).At), 0) },
		func(i int) edit.Edit { return edit.Set{At: at, Key: key, Value: words[i]} })
}
