package yamlfile

import (
	"gopkg.in/yaml.v3"

	"frontlay/model/figure"
	"frontlay/model/length"
)

func (w *writer) list(l *figure.List, old *yaml.Node) *yaml.Node {
	if l.Len() == 0 {
		return nil
	}
	list := w.like(old, yaml.SequenceNode)
	places := w.match(l, old)
	for i := range l.Len() {
		was := places[i]
		m := w.mapping(l.Rows(i), was)
		if was == nil && l.OneLine && !w.explain {
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
func (w *writer) match(l *figure.List, old *yaml.Node) []*yaml.Node {
	places := make([]*yaml.Node, l.Len())
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
	for i := range l.Len() {
		if i < len(old.Content) && l.Sign(i) == w.from.signs[old.Content[i]] {
			take(i, i)
		}
	}
	for i := range l.Len() {
		s := l.Sign(i)
		for places[i] == nil && len(free[s]) > 0 {
			if j := free[s][0]; !taken[j] {
				take(i, j)
			}
			free[s] = free[s][1:]
		}
	}
	for i := range l.Len() {
		if places[i] == nil && i < len(taken) && !taken[i] {
			take(i, i)
		}
	}
	return places
}

// sizes writes a list of plain sizes on one line.
func (w *writer) sizes(sizes []length.Length, old *yaml.Node) *yaml.Node {
	if len(sizes) == 0 {
		return nil
	}
	list := w.like(old, yaml.SequenceNode)
	if old == nil {
		list.Style = yaml.FlowStyle
	}
	for i, s := range sizes {
		var was *yaml.Node
		if old != nil && i < len(old.Content) {
			was = old.Content[i]
		}
		list.Content = append(list.Content, w.size(s, was))
	}
	return list
}
