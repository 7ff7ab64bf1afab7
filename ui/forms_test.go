package ui

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// No label, button, choice or figure of a form is cut, down to its end, in the
// looks that need the most room. With -gallery they are painted.
func TestFormsAreWhole(t *testing.T) {
	for _, a := range []appearance{
		{name: "english"},
		{name: "inches", unit: "inch"},
		{name: "inches-large", unit: "inch", large: true},
		{name: "german", language: "de"},
		{name: "german-large", language: "de", large: true},
		{name: "german-inches", language: "de", unit: "inch"},
		{name: "german-inches-large", language: "de", unit: "inch", large: true},
	} {
		w := dressed(t, a)
		_, begun := w.session.Steps()
		for _, f := range forms() {
			t.Run(a.name+"/"+f.name, func(t *testing.T) {
				w.closeOverlays()
				w.stage.showDesk()
				w.session.Go(begun)
				f.show(w)
				layOut(w)
				var told []string
				for page := range 8 {
					for _, fault := range faultsOfLettering(w.win.Canvas()) {
						if strings.Contains(fault, "container.Clip") { // the drawing's own, for which there is the gallery
							continue
						}
						if !slices.Contains(told, fault) {
							told = append(told, fault)
							t.Error(fault)
						}
					}
					if *gallery != "" {
						paint(t, w, filepath.Join(*gallery, "form-"+a.name+"-"+f.name+"-"+string(rune('a'+page))+".png"))
					}
					if !scrollOn(w.win.Canvas().Content()) {
						break
					}
				}
			})
		}
	}
}

// scrollOn scrolls every column in an object by most of its height. It is false
// where all were at their ends.
func scrollOn(o fyne.CanvasObject) bool {
	if !o.Visible() {
		return false
	}
	on := false
	switch v := o.(type) {
	case *container.Scroll:
		was := v.Offset
		v.ScrollToOffset(v.Offset.AddXY(0, 0.8*v.Size().Height))
		on = v.Offset != was
		on = scrollOn(v.Content) || on
	case *container.Split:
		on = scrollOn(v.Leading)
		on = scrollOn(v.Trailing) || on
	case *fyne.Container:
		for _, c := range v.Objects {
			on = scrollOn(c) || on
		}
	}
	return on
}
