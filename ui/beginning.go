package ui

import (
	"cmp"
	"image/color"
	"slices"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"frontlay/assets"
	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
	"frontlay/ui/command"
	"frontlay/ui/field"
	"frontlay/ui/findings"
	"frontlay/ui/look"
	"frontlay/ui/screen"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// beginning is the form for a new cabinet with a picture of it, in which its
// edges can be dragged. The figures live in a session of their own until the
// person begins.
type beginning struct {
	w       *window
	session *session.Session
	screen  *screen.Screen
	rows    []*field.Row
	choices []*field.Choice
	object  fyne.CanvasObject
	told    *field.Label
	found   *field.Label // what the check finds, under the picture
}

func newBeginning(w *window) *beginning {
	b := &beginning{w: w, told: field.NewLabel(""), found: field.NewLabel("")}
	b.told.Wrapping, b.found.Wrapping = fyne.TextWrapWord, fyne.TextWrapWord
	p := newProject(nil)
	p.Unit = w.startUnit()
	p.Hardware = sampleHardware()
	if w.figures != nil {
		p = w.figures.Clone()
	}
	p.Title, p.Cabinets[0].Name = w.text("New cabinet"), w.text("Cabinet 1")
	b.session = session.New(p, layout.Solve)
	b.screen = screen.New(b.session, b.say)
	b.screen.OnTell = func(m message.Message) { b.told.SetText(b.say().Say(m)) }
	b.session.Listen(func(session.Change) {
		for _, r := range b.rows {
			r.Entry.Update()
		}
		for _, c := range b.choices {
			c.Update()
		}
		b.tellFound()
	})
	b.tellFound()
	begin := field.NewButton(w.text("Begin with this cabinet"), b.begin)
	begin.Importance = widget.HighImportance
	form := field.Column(
		field.Heading(w.text("A new cabinet")),
		b.size("Width", "width", 10),
		b.size("Height of carcass", "height", 10),
		b.size("Depth", "depth", 10),
		b.size("Plinth", "plinth", 10),
		b.size("Carcass board", "boards.carcass.thickness", 1),
		b.size("Front board", "boards.front.thickness", 1),
		b.hardware(), b.count(), b.rule(), b.unit(),
		field.Spacer(8), begin, b.told,
	)
	hint := field.NewLabel(w.text("Drag the right or the top edge to size the cabinet, drag divisions, or click a figure and type."))
	hint.Wrapping = fyne.TextWrapWord
	hint.Importance = widget.LowImportance
	room := fynecanvas.NewRectangle(color.Transparent) // so that the picture stays where it is when something is found
	room.SetMinSize(fyne.NewSize(0, 3*look.Text()+2*fynetheme.Size(fynetheme.SizeNameInnerPadding)))
	below := container.NewVBox(container.NewStack(room, b.found), hint)
	right := container.NewBorder(nil, below, nil, nil, b.screen)
	_, scrolled := field.Scrolled(form)
	split := container.NewHSplit(scrolled, right)
	split.Offset = 0.45
	b.object = split
	return b
}

// tellFound says under the picture what its marks stand for: the worst of what the
// check finds, and how much more there is.
func (b *beginning) tellFound() {
	all := b.session.Result().Findings
	if len(all) == 0 {
		b.found.Importance = widget.LowImportance
		b.found.SetText(b.w.text("Check: nothing found"))
		return
	}
	worst := slices.MinFunc(all, func(x, y check.Finding) int { return cmp.Compare(x.Severity, y.Severity) })
	sign, word, _ := findings.Sign(&worst)
	text := sign + " " + b.say().Say(word) + ": " + b.say().Say(worst.Where) + ": " + b.say().Say(worst.What) + "."
	if more := len(all) - 1; more > 0 {
		text += " " + b.say().Say(message.New("Further findings: %v.", more))
	}
	b.found.Importance = [...]widget.Importance{check.Error: widget.DangerImportance, check.Warning: widget.WarningImportance, check.Advice: widget.MediumImportance}[worst.Severity]
	b.found.SetText(text)
}

func (b *beginning) say() message.Language {
	l := b.w.say()
	l.Unit = b.session.Project().Unit
	return l
}

// size is a field for a figure of the cabinet or, with a path of boards, of the
// project; its steppers go by so many of the unit's steps.
func (b *beginning) size(label, key string, steps length.Length) fyne.CanvasObject {
	at := model.Whole
	if !strings.Contains(key, ".") {
		at = session.PlaceOfCabinet(0)
	}
	get := func() length.Length {
		row, _ := figure.Find(figure.Of(b.session.Project(), at), key)
		v, _ := row.Value.(*figure.Size).Get()
		return v
	}
	parse := func(text string) (edit.Edit, error) {
		v, err := field.ParseSize(text, b.session.Project().Unit)
		return edit.Set{At: at, Key: key, Value: v}, err
	}
	r := field.NewRow(b.w.text(label), "", field.Source{
		Figure: true,
		Get:    func() field.Value { return field.Value{Text: b.say().Figure(get())} },
		Put: func(text string) error {
			e, err := parse(text)
			if err != nil {
				return err
			}
			return b.session.Do(e)
		},
		Check: func(text string) error {
			e, err := parse(text)
			if err != nil {
				return err
			}
			return b.session.Judge(e)
		},
		Step: func(n int) error {
			by := steps * length.Length(n) * tool.Step(b.session.Project().Unit, false)
			return b.session.Do(edit.Set{At: at, Key: key, Value: get() + by})
		},
	}, func(m message.Message) string { return b.say().Say(m) })
	b.rows = append(b.rows, r)
	return r.Object
}

// do makes an edit of the form and tells where it can't be made.
func (b *beginning) do(e edit.Edit) {
	if err := b.session.Do(e); err != nil {
		b.told.SetText(b.say().Say(tool.Said(err)))
	}
}

// sampleHardware reads the sample sheets that ship.
func sampleHardware() []model.HardwareUse {
	var all []model.HardwareUse
	for _, name := range assets.SheetNames() {
		data, ok := assets.Sheet(name)
		if !ok {
			continue
		}
		if s, err := yamlfile.ReadSheet(name, data); err == nil {
			all = append(all, model.HardwareUse{Name: name, Source: name, Sheet: s})
		}
	}
	return all
}

func (b *beginning) hardware() fyne.CanvasObject {
	var names, titles []string
	for _, h := range b.session.Project().Hardware {
		names, titles = append(names, h.Name), append(titles, h.Sheet.Name)
	}
	bay := model.Place{Front: -1}
	return b.choice("Hardware sheet", titles, func() int {
		for i, n := range names {
			if h := b.session.Project().BayAt(bay).Hardware; n == h || h == "" {
				return i
			}
		}
		return -1
	}, func(i int) { b.do(edit.ChooseHardware{At: bay, Name: names[i]}) })
}

// choice is a row with a list to choose from.
func (b *beginning) choice(label string, options []string, get func() int, put func(int)) fyne.CanvasObject {
	c := field.NewChoice(options, get, put)
	b.choices = append(b.choices, c)
	return field.Labelled(b.w.text(label), c)
}

// count chooses how many drawers the stack has.
func (b *beginning) count() fyne.CanvasObject {
	var options []string
	for n := 1; n <= 8; n++ {
		options = append(options, strconv.Itoa(n))
	}
	return b.choice("Drawers", options, func() int {
		return len(b.session.Project().Cabinets[0].Bays[0].Fronts) - 1
	}, func(i int) {
		e := edit.Several{Name: message.New("%v drawers", i+1)}
		have := len(b.session.Project().Cabinets[0].Bays[0].Fronts)
		for ; have < i+1; have++ {
			e.Edits = append(e.Edits, edit.AddFront{At: model.Place{Front: have}, Front: model.Front{Share: 1, Drawer: model.DrawerAuto}})
		}
		for ; have > i+1; have-- {
			e.Edits = append(e.Edits, edit.RemoveFront{At: model.Place{Front: have - 1}})
		}
		b.do(e)
	})
}

// rule chooses how the stack is divided.
func (b *beginning) rule() fyne.CanvasObject {
	rules := []model.Division{
		{Rule: model.DivideEqual},
		{Rule: model.DivideStep, Step: 40 * length.Millimetre},
		{Rule: model.DivideRatio, Ratio: 1.25},
	}
	names := []string{b.w.text("all equal"), b.w.text("taller downwards by a step"), b.w.text("taller downwards by a factor")}
	return b.choice("Heights", names, func() int {
		for i, r := range rules {
			if r.Rule == b.session.Project().Cabinets[0].Bays[0].Division.Rule {
				return i
			}
		}
		return 0
	}, func(i int) { b.do(edit.SetDivision{At: model.Place{Front: -1}, Division: rules[i], Free: true}) })
}

func (b *beginning) unit() fyne.CanvasObject {
	return b.choice("Unit", field.Units(b.say().Say), func() int { return int(b.session.Project().Unit) },
		func(i int) { b.do(edit.SetUnit{Unit: length.Unit(i)}) })
}

// begin takes the cabinet to the desk.
func (b *beginning) begin() {
	b.take()
	p := b.session.Committed().Clone()
	used := p.Cabinets[0].Bays[0].Hardware
	var kept []model.HardwareUse
	for i, h := range p.Hardware {
		if h.Name == used || used == "" && i == 0 {
			h.Name = "main"
			kept = append(kept, h)
		}
	}
	p.Hardware, p.Cabinets[0].Bays[0].Hardware = kept, ""
	if title := strings.TrimSpace(p.Title); title == "" {
		p.Title = b.w.text("New cabinet")
	}
	b.w.keepWork(func() { b.w.follow(b.w.work.New(p), nil) })
}

// take hands on what is typed in the form, if anything.
func (b *beginning) take() {
	for _, r := range b.rows {
		r.Entry.Take()
	}
}

// Own runs a command on the new cabinet, where that is about it. Undo and zoom are
// those of the new cabinet.
func (b *beginning) Own(c *command.Command) bool {
	own := map[string]func(){
		"undo": func() { b.session.Undo() }, "redo": func() { b.session.Redo() },
		"fit": b.screen.Fit, "zoomin": func() { b.screen.Zoom(1.25) }, "zoomout": func() { b.screen.Zoom(0.8) },
		"remove": func() {}, // drawers are counted in the form
	}
	do := own[c.Name]
	if do != nil {
		do()
	}
	return do != nil
}

// Leave goes on: the new cabinet is not in a project yet.
func (b *beginning) Leave(then func()) { then() }

// SetUnit sets that of the new cabinet.
func (b *beginning) SetUnit(u length.Unit) { b.do(edit.SetUnit{Unit: u}) }
