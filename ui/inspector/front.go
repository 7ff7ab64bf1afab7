package inspector

import (
	"slices"
	"strconv"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
)

// each makes one step of the same edit for several places.
func each(at []model.Place, make func(model.Place) edit.Edit) edit.Edit {
	if len(at) == 1 {
		return make(at[0])
	}
	s := edit.Several{}
	for _, a := range at {
		s.Edits = append(s.Edits, make(a))
	}
	s.Name = message.New("%v, %v fronts", s.Edits[0].Label(), len(at))
	return s
}

// frontForm are the sections of one front, or of what several have in common.
type frontForm struct {
	*form
	at []model.Place
}

// doc is what the document holds of a front.
func (f *frontForm) doc(a model.Place) *model.Front {
	if d := f.session.Project().FrontAt(a); d != nil {
		return d
	}
	return &model.Front{}
}

// planned is what is worked out of a front.
func (f *frontForm) planned(a model.Place) *plan.Front {
	if pf := f.session.Result().Plan.FrontAt(a); pf != nil {
		return pf
	}
	return &plan.Front{}
}

// fill shows all of it.
func (f *frontForm) fill() {
	first := f.at[0]
	if len(f.at) == 1 {
		headForm{f.form}.path(first)
		headForm{f.form}.named(first, "name", func() string {
			if pf := f.planned(first); pf.Named() {
				return pf.Name
			}
			return f.text("Without a name")
		}, func(s string) edit.Edit { return edit.Set{At: first, Key: "name", Value: s} })
	} else {
		headForm{f.form}.path(model.Whole)
		headForm{f.form}.called(f.text("%v fronts", len(f.at)))
	}
	f.kind()
	f.section(message.New("Size"), true, f.heights)
	f.height()
	kind := decides(f.form, func() model.Kind { return f.doc(first).Kind })
	if kind == model.DrawerFront {
		f.drawer()
	}
	f.innerDrawers()
	if kind != model.OpenNiche {
		boardForm{f.form}.frontBoard(f.at)
	}
	if len(f.at) == 1 {
		f.workedOut()
	}
	f.seldom()
	if len(f.at) == 1 && kind != model.OpenNiche {
		asBuiltForm{f}.gaps(first)
	}
}

// heights tells the heights in short.
func (f *frontForm) heights() string {
	high := func(a model.Place) length.Length { return f.planned(a).Face.Height() }
	if alike(f.at, high) {
		return f.say().Length(high(f.at[0]))
	}
	return f.text("several")
}

// kind chooses what stands at the place.
func (f *frontForm) kind() {
	kinds := []string{f.text("drawer"), f.text("fixed panel"), f.text("open niche"), f.text("door")}
	get := func() int {
		return oneOf(f.at, []model.Kind{model.DrawerFront, model.FixedPanel, model.OpenNiche, model.Door}, func(a model.Place) model.Kind { return f.doc(a).Kind })
	}
	put := func(i int) {
		f.do(each(f.at, func(a model.Place) edit.Edit { return edit.SetKind{At: a, Kind: model.Kind(i)} }))
	}
	c, at := take(f.form, "kind", "Kind", func(c *field.Choice) { c.Use(kinds, get, put) }, func() *field.Choice {
		c := field.NewChoice(kinds, get, put)
		c.PlaceHolder = f.text("several")
		return c
	})
	f.head.kind = c
	f.reach(at, c)
}

// height shows how high the fronts are, and what decides it: a share does nothing at a
// front with a height, nor where the bay is not divided by shares.
func (f *frontForm) height() {
	first := f.at[0]
	toShare := func() edit.Edit {
		return each(f.at, func(a model.Place) edit.Edit { return edit.SetShare{At: a, Share: 1} })
	}
	f.size(message.New("Height"), size{
		get: common(f.at, func(a model.Place) (length.Length, bool) {
			return f.planned(a).Face.Height(), f.doc(a).Height > 0 && !f.doc(a).Clear
		}),
		put: func(v length.Length) edit.Edit {
			return each(f.at, func(a model.Place) edit.Edit { return edit.SetHeight{At: a, Height: v} })
		},
		clear: toShare,
	})
	if f.doc(first).Kind == model.OpenNiche {
		f.size(message.New("Clear height"), size{
			get: common(f.at, func(a model.Place) (length.Length, bool) {
				return f.planned(a).Clear.Height(), f.doc(a).Height > 0 && f.doc(a).Clear
			}),
			put: func(v length.Length) edit.Edit {
				return each(f.at, func(a model.Place) edit.Edit { return edit.SetHeight{At: a, Height: v, Clear: true} })
			},
			clear: toShare,
		})
	}
	share := func(a model.Place) float64 {
		if s := f.doc(a).Share; s > 0 {
			return s
		}
		return 1
	}
	computed := func(a model.Place) bool { return f.doc(a).Height <= 0 }
	if decides(f.form, func() bool { return slices.ContainsFunc(f.at, f.shares) }) {
		f.number(message.New("Share of the rest"), "", func() (float64, bool, bool) {
			return share(first), computed(first), !alike(f.at, share) || !alike(f.at, computed)
		}, func(v float64) edit.Edit {
			return each(f.at, func(a model.Place) edit.Edit { return edit.SetShare{At: a, Share: v} })
		})
	}
	locked := func(a model.Place) bool { return f.doc(a).Locked }
	f.mark(message.New("Locked at this height"), func() bool { return locked(first) }, func() bool { return !alike(f.at, locked) }, func(on bool) edit.Edit {
		e := edit.Lock{At: f.at, Locked: on}
		for _, a := range f.at {
			e.Heights = append(e.Heights, f.planned(a).Face.Height())
		}
		return e
	})
}

