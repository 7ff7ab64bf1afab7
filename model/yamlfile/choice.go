package yamlfile

import (
	"maps"
	"slices"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"

	"frontlay/model/message"
)

// choice is one of a few words; names are by the constants' values from 0, and
// the constant 0 is the default, left out unless the key stood there before.
func choice[T ~uint8](key, doc string, v *T, names ...string) field {
	return field{
		key: key, doc: doc,
		read: func(r *reader, n *yaml.Node) {
			r.nodes[v] = n
			if i, ok := r.choice(n, names); ok {
				*v = T(i)
			}
		},
		write: func(w *writer, old *yaml.Node) *yaml.Node {
			if *v == 0 && old == nil || int(*v) >= len(names) {
				return nil
			}
			return w.text(names[*v], old)
		},
		schema: func() schema { return schema{"enum": names} },
		value:  "one of " + strings.Join(names, ", "),
	}
}

// word is one of a few words kept as text; empty means not given.
func word(key, doc string, v *string, names ...string) field {
	f := text(key, doc, v)
	f.read = func(r *reader, n *yaml.Node) {
		r.nodes[v] = n
		if i, ok := r.choice(n, names); ok {
			*v = names[i]
		}
	}
	f.schema = func() schema { return schema{"enum": names} }
	f.value = "one of " + strings.Join(names, ", ")
	return f
}

func (r *reader) choice(n *yaml.Node, names []string) (int, bool) {
	s, ok := r.scalar(n)
	if !ok {
		return 0, false
	}
	for i, name := range names {
		if s == name {
			return i, true
		}
	}
	advice := message.New("write one of %v", strings.Join(names, ", "))
	if near := nearest(s, names); near != "" {
		advice = message.New("did you mean %v?", near)
	}
	r.fail(n, message.New("%v can't be %v", r.name(), shown(s)), advice)
	return 0, false
}

// flag is yes or no; no is the default and left out.
func flag(key, doc string, v *bool) field {
	return field{
		key: key, doc: doc,
		read: func(r *reader, n *yaml.Node) {
			r.nodes[v] = n
			s, ok := r.scalar(n)
			switch {
			case !ok:
			case s == "true" || s == "yes":
				*v = true
			case s == "false" || s == "no":
				*v = false
			default:
				r.fail(n, message.New("%v can't be %v", r.name(), shown(s)), message.New("write true or false"))
			}
		},
		write: func(w *writer, old *yaml.Node) *yaml.Node {
			if !*v && old == nil {
				return nil
			}
			return w.plain(strconv.FormatBool(*v), old, func(s string) bool { return (s == "true" || s == "yes") == *v })
		},
		schema: func() schema { return schema{"type": "boolean"} },
		value:  "true or false",
	}
}

// words is a mapping from the user's words to a few known ones.
func words(key, doc string, v *map[string]string, names ...string) field {
	return field{
		key: key, doc: doc,
		read: func(r *reader, n *yaml.Node) {
			r.nodes[v] = n
			if n.Kind != yaml.MappingNode {
				r.fail(n, message.New("keys with values are expected here"), message.New("each value is one of %v", strings.Join(names, ", ")))
				return
			}
			m := map[string]string{}
			for i := 0; i+1 < len(n.Content) && !r.full(); i += 2 {
				k, ok := r.text(n.Content[i], maxName, false)
				if _, twice := m[k]; twice {
					r.fail(n.Content[i], message.New("the key %v stands here twice", shown(k)), message.New("remove one of the two"))
				}
				r.enter(k)
				if i, ok2 := r.choice(n.Content[i+1], names); ok && ok2 {
					m[k] = names[i]
				}
				r.leave()
			}
			if len(m) > 0 {
				*v = m
			}
		},
		write: func(w *writer, old *yaml.Node) *yaml.Node {
			if len(*v) == 0 {
				return nil
			}
			var fields []field
			for _, k := range slices.Sorted(maps.Keys(*v)) {
				value := (*v)[k]
				fields = append(fields, text(k, "", &value))
			}
			return w.mapping(fields, old)
		},
		schema: func() schema {
			return schema{"type": "object", "additionalProperties": schema{"enum": names}}
		},
		value: "names, each with one of " + strings.Join(names, ", "),
	}
}
