package ui

import (
	"flag"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/desk"
	"frontlay/ui/look"
	"frontlay/ui/replay"
	"frontlay/ui/session"
)

var (
	gallery   = flag.String("gallery", "", "a folder to paint every view in every look to")
	sceneName = flag.String("scene", "", "only the scenes of the gallery whose name has this in it")
)

// appearance is one of the looks that the program has.
type appearance struct {
	name     string
	usual    bool // it is looked at in every run: the first look, and those with the widest texts
	mode     look.Mode
	large    bool
	language string
	unit     string // command of it; empty: millimetres
	scale    float32
}

var appearances = []appearance{
	{name: "light", usual: true},
	{name: "dark", mode: look.DarkMode},
	{name: "contrast", mode: look.ContrastMode},
	{name: "large", large: true},
	{name: "german", language: "de"},
	{name: "german-large", usual: true, language: "de", large: true},
	{name: "inches", unit: "inch"},
	{name: "inches-large", usual: true, unit: "inch", large: true},
	{name: "inches-decimal", unit: "inchdecimal"},
	{name: "double", scale: 2},
}

// scene is one view of the window.
type scene struct {
	name   string
	broken bool // the demo with a front that hides its drawer no more
	set    func(w *window)
}

func selected(kind drawing.SubjectKind, at model.Place) func(w *window) {
	return func(w *window) { w.session.Select(drawing.Subject{Kind: kind, Place: at}) }
}

// studied shows a study of the example that has the figures for most of them; its cabinets
// stand free for it.
func studied(command string) func(w *window) {
	return func(w *window) {
		w.session.MarkSaved() // the look may have set a unit
		w.files.Example("packing-room")
		w.Do(edit.Set{At: session.PlaceOfCabinet(0), Key: "base.stands", Value: "free"})
		shown(command)(w)
	}
}

func shown(commands ...string) func(w *window) {
	return func(w *window) {
		w.session.Select(w.face(2))
		for _, c := range commands {
			w.do(c)
		}
	}
}

// hand works the drawing with the pointer, to a moment in the middle of it.
func hand(command, at string, dx, dy float32, drag bool) func(w *window) {
	return func(w *window) {
		w.desk.Screen.Held = func() fyne.KeyModifier { return 0 }
		if command != "" {
			w.do(command)
		}
		p, b := &replay.Pointer{To: w.desk.Screen}, replay.Places(w.desk.Screen)[at]
		from := fyne.NewPos(b.X+b.Width/2, b.Y+b.Height/2)
		p.Move(from)
		if drag {
			p.Press(desktop.MouseButtonPrimary)
			p.Move(from.AddXY(dx/2, dy/2))
		}
		p.Move(from.AddXY(dx, dy))
	}
}

