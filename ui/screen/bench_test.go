package screen_test

import (
	"fmt"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/length"
)

// run gives a project of so many fronts, five to a cabinet.
func run(t testing.TB, fronts int) *model.Project {
	p := projecttest.Demo(t)
	one := p.Cabinets[0]
	p.Cabinets = nil
	for i := range fronts / 5 {
		c := one
		c.Name = fmt.Sprintf("Cabinet %d", i+1)
		c.Bays = []model.Bay{{}}
		for range 5 {
			c.Bays[0].Fronts = append(c.Bays[0].Fronts, model.Front{Share: 1, Drawer: model.DrawerAuto})
		}
		p.Cabinets = append(p.Cabinets, c)
	}
	return p
}

// bare is a canvas with objects that only move: copies of the objects of a
// screen, which is what a frame costs without our work.
func bare(t testing.TB, objects []fyne.CanvasObject) (fyne.Canvas, *fyne.Container) {
	c := container.NewWithoutLayout()
	for _, o := range objects {
		switch v := o.(type) {
		case *fynecanvas.Line:
			l := *v
			c.Add(&l)
		case *fynecanvas.Rectangle:
			r := *v
			c.Add(&r) // the paper too
		case *fynecanvas.Circle:
			r := *v
			c.Add(&r)
		case *fynecanvas.Raster:
			r := *v
			c.Add(&r)
		case *fynecanvas.LinearGradient:
			r := *v
			c.Add(&r)
		case *fynecanvas.Text:
			x := fynecanvas.NewText(v.Text, v.Color)
			x.TextSize, x.TextStyle = v.TextSize, v.TextStyle
			x.Move(v.Position())
			x.Resize(v.Size())
			c.Add(x)
		}
	}
	w := test.NewTempWindow(t, container.NewClip(c))
	w.Resize(fyne.NewSize(1000, 640))
	return w.Canvas(), c
}

// BenchmarkDragAgainstBareCanvas measures the time from a pointer event to the
// redrawn frame while a division is dragged in runs of fronts, and the same for
// a bare canvas that only moves as many objects, by turns in one run with
// Fyne's software renderer. It reports both and their ratio.
func BenchmarkDragAgainstBareCanvas(b *testing.B) {
	for _, fronts := range []int{20, 100} {
		b.Run(fmt.Sprintf("fronts=%d", fronts), func(b *testing.B) {
			d := newDesk(b, run(b, fronts))
			canvas := fyne.CurrentApp().Driver().CanvasForObject(d.Screen)
			from := d.centre(b, "division above 1")
			d.pointer.Move(from)
			d.pointer.Press(desktop.MouseButtonPrimary)
			d.pointer.Move(from.AddXY(0, -3))
			plain, box := bare(b, d.Objects())
			var ours, theirs time.Duration
			b.ResetTimer()
			for i := range b.N {
				dy := float32(3 + i%7)
				start := time.Now()
				d.pointer.Move(from.AddXY(0, -dy))
				canvas.Capture()
				ours += time.Since(start)
				start = time.Now()
				for _, o := range box.Objects {
					o.Move(o.Position().AddXY(0, float32(1-2*(i%2))))
				}
				plain.Capture()
				theirs += time.Since(start)
			}
			d.pointer.Release()
			b.ReportMetric(float64(len(box.Objects)), "objects")
			b.ReportMetric(ours.Seconds()*1000/float64(b.N), "ms/frame")
			b.ReportMetric(theirs.Seconds()*1000/float64(b.N), "ms/bare-frame")
			b.ReportMetric(ours.Seconds()/theirs.Seconds(), "times-bare")
		})
	}
}

// crowd is the screen of a run of fronts that shows all that it can: drawers
// behind the fronts, and rulers; so wide that names, figures and findings have
// room, or in the window of the other tests, where many have none.
func crowd(t testing.TB, fronts int, width float32) *desk {
	p := run(t, fronts)
	for i := range p.Cabinets {
		p.Cabinets[i].Width = 300 * length.Millimetre
		p.Cabinets[i].Height /= 2 // too low: its drawers don't fit under one another
	}
	d := newDesk(t, p)
	d.Resize(fyne.NewSize(width, 640))
	d.SetSeeThrough(true)
	d.SetRulers(true)
	return d
}

// BenchmarkRepaintAFront measures whether a picture of four times as many fronts
// costs four times as much: a run of 400 fronts against one of 100 that is
// painted four times, by turns in one run. It reports the times of both and
// their ratio, which is that of the cost of a front.
func BenchmarkRepaintAFront(b *testing.B) {
	for _, c := range []struct {
		name  string
		width float32
	}{{"all told", 4000}, {"in one window", 1000}} {
		b.Run(c.name, func(b *testing.B) {
			few, many := crowd(b, 100, 1000), crowd(b, 400, c.width)
			if n := len(many.session.Result().Findings); n < 400 {
				b.Fatalf("400 fronts have %d findings only", n)
			}
			var one, all time.Duration
			b.ResetTimer()
			for i := range b.N {
				dx := float32(1 - 2*(i%2))
				start := time.Now()
				for range 4 {
					few.Pan(dx, 0)
					dx = -dx
				}
				one += time.Since(start)
				start = time.Now()
				many.Pan(dx, 0)
				all += time.Since(start)
			}
			b.ReportMetric(one.Seconds()*1000/float64(b.N)/4, "ms/100-fronts")
			b.ReportMetric(all.Seconds()*1000/float64(b.N), "ms/400-fronts")
			b.ReportMetric(all.Seconds()/one.Seconds(), "times/front")
		})
	}
}
