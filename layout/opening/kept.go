package opening

import (
	"sync"

	"frontlay/model"
	"frontlay/model/length"
)

// tapeKey is all that a shape follows from, by value.
type tapeKey struct {
	said                  model.Measured
	given                 [3]bool
	left, right, levelled length.Length
	wide, high            length.Length
}

func keyOf(m *model.Measured, w, h length.Length) tapeKey {
	k := tapeKey{said: *m, wide: w, high: h}
	value := func(at *length.Length) (length.Length, bool) {
		if at == nil {
			return 0, false
		}
		return *at, true
	}
	k.left, k.given[0] = value(m.PlumbLeft)
	k.right, k.given[1] = value(m.PlumbRight)
	k.levelled, k.given[2] = value(m.Level)
	k.said.PlumbLeft, k.said.PlumbRight, k.said.Level = nil, nil, nil
	return k
}

// kept are the shapes that were worked out last: a project is solved anew at every move of
// a hand, and its tape says the same. Nobody changes a shape.
var kept = struct {
	sync.Mutex
	shapes map[tapeKey]*Shape
}{shapes: map[tapeKey]*Shape{}}

// mostKept is how many are kept before all are forgotten.
const mostKept = 500

// Of works out the shape of an opening that is planned as w by h. Middle figures that the
// others contradict are taken for bowed boards; see Doubt.
func Of(m *model.Measured, w, h length.Length) *Shape {
	k := keyOf(m, w, h)
	kept.Lock()
	s := kept.shapes[k]
	kept.Unlock()
	if s != nil {
		return s
	}
	s = worked(m, w, h)
	kept.Lock()
	defer kept.Unlock()
	if len(kept.shapes) >= mostKept {
		kept.shapes = map[tapeKey]*Shape{}
	}
	kept.shapes[k] = s
	return s
}
