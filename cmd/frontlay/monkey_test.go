package main

import (
	"bytes"
	"fmt"
	"math/rand"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"
)

// TestMonkeyInTheWindow clicks with both buttons, turns the wheel, drags, chooses
// from menus, presses keys and types into the real window at random, as fast as
// it takes them, for as long as FRONTLAY_MONKEY says (such as 30m); where it is
// not set, not at all. No click ends the program: it may end only as it was asked
// to, and is opened again then. FRONTLAY_MONKEY_SEED repeats a walk. With
// FYNE_CACHE=1s Fyne forgets what it has not painted for a second, not a minute.
func TestMonkeyInTheWindow(t *testing.T) {
	long, err := time.ParseDuration(os.Getenv("FRONTLAY_MONKEY"))
	if err != nil {
		t.Skip("FRONTLAY_MONKEY does not say for how long")
	}
	needTools(t, "Xvfb", "openbox", "xdotool", "import", "gcc")
	seed, err := strconv.ParseInt(os.Getenv("FRONTLAY_MONKEY_SEED"), 10, 64)
	if err != nil {
		seed = time.Now().UnixNano()
	}
	t.Logf("seed %d", seed)
	m := &windowMonkey{desktop: newDesktop(t), r: rand.New(rand.NewSource(seed))}
	m.open("--demo")
	end, next := time.Now().Add(long), time.Now()
	for time.Now().Before(end) {
		if now := time.Now(); now.After(next) {
			t.Logf("%s to go: %d actions, opened %d times, %s", end.Sub(now).Round(time.Second), m.actions, m.opened, m.memory())
			next = now.Add(time.Minute)
		}
		m.act(20)
		if m.ended() {
			m.open()
		}
	}
	m.close()
	t.Logf("%d actions, opened %d times", m.actions, m.opened)
}

// windowMonkey works the window of a desktop. It reads no places from the window:
// asking for them would keep alive what Fyne forgets.
type windowMonkey struct {
	*desktop
	r       *rand.Rand
	end     chan error // of the program
	said    *bytes.Buffer
	actions int
	opened  int
	recent  []string // what was done last
}

// open starts the program and waits for its window.
func (m *windowMonkey) open(args ...string) {
	m.t.Helper()
	m.said = &bytes.Buffer{}
	p := exec.Command(m.binary, args...)
	p.Env = append(os.Environ(), "DISPLAY="+m.display, "HOME="+m.home, "XDG_CONFIG_HOME="+filepath.Join(m.home, "config"),
		"FYNE_SCALE=1", "FYNE_THEME=light", "LANG=en_US.UTF-8")
	p.Stdout, p.Stderr = m.said, m.said
	if err := p.Start(); err != nil {
		m.t.Fatal(err)
	}
	end := make(chan error, 1)
	go func() { end <- p.Wait() }()
	m.t.Cleanup(func() { _ = p.Process.Kill() }) // it may have ended already
	m.program, m.end = p, end
	m.opened++
	for range 300 {
		if m.window() != "" {
			return
		}
		time.Sleep(100 * time.Millisecond)
	}
	m.t.Fatal("the window does not open")
}

// ended tells that the program has ended; it fails where that was not asked for.
func (m *windowMonkey) ended() bool {
	m.t.Helper()
	select {
	case err := <-m.end:
		if err != nil {
			m.t.Fatalf("the window ended badly: %v\nafter %s\n%s", err, strings.Join(m.recent, "\n"), m.said)
		}
		return true
	default:
		return false
	}
}

// Keys that a walk presses. What opens another window is left out: only one can
// be worked.
var monkeyKeys = strings.Fields(`Tab Tab Tab shift+Tab Return Return space Escape Escape Up Down Left Right Prior Next Home End
	shift+Up shift+Down Delete BackSpace Menu F1 F10 1 2 2 5 0 period minus slash a x ctrl+a ctrl+c ctrl+v ctrl+x ctrl+z ctrl+z ctrl+y
	ctrl+f ctrl+i ctrl+i ctrl+h ctrl+t ctrl+s ctrl+p ctrl+o ctrl+e ctrl+d ctrl+g ctrl+r ctrl+0 ctrl+m ctrl+5 ctrl+6 ctrl+7 ctrl+8 ctrl+shift+r
	F7 F7 F8 F9 F9 ctrl+shift+Left ctrl+shift+Right`)

// act does some random things in one call, one behind the other without a pause.
func (m *windowMonkey) act(things int) {
	id := m.window()
	if id == "" { // it is ending, or another window is in front
		m.x("key", "Escape")
		time.Sleep(100 * time.Millisecond)
		return
	}
	var do []string
	move := func() {
		// The whole window, or the panel at its right, or its menus and buttons.
		x, y, w, h := 0, 0, 1240, 690
		switch m.r.Intn(5) {
		case 0, 1:
			x, w = 940, 300
		case 2:
			h = 70
		}
		do = append(do, "mousemove", "--window", id, strconv.Itoa(x+m.r.Intn(w)), strconv.Itoa(y+m.r.Intn(h)))
	}
	for range things {
		switch n := m.r.Intn(100); {
		case n < 35:
			move()
			do = append(do, "click", "1")
		case n < 55:
			move()
			do = append(do, "click", "3")
		case n < 60: // another thing, and at once a field of the panel
			do = append(do, "key", "F7")
			move()
			do = append(do, "click", []string{"1", "3"}[m.r.Intn(2)])
		case n < 64:
			move()
			do = append(do, "click", "--repeat", "2", "--delay", "20", "1")
		case n < 68:
			move()
			do = append(do, "mousedown", "1")
			move()
			move()
			do = append(do, "mouseup", "1")
		case n < 72:
			move()
			do = append(do, "click", []string{"4", "5"}[m.r.Intn(2)])
		default:
			do = append(do, "key", "--delay", "4", monkeyKeys[m.r.Intn(len(monkeyKeys))])
		}
	}
	m.actions += things
	m.recent = append(m.recent, "xdotool "+strings.Join(do, " "))
	m.recent = m.recent[max(len(m.recent)-5, 0):]
	m.x(do...)
	if m.r.Intn(200) == 0 { // long enough for Fyne to forget
		time.Sleep(12 * time.Second)
	}
}

// memory is what the program holds.
func (m *windowMonkey) memory() string {
	status, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", m.program.Process.Pid))
	if err != nil {
		return "memory not known"
	}
	return strings.Join(strings.Fields(string(regexp.MustCompile(`VmRSS:.*`).Find(status))), " ")
}

// close ends the program by its own command, answering what it asks. One that
// does not end hangs.
func (m *windowMonkey) close() {
	m.t.Helper()
	for range 60 {
		for _, k := range []string{"Escape", "Escape", "ctrl+q"} {
			m.x("key", k)
			time.Sleep(200 * time.Millisecond)
		}
		m.x("key", []string{"Return", "Tab"}[m.r.Intn(2)])
		m.x("key", "Return")
		time.Sleep(500 * time.Millisecond)
		if m.ended() {
			return
		}
	}
	m.shoot("it does not close")
	m.t.Error("the window does not close")
}
