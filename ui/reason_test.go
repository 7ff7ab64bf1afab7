package ui

import (
	"slices"
	"testing"

	"fyne.io/fyne/v2"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/field"
)

// reasonIn is the field for the reason to accept the chosen finding.
func reasonIn(w *window) *field.Text {
	for _, f := range controls(w.desk.Findings.Object, nil) {
		if t, ok := f.(*field.Text); ok {
			return t
		}
	}
	return nil
}

// A reason that is being typed stays, with the keyboard in it, while something
// else is changed; another finding gets an empty field.
func TestATypedReasonStays(t *testing.T) {
	w := withFindings(t)
	before := w.session.Project().Checks.Accepted
	w.desk.Findings.Choose(1)
	layOut(w)
	const text = "known and wanted"
	reasonIn(w).SetText(text)
	w.win.Canvas().Focus(reasonIn(w))
	for _, c := range []struct {
		name   string
		change func()
	}{
		{"look", func() { w.do("dark") }},
		{"document", func() { w.Do(edit.Set{At: model.Whole, Key: "title", Value: "another"}) }},
		{"undo", func() { w.do("undo") }},
	} {
		c.change()
		if got := reasonIn(w); got.Text != text {
			t.Errorf("%s: the reason is %q", c.name, got.Text)
		} else if w.win.Canvas().Focused() != fyne.Focusable(got) {
			t.Errorf("%s: the keyboard goes to %s", c.name, named(w.win.Canvas().Focused()))
		}
	}
	w.desk.Findings.Choose(1)
	if got := reasonIn(w).Text; got != "" {
		t.Errorf("another finding has the reason %q", got)
	}
	w.desk.Findings.Choose(-1)
	reasonIn(w).SetText(text)
	reasonIn(w).OnSubmitted("")
	added := slices.DeleteFunc(slices.Clone(w.session.Project().Checks.Accepted), func(a model.Accepted) bool { return slices.Contains(before, a) })
	if len(added) != 1 || added[0].Reason != text {
		t.Errorf("beside what the demo accepts, these are accepted: %v", added)
	}
}

// The last finding takes its list away; the keyboard goes back to the drawing
// rather than to what is not seen.
func TestTheKeyboardLeavesAnEmptyList(t *testing.T) {
	w, _, _ := newWindow(t, "")
	for _, f := range w.session.Result().Findings { // what the demo accepts would stay in the list
		w.Do(edit.SetSeverity{Rule: f.Rule, Severity: "off"})
	}
	low := -20 * length.Millimetre
	w.Do(edit.Set{At: model.Place{}, Key: "drop", Value: low})
	w.do("findings")
	layOut(w)
	w.desk.Findings.Choose(1)
	c := w.win.Canvas()
	c.Focus(controls(w.desk.Findings.Object, nil)[0])
	if named(c.Focused()) != "*findings.list" {
		t.Fatalf("the focus is at %s", named(c.Focused()))
	}
	for range w.session.Result().Findings {
		press(w, fyne.KeyHome)
		w.do("fix")
	}
	if n := len(w.session.Result().Findings); n != 0 {
		t.Fatalf("%d findings are left", n)
	}
	if f := c.Focused(); f != nil {
		t.Errorf("%s has the focus and is not seen", named(f))
	}
}

// A list that was emptied behind a page hands the keys to the drawing when the page
// is closed.
func TestAListEmptiedBehindAPage(t *testing.T) {
	w := withFindings(t)
	layOut(w)
	c := w.win.Canvas()
	c.SetOnTypedKey(w.typedKey)
	c.Focus(controls(w.desk.Findings.Object, nil)[0])
	w.do("rules")
	for len(w.session.Result().Findings) > 0 {
		w.Do(edit.SetSeverity{Rule: w.session.Result().Findings[0].Rule, Severity: "off"})
	}
	press(w, fyne.KeyEscape)
	w.session.Select(w.face(2))
	press(w, fyne.KeyDown)
	if f := c.Focused(); f != nil || w.session.Selection()[0] != w.face(1) {
		t.Errorf("%s has the focus, the drawing has chosen %v", named(f), w.session.Selection())
	}
}
