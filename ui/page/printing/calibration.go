package printing

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/ask"
	"frontlay/ui/field"
)

// KnownPrinters keeps what is known of the user's printers.
type KnownPrinters interface {
	Load() (*sheet.Printers, error)
	Save(*sheet.Printers) error
}

// known lists what is known of printers; what can't be read is told.
func (p *Page) known() *sheet.Printers {
	if p.system.Known == nil {
		return &sheet.Printers{}
	}
	all, err := p.system.Known.Load()
	if err != nil {
		p.ask.Complain(err)
		return &sheet.Printers{}
	}
	return all
}

// keepPrinter keeps what is known of a printer with a paper.
func (p *Page) keepPrinter(k sheet.KnownPrinter) {
	all := p.known()
	all.Set(k)
	if err := p.system.Known.Save(all); err != nil {
		p.ask.Complain(err)
	}
}

// correctionRow chooses the printer whose fault of scale is undone, and whose
// margins are kept.
func (p *Page) correctionRow() fyne.CanvasObject {
	if p.system.Known == nil {
		return field.Column()
	}
	var all []sheet.KnownPrinter
	at := 0 // which is chosen; 0: none
	s := field.NewChoice(nil, func() int { return at }, func(i int) {
		at = i
		p.options.Correction, p.options.Margins = sheet.Correction{}, sheet.Margins{}
		if i := at - 1; i >= 0 && i < len(all) {
			p.options.Correction, p.options.Margins = all[i].Correction, all[i].Margins
		}
		p.make()
	})
	list := func() {
		all = p.known().All()
		names := []string{p.ask.Text("Not corrected")}
		for _, k := range all {
			names = append(names, k.Correction.Printer+", "+k.Correction.Paper)
		}
		s.SetOptions(names)
		s.Update()
	}
	list()
	measure := field.NewButton(p.ask.Text("Measure a printer…"), func() {
		p.Measure(func(k sheet.KnownPrinter) {
			list()
			for i := range all {
				if all[i].Correction.Printer == k.Correction.Printer && all[i].Correction.Paper == k.Correction.Paper {
					s.SetSelectedIndex(i + 1)
				}
			}
		})
	})
	return field.Column(field.Labelled(p.ask.Text("Printer"), s), container.NewPadded(measure))
}

// Measure prints a calibration page and takes what the rule says.
func (p *Page) Measure(then func(sheet.KnownPrinter)) {
	u := p.host.Session().Project().Unit
	across, up := sheet.CalibrationBars(p.options)
	name := field.NewText(p.ask.Text("Name of the printer"))
	a, b := field.NewText(p.ask.Say().Length(across)), field.NewText(p.ask.Say().Length(up))
	side, end := field.NewText(p.ask.Say().Length(sheet.DefaultMargins.Side)), field.NewText(p.ask.Say().Length(sheet.DefaultMargins.End))
	for _, t := range []*field.Text{a, b, side, end} {
		t.Figure = true
	}
	row := func(label string, t *field.Text) *field.Mistake {
		return field.NewMistake(label, field.Labelled(label, t))
	}
	rows := []*field.Mistake{
		row(p.ask.Text("Printer"), name), row(p.ask.Text("Bar across"), a), row(p.ask.Text("Bar up"), b),
		row(p.ask.Text("Margin at the sides"), side), row(p.ask.Text("Margin top and bottom"), end),
	}
	verdict := field.NewLabel(p.ask.Text("Print the page at actual size, measure both bars with a steel rule, and type what it says."))
	verdict.Wrapping = fyne.TextWrapWord
	var got sheet.KnownPrinter
	var keep *field.Button
	judge := func(string) {
		keep.Disable()
		var bars [2]length.Length
		for i, t := range []*field.Text{a, b} {
			var err error
			bars[i], err = barLength(t.Text, u)
			rows[1+i].Tell(p.ask.Say(), err)
		}
		room := sheet.Margins{}
		var errSide, errEnd error
		room.Side, errSide = margin(side.Text, sheet.DefaultMargins.Side, u)
		room.End, errEnd = margin(end.Text, sheet.DefaultMargins.End, u)
		rows[3].Tell(p.ask.Say(), errSide)
		rows[4].Tell(p.ask.Say(), errEnd)
		verdict.Importance = widget.MediumImportance
		switch {
		case len(field.Mistaken(rows...)) > 0:
			verdict.SetText(p.ask.Text("Mend first: %v", strings.Join(field.Mistaken(rows...), ", ")))
			return
		case bars[0] == 0 || bars[1] == 0:
			verdict.SetText(p.ask.Text("Print the page at actual size, measure both bars with a steel rule, and type what it says."))
			return
		}
		paper := p.options.Paper
		if paper.Name == "" {
			paper = sheet.Papers()[0]
		}
		c, v, m := sheet.Measured(strings.TrimSpace(name.Text), paper.Name, across, up, bars[0], bars[1])
		got = sheet.KnownPrinter{Correction: c, Margins: room}
		switch {
		case v == sheet.Refuse:
			verdict.Importance = widget.DangerImportance
		case c.Printer == "":
			m = message.New("%v To keep this, write the printer’s name.", m)
		default:
			keep.Enable()
		}
		verdict.SetText(p.ask.Say().Say(m))
	}
	fields := []*field.Text{name, a, b, side, end}
	for _, e := range fields {
		e.OnChanged = judge
	}
	page := field.NewButton(p.ask.Text("Write the calibration page…"), func() {
		p.ask.Path(p.ask.Text("Write PDF"), p.ask.Text("calibration"), ".pdf", func(path string) {
			p.writeFiles([]file{{path, sheet.Calibration(p.options)}}, func(m message.Message, failed bool) {
				verdict.Importance = widget.SuccessImportance
				if failed {
					verdict.Importance = widget.DangerImportance
				}
				verdict.SetText(p.ask.Say().Say(m))
			})
		})
	})
	if p.system.Write == nil {
		page.Disable()
	}
	body := field.Column(page)
	for _, r := range rows {
		body.Add(r.Object)
	}
	body.Add(verdict)
	keep = p.ask.Form(ask.Form{
		Title: p.ask.Text("Measure a printer"), Width: 460, Body: body, Fields: fields, Take: p.ask.Text("Keep this correction"), Back: p.ask.Text("Close"),
		Good: func() bool { p.keepPrinter(got); return true },
		Then: func() { then(got) },
	})
	keep.Disable()
}

// barLength reads what a rule said of a bar; 0 where nothing is typed yet.
func barLength(text string, u length.Unit) (length.Length, error) {
	if strings.TrimSpace(text) == "" {
		return 0, nil
	}
	v, err := field.ParseSize(text, u)
	if err == nil && v <= 0 {
		err = message.New("The lengths read from the rule must be above zero.")
	}
	return v, err
}

// margin reads a typed margin; an empty one is the usual.
func margin(text string, usual length.Length, u length.Unit) (length.Length, error) {
	if strings.TrimSpace(text) == "" {
		return usual, nil
	}
	v, err := field.ParseSize(text, u)
	if err == nil && (v < sheet.LeastMargin || v > sheet.GreatestMargin) {
		err = message.New("A margin of %v is not possible: write one from %v to %v.", v, sheet.LeastMargin, sheet.GreatestMargin)
	}
	return v, err
}
