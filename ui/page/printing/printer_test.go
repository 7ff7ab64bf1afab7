package printing

import (
	"context"
	"testing"
	"time"

	"fyne.io/fyne/v2"

	"frontlay/ui/field"
	"frontlay/ui/page/pagetest"
)

// office is a printing system that takes its time.
type office struct {
	ask  chan struct{} // closed when it may name its printers
	jobs chan Job
}

func (o *office) Printers(context.Context) ([]string, string, error) {
	<-o.ask
	return []string{"Office", "Workshop"}, "Workshop", nil
}

func (o *office) Print(_ context.Context, j Job) error {
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
	h, system := pagetest.New(t), System{}
	o := &office{ask: make(chan struct{}), jobs: make(chan Job, 9)}
	system.Printer = o
	p := Templates(h, system)
	asked := p.printNow()
	if !p.print.Disabled() {
		t.Error("the button can be pressed again while the printers are asked for")
	}
	close(o.ask)
	within10s(t, asked)
	if p.print.Disabled() {
		t.Error("the button stays off")
	}
	copies, ok := h.Win.Canvas().Focused().(*field.Text)
	if !ok {
		t.Fatalf("the focus is on %T: a press that lasts would print", h.Win.Canvas().Focused())
	}
	copies.SetText("none")
	copies.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if h.Win.Canvas().Overlays().Top() == nil || len(o.jobs) > 0 {
		t.Fatal("the question is gone before it is answered well")
	}
	h.CloseOverlays()
	within10s(t, p.send("Workshop", 2))
	if j := <-o.jobs; j.Printer != "Workshop" || j.Copies != 2 || len(j.Document.Pages) == 0 {
		t.Errorf("sent: %+v", j)
	}
}

// Where nothing is to be drilled there is no template, and the page says why it
// has none.
func TestNoTemplateWithoutHoles(t *testing.T) {
	h, system := pagetest.New(t), System{}
	h.Session().Select(h.Face(8)) // an open niche
	if len(Drilled(h.Session())) > 0 {
		t.Error("an open niche has a template")
	}
	p := Templates(h, system)
	p.fronts.SetText("8")
	if len(p.pages) > 0 || !p.write.Disabled() || !p.print.Disabled() || p.outcome.Need.Text == h.Ask().Text("Pages: %v", 0) {
		t.Errorf("pages: %d, writing is off: %v, it says %q", len(p.pages), p.write.Disabled(), p.outcome.Need.Text)
	}
}
