package edit

import (
	"strings"
	"unicode"

	"frontlay/model/message"
)

// mostLetters is how long a name can be, so that it still fits on a page.
const mostLetters = 80

// name is a name as it is stored: without blanks around it and what can't be
// seen. It must be one line of at most 80 letters without control characters.
func name(s string) (string, error) {
	s = oneLine(s)
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

// oneLine is text without blanks around it and what can't be seen.
func oneLine(s string) string { return strings.TrimSpace(strings.Map(seen, s)) }

// seen leaves out the signs that make text look other than it is: those that
// override the direction of writing (Unicode Standard Annex 9, explicit
// directional formatting, from memory) and the byte order mark. They come with
// copied text, and project files refuse them.
func seen(r rune) rune {
	if r >= '\u202a' && r <= '\u202e' || r >= '\u2066' && r <= '\u2069' || r == '\ufeff' {
		return -1
	}
	return r
}

// lines is text of several lines as it is stored: with lines that end as in
// project files, and without signs that can't be seen or written.
func lines(s string) string {
	s = strings.ReplaceAll(s, "\r\n", "\n")
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) && r != '\n' && r != '\t' {
			return -1
		}
		return seen(r)
	}, s)
}
