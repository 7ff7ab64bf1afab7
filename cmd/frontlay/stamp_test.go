package main

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"frontlay/assets"
)

// Paper fits a project until something that is cut or drilled changes; then it is
// told which fronts it must not be used for, where it was printed here.
func TestPaperIsToldFromItsProjectByItsStamp(t *testing.T) {
	demo := string(assets.Demo())
	path := write(t, "demo.yaml", demo)
	out := filepath.Join(t.TempDir(), "demo.pdf")
	if code, _, errs := do(t, "print", path, "-o", out, "--only", "jig"); code != exitFine || errs != "" {
		t.Fatalf("exit %d, %s", code, errs)
	}
	_, said, _ := do(t, "check", path, "--stamp", "00000000")
	stamp := regexp.MustCompile("its stamp is ([0-9A-F]{8})").FindStringSubmatch(said)
	if stamp == nil || !strings.Contains(said, "not printed by you") {
		t.Fatalf("of a stamp that nobody printed is said %q", said)
	}
	for _, c := range []struct {
		name, from, to string
		code           int
		says           []string
		not            string
	}{
		{"nothing", "", "", exitFine, []string{"fits this project"}, "Changed"},
		{"a name", "Jars", "Pots", exitFine, []string{"fits this project"}, "Changed"},
		{"a drop", "name: Brushes", "name: Brushes, drop: 1", exitFindings, []string{"Changed: fronts 3.", "All other fronts are as they were"}, "1, 3"},
		{"a board of the carcass", "back: {", "back: {lipping: 1, ", exitFindings, []string{"Every front is as it was", "The carcasses, their boards"}, "Changed"},
	} {
		t.Run(c.name, func(t *testing.T) {
			changed := strings.Replace(demo, c.from, c.to, 1)
			if changed == demo && c.from != "" {
				t.Fatalf("the demo has no %q", c.from)
			}
			if err := os.WriteFile(path, []byte(changed), 0o666); err != nil {
				t.Fatal(err)
			}
			code, said, errs := do(t, "check", path, "--stamp", stamp[1])
			if code != c.code || errs != "" || strings.Contains(said, c.not) {
				t.Errorf("exit %d, said %q and %q", code, said, errs)
			}
			for _, s := range c.says {
				if !strings.Contains(said, s) {
					t.Errorf("said %q, not %q", said, s)
				}
			}
		})
	}
	if code, _, errs := do(t, "check", path, "--stamp", "nonsense"); code != exitFailed || !strings.Contains(errs, "eight digits") {
		t.Errorf("nonsense: exit %d, %q", code, errs)
	}
}
