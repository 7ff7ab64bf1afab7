package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	fynelayout "fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"frontlay/ui/field"
	"frontlay/ui/screen"
	"frontlay/ui/tool"
)

// strip is the row of buttons over the drawing: what the hand does at the left,
// what is looked at in the middle, what leaves the program at the right.
type strip struct {
	w       *window
	object  *fyne.Container
	buttons map[string]*field.Button
}

func newStrip(w *window) *strip {
	s := &strip{w: w, buttons: map[string]*field.Button{}}
	b := func(name, label string) *field.Button {
		one := field.NewButton(w.text(label), func() { w.do(name) })
		s.buttons[name] = one
		return one
	}
	hand := []fyne.CanvasObject{
		b("point", "Point"), b("drawdivision", "Division"), b("drawpartition", "Partition"), b("drawcabinet", "Cabinet"),
		widget.NewSeparator(), b("undo", "Undo"), b("redo", "Redo"), fynelayout.NewSpacer(),
	}
	look := []fyne.CanvasObject{
		b("elevation", "Elevation"), b("section", "Section"), b("rear", "Rear face"), b("drawer", "Drawer"),
		widget.NewSeparator(), b("through", "See through"), b("fit", "Whole run"),
	}
	out := []fyne.CanvasObject{widget.NewSeparator(), b("save", "Save"), b("print", "Templates…")}
	if w.theme.Large { // one row would be wider than a small screen
		s.object = container.NewPadded(container.NewVBox(
			container.NewHBox(append(hand, out[1:]...)...), container.NewHBox(look...)))
		return s
	}
	s.object = container.NewPadded(container.NewHBox(append(hand, append(look, out...)...)...))
	return s
}

// update shows which tool is in the hand and what can be done.
func (s *strip) update() {
	hand := "point"
	switch s.w.screen.Hand().(type) {
	case tool.DrawDivision:
		hand = "drawdivision"
	case tool.DrawPartition:
		hand = "drawpartition"
	case tool.DrawCabinet:
		hand = "drawcabinet"
	}
	picture := [...]string{screen.Elevation: "elevation", screen.Section: "section", screen.RearFace: "rear", screen.DrawerPlan: "drawer"}[s.w.screen.Picture()]
	for name, b := range s.buttons {
		i := widget.MediumImportance
		if name == hand || name == picture || name == "through" && s.w.screen.SeeThrough() {
			i = widget.HighImportance
		}
		if b.Importance != i {
			b.Importance = i
			b.Refresh()
		}
		if off := !s.w.can(name); off != b.Disabled() {
			if off {
				b.Disable()
			} else {
				b.Enable()
			}
		}
	}
}
