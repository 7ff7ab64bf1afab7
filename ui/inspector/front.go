package inspector

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/session"
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

// fronts shows one front or what several have in common.
func (f *form) fronts(at []model.Place) {
	first := at[0]
	doc := func(a model.Place) *model.Front {
		if d := f.session.Project().FrontAt(a); d != nil {
			return d
		}
		return &model.Front{}
	}
	planned := func(a model.Place) *plan.Front {
		if pf := session.FrontOf(f.session.Result().Plan, a); pf != nil {
			return pf
		}
		return &plan.Front{}
	}
	if len(at) == 1 {
		f.heading(f.text("Front %v", planned(first).Number))
		f.lineOf(first, "name", func() string { return planned(first).Name })
	} else {
		f.heading(f.text("%v fronts", len(at)))
	}
	kinds := []string{f.text("drawer"), f.text("fixed panel"), f.text("open niche")}
	f.choice(message.New("Kind"), kinds, func() int {
		return oneOf(at, []model.Kind{model.DrawerFront, model.FixedPanel, model.OpenNiche}, func(a model.Place) model.Kind { return doc(a).Kind })
	}, func(i int) edit.Edit {
		return each(at, func(a model.Place) edit.Edit { return edit.SetKind{At: a, Kind: model.Kind(i)} })
	})
	f.size(message.New("Height"), size{
		get: common(at, func(a model.Place) (length.Length, bool) {
			return planned(a).Face.Height(), doc(a).Height > 0 && !doc(a).Clear
		}),
		put: func(v length.Length) edit.Edit {
			return each(at, func(a model.Place) edit.Edit { return edit.SetHeight{At: a, Height: v} })
		},
		clear: func() edit.Edit {
			return each(at, func(a model.Place) edit.Edit { return edit.SetShare{At: a, Share: 1} })
		},
	})
	if doc(first).Kind == model.OpenNiche {
		f.size(message.New("Clear height"), size{
			get: common(at, func(a model.Place) (length.Length, bool) {
				return planned(a).Clear.Height(), doc(a).Height > 0 && doc(a).Clear
			}),
			put: func(v length.Length) edit.Edit {
				return each(at, func(a model.Place) edit.Edit { return edit.SetHeight{At: a, Height: v, Clear: true} })
			},
			clear: func() edit.Edit {
				return each(at, func(a model.Place) edit.Edit { return edit.SetShare{At: a, Share: 1} })
			},
		})
	}
	share := func(a model.Place) float64 {
		if s := doc(a).Share; s > 0 {
			return s
		}
		return 1
	}
	computed := func(a model.Place) bool { return doc(a).Height <= 0 }
	f.number(message.New("Share of the rest"), "", func() (float64, bool, bool) {
		return share(first), computed(first), !alike(at, share) || !alike(at, computed)
	}, func(v float64) edit.Edit {
		return each(at, func(a model.Place) edit.Edit { return edit.SetShare{At: a, Share: v} })
	})
	locked := func(a model.Place) bool { return doc(a).Locked }
	f.mark(message.New("Locked at this height"), func() bool { return locked(first) }, func() bool { return !alike(at, locked) }, func(on bool) edit.Edit {
		e := edit.Lock{At: at, Locked: on}
		for _, a := range at {
			e.Heights = append(e.Heights, planned(a).Face.Height())
		}
		return e
	})
	if doc(first).Kind == model.DrawerFront {
		f.drawer(at, doc, planned)
	}
	if len(at) == 1 {
		f.workedOut(func() *plan.Front { return planned(first) })
	}
	f.seldom(at, doc, planned)
}

// drawer shows what only a drawer front has.
func (f *form) drawer(at []model.Place, doc func(model.Place) *model.Front, planned func(model.Place) *plan.Front) {
	first := at[0]
	f.heading(f.text("Drawer"))
	names := []string{""}
	options := []string{f.text("tallest that fits")}
	if pf := planned(first); pf.Sheet != nil {
		for i := range pf.Sheet.Drawers {
			names = append(names, pf.Sheet.Drawers[i].Name)
			options = append(options, pf.Sheet.Drawers[i].Name)
		}
	}
	f.choice(message.New("Drawer height"), options, func() int {
		return oneOf(at, names, func(a model.Place) string {
			if d := doc(a).Drawer; d != model.DrawerAuto {
				return d
			}
			return ""
		})
	}, func(i int) edit.Edit {
		return each(at, func(a model.Place) edit.Edit { return edit.SetDrawer{At: a, Drawer: names[i]} })
	})
	f.sizeOf(first, "drop", f.usual(at, "drop", func(a model.Place) length.Length { return planned(a).Drop }))
	f.sizeOf(first, "cover", f.usual(at, "cover", func(model.Place) length.Length { return 0 }))
	f.sizes(at, "contents.height")
	f.numberOf(at, "contents.weight")
}

