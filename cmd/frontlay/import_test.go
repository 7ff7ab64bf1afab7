package main

import (
	"os/exec"
	"path/filepath"
	"runtime"
	"sort"
	"strings"
	"testing"
)

// mayImport is the import graph as text: what each part of frontlay may import,
// of its own and of others. A part's own packages are always allowed.
const mayImport = `
model/length:
model/message:      model/length
model/edit:         model model/length model/message
model/history:      model model/message
model/yamlfile:     model model/length model/message gopkg.in/yaml.v3
model/disk:         model/message
model:              model/length
layout/plane:       model/length
layout/divide:      model model/length
layout/plan:        layout/plane layout/divide model
layout/check:       layout/plane layout/plan model
layout/drawing:     layout/plane model
layout/drawing/svg: layout model
layout/drawing/dxf: layout model
layout/ink:         layout model
layout/view:        layout model
layout/sheet:       layout model
layout/list:        layout model
layout:             layout model
pdfout:             layout model github.com/jung-kurt/gofpdf golang.org/x/image
ui:                 ui layout model assets fyne.io/fyne/v2
assets:
cmd/frontlay:       ui pdfout layout model assets fyne.io/fyne/v2/app
`

// TestImportGraph reads what every package really imports and compares. It also
// holds that only one file may start Fyne, so that all others build without cgo.
func TestImportGraph(t *testing.T) {
	rules := readRules(t)
	root := repository(t)
	out, err := exec.Command("go", "list", "-tags", "ci", "-f", `{{.ImportPath}}{{range .Imports}} {{.}}{{end}}`, "frontlay/...").Output()
	if err != nil {
		t.Fatalf("go list: %v", err)
	}
	for _, line := range strings.Split(strings.TrimSpace(string(out)), "\n") {
		fields := strings.Fields(line)
		pkg := strings.TrimPrefix(fields[0], "frontlay/")
		part, allowed := ruleFor(rules, pkg)
		if part == "" {
			t.Errorf("package %s has no line in the import graph", pkg)
			continue
		}
		for _, imp := range fields[1:] {
			own := strings.HasPrefix(imp, "frontlay/")
			imp = strings.TrimPrefix(imp, "frontlay/")
			if !own && !strings.Contains(strings.SplitN(imp, "/", 2)[0], ".") {
				continue // the standard library
			}
			if own && within(imp, part) || permitted(imp, allowed) {
				continue
			}
			t.Errorf("%s may not import %s", pkg, imp)
		}
	}
	starters, err := exec.Command("grep", "-rl", "--include=*.go", `"fyne.io/fyne/v2/app"`, root).Output()
	if err != nil {
		t.Fatalf("nothing starts Fyne: %v", err)
	}
	var files []string
	for _, f := range strings.Fields(string(starters)) {
		if !strings.HasSuffix(f, "_test.go") {
			files = append(files, f)
		}
	}
	if len(files) != 1 || filepath.Dir(files[0]) != filepath.Join(root, "cmd", "frontlay") {
		t.Errorf("fyne/v2/app belongs in one file of cmd/frontlay, but is imported in %v", files)
	}
}

func repository(t *testing.T) string {
	_, file, _, ok := runtime.Caller(0)
	if !ok {
		t.Fatal("the test's own place is not known")
	}
	return filepath.Join(filepath.Dir(file), "..", "..")
}

func readRules(t *testing.T) map[string][]string {
	rules := map[string][]string{}
	for _, line := range strings.Split(strings.TrimSpace(mayImport), "\n") {
		part, allowed, ok := strings.Cut(line, ":")
		if !ok {
			t.Fatalf("a line without a colon: %q", line)
		}
		rules[part] = strings.Fields(allowed)
	}
	return rules
}

// ruleFor finds the longest part that a package belongs to.
func ruleFor(rules map[string][]string, pkg string) (string, []string) {
	var parts []string
	for p := range rules {
		if within(pkg, p) {
			parts = append(parts, p)
		}
	}
	if len(parts) == 0 {
		return "", nil
	}
	sort.Slice(parts, func(a, b int) bool { return len(parts[a]) > len(parts[b]) })
	return parts[0], rules[parts[0]]
}

func within(pkg, part string) bool { return pkg == part || strings.HasPrefix(pkg, part+"/") }

func permitted(imp string, allowed []string) bool {
	for _, a := range allowed {
		// fyne/v2/app is for cmd alone; everything else goes with its module.
		if imp == "fyne.io/fyne/v2/app" && a != imp {
			continue
		}
		if within(imp, a) {
			return true
		}
	}
	return false
}
