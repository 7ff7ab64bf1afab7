package yamlfile

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"

	"frontlay/model"
	"frontlay/model/figure"
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
	sheetOnly bool                            // the file is a hardware sheet
	root      *yaml.Node                      // of the file
	path      []string
	problems  Problems
	signs     map[*yaml.Node]string // item of a list → what tells it from the others
}

func newReader(file string, sheets SheetSource) *reader {
	return &reader{file: file, sheets: sheets, known: map[string]*model.HardwareSheet{}, signs: map[*yaml.Node]string{}}
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
	p := &Problem{File: r.file, Line: line, Column: column, Path: figure.PathText(r.path), Message: what, Advice: advice}
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

// refuse adds a fault of the value that is being read, and tells whether there is none.
func (r *reader) refuse(n *yaml.Node, f *figure.Fault) bool {
	if f != nil {
		r.fail(n, f.What, f.Advice)
	}
	return f == nil
}

// failBelow adds a problem of the value at a path below the one that is being read, or
// of what that is missing from.
func (r *reader) failBelow(path string, what, advice message.Message) {
	r.enter(path)
	steps := append(slices.Clone(r.path[:len(r.path)-1]), strings.FieldsFunc(path, func(c rune) bool { return c == '.' || c == '[' || c == ']' })...)
	r.fail(nodeAt(r.root, steps), what, advice)
	r.leave()
}

// nodeAt finds the value at the end of steps, keys or indexes in brackets, or the one
// nearest to it on the way there.
func nodeAt(n *yaml.Node, steps []string) *yaml.Node {
	for _, step := range steps {
		next := valueOf(n, step)
		if i, err := strconv.Atoi(strings.Trim(step, "[]")); err == nil && n.Kind == yaml.SequenceNode && i < len(n.Content) {
			next = n.Content[i]
		}
		if next == nil {
			break
		}
		n = next
	}
	return n
}

func (r *reader) enter(key string) { r.path = append(r.path, key) }
func (r *reader) enterAt(i int)    { r.enter("[" + strconv.Itoa(i) + "]") }
func (r *reader) leave()           { r.path = r.path[:len(r.path)-1] }

// mapping reads a mapping by its table of fields.
func (r *reader) mapping(n *yaml.Node, rows []figure.Row) {
	if n.Kind != yaml.MappingNode {
		r.fail(n, message.New("keys with values are expected here, such as %v", rows[0].Key+": …"), message.New("see the reference of the format"))
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
			r.fail(key, message.New("the key %v stands here twice", figure.Quote(key.Value)), message.New("remove one of the two"))
		case !known(rows, key.Value):
			r.unknownKey(key, rows)
		default:
			values[key.Value] = n.Content[i+1]
		}
	}
	ways := map[string]string{}
	for _, f := range rows {
		if r.full() {
			return
		}
		v := values[f.Key]
		if other := ways[f.Ways]; other != "" && v != nil {
			r.fail(v, message.New("%v and %v say the same thing in two ways", other, f.Key), message.New("remove one of the two"))
			continue
		}
		if f.Ways != "" && v != nil {
			ways[f.Ways] = f.Key
		}
		if v == nil || isNull(v) {
			if f.Needed {
				at := n
				if v != nil {
					at = v
				}
				r.refuse(at, f.Missing())
			}
			continue
		}
		r.enter(f.Key)
		r.value(f, v)
		r.leave()
	}
}

func known(rows []figure.Row, key string) bool {
	for _, f := range rows {
		if f.Key == key {
			return true
		}
	}
	return false
}

func (r *reader) unknownKey(key *yaml.Node, rows []figure.Row) {
	names := make([]string, len(rows))
	for i, f := range rows {
		names[i] = f.Key
	}
	what := message.New("the key %v is not known here", figure.Quote(key.Value))
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

// scalar gives the text of a single value.
func (r *reader) scalar(n *yaml.Node) (string, bool) {
	if n.Kind == yaml.ScalarNode {
		return n.Value, true
	}
	r.fail(n, message.New("one value is expected here, not a list or keys"), message.New("look at the brackets and indents of this line"))
	return "", false
}
