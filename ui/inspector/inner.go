package inspector

import (
	"fmt"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// innerDrawers shows the inner drawers behind one front that opens, and the hinges of a
// door.
func (f *frontForm) innerDrawers() {
	first, kind := f.at[0], f.doc(f.at[0]).Kind
	if len(f.at) != 1 || !kind.Holds() {
		return
	}
	n := decides(f.form, func() int { return len(f.doc(first).Inner) })
	f.section(message.New("Inner drawers"), n > 0 || kind == model.Door, func() string {
		if n := len(f.doc(first).Inner); n > 0 {
			return fmt.Sprint(n)
		}
		return f.text("none")
	})
	if kind == model.Door {
		f.choiceOf(first, "hinged", f.text("at the left"), f.text("at the right"))
	}
	for k := range n {
		key := fmt.Sprintf("inner[%d].", k)
		f.note(f.text("Inner drawer %v", k+1))
		f.drawerHeight([]model.Place{first}, func(model.Place) string {
			if all := f.doc(first).Inner; k < len(all) {
				return all[k].Drawer
			}
			return ""
		}, func(a model.Place, name string) edit.Edit { return edit.Set{At: a, Key: key + "drawer", Value: name} })
		f.sizeOf(first, key+"up", f.always(first, key+"up"))
		f.numberOf([]model.Place{first}, key+"contents.weight")
		f.buttons(button{"Remove inner drawer", func() { f.do(edit.RemoveInner{At: first, Index: k}) }})
	}
	f.buttons(button{"Add an inner drawer", func() {
		f.do(edit.AddInner{At: first, Inner: model.InnerDrawer{Up: f.overDrawers(first)}})
	}})
}

// overDrawers is how high the runner of one more inner drawer stands with the clearance
// that it needs over the drawers that are behind a front.
func (f *frontForm) overDrawers(at model.Place) length.Length {
	front := f.planned(at)
	if front.Sheet == nil {
		return 0
	}
	up := front.Sheet.Runner.LeastHeight
	for g := range front.Drawers() {
		up = max(up, g.Drawer.Body.Max.Y+g.Sheet.Runner.ClearanceAbove-g.Sheet.Lowest()-front.Datum())
	}
	return up.CeilTo(f.session.Project().RoundingStep())
}

// ownPacking is the packing beside the runners of these fronts alone; taken away, that of
// the bay holds.
func (f *frontForm) ownPacking() {
	holds := func(a model.Place) model.Packing {
		if f.session.Project().FrontAt(a) == nil {
			return model.Packing{}
		}
		return f.session.Project().PackingOf(a, f.planned(a).Bays)
	}
	for _, one := range []struct {
		key string
		get func(model.Place) length.Length
	}{
		{"packing.left", func(a model.Place) length.Length { return holds(a).Left }},
		{"packing.right", func(a model.Place) length.Length { return holds(a).Right }},
	} {
		s := f.usual(f.at, one.key, one.get)
		s.clear = func() edit.Edit { return set(f.at, "packing", nil) }
		f.sizeOf(f.at[0], one.key, s)
	}
}
