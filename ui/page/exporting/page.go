// Package exporting is the page for files that machines and other programs read:
// their formats are ticked, and every file is named before it is written.
package exporting

import (
	"context"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/export"
	"frontlay/model/message"
	"frontlay/ui/ask"
	"frontlay/ui/field"
	"frontlay/ui/page/output"
	"frontlay/ui/session"
)

// Host is what the page needs of the window around it.
type Host interface {
	output.Host
	Session() *session.Session
	// FileName is what files of the project are called, without an extension.
	FileName() string
}

// Write writes files into a folder, which it makes where there is none. It is
// called in the background, tells how far it is, and ends where the context does.
type Write func(ctx context.Context, folder string, files []export.File, progress func(done, of int)) error

// Page is the page.
type Page struct {
	Object fyne.CanvasObject

	host    Host
	into    Write
	choices output.Choices
	made    map[export.Kind][]export.File // of the kinds that were asked for
	boxes   map[export.Kind]*field.Check
	folder  *field.Text
	pixels  *field.Text // of the picture
	wrong   *field.Mistake
	date    func() string
	outcome *output.Outcome
	list    *fyne.Container
	write   *field.Button
}

// prefPixels keeps how large pictures are made.
const prefPixels = "pixels of pictures"

// New makes the page. It begins with what was chosen for the project last, else
// with DXF files and lists beside the project. date gives the date and time as they
// are to be written on a picture; nil: none.
func New(h Host, write Write, date func() string) *Page {
	a := h.Ask()
	p := &Page{host: h, into: write, date: date, choices: output.Choices{Host: h, Page: "export"}, made: map[export.Kind][]export.File{},
		boxes: map[export.Kind]*field.Check{}, folder: field.NewText(a.Text("Folder")), outcome: output.New(h), list: field.Column()}
	folder, chosen := p.proposed(), []string{string(export.DXF), string(export.CSV)}
	if last, ok := p.choices.Last(); ok {
		folder, chosen = last[0], last[1:]
	}
	formats := field.Column()
	for _, k := range export.Kinds() {
		c := field.NewCheck(a.Say().Say(k.Title()), nil)
		c.SetChecked(slices.Contains(chosen, string(k)))
		c.OnChanged = func(bool) { p.make() }
		p.boxes[k] = c
		formats.Add(c)
	}
	p.folder.SetText(folder)
	p.folder.OnChanged = func(string) { p.make() }
	choose := field.NewButton(a.Text("Choose a folder…"), func() {
		a.Folder(func(dir string) { p.folder.SetText(filepath.Join(dir, p.name())) })
	})
	p.write = field.NewButton(a.Text("Write the files"), func() { p.writeFiles() })
	p.write.Importance = widget.HighImportance
	form := field.Column(field.Heading(a.Text("Formats")), formats, p.pixelsRow(),
		field.Heading(a.Text("Folder")), container.NewPadded(p.folder), container.NewPadded(choose))
	p.Object = output.Halves(form, p.outcome, []fyne.CanvasObject{p.write}, field.NewView(container.NewPadded(p.list)))
	p.make()
	return p
}

// pixelsRow is how many pixels the longer edge of the picture has.
func (p *Page) pixelsRow() fyne.CanvasObject {
	a := p.host.Ask()
	p.pixels = field.NewText(strconv.Itoa(export.DefaultPixels))
	p.pixels.Figure = true
	label := a.Text("Pixels of the picture")
	p.wrong = field.NewMistake(label, field.Labelled(label, p.pixels))
	p.pixels.SetText(p.host.Preferences().String(prefPixels))
	p.pixels.OnChanged = func(s string) {
		p.made[export.Picture] = nil
		_, err := export.ParsePixels(s)
		p.wrong.Tell(a.Say(), err)
		if err == nil {
			p.host.Preferences().SetString(prefPixels, s)
		}
		p.make()
	}
	return p.wrong.Object
}

// name is that of the folder for the files, which do not mix with others there.
func (p *Page) name() string { return p.host.FileName() + "-files" }

