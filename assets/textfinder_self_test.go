package assets_test

import (
	"maps"
	"os"
	"path/filepath"
	"slices"
	"testing"
)

// The finder is worth nothing if it loses texts: each way that a text goes in
// the program is tried in a few lines.
func TestTheFinderFollowsTexts(t *testing.T) {
	cases := map[string]struct {
		source string
		want   []string
		lost   bool
	}{
		"a literal":            {`func f() { message.New("a") }`, []string{"a"}, false},
		"added up":             {`func f() { message.New("a " + "b") }`, []string{"a b"}, false},
		"another function":     {`func f() { other.New("a") }`, nil, false},
		"a parameter":          {`func g(n int, s string) { message.New(s) }; func f() { g(1, "a") }`, []string{"a"}, false},
		"two parameters":       {`func g(s string) { message.New(s) }; func h(s string) { g(s) }; func f() { h("a") }`, []string{"a"}, false},
		"an argument beside":   {`func g(n, s string) { message.New(s) }; func f() { g("no", "a") }`, []string{"a"}, false},
		"a local variable":     {`func f(b bool) { s := "a"; if b { s = "b" }; message.New(s) }`, []string{"a", "b"}, false},
		"a variable in shadow": {`func f() { s := "no"; use(s); { s := "a"; message.New(s) } }`, []string{"a"}, false},
		"a constant":           {`const s = "a"; func f() { message.New(s) }`, []string{"a"}, false},
		"a list":               {`var s = []string{"a", "b"}; func f() { for _, x := range s { message.New(x) } }`, []string{"a", "b"}, false},
		"pairs":                {`var s = [][2]string{{"a", "b"}}; func f() { for _, x := range s { message.New(x[1]) } }`, []string{"a", "b"}, false},
		"a map":                {`func f() { m := map[string]string{"no": "a"}; message.New(m["no"]) }`, []string{"a"}, false},
		"a field by name":      {`type T struct{ n int; s string }; func f() { t := T{s: "a"}; message.New(t.s) }`, []string{"a"}, false},
		"a field by place":     {`type T struct{ n int; s string }; func f() { t := T{1, "a"}; message.New(t.s) }`, []string{"a"}, false},
		"fields in a list":     {`type T struct{ n, s string }; func f() { for _, t := range []T{{"no", "a"}} { message.New(t.s) } }`, []string{"a"}, false},
		"without a type":       {`func f() { for _, t := range []struct{ n int; s string }{{1, "a"}} { message.New(t.s) } }`, []string{"a"}, false},
		"a field filled later": {`type T struct{ s string }; func f(t *T) { t.s = "a"; message.New(t.s) }`, []string{"a"}, false},
		"a closure":            {`func f() { g := func(s string) { message.New(s) }; g("a") }`, []string{"a"}, false},
		"a method":             {`type T int; func (T) g(s string) { message.New(s) }; func f(t T) { t.g("a") }`, []string{"a"}, false},
		"its namesake":         {`type T int; type U int; func (T) g(s string) { message.New(s) }; func (U) g(s string) {}; func (u U) f() { u.g("no") }`, nil, false},
		"a result":             {`func g(b bool) string { if b { return "a" }; return "b" }; func f() { message.New(g(true)) }`, []string{"a", "b"}, false},
		"a circle":             {`func g(s string) { message.New(s); g(s) }; func f() { g("a") }`, []string{"a"}, false},
		"somebody's result":    {`func f() { message.New(fmt.Sprint(1)) }`, nil, true},
		"out of nowhere":       {`func f() { message.New(nowhere) }`, nil, true},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			root := t.TempDir()
			if err := os.Mkdir(filepath.Join(root, "p"), 0o777); err != nil {
				t.Fatal(err)
			}
			source := "package p\nimport (\"fmt\"; \"frontlay/model/message\"; \"frontlay/other\")\n" + c.source
			if err := os.WriteFile(filepath.Join(root, "p", "p.go"), []byte(source), 0o666); err != nil {
				t.Fatal(err)
			}
			f := newFinder(t, root, "p")
			f.sinks[sink{"model/message", "New", 0}] = true
			f.find()
			if got := slices.Sorted(maps.Keys(f.texts)); !slices.Equal(got, c.want) {
				t.Errorf("found %q, want %q", got, c.want)
			}
			if lost := len(f.lost) > 0; lost != c.lost {
				t.Errorf("lost: %v", f.lost)
			}
		})
	}
}
