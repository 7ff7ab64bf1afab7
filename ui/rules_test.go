package ui

import (
	"testing"

	"frontlay/layout/check"
	"frontlay/model/length"
)

// The limits of the check can be set in the window, in the project's unit, go
// back to the usual ones when their fields are emptied, and can be undone.
func TestLimitsAreSetInTheWindow(t *testing.T) {
	w, _, _ := newWindow(t, "")
	rows := 0
	for _, r := range check.Rules() {
		for _, l := range r.Limits {
			rows++
			row := w.limitRow(l)
			set := func() *length.Length {
				if v, there := w.session.Project().Checks.Limits[l.Key]; there {
					return &v
				}
				return nil
			}
			if row.Entry.Text != "" || row.Entry.PlaceHolder == "" {
				t.Errorf("%v: the usual figure is not grey: %q, %q", l.Title, row.Entry.Text, row.Entry.PlaceHolder)
			}
			if row.Entry.SetText("1/4 in"); !row.Entry.Take() || set() == nil || *set() != length.Inch/4 {
				t.Errorf("%v: typed 1/4 in, it is %v", l.Title, set())
			}
			if row.Entry.SetText("-1"); row.Entry.Take() {
				t.Errorf("%v: a negative limit was taken", l.Title)
			}
			row.Entry.Restore()
			if row.Entry.SetText(""); !row.Entry.Take() || set() != nil {
				t.Errorf("%v: an emptied field leaves %v", l.Title, set())
			}
			w.do("undo")
			if set() == nil {
				t.Errorf("%v: undo does not give the limit back", l.Title)
			}
			w.do("undo")
		}
	}
	if rows == 0 || w.session.Unsaved() {
		t.Errorf("%d limits; unsaved after undo: %v", rows, w.session.Unsaved())
	}
}

// A limit that is set holds in the check at once.
func TestALimitHoldsAtOnce(t *testing.T) {
	w, _, _ := newWindow(t, "")
	for _, l := range check.Limits() {
		if l.Key == "least_reveal" {
			row := w.limitRow(l)
			row.Entry.SetText("4")
			row.Entry.Take()
		}
	}
	if len(w.session.Result().Findings) == 0 {
		t.Error("a gap of 3 mm is let pass where 4 mm are asked for")
	}
}
