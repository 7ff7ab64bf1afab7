package assets_test

import (
	"fmt"
	"go/ast"
	"go/token"
	"strconv"
	"strings"
)

// scope is where an expression stands: its package, file, function, and the
// nodes around it from the outside in.
type scope struct {
	p     *sources
	file  *ast.File
	decl  *ast.FuncDecl // nil outside functions
	stack []ast.Node
}

// callee names the functions that a call may mean.
func (f *finder) callee(in *scope, fun ast.Expr) []sink {
	switch fun := fun.(type) {
	case *ast.Ident:
		if in.closure(fun.Name) != nil {
			return []sink{{in.p.folder, in.decl.Name.Name + "." + fun.Name, 0}}
		}
		return []sink{{in.p.folder, fun.Name, 0}}
	case *ast.SelectorExpr:
		if id, ok := fun.X.(*ast.Ident); ok && !in.local(id.Name) {
			if imp := importOf(in.file, id.Name); imp != "" {
				return []sink{{strings.TrimPrefix(imp, "frontlay/"), fun.Sel.Name, 0}}
			}
		}
		return f.methods(in, fun)
	}
	return nil
}

// methods names those that a selector may mean: exactly one where it is the
// receiver's own, otherwise all of that name.
func (f *finder) methods(in *scope, fun *ast.SelectorExpr) (list []sink) {
	if in.decl != nil && in.decl.Recv != nil {
		own, names := receiver(in.decl), in.decl.Recv.List[0].Names
		if id, ok := fun.X.(*ast.Ident); ok && len(names) > 0 && names[0].Name == id.Name {
			for _, d := range in.p.funcs[fun.Sel.Name] {
				if d.Recv != nil && receiver(d) == own {
					return []sink{{in.p.folder, own + "." + fun.Sel.Name, 0}}
				}
			}
		}
	}
	for _, p := range f.packages {
		if p != in.p && !fun.Sel.IsExported() {
			continue
		}
		for _, d := range p.funcs[fun.Sel.Name] {
			if d.Recv != nil {
				list = append(list, sink{p.folder, receiver(d) + "." + fun.Sel.Name, 0})
			}
		}
	}
	return append(list, sink{"", fun.Sel.Name, 0}) // of somebody else's type
}

// receiver is the name of a method's type.
func receiver(d *ast.FuncDecl) string {
	typ := d.Recv.List[0].Type
	for {
		switch t := typ.(type) {
		case *ast.StarExpr:
			typ = t.X
		case *ast.IndexExpr:
			typ = t.X
		case *ast.Ident:
			return t.Name
		default:
			return ""
		}
	}
}

// closure finds a function literal that a function keeps under a name.
func (in *scope) closure(name string) (found *ast.FuncLit) {
	for _, e := range in.assigned(name) {
		if lit, ok := e.(*ast.FuncLit); ok {
			found = lit
		}
	}
	return found
}

// assigned lists what a function assigns to a local variable, as far as it is
// the same variable as the one that is in sight.
func (in *scope) assigned(name string) []ast.Expr {
	if in.decl == nil || in.decl.Body == nil {
		return nil
	}
	for k := len(in.stack) - 1; k >= 0; k-- {
		if list, defined := assignedIn(in.stack[k], name); defined {
			return list
		}
	}
	list, _ := assignedIn(in.decl.Body, name)
	return list
}

// assignedIn lists what is assigned to a name inside a node, and whether the
// name is made there.
func assignedIn(node ast.Node, name string) (list []ast.Expr, defined bool) {
	is := func(e ast.Expr) bool { id, ok := e.(*ast.Ident); return ok && id.Name == name }
	ast.Inspect(node, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.AssignStmt:
			for i, left := range n.Lhs {
				if !is(left) {
					continue
				}
				list = append(list, n.Rhs[min(i, len(n.Rhs)-1)])
				defined = defined || n.Tok == token.DEFINE
			}
		case *ast.RangeStmt:
			if n.Key != nil && is(n.Key) || n.Value != nil && is(n.Value) {
				list, defined = append(list, n.X), true
			}
		case *ast.ValueSpec:
			for i, id := range n.Names {
				if id.Name == name {
					defined = true
					if len(n.Values) == len(n.Names) {
						list = append(list, n.Values[i])
					}
				}
			}
		}
		return true
	})
	return list, defined
}

func (in *scope) local(name string) bool {
	return len(in.assigned(name)) > 0 || in.parameter(name) != nil
}

// parameter finds the place of a parameter of one of the functions around.
func (in *scope) parameter(name string) *sink {
	for k := len(in.stack) - 1; k >= 0; k-- {
		switch fn := in.stack[k].(type) {
		case *ast.FuncDecl:
			if i := position(fn.Type, name); i >= 0 {
				if fn.Recv != nil {
					return &sink{in.p.folder, receiver(fn) + "." + fn.Name.Name, i}
				}
				return &sink{in.p.folder, fn.Name.Name, i}
			}
		case *ast.FuncLit:
			if i := position(fn.Type, name); i >= 0 {
				return &sink{in.p.folder, in.nameOf(fn), i}
			}
		}
	}
	return nil
}

// nameOf gives the name under which a function literal is kept.
func (in *scope) nameOf(lit *ast.FuncLit) string {
	name := ""
	if in.decl != nil {
		ast.Inspect(in.decl.Body, func(n ast.Node) bool {
			if a, ok := n.(*ast.AssignStmt); ok && len(a.Lhs) == len(a.Rhs) {
				for i := range a.Rhs {
					if id, ok := a.Lhs[i].(*ast.Ident); ok && a.Rhs[i] == lit {
						name = in.decl.Name.Name + "." + id.Name
					}
				}
			}
			return true
		})
	}
	return name
}

