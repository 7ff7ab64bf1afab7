package ui

import (
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/sheet"
	"frontlay/model/message"
)

// printPage asks what to print on which paper, tells how many sheets it needs,
// and writes the PDF.
func (w *window) printPage() {
	o := sheet.Options{Date: w.options.Date, Say: w.say()}
	papers := sheet.Papers()
	var names []string
	for _, p := range papers {
		names = append(names, p.Name)
	}
	need := widget.NewLabel("")
	need.Wrapping = fyne.TextWrapWord
	count := func() {
		if len(o.Parts) == 0 {
			need.SetText(w.text("Choose what to print."))
			return
		}
		r := w.session.CommittedResult()
		need.SetText(w.text("Needs %v sheets.", len(sheet.Make(r.Plan, r.Findings, o).Pages)))
	}
	paper := widget.NewSelect(names, nil)
	parts := container.NewVBox()
	for _, part := range sheet.Parts() {
		c := widget.NewCheck(w.say().Say(part.Title()), func(on bool) {
			var kept []sheet.Part
			for _, p := range sheet.Parts() {
				was := false
				for _, q := range o.Parts {
					was = was || p == q
				}
				if p == part && on || p != part && was {
					kept = append(kept, p)
				}
			}
			o.Parts = kept
			count()
		})
		parts.Add(c)
		c.SetChecked(part != sheet.WholeTemplates)
	}
	paper.OnChanged = func(string) {
		o.Paper = papers[paper.SelectedIndex()]
		count()
	}
	paper.SetSelectedIndex(0)
	caution := widget.NewLabel(w.text("Print at actual size (100 %) and measure the check bars before you drill."))
	caution.Wrapping = fyne.TextWrapWord
	body := container.NewVBox(widget.NewLabel(w.text("Paper")), paper, widget.NewLabel(w.text("Pages")), parts, need, caution)
	d := dialog.NewCustomConfirm(w.text("Templates and drawings"), w.text("Write PDF…"), w.text("Close"), body, func(yes bool) {
		if yes && len(o.Parts) > 0 {
			w.askPDF(o)
		}
	}, w.win)
	d.Resize(fyne.NewSize(420, 420))
	d.Show()
}

// askPDF asks where the PDF goes and writes it.
func (w *window) askPDF(o sheet.Options) {
	d := dialog.NewFileSave(func(u fyne.URIWriteCloser, err error) {
		if err != nil {
			w.complain(err)
			return
		}
		if u == nil {
			return
		}
		path := u.URI().Path()
		if err := u.Close(); err != nil {
			w.complain(err)
			return
		}
		if !strings.EqualFold(filepath.Ext(path), ".pdf") {
			path += ".pdf"
		}
		w.writePDF(path, o)
	}, w.win)
	d.SetFileName(w.fileName() + ".pdf")
	d.SetFilter(storage.NewExtensionFileFilter([]string{".pdf"}))
	w.startIn(d)
	w.showDialog(d)
	d.Resize(w.dialogSize())
}

func (w *window) writePDF(path string, o sheet.Options) {
	if err := w.options.Print(path, w.session.Committed(), w.session.CommittedResult(), o); err != nil {
		w.complain(err)
		return
	}
	w.tell(message.New("Written: %v. Print it at actual size and measure the check bars.", filepath.Base(path)))
}
