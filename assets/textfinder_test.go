package assets_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// finder finds the string literals of the program's sources that reach certain
// places, such as the text of a message. It follows a text back, without types
// and so by name, through parameters, variables, fields, constants and results
// of our own functions. What it can't follow it lists.
type finder struct {
	set      *token.FileSet
	packages map[string]*sources // by folder
	sinks    map[sink]bool
	stops    map[string]bool // functions and fields that are not followed
	texts    map[string][]string
	lost     map[string]string // place of an expression that can't be followed
	followed map[ast.Expr]bool
}

// sources are the files of one package, its tests left out.
type sources struct {
	folder  string
	files   []*ast.File
	funcs   map[string][]*ast.FuncDecl
	values  map[string][]ast.Expr // package variables and constants
	structs map[string]*ast.StructType
	fields  map[string]bool // of all structs: whether one of that name holds texts
}

// sink is a place that texts reach: an argument of a function or closure, or a
// field of a struct (then index is -1). A method has its type before its name, a
// closure the function that keeps it. An empty folder stands for all.
type sink struct {
	folder, name string
	index        int
}

func newFinder(t *testing.T, root string, folders ...string) *finder {
	t.Helper()
	f := &finder{set: token.NewFileSet(), packages: map[string]*sources{}, sinks: map[sink]bool{}, stops: map[string]bool{}, texts: map[string][]string{}, lost: map[string]string{}, followed: map[ast.Expr]bool{}}
	for _, folder := range folders {
		err := filepath.WalkDir(filepath.Join(root, folder), func(name string, d fs.DirEntry, err error) error {
			if d != nil && d.IsDir() && d.Name() == "projecttest" {
				return filepath.SkipDir // what random projects say nobody reads
			}
			if err != nil || d.IsDir() || !strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go") {
				return err
			}
			file, err := parser.ParseFile(f.set, name, nil, parser.SkipObjectResolution)
			if err != nil {
				return err
			}
			rel, err := filepath.Rel(root, filepath.Dir(name))
			f.add(filepath.ToSlash(rel), file)
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	return f
}

func (f *finder) add(folder string, file *ast.File) {
	p := f.packages[folder]
	if p == nil {
		p = &sources{folder: folder, funcs: map[string][]*ast.FuncDecl{}, values: map[string][]ast.Expr{}, structs: map[string]*ast.StructType{}, fields: map[string]bool{}}
		f.packages[folder] = p
	}
	p.files = append(p.files, file)
	ast.Inspect(file, func(n ast.Node) bool {
		if st, ok := n.(*ast.StructType); ok {
			for _, list := range st.Fields.List {
				for _, name := range list.Names {
					p.fields[name.Name] = p.fields[name.Name] || ofText(list.Type)
				}
			}
		}
		return true
	})
	for _, decl := range file.Decls {
		switch d := decl.(type) {
		case *ast.FuncDecl:
			p.funcs[d.Name.Name] = append(p.funcs[d.Name.Name], d)
		case *ast.GenDecl:
			for _, spec := range d.Specs {
				switch s := spec.(type) {
				case *ast.ValueSpec:
					for i, name := range s.Names {
						if len(s.Values) == len(s.Names) {
							p.values[name.Name] = append(p.values[name.Name], s.Values[i])
						}
					}
				case *ast.TypeSpec:
					if st, ok := s.Type.(*ast.StructType); ok {
						p.structs[s.Name.Name] = st
					}
				}
			}
		}
	}
}

// find goes over all sources until no new sink turns up.
func (f *finder) find() {
	for known := -1; known != len(f.sinks); {
		known = len(f.sinks)
		for _, p := range f.packages {
			for _, file := range p.files {
				f.visit(p, file)
			}
		}
	}
}

// visit resolves everything in a file that stands at a sink.
func (f *finder) visit(p *sources, file *ast.File) {
	for _, decl := range file.Decls {
		in := &scope{p: p, file: file}
		if d, ok := decl.(*ast.FuncDecl); ok {
			in.decl = d
		}
		ast.Inspect(decl, func(n ast.Node) bool {
			if n == nil { // the end of a node
				in.stack = in.stack[:len(in.stack)-1]
				return true
			}
			in.stack = append(in.stack, n)
			switch n := n.(type) {
			case *ast.CallExpr:
				for _, s := range f.callee(in, n.Fun) {
					for i, arg := range n.Args {
						if s.index = i; f.sinks[s] {
							f.resolve(in, arg)
						}
					}
				}
			case *ast.CompositeLit:
				f.composite(in, n)
			case *ast.AssignStmt:
				for i, left := range n.Lhs {
					if sel, ok := left.(*ast.SelectorExpr); ok && len(n.Rhs) == len(n.Lhs) && f.isField(p, sel.Sel.Name) {
						f.resolve(in, n.Rhs[i])
					}
				}
			}
			return true
		})
	}
}

// isField tells whether a field is a sink in a package; fields with a capital
// letter can be filled by other packages.
func (f *finder) isField(p *sources, name string) bool {
	return f.sinks[sink{p.folder, name, -1}] || ast.IsExported(name) && f.sinks[sink{"", name, -1}]
}

// composite resolves the fields of a struct literal that are sinks.
func (f *finder) composite(in *scope, lit *ast.CompositeLit) {
	st := f.structOf(in, lit)
	for i, e := range lit.Elts {
		name, value := "", e
		if kv, ok := e.(*ast.KeyValueExpr); ok {
			if key, ok := kv.Key.(*ast.Ident); ok {
				name, value = key.Name, kv.Value
			}
		} else if st != nil {
			name = fieldAt(st, i)
		}
		if name != "" && f.isField(in.p, name) && (st == nil || holdsText(st, name)) {
			f.resolve(in, value)
		}
	}
}

func holdsText(st *ast.StructType, field string) bool {
	for _, list := range st.Fields.List {
		for _, name := range list.Names {
			if name.Name == field {
				return ofText(list.Type)
			}
		}
	}
	return false
}

// structOf finds the struct type of a literal, which may be left out inside a
// list.
func (f *finder) structOf(in *scope, lit *ast.CompositeLit) *ast.StructType {
	typ := lit.Type
	for k := len(in.stack) - 2; typ == nil && k >= 0; k-- {
		switch outer := in.stack[k].(type) {
		case *ast.CompositeLit:
			switch list := outer.Type.(type) {
			case *ast.ArrayType:
				typ = list.Elt
			case *ast.MapType:
				typ = list.Value
			}
		case *ast.KeyValueExpr:
		default:
			return nil
		}
	}
	switch t := typ.(type) {
	case *ast.Ident:
		return in.p.structs[t.Name]
	case *ast.StructType:
		return t
	case *ast.SelectorExpr:
		if other := f.imported(in, t.X); other != nil {
			return other.structs[t.Sel.Name]
		}
	}
	return nil
}

func fieldAt(st *ast.StructType, at int) string {
	for _, list := range st.Fields.List {
		for _, name := range list.Names {
			if at == 0 {
				return name.Name
			}
			at--
		}
	}
	return ""
}

// imported gives our package that an expression names, or nil.
func (f *finder) imported(in *scope, x ast.Expr) *sources {
	id, ok := x.(*ast.Ident)
	if !ok {
		return nil
	}
	return f.packages[strings.TrimPrefix(importOf(in.file, id.Name), "frontlay/")]
}

// importOf gives the path of the package that a file calls by a name, or "".
func importOf(file *ast.File, name string) string {
	for _, imp := range file.Imports {
		p, err := strconv.Unquote(imp.Path.Value)
		if err != nil {
			continue
		}
		if imp.Name != nil && imp.Name.Name == name || imp.Name == nil && path.Base(strings.TrimSuffix(p, "/v2")) == name {
			return p
		}
	}
	return ""
}
