package main

import (
	"bufio"
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"
)

// desktop is a display of its own with a window manager and the program on it.
type desktop struct {
	t       testing.TB
	binary  string
	home    string
	display string
	shots   string
	shot    int
	program *exec.Cmd
}

// TestAWholeJobThroughTheWindow does a person's whole job through the real
// window: a new project, drawing, typing sizes, breaking the cover, seeing it,
// applying the fix, saving, opening it again, and printing. It leaves a
// screenshot of each step in the folder named by FRONTLAY_SHOTS.
func TestAWholeJobThroughTheWindow(t *testing.T) {
	needTools(t, "Xvfb", "openbox", "xdotool", "import", "mutool", "gcc")
	d := newDesktop(t)
	d.start()
	d.shoot("start page")

	// A new project with a title: a wider cabinet.
	d.click("page entry New cabinet")
	d.write("Workshop chest")
	d.click("page field 1")
	d.key("ctrl+a")
	d.write("900")
	d.key("Tab")
	d.until("the picture shows the width", func(r report) bool { return r.wider("cabinet 1", 1.0) })
	d.click("page Begin with this cabinet")
	d.until("the desk is there", func(r report) bool { return r.has("button drawdivision") })
	d.shoot("begun")

	// Draw a division, type a height, drag a division.
	d.click("button drawdivision")
	d.click("front 1")
	d.until("the division is drawn", func(r report) bool { return r.has("front 4") })
	d.key("Escape")
	d.click("height of 1")
	d.write("130-2")
	d.key("Return")
	d.until("the height is taken", func(r report) bool { return strings.HasPrefix(r.Title, "Workshop chest – not saved") })
	d.shoot("a division drawn and a height typed")
	before := d.read().Places["front 3"].Height
	d.drag("division above 3", 0, 25)
	d.until("the division has moved", func(r report) bool { return r.Places["front 3"].Height < before-10 })
	d.click("button through")
	d.shoot("a division dragged, seen through")

	// Break the cover, see it, mend it.
	usual := len(d.read().Findings) // what is told of every new cabinet
	d.click("front 4")
	d.until("the inspector shows the drop", func(r report) bool { return r.has("field Drop") })
	d.click("field Drop")
	d.key("ctrl+a")
	d.write("-60")
	d.key("Return")
	r := d.until("the check finds the cover", func(r report) bool { return strings.Contains(strings.Join(r.Findings, " "), "cover") })
	t.Logf("found: %s", strings.Join(r.Findings, "; "))
	d.key("ctrl+i")
	d.shoot("the cover is broken")
	d.key("ctrl+h")
	for range 4 {
		if len(d.read().Findings) <= usual {
			break
		}
		time.Sleep(300 * time.Millisecond)
		d.key("ctrl+i")
		d.key("ctrl+h")
	}
	d.until("the fix mends it", func(r report) bool { return len(r.Findings) <= usual })
	d.shoot("mended")

	// Save, and open again.
	d.key("ctrl+s")
	d.until("the dialog asks where", func(r report) bool { return r.has("over Save") })
	d.key("ctrl+a")
	d.write("bench")
	d.shoot("saving")
	d.key("Return")
	saved := filepath.Join(d.home, "bench.yaml")
	d.until("the title says that it is saved", func(r report) bool { return !strings.Contains(r.Title, "not saved") })
	if _, err := os.Stat(saved); err != nil {
		t.Fatal(err)
	}
	d.key("ctrl+q")
	d.wait()
	d.start(saved)
	d.until("the project is open again", func(r report) bool { return r.has("front 4") })
	d.shoot("opened again")

	// Print.
	d.key("ctrl+p")
	d.until("the page for printing is there", func(r report) bool { return r.has("page Write PDF…") })
	d.shoot("printing")
	d.click("page Write PDF…")
	d.until("the dialog asks where", func(r report) bool { return r.has("over Save") })
	d.key("Return")
	d.until("it is written", func(r report) bool { return strings.Contains(r.Status, "bench.pdf") })
	d.shoot("printed")
	measureBars(t, filepath.Join(d.home, "bench-templates.pdf"))
	d.key("ctrl+q")
	d.wait()
}

// needTools skips where a program is missing, or fails where FRONTLAY_TOOLS=1
// says that all are installed.
func needTools(t testing.TB, tools ...string) {
	t.Helper()
	for _, tool := range tools {
		if _, err := exec.LookPath(tool); err != nil {
			if os.Getenv("FRONTLAY_TOOLS") == "1" {
				t.Fatalf("%s is not installed, and this test needs it", tool)
			}
			t.Skipf("%s is not installed; the test of the window needs it", tool)
		}
	}
}

