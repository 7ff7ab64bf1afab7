package ui

import (
	"encoding/json"
	"os"
	"reflect"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"frontlay/ui/page/sheets"
	"frontlay/ui/page/start"
	"frontlay/ui/replay"
	"frontlay/ui/screen"
)

// places writes where the widgets of a window are into a file, for scripts that
// work the window by its real pointer.
type places struct {
	w          *window
	path, last string
}

// placesEvery is how often the file is brought up to date.
const placesEvery = 150 * time.Millisecond

// RunTold is Run for tests that work the program from outside, who build it with
// this file: the first window tells its places in a file. With no path, as for a
// test that reads no places, it is Run.
func RunTold(a fyne.App, o Options, path string) {
	w := first(a, o)
	if path != "" {
		p := &places{w: w, path: path}
		go func() {
			for range time.Tick(placesEvery) {
				fyne.Do(p.write)
			}
		}()
	}
	w.show()
	a.Run()
}

// report is what the file says.
type report struct {
	Title    string
	Status   string
	Findings []string
	Selected []int  // the numbers of the fronts that are selected
	Focused  string // the name of the place that has the focus of the keyboard
	Places   map[string]replay.Spot
}

// write writes the file where something has changed. It is written beside and
// renamed, so that a script never reads half of it.
func (p *places) write() {
	w := p.w
	status, _ := w.desk.Says()
	r := report{Title: w.win.Title(), Status: status, Findings: []string{}, Places: map[string]replay.Spot{}}
	for _, f := range w.session.Result().Findings {
		r.Findings = append(r.Findings, w.Say().Say(f.What))
	}
	for _, at := range w.session.SelectedFronts() {
		if f := w.session.Result().Plan.FrontAt(at); f != nil {
			r.Selected = append(r.Selected, f.Number)
		}
	}
	focused := w.win.Canvas().Focused()
	at := func(name string, o fyne.CanvasObject) {
		if f, ok := o.(fyne.Focusable); ok && f == focused {
			r.Focused = name
		}
		pos := fyne.CurrentApp().Driver().AbsolutePositionForObject(o)
		r.Places[name] = replay.Spot{X: pos.X, Y: pos.Y, Width: o.Size().Width, Height: o.Size().Height}
	}
	if w.stage.front.Visible() {
		replay.Named(w.stage.front, "page ", at)
		if b, ok := w.stage.page.(*start.Page); ok {
			onScreen(b.Screen, at, r.Places)
		}
		if b, ok := w.stage.page.(*sheets.Page); ok {
			for name, o := range b.Form.Fields() {
				at("figure "+name, o)
			}
		}
	} else {
		onScreen(w.desk.Screen, at, r.Places)
		at("inspector", w.desk.Inspector.Object)
		at("findings", w.desk.Findings.Object)
		replay.Named(w.desk.Inspector.Object, "card ", at)
		for c, b := range w.desk.Tools() {
			at("button "+c.Name, b)
		}
		for name, o := range w.desk.Inspector.Fields() {
			at("field "+name, o)
		}
	}
	if top := w.win.Canvas().Overlays().Top(); top != nil {
		replay.Named(top, "over ", at)
		menuItems(top, func(label string, o fyne.CanvasObject) { at("over "+label, o) })
	}
	data, err := json.MarshalIndent(r, "", " ")
	if err != nil || string(data) == p.last {
		return
	}
	if os.WriteFile(p.path+".new", data, 0o600) == nil && os.Rename(p.path+".new", p.path) == nil {
		p.last = string(data)
	}
}

// menuItems visits the items of a menu that is open. Fyne 2.7.4 has no names for what
// it puts a menu and its items into.
func menuItems(top fyne.CanvasObject, visit func(label string, o fyne.CanvasObject)) {
	in := reflect.Indirect(reflect.ValueOf(top))
	if in.Kind() != reflect.Struct || !in.FieldByName("Content").IsValid() {
		return
	}
	menu, ok := in.FieldByName("Content").Interface().(*widget.PopUpMenu)
	if !ok {
		return
	}
	for _, o := range menu.Items {
		if of := reflect.Indirect(reflect.ValueOf(o)).FieldByName("Item"); of.IsValid() {
			visit(of.Interface().(*fyne.MenuItem).Label, o)
		}
	}
}

// onScreen adds what is on a drawing.
func onScreen(s *screen.Screen, at func(string, fyne.CanvasObject), all map[string]replay.Spot) {
	at("screen", s)
	for name, r := range replay.Places(s) {
		all[name] = replay.Spot{X: all["screen"].X + r.X, Y: all["screen"].Y + r.Y, Width: r.Width, Height: r.Height}
	}
}
