package check

import (
	"flag"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write RULES.md anew")

// TestRulesPage holds RULES.md, a page for users, to the doc comments of the
// rules: every rule is listed once, lives in a file of its own and is explained.
func TestRulesPage(t *testing.T) {
	docs := ruleDocs(t)
	var b strings.Builder
	b.WriteString("# What frontlay checks\n\nMade from the doc comments of `layout/check`; after a change: `go test ./layout/check -run RulesPage -update`.\n\n" +
		"A project can set each rule to `error`, `warning`, `advice` or `off`, change the limits, and accept a finding with a reason, under its key `checks`.\n")
	seen := map[string]bool{}
	for _, r := range Rules() {
		doc, ok := docs[r.Name]
		if !ok {
			t.Errorf("rule %s has no function with a doc comment that makes it", r.Name)
			continue
		}
		if seen[r.Name] {
			t.Errorf("rule %s is listed twice", r.Name)
		}
		seen[r.Name] = true
		fmt.Fprintf(&b, "\n## %s (`%s`, %s)\n\n%s\n", r.Title, r.Name, r.Severity, doc)
	}
	for name := range docs {
		if !seen[name] {
			t.Errorf("rule %s is written but not listed in Rules", name)
		}
	}
	if *update {
		if err := os.WriteFile("RULES.md", []byte(b.String()), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	page, err := os.ReadFile("RULES.md")
	if err != nil {
		t.Fatal(err)
	}
	if string(page) != b.String() {
		t.Error("RULES.md is not what the doc comments say; run the test with -update")
	}
}

// ruleDocs reads each rule's doc comment, without the function's name, by the
// rule's name.
func ruleDocs(t *testing.T) map[string]string {
	files, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	docs := map[string]string{}
	for _, file := range files {
		tree, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.ParseComments)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range tree.Decls {
			f, ok := d.(*ast.FuncDecl)
			if !ok || f.Recv != nil || f.Type.Results == nil || len(f.Type.Results.List) != 1 {
				continue
			}
			if id, ok := f.Type.Results.List[0].Type.(*ast.Ident); !ok || id.Name != "Rule" {
				continue
			}
			_, text, ok := strings.Cut(strings.Join(strings.Fields(f.Doc.Text()), " "), ": ")
			if !ok {
				t.Errorf("%s: the doc comment of %s does not begin with its name and a colon", file, f.Name.Name)
			}
			docs[ruleName(t, f)] = strings.ToUpper(text[:1]) + text[1:]
		}
	}
	return docs
}

// ruleName is the first text of the function's Rule literal.
func ruleName(t *testing.T, f *ast.FuncDecl) string {
	name := ""
	ast.Inspect(f.Body, func(n ast.Node) bool {
		if lit, ok := n.(*ast.BasicLit); ok && name == "" && lit.Kind == token.STRING {
			name = strings.Trim(lit.Value, `"`)
		}
		return name == ""
	})
	return name
}
