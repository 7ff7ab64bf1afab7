package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"frontlay/assets"
	"frontlay/layout/sheet"
)

// do runs frontlay as a shell would and gives its exit code and output.
// TestMain gives the program a folder of its own that is not the user's.
func TestMain(m *testing.M) {
	home, err := os.MkdirTemp("", "frontlay")
	if err != nil {
		panic(err)
	}
	os.Setenv("XDG_CONFIG_HOME", home)
	code := m.Run()
	os.RemoveAll(home)
	os.Exit(code)
}

func do(t *testing.T, args ...string) (code int, out, errs string) {
	t.Helper()
	var o, e bytes.Buffer
	c := console{
		out: &o, err: &e,
		now:    func() time.Time { return time.Date(2026, 3, 14, 12, 0, 0, 0, time.UTC) },
		getenv: func(string) string { return "" },
	}
	code = run(args, c)
	return code, o.String(), e.String()
}

func write(t *testing.T, name, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(path, []byte(text), 0o666); err != nil {
		t.Fatal(err)
	}
	return path
}

func TestCheckTellsByItsExitCode(t *testing.T) {
	rules := filepath.Join("..", "..", "testdata", "rules")
	cases := []struct {
		name, path string
		code       int
		says       string
	}{
		{"fine", write(t, "demo.yaml", string(assets.Demo())), exitFine, "Fronts checked: 13. Errors: 0, warnings: 0, advice: 0"},
		{"errors", filepath.Join(rules, "cover-below", "flagged.yaml"), exitFindings, "A, bay 1, front 2 (Middle): error: the front covers the drawer bottom by 14 mm; needed is 14.1 mm. To do: raise the runner by 0.1 mm"},
		{"advice only", filepath.Join(rules, "nearly-level", "flagged.yaml"), exitFine, "Errors: 0, warnings: 0, advice: 1"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			code, out, errs := do(t, "check", c.path)
			if code != c.code || !strings.Contains(out, c.says) || errs != "" {
				t.Errorf("exit %d, want %d; said %q and %q; want %q", code, c.code, out, errs, c.says)
			}
		})
	}
}

// TestBadInput gives every command input of every bad kind: one clear message
// that names the file, exit 2, and nothing changed on disk.
func TestBadInput(t *testing.T) {
	folder := t.TempDir()
	bad, err := filepath.Glob(filepath.Join("..", "..", "testdata", "bad", "*.yaml"))
	if err != nil || len(bad) == 0 {
		t.Fatal("no bad files", err)
	}
	bad = append(bad, filepath.Join(folder, "missing.yaml"), folder, os.DevNull)
	for _, path := range bad {
		before, _ := os.ReadFile(path)
		out := filepath.Join(folder, "out.pdf")
		for _, args := range [][]string{{"check", path}, {"print", path, "-o", out}} {
			code, said, errs := do(t, args...)
			if code != exitFailed || said != "" {
				t.Errorf("%v: exit %d, said %q", args, code, said)
			}
			if !strings.Contains(errs, filepath.Base(path)) || strings.Contains(errs, "panic") || len(errs) < 20 {
				t.Errorf("%v: the message is %q", args, errs)
			}
			if _, err := os.Stat(out); err == nil {
				t.Fatalf("%v wrote a PDF", args)
			}
		}
		if after, _ := os.ReadFile(path); !bytes.Equal(before, after) {
			t.Errorf("%s was changed", path)
		}
	}
}

func TestPrintWritesAPDF(t *testing.T) {
	path := write(t, "demo.yaml", string(assets.Demo()))
	out := filepath.Join(t.TempDir(), "demo.pdf")
	code, said, errs := do(t, "print", path, "-o", out, "--paper", "A3", "--only", "jig,corner", "--fronts", "1,4")
	if code != exitFine || errs != "" || !strings.HasPrefix(said, out) {
		t.Fatalf("exit %d, said %q and %q", code, said, errs)
	}
	first, err := os.ReadFile(out)
	if err != nil || !bytes.HasPrefix(first, []byte("%PDF-1.7")) {
		t.Fatalf("no PDF: %v", err)
	}
	do(t, "print", path, "-o", out, "--paper", "A3", "--only", "jig,corner", "--fronts", "1,4")
	if second, _ := os.ReadFile(out); !bytes.Equal(first, second) {
		t.Error("the same project gave other bytes the second time")
	}
}

