package main

import (
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// TestAWholeJobByKeysAlone does the whole job without a pointer: whoever can't
// use one, or whose trackpad is full of dust, gets as far as the templates.
func TestAWholeJobByKeysAlone(t *testing.T) {
	needTools(t, "Xvfb", "openbox", "xdotool", "import", "mutool", "gcc")
	d := newDesktop(t)
	d.x("mousemove", "1365", "767") // out of the way
	d.start()

	// A new project.
	d.tabTo("page field 1")
	d.key("ctrl+a")
	d.write("900")
	d.key("Tab")
	d.until("the picture shows the width", func(r report) bool { return r.wider("cabinet 1", 1.0) })
	d.tabTo("page Begin with this cabinet")
	d.shoot("keys begin")
	d.key("space")
	d.until("the desk is there", func(r report) bool { return r.has("button drawdivision") })
	d.until("the drawing has the keys", func(r report) bool { return r.Focused == "screen" })

	// A height is typed, a front divided, a division moved.
	d.key("Down")
	d.until("a front is selected", func(r report) bool { return r.has("field Height") })
	d.write("250")
	d.shoot("keys type a height")
	d.key("Return")
	d.until("the height is taken", func(r report) bool { return strings.Contains(r.Title, "not saved") })
	d.key("ctrl+t")
	d.until("the front is divided", func(r report) bool { return r.has("front 4") })
	d.key("Prior")
	d.until("a division is selected", func(r report) bool { return r.has("field Above") })
	before := d.read().Places["front 1"].Height
	d.key("shift+Up")
	d.until("the division has moved", func(r report) bool { return r.Places["front 1"].Height > before+2 })
	d.shoot("keys move a division")

	// The cover is broken in the inspector, and mended.
	d.key("Next")
	d.until("a front is selected again", func(r report) bool { return r.has("field Drop") })
	d.tabTo("field Drop")
	usual := len(d.read().Findings) // what is told of every new cabinet
	d.shoot("keys in the inspector")
	d.key("ctrl+a")
	d.write("-60")
	d.key("Return")
	d.until("the check finds the cover", func(r report) bool { return strings.Contains(strings.Join(r.Findings, " "), "cover") })
	for range 6 {
		if len(d.read().Findings) <= usual {
			break
		}
		d.key("ctrl+i")
		d.key("ctrl+h")
		time.Sleep(300 * time.Millisecond)
	}
	d.until("the fix mends it", func(r report) bool { return len(r.Findings) <= usual })

	// Saved and printed.
	d.key("ctrl+s")
	d.until("the dialog asks where", func(r report) bool { return r.has("over Save") })
	d.key("ctrl+a")
	d.write("keys")
	d.key("Return")
	d.until("the title says that it is saved", func(r report) bool { return !strings.Contains(r.Title, "not saved") })
	d.key("ctrl+p")
	d.until("the page for printing is there", func(r report) bool { return r.has("page Write PDF…") })
	d.tabTo("page Write PDF…")
	d.shoot("keys print")
	d.key("space")
	d.until("the dialog asks where", func(r report) bool { return r.has("over Save") })
	d.key("Return")
	d.until("it is written", func(r report) bool { return strings.Contains(r.Status, "keys.pdf") })
	measureBars(t, filepath.Join(d.home, "keys-templates.pdf"))
	d.key("ctrl+q")
	d.wait()
}

// tabTo presses Tab until a thing has the focus.
func (d *desktop) tabTo(name string) {
	d.t.Helper()
	d.until(name+" is there", func(r report) bool { return r.has(name) })
	const slow = 700 * time.Millisecond // the window tells its places every 150 ms, a busy one later
	for range 120 {
		at := d.read().Focused
		if at == name {
			time.Sleep(slow) // a press that is under way would lead on
			if d.read().Focused == name {
				return
			}
			continue
		}
		d.x("key", "Tab")
		for until := time.Now().Add(slow); d.read().Focused == at && time.Now().Before(until); {
			time.Sleep(30 * time.Millisecond)
		}
	}
	d.shoot("no way to " + name)
	d.t.Fatalf("Tab does not lead to %q; the focus is on %q", name, d.read().Focused)
}
