package check

import (
	"testing"

	"frontlay/model"
	"frontlay/model/length"
)

// Every limit of the model is one that a project can set at one rule, and what is
// told as usual is what holds where it is not set.
func TestEveryLimitBelongsToARule(t *testing.T) {
	rules := map[model.Limit]string{}
	usual := limitsOf(&model.Project{})
	for _, r := range Rules() {
		for _, l := range r.Limits() {
			if rules[l.Which] != "" || l.Title.Empty() || !l.Which.Known() {
				t.Errorf("%s: limit %d is not whole, or is that of %q too", r.Name, l.Which, rules[l.Which])
			}
			rules[l.Which] = r.Name
			p := &model.Project{}
			set := func(v length.Length) limits {
				*p.Checks.Limits.Of(l.Which) = &v
				return limitsOf(p)
			}
			if set(l.Usual + length.Millimetre); limitsOf(p) == usual {
				t.Errorf("%s: limit %d changes nothing", r.Name, l.Which)
			}
			if !l.Diameter && set(l.Usual) != usual {
				t.Errorf("%s: the usual %v of limit %d is not what holds", r.Name, l.Usual, l.Which)
			}
		}
	}
	for which := model.Limit(0); which.Known(); which++ {
		if rules[which] == "" {
			t.Errorf("limit %d belongs to no rule", which)
		}
	}
}
