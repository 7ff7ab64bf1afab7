// Package manualtest is for tests only: it holds the parts of the manual that are made
// from the code to what the code says.
package manualtest

import (
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
)

// The marks around what is made, each on a line of its own. Behind the first stands
// the command that makes it anew.
const before, after = "<!-- made: ", "<!-- end -->\n"

// Folder is the path of the manual's folder in the repository.
func Folder() string {
	_, file, _, _ := runtime.Caller(0)
	return filepath.Join(filepath.Dir(file), "..")
}

// Made compares the part of a chapter that is made from the code with what it is to
// be, or, with update, writes it. name is the path of the chapter in the manual's
// folder, such as en/reference-keys.md.
func Made(t testing.TB, name, want string, update bool) {
	t.Helper()
	path := filepath.Join(Folder(), filepath.FromSlash(name))
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	page := string(data)
	head, rest, begun := strings.Cut(page, before)
	command, rest, lined := strings.Cut(rest, " -->\n")
	is, tail, ended := strings.Cut(rest, after)
	if !begun || !lined || !ended {
		t.Fatalf("%s has no part between %q and %q", name, before, after)
	}
	want = "\n" + strings.Trim(want, "\n") + "\n\n"
	switch {
	case is == want:
	case update:
		if err := os.WriteFile(path, []byte(head+before+command+" -->\n"+want+after+tail), 0o666); err != nil {
			t.Fatal(err)
		}
	default:
		i, w := strings.Split(is, "\n"), strings.Split(want, "\n")
		at := 0
		for at < len(i)-1 && at < len(w)-1 && i[at] == w[at] {
			at++
		}
		t.Errorf("%s is not what the code says: it has %q where the code has %q. %s makes it anew.", name, i[at], w[at], command)
	}
}

// Cell is a text as a cell of a table has it.
func Cell(text string) string { return strings.ReplaceAll(text, "|", `\|`) }
