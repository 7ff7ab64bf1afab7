package inspector

import (
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/figure"
	"frontlay/model/length"
)

// value is the row at a path of the thing at a place, of an empty one where that
// is gone: for the moment until the panel shows another.
func (f *form) value(at model.Place, key string) figure.Row {
	row, ok := figure.Find(figure.Of(f.session.Project(), at), key)
	if !ok {
		row, _ = figure.Find(figure.Like(at), figure.OfKind(key))
	}
	return row
}

// sized is the length of a row.
func (f *form) sized(at model.Place, key string) (length.Length, bool) {
	return f.value(at, key).Value.(*figure.Size).Get()
}

// set makes one step of a value for the same figure of several things.
func set(at []model.Place, key string, value any) edit.Edit {
	return each(at, func(a model.Place) edit.Edit { return edit.Set{At: a, Key: key, Value: value} })
}

// given is a size that is none where it is not given, and can be taken away.
func (f *form) given(at []model.Place, key string) size {
	return size{
		none:  true,
		get:   common(at, func(a model.Place) (length.Length, bool) { return f.sized(a, key) }),
		put:   func(v length.Length) edit.Edit { return set(at, key, v) },
		clear: func() edit.Edit { return set(at, key, nil) },
	}
}

// always is a size that is always there, 0 where nothing is given.
func (f *form) always(at model.Place, key string) size {
	s := f.given([]model.Place{at}, key)
	s.get = func() (length.Length, bool, bool) {
		v, _ := f.sized(at, key)
		return v, true, false
	}
	s.clear = nil
	return s
}

// usual is a size with a figure that holds where none is given.
func (f *form) usual(at []model.Place, key string, figure func(model.Place) length.Length) size {
	s := f.given(at, key)
	s.none = false
	s.get = common(at, func(a model.Place) (length.Length, bool) {
		if v, given := f.sized(a, key); given {
			return v, true
		}
		return figure(a), false
	})
	return s
}

// sizeOf is the field of a row for a length.
func (f *form) sizeOf(at model.Place, key string, s size) { f.size(f.value(at, key).Name, s) }

// sizes are fields of sizes that are none where they are not given.
func (f *form) sizes(at []model.Place, keys ...string) {
	for _, key := range keys {
		f.sizeOf(at[0], key, f.given(at, key))
	}
}

// lineOf is the field of a row for a text on one line.
func (f *form) lineOf(at model.Place, key string, grey func() string) {
	f.line(f.value(at, key).Name, func() (string, string) { return *f.value(at, key).Value.(*figure.Text).At, grey() },
		func(s string) edit.Edit { return edit.Set{At: at, Key: key, Value: s} })
}

// numberOf is the field of a row for a plain number, that of several things.
func (f *form) numberOf(at []model.Place, key string) {
	get := func(a model.Place) float64 { return *f.value(a, key).Value.(*figure.Number).At }
	row := f.value(at[0], key)
	f.number(row.Name, row.Value.(*figure.Number).Unit, func() (float64, bool, bool) {
		v := get(at[0])
		return v, v > 0, !alike(at, get)
	}, func(v float64) edit.Edit { return set(at, key, v) })
}

// markOf is the box of a row for yes or no.
func (f *form) markOf(at model.Place, key string) {
	f.mark(f.value(at, key).Name, func() bool { return *f.value(at, key).Value.(*figure.Flag).At }, nil,
		func(on bool) edit.Edit { return edit.Set{At: at, Key: key, Value: on} })
}

// choiceOf is the choice of a row; options say its words to a person.
func (f *form) choiceOf(at model.Place, key string, options ...string) {
	f.choice(f.value(at, key).Name, options, func() int { return f.value(at, key).Value.(*figure.Choice).Get() },
		func(i int) edit.Edit { return edit.Set{At: at, Key: key, Value: i} })
}

// alike tells whether something is the same at every place.
func alike[T comparable](at []model.Place, get func(model.Place) T) bool {
	for _, a := range at[1:] {
		if get(a) != get(at[0]) {
			return false
		}
	}
	return true
}

// common reads a length, and whether it is given, of several places, and tells
// whether they differ.
func common(at []model.Place, get func(model.Place) (length.Length, bool)) func() (length.Length, bool, bool) {
	type value struct {
		v     length.Length
		given bool
	}
	return func() (length.Length, bool, bool) {
		v, given := get(at[0])
		return v, given, !alike(at, func(a model.Place) value {
			v, given := get(a)
			return value{v, given}
		})
	}
}

// oneOf gives the index of what every place holds in a list, -1 where they
// differ or it is not there.
func oneOf[T comparable](at []model.Place, list []T, get func(model.Place) T) int {
	if alike(at, get) {
		for i, v := range list {
			if v == get(at[0]) {
				return i
			}
		}
	}
	return -1
}
