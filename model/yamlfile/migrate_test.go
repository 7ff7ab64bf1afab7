package yamlfile

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"gopkg.in/yaml.v3"

	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
)

// rename is a step such as a version might need: a key gets another name.
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
	if err != nil || !strings.HasPrefix(string(out), fmt.Sprintf("frontlay: %d # first", figure.ProjectVersion)) {
		t.Errorf("%q, %v", out, err)
	}
}

// Between versions 1 and 2 a channel's height became one of its figures, its comment
// staying beside it.
func TestAChannelOfVersion1IsItsHeight(t *testing.T) {
	text := `frontlay: 1
boards: {carcass: {thickness: 18}, front: {thickness: 20}}
cabinets:
  - name: Clay
    width: 600
    height: 700
    depth: 500
    # for the fingers
    channel: 1 1/2 in # as they asked
    bays: [{fronts: [{kind: fixed}]}]
  - {name: Odd, width: 600, height: 700, depth: 500, channel: wide, bays: [{fronts: [{kind: fixed}]}]}
`
	_, err := Read("old.yaml", []byte(text), nil, nil)
	if err == nil || !strings.Contains(err.Error(), "old.yaml:11:63:") {
		t.Errorf("a channel that is no size is told as %v", err)
	}
	f, err := Read("old.yaml", []byte(strings.Replace(text, "channel: wide, ", "", 1)), nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	if got, want := f.Project.Cabinets[0].Channel.Height, 3*length.Inch/2; got != want {
		t.Errorf("the channel is %v high, want %v", got, want)
	}
	out, err := f.Write(f.Project)
	if want := "    # for the fingers\n    channel: {height: 1 1/2 in} # as they asked\n"; err != nil || !strings.Contains(string(out), want) {
		t.Errorf("%v, written:\n%s\nwant in it:\n%s", err, out, want)
	}
}
