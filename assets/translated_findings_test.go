package assets_test

import (
	"path/filepath"
	"strings"
	"testing"

	"frontlay/assets"
	"frontlay/layout"
	"frontlay/layout/projecttest"
	"frontlay/model/message"
)

// Every rule of the check has a project that it flags; what it says there must
// come out whole in every language, with the same figures as in English.
func TestFindingsAreSaidInEveryLanguage(t *testing.T) {
	paths, err := filepath.Glob("../testdata/rules/*/flagged.yaml")
	if err != nil || len(paths) < 20 {
		t.Fatalf("%d projects are found, %v", len(paths), err)
	}
	for _, code := range assets.Languages() {
		all := catalogue(t, code)
		say := message.Language{Comma: message.DecimalComma(all), Catalogue: all}
		english := message.Language{Comma: say.Comma}
		for _, path := range paths {
			rule := filepath.Base(filepath.Dir(path))
			for _, found := range layout.Solve(projecttest.Read(t, path)).Findings {
				for _, m := range []message.Message{found.Where, found.What, found.Change, found.Flag} {
					said, was := say.Say(m), english.Say(m)
					if strings.Contains(said, "%!") || strings.Contains(said, "%v") {
						t.Errorf("%s: %s: %q", code, rule, said)
					}
					if a, b := figures(said), figures(was); a != b {
						t.Errorf("%s: %s: %q has the figures %s, %q has %s", code, rule, was, b, said, a)
					}
				}
				if say.Say(found.What) == english.Say(found.What) {
					t.Errorf("%s: %s: %q is not translated", code, rule, english.Say(found.What))
				}
			}
		}
	}
}

// figures counts the digits of a text, in whatever order its figures stand.
func figures(s string) string {
	var counts [10]int
	for _, r := range s {
		if r >= '0' && r <= '9' {
			counts[r-'0']++
		}
	}
	var b strings.Builder
	for digit, n := range counts {
		b.WriteString(strings.Repeat(string(rune('0'+digit)), n))
	}
	return b.String()
}