var scenes = []scene{
	{name: "start", set: func(w *window) { w.showStart(nil) }},
	{name: "start-found", set: func(w *window) {
		w.showStart(nil)
		w.beginning().Do(edit.SetCabinet(model.Place{}, "width", length.MM(1200)))
	}},
	{name: "locked", set: shown("lock", "through")},
	{name: "elevation", set: shown()},
	{name: "through", set: shown("through")},
	{name: "rulers", set: shown("rulers")},
	{name: "findings", broken: true, set: func(w *window) { w.desk.Findings.Choose(1) }},
	{name: "findings-list", broken: true, set: func(w *window) {
		w.do("findings")
		w.desk.Findings.Choose(1)
	}},
	{name: "refused", set: func(w *window) { w.Do(edit.SetHeight{At: w.face(1).Place, Height: -1}) }},
	{name: "no-inspector", set: shown("inspector")},
	{name: "findings-through", broken: true, set: shown("through")},
	{name: "section", set: shown("section")},
	{name: "rear", set: shown("rear")},
	{name: "drawer", set: shown("drawer")},
	{name: "several", set: func(w *window) { w.session.Select(w.face(1), w.face(2), w.face(3)) }},
	{name: "bay", set: selected(drawing.BayThing, model.Place{Front: -1})},
	{name: "partition", set: selected(drawing.PartitionThing, model.Place{Cabinet: 1})},
	{name: "division", set: selected(drawing.DivisionThing, model.Place{})},
	{name: "cabinet", set: selected(drawing.CabinetThing, session.PlaceOfCabinet(1))},
	{name: "project", set: func(w *window) { w.session.Select() }},
	{name: "typing", set: func(w *window) { w.desk.Screen.TypeSize(drawing.Subject{Kind: drawing.FrontHeight}) }},
	{name: "dragging", set: hand("", "division above 1", 0, 24, true)},
	{name: "dividing", set: hand("drawdivision", "front 1", 20, 10, false)},
	{name: "parting", set: hand("drawpartition", "front 1", 30, 0, false)},
	{name: "reordering", set: func(w *window) {
		w.session.Select(w.face(3)) // what is not selected moves the whole drawing
		hand("", "front 3", 10, 120, true)(w)
	}},
	{name: "hardware", set: shown("sheets")},
	{name: "print", set: func(w *window) { w.do("print") }},
	{name: "template", set: shown("template")},
	{name: "proposals", set: shown("propose")},
	{name: "study-opening", set: studied("opening")},
	{name: "study-spread", set: studied("spread")},
	{name: "study-tipping", set: studied("tipping")},
	{name: "keys", set: shown("keys")},
	{name: "hints", set: shown("hints")}, // they are done: it shows them again
	{name: "cautions", set: shown("cautions")},
	{name: "rules", set: shown("rules")},
	{name: "steps", broken: true, set: shown("history")},
	{name: "menu", set: func(w *window) {
		w.session.Select(w.face(2))
		w.Menu(fyne.NewPos(300, 120))
	}},
	{name: "question", broken: true, set: func(w *window) { w.quit() }},
	{name: "complaint", set: func(w *window) { w.ask.Complain(os.ErrPermission) }},
}

// dressed opens a window on the demo in a look.
func dressed(t *testing.T, a appearance) *window {
	app := test.NewTempApp(t)
	th := &look.Theme{Mode: a.mode, Large: a.large}
	app.Settings().SetTheme(th)
	desk.HintsDone(app.Preferences())
	app.Preferences().SetString(prefLanguage, a.language)
	w := open(app, th, Options{Keeper: keeper(t, &disk{}), Example: "glaze-bench", Date: func() string { return "2026-01-01" }})
	t.Cleanup(w.shut)
	w.desk.Inspector.Begin()
	w.win.Resize(small)
	if a.unit != "" {
		w.do(a.unit)
	}
	if a.scale > 0 {
		w.win.Canvas().(test.WindowlessCanvas).SetScale(a.scale)
	}
	return w
}

// Every view, in the looks with the widest texts, on a screen of 1366 × 768: no
// text is cut and none lies over another. With -gallery the views are looked at
// in all looks, and painted for people to look at.
func TestGallery(t *testing.T) {
	for _, a := range appearances {
		for _, s := range scenes {
			if !strings.Contains(a.name+"/"+s.name, *sceneName) || !a.usual && *gallery == "" {
				continue
			}
			t.Run(a.name+"/"+s.name, func(t *testing.T) {
				w := dressed(t, a)
				if s.broken {
					spoil(w)
				}
				s.set(w)
				w.Update()
				layOut(w)
				for _, fault := range faultsOfLettering(w.win.Canvas()) {
					t.Error(fault)
				}
				if *gallery != "" {
					paint(t, w, filepath.Join(*gallery, a.name+"-"+s.name+".png"))
				}
			})
		}
	}
}

func paint(t *testing.T, w *window, path string) {
	t.Helper()
	f, err := os.Create(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	if err := (&png.Encoder{CompressionLevel: png.BestSpeed}).Encode(f, w.win.Canvas().Capture()); err != nil {
		t.Fatal(err)
	}
}
