package plan

import (
	"frontlay/model/length"
	"frontlay/model/message"
)

// Sum tells how a figure came about: a name, its value, and the terms that add
// up to it exactly. A sum without terms is a figure that the user gave.
type Sum struct {
	Name  message.Message
	Value length.Length
	Terms []Term
}

// Term is one part of a sum; Minus tells that it is taken off. Of may tell how
// the term itself came about.
type Term struct {
	Name  message.Message
	Value length.Length
	Minus bool
	Of    *Sum
}

// Total adds the terms up, as a reader would.
func (s Sum) Total() length.Length {
	t := length.Length(0)
	for _, m := range s.Terms {
		if m.Minus {
			t -= m.Value
		} else {
			t += m.Value
		}
	}
	return t
}

// Say writes the sum in one line: name value = term value + term value …; a term
// that is a sum itself follows in brackets.
func (s Sum) Say() message.Message {
	return message.New("%v %v = %v", s.Name, s.Value, sayTerms(s.Terms))
}

// Sum writes the terms alone: term value + term value …
func (s Sum) Sum() message.Message { return sayTerms(s.Terms) }

// sayTerms chains terms as nested messages, so that each figure is written in
// the project's unit.
func sayTerms(terms []Term) message.Message {
	var line message.Message
	for i, t := range terms {
		term := message.New("%v %v", t.Name, t.Value)
		if t.Of != nil && len(t.Of.Terms) > 0 {
			term = message.New("%v %v (= %v)", t.Name, t.Value, sayTerms(t.Of.Terms))
		}
		switch {
		case i == 0 && t.Minus:
			line = message.New("− %v", term)
		case i == 0:
			line = term
		case t.Minus:
			line = message.New("%v − %v", line, term)
		default:
			line = message.New("%v + %v", line, term)
		}
	}
	return line
}

func plus(name string, v length.Length) Term { return Term{Name: message.New(name), Value: v} }

// signed is a term that is taken off where its value is below zero.
func signed(name message.Message, v length.Length) Term {
	return Term{Name: name, Value: v.Abs(), Minus: v < 0}
}

func minus(name string, v length.Length) Term {
	return Term{Name: message.New(name), Value: v, Minus: true}
}
