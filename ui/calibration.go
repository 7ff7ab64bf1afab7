package ui

import (
	"encoding/json"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/ui/field"
)

// prefCorrections keeps the measured corrections of printers.
const prefCorrections = "printer corrections"

// corrections lists the printers that were measured.
func (w *window) corrections() []sheet.Correction {
	var all []sheet.Correction
	if json.Unmarshal([]byte(w.app.Preferences().String(prefCorrections)), &all) != nil {
		return nil // settings that can't be read count as none
	}
	return all
}

func (w *window) keepCorrection(c sheet.Correction) {
	all := []sheet.Correction{c}
	for _, one := range w.corrections() {
		if one.Printer != c.Printer || one.Paper != c.Paper {
			all = append(all, one)
		}
	}
	if data, err := json.Marshal(all); err == nil {
		w.app.Preferences().SetString(prefCorrections, string(data))
	}
}

// correctionRow chooses the printer whose fault of scale is undone.
func (p *printing) correctionRow() fyne.CanvasObject {
	names := func() []string {
		all := []string{p.w.text("not corrected")}
		for _, c := range p.w.corrections() {
			all = append(all, c.Printer+", "+c.Paper)
		}
		return all
	}
	s := widget.NewSelect(names(), nil)
	s.SetSelectedIndex(0)
	s.OnChanged = func(string) {
		p.options.Correction = sheet.Correction{}
		if i := s.SelectedIndex() - 1; i >= 0 && i < len(p.w.corrections()) {
			p.options.Correction = p.w.corrections()[i]
		}
		p.make()
	}
	measure := widget.NewButton(p.w.text("Measure a printer…"), func() {
		p.measurePrinter(func() {
			s.Options = names()
			s.SetSelectedIndex(1)
		})
	})
	return field.Column(field.Labelled(p.w.text("Printer"), s), container.NewPadded(measure))
}

// measurePrinter prints a calibration page and takes what the rule says.
func (p *printing) measurePrinter(then func()) {
	w, u := p.w, p.w.session.Project().Unit
	across, up := sheet.CalibrationBars(p.options)
	name := widget.NewEntry()
	name.SetPlaceHolder(w.text("name of the printer"))
	a, b := widget.NewEntry(), widget.NewEntry()
	a.SetPlaceHolder(w.say().Length(across))
	b.SetPlaceHolder(w.say().Length(up))
	verdict := widget.NewLabel(w.text("Print the page at actual size, measure both bars with a steel rule, and type what it says."))
	verdict.Wrapping = fyne.TextWrapWord
	var got sheet.Correction
	usable := false
	var d *dialog.CustomDialog
	keep := widget.NewButton(w.text("Keep"), func() {
		w.keepCorrection(got)
		d.Hide()
		then()
	})
	keep.Importance = widget.HighImportance
	keep.Disable()
	judge := func(string) {
		va, errA := length.Parse(a.Text, u)
		vb, errB := length.Parse(b.Text, u)
		usable = false
		if errA == nil && errB == nil {
			c, v, m := sheet.Measured(name.Text, p.options.Paper.Name, across, up, va, vb)
			got, usable = c, v != sheet.Refuse && name.Text != ""
			verdict.SetText(w.say().Say(m))
		}
		if usable {
			keep.Enable()
		} else {
			keep.Disable()
		}
	}
	name.OnChanged, a.OnChanged, b.OnChanged = judge, judge, judge
	page := widget.NewButton(w.text("Write the calibration page…"), func() {
		w.askPath(w.text("Write PDF"), w.text("calibration"), ".pdf", func(path string) { w.writeDocument(path, sheet.Calibration(p.options)) })
	})
	if w.options.Write == nil {
		page.Disable()
	}
	body := field.Column(page, field.Labelled(w.text("Printer"), name),
		field.Labelled(w.text("Bar across"), a), field.Labelled(w.text("Bar up"), b), verdict)
	d = dialog.NewCustomWithoutButtons(w.text("Measure a printer"), container.New(minWidth{440}, body), w.win)
	d.SetButtons([]fyne.CanvasObject{widget.NewButton(w.text("Close"), func() { d.Hide() }), keep})
	w.showDialog(d)
}

// minWidth makes an object at least so wide.
type minWidth struct{ width float32 }

func (m minWidth) Layout(o []fyne.CanvasObject, s fyne.Size) {
	for _, c := range o {
		c.Resize(s)
	}
}

func (m minWidth) MinSize(o []fyne.CanvasObject) fyne.Size {
	s := fyne.NewSize(m.width, 0)
	for _, c := range o {
		s = s.Max(fyne.NewSize(0, c.MinSize().Height))
	}
	return s
}
