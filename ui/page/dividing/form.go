package dividing

import (
	"slices"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/propose"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
)

// form says what is to go in, and how it is to be divided. What is typed stays on the
// page.
type form struct {
	page   *Page
	object fyne.CanvasObject

	lines   *fyne.Container // of the things
	things  []*thing
	more    *field.Button
	fronts  *field.Text
	count   *field.Mistake
	chosen  propose.Style
	by      *field.Text // step or factor
	byHow   *field.Mistake
	rows    *field.Check
	grid    *field.Text
	gridHow *field.Mistake
	sheet   int // 0: the bay's, then those of the project, then any of them
	weigh   []*field.Text
	weighs  []*field.Mistake
}

// thing is a line of the form.
type thing struct {
	name, height *field.Text
	wrong        *field.Mistake
}

func newForm(p *Page) *form {
	f := &form{page: p, lines: field.Column()}
	a := p.host.Ask()
	unit := p.host.Session().Project().Unit.Symbol()
	intro := field.NewLabel(a.Text("Each line is what one drawer is to hold, and how high it stands there. Further drawers are for nothing in particular."))
	intro.Wrapping, intro.Importance = fyne.TextWrapWord, widget.LowImportance
	f.more = field.NewButton(a.Text("One more line"), func() { f.focus(f.addThing("", "").name) })
	have := f.fromBay()
	f.fronts = f.text("3..5")
	n := len(p.host.Session().Project().BayAt(p.at).Fronts)
	f.fronts.SetText(strconv.Itoa(max(min(n, propose.MostFronts), have, 1)))
	label := a.Text("Fronts, such as 4 or 3..5")
	f.count = field.NewMistake(label, field.Labelled(label, f.fronts))
	styles := []string{a.Text("free heights"), a.Text("all equal"), a.Text("taller downwards by a step"), a.Text("taller downwards by a factor")}
	style := field.NewChoice(styles, func() int { return int(f.chosen) }, func(i int) {
		f.chosen = propose.Style(i)
		f.by.SetText("")
		f.shape()
		p.Look()
	})
	f.by = f.text(a.Text("the best"))
	byLabel := a.Text("Step or factor")
	f.byHow = field.NewMistake(byLabel, field.Labelled(byLabel, f.by))
	f.rows = field.NewCheck(a.Text("Runners on hole rows"), func(bool) { p.Look() })
	gridLabel := a.Text("Grid (%v)", unit)
	f.grid = f.text(a.Text("as fine as the project"))
	f.gridHow = field.NewMistake(gridLabel, field.Labelled(gridLabel, f.grid))
	look := field.NewButton(a.Text("Propose"), p.Look)
	look.Importance = widget.HighImportance
	rest := []fyne.CanvasObject{
		field.Heading(a.Text("What is to go in: %v", p.bayName())), intro, f.lines, f.more,
		field.Heading(a.Text("How it is divided")), f.count.Object, field.Labelled(a.Text("Heights"), style), f.byHow.Object, f.rows, f.gridHow.Object,
	}
	if s := f.sheets(); s != nil {
		rest = append(rest, s)
	}
	f.object = field.Column(append(append(rest, f.weights()...), field.Spacer(8), look)...)
	f.shape()
	return f
}

// text is a field that looks for proposals when Enter is pressed in it.
func (f *form) text(hint string) *field.Text {
	t := field.NewText(hint)
	t.OnSubmitted = func(string) { f.page.Look() }
	return t
}

// fromBay begins with what the bay's drawers are to hold, and gives how many that are.
func (f *form) fromBay() (have int) {
	p := f.page.host.Session().Project()
	say := f.page.host.Ask().Say()
	for _, front := range slices.Backward(p.BayAt(f.page.at).Fronts) {
		if front.Contents.Height > 0 && have < propose.MostThings {
			f.addThing(front.Name, say.Typed(front.Contents.Height))
			have++
		}
	}
	for len(f.things) < 3 {
		f.addThing("", "")
	}
	return have
}

// addThing adds a line.
func (f *form) addThing(name, height string) *thing {
	a := f.page.host.Ask()
	t := &thing{name: f.text(a.Text("What")), height: f.text(a.Text("Height"))}
	t.height.Figure = true
	t.name.SetText(name)
	t.height.SetText(height)
	t.wrong = field.NewMistake(a.Text("Height"), field.Abreast([]float32{0.66, 0.34}, t.name, t.height))
	f.things = append(f.things, t)
	f.lines.Add(t.wrong.Object)
	f.more.Able(len(f.things) < propose.MostThings)
	return t
}

func (f *form) focus(o fyne.Focusable) {
	if c := field.CanvasOf(f.lines); c != nil {
		c.Focus(o)
	}
}

func (f *form) style() propose.Style { return f.chosen }