// report is what the window tells about itself for scripts.
type report struct {
	Title    string
	Status   string
	Findings []string
	Selected []int // numbers of fronts
	Focused  string
	Places   map[string]struct{ X, Y, Width, Height float64 }
}

func (r report) has(name string) bool { _, ok := r.Places[name]; return ok }

// wider tells that a thing is wider than high by a factor.
func (r report) wider(name string, factor float64) bool {
	return r.Places[name].Width > factor*r.Places[name].Height
}

func newDesktop(t testing.TB) *desktop {
	t.Helper()
	d := &desktop{t: t, home: t.TempDir(), shots: os.Getenv("FRONTLAY_SHOTS")}
	if d.shots == "" {
		d.shots = t.TempDir()
	}
	if err := os.MkdirAll(d.shots, 0o777); err != nil {
		t.Fatal(err)
	}
	d.binary = filepath.Join(t.TempDir(), "frontlay")
	buildWindow(t, d.binary, toldWindow)
	d.startDisplay()
	d.background(exec.Command("openbox"))
	return d
}

// toldWindow takes the place of window.go in the build that is tried: its window
// tells scripts where its widgets are, by a file of ui that only tests have.
const toldWindow = `package main

import (
	"os"

	"fyne.io/fyne/v2/app"

	"frontlay/ui"
)

const hasWindow = true

func openWindow(o ui.Options) {
	ui.RunTold(app.NewWithID("io.frontlay.frontlay"), o, os.Getenv("FRONTLAY_PLACES"))
}
`

// buildWindow builds the program with another window.go; empty: its own.
func buildWindow(t testing.TB, to, window string) {
	t.Helper()
	here, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	ui := filepath.Join(here, "..", "..", "ui")
	source, overlay := filepath.Join(t.TempDir(), "window.go"), filepath.Join(t.TempDir(), "overlay.json")
	replace := map[string]string{filepath.Join(ui, "places.go"): filepath.Join(ui, "places_test.go")}
	if window != "" {
		replace[filepath.Join(here, "window.go")] = source
	}
	data, err := json.Marshal(map[string]map[string]string{"Replace": replace})
	if err == nil {
		err = os.WriteFile(source, []byte(window), 0o600)
	}
	if err == nil {
		err = os.WriteFile(overlay, data, 0o600)
	}
	if err != nil {
		t.Fatal(err)
	}
	build := exec.Command("go", "build", "-tags", "migrated_fynedo", "-overlay", overlay, "-o", to, ".")
	build.Env = append(os.Environ(), "CGO_ENABLED=1")
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("the window can't be built: %v\n%s", err, out)
	}
}

// startDisplay starts Xvfb on a display that it chooses itself. Where several
// tests start one at the same moment, one of two that chose the same display
// ends at once; it is tried again then.
func (d *desktop) startDisplay() {
	d.t.Helper()
	for range 5 {
		r, w, err := os.Pipe()
		if err != nil {
			d.t.Fatal(err)
		}
		x := exec.Command("Xvfb", "-displayfd", "3", "-screen", "0", "1366x768x24", "-nolisten", "tcp", "-noreset")
		x.ExtraFiles = []*os.File{w}
		d.background(x)
		w.Close()
		number, err := bufio.NewReader(r).ReadString('\n')
		r.Close()
		d.display = ":" + strings.TrimSpace(number)
		if err == nil && d.x("getdisplaygeometry") != "" {
			return
		}
		time.Sleep(time.Second)
	}
	d.t.Fatal("no display can be started")
}

// background starts a program that ends with the test.
func (d *desktop) background(c *exec.Cmd) {
	d.t.Helper()
	c.Env = append(os.Environ(), "DISPLAY="+d.display, "HOME="+d.home)
	if err := c.Start(); err != nil {
		d.t.Fatal(err)
	}
	d.t.Cleanup(func() {
		_ = c.Process.Kill() // it may have ended already
		_ = c.Wait()
	})
}

func (d *desktop) places() string { return filepath.Join(d.home, "places.json") }

