package yamlfile

import (
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"

	"frontlay/model/figure"
	"frontlay/model/length"
)

// writer makes the node tree of a project or sheet. Sizes are written in unit;
// those of the old tree are in oldUnit. explain writes each new key's meaning
// above it.
type writer struct {
	unit, oldUnit length.Unit
	from          origin
	explain       bool
	blockOnly     bool // no flow style: comments inside brackets don't always survive the encoder
}

// like makes an empty mapping or sequence with the style and comments of old.
func (w *writer) like(old *yaml.Node, kind yaml.Kind) *yaml.Node {
	n := &yaml.Node{Kind: kind}
	if old != nil && old.Kind == kind {
		n.Style = old.Style
	}
	if w.blockOnly {
		n.Style = 0
	}
	return w.commented(n, old)
}

// commented gives a node the comments of an old one.
func (w *writer) commented(n, old *yaml.Node) *yaml.Node {
	if old != nil {
		n.HeadComment, n.LineComment, n.FootComment = old.HeadComment, old.LineComment, old.FootComment
		if w.from.blank[old] {
			n.HeadComment = spaced(n.HeadComment)
		}
	}
	return n
}

// maxOnLine is how many new keys with plain values go on one line.
const maxOnLine = 7

type pair struct{ key, value *yaml.Node }

// mapping writes fields in the order of the old mapping, new keys behind the
// one before them in the table.
func (w *writer) mapping(rows []figure.Row, old *yaml.Node) *yaml.Node {
	m := w.like(old, yaml.MappingNode)
	oldKeys := map[string]int{}
	if old != nil && old.Kind == yaml.MappingNode {
		for i := 0; i+1 < len(old.Content); i += 2 {
			oldKeys[old.Content[i].Value] = i
		}
	}
	var pairs []pair
	rank := map[string]int{}
	for _, f := range rows {
		at, had := oldKeys[f.Key]
		var was *yaml.Node
		key := w.key(f.Key)
		if had {
			key, was = w.commented(key, old.Content[at]), old.Content[at+1]
		} else if w.explain {
			key.HeadComment = wrap(f.Doc.String(), 74)
		}
		v := w.value(f, was)
		if v == nil && f.Needed {
			v = w.value(f, &yaml.Node{Kind: kindOf(f)}) // as if the key had stood there
		}
		if v == nil {
			continue
		}
		if had {
			rank[f.Key] = at
			pairs = insert(pairs, pair{key, v}, func(p pair) bool { return rank[p.key.Value] < at })
			continue
		}
		if n := len(pairs); n > 0 {
			rank[f.Key] = rank[lastWritten(rows, f.Key, pairs)]
		}
		pairs = insertBehind(pairs, pair{key, v}, lastWritten(rows, f.Key, pairs))
	}
	flow := old == nil && !w.explain && !w.blockOnly && len(pairs) <= maxOnLine
	for _, p := range pairs {
		m.Content = append(m.Content, p.key, p.value)
		flow = flow && p.value.Kind == yaml.ScalarNode
	}
	if flow {
		m.Style = yaml.FlowStyle
	}
	return m
}

// insert puts p behind the last pair for which before holds.
func insert(pairs []pair, p pair, before func(pair) bool) []pair {
	at := 0
	for i := range pairs {
		if before(pairs[i]) {
			at = i + 1
		}
	}
	return slices.Insert(pairs, at, p)
}

func insertBehind(pairs []pair, p pair, key string) []pair {
	return insert(pairs, p, func(q pair) bool { return q.key.Value == key })
}

// lastWritten is the key nearest before this one in the table that is written.
func lastWritten(rows []figure.Row, key string, pairs []pair) string {
	last := ""
	for _, f := range rows {
		if f.Key == key {
			break
		}
		if slices.ContainsFunc(pairs, func(p pair) bool { return p.key.Value == f.Key }) {
			last = f.Key
		}
	}
	return last
}

// plain writes a value that needs no quotes. The old spelling is kept where
// same tells that it means the same.
func (w *writer) plain(value string, old *yaml.Node, same func(old string) bool) *yaml.Node {
	n := w.commented(&yaml.Node{Kind: yaml.ScalarNode, Value: value}, old)
	if old != nil && old.Kind == yaml.ScalarNode && same(old.Value) {
		n.Value, n.Style = old.Value, old.Style
	}
	return n
}

