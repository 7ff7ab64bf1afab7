package start

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
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
	"frontlay/ui/command"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/screen"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// Page is the page to start from: a form for a new cabinet with a picture of it, in which its
// edges can be dragged. The figures live in a session of their own until the
// person begins.
type Page struct {
	Object  fyne.CanvasObject
	Session *session.Session // of the new cabinet
	Screen  *screen.Screen   // its picture

	host    Host
	title   *field.Text // of the project
	rows    []*field.Row
	choices []*field.Choice
	told    *field.Label
	found   *field.Label      // what the check finds, under the picture
	sign    *fynecanvas.Image // before it
}

// New makes the page. The form begins with the figures of a project where there is
// one; nil: with the usual ones.
func New(h Host, figures *model.Project, doors []Door) *Page {
	b := &Page{host: h, told: field.NewLabel(""), found: field.NewLabel(""), sign: &fynecanvas.Image{FillMode: fynecanvas.ImageFillContain}}
	ask := h.Ask()
	b.told.Wrapping, b.found.Wrapping = fyne.TextWrapWord, fyne.TextWrapWord
	p := Project()
	p.Unit = h.Unit()
	p.Cabinets[0].Bays[0].Hardware = p.Hardware[0].Source
	p.Hardware = sampleHardware()
	if figures != nil {
		p = figures.Clone()
	}
	if figures == nil {
		p.Title = "" // the one that the field proposes
	}
	p.Cabinets[0].Name = ask.Text("Cabinet 1")
	b.title = field.NewText(ask.Text("New cabinet"))
	b.title.SetText(p.Title)
	b.title.OnSubmitted = func(string) { field.CanvasOf(b.title).Focus(b.rows[0].Entry) }
	b.Session = session.New(p, layout.Solve)
	b.Screen = screen.New(b.Session, b.say)
	b.Screen.OnTell = func(m message.Message) { b.told.SetText(b.say().Say(m)) }
	b.Session.Listen(func(session.Change) {
		for _, r := range b.rows {
			r.SetUnit(b.Session.Project().Unit.Symbol())
			r.Entry.Update()
		}
		for _, c := range b.choices {
			c.Update()
		}
		b.tellFound()
	})
	b.tellFound()
	begin := field.NewButton(ask.Text("Begin with this cabinet"), b.Begin)
	begin.Importance = widget.HighImportance
	form := field.Column(
		field.Heading(ask.Text("A new project")),
		field.Labelled(ask.Text("Title"), b.title),
		field.Heading(ask.Text("Its first cabinet")),
		b.size("Width", "width", 10),
		b.size("Height of carcass", "height", 10),
		b.size("Depth", "depth", 10),
		b.size("Plinth", "plinth", 10),
		b.size("Carcass board", "boards.carcass.thickness", 1),
		b.size("Front board", "boards.front.thickness", 1),
		b.hardware(), b.count(), b.rule(), b.unit(),
	)
	hint := field.NewLabel(ask.Text("Drag the right or the top edge to size the cabinet, drag divisions, or click a figure and type."))
	hint.Wrapping = fyne.TextWrapWord
	hint.Importance = widget.LowImportance
	room := fynecanvas.NewRectangle(color.Transparent) // so that the picture stays where it is when something is found
	room.SetMinSize(fyne.NewSize(0, 3*look.Text()+2*fynetheme.Size(fynetheme.SizeNameInnerPadding)))
	below := container.NewVBox(container.NewStack(room, container.NewBorder(nil, nil, container.NewPadded(container.NewVBox(field.Spacer(look.Text()/4), b.sign)), nil, b.found)), hint)
	picture := container.NewBorder(nil, below, nil, nil, b.Screen)
	of, scrolled := field.Scrolled(form)
	left := container.New(&footed{of}, scrolled, container.NewPadded(field.BesideBar(field.Column(begin, b.told))))
	_, right := field.Scrolled(beside(h, doors))
	b.Object = field.Abreast([]float32{0.31, 0.37, 0.32}, left, picture, right)
	return b
}

// footed stands a foot under a form, in sight too where the form has to be scrolled.
type footed struct{ form *container.Scroll }

