package yamlfile_test

import (
	"bytes"
	"fmt"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/yamlfile"
)

// sourceOf serves the sheets of a project as files.
func sourceOf(t *rapid.T, p *model.Project) yamlfile.SheetSource {
	return func(source string) (string, []byte, error) {
		for _, u := range p.Hardware {
			if u.Source == source {
				data, err := yamlfile.NewSheet(u.Sheet).Write(u.Sheet)
				if err != nil {
					t.Fatalf("the sheet %+v can't be written: %v", u.Sheet, err)
				}
				return source, data, nil
			}
		}
		return "", nil, fmt.Errorf("no such sheet")
	}
}

func TestWhatIsWrittenReadsBackTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := projecttest.Any(t)
		data, err := yamlfile.New(p, limits).Write(p)
		if err != nil {
			t.Fatalf("%v", err)
		}
		f, err := yamlfile.Read("p", data, sourceOf(t, p), limits)
		if err != nil {
			t.Fatalf("%v in\n%s", err, data)
		}
		if !reflect.DeepEqual(f.Project, p) {
			t.Fatalf("read back as\n%+v\nnot\n%+v\nfrom\n%s", f.Project, p, data)
		}
		again, err := f.Write(f.Project)
		if err != nil {
			t.Fatalf("%v", err)
		}
		if !bytes.Equal(again, data) {
			t.Fatalf("written again as\n%s\nnot\n%s", again, data)
		}
	})
}

// A project is saved over another one's file when the user changes much at
// once; the old text must never show through.
func TestAProjectWrittenInAnotherOnesShapeReadsBackTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		old, p := projecttest.Any(t), projecttest.Any(t)
		data, err := yamlfile.New(old, limits).Write(old)
		if err != nil {
			t.Fatalf("%v", err)
		}
		f, err := yamlfile.Read("old", data, sourceOf(t, old), limits)
		if err != nil {
			t.Fatalf("%v", err)
		}
		data, err = f.Write(p)
		if err != nil {
			t.Fatalf("%v", err)
		}
		g, err := yamlfile.Read("p", data, sourceOf(t, p), limits)
		if err != nil {
			t.Fatalf("%v in\n%s", err, data)
		}
		if !reflect.DeepEqual(g.Project, p) {
			t.Fatalf("read back as\n%+v\nnot\n%+v\nfrom\n%s", g.Project, p, data)
		}
	})
}

func TestASheetReadsBackTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := projecttest.AnySheet(t)
		data, err := yamlfile.NewSheet(s).Write(s)
		if err != nil {
			t.Fatalf("%v", err)
		}
		got, err := yamlfile.ReadSheet("s", data)
		if err != nil {
			t.Fatalf("%v in\n%s", err, data)
		}
		if !reflect.DeepEqual(got, s) {
			t.Fatalf("read back as\n%+v\nnot\n%+v\nfrom\n%s", got, s, data)
		}
	})
}

func TestEverySampleWritesBackWithAllItsComments(t *testing.T) {
	f := demo(t)
	p := f.Project.Clone()
	p.Unit = length.UnitInch
	data, err := f.Write(p)
	if err != nil {
		t.Fatal(err)
	}
	g, err := yamlfile.Read("inches", data, samples, limits)
	if err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(g.Project, p) {
		t.Errorf("in inches the demo reads as %+v from\n%s", g.Project, data)
	}
	for _, comment := range []string{"# An invented job", "# left to right", "# bottom to top", "# samples that ship"} {
		if !bytes.Contains(data, []byte(comment)) {
			t.Errorf("the comment %q is lost in\n%s", comment, data)
		}
	}
}
