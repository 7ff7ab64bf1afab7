package yamlfile

import (
	"bytes"
	"regexp"
	"strings"

	"gopkg.in/yaml.v3"
)

// Blank lines are no part of a YAML tree, but people set them between the parts
// of a file. Those above a key or a list item, and above its comment, are kept
// by a comment that stands for them while the tree is encoded.
const blankMark = "#\u2060blank line\u2060"

// lineBreak is what the parser counts lines by (YAML 1.1, 4.2).
var lineBreak = regexp.MustCompile("\r\n|[\n\r\u0085\u2028\u2029]")

// blankLines finds the keys and items that a blank line stands above.
func blankLines(data []byte, doc *yaml.Node) map[*yaml.Node]bool {
	lines := lineBreak.Split(string(data), -1)
	empty := func(n int) bool { return n >= 1 && n <= len(lines) && strings.TrimSpace(lines[n-1]) == "" }
	comment := func(n int) bool {
		return n >= 1 && n <= len(lines) && strings.HasPrefix(strings.TrimSpace(lines[n-1]), "#")
	}
	found := map[*yaml.Node]bool{}
	note := func(n *yaml.Node) {
		line := n.Line
		for comment(line - 1) {
			line--
		}
		found[n] = line > 1 && empty(line-1)
	}
	var walk func(n *yaml.Node, item bool)
	walk = func(n *yaml.Node, item bool) {
		for i, c := range n.Content {
			switch {
			case n.Style&yaml.FlowStyle != 0: // on one line
			case n.Kind == yaml.SequenceNode:
				note(c)
			case n.Kind == yaml.MappingNode && i%2 == 0 && !(item && i == 0): // an item begins with its first key
				note(c)
			}
			walk(c, n.Kind == yaml.SequenceNode)
		}
	}
	walk(doc, false)
	return found
}

// spaced puts the mark for a blank line into a head comment.
func spaced(comment string) string {
	if comment == "" {
		return blankMark
	}
	return blankMark + "\n" + comment
}

// setBlank puts a mark above a node or takes it away.
func setBlank(n *yaml.Node, blank bool) {
	n.HeadComment = strings.TrimPrefix(strings.TrimPrefix(n.HeadComment, blankMark), "\n")
	if blank {
		n.HeadComment = spaced(n.HeadComment)
	}
}

// blankAbove tells whether a blank line stands above the item at index i of a
// list, which stood at was in the old list, nil for a new one. Where all items
// were parted by blank lines, they all are; the first is as the first was.
func (w *writer) blankAbove(old, was *yaml.Node, i int) bool {
	if old == nil || len(old.Content) == 0 {
		return false
	}
	first, rest := old.Content[0], old.Content[1:]
	if i == 0 {
		return w.from.blank[first]
	}
	for _, n := range rest {
		if !w.from.blank[n] {
			return was != nil && was != first && w.from.blank[was]
		}
	}
	return len(rest) > 0
}

// withBlankLines turns the marks into blank lines, one where one is there already.
func withBlankLines(data []byte) []byte {
	if !bytes.Contains(data, []byte(blankMark)) {
		return data
	}
	var out []string
	for _, line := range strings.Split(string(data), "\n") {
		if strings.TrimSpace(line) != blankMark {
			out = append(out, line)
		} else if len(out) > 0 && out[len(out)-1] != "" {
			out = append(out, "")
		}
	}
	return []byte(strings.Join(out, "\n"))
}
