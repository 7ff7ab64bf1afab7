package inspector

import (
	"strconv"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
)

// seldom shows what few fronts need: limits of the height, hardware and runner
// of their own, bays spanned, handle holes.
func (f *form) seldom(at []model.Place, doc func(model.Place) *model.Front, planned func(model.Place) *plan.Front) {
	first := at[0]
	f.heading(f.text("Seldom needed"))
	limit := func(label string, get func(*model.Front) length.Length, put func(*edit.SetLimits, length.Length)) {
		set := func(v length.Length) edit.Edit {
			return each(at, func(a model.Place) edit.Edit {
				e := edit.SetLimits{At: a, Least: doc(a).Least, Greatest: doc(a).Greatest}
				put(&e, v)
				return e
			})
		}
		f.size(label, size{
			get:   common(at, func(a model.Place) (length.Length, bool) { v := get(doc(a)); return v, v > 0 }),
			put:   set,
			clear: func() edit.Edit { return set(0) },
			none:  true,
		})
	}
	limit("Least height", func(d *model.Front) length.Length { return d.Least }, func(e *edit.SetLimits, v length.Length) { e.Least = v })
	limit("Greatest height", func(d *model.Front) length.Length { return d.Greatest }, func(e *edit.SetLimits, v length.Length) { e.Greatest = v })
	if doc(first).Kind == model.DrawerFront {
		f.ownHardware(at, doc)
		f.runner(at, doc, planned)
	}
	if cab := f.session.Project().CabinetAt(first); cab != nil && first.Bay+1 < len(cab.Bays) {
		var options []string
		for n := 1; n <= len(cab.Bays)-first.Bay; n++ {
			options = append(options, strconv.Itoa(n))
		}
		f.choice("Bays spanned", options, func() int { return max(doc(first).Span, 1) - 1 },
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
	f.choice("Hardware", options, func() int {
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
	f.choice("Runner asked for", options, func() int {
		return oneOf(at, lengths, func(a model.Place) length.Length { return doc(a).Runner })
	}, func(i int) edit.Edit {
		return each(at, func(a model.Place) edit.Edit { return edit.SetRunner{At: a, Length: lengths[i]} })
	})
}

// usualHandle is what a handle begins with: one hole of 5 mm in the middle
// (common practice, no source).
var usualHandle = model.Handle{Diameter: 5 * length.Millimetre}

// handle says where the holes for a handle are.
func (f *form) handle(at []model.Place, doc func(model.Place) *model.Front) {
	handle := func(a model.Place) model.Handle {
		if h := doc(a).Handle; h != nil {
			return *h
		}
		return usualHandle
	}
	has := func(a model.Place) bool { return doc(a).Handle != nil }
	f.mark("Handle holes", func() bool { return has(at[0]) }, func() bool { return !alike(at, has) }, func(on bool) edit.Edit {
		return each(at, func(a model.Place) edit.Edit {
			e := edit.SetHandle{At: a}
			if on {
				h := handle(a)
				e.Handle = &h
			}
			return e
		})
	})
	one := func(label string, of func(*model.Handle) *length.Length) {
		f.size(label, size{
			get: common(at, func(a model.Place) (length.Length, bool) {
				h := handle(a)
				return *of(&h), has(a) && *of(&h) > 0
			}),
			put: func(v length.Length) edit.Edit {
				return each(at, func(a model.Place) edit.Edit {
					h := handle(a)
					*of(&h) = v
					return edit.SetHandle{At: a, Handle: &h}
				})
			},
		})
	}
	one("Holes apart", func(h *model.Handle) *length.Length { return &h.Spacing })
	one("From the top edge", func(h *model.Handle) *length.Length { return &h.FromTop })
	one("From the left edge", func(h *model.Handle) *length.Length { return &h.FromLeft })
	one("Diameter", func(h *model.Handle) *length.Length { return &h.Diameter })
}
