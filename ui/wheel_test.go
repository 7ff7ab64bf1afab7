package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	"frontlay/ui/field"
)

// The wheel scrolls a form wherever the pointer is, also over a field, which by
// itself keeps the wheel.
func TestTheWheelScrollsOverFields(t *testing.T) {
	for name, show := range map[string]func(w *window) fyne.CanvasObject{
		"inspector": func(w *window) fyne.CanvasObject { w.session.Select(); return w.desk.Inspector.Object },
		"print":     func(w *window) fyne.CanvasObject { w.do("print"); return w.stage.front },
		"new":       func(w *window) fyne.CanvasObject { w.showStart(nil); return w.stage.front },
		"hardware":  func(w *window) fyne.CanvasObject { w.openSheets("main"); return w.stage.front },
		"rules": func(w *window) fyne.CanvasObject {
			w.do("rules")
			return w.win.Canvas().Overlays().Top()
		},
	} {
		t.Run(name, func(t *testing.T) {
			w, _, _ := newWindow(t, "")
			o := show(w)
			w.win.Resize(fyne.NewSize(1240, 360))
			w.win.Resize(fyne.NewSize(1240, 361))
			over, s := fieldIn(o, nil)
			if over == nil {
				t.Fatal("no field is scrolled here")
			}
			field.Reveal(over)
			was := s.Offset.Y
			middle := fyne.CurrentApp().Driver().AbsolutePositionForObject(over).AddXY(over.Size().Width/2, over.Size().Height/2)
			test.Scroll(w.win.Canvas(), middle, 0, -25)
			if now := s.Offset.Y; now != was+25 {
				t.Errorf("the wheel over a field takes the form from %v to %v", was, now)
			}
		})
	}
}

// fieldIn finds a field and the column that scrolls it.
func fieldIn(o fyne.CanvasObject, in *container.Scroll) (fyne.CanvasObject, *container.Scroll) {
	switch o.(type) {
	case *field.Entry, *field.Text:
		if in != nil {
			return o, in
		}
	}
	if s, ok := o.(*container.Scroll); ok {
		in = s
	}
	for _, c := range partsOf(o) {
		if c.Visible() {
			if found, s := fieldIn(c, in); found != nil {
				return found, s
			}
		}
	}
	return nil, nil
}
