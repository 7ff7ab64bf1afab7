package lettering

import (
	"strings"

	"frontlay/model/length"
)

// Wrap breaks a text into lines no wider than width, at spaces where it can and
// inside a word where that alone is wider. Line breaks in the text stay. It
// gives at least one line.
func Wrap(s string, size length.Length, isBold bool, width length.Length) []string {
	room := width * capHeight / size // in units of the fonts
	space := length.Length(advance(' ', isBold))
	var lines []string
	for _, paragraph := range strings.Split(s, "\n") {
		line, used := "", length.Length(0)
		for _, word := range words(paragraph) {
			w := units(word, isBold)
			switch {
			case line == "" && w <= room:
				line, used = word, w
				continue
			case line != "" && used+space+w <= room:
				line += " " + word
				used += space + w
				continue
			}
			if line != "" {
				lines = append(lines, line)
			}
			var full []string
			full, line = breakWord(word, isBold, room)
			lines = append(lines, full...)
			used = units(line, isBold)
		}
		lines = append(lines, line)
	}
	return lines
}

// LongestWord is the width of the longest part of a text that Wrap does not break
// where it has the room.
func LongestWord(s string, size length.Length, isBold bool) length.Length {
	widest := length.Length(0)
	for _, paragraph := range strings.Split(s, "\n") {
		for _, w := range words(paragraph) {
			widest = max(widest, Width(w, size, isBold)+1)
		}
	}
	return widest
}

// words parts a paragraph at its spaces, but leaves a figure with its fraction,
// its sign ≈ or ± and its unit together.
func words(paragraph string) []string {
	var all []string
	for len(paragraph) > 0 {
		var w string
		if at := strings.IndexAny(paragraph, " \t"); at < 0 {
			w, paragraph = paragraph, ""
		} else {
			w, paragraph = paragraph[:at], paragraph[at+1:]
		}
		if w == "" {
			continue
		}
		if n := len(all); n > 0 && (strings.HasSuffix(all[n-1], "≈") || strings.HasSuffix(all[n-1], "±") || (isUnit(w) || isFraction(w)) && endsInDigit(all[n-1])) {
			all[n-1] += "\u00a0" + w
			continue
		}
		all = append(all, w)
	}
	return all
}

func isUnit(w string) bool {
	switch strings.TrimRight(w, ".,;:)") {
	case "mm", "cm", "in", "kg", "lb", "N", "lbf", "%":
		return true
	}
	return false
}

// isFraction tells that a word is the second part of a figure such as 8 17/64.
func isFraction(w string) bool {
	before, after, ok := strings.Cut(strings.TrimRight(w, ".,;:)"), "/")
	return ok && before != "" && after != "" && strings.Trim(before+after, "0123456789") == ""
}

func endsInDigit(w string) bool {
	last := w[len(w)-1]
	return last >= '0' && last <= '9'
}

// breakWord cuts a word into full lines and what is left for the next: between two
// figures where it can, then at a space that else holds them together, then anywhere.
func breakWord(word string, isBold bool, room length.Length) (full []string, rest string) {
	const bound = "\u00a0"
	for {
		cut, used := len(word), length.Length(0)
		for i, r := range word {
			used += length.Length(advance(r, isBold))
			if i > 0 && used > room {
				cut = i
				break
			}
		}
		if cut == len(word) {
			return full, word
		}
		fits := word[:cut]
		if strings.HasPrefix(word[cut:], bound) { // it may hang over
			fits = word[:cut+len(bound)]
		}
		for _, end := range []string{"×" + bound, bound} {
			if at := strings.LastIndex(fits, end); at > 0 {
				cut = at + len(end)
				break
			}
		}
		full = append(full, strings.TrimSuffix(word[:cut], bound))
		word = word[cut:]
	}
}