func position(fn *ast.FuncType, name string) int {
	at := 0
	for _, list := range fn.Params.List {
		for _, id := range list.Names {
			if id.Name == name && ofText(list.Type) {
				return at
			}
			at++
		}
	}
	return -1
}

// ofText tells whether a type is string, or lists of it.
func ofText(typ ast.Expr) bool {
	switch t := typ.(type) {
	case *ast.Ident:
		return t.Name == "string"
	case *ast.ArrayType:
		return ofText(t.Elt)
	case *ast.Ellipsis:
		return ofText(t.Elt)
	case *ast.MapType:
		return ofText(t.Value)
	}
	return false
}

// resolve follows an expression back to the texts that it may have.
func (f *finder) resolve(in *scope, e ast.Expr) {
	if f.followed[e] {
		return
	}
	f.followed[e] = true
	place := f.set.Position(e.Pos()).String()
	switch e := e.(type) {
	case *ast.ParenExpr:
		f.resolve(in, e.X)
	case *ast.BasicLit:
		f.literal(e)
	case *ast.CompositeLit:
		for _, part := range e.Elts {
			if kv, ok := part.(*ast.KeyValueExpr); ok {
				part = kv.Value
			}
			f.resolve(in, part)
		}
	case *ast.IndexExpr:
		f.resolve(in, e.X)
	case *ast.SliceExpr:
		f.resolve(in, e.X)
	case *ast.BinaryExpr:
		if text, ok := constant(e); ok {
			f.keep(text, place)
			return
		}
		f.resolve(in, e.X)
		f.resolve(in, e.Y)
	case *ast.Ident:
		f.name(in, e)
	case *ast.SelectorExpr:
		f.selected(in, e)
	case *ast.CallExpr:
		f.result(in, e)
	default:
		f.lost[place] = fmt.Sprintf("a %T can't be followed", e)
	}
}

func (f *finder) literal(e *ast.BasicLit) {
	if e.Kind != token.STRING {
		return
	}
	if text, err := strconv.Unquote(e.Value); err == nil {
		f.keep(text, f.set.Position(e.Pos()).String())
	}
}

func (f *finder) keep(text, place string) {
	f.texts[text] = append(f.texts[text], place)
}

// constant joins literals that are added up.
func constant(e ast.Expr) (string, bool) {
	switch e := e.(type) {
	case *ast.BasicLit:
		text, err := strconv.Unquote(e.Value)
		return text, err == nil && e.Kind == token.STRING
	case *ast.BinaryExpr:
		a, okA := constant(e.X)
		b, okB := constant(e.Y)
		return a + b, okA && okB && e.Op == token.ADD
	}
	return "", false
}

// name follows a parameter, a local variable, or one of the package.
func (f *finder) name(in *scope, e *ast.Ident) {
	if s := in.parameter(e.Name); s != nil {
		f.sinks[*s] = true
		for _, value := range in.assigned(e.Name) {
			f.resolve(in, value)
		}
		return
	}
	values := in.assigned(e.Name)
	if len(values) == 0 {
		in = &scope{p: in.p, file: in.file}
		values = in.p.values[e.Name]
	}
	for _, value := range values {
		f.resolve(in, value)
	}
	if len(values) == 0 && e.Name != "nil" {
		f.lost[f.set.Position(e.Pos()).String()] = e.Name + " comes from nowhere"
	}
}

// selected follows a value of another package, or a field.
func (f *finder) selected(in *scope, e *ast.SelectorExpr) {
	if f.stops[e.Sel.Name] {
		return
	}
	if other := f.imported(in, e.X); other != nil {
		for _, value := range other.values[e.Sel.Name] {
			f.resolve(&scope{p: other, file: other.files[0]}, value)
		}
		return
	}
	known := false
	for _, p := range f.packages {
		for field, text := range p.fields {
			if field != e.Sel.Name || p != in.p && !ast.IsExported(field) {
				continue
			}
			known = true
			switch {
			case text && ast.IsExported(field):
				f.sinks[sink{"", field, -1}] = true
			case text:
				f.sinks[sink{p.folder, field, -1}] = true
			}
		}
	}
	if !known {
		f.lost[f.set.Position(e.Pos()).String()] = "the field " + e.Sel.Name + " is not known"
	}
}

// result follows what a function of ours returns.
func (f *finder) result(in *scope, call *ast.CallExpr) {
	var from []*ast.FuncDecl
	p, name := in.p, ""
	switch fun := call.Fun.(type) {
	case *ast.Ident:
		name = fun.Name
	case *ast.SelectorExpr:
		name = fun.Sel.Name
		if other := f.imported(in, fun.X); other != nil {
			p = other
		} else if id, ok := fun.X.(*ast.Ident); ok && !in.local(id.Name) && importOf(in.file, id.Name) != "" {
			p = nil
		}
	}
	if f.stops[name] {
		return
	}
	if p != nil {
		from = p.funcs[name]
	}
	if len(from) == 0 {
		f.lost[f.set.Position(call.Pos()).String()] = "the result of " + name + " can't be followed"
	}
	for _, decl := range from {
		at := &scope{p: p, file: p.files[0], decl: decl, stack: append(in.stack[:len(in.stack):len(in.stack)], decl)}
		ast.Inspect(decl, func(n ast.Node) bool {
			if ret, ok := n.(*ast.ReturnStmt); ok && len(ret.Results) > 0 {
				f.resolve(at, ret.Results[0])
			}
			_, inner := n.(*ast.FuncLit)
			return !inner
		})
	}
}
