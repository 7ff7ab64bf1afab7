package main

import (
	"bytes"
	"context"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"frontlay/assets"
	"frontlay/model/yamlfile/schematest"
)

// told reads what a command told as JSON, and holds it to the schema that is printed.
func told(t *testing.T, out string) (r telling) {
	t.Helper()
	_, text, _ := do(t, "schema", "findings")
	var schema map[string]any
	var value any
	for data, into := range map[string]any{text: &schema, out: &value} {
		if err := json.Unmarshal([]byte(data), into); err != nil {
			t.Fatalf("%v: %s", err, data)
		}
	}
	if wrong := schematest.Validate(schema, value); len(wrong) > 0 {
		t.Errorf("%s", strings.Join(wrong, "; "))
	}
	if strings.Count(out, "\n") != 1 {
		t.Errorf("more than one line: %q", out)
	}
	if err := json.Unmarshal([]byte(out), &r); err != nil {
		t.Fatal(err)
	}
	return r
}

func TestCheckTellsPrograms(t *testing.T) {
	path := filepath.Join("..", "..", "testdata", "rules", "cover-below", "flagged.yaml")
	code, out, errs := do(t, "check", path, "--json")
	r := told(t, out)
	if code != exitFindings || errs != "" || r.Errors != 1 || r.Problems == nil || len(r.Findings) == 0 {
		t.Fatalf("exit %d, said %q, told %+v", code, errs, r)
	}
	f := r.Findings[0]
	if f.Rule != "cover-below" || f.Severity != "error" || f.Cabinet != "A" || f.Bay != 1 || f.Front != 2 || f.Name != "Middle" ||
		f.FoundMM != 14 || f.NeededMM != 14.1 || !strings.Contains(f.Change, "0.1 mm") || len(f.Fixes) == 0 || f.File != path {
		t.Errorf("told %+v", f)
	}
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if line := strings.Split(string(text), "\n")[f.Line-1]; !strings.Contains(line, "Middle") {
		t.Errorf("line %d is %q", f.Line, line)
	}
	_, out, _ = do(t, "check", path, "--json", "--language", "de")
	if german := told(t, out).Findings[0]; german.What == f.What || german.Rule != f.Rule {
		t.Errorf("in German: %q", german.What)
	}
}

func TestProgramsAreToldWhatCannotBeRead(t *testing.T) {
	code, out, _ := do(t, "check", "--json", filepath.Join("..", "..", "testdata", "bad", "unknown-key.yaml"))
	r := told(t, out)
	if code != exitFailed || len(r.Problems) == 0 || r.Problems[0].Line == 0 || r.Problems[0].What == "" || len(r.Findings) > 0 {
		t.Errorf("exit %d, told %+v", code, r)
	}
	code, out, _ = do(t, "print", "--json", "missing.yaml", "-o", filepath.Join(t.TempDir(), "out.pdf"))
	if r := told(t, out); code != exitFailed || len(r.Problems) != 1 {
		t.Errorf("exit %d, told %+v", code, r)
	}
}

func TestPrintTellsPrograms(t *testing.T) {
	out := filepath.Join(t.TempDir(), "job.pdf")
	code, said, errs := do(t, "print", write(t, "demo.yaml", string(assets.Demo())), "-o", out, "--only", "corner", "--fronts", "1", "--json")
	r := told(t, said)
	if code != exitFine || errs != "" || len(r.Written) != 1 || r.Written[0].File != out || r.Written[0].Pages == 0 || r.Fronts != 13 {
		t.Errorf("exit %d, said %q, told %+v", code, errs, r)
	}
}

// A file that is broken for a while, saved by another put in its place, and a sheet of
// the project's own: each change is checked once.
func TestWatchChecksAgain(t *testing.T) {
	folder := t.TempDir()
	path, sheet := filepath.Join(folder, "bench.yaml"), filepath.Join(folder, "mine.yaml")
	own, _ := assets.Sheet("sample-a")
	put := func(path, text string) {
		t.Helper()
		if err := os.WriteFile(path+"~", []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
		if err := os.Rename(path+"~", path); err != nil {
			t.Fatal(err)
		}
	}
	good := strings.Replace(string(assets.Demo()), "main: sample-a", "main: mine.yaml", 1)
	put(path, good)
	put(sheet, string(own))
	var out, errs bytes.Buffer
	c := console{out: &out, err: &errs, now: time.Now, getenv: os.Getenv}
	steps := []struct {
		name string
		do   func()
		code int // of the check that it makes; -1: none is made
	}{
		{"nothing", func() {}, -1},
		{"broken", func() { put(path, "frontlay: 2\ncabinets: [") }, exitFailed},
		{"whole again", func() { put(path, good) }, exitFine},
		{"saved as it was", func() { put(path, good) }, -1},
		{"the sheet is gone", func() { os.Remove(sheet) }, exitFailed},
		{"it is back", func() { put(sheet, string(own)) }, exitFine},
		{"the sheet is no sheet", func() { put(sheet, "frontlay_hardware: 1\n") }, exitFailed},
		{"the project is gone", func() { os.Remove(path) }, exitFailed},
	}
	ctx, stop := context.WithCancel(context.Background())
	tick := make(chan time.Time)
	var codes []int
	done := make(chan int)
	english := ""
	anywhere := false
	go func() {
		done <- watch(ctx, tick, func(from *seen) int {
			code := projectFlags{&anywhere, &english}.check(path, true, from, c)
			codes = append(codes, code)
			return code
		})
	}()
	want := []int{exitFine}
	tick <- time.Time{} // taken once the first check is over
	for _, s := range steps {
		s.do()
		// The first tick finds the change; the second is taken when its check is over.
		tick <- time.Time{}
		tick <- time.Time{}
		if s.code >= 0 {
			want = append(want, s.code)
		}
		if len(codes) != len(want) || codes[len(codes)-1] != want[len(want)-1] {
			t.Fatalf("%s: the checks gave %v, want %v; said %s", s.name, codes, want, errs.String())
		}
	}
	stop()
	if code := <-done; code != exitFailed {
		t.Errorf("it ended with %d, want that of the last check", code)
	}
	for _, line := range strings.SplitAfter(strings.TrimSpace(out.String()), "\n") {
		told(t, strings.TrimSuffix(line, "\n")+"\n")
	}
}

// Another reader of schemas and of our JSON: the package jsonschema of Python.
func TestAnotherValidatorAgrees(t *testing.T) {
	needTools(t, "python3")
	if exec.Command("python3", "-c", "import jsonschema").Run() != nil {
		if os.Getenv("FRONTLAY_TOOLS") == "1" {
			t.Fatal("python3-jsonschema is not installed, and this test needs it")
		}
		t.Skip("python3-jsonschema is not installed")
	}
	folder := t.TempDir()
	_, schema, _ := do(t, "schema", "findings")
	_, found, _ := do(t, "check", "--json", filepath.Join("..", "..", "testdata", "rules", "cover-below", "flagged.yaml"))
	for name, text := range map[string]string{"schema.json": schema, "found.json": found} {
		if err := os.WriteFile(filepath.Join(folder, name), []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	check := exec.Command("python3", "-c", `
import json, jsonschema
schema, found = json.load(open("schema.json")), json.load(open("found.json"))
v = jsonschema.Draft202012Validator
v.check_schema(schema)
v(schema).validate(found)
del found["stamp"]
assert not v(schema).is_valid(found)
`)
	check.Dir = folder
	if said, err := check.CombinedOutput(); err != nil {
		t.Errorf("%v: %s", err, said)
	}
}
