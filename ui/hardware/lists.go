package hardware

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"frontlay/model"
	"frontlay/model/length"
	"frontlay/ui/field"
)

// items is a list of the sheet of which the form shows one at a time.
type items struct {
	label  string
	names  func() []string
	at     *int
	add    func(*picked)
	remove func(*picked)
}

// pickFrom chooses the item to show, adds one like it, and removes it.
func (f *form) pickFrom(it items) fyne.CanvasObject {
	p := f.page
	c := field.NewChoice(it.names(), func() int { return *it.at }, func(i int) {
		p.form.take()
		*it.at = i
		p.form.giveUp()
		p.update()
	})
	add := field.NewButton(p.text("Add"), func() {
		p.Take()
		p.change(it.add)
		*it.at = len(it.names()) - 1
		p.update()
	})
	remove := field.NewButton(p.text("Remove"), func() {
		p.form.giveUp()
		p.change(it.remove)
	})
	f.updates = append(f.updates, func() {
		c.SetOptions(it.names())
		c.Update()
		remove.Able(len(it.names()) > 0)
	})
	return field.Labelled(p.text(it.label), container.NewBorder(nil, nil, nil, container.NewHBox(add, remove), c))
}

// shownWith shows an object only while there is an item to show.
func (f *form) shownWith(o fyne.CanvasObject, there func(*picked) bool) fyne.CanvasObject {
	f.updates = append(f.updates, func() {
		if on := there(f.page.now()); on != o.Visible() {
			if on {
				o.Show()
			} else {
				o.Hide()
			}
			f.refresh()
		}
	})
	return o
}

// refresh lays the form out again after something has been shown or hidden.
func (f *form) refresh() {
	if f.scroll != nil {
		f.scroll.Content.Refresh()
		f.scroll.Refresh()
	}
}

// lengths are the runner lengths that can be ordered.
func (f *form) lengths() fyne.CanvasObject {
	p := f.page
	pick := f.pickFrom(items{
		label: "Runner lengths", at: &p.chosen.runner,
		names: func() []string {
			var all []string
			for i := range p.sheet.Runner.Lengths {
				all = append(all, p.say().Length(p.sheet.Runner.Lengths[i].Length))
			}
			return all
		},
		add: func(k *picked) {
			next, step := Blank(p.say()).Runner.Lengths[0], 50*length.Millimetre
			if k.sheet.Unit == length.UnitInch || k.sheet.Unit == length.UnitInchDecimal {
				step = 2 * length.Inch
			}
			if k.runner != nil {
				next = k.runner.Clone()
			}
			for taken := true; taken; {
				next.Length += step
				taken = false
				for _, l := range k.sheet.Runner.Lengths {
					taken = taken || l.Length == next.Length
				}
			}
			k.sheet.Runner.Lengths = append(k.sheet.Runner.Lengths, next)
		},
		remove: func(k *picked) {
			i := p.chosen.runner
			k.sheet.Runner.Lengths = append(k.sheet.Runner.Lengths[:i], k.sheet.Runner.Lengths[i+1:]...)
		},
	})
	one := field.Column(f.rows(lengthRows...), f.screws())
	return field.Column(pick, f.shownWith(one, func(k *picked) bool { return k.runner != nil }))
}

// drawers are the drawer heights that can be had.
func (f *form) drawers() fyne.CanvasObject {
	p := f.page
	pick := f.pickFrom(items{
		label: "Height", at: &p.chosen.drawer,
		names: func() []string {
			var all []string
			for i := range p.sheet.Drawers {
				all = append(all, p.sheet.Drawers[i].Name)
			}
			return all
		},
		add: func(k *picked) {
			next := Blank(p.say()).Drawers[0]
			if k.drawer != nil {
				next = k.drawer.Clone()
			}
			next.Name = freeName(next.Name, func(s string) bool { return k.sheet.Drawer(s) != nil })
			k.sheet.Drawers = append(k.sheet.Drawers, next)
		},
		remove: func(k *picked) {
			i := p.chosen.drawer
			k.sheet.Drawers = append(k.sheet.Drawers[:i], k.sheet.Drawers[i+1:]...)
		},
	})
	one := field.Column(f.rows(drawerRows...), f.moreHoles())
	return field.Column(pick, f.shownWith(one, func(k *picked) bool { return k.drawer != nil }))
}

// freeName adds a number to a name that is taken.
func freeName(name string, taken func(string) bool) string {
	for n := 2; ; n++ {
		if s := fmt.Sprintf("%s %d", name, n); !taken(s) {
			return s
		}
	}
}

// moreHoles are those that only some fronts have.
func (f *form) moreHoles() fyne.CanvasObject {
	p := f.page
	pick := f.pickFrom(items{
		label: "Further holes", at: &p.chosen.more,
		names: func() []string {
			k := p.now()
			if k.drawer == nil {
				return nil
			}
			var all []string
			for i := range k.drawer.More {
				all = append(all, p.text("at %v", k.drawer.More[i].Up))
			}
			return all
		},
		add: func(k *picked) {
			if k.drawer != nil {
				k.drawer.More = append(k.drawer.More, model.HolePattern{Up: k.drawer.SideTop - 10*length.Millimetre})
			}
		},
		remove: func(k *picked) {
			i := p.chosen.more
			k.drawer.More = append(k.drawer.More[:i], k.drawer.More[i+1:]...)
		},
	})
	sides := field.NewChoice([]string{p.text("both sides"), p.text("left only"), p.text("right only")},
		func() int {
			if k := p.now(); k.more != nil {
				return int(k.more.Sides)
			}
			return 0
		},
		func(i int) {
			p.change(func(k *picked) {
				if k.more != nil {
					k.more.Sides = model.HoleSides(i)
				}
			})
		})
	f.updates = append(f.updates, sides.Update)
	one := field.Column(f.rows(moreRows[:1]...), field.Labelled(p.text("On"), sides), f.rows(moreRows[1:]...))
	return field.Column(pick, f.shownWith(one, func(k *picked) bool { return k.more != nil }))
}
