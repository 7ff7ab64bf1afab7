package yamlfile

import (
	"errors"

	"gopkg.in/yaml.v3"

	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// refuseSource gives what is wrong with the name of a sample or a path.
var refuseSource = (&figure.Text{Most: 5 * figure.MostName}).Refuse

// hardware reads the mapping of names to sheets: a source to look up, or the sheet
// itself.
func (r *reader) hardware(n *yaml.Node, v *[]model.HardwareUse) {
	if n.Kind != yaml.MappingNode {
		r.fail(n, message.New("names of hardware sheets are expected here"), message.New("write hardware: {main: sample-a}, say"))
		return
	}
	if len(n.Content)/2 > figure.MostSheets {
		r.fail(n, message.New("%v hardware sheets are more than %v", len(n.Content)/2, figure.MostSheets), message.New("remove those that no bay uses"))
		return
	}
	seen := map[string]bool{}
	for i := 0; i+1 < len(n.Content); i += 2 {
		key, value := n.Content[i], n.Content[i+1]
		name, ok := r.text(key, r.here(), figure.RefuseName)
		switch {
		case !ok:
			continue
		case name == "":
			r.fail(key, message.New("the hardware sheet has no name"), message.New("give it one, such as main"))
			continue
		case seen[name]:
			r.fail(key, message.New("the key %v stands here twice", figure.Quote(name)), message.New("remove one of the two"))
			continue
		}
		seen[name] = true
		use := model.HardwareUse{Name: name}
		r.enter(name)
		if value.Kind == yaml.MappingNode {
			use.Sheet = r.ownSheet(value)
		} else if source, ok := r.text(value, r.here(), refuseSource); ok {
			use.Source, use.Sheet = source, r.findSheet(value, source)
		}
		r.leave()
		*v = append(*v, use)
	}
}

// ownSheet reads a sheet that stands in the project itself.
func (r *reader) ownSheet(n *yaml.Node) *model.HardwareSheet {
	unit := r.unit
	r.unit = length.UnitMM
	s := r.sheet(n)
	r.unit = unit
	return s
}

// findSheet reads a sheet by its source, a problem of the project where there
// is none.
func (r *reader) findSheet(n *yaml.Node, source string) *model.HardwareSheet {
	if source == "" {
		r.fail(n, message.New("no hardware sheet is named"), message.New("write the name of a sample, such as sample-a, or a path beside this file"))
		return nil
	}
	if s, ok := r.known[source]; ok {
		return s
	}
	if r.sheets == nil {
		r.fail(n, message.New("the hardware sheet %v can't be looked up here", figure.Quote(source)), message.New("open the project from its file"))
		return nil
	}
	name, data, err := r.sheets(source)
	if err != nil {
		advice := message.New("write the name of a sample, such as sample-a, or a path beside this file")
		if errors.As(err, new(message.Message)) {
			advice = message.Message{} // the error tells itself what to do
		}
		r.fail(n, message.New("the hardware sheet %v can't be read: %v", figure.Quote(source), err), advice).cause = err
		return nil
	}
	s, err := ReadSheet(name, data)
	r.known[source] = s // also nil, whose problems are told once
	if ps, ok := err.(Problems); ok {
		for _, p := range ps {
			if !r.full() {
				r.problems = append(r.problems, p)
			}
		}
		return nil
	}
	return s
}

func (w *writer) hardware(uses []model.HardwareUse, old *yaml.Node) *yaml.Node {
	if len(uses) == 0 {
		return nil
	}
	m := w.like(old, yaml.MappingNode)
	for _, u := range uses {
		key := w.key(u.Name)
		var was *yaml.Node
		if old != nil && old.Kind == yaml.MappingNode {
			for i := 0; i+1 < len(old.Content); i += 2 {
				if old.Content[i].Value == u.Name {
					key, was = w.commented(key, old.Content[i]), old.Content[i+1]
				}
			}
		}
		value := w.text(u.Source, was)
		if u.Source == "" && u.Sheet != nil {
			outer := *w
			value = w.mapping(figure.Sheet(u.Sheet), was)
			w.unit, w.oldUnit = outer.unit, outer.oldUnit
		}
		m.Content = append(m.Content, key, value)
	}
	return m
}
