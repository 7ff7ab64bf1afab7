package ui

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
func (w *window) known() *sheet.Printers {
	if w.options.Known == nil {
		return &sheet.Printers{}
	}
	p, err := w.options.Known.Load()
	if err != nil {
		w.ask.Complain(err)
		return &sheet.Printers{}
	}
	return p
}

// keepPrinter keeps what is known of a printer with a paper.
func (w *window) keepPrinter(k sheet.KnownPrinter) {
	p := w.known()
	p.Set(k)
	if err := w.options.Known.Save(p); err != nil {
		w.ask.Complain(err)
	}
}

// correctionRow chooses the printer whose fault of scale is undone, and whose
// margins are kept.
func (p *printing) correctionRow() fyne.CanvasObject {
	if p.w.options.Known == nil {
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
		all = p.w.known().All()
		names := []string{p.w.text("not corrected")}
		for _, k := range all {
			names = append(names, k.Correction.Printer+", "+k.Correction.Paper)
		}
		s.SetOptions(names)
		s.Update()
	}
	list()
	measure := field.NewButton(p.w.text("Measure a printer…"), func() {
		p.measurePrinter(func(k sheet.KnownPrinter) {
			list()
			for i := range all {
				if all[i].Correction.Printer == k.Correction.Printer && all[i].Correction.Paper == k.Correction.Paper {
					s.SetSelectedIndex(i + 1)
				}
			}
		})
	})
	return field.Column(field.Labelled(p.w.text("Printer"), s), container.NewPadded(measure))
}

// measurePrinter prints a calibration page and takes what the rule says.
func (p *printing) measurePrinter(then func(sheet.KnownPrinter)) {
	w, u := p.w, p.w.session.Project().Unit
	across, up := sheet.CalibrationBars(p.options)
	name := field.NewText(w.text("name of the printer"))
	a, b := field.NewText(w.say().Length(across)), field.NewText(w.say().Length(up))
	side, end := field.NewText(w.say().Length(sheet.DefaultMargins.Side)), field.NewText(w.say().Length(sheet.DefaultMargins.End))
	for _, t := range []*field.Text{a, b, side, end} {
		t.Figure = true
	}
	row := func(label string, t *field.Text) *mistake { return newMistake(label, field.Labelled(label, t)) }
	rows := []*mistake{
		row(w.text("Printer"), name), row(w.text("Bar across"), a), row(w.text("Bar up"), b),
		row(w.text("Margin at the sides"), side), row(w.text("Margin top and bottom"), end),
	}
	verdict := field.NewLabel(w.text("Print the page at actual size, measure both bars with a steel rule, and type what it says."))
	verdict.Wrapping = fyne.TextWrapWord
	var got sheet.KnownPrinter
	var keep *field.Button
	judge := func(string) {
		keep.Disable()
		var bars [2]length.Length
		for i, t := range []*field.Text{a, b} {
			var err error
			bars[i], err = barLength(t.Text, u)
			rows[1+i].tell(w, err)
		}
		room := sheet.Margins{}
		var errSide, errEnd error
		room.Side, errSide = margin(side.Text, sheet.DefaultMargins.Side, u)
		room.End, errEnd = margin(end.Text, sheet.DefaultMargins.End, u)
		rows[3].tell(w, errSide)
		rows[4].tell(w, errEnd)
		verdict.Importance = widget.MediumImportance
		switch {
		case len(mistaken(rows...)) > 0:
			verdict.SetText(w.text("Mend first: %v", strings.Join(mistaken(rows...), ", ")))
			return
		case bars[0] == 0 || bars[1] == 0:
			verdict.SetText(w.text("Print the page at actual size, measure both bars with a steel rule, and type what it says."))
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
		verdict.SetText(w.say().Say(m))
	}
	fields := []*field.Text{name, a, b, side, end}
	for _, e := range fields {
		e.OnChanged = judge
	}
	page := field.NewButton(w.text("Write the calibration page…"), func() {
		w.ask.Path(w.text("Write PDF"), w.text("calibration"), ".pdf", func(path string) {
			w.writeDocument(path, sheet.Calibration(p.options), func(m message.Message, failed bool) {
				verdict.Importance = widget.SuccessImportance
				if failed {
					verdict.Importance = widget.DangerImportance
				}
				verdict.SetText(w.say().Say(m))
			})
		})
	})
	if w.options.Write == nil {
		page.Disable()
	}
	body := field.Column(page)
	for _, r := range rows {
		body.Add(r.object)
	}
	body.Add(verdict)
	keep = w.ask.Form(ask.Form{
		Title: w.text("Measure a printer"), Width: 460, Body: body, Fields: fields, Take: w.text("Keep"), Back: w.text("Close"),
		Good: func() bool { w.keepPrinter(got); return true },
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
