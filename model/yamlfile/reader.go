package yamlfile

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"

	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// reader collects what is wrong while a tree is read. The unit is that of bare
// numbers at the place being read.
type reader struct {
	file      string
	unit      length.Unit
	sheets    SheetSource
	known     map[string]*model.HardwareSheet // sheets by source that need no reading (any more)
	form      bool                            // problems are shown in a form, not beside a file
	sheetOnly bool                            // the file is a hardware sheet
	path      []string
	problems  Problems
	nodes     map[any]*yaml.Node    // pointer to a value of the model → where it stands
	signs     map[*yaml.Node]string // item of a list → what tells it from the others
}

func newReader(file string, sheets SheetSource) *reader {
	return &reader{file: file, sheets: sheets, known: map[string]*model.HardwareSheet{}, nodes: map[any]*yaml.Node{}, signs: map[*yaml.Node]string{}}
}

// full tells that there are problems enough.
func (r *reader) full() bool { return len(r.problems) >= maxProblems }

func (r *reader) err() error {
	if len(r.problems) == 0 {
		return nil
	}
	slices.SortStableFunc(r.problems, func(a, b *Problem) int {
		return cmp.Or(cmp.Compare(rank(a.File != r.file), rank(b.File != r.file)), cmp.Compare(a.File, b.File),
			cmp.Compare(a.Line, b.Line), cmp.Compare(a.Column, b.Column))
	})
	return r.problems
}

// rank sorts no before yes.
func rank(yes bool) int {
	if yes {
		return 1
	}
	return 0
}

func (r *reader) fail(n *yaml.Node, what, advice message.Message) *Problem {
	if n == nil {
		return r.failAt(0, 0, what, advice)
	}
	return r.failAt(n.Line, n.Column, what, advice)
}

func (r *reader) failAt(line, column int, what, advice message.Message) *Problem {
	what.Args = r.inUnit(what.Args)
	p := &Problem{File: r.file, Line: line, Column: column, Path: pathText(r.path), Message: what, Advice: advice}
	if !r.full() {
		r.problems = append(r.problems, p)
	}
	return p
}

// inUnit writes lengths in the file's unit, which whoever shows the problem can't
// know. Those in mm are left, to be written with the user's decimal sign.
func (r *reader) inUnit(args []any) []any {
	if r.unit == length.UnitMM {
		return args
	}
	said := slices.Clone(args)
	for i, a := range said {
		if l, ok := a.(length.Length); ok {
			said[i] = r.unit.WithSymbol(l)
		}
	}
	return said
}

// pathText writes keys and indexes as cabinets[0].width.
func pathText(path []string) string {
	return strings.ReplaceAll(strings.Join(path, "."), ".[", "[")
}

func (r *reader) enter(key string) { r.path = append(r.path, key) }
func (r *reader) enterAt(i int)    { r.enter("[" + strconv.Itoa(i) + "]") }
func (r *reader) leave()           { r.path = r.path[:len(r.path)-1] }

// mapping reads a mapping by its table of fields.
func (r *reader) mapping(n *yaml.Node, fields []field) {
	if n.Kind != yaml.MappingNode {
		r.fail(n, message.New("keys with values are expected here, such as %v", fields[0].key+": …"), message.New("see the reference of the format"))
		return
	}
	values := make(map[string]*yaml.Node, len(n.Content)/2)
	for i := 0; i+1 < len(n.Content); i += 2 {
		if r.full() {
			return
		}
		key := n.Content[i]
		switch {
		case key.Kind != yaml.ScalarNode:
			r.fail(key, message.New("a key must be a plain word"), message.New("look at the brackets of this line"))
		case values[key.Value] != nil:
			r.fail(key, message.New("the key %v stands here twice", shown(key.Value)), message.New("remove one of the two"))
		case !known(fields, key.Value):
			r.unknownKey(key, fields)
		default:
			values[key.Value] = n.Content[i+1]
		}
	}
	for _, f := range fields {
		if r.full() {
			return
		}
		v := values[f.key]
		if v == nil || isNull(v) {
			if f.required {
				at := n
				if v != nil {
					at = v
				}
				r.fail(at, message.New(missing, key(f.key)), r.advice(message.New("add it: %v", message.New(f.doc)), message.New("fill this in")))
			}
			continue
		}
		r.enter(f.key)
		f.read(r, v)
		r.leave()
	}
}

func known(fields []field, key string) bool {
	for _, f := range fields {
		if f.key == key {
			return true
		}
	}
	return false
}

func (r *reader) unknownKey(key *yaml.Node, fields []field) {
	names := make([]string, len(fields))
	for i, f := range fields {
		names[i] = f.key
	}
	what := message.New("the key %v is not known here", shown(key.Value))
	if near := nearest(key.Value, names); near != "" {
		r.fail(key, what, message.New("did you mean %v?", near))
		return
	}
	if _, err := strconv.Atoi(key.Value); err == nil {
		r.fail(key, what, message.New("write decimals with a point, or put quotes around the size: \"12,5\""))
		return
	}
	r.fail(key, what, message.New("known keys are %v", strings.Join(names, ", ")))
}

// isNull tells a key without a value.
func isNull(n *yaml.Node) bool { return n.Kind == yaml.ScalarNode && n.ShortTag() == "!!null" }

// shown is a piece of the user's file made safe and short for a message.
func shown(s string) string {
	if r := []rune(s); len(r) > 40 {
		s = string(r[:40]) + "…"
	}
	return strconv.Quote(s)
}

// scalar gives the text of a single value.
func (r *reader) scalar(n *yaml.Node) (string, bool) {
	if n.Kind == yaml.ScalarNode {
		return n.Value, true
	}
	r.fail(n, message.New("one value is expected here, not a list or keys"), message.New("look at the brackets and indents of this line"))
	return "", false
}