// shares tells that a front takes a share of what is left.
func (f *frontForm) shares(a model.Place) bool { return takesShare(f.session.Project(), a) }

func takesShare(p *model.Project, a model.Place) bool {
	b, d := p.BayAt(a), p.FrontAt(a)
	return b != nil && d != nil && d.Height <= 0 && b.Division.Rule == model.DivideShares
}

// drawer shows what only a drawer front has.
func (f *frontForm) drawer() {
	at, doc, planned := f.at, f.doc, f.planned
	first := at[0]
	f.section(message.New("Drawer"), true, func() string {
		if pf := planned(first); pf.Height != nil && len(at) == 1 {
			return pf.Height.Name
		}
		return ""
	})
	f.sheetOf(func() *model.HardwareSheet { return planned(first).Sheet })
	f.drawerHeight(at, func(a model.Place) string { return doc(a).Drawer }, func(a model.Place, name string) edit.Edit {
		return edit.SetDrawer{At: a, Drawer: name}
	})
	drop := f.usual(at, "drop", func(a model.Place) length.Length { return planned(a).Drop })
	drop.bad = f.blamed(at, "drop")
	f.sizeOf(first, "drop", drop)
	f.sizeOf(first, "cover", f.usual(at, "cover", func(model.Place) length.Length { return 0 }))
	f.numberOf(at, "contents.weight")
	f.sizes(at, "contents.height")
}

// drawerHeight chooses a drawer height of the fronts' hardware sheet, or the tallest that
// fits.
func (f *frontForm) drawerHeight(at []model.Place, get func(model.Place) string, put func(a model.Place, name string) edit.Edit) {
	names := []string{""}
	options := []string{f.text("tallest that fits")}
	if sheet := decides(f.form, func() *model.HardwareSheet { return f.planned(at[0]).Sheet }); sheet != nil {
		for i := range sheet.Drawers {
			names = append(names, sheet.Drawers[i].Name)
			options = append(options, sheet.Drawers[i].Name)
		}
	}
	f.choice(message.New("Drawer height"), options, func() int {
		return oneOf(at, names, func(a model.Place) string {
			if d := get(a); d != model.DrawerAuto {
				return d
			}
			return ""
		})
	}, func(i int) edit.Edit {
		return each(at, func(a model.Place) edit.Edit { return put(a, names[i]) })
	})
}

// seldom shows what few fronts need: limits of the height, hardware and runner
// of their own, bays spanned, handle holes.
func (f *frontForm) seldom() {
	at, doc := f.at, f.doc
	first := at[0]
	s := f.section(message.New("Seldom needed"), false, nil)
	s.brief = f.count(s)
	if decides(f.form, func() bool {
		return slices.ContainsFunc(at, func(a model.Place) bool { return doc(a).Height <= 0 })
	}) {
		f.sizes(at, "least", "greatest")
	}
	boardForm{f.form}.lines(at)
	boardForm{f.form}.rail(at)
	if doc(first).Kind.Holds() {
		f.ownHardware()
		f.ownPacking()
	}
	if doc(first).Kind == model.DrawerFront {
		f.runner()
	}
	if bays := decides(f.form, func() int { return f.bays(first) }); first.Bay+1 < bays {
		var options []string
		for n := 1; n <= bays-first.Bay; n++ {
			options = append(options, strconv.Itoa(n))
		}
		f.choice(message.New("Bays spanned"), options, func() int { return max(doc(first).Span, 1) - 1 },
			func(i int) edit.Edit { return edit.SetSpan{At: first, Count: i + 1} })
	}
	if doc(first).Kind != model.OpenNiche {
		handleForm{f.form}.handle(at)
	}
}

// ownHardware chooses a sheet for these fronts alone.
func (f *frontForm) ownHardware() {
	at, doc := f.at, f.doc
	names, options := []string{""}, []string{f.text("as the bay")}
	for _, h := range f.session.Project().Hardware {
		names, options = append(names, h.Name), append(options, h.Name)
	}
	f.choice(message.New("Hardware"), options, func() int {
		return oneOf(at, names, func(a model.Place) string { return doc(a).Hardware })
	}, func(i int) edit.Edit {
		return each(at, func(a model.Place) edit.Edit { return edit.ChooseFrontHardware{At: a, Name: names[i]} })
	})
}

// runner chooses a runner length of the sheet.
func (f *frontForm) runner() {
	at, doc, planned := f.at, f.doc, f.planned
	lengths, options := []length.Length{0}, []string{f.text("longest that fits")}
	if s := planned(at[0]).Sheet; s != nil {
		for _, r := range s.Runner.Lengths {
			lengths, options = append(lengths, r.Length), append(options, f.say().Length(r.Length))
		}
	}
	f.choice(message.New("Runner asked for"), options, func() int {
		return oneOf(at, lengths, func(a model.Place) length.Length { return doc(a).Runner })
	}, func(i int) edit.Edit {
		return each(at, func(a model.Place) edit.Edit { return edit.SetRunner{At: a, Length: lengths[i]} })
	})
}