// workedOut lists what follows for one front.
func (f *form) workedOut(pf func() *plan.Front) {
	f.heading(f.text("Worked out"))
	l := func(v length.Length) string { return f.say().Length(v) }
	pair := func(a, b length.Length) string {
		if a == b {
			return l(a)
		}
		return f.say().Figure(a) + " / " + l(b)
	}
	f.figure("Front size", func() string {
		r := pf().Face
		return f.say().Figure(r.Width()) + " × " + l(r.Height())
	})
	f.figure("Side overlay", func() string { return pair(pf().Overlay.Left, pf().Overlay.Right) })
	if !pf().Fitted {
		if pf().Kind == model.DrawerFront {
			f.note(f.text("No drawer of the hardware sheet fits here yet. The check tells why."))
		}
		return
	}
	f.figure("Edge distance", func() string { return pair(pf().EdgeDistance.Left, pf().EdgeDistance.Right) })
	f.figure("Drop", func() string { return l(pf().Drop) })
	f.figure("Cover below", func() string { return l(pf().Drawer.Cover.Bottom) })
	f.figure("Drawer height", func() string {
		if h := pf().Height; h != nil {
			return h.Name
		}
		return "–"
	})
	f.figure("Room above", func() string { return l(pf().Drawer.RoomAbove) })
	f.figure("Runner", func() string {
		if pf().Runner.Length == 0 {
			return f.text("none fits")
		}
		return l(pf().Runner.Length)
	})
	f.figure("Drawer bottom", func() string {
		c := pf().Drawer.BottomCut
		return f.say().Figure(c.Width) + " × " + l(c.Length)
	})
	f.figure("Holes", func() string { return f.text("%v", len(pf().Holes)) })
	f.explanations(pf)
}

// explanations tell how the figures of a front came about.
func (f *form) explanations(pf func() *plan.Front) {
	f.heading(f.text("How it came about"))
	l, _ := take(f, "explanations", "", func(*field.Label) {}, func() *field.Label {
		l := field.NewLabel("")
		l.Wrapping = fyne.TextWrapWord
		return l
	})
	show := func() {
		var lines []string
		for _, s := range f.session.Result().Plan.Explanations(pf()) {
			if len(s.Terms) > 0 {
				lines = append(lines, f.say().Say(s.Say()))
			}
		}
		if text := strings.Join(lines, "\n\n"); text != l.Text {
			l.SetText(text)
		}
	}
	show()
	f.objects = append(f.objects, l)
	f.updates = append(f.updates, show)
}

// seldom shows what few fronts need: limits of the height, hardware and runner
// of their own, bays spanned, handle holes.
func (f *form) seldom(at []model.Place, doc func(model.Place) *model.Front, planned func(model.Place) *plan.Front) {
	first := at[0]
	f.heading(f.text("Seldom needed"))
	f.sizes(at, "least", "greatest")
	if doc(first).Kind == model.DrawerFront {
		f.ownHardware(at, doc)
		f.runner(at, doc, planned)
	}
	if cab := f.session.Project().CabinetAt(first); cab != nil && first.Bay+1 < len(cab.Bays) {
		var options []string
		for n := 1; n <= len(cab.Bays)-first.Bay; n++ {
			options = append(options, strconv.Itoa(n))
		}
		f.choice(message.New("Bays spanned"), options, func() int { return max(doc(first).Span, 1) - 1 },
			func(i int) edit.Edit { return edit.SetSpan{At: first, Count: i + 1} })
	}
	if doc(first).Kind != model.OpenNiche {
		f.handle(at, doc)
	}
}

// ownHardware chooses a sheet for these fronts alone.
func (f *form) ownHardware(at []model.Place, doc func(model.Place) *model.Front) {
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
func (f *form) runner(at []model.Place, doc func(model.Place) *model.Front, planned func(model.Place) *plan.Front) {
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

// handle says where the holes for a handle are.
func (f *form) handle(at []model.Place, doc func(model.Place) *model.Front) {
	has := func(a model.Place) bool { return doc(a).Handle != nil }
	f.mark(f.value(at[0], "handle").Name, func() bool { return has(at[0]) }, func() bool { return !alike(at, has) }, func(on bool) edit.Edit {
		if on {
			return set(at, "handle", true)
		}
		return set(at, "handle", nil)
	})
	for _, key := range []string{"handle.spacing", "handle.from_top", "handle.from_left", "handle.diameter"} {
		s := f.usual(at, key, func(model.Place) length.Length {
			if key == "handle.diameter" {
				return edit.UsualHandle.Diameter
			}
			return 0
		})
		s.clear = nil
		f.sizeOf(at[0], key, s)
	}
}
