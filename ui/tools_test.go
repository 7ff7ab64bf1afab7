package ui

import (
	"path/filepath"
	"strings"
	"testing"

	"frontlay/ui/replay"
)

// The bar shows which tool is in the hand, whatever the hand has just done with it.
func TestTheBarShowsTheToolInTheHand(t *testing.T) {
	w, _, _ := newWindow(t, "")
	chosen := func(step string, want string) {
		t.Helper()
		for _, name := range []string{"select", "drawdivision", "drawpartition", "drawcabinet"} {
			if got := w.desk.Tools()[w.table.Command(name)].Chosen(); got != (name == want) {
				t.Errorf("%s: %s is shown as chosen: %v", step, name, got)
			}
		}
	}
	chosen("at first", "select")
	at := replay.Places(w.desk.Screen)
	hand := &replay.Pointer{To: w.desk.Screen}
	hand.Click(at["front 2"].Centre())
	chosen("a front is clicked", "select")
	line := at["division above 1"].Centre()
	hand.Drag(line, line.AddXY(0, 24), 3)
	chosen("a division is dragged", "select")
	w.do("drawpartition")
	chosen("a partition is to be drawn", "drawpartition")
	w.desk.Screen.Escape()
	chosen("and is not", "select")
}

// What has no file is not called saved, in the bar as little as in the title.
func TestTheBarTellsTheStateOfTheFile(t *testing.T) {
	w, _, _ := newWindow(t, "")
	if words := replay.Words(w.desk.Object); !strings.Contains(words, "no file yet") {
		t.Errorf("the desk says %q", words)
	}
	w.saveTo(filepath.Join(t.TempDir(), "bench.yaml"))
	if words := replay.Words(w.desk.Object); strings.Contains(words, "no file yet") || !strings.Contains(words, " saved ") {
		t.Errorf("once it is saved the desk says %q", words)
	}
}