func TestWrongArguments(t *testing.T) {
	path := write(t, "demo.yaml", string(assets.Demo()))
	cases := []struct {
		name string
		args []string
		says string
	}{
		{"no file", []string{"check"}, "no file is named"},
		{"two files", []string{"check", "a", "b"}, "one file at a time"},
		{"no output", []string{"print", path}, "-o OUT.pdf"},
		{"paper", []string{"print", path, "-o", "x.pdf", "--paper", "A99"}, "A99"},
		{"part", []string{"print", path, "-o", "x.pdf", "--only", "poster"}, "there is no part named"},
		{"front", []string{"print", path, "-o", "x.pdf", "--fronts", "0"}, "“0” is no front of this project"},
		{"front too many", []string{"print", path, "-o", "x.pdf", "--fronts", "14"}, "fronts 1 to 13"},
		{"flag", []string{"check", path, "--loud"}, "-loud"},
		{"no display", []string{path}, "no display"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			code, out, errs := do(t, c.args...)
			if code != exitFailed || !strings.Contains(errs, c.says) && hasWindow || out != "" {
				t.Errorf("exit %d, said %q and %q; want %q", code, out, errs, c.says)
			}
			if _, err := os.Stat("x.pdf"); err == nil {
				t.Error("a PDF was written")
			}
		})
	}
}

func TestNewIsFlawlessAndReplacesNothing(t *testing.T) {
	path := filepath.Join(t.TempDir(), "new.yaml")
	if code, _, errs := do(t, "new", path); code != exitFine {
		t.Fatal(errs)
	}
	code, out, _ := do(t, "check", path)
	for _, say := range []string{"[sample-sheet]", "[contents]", "Errors: 0, warnings: 1, advice: 1,"} {
		if code != exitFine || !strings.Contains(out, say) {
			t.Errorf("the new project has other findings than that its sheet is a sample and what its drawers hold is not given: %s", out)
		}
	}
	if err := os.WriteFile(path, []byte("mine"), 0o666); err != nil {
		t.Fatal(err)
	}
	if code, _, errs := do(t, "new", path); code != exitFailed || !strings.Contains(errs, "there already") {
		t.Errorf("exit %d, said %q", code, errs)
	}
	if data, _ := os.ReadFile(path); string(data) != "mine" {
		t.Error("new replaced a file")
	}
}

// A job without chosen parts is two PDFs, so that the printer's settings differ.
func TestAJobIsABookletAndTemplates(t *testing.T) {
	path := write(t, "demo.yaml", string(assets.Demo()))
	out := filepath.Join(t.TempDir(), "demo.pdf")
	code, said, errs := do(t, "print", path, "-o", out)
	if code != exitFine || errs != "" || !strings.Contains(said, "Corner templates") {
		t.Fatalf("exit %d, said %q and %q", code, said, errs)
	}
	for _, name := range []string{out, sheet.TemplateFile.Name(out)} {
		if data, err := os.ReadFile(name); err != nil || !bytes.HasPrefix(data, []byte("%PDF-1.7")) {
			t.Errorf("%s is no PDF: %v", name, err)
		}
	}
}

func TestExportWritesEveryKind(t *testing.T) {
	path := write(t, "demo.yaml", string(assets.Demo()))
	folder := filepath.Join(t.TempDir(), "machine")
	if code, _, errs := do(t, "export", path, "-o", folder); code != exitFine {
		t.Fatal(errs)
	}
	for _, kind := range []string{"svg", "dxf", "csv", "json"} {
		if files, _ := filepath.Glob(filepath.Join(folder, "*."+kind)); len(files) == 0 {
			t.Errorf("no %s was written", kind)
		}
	}
	if code, _, errs := do(t, "export", path, "-o", folder, "--only", "gcode"); code != exitFailed || !strings.Contains(errs, "gcode") {
		t.Errorf("exit %d, said %q", code, errs)
	}
}

// A printer is measured, its correction kept and used; nonsense is refused.
func TestMeasuredPrinter(t *testing.T) {
	t.Setenv("XDG_CONFIG_HOME", t.TempDir())
	t.Setenv("HOME", t.TempDir())
	page := filepath.Join(t.TempDir(), "page.pdf")
	if code, said, errs := do(t, "calibrate", "-o", page); code != exitFine || !strings.Contains(said, "170 mm across and 210 mm up") {
		t.Fatalf("exit %d, said %q and %q", code, said, errs)
	}
	path := write(t, "demo.yaml", string(assets.Demo()))
	out := filepath.Join(t.TempDir(), "demo.pdf")
	if code, _, errs := do(t, "print", path, "-o", out, "--printer", "shop"); code != exitFailed || !strings.Contains(errs, "never measured") {
		t.Errorf("exit %d, said %q", code, errs)
	}
	if code, _, _ := do(t, "calibrate", "--printer", "shop", "--measured", "150x200"); code != exitFailed {
		t.Error("a viewer's scaling was kept as a printer's fault")
	}
	if code, _, errs := do(t, "calibrate", "--printer", "shop", "--measured", "169x210"); code != exitFine {
		t.Fatal(errs)
	}
	if code, _, errs := do(t, "print", path, "-o", out, "--printer", "shop", "--only", "corner"); code != exitFine {
		t.Errorf("exit %d, said %q", code, errs)
	}
}

