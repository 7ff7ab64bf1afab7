package ui

import (
	"errors"
	"net/url"
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/sheet"
	"frontlay/model/message"
	"frontlay/ui/ask"
)

// writePDF asks where the PDF goes, writes it, and tells on the page how that
// went.
func (p *printing) writePDF() {
	o := p.options
	p.w.ask.Path(p.w.text("Write PDF"), p.w.work.Name(), ".pdf", func(path string) {
		r := p.w.session.CommittedResult()
		p.w.writeDocument(path, sheet.Make(r.Plan, r.Findings, o), p.tellOutcome)
	})
}

// errStopped ends writing when the person stops it.
var errStopped = errors.New("stopped")

// writeDocument writes pages in the background, with a bar and a way to stop. told
// hears how that went, to tell it where it was asked for. What it returns is
// closed once everything is told.
func (w *window) writeDocument(path string, doc sheet.Document, told func(m message.Message, failed bool)) <-chan struct{} {
	finished := make(chan struct{})
	bar := widget.NewProgressBar()
	stop := make(chan struct{})
	done := false
	d := w.ask.Notice(w.text("Writing %v", filepath.Base(path)), w.text("Stop"), bar, nil, func() {
		if !done {
			close(stop)
		}
	})
	go func() {
		err := w.options.Write(path, doc, func(page, pages int) error {
			select {
			case <-stop:
				return errStopped
			default:
			}
			fyne.Do(func() { bar.SetValue(float64(page) / float64(max(pages, 1))) })
			return nil
		})
		fyne.Do(func() {
			done = true
			d.Hide()
			told(w.written(path, err))
			close(finished)
		})
	}()
	return finished
}

// written tells how writing went, also on the status line.
func (w *window) written(path string, err error) (m message.Message, failed bool) {
	switch {
	case errors.Is(err, errStopped):
		m, failed = message.New("Stopped; nothing was written."), true
	case err != nil:
		w.ask.Complain(err)
		return message.Of(err), true
	default:
		m = message.New("Written: %v. Print it at actual size and measure the check bars.", filepath.Base(path))
		if w.options.Printer == nil {
			w.offerViewer(path)
		}
	}
	w.tell(m)
	return m, failed
}

// offerViewer opens a PDF in the system's viewer, where there is no printing
// system that the window knows, with what must be set there.
func (w *window) offerViewer(path string) {
	w.ask.Choose(ask.Question{
		Title: w.text("Written"), Answers: []string{w.text("Open it to print"), w.text("Close")},
		Text: w.text("%v is written. In the viewer's print dialog choose actual size (100 %%), not “fit to page”, and measure the check bars before you drill.", filepath.Base(path)),
	}, func(i int) {
		if i != 0 {
			return
		}
		abs, err := filepath.Abs(path)
		if err == nil {
			err = w.app.OpenURL(&url.URL{Scheme: "file", Path: filepath.ToSlash(abs)})
		}
		if err != nil {
			w.ask.Complain(err)
		}
	})
}
