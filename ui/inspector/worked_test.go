package inspector

import (
	"go/ast"
	"go/parser"
	"go/token"
	"slices"
	"strconv"
	"testing"

	"frontlay/layout/check"
)

// A figure that stands out where a rule blames it names a rule that there is: one
// that was renamed would leave it quiet.
func TestFiguresAreBlamedByRulesThatThereAre(t *testing.T) {
	file, err := parser.ParseFile(token.NewFileSet(), "worked.go", nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	var known []string
	for _, r := range check.Rules() {
		known = append(known, r.Name)
	}
	named := 0
	ast.Inspect(file, func(n ast.Node) bool {
		call, ok := n.(*ast.CallExpr)
		if !ok {
			return true
		}
		if f, ok := call.Fun.(*ast.SelectorExpr); !ok || f.Sel.Name != "outcome" {
			return true
		}
		for _, arg := range call.Args[3:] {
			literal, ok := arg.(*ast.BasicLit)
			if !ok {
				t.Fatalf("an argument for a rule is no name: %v", arg)
			}
			rule, err := strconv.Unquote(literal.Value)
			if named++; err != nil || !slices.Contains(known, rule) {
				t.Errorf("there is no rule %s", literal.Value)
			}
		}
		return true
	})
	if named == 0 {
		t.Error("no figure names a rule")
	}
}
