package inspector

import (
	"slices"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// handleForm are the fields of handles, of the project, a cabinet or fronts.
type handleForm struct{ *form }

// handle says what handles the things at places have: as is around them, none, or a
// pattern of their own with its figures. Of the figures that say one thing in several
// ways, the one that is typed takes away the others.
func (f handleForm) handle(at []model.Place) {
	doc := func(a model.Place) *model.Handle {
		if h := f.session.Project().HandleAt(a); h != nil {
			return *h
		}
		return nil
	}
	const (
		asAround = iota
		none
		own
	)
	options := []string{f.text("none"), f.text("none"), f.text("its own")}
	switch {
	case at[0].Front >= 0:
		options[asAround] = f.text("as the cabinet")
	case at[0].Cabinet >= 0:
		options[asAround] = f.text("as the project")
	default:
		options = slices.Delete(options, none, none+1)
	}
	state := func(a model.Place) int {
		switch h := doc(a); {
		case h == nil:
			return asAround
		case h.None:
			return none
		}
		return len(options) - 1
	}
	f.choice(f.value(at[0], "handle").Name, options, func() int {
		if !alike(at, state) {
			return -1
		}
		return state(at[0])
	}, func(i int) edit.Edit {
		switch i {
		case asAround:
			return set(at, "handle", nil)
		case len(options) - 1:
			return each(at, func(a model.Place) edit.Edit { return edit.Set{At: a, Key: "handle.none", Value: false} })
		}
		return set(at, "handle.none", true)
	})
	if !decides(f.form, func() bool {
		return slices.ContainsFunc(at, func(a model.Place) bool { return doc(a) != nil && !doc(a).None })
	}) {
		return
	}
	figures := func(a model.Place) model.Handle {
		if h := doc(a); h != nil {
			return *h
		}
		return model.Handle{}
	}
	f.choice(f.value(at[0], "handle.count").Name, []string{f.text("one"), f.text("two")}, func() int {
		return oneOf(at, []int{1, 2}, func(a model.Place) int { return max(figures(a).Count, 1) })
	}, func(i int) edit.Edit { return set(at, "handle.count", i+1) })
	f.sizes(at, "handle.spacing")
	upright := func(a model.Place) bool { return figures(a).Upright }
	f.mark(f.value(at[0], "handle.upright").Name, func() bool { return upright(at[0]) }, func() bool { return !alike(at, upright) },
		func(on bool) edit.Edit { return set(at, "handle.upright", on) })
	f.sizes(at, "handle.from_top", "handle.from_bottom", "handle.above_middle", "handle.on_line",
		"handle.from_left", "handle.from_right", "handle.beside_middle")
	f.sizeOf(at[0], "handle.diameter", f.usual(at, "handle.diameter", func(model.Place) length.Length { return model.UsualHandleHole }))
	f.numberOf(at, "handle.price")
}

// handleSection is a section of its own for the handles of a cabinet or the project.
func (f handleForm) handleSection(at model.Place) {
	f.section(message.New("Handles"), false, nil)
	f.handle([]model.Place{at})
}
