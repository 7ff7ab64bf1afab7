package yamlfile

import (
	"gopkg.in/yaml.v3"

	"frontlay/model"
)

// Line is the line of the text that was read, from 1, at which a cabinet, bay or front
// begins; 0 where the place is the project as a whole, or was not read from a text.
func (f *File) Line(at model.Place) int {
	if f.from.doc == nil || at.Cabinet < 0 {
		return 0
	}
	n, line := f.from.doc.Content[0], 0
	for _, step := range []struct {
		key string
		i   int
	}{{"cabinets", at.Cabinet}, {"bays", at.Bay}, {"fronts", at.Front}} {
		list := below(n, step.key)
		if step.i < 0 || list == nil || step.i >= len(list.Content) {
			break
		}
		n = list.Content[step.i]
		line = n.Line
	}
	return line
}

// below is the value of a key of a mapping, nil where it has none.
func below(n *yaml.Node, key string) *yaml.Node {
	for i := 0; n.Kind == yaml.MappingNode && i+1 < len(n.Content); i += 2 {
		if n.Content[i].Value == key {
			return n.Content[i+1]
		}
	}
	return nil
}
