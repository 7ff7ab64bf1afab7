package message

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

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