func (p *Page) proposed() string {
	at := p.host.Ask().Begin()
	if home, err := os.UserHomeDir(); at == "" && err == nil {
		at = home
	}
	return filepath.Join(at, p.name())
}

// path is the folder that is named; empty: none is.
func (p *Page) path() string { return ask.FromHome(strings.TrimSpace(p.folder.Text)) }

// files are those of the formats that are ticked.
func (p *Page) files() (all []export.File, err error) {
	r := p.host.Session().CommittedResult()
	o := export.Options{Say: p.host.Ask().Say()}
	if o.Pixels, err = export.ParsePixels(p.pixels.Text); err != nil {
		o.Pixels, err = 0, nil // told under its field; nothing is written meanwhile
	}
	if p.date != nil {
		o.Date = p.date()
	}
	for _, k := range p.ticked() {
		if p.made[k] == nil {
			o.Kinds = []export.Kind{k}
			if p.made[k], err = export.Files(r.Plan, r.Findings, o); err != nil {
				return nil, err
			}
		}
		all = append(all, p.made[k]...)
	}
	return all, nil
}

func (p *Page) ticked() (all []export.Kind) {
	for _, k := range export.Kinds() {
		if p.boxes[k].Checked {
			all = append(all, k)
		}
	}
	return all
}

// make lists what will be written.
func (p *Page) make() {
	a, into := p.host.Ask(), p.path()
	files, err := p.files()
	p.list.Objects = nil
	for _, k := range p.ticked() {
		listed := ""
		for _, f := range p.made[k] {
			listed += f.Name + "\n"
		}
		p.list.Add(field.Heading(a.Text("%v: %v", strings.ToUpper(string(k)), len(p.made[k]))))
		p.list.Add(field.NewLabel(strings.TrimSpace(listed)))
	}
	p.list.Refresh()
	wrong := field.Mistaken(p.wrong)
	switch {
	case len(wrong) > 0:
		p.outcome.Need.SetText(a.Text("Mend first: %v", strings.Join(wrong, ", ")))
	case err != nil:
		p.outcome.Need.SetText(a.Say().Say(message.Of(err)))
	case len(files) == 0:
		p.outcome.Need.SetText(a.Text("Tick a format."))
	case into == "":
		p.outcome.Need.SetText(a.Text("Name a folder."))
	default:
		p.outcome.Need.SetText(a.Text("Files: %v", len(files)))
	}
	p.write.Able(err == nil && len(wrong) == 0 && len(files) > 0 && into != "" && p.into != nil)
	before := a.Text("Check each file against the project before a machine cuts or drills by it: what reads it may scale or mirror it.")
	if n := there(into, files); n > 0 {
		before = a.Text("Files that are there already and will be replaced: %v.", n) + " " + before
	}
	p.outcome.Before(before)
}

// there counts the files that a folder has already.
func there(folder string, files []export.File) (n int) {
	for _, f := range files {
		if _, err := os.Stat(filepath.Join(folder, f.Name)); err == nil {
			n++
		}
	}
	return n
}

// writeFiles writes them. What it returns is closed once that is told.
func (p *Page) writeFiles() <-chan struct{} {
	files, _ := p.files() // with an error the button is off
	folder := p.path()
	chosen := []string{folder}
	for _, k := range p.ticked() {
		chosen = append(chosen, string(k))
	}
	p.choices.Keep(chosen...)
	return output.Work(p.host.Ask(), p.host.Ask().Text("Writing %v", filepath.Base(folder)), func(ctx context.Context, progress func(done, of int)) error {
		return p.into(ctx, folder, files, progress)
	}, func(stopped bool, err error) {
		switch {
		case stopped:
			p.outcome.Tell(message.New("Stopped; some files are written, others are not."), true)
		case err != nil:
			p.outcome.Tell(message.Of(err), true)
			p.host.Ask().Complain(err)
		default:
			m := message.New("Files written into %v: %v", folder, len(files))
			p.outcome.Tell(m, false)
			p.outcome.Offer(folder)
			p.host.Tell(m)
		}
	})
}
