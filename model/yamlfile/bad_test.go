package yamlfile_test

import (
	"errors"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"frontlay/model/message"
	"frontlay/model/yamlfile"
)

var update = flag.Bool("update", false, "write goldens anew")

// Each file in testdata/bad and testdata/bad-sheets is wrong in the way its
// name tells; messages.txt beside them holds what the user is told.
func TestBadFilesAreToldClearly(t *testing.T) {
	cases := map[string]func(name string, data []byte) error{
		"bad":        func(name string, data []byte) error { _, err := yamlfile.Read(name, data, samples, limits); return err },
		"bad-sheets": func(name string, data []byte) error { _, err := yamlfile.ReadSheet(name, data); return err },
	}
	for folder, read := range cases {
		t.Run(folder, func(t *testing.T) {
			files, err := filepath.Glob(filepath.Join("../../testdata", folder, "*.yaml"))
			if err != nil || len(files) < 20 {
				t.Fatalf("%d files, %v", len(files), err)
			}
			var told strings.Builder
			for _, path := range files {
				data, err := os.ReadFile(path)
				if err != nil {
					t.Fatal(err)
				}
				name := filepath.Base(path)
				err = read(name, data)
				var problems yamlfile.Problems
				if !errors.As(err, &problems) || len(problems) == 0 {
					t.Errorf("%s is read without a problem: %v", name, err)
					continue
				}
				for _, p := range problems {
					if p.Message.Empty() || p.Advice.Empty() {
						t.Errorf("%s: the message or the advice is empty: %v", name, p)
					}
				}
				if newer := strings.HasPrefix(name, "newer"); errors.Is(err, yamlfile.ErrNewer) != newer {
					t.Errorf("%s: matches ErrNewer: %v", name, !newer)
				}
				fmt.Fprintf(&told, "%v\n", err)
			}
			golden(t, filepath.Join("../../testdata", folder, "messages.txt"), told.String())
		})
	}
}

func golden(t *testing.T, path, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if got == string(want) {
		return
	}
	g, w := strings.Split(got, "\n"), strings.Split(string(want), "\n")
	for i := range g {
		if i >= len(w) || g[i] != w[i] {
			t.Fatalf("%s differs at line %d:\n%s\nnow it is\n%s", path, i+1, at(w, i), g[i])
		}
	}
	t.Fatalf("%s has %d lines more", path, len(w)-len(g))
}

func at(lines []string, i int) string {
	if i < len(lines) {
		return lines[i]
	}
	return "(the end)"
}

// Whoever shows an error finds a message in it, to say it in the user's
// language.
func TestProblemsAreMessages(t *testing.T) {
	_, err := yamlfile.Read("bench.yaml", []byte("frontlay: 1\ntitel: Bench\nboards: {}\n"), samples, limits)
	german := message.Language{Catalogue: map[string]string{
		"the key %v is not known here": "der Schlüssel %v ist hier nicht bekannt",
		"did you mean %v?":             "meinten Sie %v?",
		"%v is missing":                "%v fehlt",
	}}
	var m message.Message
	if !errors.As(fmt.Errorf("opening: %w", err), &m) {
		t.Fatalf("no message in %v", err)
	}
	first, _, _ := strings.Cut(german.Say(m), "\n")
	if want := "bench.yaml:1:1: cabinets fehlt; add it: The cabinets of the run, left to right."; first != want {
		t.Errorf("said %q, want %q", first, want)
	}
	if !strings.Contains(german.Say(m), `bench.yaml:2:1: der Schlüssel "titel" ist hier nicht bekannt; meinten Sie title?`) {
		t.Errorf("said %q", german.Say(m))
	}
}

func TestProblemsAreToldInTheFilesUnit(t *testing.T) {
	text := strings.Replace(commented, "unit: mm", "unit: in", 1)
	_, err := yamlfile.Read("bench.yaml", []byte(text), samples, limits)
	if err == nil || !strings.Contains(err.Error(), "in and can't be more than") || strings.Contains(err.Error(), " mm and") {
		t.Errorf("%v", err)
	}
}

func TestTheErrorOfTheSourceIsKept(t *testing.T) {
	cause := errors.New("the shelf is empty")
	_, err := yamlfile.Read("bench.yaml", []byte(commented), func(string) (string, []byte, error) { return "", nil, cause }, limits)
	if !errors.Is(err, cause) || !strings.Contains(err.Error(), `the hardware sheet "sample-a" can't be read: the shelf is empty; write the name`) {
		t.Errorf("%v", err)
	}
	told := message.New("%v is elsewhere; allow it", "x.yaml")
	_, err = yamlfile.Read("bench.yaml", []byte(commented), func(string) (string, []byte, error) { return "", nil, told }, limits)
	if !strings.HasSuffix(err.Error(), "x.yaml is elsewhere; allow it") {
		t.Errorf("%v", err)
	}
}