// Layout gives the form, which is scrolled, the height that it needs if there is room.
func (f *footed) Layout(o []fyne.CanvasObject, s fyne.Size) {
	o[1].Resize(fyne.NewSize(s.Width, o[1].MinSize().Height)) // its lines know their width then
	foot := o[1].MinSize().Height
	o[0].Resize(fyne.NewSize(s.Width, max(s.Height-foot, 0)))
	high := min(f.form.Content.MinSize().Height, max(s.Height-foot, 0))
	o[0].Resize(fyne.NewSize(s.Width, high))
	o[1].Move(fyne.NewPos(0, high))
	o[1].Resize(fyne.NewSize(s.Width, foot))
}

// MinSize is that of both.
func (f *footed) MinSize(o []fyne.CanvasObject) fyne.Size {
	form, foot := o[0].MinSize(), o[1].MinSize()
	return fyne.NewSize(max(form.Width, foot.Width), form.Height+foot.Height)
}

// tellFound says under the picture what its marks stand for: the worst of what the
// check finds, and how much more there is.
func (b *Page) tellFound() {
	all := b.Session.Result().Findings
	p := look.Current()
	b.sign.SetMinSize(fyne.NewSquareSize(look.IconSize()))
	if len(all) == 0 {
		look.SetIcon(b.sign, "good", p.Good, p.OnSign)
		b.found.Importance = widget.LowImportance
		b.found.SetText(b.host.Ask().Text("Check: nothing found"))
		return
	}
	worst := slices.MinFunc(all, func(x, y check.Finding) int { return cmp.Compare(x.Severity, y.Severity) })
	severity := view.Severity(&worst)
	_, ink := p.Severity(severity)
	look.SetIcon(b.sign, look.SeverityIcon(severity), ink, p.OnSign)
	text := b.say().Say(worst.Where) + ": " + b.say().Say(worst.What) + "."
	if more := len(all) - 1; more > 0 {
		text += " " + b.say().Say(message.New("Further findings: %v.", more))
	}
	b.found.Importance = [...]widget.Importance{check.Error: widget.DangerImportance, check.Warning: widget.WarningImportance, check.Advice: widget.MediumImportance}[worst.Severity]
	b.found.SetText(text)
}

func (b *Page) say() message.Language {
	l := b.host.Say()
	l.Unit = b.Session.Project().Unit
	return l
}

// size is a field for a figure of the cabinet or, with a path of boards, of the
// project; its steppers go by so many of the unit's steps.
func (b *Page) size(label, key string, steps length.Length) fyne.CanvasObject {
	at := model.Whole
	if !strings.Contains(key, ".") {
		at = session.PlaceOfCabinet(0)
	}
	get := func() length.Length {
		row, _ := figure.Find(figure.Of(b.Session.Project(), at), key)
		v, _ := row.Value.(*figure.Size).Get()
		return v
	}
	parse := func(text string) (edit.Edit, error) {
		v, err := field.ParseSize(text, b.Session.Project().Unit)
		return edit.Set{At: at, Key: key, Value: v}, err
	}
	r := field.NewRow(b.host.Ask().Text(label), b.Session.Project().Unit.Symbol(), field.Source{
		Figure:  true,
		Focused: b.Session.Apart,
		Get:     func() field.Value { return field.Value{Text: b.say().Figure(get())} },
		Put: func(text string) error {
			e, err := parse(text)
			if err != nil {
				return err
			}
			return b.Session.Do(e)
		},
		Check: func(text string) error {
			e, err := parse(text)
			if err != nil {
				return err
			}
			return b.Session.Judge(e)
		},
		Step: func(n int) error {
			by := steps * length.Length(n) * tool.Step(b.Session.Project().Unit, false)
			return b.Session.More(key, edit.Set{At: at, Key: key, Value: get() + by})
		},
	}, func(m message.Message) string { return b.say().Say(m) })
	r.Entry.OnSubmitted = func(string) { // once more: nothing is being typed
		if r.Entry.Dirty() {
			r.Entry.Take()
		} else {
			b.Begin()
		}
	}
	b.rows = append(b.rows, r)
	return r.Object
}

