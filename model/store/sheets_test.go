package store_test

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"frontlay/assets"
	"frontlay/layout/check"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
)

func TestShelf(t *testing.T) {
	root := t.TempDir()
	folder, user, other := filepath.Join(root, "job"), filepath.Join(root, "sheets"), filepath.Join(root, "other")
	for path, text := range map[string]string{
		filepath.Join(folder, "mine.yaml"):          "mine",
		filepath.Join(folder, "below", "deep.yaml"): "deep",
		filepath.Join(folder, "shared.yaml"):        "the project's",
		filepath.Join(user, "shared.yaml"):          "the user's",
		filepath.Join(user, "own.yaml"):             "own",
		filepath.Join(other, "secret.yaml"):         "secret",
		filepath.Join(root, "job-2", "near.yaml"):   "near",
	} {
		if err := errors.Join(os.MkdirAll(filepath.Dir(path), 0o755), os.WriteFile(path, []byte(text), 0o644)); err != nil {
			t.Fatal(err)
		}
	}
	if err := errors.Join(os.Symlink(filepath.Join(other, "secret.yaml"), filepath.Join(folder, "link.yaml")),
		os.Symlink(other, filepath.Join(folder, "door")),
		os.Symlink(filepath.Join(folder, "mine.yaml"), filepath.Join(folder, "alias.yaml"))); err != nil {
		t.Skip("no links here")
	}
	shelf := store.Sheets{FS: store.OS{}, Samples: assets.Sheet, Project: folder, User: user, Limit: 1000}
	const outside = "outside"
	cases := map[string]struct{ source, want string }{
		"a file beside":                   {"mine.yaml", "mine"},
		"a file below":                    {"below/deep.yaml", "deep"},
		"up and down again":               {"below/../mine.yaml", "mine"},
		"a link within":                   {"alias.yaml", "mine"},
		"the user's own":                  {"own", "own"},
		"the user's own by file name":     {"own.yaml", "own"},
		"the project's before the user's": {"shared.yaml", "the project's"},
		"the user's by name":              {"shared", "the user's"},
		"by its whole path, within":       {filepath.Join(folder, "mine.yaml"), "mine"},
		"above":                           {"../other/secret.yaml", outside},
		"a folder with a like name":       {"../job-2/near.yaml", outside},
		"by its whole path, elsewhere":    {filepath.Join(other, "secret.yaml"), outside},
		"a link that leads out":           {"link.yaml", outside},
		"a folder that leads out":         {"door/secret.yaml", outside},
		"a file of the system":            {"/etc/passwd", outside},
		"missing":                         {"gone.yaml", ""},
		"missing, by name":                {"gone", ""},
		"a folder":                        {"below", ""},
		"nothing":                         {"", ""},
		"a dot":                           {".", ""},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			_, data, err := shelf.Find(c.source)
			var out *store.Outside
			if errors.As(err, &out) != (c.want == outside) {
				t.Fatalf("%q gives %q, %v", c.source, data, err)
			}
			if c.want != outside && string(data) != c.want || (c.want == "" || c.want == outside) != (err != nil) {
				t.Errorf("%q gives %q, %v", c.source, data, err)
			}
		})
	}
	asked := ""
	shelf.Allowed = func(path string) bool { asked = path; return true }
	if _, data, err := shelf.Find("link.yaml"); err != nil || string(data) != "secret" || filepath.Base(asked) != "secret.yaml" {
		t.Errorf("allowed: %q, %v; asked about %q", data, err, asked)
	}
	shelf.Project, shelf.Allowed = "", nil
	if _, _, err := shelf.Find("mine.yaml"); err == nil {
		t.Error("a project without a folder finds a file")
	}
	if _, data, err := shelf.Find("sample-a"); err != nil || len(data) == 0 {
		t.Errorf("the sample: %v", err)
	}
}

// The window asks by the error that reading a project gives.
func TestTheQuestionReachesWhoeverReadsAProject(t *testing.T) {
	root := t.TempDir()
	folder := filepath.Join(root, "job")
	sheet, _ := assets.Sheet("sample-b")
	if err := errors.Join(os.Mkdir(folder, 0o755), os.WriteFile(filepath.Join(root, "mine.yaml"), sheet, 0o644)); err != nil {
		t.Fatal(err)
	}
	project := strings.Replace(string(assets.Demo()), "boxes: sample-b", "boxes: ../mine.yaml", 1)
	shelf := store.Sheets{FS: store.OS{}, Samples: assets.Sheet, Project: folder, Limit: yamlfile.MaxBytes}
	_, err := yamlfile.Read("bench.yaml", []byte(project), shelf.Find, check.Limits())
	var out *store.Outside
	if !errors.As(err, &out) || filepath.Base(out.Path) != "mine.yaml" {
		t.Fatalf("%v", err)
	}
	shelf.Allowed = func(path string) bool { return path == out.Path }
	if _, err := yamlfile.Read("bench.yaml", []byte(project), shelf.Find, check.Limits()); err != nil {
		t.Errorf("allowed: %v", err)
	}
}
