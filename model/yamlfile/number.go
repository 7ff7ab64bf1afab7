package yamlfile

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"

	"frontlay/model/message"
)

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
		value:  fmt.Sprintf("number from %v to %v", lo, hi),
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
		r.fail(n, message.New("%v can't be 0", r.name()), r.advice(message.New("write a number above 0, or leave the key out"), message.New("write a number above 0, or empty the field")))
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

// count is a whole number between lo and hi, lo above 0; 0 means not given.
func count(key, doc string, v *int, lo, hi int) field {
	return field{
		key: key, doc: doc,
		read: func(r *reader, n *yaml.Node) {
			r.nodes[v] = n
			x, ok := r.number(n, float64(lo), float64(hi))
			switch {
			case !ok:
			case x != math.Trunc(x):
				r.fail(n, message.New("%v is %v and must be a whole number", r.name(), x), message.New("check the figure"))
			default:
				*v = int(x)
			}
		},
		write: func(w *writer, old *yaml.Node) *yaml.Node {
			if *v == 0 {
				return nil
			}
			return w.number(float64(*v), old)
		},
		schema: func() schema { return schema{"type": "integer", "minimum": lo, "maximum": hi} },
		value:  fmt.Sprintf("whole number from %d to %d", lo, hi),
	}
}