// Do makes an edit of the form and tells where it can't be made.
func (b *Page) Do(e edit.Edit) {
	if err := b.Session.Do(e); err != nil {
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

func (b *Page) hardware() fyne.CanvasObject {
	var names, titles []string
	for _, h := range b.Session.Project().Hardware {
		names, titles = append(names, h.Name), append(titles, h.Sheet.Name)
	}
	bay := model.Place{Front: -1}
	return b.choice("Hardware sheet", titles, func() int {
		return slices.Index(names, b.Session.Project().BayAt(bay).Hardware)
	}, func(i int) { b.Do(edit.ChooseHardware{At: bay, Name: names[i]}) })
}

// choice is a row with a list to choose from.
func (b *Page) choice(label string, options []string, get func() int, put func(int)) fyne.CanvasObject {
	c := field.NewChoice(options, get, put)
	b.choices = append(b.choices, c)
	return field.Labelled(b.host.Ask().Text(label), c)
}

// count chooses how many drawers the stack has.
func (b *Page) count() fyne.CanvasObject {
	var options []string
	for n := 1; n <= 8; n++ {
		options = append(options, strconv.Itoa(n))
	}
	return b.choice("Drawers", options, func() int {
		return len(b.Session.Project().Cabinets[0].Bays[0].Fronts) - 1
	}, func(i int) {
		e := edit.Several{Name: message.New("%v drawers", i+1)}
		have := len(b.Session.Project().Cabinets[0].Bays[0].Fronts)
		for ; have < i+1; have++ {
			e.Edits = append(e.Edits, edit.AddFront{At: model.Place{Front: have}, Front: model.Front{Share: 1, Drawer: model.DrawerAuto}})
		}
		for ; have > i+1; have-- {
			e.Edits = append(e.Edits, edit.RemoveFront{At: model.Place{Front: have - 1}})
		}
		b.Do(e)
	})
}

// rule chooses how the stack is divided.
func (b *Page) rule() fyne.CanvasObject {
	rules := []model.Division{
		{Rule: model.DivideEqual},
		{Rule: model.DivideStep, Step: 40 * length.Millimetre},
		{Rule: model.DivideRatio, Ratio: 1.25},
	}
	names := []string{b.host.Ask().Text("all equal"), b.host.Ask().Text("taller downwards by a step"), b.host.Ask().Text("taller downwards by a factor")}
	return b.choice("Heights", names, func() int {
		for i, r := range rules {
			if r.Rule == b.Session.Project().Cabinets[0].Bays[0].Division.Rule {
				return i
			}
		}
		return 0
	}, func(i int) { b.Do(edit.SetDivision{At: model.Place{Front: -1}, Division: rules[i], Free: true}) })
}

func (b *Page) unit() fyne.CanvasObject {
	return b.choice("Unit", field.Units(b.say().Say), func() int { return int(b.Session.Project().Unit) },
		func(i int) { b.Do(edit.SetUnit{Unit: length.Unit(i)}) })
}

// Begin takes the cabinet to the desk.
func (b *Page) Begin() {
	b.Take()
	p := b.Session.Committed().Clone()
	bay := &p.Cabinets[0].Bays[0]
	p.Hardware = slices.DeleteFunc(p.Hardware, func(h model.HardwareUse) bool { return h.Name != bay.Hardware })
	bay.Hardware = Project().Hardware[0].Name
	p.Hardware[0].Name = bay.Hardware
	if p.Title == "" {
		p.Title = b.title.PlaceHolder
	}
	b.host.Begin(p)
}

// Take hands on what is typed in the form, if anything.
func (b *Page) Take() {
	if title := strings.TrimSpace(b.title.Text); title != b.Session.Project().Title {
		b.Do(edit.Set{At: model.Whole, Key: "title", Value: title})
	}
	for _, r := range b.rows {
		r.Entry.Take()
	}
}

// Focus brings the keys to the first field.
func (b *Page) Focus() {
	if c := field.CanvasOf(b.title); c != nil {
		c.Focus(b.title)
	}
}

// Own runs a command on the new cabinet, where that is about it. Undo and zoom are
// those of the new cabinet.
func (b *Page) Own(c *command.Command) bool {
	own := map[string]func(){
		"undo": func() { b.Session.Undo() }, "redo": func() { b.Session.Redo() },
		"fit": b.Screen.Fit, "zoomin": func() { b.Screen.Zoom(1.25) }, "zoomout": func() { b.Screen.Zoom(0.8) },
		"remove": func() {}, // drawers are counted in the form
	}
	do := own[c.Name]
	if do != nil {
		do()
	}
	return do != nil
}

// Leave goes on: the new cabinet is not in a project yet.
func (b *Page) Leave(then func()) { then() }

// SetUnit sets that of the new cabinet.
func (b *Page) SetUnit(u length.Unit) { b.Do(edit.SetUnit{Unit: u}) }
