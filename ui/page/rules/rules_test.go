package rules

import (
	"testing"

	"frontlay/layout/check"
	"frontlay/model/length"
	"frontlay/ui/page/pagetest"
)

// The limits of the check can be set in the window, in the project's unit, go
// back to the usual ones when their fields are emptied, and can be undone.
func TestLimitsAreSetInTheWindow(t *testing.T) {
	h := pagetest.New(t)
	p := page{h, h.Ask()}
	rows, setByFile := 0, 0
	for _, r := range check.Rules() {
		for _, l := range r.Limits {
			rows++
			row := p.limitRow(l)
			set := func() *length.Length {
				if v, there := h.Session().Project().Checks.Limits[l.Key]; there {
					return &v
				}
				return nil
			}
			if v := set(); v != nil { // by the demo's file
				setByFile++
				if want := h.Ask().Say().Figure(*v); row.Entry.Text != want {
					t.Errorf("%v: it is set to %s and shows %q", l.Title, want, row.Entry.Text)
				}
			} else if row.Entry.Text != "" || row.Entry.PlaceHolder == "" {
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
			h.Session().Undo()
			if set() == nil {
				t.Errorf("%v: undo does not give the limit back", l.Title)
			}
			h.Session().Undo()
		}
	}
	if setByFile == 0 || setByFile == rows {
		t.Errorf("%d of %d limits are set by the demo's file", setByFile, rows)
	}
	if rows == 0 || h.Session().Unsaved() {
		t.Errorf("%d limits; unsaved after undo: %v", rows, h.Session().Unsaved())
	}
}

// A limit that is set holds in the check at once.
func TestALimitHoldsAtOnce(t *testing.T) {
	h := pagetest.New(t)
	p := page{h, h.Ask()}
	for _, l := range check.Limits() {
		if l.Key == "least_reveal" {
			row := p.limitRow(l)
			row.Entry.SetText("4")
			row.Entry.Take()
		}
	}
	if len(h.Session().Result().Findings) == 0 {
		t.Error("a gap of 3 mm is let pass where 4 mm are asked for")
	}
}
