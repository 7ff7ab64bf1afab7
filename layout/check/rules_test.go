package check

import (
	"flag"
	"fmt"
	"strings"
	"testing"

	"frontlay/assets/language"
	"frontlay/assets/manual"
	"frontlay/assets/manual/manualtest"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Every rule says what it forbids, even where that is nothing: one about holes
// that was silent would be printed as if they could be drilled.
func TestEveryRuleSaysWhatItForbids(t *testing.T) {
	for _, r := range Rules() {
		if r.Forbids != Nothing && r.Forbids != Drilling && r.Forbids != Screwing {
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

var update = flag.Bool("update", false, "write the rules in the manual anew")

// TestRulesPage holds what the manual says of the rules to them: every rule is listed
// once and is explained.
func TestRulesPage(t *testing.T) {
	for _, code := range manual.Languages() {
		say, err := language.Read(code)
		if err != nil {
			t.Fatal(err)
		}
		var b strings.Builder
		seen := map[string]bool{}
		for _, r := range Rules() {
			if seen[r.Name] || r.Doc.Empty() || r.Title.Empty() {
				t.Errorf("rule %q is listed twice or not explained", r.Name)
			}
			seen[r.Name] = true
			fmt.Fprintf(&b, "## %s\n\n`%s`, %s\n\n%s\n", say.Say(r.Title), r.Name, say.Say(r.Severity.Word()), say.Say(r.Doc))
			for i, l := range r.Limits {
				unset := l.Unset
				if unset.Empty() {
					unset = message.New("%v", l.Usual)
				}
				if i == 0 {
					b.WriteString("\n")
				}
				fmt.Fprintf(&b, "- `%s`: %s; %s\n", l.Key, say.Say(l.Title), say.Say(message.New("usual: %v", unset)))
			}
			b.WriteString("\n")
		}
		manualtest.Made(t, code+"/reference-rules.md", b.String(), *update)
	}
}
