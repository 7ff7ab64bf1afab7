package printing

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
func (p *Page) writePDF() {
	o := p.options
	p.ask.Path(p.ask.Text("Write PDF"), p.host.FileName(), ".pdf", func(path string) {
		r := p.host.Session().CommittedResult()
		p.WriteDocument(path, sheet.Make(r.Plan, r.Findings, o), p.tellOutcome)
	})
}

// errStopped ends writing when the person stops it.
var errStopped = errors.New("stopped")

// WriteDocument writes pages in the background, with a bar and a way to stop. told
// hears how that went, to tell it where it was asked for. What it returns is
// closed once everything is told.
func (p *Page) WriteDocument(path string, doc sheet.Document, told func(m message.Message, failed bool)) <-chan struct{} {
	finished := make(chan struct{})
	bar := widget.NewProgressBar()
	stop := make(chan struct{})
	done := false
	d := p.ask.Notice(p.ask.Text("Writing %v", filepath.Base(path)), p.ask.Text("Stop"), bar, nil, func() {
		if !done {
			close(stop)
		}
	})
	go func() {
		err := p.system.Write(path, doc, func(page, pages int) error {
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
			told(p.written(path, err))
			close(finished)
		})
	}()
	return finished
}

// written tells how writing went, also on the status line.
func (p *Page) written(path string, err error) (m message.Message, failed bool) {
	switch {
	case errors.Is(err, errStopped):
		m, failed = message.New("Stopped; nothing was written."), true
	case err != nil:
		p.ask.Complain(err)
		return message.Of(err), true
	default:
		m = message.New("Written: %v. Print it at actual size and measure the check bars.", filepath.Base(path))
		if p.system.Printer == nil {
			p.offerViewer(path)
		}
	}
	p.host.Tell(m)
	return m, failed
}

// offerViewer opens a PDF in the system's viewer, where there is no printing
// system that the window knows, with what must be set there.
func (p *Page) offerViewer(path string) {
	p.ask.Choose(ask.Question{
		Title: p.ask.Text("Written"), Answers: []string{p.ask.Text("Open it to print"), p.ask.Text("Close")},
		Text: p.ask.Text("%v is written. In the viewer's print dialog choose actual size (100 %%), not “fit to page”, and measure the check bars before you drill.", filepath.Base(path)),
	}, func(i int) {
		if i != 0 {
			return
		}
		abs, err := filepath.Abs(path)
		if err == nil {
			err = p.host.OpenURL(&url.URL{Scheme: "file", Path: filepath.ToSlash(abs)})
		}
		if err != nil {
			p.ask.Complain(err)
		}
	})
}
