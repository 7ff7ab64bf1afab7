package check

import (
	"testing"

	"frontlay/model"
	"frontlay/model/length"
)

// Every rule says what it forbids, even where that is nothing: one about holes
// that was silent would be printed as if they could be drilled.
func TestEveryRuleSaysWhatItForbids(t *testing.T) {
	for _, r := range Rules() {
		if r.Forbids != Nothing && r.Forbids != Drilling {
			t.Errorf("%s does not say what work its errors forbid", r.Name)
		}
	}
}

// Every limit has a key of its own, words and bounds, and its usual figure lies
// between them; the two ends of one range name each other.
func TestLimitsAreWhole(t *testing.T) {
	limits := map[string]model.Limit{}
	for _, l := range Limits() {
		if _, twice := limits[l.Key]; twice || l.Key == "" || l.Title.Empty() || l.Usual < l.Least || l.Usual > l.Greatest || l.Greatest <= 0 {
			t.Errorf("limit %q is not whole, or there twice: %+v", l.Key, l)
		}
		limits[l.Key] = l
		p := &model.Project{Checks: model.Checks{Limits: map[string]length.Length{l.Key: l.Usual + 1}}}
		if l.In(&model.Project{}) != l.Usual || l.In(p) != l.Usual+1 {
			t.Errorf("%s: %v holds where %v is set, %v where nothing is", l.Key, l.In(p), l.Usual+1, l.In(&model.Project{}))
		}
	}
	for _, l := range limits {
		if l.NotAbove != "" && limits[l.NotAbove].NotBelow != l.Key || l.NotBelow != "" && limits[l.NotBelow].NotAbove != l.Key {
			t.Errorf("%s is the end of a range that does not know it", l.Key)
		}
	}
}
