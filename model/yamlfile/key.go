package yamlfile

import "frontlay/model/message"

// key is the name of a value in a file as an argument of a message, so that a
// form, which has labels, can put its own words there.
type key string

// Labelled is what is wrong and what to do, with words instead of keys. label
// gives those of a key at a path, empty where there are none; then the key
// stays.
func (p *Problem) Labelled(label func(path string) message.Message) message.Message {
	m := p.Message
	m.Args = append([]any(nil), m.Args...)
	for i, a := range m.Args {
		k, ok := a.(key)
		if !ok {
			continue
		}
		path := p.Path
		if m.Text == missing {
			if path != "" {
				path += "."
			}
			path += string(k)
		}
		switch words := label(path); {
		case words.Empty():
		case m.Text == missing:
			m = message.New("%v: nothing is given", words) // labels may be plural
		default:
			m.Args[i] = words
		}
	}
	if p.Advice.Empty() {
		return m
	}
	return message.New("%v; %v", m, p.Advice)
}

// missing is the text about a key that is needed and not there; its problem's
// path is that of the mapping.
const missing = "%v is missing"

// advice chooses between what to do in a file and what to do in a form.
func (r *reader) advice(file, form message.Message) message.Message {
	if r.form {
		return form
	}
	return file
}
