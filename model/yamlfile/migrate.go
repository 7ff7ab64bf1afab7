package yamlfile

import (
	"strconv"

	"gopkg.in/yaml.v3"

	"frontlay/model/figure"
	"frontlay/model/message"
)

// migration turns the root mapping of one format version into the next. It
// works on the node tree, so that comments survive it.
type migration func(root *yaml.Node)

// The steps from version 1 on: the first turns 1 into 2. A version stays
// readable for ever; testdata/versions holds a file of each.
var (
	projectMigrations = []migration{channelsWithFigures}
	sheetMigrations   = []migration{}
)

// channelsWithFigures turns 1 into 2: a cabinet's finger-pull channel was its height
// alone, and is now a mapping that has it.
func channelsWithFigures(root *yaml.Node) {
	cabinets := valueOf(root, "cabinets")
	if cabinets == nil || cabinets.Kind != yaml.SequenceNode {
		return
	}
	for _, c := range cabinets.Content {
		if n := valueOf(c, "channel"); n != nil && n.Kind == yaml.ScalarNode {
			height := *n
			height.HeadComment, height.LineComment, height.FootComment = "", "", ""
			n.Kind, n.Tag, n.Value, n.Style = yaml.MappingNode, "!!map", "", yaml.FlowStyle
			n.Content = []*yaml.Node{{Kind: yaml.ScalarNode, Tag: "!!str", Value: "height", Line: n.Line, Column: n.Column}, &height}
		}
	}
}

// screwedIsAKind turns the first key for fronts that are screwed on, connector.screwed,
// into the kind of connector that it became within version 1. What is neither true
// nor false is left to be told as unknown.
func screwedIsAKind(sheet *yaml.Node) {
	c := valueOf(sheet, "connector")
	if c == nil || c.Kind != yaml.MappingNode {
		return
	}
	for i := 0; i+1 < len(c.Content); i += 2 {
		key, value := c.Content[i], c.Content[i+1]
		if key.Value == "screwed" && value.Tag == "!!bool" {
			screws := value.Value == "true" || value.Value == "True" || value.Value == "TRUE"
			key.Value, value.Value, value.Tag = "kind", map[bool]string{false: "pair", true: "screws"}[screws], "!!str"
		}
	}
}

// readVersion checks the version and brings the tree up to the newest. It
// gives false where the file can't be read any further.
func (r *reader) readVersion(root *yaml.Node, key string, steps []migration) bool {
	newest := len(steps) + 1
	if root.Kind != yaml.MappingNode {
		r.fail(root, message.New("this is no file of frontlay"), message.New("its first line must be %v: %v", key, newest))
		return false
	}
	n := valueOf(root, key)
	if n == nil {
		what := message.New("the format version is missing, so this may be no file of frontlay")
		if other := otherKind(key); valueOf(root, other) != nil {
			what = message.New("this is another kind of file: it begins with %v where %v is expected", other, key)
		}
		r.fail(root, what, message.New("its first line must be %v: %v", key, newest))
		return false
	}
	v, err := strconv.Atoi(n.Value)
	switch {
	case n.Kind != yaml.ScalarNode || err != nil || v < 1 || v > 1_000_000:
		r.fail(n, message.New("the format version %v is not a whole number from 1 on", figure.Quote(n.Value)), message.New("write %v: %v", key, newest))
		return false
	case v > newest:
		r.fail(n, message.New("the file has format version %v, and this program knows versions up to %v", v, newest),
			message.New("open it with a newer frontlay; the file has not been changed")).newer = true
		return false
	}
	for _, step := range steps[v-1:] {
		step(root)
	}
	return true
}

func otherKind(key string) string {
	if key == "frontlay" {
		return "frontlay_hardware"
	}
	return "frontlay"
}

// valueOf finds the value of a key, nil where a mapping has none.
func valueOf(m *yaml.Node, key string) *yaml.Node {
	for i := 0; m.Kind == yaml.MappingNode && i+1 < len(m.Content); i += 2 {
		if m.Content[i].Value == key {
			return m.Content[i+1]
		}
	}
	return nil
}
