package main

import (
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"
)

// imports is the import graph as text: a line for each package, and behind the
// colon everything that it imports, its tests apart. frontlay's own packages are
// said without "frontlay/", the standard library is not said, other modules are
// said as a whole, but for the one package that starts a window.
const imports = `
model/length:
model/message: model/length
model: model/length model/message
model/edit: model model/figure model/length model/message
model/figure: model model/length model/message
model/history: model/message
model/yamlfile: model model/figure model/length model/message gopkg.in/yaml.v3
model/yamlfile/schematest:
layout/plane: model/length
layout/divide: model model/length
layout/plan: layout/divide layout/plane model model/length model/message
layout/season: layout/plan model model/length model/message
layout/minimax:
layout/asbuilt: layout/minimax layout/plan model model/length model/message
layout/tolerance: layout/plan model model/length model/message gonum.org/v1/gonum
layout/opening: layout/minimax layout/plan layout/plane model model/length model/message gonum.org/v1/gonum
layout/drawing: layout/lettering layout/mark layout/plane model model/length model/message
layout/mark: layout/plane model/length
layout/tipping: layout/plan model model/length model/message
layout/check: layout/mark layout/opening layout/plan layout/plane layout/season layout/tipping layout/tolerance model model/edit model/length model/message
layout/cutting: layout/plane model/length
layout/wood: model model/message
layout/view: layout/check layout/cutting layout/drawing layout/mark layout/opening layout/plan layout/plane layout/season layout/tipping layout/tolerance model model/figure model/length model/message
layout/list: layout/asbuilt layout/check layout/cutting layout/opening layout/plan layout/plane layout/season layout/tipping layout/tolerance model model/length model/message
layout/lettering: model/length
layout/letter: layout/drawing layout/mark layout/plane model model/length model/message
layout/sheet: layout/asbuilt layout/check layout/cutting layout/drawing layout/letter layout/lettering layout/list layout/opening layout/plan layout/plane layout/view model model/length model/message
layout/ink: layout/drawing layout/letter layout/lettering layout/mark layout/plane layout/wood model/length model/message
layout/drawing/dxf: layout/drawing layout/mark layout/plane model/length model/message
layout/drawing/svg: layout/drawing layout/ink layout/lettering layout/plane model/length model/message
layout/export: layout/check layout/drawing layout/drawing/dxf layout/drawing/svg layout/export/picture layout/lettering layout/list layout/plan layout/plane layout/sheet layout/view model/length model/message
layout/export/picture: layout/ink layout/lettering layout/sheet model/length model/message golang.org/x/image
layout: layout/asbuilt layout/check layout/opening layout/plan layout/season layout/tipping layout/tolerance model model/edit model/message
layout/propose: layout layout/check layout/plan model model/edit model/length model/message
layout/projecttest: assets layout/check model model/length model/yamlfile pgregory.net/rapid
pdfout: layout/ink layout/lettering layout/sheet model/length model/message github.com/jung-kurt/gofpdf golang.org/x/image
pdfout/lp: layout/sheet model/length model/message
ui/look: assets layout/drawing layout/wood fyne.io/fyne/v2
ui/field: model/edit model/length model/message fyne.io/fyne/v2
ui/session: layout layout/check layout/drawing model model/edit model/figure model/history model/length model/message
ui/tool: layout/drawing layout/plan layout/plane model model/edit model/length model/message ui/session
ui/paint: layout/drawing layout/letter layout/mark layout/plane layout/wood model model/length model/message ui/look fyne.io/fyne/v2
ui/screen: layout/drawing layout/export/picture layout/ink layout/letter layout/lettering layout/mark layout/plan layout/plane layout/sheet layout/view model model/edit model/length model/message ui/bar ui/field ui/look ui/paint ui/session ui/tip ui/tool fyne.io/fyne/v2
ui/inspector: layout/asbuilt layout/check layout/drawing layout/opening layout/plan layout/season layout/tipping layout/tolerance layout/view model model/edit model/figure model/length model/message ui/field ui/look ui/session ui/sketch ui/tool fyne.io/fyne/v2
ui/findings: layout/check layout/drawing layout/view model model/edit model/message ui/bar ui/field ui/look ui/session ui/tip ui/tool fyne.io/fyne/v2
ui/sketch: layout/drawing layout/letter layout/plane layout/view model/length model/message ui/look ui/paint fyne.io/fyne/v2
ui/hardware: layout/drawing layout/view model model/figure model/history model/length model/message ui/field ui/look ui/sketch ui/tool fyne.io/fyne/v2
ui/replay: layout/drawing ui/field ui/screen fyne.io/fyne/v2
ui/ask: model/message ui/field fyne.io/fyne/v2
model/store: model/message
model/store/record: model/store
model/pack: model model/message model/store model/yamlfile
ui/arrange: layout/drawing model model/edit model/length model/message ui/command ui/session fyne.io/fyne/v2
ui/desk: layout/check layout/drawing model model/message ui/bar ui/command ui/field ui/findings ui/inspector ui/look ui/screen ui/session ui/tip ui/tool fyne.io/fyne/v2
ui/command: model/message fyne.io/fyne/v2
ui/page/pagetest: assets layout layout/check layout/drawing model model/edit model/length model/message model/yamlfile ui/ask ui/field ui/look ui/session ui/tool fyne.io/fyne/v2
ui/page/help: assets assets/manual layout/list model/message ui/ask ui/field ui/look fyne.io/fyne/v2
ui/page/rules: layout/check layout/drawing model model/edit model/length model/message ui/ask ui/field ui/session ui/tool fyne.io/fyne/v2
ui/page/steps: model/message ui/ask ui/command ui/field ui/session fyne.io/fyne/v2
ui/work: assets layout layout/check model model/message model/pack model/store model/yamlfile ui/session
ui/page/printing: layout/sheet model/length model/message ui/ask ui/field ui/page/output ui/screen ui/session fyne.io/fyne/v2
ui/page/start: assets layout layout/check layout/drawing layout/view model model/edit model/figure model/length model/message model/yamlfile ui/ask ui/command ui/field ui/look ui/screen ui/session ui/tool fyne.io/fyne/v2
ui: assets assets/language layout layout/drawing model model/edit model/length model/message model/pack ui/arrange ui/ask ui/command ui/desk ui/field ui/files ui/look ui/page/dividing ui/page/exporting ui/page/help ui/page/output ui/page/printing ui/page/rules ui/page/sheets ui/page/start ui/page/steps ui/screen ui/session ui/tip ui/tool ui/work fyne.io/fyne/v2
ui/tip: ui/look fyne.io/fyne/v2
ui/bar: layout/drawing ui/field ui/look ui/tip fyne.io/fyne/v2
ui/files: assets model model/message model/pack ui/ask ui/command ui/session ui/work fyne.io/fyne/v2
ui/page/sheets: model model/edit model/length model/message model/yamlfile ui/ask ui/command ui/field ui/hardware ui/session ui/tool fyne.io/fyne/v2
ui/page/output: model/message ui/ask ui/field fyne.io/fyne/v2
ui/page/dividing: layout/drawing layout/propose layout/view model model/edit model/length model/message ui/ask ui/field ui/look ui/screen ui/session fyne.io/fyne/v2
ui/page/exporting: layout/export model/message ui/ask ui/field ui/page/output ui/session fyne.io/fyne/v2
assets:
assets/language: assets model/message
cmd/dist: assets golang.org/x/image
assets/manual:
assets/manual/manualtest:
cmd/frontlay/locale:
cmd/frontlay: assets assets/language assets/manual cmd/frontlay/locale layout layout/check layout/export layout/list layout/plan layout/propose layout/sheet model model/length model/message model/pack model/store model/store/record model/yamlfile pdfout pdfout/lp ui ui/work fyne.io/fyne/v2 fyne.io/fyne/v2/app
`

