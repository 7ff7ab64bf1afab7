package yamlfile

import (
	"strconv"
	"unicode"

	"gopkg.in/yaml.v3"

	"frontlay/model/message"
)

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
		value:  map[bool]string{false: "text on one line", true: "text"}[lines] + ", at most " + strconv.Itoa(most) + " characters",
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
