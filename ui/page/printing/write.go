package printing

import (
	"context"
	"path/filepath"
	"strings"

	"frontlay/layout/sheet"
	"frontlay/model/message"
	"frontlay/ui/page/output"
)

// pdf is the extension of what is written.
const pdf = ".pdf"

// file is pages and where they go.
type file struct {
	path string
	doc  sheet.Document
}

// writePDF asks where the pages go: the drawings, and what has a file of its own
// beside them.
func (p *Page) writePDF() {
	name := p.host.FileName()
	if len(p.docs) == 1 {
		name = strings.TrimSuffix(p.docs[0].File.Name(name+pdf), pdf)
	}
	title := p.ask.Text("Write PDF")
	p.ask.Path(title, name, pdf, func(path string) { p.mayReplace(title, p.files(path), func() { p.WriteTo(path) }) })
}

// mayReplace asks of each file but the first, which was asked for, whether it may be
// replaced where it is there, then goes on.
func (p *Page) mayReplace(title string, files []file, then func()) {
	if len(files) == 1 {
		then()
		return
	}
	p.ask.MayReplace(title, files[1].path, func(string) { p.mayReplace(title, files[1:], then) })
}

// files are the pages that are shown with where they go, the first into path.
func (p *Page) files(path string) []file {
	var all []file
	for i, doc := range p.docs {
		if i > 0 {
			all = append(all, file{doc.File.Name(path), doc})
			continue
		}
		all = append(all, file{path, doc})
	}
	return all
}

// WriteTo writes the pages that are shown into a PDF, or the drawings into it and
// the others beside it, and tells on the page how that went. What it returns is
// closed once that is told.
func (p *Page) WriteTo(path string) <-chan struct{} {
	files := p.files(path)
	return p.writeFiles(files, func(m message.Message, failed bool) {
		p.outcome.Tell(m, failed)
		if failed {
			return
		}
		open := []output.Open{{Text: message.New("Open it"), Path: path}}
		if len(files) > 1 {
			open = nil
			for _, f := range files {
				open = append(open, output.Open{Text: f.doc.File.Open(), Path: f.path})
			}
		}
		p.outcome.Offer(filepath.Dir(path), open...)
	})
}

// writeFiles writes pages in the background. told hears how that went, to tell it
// where it was asked for.
func (p *Page) writeFiles(files []file, told func(m message.Message, failed bool)) <-chan struct{} {
	var names []string
	all := 0
	for _, f := range files {
		names, all = append(names, filepath.Base(f.path)), all+len(f.doc.Pages)
	}
	written := 0
	return output.Work(p.ask, p.ask.Text("Writing %v", strings.Join(names, ", ")), func(ctx context.Context, progress func(done, of int)) error {
		before := 0
		for _, f := range files {
			err := p.system.Write(f.path, f.doc, func(page, pages int) error {
				progress(before+page, all)
				return ctx.Err()
			})
			if err != nil {
				return err
			}
			written, before = written+1, before+len(f.doc.Pages)
		}
		return nil
	}, func(stopped bool, err error) {
		m, failed := message.New("Written: %v. Print at actual size and measure the check bars.", strings.Join(names, ", ")), true
		switch {
		case stopped && written > 0:
			m = message.New("Stopped; written was only %v.", names[0])
		case stopped:
			m = message.New("Stopped; nothing was written.")
		case err != nil:
			p.ask.Complain(err)
			m = message.Of(err)
		default:
			failed = false
		}
		told(m, failed)
		if err == nil || stopped {
			p.host.Tell(m)
		}
	})
}
