package edit_test

import (
	"testing"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
)

// Every limit of the check can be set and be the usual one again; what makes no
// sense is refused.
func TestLimitsOfTheCheck(t *testing.T) {
	p := sample()
	seen := map[**length.Length]bool{}
	for which := model.Limit(0); which.Known(); which++ {
		five := mm(5)
		next, err := edit.SetCheckLimit{Which: which, Value: &five}.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		at := next.Checks.Limits.Of(which)
		if *at == nil || **at != mm(5) || seen[at] {
			t.Errorf("limit %d is %v", which, *at)
		}
		seen[at] = true
		set := 0
		for other := model.Limit(0); other.Known(); other++ {
			if *next.Checks.Limits.Of(other) != nil {
				set++
			}
		}
		if back, err := (edit.SetCheckLimit{Which: which}).Apply(next); err != nil || set != 1 || back.Checks.Limits != (model.Limits{}) {
			t.Errorf("limit %d: %d are set; back to the usual: %+v, %v", which, set, back.Checks.Limits, err)
		}
	}
	set := func(p *model.Project, which model.Limit, v length.Length) (*model.Project, error) {
		return edit.SetCheckLimit{Which: which, Value: &v}.Apply(p)
	}
	if _, err := set(p, model.Web, -1); err == nil {
		t.Error("a negative limit was taken")
	}
	if _, err := set(p, model.Web, mm(2001)); err == nil {
		t.Error("a web of two metres was taken")
	}
	if _, err := set(p, model.WideFront, mm(2001)); err != nil {
		t.Error(err)
	}
	if _, err := set(p, 200, 0); err == nil {
		t.Error("an unknown limit was taken")
	}
	low, err := set(p, model.GreatestReveal, mm(4))
	if err != nil {
		t.Fatal(err)
	}
	if _, err := set(low, model.LeastReveal, mm(5)); err == nil {
		t.Error("a least reveal above the greatest was taken")
	}
}
