package ui

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"
	"weak"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/layout/plan"
	"frontlay/ui/look"
	"frontlay/ui/screen"
	"frontlay/ui/session"
)

// The environment variables that make a test process walk windows: in how many, and
// how many actions in each.
const (
	leakWalks   = "FRONTLAY_LEAK_WALKS"
	leakActions = "FRONTLAY_LEAK_ACTIONS"
)

// Windows that were worked at random and closed leave nothing behind: their
// session, plan and drawing are collected, and three of them cost no more memory
// than one. Fyne keeps the renderers of widgets for a time that is set when a
// process begins, so this looks at processes of its own, with a time of nearly
// nothing. A window that is worked five times as long holds no more than it did.
func TestWindowsKeepNoMemory(t *testing.T) {
	open, closed := walked(t, 1, 60)
	_, three := walked(t, 3, 60)
	long, _ := walked(t, 1, 300)
	t.Logf("heap in use: %d kB after one window, %d kB after three; %d kB in a window that is open, %d kB after five times the actions", closed, three, open, long)
	if three > closed+closed/4 {
		t.Errorf("heap in use: %d kB after one window, %d kB after three", closed, three)
	}
	if long > open+open/4 {
		t.Errorf("heap in use: %d kB in a window that is open, %d kB after five times the actions", open, long)
	}
}

// walked walks windows in a process of its own and gives the heap in use, in kB,
// before the last of them was closed and after.
func walked(t *testing.T, windows, actions int) (open, closed int) {
	t.Helper()
	exe, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	c := exec.Command(exe, "-test.run=^TestWalkForLeaks$", "-test.v")
	c.Env = append(os.Environ(), "FYNE_CACHE=1ms", leakWalks+"="+strconv.Itoa(windows), leakActions+"="+strconv.Itoa(actions))
	out, err := c.CombinedOutput()
	if err != nil {
		t.Fatalf("%d windows: %v\n%s", windows, err, out)
	}
	all := regexp.MustCompile(`(?m)^heap (\d+) kB`).FindAllSubmatch(out, -1)
	if len(all) != windows+1 {
		t.Fatalf("%d windows tell no heap:\n%s", windows, out)
	}
	open, _ = strconv.Atoi(string(all[windows-1][1]))
	closed, _ = strconv.Atoi(string(all[windows][1]))
	return open, closed
}

// tellHeap writes down the heap in use, without what Fyne keeps for a while.
func tellHeap(a fyne.App) {
	time.Sleep(5 * time.Millisecond)   // for what Fyne keeps to be out of date
	a.NewWindow("").Canvas().Capture() // Fyne forgets what is out of date when it paints
	for range 5 {
		runtime.GC()
	}
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	fmt.Printf("\nheap %d kB\n", m.HeapAlloc/1024)
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

// TestWalkForLeaks is a process of TestWindowsKeepNoMemory.
func TestWalkForLeaks(t *testing.T) {
	walks, err := strconv.Atoi(os.Getenv(leakWalks))
	if err != nil {
		t.Skip("part of another test")
	}
	actions, err := strconv.Atoi(os.Getenv(leakActions))
	if err != nil {
		t.Fatal(err)
	}
	a := test.NewApp()
	th := &look.Theme{Mode: look.LightMode}
	a.Settings().SetTheme(th)
	var all []traces
	for i := range walks {
		all = append(all, walkAndClose(t, a, th, int64(i+1), actions, filepath.Join(t.TempDir(), "walk.yaml")))
	}
	for n := 0; n < 100 && slices.ContainsFunc(all, func(tr traces) bool { return len(tr.left()) > 0 }); n++ {
		time.Sleep(20 * time.Millisecond) // what goes on in the background may take a little longer
		a.NewWindow("").Canvas().Capture()
		runtime.GC()
	}
	tellHeap(a)
	for i, tr := range all {
		if left := tr.left(); len(left) > 0 {
			t.Errorf("of window %d are left: %s", i+1, strings.Join(left, ", "))
		}
	}
}

// walkAndClose works a window of its own and closes it. It keeps nothing of the
// window on its stack.
//
//go:noinline
func walkAndClose(t *testing.T, a fyne.App, th *look.Theme, seed int64, actions int, saves string) traces {
	w := open(a, th, Options{Keeper: keeper(t, &disk{}), Demo: true, Date: "2026-01-01"})
	w.win.Resize(fyne.NewSize(1240, 690))
	w.begin()
	w.closeOverlays()
	m := newMonkey(w, seed, saves)
	for range actions {
		m.act()
		if len(w.session.Project().Cabinets) > 12 { // keep it a run that people have
			w.session.Go(0)
		}
	}
	w.desk.Screen.Escape()
	w.session.Cancel()
	w.showDesk()
	w.session.Go(0)
	tellHeap(a)
	tr := traces{weak.Make(w), weak.Make(w.session), weak.Make(w.session.CommittedResult().Plan), weak.Make(w.desk.Screen)}
	w.shut()
	return tr
}
