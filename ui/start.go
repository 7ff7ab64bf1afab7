package ui

import (
	"path/filepath"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"frontlay/layout"
	"frontlay/layout/view"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
	"frontlay/ui/field"
	"frontlay/ui/page/help"
	"frontlay/ui/screen"
)

// mostPictures is how many recent projects the start page shows.
const mostPictures = 4

// showStart puts the start page over the desk: a new cabinet at the left, the
// demo and recent projects at the right.
func (w *window) showStart() {
	b := newBeginning(w)
	_, right := field.Scrolled(w.doors())
	body := container.NewHSplit(container.NewPadded(b.object), right)
	body.Offset = 0.68
	w.showOver(b, w.overPage("Drawer fronts, planned and drilled right", body))
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
func (w *window) doors() fyne.CanvasObject {
	o := []fyne.CanvasObject{field.Heading(w.text("Open"))}
	o = append(o, container.NewPadded(field.NewButton(w.text("Open a project…"), func() { w.do("open") })))
	if f, err := w.options.Keeper.Demo(); err == nil {
		o = append(o, field.Heading(w.text("The demo: a pottery studio's glaze bench")))
		o = append(o, w.door(f, w.text("Open the demo"), func() { w.do("demo") }))
	}
	recent := w.recent()
	if len(recent) > 0 {
		o = append(o, field.Heading(w.text("Opened before")))
	}
	for i, path := range recent {
		if i == mostPictures {
			break
		}
		f, err := w.options.Keeper.Look(path)
		if err != nil {
			l := field.NewLabel(w.text("%v can't be opened any more.", filepath.Base(path)))
			l.Wrapping = fyne.TextWrapWord
			o = append(o, l)
			continue
		}
		o = append(o, w.door(f, filepath.Base(path), func() { w.keepWork(func() { w.openFile(path) }) }))
	}
	return field.Column(o...)
}

// door is a picture of a project with a button to open it.
func (w *window) door(f *yamlfile.File, label string, open func()) fyne.CanvasObject {
	say := message.Language{Unit: f.Project.Unit, Comma: w.say().Comma, Catalogue: w.say().Catalogue}
	r := layout.Solve(f.Project)
	d := view.Elevation(r.Plan, view.ElevationOptions{Findings: r.Findings})
	back := fynecanvas.NewRectangle(w.theme.Palette(w.app.Settings().ThemeVariant()).Paper)
	picture := container.NewStack(back, screen.NewStill(withoutDimensions(d), say, fyne.NewSize(250, 110)))
	return container.NewPadded(container.NewVBox(picture, field.NewButton(label, open)))
}
