// Package message carries what the program says to a person as a text with
// arguments, so that it can be written in the project's unit and translated.
package message

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"frontlay/model/length"
)

// Message is an English text with arguments. The text is a fmt format whose
// verbs are all %v (or %[n]v, so that a translation can turn their order) and
// is itself the key of its translation.
type Message struct {
	Text string
	Args []any
}

// New makes a message.
func New(text string, args ...any) Message { return Message{text, args} }

// Empty tells that there is nothing to say.
func (m Message) Empty() bool { return m.Text == "" }

// Of is an error as a message, empty for nil. Messages, mistakes in sizes, and
// errors that say themselves in a Language can be translated; others keep the
// text they have.
func Of(err error) Message {
	switch e := err.(type) {
	case nil:
		return Message{}
	case Message:
		return e
	case *length.Mistake:
		return New(e.Says, e.Args...)
	}
	var m Message
	if errors.As(err, &m) {
		return m
	}
	return New("%v", err)
}

// String is the message in English, lengths in millimetres.
func (m Message) String() string { return Language{}.Say(m) }

// Error makes a message usable as an error.
func (m Message) Error() string { return m.String() }

// Language is how messages are written: the unit of lengths, whether the
// decimal sign is a comma, and the translations by English text. The zero value
// is English in millimetres.
type Language struct {
	Unit      length.Unit
	Comma     bool
	Catalogue map[string]string
}

// Say writes a message: its text translated where the catalogue has it, lengths
// with their unit, messages and what else can say itself among the arguments in
// turn.
func (l Language) Say(m Message) string {
	text := m.Text
	if t := l.Catalogue[text]; t != "" {
		text = t
	}
	if len(m.Args) == 0 {
		return text
	}
	args := make([]any, len(m.Args))
	for i, a := range m.Args {
		switch v := a.(type) {
		case length.Length:
			args[i] = l.Length(v)
		case Message:
			args[i] = l.Say(v)
		case interface{ Say(Language) string }:
			args[i] = v.Say(l)
		case *length.Mistake:
			args[i] = l.Say(Of(v))
		case float64:
			args[i] = l.Number(v)
		default:
			args[i] = a
		}
	}
	return fmt.Sprintf(text, args...)
}

// Length writes a length with its unit.
func (l Language) Length(v length.Length) string { return l.decimal(l.Unit.WithSymbol(v)) }

// Figure writes a length without its unit.
func (l Language) Figure(v length.Length) string { return l.decimal(l.Unit.Format(v)) }

// Typed writes a length as a person has typed it or would, without its unit where that
// is the language's: among inches, hundredths of a millimetre that no 64th says exactly
// stay millimetres, with their unit.
func (l Language) Typed(v length.Length) string {
	if v%(10*length.Micrometre) == 0 {
		return l.decimal(l.Unit.Exact(v))
	}
	return l.Figure(v)
}

// Number writes a plain number, such as a weight or a factor, with four digits
// that count or all those before the decimal sign, without zeros at the end and
// never with an exponent.
func (l Language) Number(v float64) string {
	places := 0
	if size := math.Abs(v); size > 0 && size < 1000 {
		places = min(3-int(math.Floor(math.Log10(size))), 9)
	}
	s := strconv.FormatFloat(v, 'f', places, 64)
	if places > 0 {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		s = "0"
	}
	return l.decimal(s)
}

func (l Language) decimal(s string) string {
	if l.Comma {
		return strings.Replace(s, ".", ",", 1)
	}
	return s
}

// Sentence writes a message that stands alone, such as a paragraph: Say with a
// capital at its beginning and a full stop at its end where there is no other
// sign. Behind a colon or in a table Say is right.
func (l Language) Sentence(m Message) string {
	s := strings.TrimSpace(l.Say(m))
	if s == "" {
		return ""
	}
	first, size := utf8.DecodeRuneInString(s)
	if unicode.IsLower(first) {
		s = string(unicode.ToUpper(first)) + s[size:]
	}
	last, _ := utf8.DecodeLastRuneInString(s)
	if !strings.ContainsRune(".!?…:;", last) {
		s += "."
	}
	return s
}