// startsFyne needs cgo: only one file may import it, all others build without.
const startsFyne = "fyne.io/fyne/v2/app"

// TestImportGraph compares the text with what every package really imports: a
// package without a line fails, and so do a line without a package, an import
// that the line does not allow, and an allowance that nobody uses.
func TestImportGraph(t *testing.T) {
	said := map[string]string{}
	for _, line := range strings.Split(strings.TrimSpace(imports), "\n") {
		pkg, _, ok := strings.Cut(line, ":")
		if !ok {
			t.Fatalf("a line without a colon: %q", line)
		}
		if _, twice := said[pkg]; twice {
			t.Errorf("%s has two lines in the import graph", pkg)
		}
		said[pkg] = line
	}
	real := realImports(t)
	for pkg, imported := range real {
		line := strings.TrimSpace(pkg + ": " + strings.Join(imported, " "))
		switch was, ok := said[pkg]; {
		case !ok:
			t.Errorf("package %s has no line in the import graph; if all its imports are right, it is\n%s", pkg, line)
		case was != line:
			_, allowed, _ := strings.Cut(was, ":")
			t.Errorf("%s may not import %v and does not use its allowance of %v; if that is right, its line becomes\n%s", pkg,
				without(imported, strings.Fields(allowed)), without(strings.Fields(allowed), imported), line)
		}
	}
	for pkg := range said {
		if _, ok := real[pkg]; !ok {
			t.Errorf("the import graph has a line for %s, which is no package", pkg)
		}
	}
}

