package hardware

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
)

// column is one figure of the items of a grid, under a short head.
type column struct {
	spec
	head string
	wide bool // it holds several sizes
	// many takes several sizes that were typed into the field of an item; nil: it
	// holds one.
	many func(k *picked, i int, all []length.Length)
	// shown writes several sizes of an item; nil: it holds what its row does.
	shown func(k *picked, i int) string
}

// grid is a small table, such as of holes: a row for each, with a button to remove it.
// Enter goes on to the row below, and below the last one to a new row.
type grid struct {
	form    *form
	columns []column
	count   func(*picked) int
	add     func(*picked)
	remove  func(k *picked, i int)
	sort    func(*model.HardwareSheet) // puts all rows but a new last one in order; nil: they have none
	rows    []*row
	stops   []fyne.Focusable // fields and buttons, in their order
	box     *fyne.Container
	problem *field.Label
	object  fyne.CanvasObject
}

func (f *form) grid(title string, columns []column, count func(*picked) int, add func(*picked), remove func(*picked, int)) *grid {
	g := &grid{form: f, columns: columns, count: count, add: add, remove: remove, box: field.Column(), problem: field.NewLabel("")}
	g.problem.Importance, g.problem.Wrapping = widget.DangerImportance, fyne.TextWrapWord
	g.problem.Hide()
	head := f.subheading(title, g.more)
	g.object = field.Column(head, g.box, g.problem)
	f.grids = append(f.grids, g)
	f.groups = append(f.groups, func() []*row { return g.rows })
	return g
}

// more makes a row, and begins its first field.
func (g *grid) more() {
	p := g.form.page
	p.form.take()
	p.change(func(k *picked) {
		g.add(k)
		if g.sort != nil {
			g.sort(k.sheet)
		}
	})
	if n := len(g.rows); n >= len(g.columns) {
		g.rows[n-len(g.columns)].focus()
	}
}

// enter takes what was typed into a field, and goes on to the one below it.
func (g *grid) enter(c, i int) {
	if !g.rows[i*len(g.columns)+c].entry.Take() {
		return
	}
	if next := (i+1)*len(g.columns) + c; next < len(g.rows) {
		g.rows[next].focus()
	} else if c == 0 || i+1 == g.count(g.form.page.now()) {
		g.more()
	}
}

// update shows as many rows as there are items.
func (g *grid) update() {
	n := g.count(g.form.page.now())
	if n*len(g.columns) != len(g.rows) {
		g.build(n)
	}
	for _, r := range g.rows {
		r.entry.Update()
	}
}

func (g *grid) build(n int) {
	p := g.form.page
	defer g.keepFocus(g.stops)()
	g.rows, g.stops, g.box.Objects = nil, nil, nil
	g.tell(message.Message{})
	if n > 0 {
		heads := container.New(weighted(g.columns))
		for _, c := range g.columns {
			heads.Add(field.NewSmall(p.text(c.head)))
		}
		g.box.Add(container.NewBorder(nil, nil, nil, narrow(field.Spacer(1)), heads))
	}
	for i := range n {
		line := container.New(weighted(g.columns))
		var made []*row
		for at, c := range g.columns {
			r := g.entry(c, i)
			r.entry.OnSubmitted = func(string) { g.enter(at, i) }
			line.Add(r.entry)
			made = append(made, r)
			g.stops = append(g.stops, r.entry)
		}
		away := field.NewButton("×", func() {
			p.form.giveUp()
			p.change(func(k *picked) { g.remove(k, i) })
		})
		g.stops = append(g.stops, away)
		whole := container.NewBorder(nil, nil, nil, narrow(away), line)
		for _, r := range made {
			r.object = whole
		}
		g.rows = append(g.rows, made...)
		g.box.Add(whole)
	}
	g.box.Refresh()
	g.form.refresh()
}

// weighted lays the fields of a row beside each other; one that holds several sizes
// is as wide as three others.
type weighted []column

func (w weighted) weight(i int) float32 {
	if w[i].wide {
		return 3
	}
	return 1
}

// Layout gives each its share of the width.
func (w weighted) Layout(o []fyne.CanvasObject, s fyne.Size) {
	const gap = 4
	sum := float32(0)
	for i := range o {
		sum += w.weight(i)
	}
	unit := (s.Width - gap*float32(len(o)-1)) / sum
	x := float32(0)
	for i, one := range o {
		field.Put(one, fyne.NewPos(x, 0), fyne.NewSize(unit*w.weight(i), s.Height))
		x += unit*w.weight(i) + gap
	}
}

