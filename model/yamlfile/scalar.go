package yamlfile

import (
	"math"
	"strconv"
	"strings"
	"unicode"

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
		r.fail(n, message.New("%v: %v", name, err.Error()), message.New("write a size such as %v or %v", r.sizeText(18*length.Millimetre), "3/4 in"))
	case l < lo && lo == 0:
		r.fail(n, message.New("%v is %v and can't be negative", name, l), message.New("write 0 or more"))
	case l < lo && lo == positive:
		r.fail(n, message.New("%v is %v and must be more than 0", name, l), message.New("write the size, or leave the key out where it may be left out"))
	case l < lo:
		r.fail(n, message.New("%v is %v and can't be less than %v", name, l, lo), message.New("check the figure and its unit"))
	case l > hi:
		r.fail(n, message.New("%v is %v and can't be more than %v", name, l, hi), message.New("check the figure and its unit"))
	default:
		return l, true
	}
	return 0, false
}

// positive is the least size that is more than nothing.
const positive = length.Nanometre

func (r *reader) sizeText(l length.Length) string { return exact(l, r.unit) }

// name is the last key on the path, with its index in a list of sizes.
func (r *reader) name() string {
	i := len(r.path) - 1
	if i > 0 && strings.HasPrefix(r.path[i], "[") {
		return r.path[i-1] + r.path[i]
	}
	if i >= 0 {
		return r.path[i]
	}
	return ""
}

// number is a plain number between lo and hi. 0 means not given where lo is
// above 0.
func number(key, doc string, v *float64, lo, hi float64) field {
	return field{
		key: key, doc: doc,
		read: func(r *reader, n *yaml.Node) {
			r.nodes[v] = n
			if x, ok := r.number(n, lo, hi); ok {
				*v = x
			}
		},
		write: func(w *writer, old *yaml.Node) *yaml.Node {
			if *v == 0 && (old == nil || lo > 0) {
				return nil
			}
			return w.number(*v, old)
		},
		schema: func() schema { return schema{"type": "number", "minimum": lo, "maximum": hi} },
	}
}

func (r *reader) number(n *yaml.Node, lo, hi float64) (float64, bool) {
	text, ok := r.scalar(n)
	if !ok {
		return 0, false
	}
	x, ok := plainNumber(text)
	switch {
	case !ok:
		r.fail(n, message.New("%v: %v is not a number", r.name(), shown(text)), message.New("write a number such as 2 or 0.5, without a unit"))
	case x == 0 && lo > 0:
		r.fail(n, message.New("%v can't be 0", r.name()), message.New("write a number above 0, or leave the key out"))
	case x < lo || x > hi:
		r.fail(n, message.New("%v is %v and must be from %v to %v", r.name(), x, lo, hi), message.New("check the figure"))
	default:
		return x, true
	}
	return 0, false
}

// plainNumber reads a decimal number; a comma is as good as a point. The words
// for infinity and not-a-number, and other bases, are no numbers here.
func plainNumber(s string) (float64, bool) {
	s = strings.TrimSpace(strings.Replace(s, ",", ".", 1))
	if s == "" || len(s) > 40 || strings.Trim(s, "+-.0123456789") != "" {
		return 0, false
	}
	x, err := strconv.ParseFloat(s, 64)
	return x, err == nil && !math.IsInf(x, 0) && !math.IsNaN(x)
}

// text is a name or another text on one line. Empty means not given.
func text(key, doc string, v *string) field { return textOf(key, doc, v, maxName, false) }

// notes is text that can have several lines.
func notes(key, doc string, v *string) field { return textOf(key, doc, v, maxText, true) }

func textOf(key, doc string, v *string, most int, lines bool) field {
	return field{
		key: key, doc: doc,
		read: func(r *reader, n *yaml.Node) {
			r.nodes[v] = n
			if s, ok := r.text(n, most, lines); ok {
				*v = s
			}
		},
		write: func(w *writer, old *yaml.Node) *yaml.Node {
			if *v == "" {
				return nil
			}
			return w.text(*v, old)
		},
		schema: func() schema { return schema{"type": []string{"string", "number"}, "maxLength": most} },
	}
}

func (r *reader) text(n *yaml.Node, most int, lines bool) (string, bool) {
	s, ok := r.scalar(n)
	if !ok {
		return "", false
	}
	if count := len([]rune(s)); count > most {
		r.fail(n, message.New("%v has %v characters, which is more than %v", r.name(), count, most), message.New("shorten it"))
		return "", false
	}
	for _, c := range s {
		switch {
		case c == '\n' && lines, c == '\t':
		case c == '\n':
			r.fail(n, message.New("%v must be on one line", r.name()), message.New("join its lines; longer text goes into notes"))
			return "", false
		case unicode.IsControl(c) || misleading(c):
			r.fail(n, message.New("%v has the invisible character %v in it", r.name(), strconv.QuoteRuneToASCII(c)), message.New("remove it"))
			return "", false
		}
	}
	return s, true
}

// misleading tells the characters that make text look other than it is: those
// that override the direction of writing (Unicode Standard Annex 9, explicit
// directional formatting) and the byte order mark. Scripts that run right to
// left need none of them.
func misleading(c rune) bool {
	return c >= '\u202a' && c <= '\u202e' || c >= '\u2066' && c <= '\u2069' || c == '\ufeff'
}

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
	}
}