// A slip in a name must not cost a project.
func TestNothingIsWrittenOverAProject(t *testing.T) {
	path := write(t, "demo.yaml", string(assets.Demo()))
	other := write(t, "notes.txt", "mine")
	for _, args := range [][]string{
		{"print", path, "-o", path, "--only", "jig"},
		{"print", path, "-o", other, "--only", "jig"},
		{"calibrate", "-o", path},
	} {
		if code, _, errs := do(t, args...); code != exitFailed || !strings.Contains(errs, "left as it is") {
			t.Errorf("%v: exit %d, said %q", args, code, errs)
		}
	}
	if data, _ := os.ReadFile(path); !bytes.Equal(data, assets.Demo()) {
		t.Error("the project was overwritten")
	}
	if data, _ := os.ReadFile(other); string(data) != "mine" {
		t.Error("another file was overwritten")
	}
}

func TestFindingsAndPagesInGerman(t *testing.T) {
	path := filepath.Join("..", "..", "testdata", "rules", "cover-below", "flagged.yaml")
	_, out, errs := do(t, "check", path, "--language", "de")
	if errs != "" || !strings.Contains(out, "14,1 mm") {
		t.Errorf("said %q and %q", out, errs)
	}
	if code, _, errs := do(t, "check", path, "--language", "xx"); code != exitFailed || !strings.Contains(errs, "en, de") {
		t.Errorf("exit %d, said %q", code, errs)
	}
	pdf := filepath.Join(t.TempDir(), "de.pdf")
	if code, _, errs := do(t, "print", path, "-o", pdf, "--only", "jig", "--language", "de"); code != exitFine {
		t.Errorf("exit %d, said %q", code, errs)
	}
}

// The best divisions of a bay are printed, the best first, with what each term comes to;
// what can't be answered is said.
func TestProposals(t *testing.T) {
	demo := write(t, "demo.yaml", string(assets.Demo()))
	code, out, errs := do(t, "propose", demo, "--cabinet", "Glazes", "--fronts", "3", "--thing", "jars=210", "--thing", "brushes=60", "--best", "2")
	if code != exitFine || errs != "" {
		t.Fatalf("exit code %d: %s", code, errs)
	}
	for _, want := range []string{
		"1. 3 drawers, points: 250\n", "front 2: 245 mm, inside 210 mm, drop 0 mm; for jars\n", "for nothing in particular\n",
		"loses 150 mm of height: 148 mm to gaps, bottoms and runners, 2 mm in drawers higher than needed\n", "2. 3 drawers, points: 271\n",
	} {
		if !strings.Contains(out, want) {
			t.Errorf("it does not say %q:\n%s", want, out)
		}
	}
	_, weighed, _ := do(t, "propose", demo, "--cabinet", "1", "--fronts", "3..4", "--style", "factor", "--by", "1.25", "--weight", "jig=0", "--sheet", "boxes", "--best", "1")
	if !strings.Contains(weighed, "each 1.25 times the one above, with boxes") {
		t.Errorf("with all flags:\n%s", weighed)
	}
	for _, c := range []struct{ args, want string }{
		{"--cabinet Kiln", "no cabinet “Kiln”. Cabinets: Glazes, Test tiles, Oxides."},
		{"--cabinet Glazes --bay 2", "bays from 1 to 1"},
		{"--fronts 0", "3 or 3..5"},
		{"--style round", "Styles: free, equal, step, factor."},
		{"--style factor --by 9", "A factor lies between"},
		{"--thing jars", "no thing: write what goes in"},
		{"--thing jars=2000", "too low for what is to go in"},
		{"--sheet none", "no hardware sheet “none”"},
		{"--weight colour=3", "Weights: height=1, jig=20"},
		{"--weight jig=-1", "A weight lies between"},
	} {
		code, out, errs := do(t, append([]string{"propose", demo}, strings.Fields(c.args)...)...)
		if code != exitFailed || out != "" || !strings.Contains(errs, c.want) {
			t.Errorf("%s: exit code %d, %q, %q", c.args, code, out, errs)
		}
	}
}
