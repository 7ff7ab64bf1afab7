package yamlfile

import (
	"errors"
	"strings"
	"testing"

	"gopkg.in/yaml.v3"

	"frontlay/model"
	"frontlay/model/figure"
)

// rename is a step such as a version 2 might need: a key gets another name.
func rename(old, now string) migration {
	return func(root *yaml.Node) {
		for i := 0; i+1 < len(root.Content); i += 2 {
			if root.Content[i].Value == old {
				root.Content[i].Value = now
			}
		}
	}
}

func TestMigrationsRunFromAFilesVersionOn(t *testing.T) {
	steps := []migration{rename("heading", "caption"), rename("caption", "title")}
	for _, first := range []string{"frontlay: 1\nheading: Bench # as ordered\n", "frontlay: 2\ncaption: Bench # as ordered\n", "frontlay: 3\ntitle: Bench # as ordered\n"} {
		r := newReader("old.yaml", nil)
		doc := r.parse([]byte(first))
		if !r.readVersion(doc.Content[0], "frontlay", steps) {
			t.Fatalf("%q is refused: %v", first, r.err())
		}
		n := valueOf(doc.Content[0], "title")
		if n == nil || n.Value != "Bench" || n.LineComment != "# as ordered" {
			t.Errorf("%q becomes %+v", first, n)
		}
	}
	r := newReader("new.yaml", nil)
	doc := r.parse([]byte("frontlay: 4\ntitel: Bench\n"))
	if r.readVersion(doc.Content[0], "frontlay", steps) || !errors.Is(r.err(), ErrNewer) || len(r.problems) != 1 {
		t.Errorf("a newer file: %v", r.err())
	}
}

// A file of an older version is written as the newest, its comments with it.
func TestTheVersionIsWrittenAsTheNewest(t *testing.T) {
	if len(projectMigrations)+1 != figure.ProjectVersion || len(sheetMigrations)+1 != figure.SheetVersion {
		t.Errorf("%d and %d steps for versions %d and %d", len(projectMigrations), len(sheetMigrations), figure.ProjectVersion, figure.SheetVersion)
	}
	old := &yaml.Node{Kind: yaml.ScalarNode, Value: "0", LineComment: "# first"}
	first := figure.Project(new(model.Project), nil)[0]
	out, err := yaml.Marshal(&yaml.Node{Kind: yaml.MappingNode, Content: []*yaml.Node{{Kind: yaml.ScalarNode, Value: "frontlay"}, new(writer).value(first, old)}})
	if err != nil || !strings.HasPrefix(string(out), "frontlay: 1 # first") {
		t.Errorf("%q, %v", out, err)
	}
}
