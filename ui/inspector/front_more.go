package inspector

import (
	"strconv"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

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
