package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/command"
	"frontlay/ui/field"
	"frontlay/ui/page/sheets"
)

// What the tests of the window do in its rooms, in short.

func (w *window) do(name string) { w.stage.do(name) }

func (w *window) run(c *command.Command) { w.stage.run(c) }

func (w *window) typedKey(e *fyne.KeyEvent) { w.stage.typedKey(e) }

func (w *window) say() message.Language { return w.Say() }

func (w *window) text(s string, args ...any) string { return w.ask.Text(s, args...) }

func (w *window) speak(code string) { w.group.speak(code, w.ask) }

func (w *window) another() *window { return w.group.another(w.options) }

// sheets is the page of hardware sheets; nil while it is not shown.
func (w *window) sheets() *sheets.Page {
	h, _ := w.stage.page.(*sheets.Page)
	return h
}

// openSheets shows the page of hardware sheets on one of them.
func (w *window) openSheets(name string) { w.showSheets(sheets.New(w, w.options.Keeper, name)) }

// setback changes a figure of the sheet that is shown.
func (w *window) setback(to length.Length) {
	s := w.sheets().Form.Sheet().Clone()
	s.Runner.Setback = to
	w.sheets().Form.Replace(s)
}

// tapIn presses a button in an object.
func tapIn(o fyne.CanvasObject, text string) {
	for _, one := range test.LaidOutObjects(o) {
		if b, ok := one.(*field.Button); ok && b.Text == text {
			test.Tap(b)
			return
		}
	}
	panic("nothing says " + text)
}

// partsOf gives the objects that one is made of.
func partsOf(o fyne.CanvasObject) []fyne.CanvasObject {
	switch v := o.(type) {
	case *fyne.Container:
		return v.Objects
	case fyne.Widget:
		return test.WidgetRenderer(v).Objects()
	}
	return nil
}
