package yamlfile_test

import (
	"os"
	"path/filepath"
	"reflect"
	"testing"

	"frontlay/assets"
	"frontlay/model/yamlfile"
)

func addFiles(f *testing.F, patterns ...string) {
	for _, p := range patterns {
		files, err := filepath.Glob(p)
		if err != nil || len(files) == 0 {
			f.Fatalf("%s: %d files, %v", p, len(files), err)
		}
		for _, name := range files {
			data, err := os.ReadFile(name)
			if err != nil {
				f.Fatal(err)
			}
			f.Add(data)
		}
	}
}

// Whatever the bytes, Read ends with a project or with problems; a project that
// it takes can be written and reads back the same.
func FuzzProject(f *testing.F) {
	addFiles(f, "../../testdata/bad/*.yaml", "../../assets/projects/*.yaml", "../../testdata/projects/*.yaml", "../../testdata/rules/*/*.yaml", "../../testdata/versions/project-*.yaml")
	f.Fuzz(func(t *testing.T, data []byte) {
		file, err := yamlfile.Read("fuzz.yaml", data, samples, limits)
		if err != nil {
			if _, ok := err.(yamlfile.Problems); !ok || err.Error() == "" || file != nil {
				t.Fatalf("a file that is not read gives %v, %#v", file, err)
			}
			return
		}
		out, err := file.Write(file.Project)
		if err != nil {
			t.Fatalf("read but not written: %v\n%s", err, data)
		}
		again, err := yamlfile.Read("again.yaml", out, samples, limits)
		if err != nil {
			t.Fatalf("written but not read: %v\n%s", err, out)
		}
		if !reflect.DeepEqual(again.Project, file.Project) {
			t.Fatalf("reads back otherwise:\n%s\nfrom\n%s", out, data)
		}
	})
}

// The same for hardware sheets.
func FuzzSheet(f *testing.F) {
	addFiles(f, "../../testdata/bad-sheets/*.yaml", "../../assets/sheets/*.yaml", "../../testdata/versions/hardware-*.yaml")
	f.Fuzz(func(t *testing.T, data []byte) {
		s, err := yamlfile.ReadSheet("fuzz.yaml", data)
		if err != nil {
			if _, ok := err.(yamlfile.Problems); !ok || err.Error() == "" || s != nil {
				t.Fatalf("a sheet that is not read gives %v, %#v", s, err)
			}
			return
		}
		out, err := yamlfile.NewSheet(s).Write(s)
		if err != nil {
			t.Fatalf("read but not written: %v\n%s", err, data)
		}
		again, err := yamlfile.ReadSheet("again.yaml", out)
		if err != nil || !reflect.DeepEqual(again, s) {
			t.Fatalf("reads back otherwise (%v):\n%s\nfrom\n%s", err, out, data)
		}
	})
}

func TestSamplesAreFlawless(t *testing.T) {
	names := assets.SheetNames()
	if len(names) != 2 {
		t.Fatalf("samples: %v", names)
	}
	for _, name := range names {
		data, _ := assets.Sheet(name)
		s, err := yamlfile.ReadSheet(name, data)
		if err != nil {
			t.Errorf("%v", err)
			continue
		}
		out, err := yamlfile.NewSheet(s).Write(s)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		again, err := yamlfile.ReadSheet(name, out)
		if err != nil || !reflect.DeepEqual(again, s) {
			t.Errorf("%s reads back otherwise (%v):\n%s", name, err, out)
		}
	}
}
