package hardware

import (
	"fmt"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
)

// form is the column of fields, in the order in which a maker's documents are
// gone through: runner, holes, drawer heights, boards.
type form struct {
	page    *Page
	scroll  *container.Scroll
	single  []*row // outside of grids
	grids   []*grid
	groups  []func() []*row // tables and blocks of fields, from the top
	note    *note
	updates []func()
}

func newForm(p *Page) *form {
	f := &form{page: p}
	column := field.Column(
		f.heading("Sheet"),
		f.sheet(), f.box("The figures are invented (a sample)", func(k *picked) *bool { return &k.sheet.Sample }),
		f.heading("Runner"), f.rows(runnerRows...), f.lengths(),
		f.heading("Connector"), f.choice("connector.kind", message.New("a pair of connectors"), message.New("screws alone")), f.rows(connectorRows...),
		f.heading("Drawer heights"), f.drawers(),
		f.heading("Drawer bottom"), f.rows(bottomRows...), f.rowsWhile(makers, bottomDeducts...), f.rowsWhile(always, bottomLeast),
		f.heading("Drawer back"), f.rows(backRows...), f.rowsWhile(makers, backDeducts...),
		f.heading("Wooden box"), f.rows(boxSides), f.wooden(),
		f.heading("Stabiliser of wide drawers"), f.rows(stabiliserRows...), f.stabiliserHoles(),
		f.heading("Turns and play of the screws"), f.rows(screwRows...),
		field.Spacer(12),
	)
	f.scroll = container.NewVScroll(container.NewPadded(field.BesideBar(column)))
	f.scroll.SetMinSize(fyne.NewSize(390, 200))
	return f
}

// update shows the sheet in every field.
func (f *form) update() {
	for _, u := range f.updates {
		u()
	}
	for _, g := range f.grids {
		g.update()
	}
	for _, r := range f.single {
		r.entry.Update()
	}
	f.note.update()
}

// all are the rows of the form and of its grids.
func (f *form) all() []*row {
	all := append([]*row(nil), f.single...)
	for _, g := range f.grids {
		all = append(all, g.rows...)
	}
	return all
}

// take takes what is being typed.
func (f *form) take() bool {
	good := f.note.take()
	for _, r := range f.all() {
		good = r.entry.Take() && good
	}
	return good
}

// giveUp forgets what is being typed.
func (f *form) giveUp() {
	for _, r := range f.all() {
		if r.entry.Dirty() {
			r.entry.Restore()
		}
	}
	f.note.giveUp()
}

// rowOf finds the row of a figure of the sketch.
func (f *form) rowOf(path string) *row {
	for _, r := range f.all() {
		shown := r.path == path || strings.HasSuffix(path, "[]") && strings.HasPrefix(r.path, path)
		if shown && path != "" && (r.item < 0 || r.here() || strings.HasPrefix(path, "stabiliser.")) {
			return r
		}
	}
	return nil
}

// here tells that a row of a table is of the item that is chosen.
func (r *row) here() bool {
	c := r.page.chosen
	if of := r.outer(&c); of != nil {
		return *of == r.item
	}
	return r.item == c.screw
}

func (f *form) heading(text string) fyne.CanvasObject {
	return field.Column(field.Spacer(6), widget.NewSeparator(), field.Heading(f.page.text(text)))
}

// sheet are name, unit and source of the figures.
func (f *form) sheet() fyne.CanvasObject {
	name, unit := f.row(spec{path: "name"}), f.unit()
	f.groups = append(f.groups, func() []*row { return []*row{name} })
	return field.Cells(name.object, unit, f.notes())
}

// subheading is the title of a list inside a group.
func (f *form) subheading(text string, add func()) fyne.CanvasObject {
	l := field.NewLabel(f.page.text(text))
	l.Importance = widget.LowImportance
	return container.NewBorder(nil, nil, nil, field.NewButton(f.page.text("Add"), add), l)
}

// unit is the unit of the figures; changing it changes how they are written, not
// how large they are.
func (f *form) unit() fyne.CanvasObject {
	p := f.page
	c := field.NewChoice(field.Units(p.say().Say), func() int { return int(p.sheet.Unit) }, func(i int) {
		p.Take()
		p.change(func(k *picked) { k.sheet.Unit = length.Unit(i) })
	})
	f.updates = append(f.updates, c.Update)
	return field.Above(p.text("Unit"), c)
}

// box is a box to tick.
func (f *form) box(label string, of func(*picked) *bool) fyne.CanvasObject {
	p := f.page
	c := field.NewCheck(p.text(label), func(on bool) {
		p.change(func(k *picked) { *of(k) = on })
	})
	f.updates = append(f.updates, func() { c.SetChecked(*of(p.now())) })
	return c
}

// wooden are the figures of a wooden box but the thickness of its sides.
func (f *form) wooden() fyne.CanvasObject {
	return f.shownWith(field.Column(
		f.choice("box.corners", message.New("sides run through"), message.New("inner front and back run through")),
		f.choice("box.bottom", message.New("in grooves, below the back"), message.New("in grooves all round"), message.New("laid on from below")),
		f.rowsWhile(wooden, boxRows...)), wooden)
}

func wooden(k *picked) bool { return k.sheet.Wooden() }
func makers(k *picked) bool { return !k.sheet.Wooden() }

// choice chooses one of the words of the row at a path, which are written in the order
// of the row.
func (f *form) choice(path string, words ...message.Message) fyne.CanvasObject {
	p := f.page
	at := func(s *model.HardwareSheet) (figure.Row, *figure.Choice) {
		row, _ := figure.Find(figure.Sheet(s), path)
		return row, row.Value.(*figure.Choice)
	}
	said := make([]string, len(words))
	for i, w := range words {
		said[i] = p.say().Say(w)
	}
	c := field.NewChoice(said, func() int {
		_, v := at(p.sheet)
		return v.Get()
	}, func(i int) {
		p.Take()
		p.change(func(k *picked) {
			_, v := at(k.sheet)
			v.Set(i)
		})
	})
	f.updates = append(f.updates, c.Update)
	row, _ := at(new(model.HardwareSheet))
	return field.Labelled(p.say().Say(row.Name), c)
}

func (f *form) notes() fyne.CanvasObject {
	f.note = newNote(f.page)
	return field.Above(f.page.text("Where from"), f.note)
}

// Fields are the fields for figures of the sheet, by their path in the file; those
// of a list of holes with their number in it.
func (p *Page) Fields() map[string]fyne.CanvasObject {
	all := map[string]fyne.CanvasObject{}
	for _, r := range p.form.all() {
		name := r.path
		if r.item >= 0 {
			name = fmt.Sprintf("%s %d", name, r.item+1)
		}
		all[name] = r.entry
	}
	return all
}
