package yamlfile

import (
	"errors"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"

	"frontlay/model"
	"frontlay/model/message"
)

// CheckSheet finds what would keep a hardware sheet from being read back: sizes
// out of range, figures that contradict one another, names that are missing.
// Each problem's Path is the way to the figure, as drawers[0].side_top; Line
// and Column are 0, as there is no file. It is nil for a sheet without fault.
func CheckSheet(s *model.HardwareSheet) Problems {
	w := new(writer)
	data, err := w.document(sheetFields(s))
	if err != nil {
		return Problems{{Message: message.New("the hardware sheet can't be written: %v", err.Error()), Advice: message.New("please report this with the sheet")}}
	}
	r := newReader("", nil)
	r.sheetOnly, r.form = true, true
	doc := r.parse(data)
	if doc != nil {
		r.sheet(doc.Content[0])
	}
	var found Problems
	if !errors.As(r.err(), &found) {
		return nil
	}
	for _, p := range found {
		if doc != nil {
			if path, ok := pathAt(doc.Content[0], p.Line, p.Column, nil); ok {
				p.Path = path
			}
		}
		p.Line, p.Column = 0, 0 // of a text that nobody has seen
	}
	return found
}

// pathAt gives the way to the value at a place of a text.
func pathAt(n *yaml.Node, line, column int, path []string) (string, bool) {
	if n.Line == line && n.Column == column && n.Kind != yaml.MappingNode {
		return pathText(path), true
	}
	switch n.Kind {
	case yaml.MappingNode:
		for i := 0; i+1 < len(n.Content); i += 2 {
			if p, ok := pathAt(n.Content[i+1], line, column, append(path, n.Content[i].Value)); ok {
				return p, true
			}
		}
	case yaml.SequenceNode:
		for i, c := range n.Content {
			at := append(path, "["+strconv.Itoa(i)+"]")
			if c.Line == line && c.Column == column {
				return pathText(at), true
			}
			if p, ok := pathAt(c, line, column, at); ok {
				return p, true
			}
		}
	}
	return "", false
}

// SheetDocs tells what each figure of a hardware sheet is and where on a maker's
// document it stands, by its path with empty brackets for the items of a list:
// drawers[].side_top.
func SheetDocs() map[string]string {
	docs := map[string]string{}
	var add func(fields []field, path string)
	add = func(fields []field, path string) {
		for _, f := range fields {
			docs[path+f.key] = f.doc
			if f.children == nil {
				continue
			}
			below := path + f.key
			if strings.HasPrefix(f.value, "list") {
				below += "[]"
			}
			add(f.children(), below+".")
		}
	}
	add(sheetFields(new(model.HardwareSheet)), "")
	return docs
}
