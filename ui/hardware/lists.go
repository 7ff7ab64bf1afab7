package hardware

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

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

// lengths is the table of the runner lengths that can be ordered: of each its length,
// its load, and how far its screw holes are from the edge of the carcass side. What
// else belongs to the holes stands below, of the length that the keys are at.
func (f *form) lengths() fyne.CanvasObject {
	p := f.page
	const path = "runner.lengths[]."
	g := f.grid("Runner lengths", []column{
		{head: "Length", spec: spec{path: path + "length"}, many: func(k *picked, i int, all []length.Length) {
			was := k.sheet.Runner.Lengths
			for n, v := range all {
				one := was[i].Clone()
				one.Length = v
				if n == 0 {
					was[i] = one
				} else if !slices.ContainsFunc(was, func(l model.RunnerLength) bool { return l.Length == v }) {
					was = append(was, one)
				}
			}
			sortLengths(was)
			k.sheet.Runner.Lengths = was
		}},
		{head: "Load in kg", spec: spec{path: path + "load", none: "not given"}},
		{head: "Screw holes", wide: true, spec: spec{path: path + "screws", none: "none"}, many: setBacks, shown: func(k *picked, i int) string {
			if i >= len(k.sheet.Runner.Lengths) {
				return ""
			}
			var all []string
			for _, h := range k.sheet.Runner.Lengths[i].Screws {
				all = append(all, p.say().Typed(h.Back))
			}
			return strings.Join(all, "; ")
		}},
	}, func(k *picked) int { return len(k.sheet.Runner.Lengths) }, p.addLength, func(k *picked, i int) {
		k.sheet.Runner.Lengths = append(k.sheet.Runner.Lengths[:i], k.sheet.Runner.Lengths[i+1:]...)
	})
	g.sort = func(s *model.HardwareSheet) { sortLengths(s.Runner.Lengths[:len(s.Runner.Lengths)-1]) }
	chosen := func(k *picked) bool { return k.runner != nil }
	return field.Column(g.object, f.shownWith(f.screws(), chosen), f.rowsWhile(chosen, spec{path: path + "price", none: "not given"}))
}

// sortLengths puts runners in the order of their lengths.
func sortLengths(all []model.RunnerLength) {
	slices.SortStableFunc(all, func(a, b model.RunnerLength) int { return cmp.Compare(a.Length, b.Length) })
}

// addLength adds a length like the one that is chosen, by a usual step longer.
func (p *Page) addLength(k *picked) {
	next, step := Blank(p.say()).Runner.Lengths[0], 50*length.Millimetre
	if k.sheet.Unit == length.UnitInch || k.sheet.Unit == length.UnitInchDecimal {
		step = 2 * length.Inch
	}
	if k.runner != nil {
		next = k.runner.Clone()
	}
	for taken := true; taken; {
		next.Length += step
		taken = slices.ContainsFunc(k.sheet.Runner.Lengths, func(l model.RunnerLength) bool { return l.Length == next.Length })
	}
	k.sheet.Runner.Lengths = append(k.sheet.Runner.Lengths, next)
}

// setBacks gives a runner screw holes at some distances from the edge; what else
// belongs to a hole stays, new ones are like the last.
func setBacks(k *picked, i int, backs []length.Length) {
	l := &k.sheet.Runner.Lengths[i]
	next := usualScrew
	was := l.Screws
	l.Screws = nil
	for n, back := range backs {
		if n < len(was) {
			next = was[n]
		}
		next.Back = back
		l.Screws = append(l.Screws, next)
	}
}

// usualScrew is a hole to begin with.
var usualScrew = model.ScrewHole{Back: 37 * length.Millimetre, Up: 10 * length.Millimetre, Diameter: 5 * length.Millimetre, Depth: 10 * length.Millimetre}

// drawers is the table of the drawer heights that can be had, and below it what else
// belongs to the one that the keys are at.
func (f *form) drawers() fyne.CanvasObject {
	p := f.page
	g := f.grid("Heights", []column{
		{head: "Name", spec: drawerTable[0]}, {head: "Top of side", spec: drawerTable[1]}, {head: "Holes", wide: true, spec: drawerTable[2]},
	}, func(k *picked) int { return len(k.sheet.Drawers) }, func(k *picked) {
		next := Blank(p.say()).Drawers[0]
		if k.drawer != nil {
			next = k.drawer.Clone()
		}
		next.Name = freeName(next.Name, func(s string) bool { return k.sheet.Drawer(s) != nil })
		k.sheet.Drawers = append(k.sheet.Drawers, next)
	}, func(k *picked, i int) {
		k.sheet.Drawers = append(k.sheet.Drawers[:i], k.sheet.Drawers[i+1:]...)
	})
	one := field.NewLabel("")
	one.Importance = widget.LowImportance
	f.updates = append(f.updates, func() {
		if k := p.now(); k.drawer != nil {
			one.SetText(p.text("Of the height “%v”:", k.drawer.Name))
		}
	})
	return field.Column(g.object, f.shownWith(field.Column(one, f.rows(drawerRows...), f.moreHoles()), func(k *picked) bool { return k.drawer != nil }))
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
