package ui

import (
	"encoding/json"
	"os"
	"time"

	"fyne.io/fyne/v2"
)

// places writes where the widgets of a window are into a file, for scripts that
// work the window by its real pointer.
type places struct {
	w    *window
	last string
}

// placesEvery is how often the file is brought up to date.
const placesEvery = 150 * time.Millisecond

func newPlaces(w *window) *places {
	p := &places{w: w}
	go func() {
		for range time.Tick(placesEvery) {
			fyne.Do(p.write)
		}
	}()
	return p
}

// spot is a place of the window in its own units.
type spot struct{ X, Y, Width, Height float32 }

// write writes the file where something has moved. It is written beside and
// renamed, so that a script never reads half of it.
func (p *places) write() {
	all := map[string]spot{}
	at := func(name string, o fyne.CanvasObject) {
		pos := fyne.CurrentApp().Driver().AbsolutePositionForObject(o)
		all[name] = spot{pos.X, pos.Y, o.Size().Width, o.Size().Height}
	}
	if p.w.start.Visible() {
		p.startPage(at, all)
		return
	}
	at("screen", p.w.screen)
	at("inspector", p.w.inspector.Object)
	at("findings", p.w.findings.Object)
	for name, b := range p.w.strip.buttons {
		at("button "+name, b)
	}
	origin := all["screen"]
	for name, r := range p.w.screen.Places() {
		all[name] = spot{origin.X + r.X, origin.Y + r.Y, r.Width, r.Height}
	}
	for name, o := range p.w.inspector.Fields() {
		at("field "+name, o)
	}
	p.finish(at, all)
}

// startPage tells where the form and the picture of the start page are.
func (p *places) startPage(at func(string, fyne.CanvasObject), all map[string]spot) {
	if b := p.w.beginning; b != nil {
		at("screen", b.screen)
		for name, r := range b.screen.Places() {
			all[name] = spot{all["screen"].X + r.X, all["screen"].Y + r.Y, r.Width, r.Height}
		}
	}
	walkNamed(p.w.start, "start ", at)
	p.finish(at, all)
}

// finish adds what lies over the window and writes the file.
func (p *places) finish(at func(string, fyne.CanvasObject), all map[string]spot) {
	if top := p.w.win.Canvas().Overlays().Top(); top != nil {
		walkNamed(top, "over ", at)
	}
	data, err := json.MarshalIndent(all, "", " ")
	if err != nil || string(data) == p.last {
		return
	}
	if os.WriteFile(p.w.options.Places+".new", data, 0o600) == nil && os.Rename(p.w.options.Places+".new", p.w.options.Places) == nil {
		p.last = string(data)
	}
}
