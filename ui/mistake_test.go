package ui

import (
	"errors"
	"strings"
	"testing"

	"fyne.io/fyne/v2/widget"

	"frontlay/layout/sheet"
)

// While something typed is wrong nothing can be written or printed, what is wrong
// stands whole under its field, and the foot of the page names the field.
func TestNothingIsPrintedWhileSomethingTypedIsWrong(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.options.Printer = &office{}
	w.printPage()
	w.win.Resize(small)
	p := newPrinting(w)
	w.showOver(reading{}, p.object)
	fronts, size := p.wrong[0], p.wrong[1]
	pages := p.need.Text
	off := func(what string, names ...string) {
		t.Helper()
		if !p.write.Disabled() || !p.print.Disabled() {
			t.Errorf("%s: the buttons can be pressed", what)
		}
		if want := w.text("Mend first: %v", strings.Join(names, ", ")); p.need.Text != want {
			t.Errorf("%s: the foot says %q, not %q", what, p.need.Text, want)
		}
	}
	p.paper.SetText("nonsense")
	off("the paper", "Size or roll")
	if !size.note.Visible() || !strings.Contains(size.note.Text, "nonsense") || fronts.note.Visible() {
		t.Errorf("under the paper stands %q (seen: %v)", size.note.Text, size.note.Visible())
	}
	p.fronts.SetText("99,abc")
	off("both", "Fronts", "Size or roll")
	layOut(w)
	for _, m := range p.wrong {
		if need := m.note.MinSize().Height; m.note.Size().Height < need || m.object.Size().Height < m.note.Position().Y+need {
			t.Errorf("what is wrong with %s is cut: %v of %v", m.name, m.note.Size(), need)
		}
	}
	p.boxes[sheet.Cover].SetChecked(false)
	off("another choice", "Fronts", "Size or roll")
	p.paper.SetText("A4")
	off("the paper is mended", "Fronts")
	p.fronts.SetText("")
	p.boxes[sheet.Cover].SetChecked(true)
	if p.write.Disabled() || p.print.Disabled() || p.need.Text != pages || size.note.Visible() || fronts.note.Visible() {
		t.Errorf("all is mended, and yet writing is off (%v), the foot says %q", p.write.Disabled(), p.need.Text)
	}
}

// How writing went is told on the page where it was asked for, until something
// else is chosen.
func TestThePageTellsHowWritingWent(t *testing.T) {
	for _, c := range []struct {
		name string
		err  error
		say  string
		how  widget.Importance
	}{
		{"written", nil, "Written: bench.pdf.", widget.SuccessImportance},
		{"not written", errors.New("the disk is full"), "the disk is full", widget.DangerImportance},
	} {
		t.Run(c.name, func(t *testing.T) {
			w, _, _ := newWindow(t, "")
			w.options.Printer = &office{}
			w.options.Write = func(string, sheet.Document, func(page, pages int) error) error { return c.err }
			p := newPrinting(w)
			w.showOver(reading{}, p.object)
			caution := p.outcome.Text
			within10s(t, w.writeDocument("bench.pdf", sheet.Document{}, p.tellOutcome))
			if !strings.Contains(p.outcome.Text, c.say) || p.outcome.Importance != c.how {
				t.Errorf("the page says %q", p.outcome.Text)
			}
			p.boxes[sheet.Cover].SetChecked(false)
			if p.outcome.Text != caution {
				t.Errorf("other pages are chosen, and the page still says %q", p.outcome.Text)
			}
		})
	}
}