// shape shows the fields that the style asks for.
func (f *form) shape() {
	by := f.chosen == propose.ByStep || f.chosen == propose.ByFactor
	for _, one := range []struct {
		o    fyne.CanvasObject
		seen bool
	}{{f.byHow.Object, by}, {f.rows, f.chosen == propose.Free}, {f.gridHow.Object, f.chosen == propose.Free}} {
		if one.seen {
			one.o.Show()
		} else {
			one.o.Hide()
		}
	}
	if f.object != nil {
		f.object.Refresh()
	}
}

// sheets chooses the hardware; nil where there is one sheet alone.
func (f *form) sheets() fyne.CanvasObject {
	a := f.page.host.Ask()
	all := f.page.host.Session().Project().Hardware
	if len(all) < 2 {
		return nil
	}
	options := []string{a.Text("that of the bay")}
	for _, h := range all {
		options = append(options, h.Name)
	}
	options = append(options, a.Text("any of the project"))
	return field.Labelled(a.Text("Hardware"), field.NewChoice(options, func() int { return f.sheet }, func(i int) {
		f.sheet = i
		f.page.Look()
	}))
}

// weights are the fields of what counts how much, below a head that folds them.
func (f *form) weights() []fyne.CanvasObject {
	a := f.page.host.Ask()
	usual := propose.UsualWeights()
	note := field.NewLabel(a.Text("In millimetres of lost height. 0 leaves it out; an empty field is the usual."))
	note.Wrapping, note.Importance = fyne.TextWrapWord, widget.LowImportance
	column := field.Column(note)
	for _, m := range propose.Measures() {
		t := f.text(a.Say().Number(usual[m].MM()))
		t.Figure = true
		label := a.Say().Say(message.New("%v: %v", m.Name(), m.Unit()))
		wrong := field.NewMistake(a.Say().Say(m.Name()), field.Labelled(label, t))
		f.weigh, f.weighs = append(f.weigh, t), append(f.weighs, wrong)
		column.Add(wrong.Object)
	}
	column.Hide()
	fold := field.NewFold(a.Text("What counts how much"), false)
	fold.OnFold = func(open bool) {
		if open {
			column.Show()
		} else {
			column.Hide()
		}
		f.object.Refresh()
	}
	return []fyne.CanvasObject{fold, column}
}

// question is what the form asks; false where something in it can't be read, which it
// then says under the field.
func (f *form) question() (propose.Question, bool) {
	q := propose.Question{At: f.page.at, Style: f.chosen, Rows: f.rows.Checked && f.chosen == propose.Free, Weights: propose.UsualWeights(), Best: shown}
	say, p := f.page.host.Ask().Say(), f.page.host.Session().Project()
	fine := true
	read := func(m *field.Mistake, err error) {
		m.Tell(say, err)
		fine = fine && err == nil
	}
	for _, t := range f.things {
		name, text := strings.TrimSpace(t.name.Text), strings.TrimSpace(t.height.Text)
		if name == "" && text == "" {
			read(t.wrong, nil)
			continue
		}
		var h length.Length
		var err error
		if text == "" {
			err = message.New("say how high it stands in its drawer, or empty the line")
		} else if h, err = field.ParseSize(text, p.Unit); err == nil && (h <= 0 || h > 2*length.Metre) {
			err = message.New("%v is not possible here: write a size from %v to %v.", h, length.Millimetre, 2*length.Metre)
		}
		read(t.wrong, err)
		q.Things = append(q.Things, propose.Thing{Name: name, Height: h})
	}
	var err error
	q.Fewest, q.Most, err = propose.ParseFronts(f.fronts.Text)
	read(f.count, err)
	err = nil
	if text := strings.TrimSpace(f.by.Text); text != "" && f.chosen == propose.ByStep {
		q.By, err = field.ParseSize(text, p.Unit)
	} else if text != "" && f.chosen == propose.ByFactor {
		q.Factor, err = propose.ParseFactor(text)
	}
	read(f.byHow, err)
	err = nil
	if text := strings.TrimSpace(f.grid.Text); text != "" {
		if q.Grid, err = field.ParseSize(text, p.Unit); err == nil && q.Grid < length.Millimetre/10 {
			err = message.New("A grid is at least %v.", length.Millimetre/10)
		}
	}
	read(f.gridHow, err)
	for i, t := range f.weigh {
		err = nil
		if text := strings.TrimSpace(t.Text); text != "" {
			q.Weights[i], err = propose.ParseWeight(text)
		}
		read(f.weighs[i], err)
	}
	switch {
	case f.sheet > len(p.Hardware):
		for _, h := range p.Hardware {
			q.Sheets = append(q.Sheets, h.Name)
		}
	case f.sheet > 0:
		q.Sheets = []string{p.Hardware[f.sheet-1].Name}
	}
	return q, fine
}
