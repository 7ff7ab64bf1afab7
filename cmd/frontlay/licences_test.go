package main

import (
	"os/exec"
	"strings"
	"testing"

	"frontlay/assets"
)

// Every module that a built program can hold has its licence in it, and no other
// has.
func TestEveryPartHasItsLicence(t *testing.T) {
	shipped := map[string]bool{}
	for _, l := range assets.Licences() {
		if len(l.Wording) < 200 {
			t.Errorf("the licence of %s is %q", l.Part, l.Wording)
		}
		if name, _, _ := strings.Cut(l.Part, " "); strings.Contains(name, ".") {
			shipped[name] = true
		}
	}
	held := map[string]bool{}
	for _, os := range []string{"linux", "windows", "darwin"} {
		c := exec.Command("go", "list", "-deps", "-tags", "migrated_fynedo", "-f", "{{with .Module}}{{.Path}}{{end}}", ".")
		c.Env = append(c.Environ(), "GOOS="+os, "CGO_ENABLED=1")
		out, err := c.Output()
		if err != nil {
			t.Fatalf("go list for %s: %v", os, err)
		}
		for _, module := range strings.Fields(string(out)) {
			if held[module] = true; module != "frontlay" && !shipped[module] {
				t.Errorf("assets/licences.txt lacks %s", module)
			}
		}
	}
	for module := range shipped {
		if !held[module] {
			t.Errorf("assets/licences.txt has %s, which is not in the program", module)
		}
	}
}