// MinSize is as high as the highest of them.
func (w weighted) MinSize(o []fyne.CanvasObject) (m fyne.Size) {
	for _, one := range o {
		m.Width, m.Height = m.Width+one.MinSize().Width, max(m.Height, one.MinSize().Height)
	}
	return m
}

// keepFocus brings the keyboard from a field or button that is gone to the one in
// its place, or to the last.
func (g *grid) keepFocus(gone []fyne.Focusable) func() {
	c := field.CanvasOf(g.object)
	if c == nil || c.Focused() == nil {
		return func() {}
	}
	i := slices.Index(gone, c.Focused())
	if i < 0 {
		return func() {}
	}
	return func() {
		if len(g.stops) == 0 {
			c.Unfocus()
			return
		}
		c.Focus(g.stops[min(i, len(g.stops)-1)])
	}
}

// narrow gives an object the width of a small button.
func narrow(o fyne.CanvasObject) fyne.CanvasObject {
	return container.NewGridWrap(fyne.NewSize(30, max(o.MinSize().Height, 1)), o)
}

func (g *grid) tell(m message.Message) {
	if m.Empty() {
		if g.problem.Visible() {
			g.problem.Hide()
			g.form.refresh()
		}
		return
	}
	g.problem.SetText(g.form.page.say().Say(m))
	g.problem.Show()
	g.form.refresh()
}

// entry makes the field of one size of one item.
func (g *grid) entry(c column, i int) *row {
	r := g.form.page.newRow(c.spec, i)
	s := r.source()
	s.Tell = g.tell
	s.Figure = true // also a name in a table is replaced, not written on
	if c.many != nil {
		r.several(&s, c)
	}
	r.entry = field.NewEntry(s)
	return r
}

// several lets the field of an item take several sizes at once.
func (r *row) several(s *field.Source, c column) {
	p, one := r.page, *s
	if c.shown != nil {
		s.Step = nil
		s.Get = func() field.Value { return field.Value{Text: c.shown(p.now(), r.item), Grey: p.text(r.none)} }
	}
	s.Put = func(text string) error {
		all, err := parseSizes(text, p.sheet.Unit)
		if c.shown == nil && (err != nil || len(all) < 2) {
			return one.Put(text)
		}
		if err == nil {
			p.change(func(k *picked) { c.many(k, r.item, all) })
		}
		return err
	}
	s.Check = func(text string) error {
		all, err := parseSizes(text, p.sheet.Unit)
		if c.shown == nil && (err != nil || len(all) < 2) {
			return one.Check(text)
		}
		return err
	}
}

// screws are the holes of one runner length in the carcass side.
func (f *form) screws() fyne.CanvasObject {
	const path = "runner.lengths[].screws[]."
	return f.grid("Its screw holes", []column{
		{head: "From the edge", spec: spec{path: path + "back"}},
		{head: "Up", spec: spec{path: path + "up"}},
		{head: "Ø", spec: spec{path: path + "diameter"}},
		{head: "Depth", spec: spec{path: path + "depth"}},
	}, func(k *picked) int {
		if k.runner == nil {
			return 0
		}
		return len(k.runner.Screws)
	}, func(k *picked) {
		if k.runner == nil {
			return
		}
		next := usualScrew
		if n := len(k.runner.Screws); n > 0 {
			next = k.runner.Screws[n-1]
			next.Back += 32 * length.Millimetre
		}
		k.runner.Screws = append(k.runner.Screws, next)
	}, func(k *picked, i int) {
		k.runner.Screws = append(k.runner.Screws[:i], k.runner.Screws[i+1:]...)
	}).object
}

// stabiliserHoles are those in the front, from its middle.
func (f *form) stabiliserHoles() fyne.CanvasObject {
	const path = "stabiliser.holes[]."
	return f.grid("Its holes in the front", []column{
		{head: "Across", spec: spec{path: path + "across"}},
		{head: "Up", spec: spec{path: path + "up"}},
		{head: "Ø", spec: spec{path: path + "diameter", usual: connectorDiameter}},
		{head: "Depth", spec: spec{path: path + "depth", usual: connectorDepth}},
	}, func(k *picked) int { return len(k.sheet.Stabiliser.Holes) }, func(k *picked) {
		k.sheet.Stabiliser.Holes = append(k.sheet.Stabiliser.Holes, model.StabiliserHole{Up: 10 * length.Millimetre})
	}, func(k *picked, i int) {
		k.sheet.Stabiliser.Holes = append(k.sheet.Stabiliser.Holes[:i], k.sheet.Stabiliser.Holes[i+1:]...)
	}).object
}
