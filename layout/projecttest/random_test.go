package projecttest

import (
	"errors"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/yamlfile"
)

// A project that is drawn is one that a file can hold: it is read as it was written.
func TestRandomProjectsAreFiles(t *testing.T) {
	none := func(string) (string, []byte, error) { return "", nil, errors.New("the sheets are in the file") }
	rapid.Check(t, func(t *rapid.T) {
		p := Random(t)
		data, err := yamlfile.New(p, check.Limits()).Write(p)
		if err != nil {
			t.Fatal(err)
		}
		f, err := yamlfile.Read("drawn", data, none, check.Limits())
		if err != nil {
			t.Fatalf("%v in\n%s", err, data)
		}
		if !reflect.DeepEqual(f.Project, p) {
			t.Fatalf("drawn %+v, read %+v", p, f.Project)
		}
	})
}

// Of the rows of the format no key and no word is left out: what the engine's properties
// hold for holds for all that a file can say.
func TestRandomProjectsUseEveryKey(t *testing.T) {
	used, words := map[string]bool{}, map[string]bool{}
	seen := func(path string, said bool) {
		used[path] = used[path] || said
	}
	var walk func(path string, rows []figure.Row)
	walk = func(path string, rows []figure.Row) {
		for _, r := range rows {
			at := path + r.Key
			switch v := r.Value.(type) {
			case *figure.Size:
				_, given := v.Get()
				seen(at, given)
			case *figure.Number:
				seen(at, *v.At != 0)
			case *figure.Count:
				seen(at, *v.At != 0)
			case *figure.Flag:
				seen(at, *v.At)
			case *figure.Sizes:
				seen(at, len(*v.At) > 0)
			case *figure.Words:
				seen(at, len(*v.At) > 0)
			case *figure.Text:
				seen(at, *v.At != "")
				for _, w := range v.OneOf {
					words[at+": "+w] = words[at+": "+w] || w == *v.At
				}
			case *figure.Choice:
				seen(at, v.Get() > 0)
				for i, w := range v.OneOf {
					words[at+": "+w] = words[at+": "+w] || i == v.Get()
				}
			case *figure.Group:
				there := v.There == nil || v.There()
				seen(at, there)
				if there {
					walk(at+".", v.Rows())
				}
			case *figure.List:
				seen(at, v.Len() > 0)
				for i := range v.Len() {
					walk(at+".", v.Rows(i))
				}
				if v.Len() == 0 {
					walk(at+".", v.Empty())
				}
			case *figure.Sheets:
				for i := range *v.At {
					walk(at+".", figure.Sheet((*v.At)[i].Sheet))
				}
			case *figure.Unit:
				seen(at, *v.At != length.UnitMM)
			case *figure.Version:
			default:
				t.Fatalf("%s: rows of %T are not looked at", at, v)
			}
		}
	}
	for seed := range 1500 {
		walk("", figure.Project(rapid.Custom(func(t *rapid.T) *model.Project { return Random(t) }).Example(seed), check.Limits()))
	}
	for path, ok := range used {
		if !ok {
			t.Errorf("no project says %s", path)
		}
	}
	for word, ok := range words {
		if !ok {
			t.Errorf("no project says %s", word)
		}
	}
}