// realImports asks the go command what each package imports, said as in imports
// and sorted: own packages first.
func realImports(t *testing.T) map[string][]string {
	t.Helper()
	out, err := exec.Command("go", "list", "-deps", "-tags", "ci", "-f",
		`{{.ImportPath}} {{with .Module}}{{.Path}}{{else}}-{{end}} {{join .Imports " "}}`, "frontlay/...").Output()
	if err != nil {
		t.Fatalf("go list: %v", err)
	}
	lines := strings.Split(strings.TrimSpace(string(out)), "\n")
	modules := map[string]string{}
	for _, line := range lines {
		fields := strings.Fields(line)
		modules[fields[0]] = fields[1]
	}
	real := map[string][]string{}
	for _, line := range lines {
		fields := strings.Fields(line)
		if fields[1] != "frontlay" {
			continue
		}
		var own, others []string
		for _, imp := range fields[2:] {
			switch module := modules[imp]; {
			case module == "frontlay":
				own = append(own, strings.TrimPrefix(imp, "frontlay/"))
			case imp == startsFyne:
				others = append(others, imp)
			case module != "-" && module != "":
				others = append(others, module)
			}
		}
		slices.Sort(own)
		slices.Sort(others)
		real[strings.TrimPrefix(fields[0], "frontlay/")] = append(own, slices.Compact(others)...)
	}
	return real
}

// without gives the names of all that are not among some.
func without(all, some []string) []string {
	return slices.DeleteFunc(slices.Clone(all), func(name string) bool { return slices.Contains(some, name) })
}

// TestOneFileStartsFyne holds what lets everything else build and be tested with
// CGO_ENABLED=0.
func TestOneFileStartsFyne(t *testing.T) {
	root := repository(t)
	starters, err := exec.Command("grep", "-rl", "--include=*.go", "--exclude=*_test.go", `"`+startsFyne+`"`, root).Output()
	if err != nil {
		t.Fatalf("nothing starts Fyne: %v", err)
	}
	files := strings.Fields(string(starters))
	if len(files) != 1 || filepath.Dir(files[0]) != filepath.Join(root, "cmd", "frontlay") {
		t.Errorf("%s belongs in one file of cmd/frontlay, but is imported in %v", startsFyne, files)
	}
}

func repository(t *testing.T) string {
	t.Helper()
	_, file, _, ok := runtime.Caller(0)
	if !ok {
		t.Fatal("the test's own place is not known")
	}
	return filepath.Join(filepath.Dir(file), "..", "..")
}
