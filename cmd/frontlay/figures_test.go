package main

import (
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"
)

// In the real window, whose order of events the test driver does not have, a click
// into a figure and a double click select all of it, in a field and in the drawing;
// digits after a click on a figure that can't be typed change nothing.
func TestFiguresAreTypedWhole(t *testing.T) {
	needTools(t, "Xvfb", "openbox", "xdotool", "import", "gcc")
	d := newDesktop(t)
	path := filepath.Join(d.home, "bench.yaml")
	data, err := os.ReadFile("../../testdata/projects/one-cabinet.yaml")
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, data, 0o600); err != nil {
		t.Fatal(err)
	}
	d.start(path)
	d.until("the desk is there", func(r report) bool { return r.has("front 1") })
	d.click("front 1")
	d.until("the inspector shows the front", func(r report) bool { return r.has("field Height") })
	// Heights at which nothing is found: cards of findings would push the fields away.
	saved := func(height int) {
		t.Helper()
		d.key("Return")
		d.until("the figure is taken", func(r report) bool { return strings.Contains(r.Title, "not saved") })
		d.key("ctrl+s")
		d.until("it is saved", func(r report) bool { return !strings.Contains(r.Title, "not saved") })
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		if !strings.Contains(string(data), "height: "+strconv.Itoa(height)) {
			d.shoot("failed")
			t.Errorf("the file has no height of %d:\n%s", height, data)
		}
	}
	d.click("field Height")
	d.write("301")
	saved(301)
	d.doubleClick("field Least cover")
	d.doubleClick("field Height")
	d.shoot("a figure double-clicked")
	d.write("302")
	saved(302)
	d.doubleClick("height of 1")
	d.shoot("a figure of the drawing double-clicked")
	d.write("303")
	saved(303)
}

// doubleClick clicks twice at once.
func (d *desktop) doubleClick(name string) {
	d.t.Helper()
	x, y := d.centre(name)
	d.point(x-3, y)
	d.point(x, y)
	d.x("click", "--repeat", "2", "--delay", "60", "1")
	time.Sleep(700 * time.Millisecond)
}
