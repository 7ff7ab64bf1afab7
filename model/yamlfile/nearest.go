package yamlfile

import "strings"

// nearest finds the known word most like a mistyped one, "" where none is near
// enough to be what was meant.
func nearest(word string, known []string) string {
	if len(word) > 60 {
		return ""
	}
	word = plain(word)
	best, bestDistance := "", 0
	for _, k := range known {
		d := distance([]rune(word), []rune(plain(k)))
		if best == "" || d < bestDistance {
			best, bestDistance = k, d
		}
	}
	if best == "" || bestDistance*5 > 2*max(len([]rune(best)), len([]rune(word))) {
		return ""
	}
	return best
}

func plain(s string) string {
	return strings.NewReplacer("-", "_", " ", "_").Replace(strings.ToLower(s))
}

// distance counts the insertions, removals, replacements and swaps of
// neighbours that turn a into b (optimal string alignment).
func distance(a, b []rune) int {
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}
