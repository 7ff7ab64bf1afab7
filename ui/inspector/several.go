package inspector

import (
	"frontlay/model"
	"frontlay/model/length"
)

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
