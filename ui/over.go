package ui

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	fynelayout "fyne.io/fyne/v2/layout"
	fynetheme "fyne.io/fyne/v2/theme"

	"frontlay/ui/field"
)

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
