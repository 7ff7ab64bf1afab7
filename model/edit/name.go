package edit

import (
	"strings"
	"unicode"

	"frontlay/model/message"
)

// mostLetters is how long a name can be, so that it still fits on a page.
const mostLetters = 80

// name is a name as it is stored: without blanks around it. It must be one line
// of at most 80 letters without control characters.
func name(s string) (string, error) {
	s = strings.TrimSpace(s)
	for _, r := range s {
		if unicode.IsControl(r) {
			return "", message.New("A name is one line of letters, figures and signs.")
		}
	}
	if n := len([]rune(s)); n > mostLetters {
		return "", message.New("A name has at most %v letters; this one has %v.", mostLetters, n)
	}
	return s, nil
}
