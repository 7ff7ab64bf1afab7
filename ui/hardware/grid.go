package hardware

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/tool"
)

// column is one size of the items of a grid. of gives nil where the item is not
// there; usual is what an empty field means, nil where it can't be empty.
type column struct {
	path   string
	head   string
	label  string
	figure view.Figure
	of     func(k *picked, i int) *length.Length
	usual  func(k *picked) length.Length
}

// grid is a small table of holes: a row for each, with a button to remove it.
type grid struct {
	form    *form
	columns []column
	count   func(*picked) int
	remove  func(k *picked, i int)
	rows    []*row
	stops   []fyne.Focusable // fields and buttons, in their order
	box     *fyne.Container
	problem *field.Label
	object  fyne.CanvasObject
}

func (f *form) grid(title string, columns []column, count func(*picked) int, add func(*picked), remove func(*picked, int)) *grid {
	g := &grid{form: f, columns: columns, count: count, remove: remove, box: field.Column(), problem: field.NewLabel("")}
	g.problem.Importance, g.problem.Wrapping = widget.DangerImportance, fyne.TextWrapWord
	g.problem.Hide()
	head := f.subheading(title, func() {
		f.page.Take()
		f.page.change(add)
	})
	g.object = field.Column(head, g.box, g.problem)
	f.grids = append(f.grids, g)
	return g
}

// update shows as many rows as there are items.
func (g *grid) update() {
	n := g.count(g.form.page.now())
	if n*len(g.columns) != len(g.rows) {
		g.build(n)
	}
	for _, r := range g.rows {
		r.update()
	}
}

func (g *grid) build(n int) {
	p := g.form.page
	defer g.keepFocus(g.stops)()
	g.rows, g.stops, g.box.Objects = nil, nil, nil
	g.tell(message.Message{})
	if n > 0 {
		heads := container.NewGridWithColumns(len(g.columns))
		for _, c := range g.columns {
			heads.Add(field.NewLabel(p.text(c.head)))
		}
		g.box.Add(container.NewBorder(nil, nil, nil, narrow(field.Spacer(1)), heads))
	}
	for i := range n {
		line := container.NewGridWithColumns(len(g.columns))
		var made []*row
		for _, c := range g.columns {
			r := g.entry(c, i)
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
	p := g.form.page
	r := &row{page: p, path: c.path, label: c.label, figure: c.figure, item: i}
	s := r.source(func() field.Value {
		k := p.now()
		at := c.of(k, i)
		switch {
		case at == nil:
			return field.Value{}
		case *at == 0 && c.usual != nil:
			return field.Value{Grey: p.say().Typed(c.usual(k))}
		default:
			return field.Value{Text: p.say().Typed(*at)}
		}
	}, func(text string) (func(*picked), error) {
		v, err := parseSize(text, p.sheet.Unit, c.usual != nil)
		return func(k *picked) {
			if at := c.of(k, i); at != nil {
				*at = v
			}
		}, err
	})
	s.Step = func(n int) error {
		p.change(func(k *picked) {
			if at := c.of(k, i); at != nil {
				*at += length.Length(n) * tool.Step(p.sheet.Unit, false)
			}
		})
		return nil
	}
	s.Tell = g.tell
	r.entry = field.NewEntry(s)
	return r
}

// screws are the holes of one runner length in the carcass side.
func (f *form) screws() fyne.CanvasObject {
	screw := func(of func(*model.ScrewHole) *length.Length) func(*picked, int) *length.Length {
		return func(k *picked, i int) *length.Length {
			if k.runner == nil || i >= len(k.runner.Screws) {
				return nil
			}
			return of(&k.runner.Screws[i])
		}
	}
	return f.grid("Screw holes in the carcass side", []column{
		{"runner.lengths[].screws[].back", "from edge", "Screw hole, from the front edge", view.ScrewBack, screw(func(h *model.ScrewHole) *length.Length { return &h.Back }), nil},
		{"runner.lengths[].screws[].up", "up", "Screw hole, up", view.ScrewUp, screw(func(h *model.ScrewHole) *length.Length { return &h.Up }), nil},
		{"runner.lengths[].screws[].diameter", "Ø", "Screw hole, diameter", view.ScrewDiameter, screw(func(h *model.ScrewHole) *length.Length { return &h.Diameter }), nil},
		{"runner.lengths[].screws[].depth", "depth", "Screw hole, depth", view.ScrewDepth, screw(func(h *model.ScrewHole) *length.Length { return &h.Depth }), nil},
	}, func(k *picked) int {
		if k.runner == nil {
			return 0
		}
		return len(k.runner.Screws)
	}, func(k *picked) {
		if k.runner == nil {
			return
		}
		next := model.ScrewHole{Back: 37 * length.Millimetre, Up: 10 * length.Millimetre, Diameter: 5 * length.Millimetre, Depth: 10 * length.Millimetre}
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
	hole := func(of func(*model.StabiliserHole) *length.Length) func(*picked, int) *length.Length {
		return func(k *picked, i int) *length.Length {
			if i >= len(k.sheet.Stabiliser.Holes) {
				return nil
			}
			return of(&k.sheet.Stabiliser.Holes[i])
		}
	}
	diameter := func(k *picked) length.Length { return k.sheet.Connector.Diameter }
	depth := func(k *picked) length.Length { return k.sheet.Connector.Depth }
	return f.grid("Its holes in the front", []column{
		{"stabiliser.holes[].across", "across", "Hole, across", view.StabiliserHoles, hole(func(h *model.StabiliserHole) *length.Length { return &h.Across }), nil},
		{"stabiliser.holes[].up", "up", "Hole, up", view.StabiliserHoles, hole(func(h *model.StabiliserHole) *length.Length { return &h.Up }), nil},
		{"stabiliser.holes[].diameter", "Ø", "Hole, diameter", view.StabiliserHoles, hole(func(h *model.StabiliserHole) *length.Length { return &h.Diameter }), diameter},
		{"stabiliser.holes[].depth", "depth", "Hole, depth", view.StabiliserHoles, hole(func(h *model.StabiliserHole) *length.Length { return &h.Depth }), depth},
	}, func(k *picked) int { return len(k.sheet.Stabiliser.Holes) }, func(k *picked) {
		k.sheet.Stabiliser.Holes = append(k.sheet.Stabiliser.Holes, model.StabiliserHole{Up: 10 * length.Millimetre})
	}, func(k *picked, i int) {
		k.sheet.Stabiliser.Holes = append(k.sheet.Stabiliser.Holes[:i], k.sheet.Stabiliser.Holes[i+1:]...)
	}).object
}
