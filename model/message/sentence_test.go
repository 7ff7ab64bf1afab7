package message_test

import (
	"testing"

	"frontlay/model/length"
	"frontlay/model/message"
)

func TestASentenceStandsAlone(t *testing.T) {
	german := map[string]string{"the drawer has %v of room": "über der Schublade sind %v Luft"}
	for _, c := range []struct {
		name  string
		l     message.Language
		m     message.Message
		wants string
	}{
		{"nothing", message.Language{}, message.Message{}, ""},
		{"a text", message.Language{}, message.New("raise the runner by %v", 5*length.Millimetre), "Raise the runner by 5 mm."},
		{"a message first", message.Language{}, message.New("%v is too wide", message.New("the bay")), "The bay is too wide."},
		{"a figure first", message.Language{}, message.New("%v is too wide", length.Metre), "1000 mm is too wide."},
		{"a sentence already", message.Language{}, message.New("Choose one."), "Choose one."},
		{"a question", message.Language{}, message.New("is it?"), "Is it?"},
		{"it goes on", message.Language{}, message.New("a, b …"), "A, b …"},
		{"a letter of two bytes", message.Language{Catalogue: german}, message.New("the drawer has %v of room", length.Millimetre), "Über der Schublade sind 1 mm Luft."},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := c.l.Sentence(c.m); got != c.wants {
				t.Errorf("%q, want %q", got, c.wants)
			}
		})
	}
}