// start opens the window and waits until it tells its places.
func (d *desktop) start(args ...string) {
	d.t.Helper()
	_ = os.Remove(d.places()) // the first time there is none
	d.program = exec.Command(d.binary, args...)
	d.program.Env = append(os.Environ(), "DISPLAY="+d.display, "HOME="+d.home, "XDG_CONFIG_HOME="+filepath.Join(d.home, "config"),
		"FYNE_SCALE=1", "FYNE_THEME=light", "LANG=en_US.UTF-8", "FRONTLAY_PLACES="+d.places())
	var said bytes.Buffer
	d.program.Stdout, d.program.Stderr = &said, &said
	if err := d.program.Start(); err != nil {
		d.t.Fatal(err)
	}
	program := d.program
	d.t.Cleanup(func() {
		_ = program.Process.Kill() // it may have ended already
		if d.t.Failed() {
			d.t.Logf("the window said:\n%s", said.String())
		}
	})
	d.until("the window is open", func(r report) bool { return len(r.Places) > 0 && d.window() != "" })
	d.x("windowfocus", "--sync", d.window())
}

// wait waits for the window to close.
func (d *desktop) wait() {
	d.t.Helper()
	done := make(chan error, 1)
	go func() { done <- d.program.Wait() }()
	select {
	case err := <-done:
		if err != nil {
			d.t.Fatalf("the window ended badly: %v", err)
		}
	case <-time.After(20 * time.Second):
		d.shoot("it does not close")
		d.t.Fatal("the window does not close")
	}
}

func (d *desktop) x(args ...string) string {
	ctx, cancel := context.WithTimeout(context.Background(), 20*time.Second)
	defer cancel()
	c := exec.CommandContext(ctx, "xdotool", args...)
	c.Env = append(os.Environ(), "DISPLAY="+d.display)
	out, _ := c.Output() // a search that finds nothing fails; until tries again
	return strings.TrimSpace(string(out))
}

// window finds the last window as a desktop does, by its class.
func (d *desktop) window() string {
	lines := strings.Fields(d.x("search", "--onlyvisible", "--class", "^frontlay$"))
	if len(lines) == 0 {
		return ""
	}
	return lines[len(lines)-1]
}

func (d *desktop) read() report {
	var r report
	data, err := os.ReadFile(d.places())
	if err == nil && json.Unmarshal(data, &r) != nil {
		return report{}
	}
	return r
}

// until waits for the window to say that something is so.
func (d *desktop) until(what string, so func(report) bool) report {
	d.t.Helper()
	for range 300 {
		if r := d.read(); so(r) {
			return r
		}
		time.Sleep(100 * time.Millisecond)
	}
	d.shoot("failed " + what)
	d.t.Fatalf("waited in vain until %s; the window says %+v", what, d.read())
	return report{}
}

// centre is the middle of a named thing in the window.
func (d *desktop) centre(name string) (x, y int) {
	d.t.Helper()
	r := d.until(fmt.Sprintf("%q is there", name), func(r report) bool { return r.has(name) })
	p := r.Places[name]
	return int(p.X + p.Width/2), int(p.Y + p.Height/2)
}

func (d *desktop) point(x, y int) {
	d.x("mousemove", "--window", d.window(), strconv.Itoa(x), strconv.Itoa(y))
	time.Sleep(120 * time.Millisecond)
}

func (d *desktop) click(name string) {
	d.t.Helper()
	x, y := d.centre(name)
	d.point(x-3, y)
	d.point(x, y)
	d.x("click", "1")
	time.Sleep(300 * time.Millisecond)
}

func (d *desktop) drag(name string, dx, dy int) {
	d.t.Helper()
	x, y := d.centre(name)
	d.point(x-2, y)
	d.point(x, y)
	d.x("mousedown", "1")
	for i := 1; i <= 5; i++ {
		d.point(x+dx*i/5, y+dy*i/5)
	}
	d.x("mouseup", "1")
	time.Sleep(300 * time.Millisecond)
}

func (d *desktop) key(k string) {
	d.x("key", k)
	time.Sleep(300 * time.Millisecond)
}

func (d *desktop) write(text string) {
	d.x("type", "--delay", "40", "--", text)
	time.Sleep(300 * time.Millisecond)
}

// shoot keeps a picture of the screen.
func (d *desktop) shoot(step string) {
	d.shot++
	name := fmt.Sprintf("%02d-%s.png", d.shot, strings.ReplaceAll(step, " ", "-"))
	c := exec.Command("import", "-display", d.display, "-window", "root", filepath.Join(d.shots, name))
	if out, err := c.CombinedOutput(); err != nil {
		d.t.Errorf("no picture of %q: %v %s", step, err, out)
	}
}
