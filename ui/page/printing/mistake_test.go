package printing

import (
	"errors"
	"strings"
	"testing"

	"fyne.io/fyne/v2/widget"

	"frontlay/layout/sheet"
	"frontlay/ui/field"
	"frontlay/ui/page/pagetest"
)

// While something typed is wrong nothing can be written or printed, what is wrong
// stands whole under its field, and the foot of the page names the field.
func TestNothingIsPrintedWhileSomethingTypedIsWrong(t *testing.T) {
	h, system := pagetest.New(t), System{}
	system.Printer = &office{}
	p := New(h, system)
	h.Win.SetContent(p.Object)
	fronts, size := p.wrong[0], p.wrong[1]
	pages := p.outcome.Need.Text
	off := func(what string, names ...string) {
		t.Helper()
		if !p.write.Disabled() || !p.print.Disabled() {
			t.Errorf("%s: the buttons can be pressed", what)
		}
		if want := h.Ask().Text("Mend first: %v", strings.Join(names, ", ")); p.outcome.Need.Text != want {
			t.Errorf("%s: the foot says %q, not %q", what, p.outcome.Need.Text, want)
		}
	}
	p.paper.SetText("nonsense")
	off("the paper", "Size or roll")
	if !size.Note.Visible() || !strings.Contains(size.Note.Text, "nonsense") || fronts.Note.Visible() {
		t.Errorf("under the paper stands %q (seen: %v)", size.Note.Text, size.Note.Visible())
	}
	p.fronts.SetText("99,abc")
	off("both", "Fronts", "Size or roll")
	h.LayOut()
	for _, m := range []*field.Mistake{fronts, size} {
		if need := m.Note.MinSize().Height; m.Note.Size().Height < need || m.Object.Size().Height < m.Note.Position().Y+need {
			t.Errorf("what is wrong with %s is cut: %v of %v", m.Name, m.Note.Size(), need)
		}
	}
	p.boxes[sheet.ShopSheets].SetChecked(false)
	off("another choice", "Fronts", "Size or roll")
	p.paper.SetText("A4")
	off("the paper is mended", "Fronts")
	p.fronts.SetText("")
	p.boxes[sheet.ShopSheets].SetChecked(true)
	if p.write.Disabled() || p.print.Disabled() || p.outcome.Need.Text != pages || size.Note.Visible() || fronts.Note.Visible() {
		t.Errorf("all is mended, and yet writing is off (%v), the foot says %q", p.write.Disabled(), p.outcome.Need.Text)
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
		{"written", nil, "Written: bench.pdf, bench-templates.pdf.", widget.SuccessImportance},
		{"not written", errors.New("the disk is full"), "the disk is full", widget.DangerImportance},
	} {
		t.Run(c.name, func(t *testing.T) {
			h, system := pagetest.New(t), System{}
			system.Printer = &office{}
			system.Write = func(string, sheet.Document, func(page, pages int) error) error { return c.err }
			p := New(h, system)
			h.Win.SetContent(p.Object)
			caution := p.outcome.Told.Text
			within10s(t, p.WriteTo("bench.pdf"))
			if !strings.Contains(p.outcome.Told.Text, c.say) || p.outcome.Told.Importance != c.how {
				t.Errorf("the page says %q", p.outcome.Told.Text)
			}
			p.boxes[sheet.ShopSheets].SetChecked(false)
			if p.outcome.Told.Text != caution {
				t.Errorf("other pages are chosen, and the page still says %q", p.outcome.Told.Text)
			}
		})
	}
}
