package yamlfile

import (
	"strconv"

	"gopkg.in/yaml.v3"

	"frontlay/model/length"
	"frontlay/model/message"
)

// listOf is a sequence of mappings. At most most items are taken. sign tells
// items of one list apart as well as it can (a name, say), so that comments
// follow an item to its new place. flow writes new items on one line each.
type listOf[T any] struct {
	key, doc string
	most     int
	flow     bool
	sign     func(*T) string
	item     func(*T) []field
}

func (l listOf[T]) field(v *[]T) field {
	return field{
		key: l.key, doc: l.doc,
		read:  func(r *reader, n *yaml.Node) { l.read(r, n, v) },
		write: func(w *writer, old *yaml.Node) *yaml.Node { return l.write(w, *v, old) },
		schema: func() schema {
			return schema{"type": "array", "maxItems": l.most, "items": objectSchema(l.item(new(T)))}
		},
		value: "list, at most " + strconv.Itoa(l.most), children: func() []field { return l.item(new(T)) },
	}
}

func (l listOf[T]) read(r *reader, n *yaml.Node, v *[]T) {
	if n.Kind != yaml.SequenceNode {
		r.fail(n, message.New("a list is expected for %v", l.key), message.New("begin each item on its own line with a dash and a space"))
		return
	}
	if len(n.Content) > l.most {
		r.fail(n, message.New("the list %v has %v items, which is more than %v", key(l.key), len(n.Content), l.most), message.New("shorten it"))
		return
	}
	items := make([]T, len(n.Content))
	for i, c := range n.Content {
		r.nodes[&items[i]] = c
		r.enterAt(i)
		r.mapping(c, l.item(&items[i]))
		r.signs[c] = l.sign(&items[i])
		r.leave()
	}
	if len(items) > 0 {
		*v = items
	}
}

func (l listOf[T]) write(w *writer, items []T, old *yaml.Node) *yaml.Node {
	if len(items) == 0 {
		return nil
	}
	list := w.like(old, yaml.SequenceNode)
	places := l.match(w, items, old)
	for i := range items {
		was := places[i]
		m := w.mapping(l.item(&items[i]), was)
		if was == nil && l.flow && !w.explain {
			m.Style = yaml.FlowStyle
		}
		setBlank(m, w.blankAbove(old, was, i))
		list.Content = append(list.Content, m)
	}
	return list
}

// match finds for each item the old node whose comments it keeps: the one with
// the same sign, at the same index where there are several; then, for items
// that are new or renamed, the one at the same index if no other item has it.
func (l listOf[T]) match(w *writer, items []T, old *yaml.Node) []*yaml.Node {
	places := make([]*yaml.Node, len(items))
	if old == nil || old.Kind != yaml.SequenceNode {
		return places
	}
	free := make(map[string][]int, len(old.Content))
	taken := make([]bool, len(old.Content))
	for i, n := range old.Content {
		s := w.from.signs[n]
		free[s] = append(free[s], i)
	}
	take := func(i, j int) { places[i], taken[j] = old.Content[j], true }
	for i := range items {
		if i < len(old.Content) && l.sign(&items[i]) == w.from.signs[old.Content[i]] {
			take(i, i)
		}
	}
	for i := range items {
		s := l.sign(&items[i])
		for places[i] == nil && len(free[s]) > 0 {
			if j := free[s][0]; !taken[j] {
				take(i, j)
			}
			free[s] = free[s][1:]
		}
	}
	for i := range items {
		if places[i] == nil && i < len(taken) && !taken[i] {
			take(i, i)
		}
	}
	return places
}

// sizes is a list of plain sizes on one line.
func sizes(key, doc string, v *[]length.Length, lo, hi length.Length) field {
	return field{
		key: key, doc: doc,
		read: func(r *reader, n *yaml.Node) {
			if n.Kind != yaml.SequenceNode {
				r.fail(n, message.New("a list of sizes is expected for %v", key), message.New("write it in square brackets: [48, 80]"))
				return
			}
			if len(n.Content) > maxSizes {
				r.fail(n, message.New("the list %v has %v items, which is more than %v", key, len(n.Content), maxSizes), message.New("shorten it"))
				return
			}
			var list []length.Length
			for i, c := range n.Content {
				r.enterAt(i)
				if s, ok := r.size(c, lo, hi); ok {
					list = append(list, s)
				}
				r.leave()
			}
			*v = list
			r.nodes[v] = n
		},
		write: func(w *writer, old *yaml.Node) *yaml.Node {
			if len(*v) == 0 {
				return nil
			}
			list := w.like(old, yaml.SequenceNode)
			if old == nil {
				list.Style = yaml.FlowStyle
			}
			for i, s := range *v {
				var was *yaml.Node
				if old != nil && i < len(old.Content) {
					was = old.Content[i]
				}
				list.Content = append(list.Content, w.size(s, was))
			}
			return list
		},
		schema: func() schema { return schema{"type": "array", "maxItems": maxSizes, "items": sizeSchema()} },
		value:  "list of sizes",
	}
}

// maxSizes bounds a list of sizes, such as the holes of one drawer height.
const maxSizes = 100