// value gives the node of a row's value, nil where the key is left out; old is the node
// that stood there, nil where there was none. What is usual is left out unless the key
// stood there before.
func (w *writer) value(row figure.Row, old *yaml.Node) *yaml.Node {
	switch v := row.Value.(type) {
	case *figure.Version:
		return w.plain(strconv.Itoa(v.Newest), old, func(string) bool { return false })
	case *figure.Size:
		l, given := v.Get()
		if given || old != nil && !v.Nothing && v.Fits(l) {
			return w.size(l, old)
		}
	case *figure.Sizes:
		return w.sizes(*v.At, old)
	case *figure.Number:
		if *v.At != 0 || old != nil && v.Least <= 0 {
			return w.number(*v.At, old)
		}
	case *figure.Count:
		if *v.At != 0 {
			return w.number(float64(*v.At), old)
		}
	case *figure.Text:
		if *v.At != "" {
			return w.text(*v.At, old)
		}
	case *figure.Choice:
		if i := v.Get(); (i > 0 || old != nil) && i < len(v.OneOf) {
			return w.text(v.OneOf[i], old)
		}
	case *figure.Flag:
		if *v.At || old != nil {
			return w.plain(strconv.FormatBool(*v.At), old, func(s string) bool { return (s == "true" || s == "yes") == *v.At })
		}
	case *figure.Words:
		return w.words(*v.At, old)
	case *figure.Unit:
		w.unit, w.oldUnit = *v.At, length.UnitMM
		if old != nil {
			if u, err := length.ParseUnit(old.Value); err == nil {
				w.oldUnit = u
			}
		}
		return w.text(v.At.String(), old)
	case *figure.Group:
		if v.There != nil && !v.There() {
			return nil
		}
		if m := w.mapping(v.Rows(), old); v.There != nil || len(m.Content) > 0 || old != nil {
			return m
		}
	case *figure.List:
		return w.list(v, old)
	case *figure.Sheets:
		return w.hardware(*v.At, old)
	}
	return nil
}

// kindOf is the kind of node that a row has; lists count as scalars.
func kindOf(row figure.Row) yaml.Kind {
	if g, ok := row.Value.(*figure.Group); ok && g.There == nil {
		return yaml.MappingNode
	}
	return yaml.ScalarNode
}

func (w *writer) words(words map[string]string, old *yaml.Node) *yaml.Node {
	if len(words) == 0 {
		return nil
	}
	var rows []figure.Row
	for _, name := range slices.Sorted(maps.Keys(words)) {
		word := words[name]
		rows = append(rows, figure.Row{Key: name, Value: &figure.Text{At: &word}})
	}
	return w.mapping(rows, old)
}

func (w *writer) size(l length.Length, old *yaml.Node) *yaml.Node {
	return w.plain(w.unit.Exact(l), old, func(s string) bool {
		was, err := length.Parse(s, w.oldUnit)
		now, err2 := length.Parse(s, w.unit)
		return err == nil && err2 == nil && was == l && now == l
	})
}

func (w *writer) number(x float64, old *yaml.Node) *yaml.Node {
	return w.plain(strconv.FormatFloat(x, 'f', -1, 64), old, func(s string) bool {
		was, ok := plainNumber(s)
		return ok && was == x
	})
}

func (w *writer) text(s string, old *yaml.Node) *yaml.Node {
	s = strings.ToValidUTF8(s, "\ufffd")
	n := w.commented(&yaml.Node{Kind: yaml.ScalarNode, Tag: "!!str", Value: s}, old)
	if old != nil && old.Kind == yaml.ScalarNode {
		n.Style = old.Style
		if old.Value == s {
			return n
		}
		n.Style &= yaml.DoubleQuotedStyle | yaml.SingleQuotedStyle
	}
	if strings.ContainsAny(s, "\n\t") || strings.TrimSpace(s) != s || n.Style == 0 && otherwise.MatchString(s) {
		n.Style = yaml.DoubleQuotedStyle
	}
	if readable(s) {
		n.Style = yaml.LiteralStyle
	}
	return n
}

// otherwise are texts that programs which know YAML 1.1 take for something else
// (yaml.org/type: bool, merge, value, and base 60 in int and float).
var otherwise = regexp.MustCompile(`^(?i:y|n|yes|no|on|off|true|false)$|^(<<|=)$|^[-+]?[0-9][0-9_]*(:[0-9]{1,2})+(\.[0-9_]*)?$`)

// key writes a key that the user has chosen.
func (w *writer) key(s string) *yaml.Node { return w.text(s, nil) }

// readable tells text of several lines that a literal block keeps exactly.
func readable(s string) bool {
	if !strings.Contains(s, "\n") || strings.ContainsAny(s, "\t\u0085\u2028\u2029") {
		return false
	}
	for _, line := range strings.Split(s, "\n") {
		if line == "" || strings.TrimSpace(line) != line || strings.HasPrefix(line, "#") {
			return false
		}
	}
	return true
}

// wrap breaks a comment into lines of at most width characters.
func wrap(s string, width int) string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(s) {
		if line != "" && len([]rune(line+" "+word)) > width {
			lines, line = append(lines, "# "+line), ""
		}
		line = strings.TrimSpace(line + " " + word)
	}
	return strings.Join(append(lines, "# "+line), "\n")
}
