package main

import (
	"bytes"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
	"testing"
)

// Where the system ends the program in the midst of work, as at logging out, it
// ends without a word of complaint, and the work is in the journal, also what was
// done a moment ago.
func TestTheSystemEndsTheProgram(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("Windows ends programs otherwise")
	}
	needTools(t, "Xvfb", "openbox", "xdotool", "gcc")
	d := newDesktop(t)
	d.start("-demo")
	d.until("the desk is there", func(r report) bool { return r.has("front 4") })
	d.click("front 2")
	d.until("the inspector shows the front", func(r report) bool { return r.has("field Drop") })
	d.key("ctrl+l")
	d.until("there is unsaved work", func(r report) bool { return strings.Contains(r.Title, "not saved") })
	if err := d.program.Process.Signal(syscall.SIGTERM); err != nil {
		t.Fatal(err)
	}
	d.wait()
	if said := d.program.Stderr.(*bytes.Buffer).String(); strings.Contains(said, "Preferences") {
		t.Errorf("it says %s", said)
	}
	journals, err := filepath.Glob(filepath.Join(d.home, "*", "frontlay", "journal", "*.journal"))
	if err != nil || len(journals) != 1 {
		t.Fatalf("journals %v, %v", journals, err)
	}
	data, err := os.ReadFile(journals[0])
	if err != nil || !bytes.Contains(data, []byte("locked")) {
		t.Errorf("the journal does not hold what was done last: %v\n%s", err, data)
	}
}
