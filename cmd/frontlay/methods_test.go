package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strings"
	"testing"
)

// mostMethods is how many methods a type of the window may have. What needs more has
// rooms that want to be found.
const mostMethods = 40

// No type of the window is one that everything hangs on.
func TestTypesOfTheWindowStaySmall(t *testing.T) {
	methods := map[string]int{}
	err := filepath.WalkDir(filepath.Join("..", "..", "ui"), func(path string, d fs.DirEntry, err error) error {
		if err != nil || filepath.Ext(path) != ".go" || strings.HasSuffix(path, "_test.go") {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		for _, d := range file.Decls {
			f, ok := d.(*ast.FuncDecl)
			if !ok || f.Recv == nil {
				continue
			}
			of := f.Recv.List[0].Type
			if star, ok := of.(*ast.StarExpr); ok {
				of = star.X
			}
			if index, ok := of.(*ast.IndexExpr); ok { // of a type with a parameter
				of = index.X
			}
			methods[filepath.ToSlash(filepath.Dir(path))+"."+of.(*ast.Ident).Name]++
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(methods) < 100 {
		t.Fatalf("only %d types have methods", len(methods))
	}
	for name, n := range methods {
		if n > mostMethods {
			t.Errorf("%s has %d methods, more than %d", strings.TrimPrefix(name, "../../"), n, mostMethods)
		}
	}
}
