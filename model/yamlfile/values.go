package yamlfile

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"

	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// value reads what stands behind the key of a row.
func (r *reader) value(row figure.Row, n *yaml.Node) {
	of := row.Word()
	switch v := row.Value.(type) {
	case *figure.Version: // readVersion has read it before anything else
	case *figure.Size:
		if l, ok := r.size(n, of, v.Refuse); ok {
			v.Set(l)
		}
	case *figure.Sizes:
		r.sizes(n, of, v)
	case *figure.Number:
		if x, ok := r.number(n, of, v.Refuse); ok {
			*v.At = x
		}
	case *figure.Count:
		if x, ok := r.number(n, of, v.Refuse); ok {
			*v.At = int(x)
		}
	case *figure.Text:
		if len(v.OneOf) > 0 {
			if i, ok := r.choice(n, of, v.OneOf); ok {
				*v.At = v.OneOf[i]
			}
		} else if s, ok := r.text(n, of, v.Refuse); ok {
			*v.At = s
		}
	case *figure.Choice:
		if i, ok := r.choice(n, of, v.OneOf); ok {
			v.Set(i)
		}
	case *figure.Flag:
		if i, ok := r.choice(n, of, yesAndNo); ok {
			*v.At = i%2 == 0
		}
	case *figure.Words:
		r.words(n, v)
	case *figure.Unit:
		if i, ok := r.choice(n, of, length.UnitNames()); ok {
			*v.At = length.Unit(i)
			r.unit = *v.At
		}
	case *figure.Group:
		if v.Make != nil {
			v.Make()
		}
		r.mapping(n, v.Rows())
	case *figure.List:
		r.list(n, of, v)
	case *figure.Sheets:
		r.hardware(n, v.At)
	}
}

// yesAndNo are the words of a flag: yes at even places.
var yesAndNo = []string{"true", "false", "yes", "no"}

func (r *reader) size(n *yaml.Node, of figure.Word, refuse func(figure.Word, length.Length) *figure.Fault) (length.Length, bool) {
	text, ok := r.scalar(n)
	if !ok {
		return 0, false
	}
	l, err := length.Parse(text, r.unit)
	example := r.unit.Exact(18 * length.Millimetre)
	if isNull(n) || strings.TrimSpace(text) == "" {
		r.fail(n, message.New("%v has no size", of), message.New("write a size such as %v", example))
		return 0, false
	}
	if err != nil {
		r.fail(n, message.New("%v: %v", of, err), message.New("write a size such as %v or %v", example, "3/4 in"))
		return 0, false
	}
	return l, r.refuse(n, refuse(of, l))
}

// sizes reads a list of plain sizes.
func (r *reader) sizes(n *yaml.Node, of figure.Word, v *figure.Sizes) {
	if n.Kind != yaml.SequenceNode {
		r.fail(n, message.New("a list of sizes is expected for %v", of), message.New("write it in square brackets: [48, 80]"))
		return
	}
	if !r.short(n, of, figure.MostSizes) {
		return
	}
	var all []length.Length
	for i, c := range n.Content {
		r.enterAt(i)
		if l, ok := r.size(c, figure.Word{Key: of.Key + "[" + strconv.Itoa(i) + "]", Name: of.Name}, v.Refuse); ok {
			all = append(all, l)
		}
		r.leave()
	}
	*v.At = all
}

// short tells that a list has no more than so many items.
func (r *reader) short(n *yaml.Node, of figure.Word, most int) bool {
	if len(n.Content) <= most {
		return true
	}
	r.fail(n, message.New("the list %v has %v items, which is more than %v", of, len(n.Content), most), message.New("shorten it"))
	return false
}

func (r *reader) list(n *yaml.Node, of figure.Word, v *figure.List) {
	if n.Kind != yaml.SequenceNode {
		r.fail(n, message.New("a list is expected for %v", of), message.New("begin each item on its own line with a dash and a space"))
		return
	}
	if !r.short(n, of, v.Most) {
		return
	}
	v.Resize(len(n.Content))
	for i, c := range n.Content {
		r.enterAt(i)
		r.mapping(c, v.Rows(i))
		r.signs[c] = v.Sign(i)
		r.leave()
	}
}

func (r *reader) number(n *yaml.Node, of figure.Word, refuse func(figure.Word, float64) *figure.Fault) (float64, bool) {
	text, ok := r.scalar(n)
	if !ok {
		return 0, false
	}
	x, ok := plainNumber(text)
	if !ok {
		r.fail(n, message.New("%v: %v is not a number", of, figure.Quote(text)), message.New("write a number such as 2 or 0.5, without a unit"))
		return 0, false
	}
	return x, r.refuse(n, refuse(of, x))
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

func (r *reader) text(n *yaml.Node, of figure.Word, refuse func(figure.Word, string) *figure.Fault) (string, bool) {
	s, ok := r.scalar(n)
	return s, ok && r.refuse(n, refuse(of, s))
}

func (r *reader) choice(n *yaml.Node, of figure.Word, words []string) (int, bool) {
	s, ok := r.scalar(n)
	if !ok {
		return 0, false
	}
	if i := slices.Index(words, s); i >= 0 {
		return i, true
	}
	advice := message.New("write one of %v", strings.Join(words, ", "))
	if near := nearest(s, words); near != "" {
		advice = message.New("did you mean %v?", near)
	}
	r.fail(n, message.New("%v can't be %v", of, figure.Quote(s)), advice)
	return 0, false
}

// words reads a mapping from the user's names to a few known words.
func (r *reader) words(n *yaml.Node, v *figure.Words) {
	if n.Kind != yaml.MappingNode {
		r.fail(n, message.New("keys with values are expected here"), message.New("each value is one of %v", strings.Join(v.OneOf, ", ")))
		return
	}
	m := map[string]string{}
	for i := 0; i+1 < len(n.Content) && !r.full(); i += 2 {
		name, ok := r.text(n.Content[i], r.here(), figure.RefuseName)
		if _, twice := m[name]; twice {
			r.fail(n.Content[i], message.New("the key %v stands here twice", figure.Quote(name)), message.New("remove one of the two"))
		}
		r.enter(name)
		if w, known := r.choice(n.Content[i+1], r.here(), v.OneOf); ok && known {
			m[name] = v.OneOf[w]
		}
		r.leave()
	}
	if len(m) > 0 {
		*v.At = m
	}
}

// here stands for the last key of the path in a message.
func (r *reader) here() figure.Word { return figure.Word{Key: r.path[len(r.path)-1]} }
