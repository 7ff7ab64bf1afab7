package hardware

import (
	"reflect"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"frontlay/layout/drawing"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/history"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/sketch"
)

// Options are what the page needs.
type Options struct {
	// Sheet is the sheet to begin with; nil: a blank one.
	Sheet *model.HardwareSheet
	// Say gives the language of the moment. Figures are written in the sheet's
	// own unit, whatever its unit is, since that is the unit of the document they
	// are copied from.
	Say func() message.Language
	// Changed hears of every change, with the new sheet; nil: nobody asks.
	Changed func(*model.HardwareSheet)
}

// Page is a form with the figures of a hardware sheet beside a sketch of them.
// Sheets are values: each change makes a new one.
type Page struct {
	options Options
	sheet   *model.HardwareSheet
	begun   *model.HardwareSheet // what was shown first
	past    *history.History[*model.HardwareSheet]
	chosen  chosen

	form    *form
	sketch  *sketch.Sketch
	about   *row   // what the caption tells of
	stepped *row   // whose steps the last change was; nil: it was another
	hovered string // path of the figure under the pointer
	onSide  bool   // the sketch is that from the side
	views   *field.Choice
	caption *caption
	faults  *faults
	undo    *field.Button
	redo    *field.Button
	content fyne.CanvasObject
}

// steps is how many changes can be undone.
const steps = 1000

// chosen are the items of the sheet's lists that the form shows, by index.
type chosen struct{ runner, screw, drawer, more int }

// New makes the page.
func New(o Options) *Page {
	if o.Sheet == nil {
		o.Sheet = Blank(o.Say())
	}
	p := &Page{options: o, sheet: o.Sheet, begun: o.Sheet, past: history.New(o.Sheet, steps)}
	p.sketch = sketch.New(fyne.NewSize(220, 180))
	p.sketch.OnPick = p.goTo
	p.sketch.OnHover = func(f string) { p.hovered = f; p.tell() }
	p.caption, p.faults = newCaption(), newFaults(p)
	p.views = field.NewChoice([]string{p.text("Drawer from the front"), p.text("Drawer from the side")},
		func() int {
			if p.onSide {
				return 1
			}
			return 0
		},
		func(i int) { p.onSide = i == 1; p.draw() })
	p.undo = field.NewButton(p.text("Undo"), func() { p.Undo() })
	p.redo = field.NewButton(p.text("Redo"), func() { p.Redo() })
	p.form = newForm(p)
	p.build()
	p.update()
	return p
}

func (p *Page) build() {
	head := container.NewBorder(nil, nil, nil, container.NewHBox(p.undo, p.redo), p.views)
	foot := container.New(foot{}, p.caption.object, p.faults.object)
	right := container.NewBorder(container.NewPadded(head), foot, nil, nil, p.sketch)
	p.content = field.Abreast([]float32{0.43, 0.57}, field.Scrolling(p.form.scroll), right)
}

// Content is what to put into a window.
func (p *Page) Content() fyne.CanvasObject { return p.content }

// Sheet is the sheet as it has been changed.
func (p *Page) Sheet() *model.HardwareSheet { return p.sheet }

// Unsaved tells that the sheet is not the one shown first.
func (p *Page) Unsaved() bool { return !reflect.DeepEqual(p.sheet, p.begun) }

// Show shows another sheet; the steps of the last one are forgotten.
func (p *Page) Show(s *model.HardwareSheet) {
	p.sheet, p.begun, p.past = s, s, history.New(s, steps)
	p.chosen, p.about, p.stepped = chosen{}, nil, nil
	p.form.giveUp()
	p.update()
}

// Begun is the sheet without the changes.
func (p *Page) Begun() *model.HardwareSheet { return p.begun }

// Replace puts another sheet in the place of the one shown, as one change.
func (p *Page) Replace(s *model.HardwareSheet) { p.change(func(k *picked) { *k.sheet = *s.Clone() }) }

// Kept tells the page that its sheet is safe where it belongs.
func (p *Page) Kept() { p.begun = p.sheet }

// Take takes what is being typed, and puts the runners of a changed sheet in the order
// of their lengths. It is false where something typed can't be taken.
func (p *Page) Take() bool {
	good := p.form.take()
	if p.Unsaved() {
		p.change(func(k *picked) { sortLengths(k.sheet.Runner.Lengths) })
	}
	return good
}

// Problems are what keeps the sheet from being used.
func (p *Page) Problems() []*figure.Fault { return figure.SheetFaults(p.sheet) }

