package inspector

import (
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// division shows the two heights at a division.
func (f *form) division(at model.Place) {
	above := at
	above.Front++
	height := func(a model.Place) length.Length {
		if pf := session.FrontOf(f.session.Result().Plan, a); pf != nil {
			return pf.Face.Height()
		}
		return 0
	}
	f.heading(f.text("Division"))
	f.size(message.New("Below"), size{
		get: func() (length.Length, bool, bool) { return height(at), true, false },
		put: func(v length.Length) edit.Edit {
			return edit.MoveDivision{Below: at, Lower: v, Upper: height(at) + height(above) - v}
		},
	})
	f.size(message.New("Above"), size{
		get: func() (length.Length, bool, bool) { return height(above), true, false },
		put: func(v length.Length) edit.Edit {
			return edit.MoveDivision{Below: at, Lower: height(at) + height(above) - v, Upper: v}
		},
	})
	f.note(f.text("Drag the division, or nudge it with the up and down keys; with Shift ten steps at once."))
}

// partition shows the two clear widths at a partition.
func (f *form) partition(at model.Place) {
	next := at
	next.Bay++
	width := func(a model.Place) length.Length {
		if b := session.BayOf(f.session.Result().Plan, a); b != nil {
			return b.Opening.Width()
		}
		return 0
	}
	f.heading(f.text("Partition"))
	f.size(message.New("Clear width left"), size{
		get: func() (length.Length, bool, bool) { return width(at), true, false },
		put: func(v length.Length) edit.Edit {
			return edit.MovePartition{Left: at, WidthLeft: v, WidthRight: width(at) + width(next) - v}
		},
	})
	f.size(message.New("Clear width right"), size{
		get: func() (length.Length, bool, bool) { return width(next), true, false },
		put: func(v length.Length) edit.Edit {
			return edit.MovePartition{Left: at, WidthLeft: width(at) + width(next) - v, WidthRight: v}
		},
	})
	f.note(f.text("Drag the partition, or nudge it with the left and right keys; with Shift ten steps at once."))
}
