package ui

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"strconv"
	"strings"
	"testing"
	"time"
	"weak"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/assets/manual"
	"frontlay/layout/plan"
	"frontlay/ui/look"
	"frontlay/ui/page/help"
	"frontlay/ui/screen"
	"frontlay/ui/session"
)

// leakWalks is the environment variable that makes a test process walk windows,
// and in how many.
const leakWalks = "FRONTLAY_LEAK_WALKS"

// Windows that were worked at random and closed leave nothing behind: their
// session, plan and drawing are collected, and three of them cost no more memory
// than one. Fyne keeps the renderers of widgets for a time that is set when a
// process begins, so this looks at processes of its own, with a time of nearly
// nothing.
func TestClosedWindowsLeaveNoMemory(t *testing.T) {
	exe, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	heap := map[int]int{}
	for _, walks := range []int{1, 3} {
		c := exec.Command(exe, "-test.run=^TestWalkForLeaks$", "-test.v")
		c.Env = append(os.Environ(), "FYNE_CACHE=1ms", leakWalks+"="+strconv.Itoa(walks))
		out, err := c.CombinedOutput()
		if err != nil {
			t.Fatalf("%d windows: %v\n%s", walks, err, out)
		}
		m := regexp.MustCompile(`heap (\d+) kB`).FindSubmatch(out)
		if m == nil {
			t.Fatalf("%d windows tell no heap:\n%s", walks, out)
		}
		heap[walks], _ = strconv.Atoi(string(m[1]))
	}
	t.Logf("heap in use: %d kB after one window, %d kB after three", heap[1], heap[3])
	if heap[3] > heap[1]+heap[1]/2 { // fonts are not in it, so that half is 5 MB
		t.Errorf("heap in use: %d kB after one window, %d kB after three", heap[1], heap[3])
	}
}

// traces are weak pointers to what a window holds.
type traces struct {
	window  weak.Pointer[window]
	session weak.Pointer[session.Session]
	plan    weak.Pointer[plan.Plan]
	screen  weak.Pointer[screen.Screen]
}

func (tr traces) left() (all []string) {
	for name, gone := range map[string]bool{
		"window": tr.window.Value() == nil, "session": tr.session.Value() == nil,
		"plan": tr.plan.Value() == nil, "screen": tr.screen.Value() == nil,
	} {
		if !gone {
			all = append(all, name)
		}
	}
	return all
}

// TestWalkForLeaks is a process of TestClosedWindowsLeaveNoMemory.
func TestWalkForLeaks(t *testing.T) {
	walks, err := strconv.Atoi(os.Getenv(leakWalks))
	if err != nil {
		t.Skip("part of another test")
	}
	a := test.NewApp()
	th := &look.Theme{Mode: look.LightMode}
	a.Settings().SetTheme(th)
	var all []traces
	for i := range walks {
		all = append(all, walkAndClose(t, a, th, int64(i+1), filepath.Join(t.TempDir(), "walk.yaml")))
	}
	a.Settings().SetTheme(&look.Theme{Mode: look.LightMode}) // Fyne forgets its fonts, which are those that a walk came to need
	time.Sleep(2 * time.Second)                              // for what Fyne keeps to be out of date, and for timers of the last window
	last := a.NewWindow("")
	last.Canvas().Capture() // Fyne forgets what is out of date when it paints
	for range 5 {
		runtime.GC()
	}
	for i, tr := range all {
		if left := tr.left(); len(left) > 0 {
			t.Errorf("of window %d are left: %s", i+1, strings.Join(left, ", "))
		}
	}
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	fmt.Printf("heap %d kB\n", m.HeapAlloc/1024)
}

// walkAndClose works a window of its own and closes it. It keeps nothing of the
// window on its stack.
//
//go:noinline
func walkAndClose(t *testing.T, a fyne.App, th *look.Theme, seed int64, saves string) traces {
	w := open(a, th, Options{Keeper: keeper(t, &disk{}), Example: "glaze-bench", Date: func() string { return "2026-01-01" }})
	w.win.Resize(fyne.NewSize(1240, 690))
	w.begin()
	w.closeOverlays()
	if seed == 1 { // what Fyne needs for the largest thing that is shown, room and fonts, it keeps
		for _, c := range manual.In("en").Chapters {
			help.Manual(w.ask, "en", c.Name, w.OpenURL)
			w.closeOverlays()
		}
	}
	m := newMonkey(w, seed, saves)
	for range 120 {
		m.act()
	}
	tr := traces{weak.Make(w), weak.Make(w.session), weak.Make(w.session.CommittedResult().Plan), weak.Make(w.desk.Screen)}
	w.shut()
	return tr
}
