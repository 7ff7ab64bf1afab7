package ui

import (
	"path/filepath"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	fynelayout "fyne.io/fyne/v2/layout"
	fynetheme "fyne.io/fyne/v2/theme"

	"frontlay/model"
	"frontlay/model/length"
	"frontlay/ui/field"
	"frontlay/ui/page/help"
	"frontlay/ui/page/start"
)

// mostPictures is how many recent projects the start page shows.
const mostPictures = 4

// showStart puts the start page over the desk.
func (w *window) showStart() { w.startFrom(nil) }

// startFrom is showStart with figures of a new cabinet that are there already.
func (w *window) startFrom(figures *model.Project) {
	p := start.New(w, figures, w.doors())
	w.showOver(p, w.overPage("Drawer fronts, planned and drilled right", p.Object))
}

// Unit is that of the project that was on the desk last.
func (w *window) Unit() length.Unit {
	return length.Unit(w.app.Preferences().IntWithFallback(prefUnit, int(length.UnitMM)))
}

// Begin opens a new project.
func (w *window) Begin(p *model.Project) {
	w.keepWork(func() { w.follow(w.work.New(p), nil) })
}

// showDesk puts the drawing in front again.
func (w *window) showDesk() {
	w.opened, w.page = true, nil
	w.front.Hide()
	w.desk.Object.Show()
	w.win.Canvas().Focus(w.desk.Screen)
	if !w.app.Preferences().Bool(prefHints) { // once, at the first use
		w.app.Preferences().SetBool(prefHints, true)
		help.Hints(w.ask)
	}
}

// doors are the ways into work that is there already.
func (w *window) doors() []start.Door {
	all := []start.Door{{Heading: w.text("Open"), Label: w.text("Open a project…"), Open: func() { w.do("open") }}}
	if f, err := w.options.Keeper.Demo(); err == nil {
		all = append(all, start.Door{Heading: w.text("The demo: a pottery studio's glaze bench"), Label: w.text("Open the demo"),
			Project: f.Project, Open: func() { w.do("demo") }})
	}
	for i, path := range w.recent() {
		if i == mostPictures {
			break
		}
		d := start.Door{Label: w.text("%v can't be opened any more.", filepath.Base(path))}
		if f, err := w.options.Keeper.Look(path); err == nil {
			d = start.Door{Label: filepath.Base(path), Project: f.Project, Open: func() { w.keepWork(func() { w.openFile(path) }) }}
		}
		if i == 0 {
			d.Heading = w.text("Opened before")
		}
		all = append(all, d)
	}
	return all
}

// showOver puts a page in front of the desk.
func (w *window) showOver(p page, o fyne.CanvasObject) {
	w.page = p
	w.front.Objects = []fyne.CanvasObject{o}
	w.front.Refresh()
	w.desk.Object.Hide()
	w.front.Show()
	w.win.Canvas().Unfocus()
}

// overPage is a page with its title and the way back to the drawing.
func (w *window) overPage(title string, body fyne.CanvasObject) fyne.CanvasObject {
	text := fynecanvas.NewText(w.text(title), w.theme.Palette(w.app.Settings().ThemeVariant()).Ink)
	text.TextSize, text.TextStyle.Bold = fynetheme.Size(fynetheme.SizeNameHeadingText), true
	head := container.NewHBox(text, fynelayout.NewSpacer())
	if w.opened {
		head.Add(field.NewButton(w.text("Back to the drawing"), w.showDesk))
	}
	return container.NewBorder(container.NewPadded(head), nil, nil, nil, body)
}
