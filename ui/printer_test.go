package ui

import (
	"context"
	"path/filepath"
	"testing"
	"time"

	"fyne.io/fyne/v2"

	"frontlay/layout/sheet"
	"frontlay/model/message"
	"frontlay/ui/field"
)

// office is a printing system that takes its time.
type office struct {
	ask  chan struct{} // closed when it may name its printers
	jobs chan PrintJob
}

func (o *office) Printers(context.Context) ([]string, string, error) {
	<-o.ask
	return []string{"Office", "Workshop"}, "Workshop", nil
}

func (o *office) Print(_ context.Context, j PrintJob) error {
	o.jobs <- j
	return nil
}

func within10s(t *testing.T, c <-chan struct{}) {
	t.Helper()
	select {
	case <-c:
	case <-time.After(10 * time.Second):
		t.Fatal("nothing happens")
	}
}

// Printers are asked for once; what is no count of copies is told beside it, and
// a count sends the job.
func TestPrintingOnAPrinter(t *testing.T) {
	w, _, _ := newWindow(t, "")
	o := &office{ask: make(chan struct{}), jobs: make(chan PrintJob, 9)}
	w.options.Printer = o
	p := newTemplates(w)
	asked := p.printNow()
	if !p.print.Disabled() {
		t.Error("the button can be pressed again while the printers are asked for")
	}
	close(o.ask)
	within10s(t, asked)
	if p.print.Disabled() {
		t.Error("the button stays off")
	}
	copies, ok := w.win.Canvas().Focused().(*field.Text)
	if !ok {
		t.Fatalf("the focus is on %T: a press that lasts would print", w.win.Canvas().Focused())
	}
	copies.SetText("none")
	copies.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if w.win.Canvas().Overlays().Top() == nil || len(o.jobs) > 0 {
		t.Fatal("the question is gone before it is answered well")
	}
	w.closeOverlays()
	within10s(t, p.send("Workshop", 2))
	if j := <-o.jobs; j.Printer != "Workshop" || j.Copies != 2 || len(j.Document.Pages) == 0 {
		t.Errorf("sent: %+v", j)
	}
}

// Esc stops writing, and nothing behind the bar.
func TestEscapeStopsWriting(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.printPage()
	begun := make(chan struct{})
	stopped := make(chan struct{})
	w.options.Write = func(_ string, _ sheet.Document, progress func(page, pages int) error) error {
		close(begun)
		<-stopped
		return progress(1, 2)
	}
	r := w.session.CommittedResult()
	written := w.writeDocument(filepath.Join(t.TempDir(), "a.pdf"), sheet.Make(r.Plan, r.Findings, sheet.Options{Parts: []sheet.Part{sheet.JigSettings}, Say: w.say()}), func(message.Message, bool) {})
	within10s(t, begun)
	press(w, fyne.KeyEscape)
	close(stopped)
	within10s(t, written)
	if got := w.desk.Status.Text; got != "Stopped; nothing was written." {
		t.Errorf("the window says %q", got)
	}
	if !w.front.Visible() {
		t.Error("Esc left the page behind the bar")
	}
}

// Where nothing is to be drilled there is no template, and the page says why it
// has none.
func TestNoTemplateWithoutHoles(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.session.Select(w.face(8)) // an open niche
	if w.table.Command("template").Possible() {
		t.Error("an open niche has a template")
	}
	p := newTemplates(w)
	p.fronts.SetText("8")
	if len(p.pages) > 0 || !p.write.Disabled() || !p.print.Disabled() || p.need.Text == w.text("Pages: %v", 0) {
		t.Errorf("pages: %d, writing is off: %v, it says %q", len(p.pages), p.write.Disabled(), p.need.Text)
	}
}
