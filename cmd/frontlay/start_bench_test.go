package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"
)

// emptyWindow takes the place of window.go in a build that opens an empty
// window of the same size.
const emptyWindow = `package main

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"
	"fyne.io/fyne/v2/widget"

	"frontlay/ui"
)

const hasWindow = true

func openWindow(ui.Options) {
	w := app.NewWithID("io.frontlay.empty").NewWindow("frontlay")
	w.SetContent(widget.NewLabel(""))
	w.Resize(fyne.NewSize(1240, 690))
	w.ShowAndRun()
}
`

// BenchmarkStart measures the time until the window is on the screen, with the
// demo in it, against a build of the same program that opens an empty window,
// by turns on one display.
func BenchmarkStart(b *testing.B) {
	needTools(b, "Xvfb", "openbox", "xdotool", "gcc")
	d := newDesktop(b)
	empty := filepath.Join(b.TempDir(), "empty")
	buildWindow(b, empty, emptyWindow)
	buildWindow(b, d.binary, "")
	var ours, theirs time.Duration
	b.ResetTimer()
	for range b.N {
		theirs += d.untilShown(empty)
		ours += d.untilShown(d.binary)
	}
	b.ReportMetric(ours.Seconds()*1000/float64(b.N), "ms/start")
	b.ReportMetric(theirs.Seconds()*1000/float64(b.N), "ms/empty-start")
	b.ReportMetric(ours.Seconds()/theirs.Seconds(), "times-empty")
}

// untilShown starts a program, waits for its window, and ends it.
func (d *desktop) untilShown(binary string) time.Duration {
	d.t.Helper()
	c := exec.Command(binary, "--demo")
	c.Env = append(os.Environ(), "DISPLAY="+d.display, "HOME="+d.home, "XDG_CONFIG_HOME="+filepath.Join(d.home, "config"), "FYNE_SCALE=1", "LANG=en_US.UTF-8")
	start := time.Now()
	if err := c.Start(); err != nil {
		d.t.Fatal(err)
	}
	for d.window() == "" {
		if time.Since(start) > time.Minute {
			d.t.Fatal("the window does not come")
		}
	}
	took := time.Since(start)
	_ = c.Process.Kill() // it is only shown for the measurement
	_ = c.Wait()
	for d.window() != "" {
		time.Sleep(10 * time.Millisecond)
	}
	return took
}
