package yamlfile

import (
	"gopkg.in/yaml.v3"
)

// field describes one key of a mapping, bound to a value of the model: doc is
// one line for the reference, the schema and the comments of a new hardware
// sheet. read sets the value; write gives its node, nil where the key is left
// out; old is the node that stood there, nil where there was none. schema is
// its JSON Schema.
type field struct {
	key      string
	doc      string
	required bool
	nested   bool // a mapping
	read     func(r *reader, n *yaml.Node)
	write    func(w *writer, old *yaml.Node) *yaml.Node
	schema   func() schema
	value    string         // what stands there, in words, for the reference
	children func() []field // of a mapping or of the items of a list
}

// kind is the kind of node the field has; lists count as scalars.
func (f field) kind() yaml.Kind {
	if f.nested {
		return yaml.MappingNode
	}
	return yaml.ScalarNode
}

// needed marks a field as one that can't be left out.
func (f field) needed() field {
	f.required = true
	return f
}

// group is a mapping inside a mapping, always present in the model. It is
// written where any of its keys is.
func group(key, doc string, fields ...field) field {
	return field{
		key: key, doc: doc, nested: true,
		read: func(r *reader, n *yaml.Node) { r.mapping(n, fields) },
		write: func(w *writer, old *yaml.Node) *yaml.Node {
			if m := w.mapping(fields, old); len(m.Content) > 0 || old != nil {
				return m
			}
			return nil
		},
		schema: func() schema { return objectSchema(fields) },
		value:  "keys", children: func() []field { return fields },
	}
}

// optional is a mapping that the model may do without (nil).
func optional[T any](key, doc string, v **T, fields func(*T) []field) field {
	return field{
		key: key, doc: doc,
		read: func(r *reader, n *yaml.Node) {
			*v = new(T)
			r.nodes[*v] = n
			r.mapping(n, fields(*v))
		},
		write: func(w *writer, old *yaml.Node) *yaml.Node {
			if *v == nil {
				return nil
			}
			return w.mapping(fields(*v), old)
		},
		schema: func() schema { return objectSchema(fields(new(T))) },
		value:  "keys", children: func() []field { return fields(new(T)) },
	}
}
