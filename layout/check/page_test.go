package check

import (
	"flag"
	"fmt"
	"os"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write RULES.md anew")

// TestRulesPage holds RULES.md, a page for users, to the rules: every rule is
// listed once and is explained.
func TestRulesPage(t *testing.T) {
	var b strings.Builder
	b.WriteString("# What frontlay checks\n\nMade from the rules in `layout/check`; after a change: `go test ./layout/check -run RulesPage -update`.\n\n" +
		"A project can set each rule to `error`, `warning`, `advice` or `off`, change the limits, and accept a finding with a reason, under its key `checks`.\n")
	seen := map[string]bool{}
	for _, r := range Rules() {
		if seen[r.Name] || r.Doc == "" || r.Title.Empty() {
			t.Errorf("rule %q is listed twice or not explained", r.Name)
		}
		seen[r.Name] = true
		fmt.Fprintf(&b, "\n## %s (`%s`, %s)\n\n%s\n", r.Title, r.Name, r.Severity, r.Doc)
		for i, l := range r.Limits {
			unset := l.Unset.String()
			if l.Unset.Empty() {
				unset = l.Usual.String()
			}
			if i == 0 {
				b.WriteString("\n")
			}
			fmt.Fprintf(&b, "- `%s`: %s; usually %s\n", l.Key, l.Title, unset)
		}
	}
	if *update {
		if err := os.WriteFile("RULES.md", []byte(b.String()), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	page, err := os.ReadFile("RULES.md")
	if err != nil {
		t.Fatal(err)
	}
	if string(page) != b.String() {
		t.Error("RULES.md is not what the rules say; run the test with -update")
	}
}
