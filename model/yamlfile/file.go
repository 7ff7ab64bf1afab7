package yamlfile

import (
	"bytes"
	"fmt"
	"reflect"

	"gopkg.in/yaml.v3"

	"frontlay/model"
	"frontlay/model/figure"
)

// SheetSource finds the bytes of a hardware sheet by the name of a sample or a
// path, and the name to call it by in messages.
type SheetSource func(source string) (fileName string, data []byte, err error)

// File is a project with the text it was read from, so that comments and
// spellings survive the next Write. Its methods change neither it nor a project,
// and can run at the same time.
type File struct {
	Project *model.Project
	from    origin
	limits  []model.Limit // those that a project can set
}

// New is the file of a project that never had one; limits are those of the rules
// of the check, which its projects can set.
func New(p *model.Project, limits []model.Limit) *File { return &File{Project: p, limits: limits} }

// Read reads a project. fileName only serves messages; limits are those of the
// rules of the check, which it can set. Its error is Problems; the File is nil then. Data that no project can be, or that would cost more
// memory than one, is refused before it is parsed.
func Read(fileName string, data []byte, sheets SheetSource, limits []model.Limit) (*File, error) {
	r := newReader(fileName, sheets)
	doc := r.parse(data)
	if doc == nil || !r.readVersion(doc.Content[0], "frontlay", projectMigrations) {
		return nil, r.err()
	}
	p := new(model.Project)
	r.mapping(doc.Content[0], figure.Project(p, limits))
	r.checkProject(p)
	if err := r.err(); err != nil {
		return nil, err
	}
	return &File{p, r.origin(data, doc), limits}, nil
}

// Write gives the YAML of p, with the comments of the file that was read where
// what they stand beside is still there. The File itself does not change. The
// result has been read back and is exactly p; where p could not be read back
// (a size out of range, a front without a name of its sheet's …) the error is
// Problems that say what to change, by Path.
func (f *File) Write(p *model.Project) ([]byte, error) {
	return f.from.write(figure.Project(p, f.limits), false, func(data []byte) error { return f.readsBack(data, p) })
}

// Adopt gives the File of what was saved last, so that later writes keep
// comments from that text: data is the result of Write(p). Without it, comments
// are matched against the text that was read, which is as good until things are
// renamed and then moved.
func (f *File) Adopt(p *model.Project, data []byte) (*File, error) {
	r, doc, q := f.readKnown(data, p)
	if q == nil || len(r.problems) > 0 {
		return nil, r.err()
	}
	return &File{p, r.origin(data, doc), f.limits}, nil
}

// Draft is Write without reading back: for the journal, which must keep what
// the user has, whatever it is. It can hold what Read refuses.
func (f *File) Draft(p *model.Project) ([]byte, error) {
	w := writer{from: f.from}
	return w.document(figure.Project(p, f.limits))
}

// readsBack tells whether data holds exactly p.
func (f *File) readsBack(data []byte, p *model.Project) error {
	r, _, q := f.readKnown(data, p)
	if q == nil {
		return r.err()
	}
	if err := r.err(); err != nil {
		return unplaced(err)
	}
	if d := difference(p, q); d != "" {
		return fmt.Errorf("the project can't be written so that it reads back the same (Project%s); please report this with the project", d)
	}
	return nil
}

// unplaced takes the lines, of a text that nobody has seen, out of problems, and
// tells their paths instead.
func unplaced(err error) error {
	if ps, ok := err.(Problems); ok {
		for _, p := range ps {
			p.File, p.Line, p.Column = p.Path, 0, 0
		}
	}
	return err
}

// readKnown reads data with the sheets of p at hand. The project is nil where
// data is no YAML.
func (f *File) readKnown(data []byte, p *model.Project) (*reader, *yaml.Node, *model.Project) {
	r := newReader("", nil)
	r.known = map[string]*model.HardwareSheet{}
	for _, u := range p.Hardware {
		if u.Source != "" {
			r.known[u.Source] = u.Sheet
		}
	}
	doc := r.parse(data)
	if doc == nil {
		return r, nil, nil
	}
	q := new(model.Project)
	r.mapping(doc.Content[0], figure.Project(q, f.limits))
	r.checkProject(q)
	return r, doc, q
}

// origin is the text that a project or sheet was read from, as a tree with what
// is needed to write another in its shape. The zero origin is that of a project
// or sheet that never had a file.
type origin struct {
	doc   *yaml.Node
	signs map[*yaml.Node]string // item of a list → what tells it from the others
	blank map[*yaml.Node]bool   // keys and items with a blank line above
}

// origin is where what was read came from.
func (r *reader) origin(data []byte, doc *yaml.Node) origin {
	return origin{doc: doc, signs: r.signs, blank: blankLines(data, doc)}
}

// write gives the text of a root mapping in the shape of the origin. good tells
// whether a text reads back as it should; where the whole shape is too much for
// the encoder, less of it is kept.
func (o origin) write(rows []figure.Row, explain bool, good func(data []byte) error) ([]byte, error) {
	plain := o
	plain.blank = nil
	var last error
	for _, w := range []writer{{from: o}, {from: plain}, {from: plain, blockOnly: true}, {}} {
		w.explain = explain
		data, err := w.document(rows)
		if err == nil {
			err = good(data)
		}
		if err == nil {
			return data, nil
		}
		last = err
	}
	return nil, last
}

// document writes a root mapping.
func (w *writer) document(rows []figure.Row) ([]byte, error) {
	doc := &yaml.Node{Kind: yaml.DocumentNode}
	var root *yaml.Node
	if old := w.from.doc; old != nil {
		w.commented(doc, old)
		root = old.Content[0]
	}
	doc.Content = []*yaml.Node{w.mapping(rows, root)}
	var b bytes.Buffer
	e := yaml.NewEncoder(&b)
	e.SetIndent(2)
	if err := e.Encode(doc); err != nil {
		return nil, err
	}
	if err := e.Close(); err != nil {
		return nil, err
	}
	return withBlankLines(b.Bytes()), nil
}

// difference tells where two values of the model differ first, "" where they
// say the same: as reflect.DeepEqual, but a list without items equals one that
// is nil, since a file can't tell them apart.
func difference(a, b any) string { return differs("", reflect.ValueOf(a), reflect.ValueOf(b)) }

func differs(path string, a, b reflect.Value) string {
	switch a.Kind() {
	case reflect.Pointer:
		if a.IsNil() || b.IsNil() {
			return where(path, a.IsNil() == b.IsNil())
		}
		if a.Pointer() == b.Pointer() {
			return ""
		}
		return differs(path, a.Elem(), b.Elem())
	case reflect.Slice:
		if a.Len() != b.Len() {
			return where(path, false)
		}
		for i := range a.Len() {
			if d := differs(fmt.Sprintf("%s[%d]", path, i), a.Index(i), b.Index(i)); d != "" {
				return d
			}
		}
		return ""
	case reflect.Struct:
		for i := range a.NumField() {
			if d := differs(path+"."+a.Type().Field(i).Name, a.Field(i), b.Field(i)); d != "" {
				return d
			}
		}
		return ""
	case reflect.Map:
		return where(path, a.Len() == 0 && b.Len() == 0 || reflect.DeepEqual(a.Interface(), b.Interface()))
	default:
		return where(path, reflect.DeepEqual(a.Interface(), b.Interface()))
	}
}

func where(path string, same bool) string {
	if same {
		return ""
	}
	return path
}
