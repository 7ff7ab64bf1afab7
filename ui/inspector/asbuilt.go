package inspector

import (
	"frontlay/layout/asbuilt"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/message"
)

// asBuiltForm are the gaps measured around a hung front, and how to move it.
type asBuiltForm struct{ *frontForm }

// gaps asks for both ends of the gaps of the front at a place that are to be measured.
func (f asBuiltForm) gaps(at model.Place) {
	edges := decides(f.form, func() (there [4]bool) {
		for _, g := range f.session.Result().Plan.Gaps() {
			if g.Front.Place == at {
				there[g.Edge] = true
			}
		}
		return there
	})
	f.section(message.New("Gaps as built"), false, func() string {
		if f.doc(at).AsBuilt == nil {
			return f.text("not measured")
		}
		return f.text("measured")
	})
	keys := [...][2]string{
		plan.LeftEdge:   {"left.bottom", "left.top"},
		plan.RightEdge:  {"right.bottom", "right.top"},
		plan.BottomEdge: {"below.left", "below.right"},
		plan.TopEdge:    {"above.left", "above.right"},
	}
	for _, e := range []plan.Edge{plan.BottomEdge, plan.TopEdge, plan.LeftEdge, plan.RightEdge} {
		if edges[e] {
			f.sizes(f.at, "as_built."+keys[e][0], "as_built."+keys[e][1])
		}
	}
	told(f.form, func() string {
		r := asbuilt.Of(f.session.Result().Plan)
		if r == nil {
			return f.text("When the front hangs, its connectors in the middle of their way: type the gaps that you measure, and read how to move it.")
		}
		text := f.say().Sentence(r.Told())
		m := r.At(f.planned(at))
		if m == nil {
			return text
		}
		for _, x := range []struct{ what, how message.Message }{
			{message.New("Left connector"), m.LeftSay()}, {message.New("Right connector"), m.RightSay()}, {message.New("Whole front"), m.AsideSay()},
		} {
			if !x.how.Empty() {
				text += "\n" + f.say().Say(message.New("%v: %v", x.what, x.how))
			}
		}
		return text
	})
}
