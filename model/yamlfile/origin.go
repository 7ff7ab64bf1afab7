package yamlfile

import (
	"bytes"

	"gopkg.in/yaml.v3"
)

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
func (o origin) write(fields []field, explain bool, good func(data []byte) error) ([]byte, error) {
	plain := o
	plain.blank = nil
	var last error
	for _, w := range []writer{{from: o}, {from: plain}, {from: plain, blockOnly: true}, {}} {
		w.explain = explain
		data, err := w.document(fields)
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
func (w *writer) document(fields []field) ([]byte, error) {
	doc := &yaml.Node{Kind: yaml.DocumentNode}
	var root *yaml.Node
	if old := w.from.doc; old != nil {
		w.commented(doc, old)
		root = old.Content[0]
	}
	doc.Content = []*yaml.Node{w.mapping(fields, root)}
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
