// Package projecttest reads the projects that tests work on, as the program reads
// them, and draws random ones. It is for tests only.
package projecttest

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"frontlay/assets"
	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/yamlfile"
)

// Example is a project that ships to be looked at.
func Example(t testing.TB, name string) *model.Project {
	t.Helper()
	data, ok := assets.Example(name)
	if !ok {
		t.Fatalf("there is no example %q", name)
	}
	return read(t, name+".yaml", data)
}

// Demo is the project that ships to be looked at.
func Demo(t testing.TB) *model.Project {
	t.Helper()
	return read(t, assets.DemoName, assets.Demo())
}

// Read is the project in a file.
func Read(t testing.TB, path string) *model.Project {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return read(t, path, data)
}

// All are the projects of testdata and those that ship, by the names of their files
// without extension; root is the way to the repository.
func All(t testing.TB, root string) map[string]*model.Project {
	t.Helper()
	all := map[string]*model.Project{}
	for _, folder := range []string{"testdata", "assets"} {
		files, err := filepath.Glob(filepath.Join(root, folder, "projects", "*.yaml"))
		if err != nil || len(files) == 0 {
			t.Fatalf("no projects in %s: %v", folder, err)
		}
		for _, path := range files {
			all[strings.TrimSuffix(filepath.Base(path), ".yaml")] = Read(t, path)
		}
	}
	if len(all) < 4 {
		t.Fatalf("only %d projects", len(all))
	}
	return all
}

// read reads a project with its hardware sheets: samples, or files beside it.
func read(t testing.TB, path string, data []byte) *model.Project {
	t.Helper()
	f, err := yamlfile.Read(path, data, func(source string) (string, []byte, error) {
		if sheet, ok := assets.Sheet(source); ok {
			return source, sheet, nil
		}
		file := filepath.Join(filepath.Dir(path), source)
		sheet, err := os.ReadFile(file)
		return file, sheet, err
	}, check.Limits())
	if err != nil {
		t.Fatal(err)
	}
	return f.Project
}
