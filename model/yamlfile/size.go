package yamlfile

import (
	"strings"

	"gopkg.in/yaml.v3"

	"frontlay/model/length"
	"frontlay/model/message"
)

// maxSize is the greatest size in a project.
const maxSize = 20 * length.Metre

// maxName and maxText bound names (one line) and notes, in characters.
const (
	maxName = 200
	maxText = 20_000
)

// size is a length between lo and hi. A size of 0 that is not needed is left
// out unless the key stood there before.
func size(key, doc string, v *length.Length, lo, hi length.Length) field {
	return field{
		key: key, doc: doc,
		read: func(r *reader, n *yaml.Node) {
			r.nodes[v] = n
			if s, ok := r.size(n, lo, hi); ok {
				*v = s
			}
		},
		write: func(w *writer, old *yaml.Node) *yaml.Node {
			if *v == 0 && (old == nil || lo > 0) {
				return nil
			}
			return w.size(*v, old)
		},
		schema: sizeSchema,
		value:  "size" + rangeText(lo, hi),
	}
}

// sizeIfAny is a length that the model may do without (nil).
func sizeIfAny(key, doc string, v **length.Length, lo, hi length.Length) field {
	return field{
		key: key, doc: doc,
		read: func(r *reader, n *yaml.Node) {
			r.nodes[v] = n
			if s, ok := r.size(n, lo, hi); ok {
				*v = &s
			}
		},
		write: func(w *writer, old *yaml.Node) *yaml.Node {
			if *v == nil {
				return nil
			}
			return w.size(**v, old)
		},
		schema: sizeSchema,
		value:  "size" + rangeText(lo, hi),
	}
}

func (r *reader) size(n *yaml.Node, lo, hi length.Length) (length.Length, bool) {
	text, ok := r.scalar(n)
	if !ok {
		return 0, false
	}
	l, err := length.Parse(text, r.unit)
	name := r.name()
	switch {
	case isNull(n) || strings.TrimSpace(text) == "":
		r.fail(n, message.New("%v has no size", name), message.New("write a size such as %v", r.sizeText(18*length.Millimetre)))
	case err != nil:
		r.fail(n, message.New("%v: %v", name, err), message.New("write a size such as %v or %v", r.sizeText(18*length.Millimetre), "3/4 in"))
	case l < lo && lo == 0:
		r.fail(n, message.New("%v is %v and can't be negative", name, l), message.New("write 0 or more"))
	case l < lo && lo == positive:
		r.fail(n, message.New("%v is %v and must be more than 0", name, l), r.advice(message.New("write the size, or leave the key out where it may be left out"), message.New("write the size, or empty the field where it may be empty")))
	case l < lo:
		r.fail(n, message.New("%v is %v and can't be less than %v", name, l, lo), message.New("check the figure and its unit"))
	case l > hi:
		r.fail(n, message.New("%v is %v and can't be more than %v", name, l, hi), message.New("check the figure and its unit"))
	default:
		return l, true
	}
	return 0, false
}

// rangeText tells the limits of a size, for the reference.
func rangeText(lo, hi length.Length) string {
	switch {
	case lo == positive:
		return " above 0, at most " + hi.String()
	case lo == 0:
		return ", at most " + hi.String()
	default:
		return " from " + lo.String() + " to " + hi.String()
	}
}

// positive is the least size that is more than nothing.
const positive = length.Nanometre

func (r *reader) sizeText(l length.Length) string { return exact(l, r.unit) }

// name is the last key on the path, with its index in a list of sizes.
func (r *reader) name() key {
	i := len(r.path) - 1
	if i > 0 && strings.HasPrefix(r.path[i], "[") {
		return key(r.path[i-1] + r.path[i])
	}
	if i >= 0 {
		return key(r.path[i])
	}
	return ""
}
