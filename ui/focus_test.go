package ui

import (
	"fmt"
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/ui/bar"
	"frontlay/ui/field"
)

// usable are the controls in an object that are not switched off.
func usable(o fyne.CanvasObject) []fyne.Focusable {
	return slices.DeleteFunc(controls(o, nil), func(f fyne.Focusable) bool {
		d, ok := f.(fyne.Disableable)
		return ok && d.Disabled()
	})
}

// drawn writes down how an object looks.
func drawn(o fyne.CanvasObject) string {
	var b strings.Builder
	var walk func(o fyne.CanvasObject)
	walk = func(o fyne.CanvasObject) {
		if !o.Visible() {
			return
		}
		fmt.Fprint(&b, reflect.TypeOf(o), o.Position(), o.Size())
		switch v := o.(type) {
		case *fynecanvas.Rectangle:
			fmt.Fprint(&b, v.FillColor, v.StrokeColor, v.StrokeWidth)
		case *fynecanvas.Line:
			fmt.Fprint(&b, v.StrokeColor, v.StrokeWidth)
		}
		for _, c := range partsOf(o) {
			walk(c)
		}
	}
	walk(o)
	return b.String()
}

// named is how a test speaks of a control.
func named(f fyne.Focusable) string {
	switch v := f.(type) {
	case *field.Button:
		return "button " + v.Text
	case *bar.Button:
		return "button " + v.Named()
	case *widget.Button:
		return "Fyne's button " + v.Text
	case *field.Check:
		return "box " + v.Text
	case *field.Mark:
		return "box " + v.Text
	case *field.Choice:
		return "choice " + v.Selected
	case *field.Entry:
		return "field " + v.Text + v.PlaceHolder
	}
	return fmt.Sprintf("%T", f)
}

// seenWhole tells that an object is not scrolled away, or only because it is
// larger than what shows it.
func seenWhole(top, o fyne.CanvasObject) bool {
	driver := fyne.CurrentApp().Driver()
	var holders []*container.Scroll
	var walk func(from fyne.CanvasObject) bool
	walk = func(from fyne.CanvasObject) bool {
		if from == o {
			return true
		}
		for _, c := range partsOf(from) {
			if c.Visible() && walk(c) {
				if s, ok := from.(*container.Scroll); ok {
					holders = append(holders, s)
				}
				return true
			}
		}
		return false
	}
	walk(top)
	y, high := driver.AbsolutePositionForObject(o).Y, o.Size().Height
	for _, s := range holders {
		from := driver.AbsolutePositionForObject(s).Y
		if y < from-1 || y+high > from+max(s.Size().Height, high)+1 {
			return false
		}
	}
	return true
}

// Tab alone reaches everything that can be used, on every page and in every
// question, once before it begins anew; what has the focus looks different from
// what has not, and is not scrolled away.
func TestTabReachesEverything(t *testing.T) {
	more := []form{
		{"desk", func(w *window) { w.session.Select() }},
		{"desk with findings", func(w *window) {
			spoil(w)
			w.do("findings")
			w.desk.Findings.Choose(1)
		}},
		{"question", func(w *window) {
			spoil(w)
			w.quit()
		}},
		{"complaint", func(w *window) { w.ask.Complain(os.ErrPermission) }},
		{"path", func(w *window) { w.ask.Path("Save as", "x", ".yaml", nil) }},
		{"sheet's name", func(w *window) { w.openSheets("main"); tapIn(w.stage.front, "Copy…") }},
		{"rules", func(w *window) { w.do("rules") }},
		{"keys", func(w *window) { w.do("keys") }},
		{"steps", func(w *window) { spoil(w); w.do("history") }},
		{"section", func(w *window) { w.session.Select(w.face(2)); w.do("section") }},
		{"template", func(w *window) { w.session.Select(w.face(2)); w.do("template") }},
	}
	for _, f := range append(forms(), more...) {
		t.Run(f.name, func(t *testing.T) {
			w, _, _ := newWindow(t, "")
			f.show(w)
			layOut(w)
			c := w.win.Canvas()
			top := c.Content()
			if over := c.Overlays().Top(); over != nil {
				top = over
			}
			all := usable(top)
			if len(all) == 0 {
				t.Fatal("nothing can be used here")
			}
			c.Unfocus()
			met := map[fyne.Focusable]int{}
			for range all {
				c.FocusNext()
				now := c.Focused()
				if now == nil {
					t.Fatal("Tab leads nowhere")
				}
				met[now]++
				o := now.(fyne.CanvasObject)
				if !seenWhole(top, o) {
					t.Errorf("%s has the focus and is scrolled away", named(now))
				}
				with := drawn(o)
				now.FocusLost()
				if drawn(o) == with {
					t.Errorf("%s looks the same with the focus", named(now))
				}
				now.FocusGained()
			}
			for _, one := range all {
				if met[one] != 1 {
					t.Errorf("%s is met %d times", named(one), met[one])
				}
				if _, plain := one.(*widget.Button); plain {
					t.Errorf("%s hardly shows its focus", named(one))
				}
			}
			c.FocusNext()
			if c.Focused() != all[0] {
				t.Errorf("after the last control Tab leads to %s", named(c.Focused()))
			}
		})
	}
}
