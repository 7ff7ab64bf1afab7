package assets_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"frontlay/assets"
)

var verb = regexp.MustCompile(`%(\[\d+\])?[^\[\s]|%$`)

// A translation takes the arguments that its English text takes, in any order.
func TestTranslationsTakeTheSameArguments(t *testing.T) {
	for _, code := range assets.Languages() {
		texts, ok := assets.Translation(code)
		if !ok || len(texts) == 0 {
			t.Fatalf("%s is listed but empty", code)
		}
		for english, text := range texts {
			if strings.TrimSpace(text) == "" {
				t.Errorf("%s: %q has no text", code, english)
			}
			// Percent signs that are followed by a blank stand for themselves in texts
			// without arguments.
			if want, got := arguments(english), arguments(text); !slices.Equal(want, got) {
				t.Errorf("%s: %q takes the arguments %v, %q takes %v", code, english, want, text, got)
			}
		}
	}
}

// arguments numbers the arguments that a text takes, sorted.
func arguments(text string) []int {
	var list []int
	next := 1
	for _, v := range verb.FindAllString(text, -1) {
		if i, err := strconv.Atoi(strings.Trim(strings.TrimSuffix(v, "v"), "%[]")); err == nil {
			next = i
		}
		list = append(list, next)
		next++
	}
	slices.Sort(list)
	return list
}

// The parts of the program whose every message must be translated.
var complete = map[string][]string{"de": {"../model/yamlfile", "../model/disk"}}

func TestTranslationsAreComplete(t *testing.T) {
	for code, folders := range complete {
		texts, _ := assets.Translation(code)
		for _, folder := range folders {
			list := messages(t, folder)
			if len(list) == 0 {
				t.Errorf("%s has no messages", folder)
			}
			for _, english := range list {
				if texts[english] == "" {
					t.Errorf("%s: %s: not translated: %q", code, folder, english)
				}
			}
		}
	}
}

// messages finds the texts given to message.New in the sources of a folder.
func messages(t *testing.T, folder string) []string {
	t.Helper()
	var list []string
	files, err := filepath.Glob(filepath.Join(folder, "*.go"))
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		src, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		file, err := parser.ParseFile(token.NewFileSet(), name, src, parser.SkipObjectResolution)
		if err != nil {
			t.Fatal(err)
		}
		ast.Inspect(file, func(n ast.Node) bool {
			if call, ok := n.(*ast.CallExpr); ok && isNew(call.Fun) && len(call.Args) > 0 {
				if lit, ok := call.Args[0].(*ast.BasicLit); ok {
					text, err := strconv.Unquote(lit.Value)
					if err != nil {
						t.Error(err)
					}
					list = append(list, text)
				}
			}
			return true
		})
	}
	return list
}

func isNew(fun ast.Expr) bool {
	s, ok := fun.(*ast.SelectorExpr)
	if !ok || s.Sel.Name != "New" {
		return false
	}
	x, ok := s.X.(*ast.Ident)
	return ok && x.Name == "message"
}

func TestParseTranslation(t *testing.T) {
	if texts, err := assets.ParseTranslation([]byte(`{"saved": "gespeichert"}`)); err != nil || texts["saved"] != "gespeichert" {
		t.Errorf("%v, %v", texts, err)
	}
	for _, bad := range []string{"", "[]", `{"saved": 1}`, "{"} {
		if _, err := assets.ParseTranslation([]byte(bad)); err == nil {
			t.Errorf("%q is read", bad)
		}
	}
	if _, ok := assets.Translation("xx"); ok {
		t.Error("a language that nobody speaks is there")
	}
}
