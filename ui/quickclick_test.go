package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/field"
	"frontlay/ui/session"
)

// slow is an app that paints when it is told to. As the desktop's it knows of no
// object on which canvas it is before that is painted.
type slow struct {
	fyne.App
	driver *slowDriver
}

func (s slow) Driver() fyne.Driver { return s.driver }

type slowDriver struct {
	fyne.Driver
	painted map[fyne.CanvasObject]fyne.Canvas
}

func (d *slowDriver) CanvasForObject(o fyne.CanvasObject) fyne.Canvas { return d.painted[o] }

func (d *slowDriver) AbsolutePositionForObject(o fyne.CanvasObject) fyne.Position {
	if d.painted[o] == nil {
		return fyne.Position{}
	}
	return d.Driver.AbsolutePositionForObject(o)
}

func (d *slowDriver) paint(c fyne.Canvas) {
	d.painted = map[fyne.CanvasObject]fyne.Canvas{}
	for _, o := range append(test.LaidOutObjects(c.Content()), c.Overlays().List()...) {
		d.painted[o] = c
	}
}

// Another front is selected, or another finding chosen, and at once, before
// anything is painted, every control of the panels is clicked. The panels keep
// their widgets: the menu of a field opens.
func TestAQuickClickFindsItsField(t *testing.T) {
	w, _, _ := newWindow(t, "")
	layOut(w)
	c := w.win.Canvas()
	app := fyne.CurrentApp()
	d := &slowDriver{Driver: app.Driver()}
	fyne.SetCurrentApp(slow{app, d})
	defer fyne.SetCurrentApp(app)
	front := func(i int) func() {
		return func() { w.session.Select(session.Front(model.Place{Front: i})) }
	}
	down := -60 * length.Millimetre
	deep := func(i int) { w.Do(edit.Set{At: model.Place{Front: i}, Key: "drop", Value: down}) }
	for _, one := range []struct {
		name        string
		first, next func()
		in          fyne.CanvasObject
	}{
		{"another front", front(1), front(2), w.desk.Inspector.Object},
		{"another cabinet", func() { w.session.Select(session.Cabinet(session.PlaceOfCabinet(0))) },
			func() { w.session.Select(session.Cabinet(session.PlaceOfCabinet(1))) }, w.desk.Inspector.Object},
		{"another finding", func() { deep(0); deep(1); w.do("findings"); w.do("nextfinding") }, func() { w.do("nextfinding") }, w.desk.Findings.Object},
		{"another project", func() { w.session.Select() }, func() { w.files.Example("glaze-bench") }, w.desk.Inspector.Object},
	} {
		t.Run(one.name, func(t *testing.T) {
			one.first()
			d.paint(c)
			fields := 0
			one.next()
			for _, f := range usable(one.in) {
				if r, ok := f.(fyne.SecondaryTappable); ok {
					r.TappedSecondary(&fyne.PointEvent{})
					fields++
					if c.Overlays().Top() == nil {
						t.Errorf("no menu opens at %s", named(f))
					}
				}
				if choice, ok := f.(*field.Choice); ok {
					choice.Tapped(&fyne.PointEvent{})
				}
				for top := c.Overlays().Top(); top != nil; top = c.Overlays().Top() {
					c.Overlays().Remove(top)
				}
			}
			if fields == 0 {
				t.Error("there is no field to click")
			}
		})
	}
}
