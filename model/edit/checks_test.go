package edit_test

import (
	"testing"

	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
)

// web is a limit as rules have them.
var web = model.Limit{Key: "web", Usual: 3 * length.Millimetre, Greatest: 2 * length.Metre}

// Every limit of the check can be set and be the usual one again; what makes no
// sense is refused.
func TestLimitsOfTheCheck(t *testing.T) {
	p := sample()
	for _, l := range check.Limits() {
		five := mm(5)
		next, err := edit.SetCheckLimit{Limit: l, Value: &five}.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		if l.In(next) != mm(5) || len(next.Checks.Limits) != 1 || len(p.Checks.Limits) != 0 {
			t.Errorf("%s is %v among %v", l.Key, l.In(next), next.Checks.Limits)
		}
		if back, err := (edit.SetCheckLimit{Limit: l}).Apply(next); err != nil || back.Checks.Limits != nil || l.In(back) != l.Usual {
			t.Errorf("%s: back to the usual: %v, %v", l.Key, back.Checks.Limits, err)
		}
		for _, v := range []length.Length{l.Least - 1, l.Greatest + 1} {
			if _, err := (edit.SetCheckLimit{Limit: l, Value: &v}).Apply(p); err == nil {
				t.Errorf("%s of %v was taken", l.Key, v)
			}
		}
	}
	least := model.Limit{Key: "least", Greatest: length.Metre, NotAbove: "greatest"}
	greatest := model.Limit{Key: "greatest", Greatest: length.Metre, NotBelow: "least"}
	for _, ends := range [][2]model.Limit{{least, greatest}, {greatest, least}} {
		one, two := mm(4), mm(5)
		if ends[0].Key == "least" {
			one, two = two, one
		}
		set, err := edit.SetCheckLimit{Limit: ends[0], Value: &one}.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := (edit.SetCheckLimit{Limit: ends[1], Value: &two}).Apply(set); err == nil {
			t.Errorf("a least above the greatest was taken, with %s set last", ends[1].Key)
		}
		if _, err := (edit.SetCheckLimit{Limit: ends[1], Value: &one}).Apply(set); err != nil {
			t.Error(err)
		}
	}
}
