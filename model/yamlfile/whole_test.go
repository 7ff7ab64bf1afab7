package yamlfile_test

import (
	"os"
	"path/filepath"
	"reflect"
	"testing"

	"frontlay/model"
	"frontlay/model/yamlfile"
)

// The projects in testdata/projects are spelled as frontlay spells them, so
// that they come back byte for byte.
func TestWholeProjectsComeBackByteForByte(t *testing.T) {
	files, err := filepath.Glob("../../testdata/projects/*.yaml")
	if err != nil || len(files) < 4 {
		t.Fatalf("%d files, %v", len(files), err)
	}
	for _, name := range files {
		t.Run(filepath.Base(name), func(t *testing.T) {
			data, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			f, err := yamlfile.Read(name, data, samples, limits)
			if err != nil {
				t.Fatal(err)
			}
			got, err := f.Write(f.Project)
			if err != nil {
				t.Fatal(err)
			}
			if string(got) != string(data) {
				t.Errorf("comes back as\n%s", got)
			}
		})
	}
}

// testdata/projects/everything.yaml shows each key of the format; a field that
// is new in the model is missing here until its key stands there.
func TestEverythingUsesEveryField(t *testing.T) {
	data, err := os.ReadFile("../../testdata/projects/everything.yaml")
	if err != nil {
		t.Fatal(err)
	}
	f, err := yamlfile.Read("everything.yaml", data, samples, limits)
	if err != nil {
		t.Fatal(err)
	}
	// Two keys stand there with the first of their words, which is the zero value.
	used := map[string]bool{"Project.Unit": true, "Cabinet.Mount": true}
	collect(used, reflect.ValueOf(f.Project).Elem())
	for _, all := range []any{model.Project{}, model.Cabinet{}, model.Front{}, model.HardwareSheet{}, model.DrawerHeight{}} {
		missing(t, used, reflect.TypeOf(all))
	}
}

// collect notes each field that somewhere has a value other than its zero.
func collect(used map[string]bool, v reflect.Value) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			collect(used, v.Elem())
		}
	case reflect.Slice:
		for i := range v.Len() {
			collect(used, v.Index(i))
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if !v.Field(i).IsZero() {
				used[v.Type().Name()+"."+v.Type().Field(i).Name] = true
				collect(used, v.Field(i))
			}
		}
	}
}

func missing(t *testing.T, used map[string]bool, typ reflect.Type) {
	switch typ.Kind() {
	case reflect.Pointer, reflect.Slice:
		missing(t, used, typ.Elem())
	case reflect.Struct:
		for i := range typ.NumField() {
			if name := typ.Name() + "." + typ.Field(i).Name; !used[name] {
				t.Errorf("no key sets %s", name)
			}
			missing(t, used, typ.Field(i).Type)
		}
	}
}