// Undo takes the last change back; false where there is none.
func (p *Page) Undo() bool {
	_, ok := p.past.Undo()
	return p.went(ok)
}

// Redo makes the change again that was taken back last.
func (p *Page) Redo() bool {
	_, ok := p.past.Redo()
	return p.went(ok)
}

// went shows where the history has gone to, where it has.
func (p *Page) went(ok bool) bool {
	p.stepped = nil
	if ok {
		p.sheet = p.past.Current()
		p.changed()
	}
	return ok
}

// step changes the figure of a row by a step. The steps of one row, one after the
// other, are one change.
func (p *Page) step(r *row, do func(*picked)) {
	was, going := p.sheet, p.stepped == r
	p.change(do)
	if going && p.sheet != was {
		now := p.sheet
		p.past.Undo()
		p.past.Undo()
		p.past.Do(message.New("Changed figures"), now)
	}
	p.stepped = r
}

// change changes a copy of the sheet.
func (p *Page) change(do func(*picked)) {
	p.stepped = nil
	c := p.sheet.Clone()
	do(p.pick(c))
	if reflect.DeepEqual(c, p.sheet) {
		return
	}
	p.past.Do(message.New("Changed figures"), c)
	p.sheet = c
	p.changed()
}

func (p *Page) changed() {
	p.update()
	if p.options.Changed != nil {
		p.options.Changed(p.sheet)
	}
}

// update shows the sheet as it is.
func (p *Page) update() {
	p.keepChosen()
	p.form.update()
	p.draw()
	p.faults.show(p.Problems(), doubts(p.sheet))
	_, undo := p.past.CanUndo()
	_, redo := p.past.CanRedo()
	p.undo.Able(undo)
	p.redo.Able(redo)
}

// draw shows the sketch and tells of the figure with the focus.
func (p *Page) draw() {
	o := p.sketched()
	var d *drawing.Drawing
	if p.onSide {
		d = view.HardwareSide(p.sheet, o)
	} else {
		d = view.HardwareFront(p.sheet, o)
	}
	p.sketch.Draw(d, o.Focus, p.say())
	p.tell()
}

// sketched says what the sketch shows.
func (p *Page) sketched() view.HardwareOptions {
	o := view.HardwareOptions{Drawer: p.chosen.drawer, Runner: p.chosen.runner, Screw: p.chosen.screw}
	if p.about != nil {
		o.Focus = p.about.path
	}
	return o
}

// look makes a row the one that sketch and caption are about.
func (p *Page) look(r *row) {
	p.about = r
	if side, shown := view.OnSide(p.sheet, p.sketched()); shown && side != p.onSide {
		p.onSide = side
		p.views.Update()
	}
	p.draw()
}

// tell writes what the figure under the pointer, else the one with the focus, is.
func (p *Page) tell() {
	r := p.about
	if p.hovered != "" {
		if h := p.form.rowOf(p.hovered); h != nil {
			r = h
		}
	}
	if r == nil {
		p.caption.show("", p.text("Copy each figure from the maker's documents. The field you are in is marked on the sketch, and this place tells where the figure stands in the documents."))
		return
	}
	p.caption.show(p.say().Say(r.like.Name), p.say().Say(r.like.Doc))
}

// goTo gives the focus to the field of a figure.
func (p *Page) goTo(f string) {
	if r := p.form.rowOf(f); r != nil {
		r.focus()
	}
}

// Begin goes to the first figure that is to be copied.
func (p *Page) Begin() { p.goTo("side_clearance") }

// NextGroup goes to the first figure of the next group that has one: the next table or
// block of fields. It stays where there is none.
func (p *Page) NextGroup() { p.goToGroup(1) }

// LastGroup goes to the first figure of the group before.
func (p *Page) LastGroup() { p.goToGroup(-1) }

func (p *Page) goToGroup(by int) {
	all := p.form.groups
	has := func(r *row) bool { return p.about != nil && r.path == p.about.path && r.item == p.about.item }
	at := slices.IndexFunc(all, func(of func() []*row) bool { return slices.ContainsFunc(of(), has) })
	for at += by; at >= 0 && at < len(all); at += by {
		if rows := all[at](); len(rows) > 0 {
			if _, shown := rows[0].in(p.sheet); shown {
				rows[0].focus()
				return
			}
		}
	}
}

// say is the language with the sheet's own unit.
func (p *Page) say() message.Language {
	l := p.options.Say()
	l.Unit = p.sheet.Unit
	return l
}

func (p *Page) text(s string, args ...any) string { return p.say().Say(message.New(s, args...)) }
