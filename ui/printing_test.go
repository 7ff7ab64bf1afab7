package ui

import (
	"path/filepath"
	"testing"
	"time"

	"fyne.io/fyne/v2"

	"frontlay/layout/sheet"
	"frontlay/ui/page/printing"
)

// Esc stops writing, and nothing behind the bar.
func TestEscapeStopsWriting(t *testing.T) {
	w, _, _ := newWindow(t, "")
	begun := make(chan struct{})
	stopped := make(chan struct{})
	w.options.Write = func(_ string, _ sheet.Document, progress func(page, pages int) error) error {
		close(begun)
		<-stopped
		return progress(1, 2)
	}
	w.do("print")
	written := printing.New(w, w.system()).WriteTo(filepath.Join(t.TempDir(), "a.pdf"))
	within10s(t, begun)
	press(w, fyne.KeyEscape)
	close(stopped)
	within10s(t, written)
	if got := w.says(); got != "Stopped; nothing was written." {
		t.Errorf("the window says %q", got)
	}
	if !w.stage.front.Visible() {
		t.Error("Esc left the page behind the bar")
	}
}

func within10s(t *testing.T, c <-chan struct{}) {
	t.Helper()
	select {
	case <-c:
	case <-time.After(10 * time.Second):
		t.Fatal("nothing happens")
	}
}

// The command for a template is there for what has holes, and shows the page.
func TestTheCommandForATemplate(t *testing.T) {
	w, _, _ := newWindow(t, "")
	for n, want := range map[int]bool{4: true, 8: false} { // 8 is an open niche
		w.session.Select(w.face(n))
		if got := w.table.Command("template").Possible(); got != want {
			t.Errorf("front %d: a template is possible: %v", n, got)
		}
	}
	if w.session.Select(); w.table.Command("template").Possible() {
		t.Error("nothing is selected, and yet there is a template")
	}
	w.session.Select(w.face(4), w.face(5))
	if w.do("template"); !w.stage.front.Visible() {
		t.Error("no page is shown")
	}
}
