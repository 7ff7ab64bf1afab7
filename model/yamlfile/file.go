package yamlfile

import (
	"fmt"

	"gopkg.in/yaml.v3"

	"frontlay/model"
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
	r.nodes[p] = doc.Content[0]
	r.mapping(doc.Content[0], projectFields(p, limits))
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
	return f.from.write(projectFields(p, f.limits), false, func(data []byte) error { return f.readsBack(data, p) })
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
	return w.document(projectFields(p, f.limits))
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
	r.nodes[q] = doc.Content[0]
	r.mapping(doc.Content[0], projectFields(q, f.limits))
	r.checkProject(q)
	return r, doc, q
}
