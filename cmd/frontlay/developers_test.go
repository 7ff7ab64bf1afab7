package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// DEVELOPERS.md speaks of files, packages, functions and make's targets by their
// names; each of them is there, and no package is left out.
func TestDevelopersPageNamesWhatIsThere(t *testing.T) {
	root := repository(t)
	data, err := os.ReadFile(filepath.Join(root, "DEVELOPERS.md"))
	if err != nil {
		t.Fatal(err)
	}
	page := string(data)
	declared := declarations(t, root)
	makefile, err := os.ReadFile(filepath.Join(root, "Makefile"))
	if err != nil {
		t.Fatal(err)
	}
	exists := func(path string) bool {
		_, err := os.Stat(filepath.Join(root, path))
		return err == nil
	}
	path := regexp.MustCompile(`^[\w.*-]+(/[\w.*-]+)*/?$`)
	name := regexp.MustCompile(`^[A-Za-z]\w*(\.[A-Za-z]\w*)+$`)
	for _, span := range regexp.MustCompile("`[^`\n]+`").FindAllString(page, -1) {
		span = strings.Trim(span, "`")
		switch {
		case strings.HasPrefix(span, "make "):
			if !strings.Contains(string(makefile), "\n"+strings.TrimPrefix(span, "make ")+":") {
				t.Errorf("`%s`: there is no such target", span)
			}
		case strings.Contains(span, "://") || strings.HasPrefix(span, "fyne.io/") || strings.Contains(span, ".com/") || strings.HasPrefix(span, "gopkg.in") || strings.Contains(span, ".org/") || strings.HasPrefix(span, "pgregory"):
			// another module: the table of what is depended on is for people
		case path.MatchString(span) && (strings.Contains(span, "/") || exists(span)):
			if strings.Contains(span, "*") || strings.Contains(span, "NAME") {
				span = filepath.Dir(strings.Split(strings.Split(span, "*")[0], "NAME")[0])
			}
			if !exists(span) {
				t.Errorf("`%s`: there is no such file", span)
			}
		case name.MatchString(span) && !strings.HasSuffix(span, ".txt"):
			if !declared[span] {
				t.Errorf("`%s`: there is no such name", span)
			}
		}
	}
	out, err := exec.Command("go", "list", "-tags", "ci", "frontlay/...").Output()
	if err != nil {
		t.Fatal(err)
	}
	for _, pkg := range strings.Fields(string(out)) {
		if pkg = strings.TrimPrefix(pkg, "frontlay/"); !strings.Contains(page, "`"+pkg+"`") {
			t.Errorf("the page does not say what `%s` is for", pkg)
		}
	}
}

// declarations are the names of the program as Go says them from outside:
// package.Name, package.Type.Name for methods and fields.
func declarations(t *testing.T, root string) map[string]bool {
	t.Helper()
	all := map[string]bool{}
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		pkg := strings.TrimSuffix(file.Name.Name, "_test")
		for _, decl := range file.Decls {
			switch d := decl.(type) {
			case *ast.FuncDecl:
				name := d.Name.Name
				if d.Recv != nil {
					name = typeName(d.Recv.List[0].Type) + "." + name
				}
				all[pkg+"."+name] = true
			case *ast.GenDecl:
				for _, spec := range d.Specs {
					declare(all, pkg, spec)
				}
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

func declare(all map[string]bool, pkg string, spec ast.Spec) {
	switch s := spec.(type) {
	case *ast.ValueSpec:
		for _, n := range s.Names {
			all[pkg+"."+n.Name] = true
		}
	case *ast.TypeSpec:
		all[pkg+"."+s.Name.Name] = true
		var parts *ast.FieldList
		switch u := s.Type.(type) {
		case *ast.StructType:
			parts = u.Fields
		case *ast.InterfaceType:
			parts = u.Methods
		default:
			return
		}
		for _, f := range parts.List {
			for _, n := range f.Names {
				all[pkg+"."+s.Name.Name+"."+n.Name] = true
			}
		}
	}
}

// typeName is the name of a receiver's type.
func typeName(e ast.Expr) string {
	switch v := e.(type) {
	case *ast.StarExpr:
		return typeName(v.X)
	case *ast.IndexExpr:
		return typeName(v.X)
	case *ast.Ident:
		return v.Name
	}
	return ""
}
