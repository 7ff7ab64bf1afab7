package ui

import (
	"fmt"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/layout/check"
	"frontlay/model/edit"
	"frontlay/ui/bar"
	"frontlay/ui/field"
	"frontlay/ui/replay"
)

// withFindings opens the demo with several things wrong.
func withFindings(t *testing.T) *window {
	t.Helper()
	w, _, _ := newWindow(t, "")
	spoil(w)
	if n := len(w.session.Result().Findings); n < 3 {
		t.Fatalf("there are only %d findings", n)
	}
	w.do("findings")
	return w
}

// controls finds what can have the focus in an object.
func controls(o fyne.CanvasObject, all []fyne.Focusable) []fyne.Focusable {
	if f, ok := o.(fyne.Focusable); ok && o.Visible() {
		all = append(all, f)
	}
	for _, c := range partsOf(o) {
		if o.Visible() {
			all = controls(c, all)
		}
	}
	return all
}

// The findings are worked by the keyboard alone: a key opens the list, Tab reaches it, the arrow
// keys choose, Enter leads to the fix, Enter makes it, and the list has the
// keyboard again.
func TestFindingsByKeyboard(t *testing.T) {
	w := withFindings(t)
	c := w.win.Canvas()
	list := controls(w.desk.Findings.Object, nil)[0]
	for range 40 {
		if c.Focused() != list {
			c.FocusNext()
		}
	}
	if c.Focused() != list {
		t.Fatal("Tab does not reach the list")
	}
	found := w.session.Result().Findings
	press(w, fyne.KeyDown)
	press(w, fyne.KeyDown)
	press(w, fyne.KeyUp)
	if sel := w.session.Selection(); len(sel) != 1 || sel[0].Place != found[0].Place {
		t.Fatalf("the arrow keys have chosen %v", sel)
	}
	press(w, fyne.KeyReturn)
	b, ok := c.Focused().(*field.Button)
	if !ok || !strings.HasPrefix(b.Text, "Mend it") {
		t.Fatalf("Enter leads to %v", c.Focused())
	}
	press(w, fyne.KeyReturn)
	for _, f := range w.session.Result().Findings {
		if f.Rule == found[0].Rule && f.Place == found[0].Place {
			t.Fatalf("it is still found: %v", f.What)
		}
	}
	if c.Focused() != list {
		t.Errorf("after the fix the focus is at %v", c.Focused())
	}
	press(w, fyne.KeyEnd)
	press(w, fyne.KeyReturn)
	press(w, fyne.KeyEscape)
	if c.Focused() != nil {
		t.Error("Esc does not lead back to the drawing")
	}
}

// Every row of the list shows its whole text, also in a narrow pane.
func TestFindingsAreWhole(t *testing.T) {
	w := withFindings(t)
	for _, width := range []float32{1366, 1000} {
		w.win.Resize(fyne.NewSize(width, 740))
		rows := 0
		for _, o := range test.LaidOutObjects(w.desk.Findings.Object) {
			l, ok := o.(*field.Label)
			if !ok || l.Wrapping != fyne.TextWrapWord || !strings.Contains(l.Text, ": ") || l.TextStyle.Bold {
				continue
			}
			for _, f := range w.session.Result().Findings {
				if l.Text != w.say().Say(f.Where)+": "+w.say().Say(f.What) {
					continue
				}
				rows++
				if l.MinSize().Height > l.Size().Height {
					t.Errorf("%v wide: %q needs %v of height and has %v", width, l.Text, l.MinSize().Height, l.Size().Height)
				}
			}
		}
		if rows < 2 {
			t.Errorf("%v wide: %d rows are shown", width, rows)
		}
	}
}

// An empty list says what was looked at, as the bar does, and Tab passes it by.
func TestNothingFoundIsSaid(t *testing.T) {
	w, _, _ := newWindow(t, "")
	for _, f := range w.session.Result().Findings { // what the demo accepts
		w.Do(edit.SetSeverity{Rule: f.Rule, Severity: "off"})
	}
	all := len(check.Rules())
	on := all - len(w.session.Project().Checks.Severity)
	w.do("findings")
	text := replay.Words(w.desk.Findings.Object)
	for _, want := range []string{fmt.Sprintf("13 fronts, 62 holes, %d rules: nothing found", on), "fronts: 13", fmt.Sprintf("%d of %d", on, all)} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not said in %q", want, text)
		}
	}
	for _, one := range controls(w.desk.Findings.Object, nil) {
		if _, chip := one.(*bar.Button); !chip {
			t.Errorf("there is still %T to reach", one)
		}
	}
	w.Do(edit.SetSeverity{Rule: check.Rules()[0].Name, Severity: "off"})
	text = replay.Words(w.desk.Findings.Object)
	if !strings.Contains(text, fmt.Sprintf("%d of %d", on-1, all)) {
		t.Errorf("a rule that is off counts: %q", text)
	}
}
