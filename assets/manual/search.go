package manual

import (
	"cmp"
	"slices"
	"strings"
)

// Found is a place that a search has found.
type Found struct {
	Place
	Where string // the chapter, and the heading that it stands below
	Text  string // what stands there, cut around the first word where it is long
}

// mostFound is how many places a search gives: who gets so many types another word.
const mostFound = 60

// aroundFound is how many letters of a long text are shown.
const aroundFound = 110

// Search finds the places at which all words stand, or which stand below a heading
// that has the others: headings first, then as the chapters come. Parts of words are
// found too. Small and capital letters are the same, and so are ä, ae and a.
func (b *Book) Search(words string) []Found {
	var wanted []string
	for _, w := range strings.Fields(words) {
		if w = folded(w); w != "" {
			wanted = append(wanted, w)
		}
	}
	if len(wanted) == 0 {
		return nil
	}
	type ranked struct {
		Found
		rank int
	}
	var all []ranked
	for _, c := range b.Chapters {
		under := ""
		c.each(func(at Place, text []Span) {
			plain := Plain(text)
			heading := c.Blocks[at.Block].Kind == Heading
			if heading && c.Blocks[at.Block].Level > 1 {
				under = plain
			}
			in, around := folded(plain), folded(c.Title+" "+under)
			here, rank := 0, 2
			for _, w := range wanted {
				switch {
				case strings.Contains(in, w):
					here++
				case !strings.Contains(around, w):
					return
				}
			}
			switch {
			case here == 0:
				return
			case heading && here == len(wanted):
				rank = 0
			case here == len(wanted):
				rank = 1
			}
			where := c.Title
			if under != "" {
				where += " › " + under
			}
			if heading {
				where = c.Title
			}
			all = append(all, ranked{Found{at, where, cut(plain, wanted)}, rank})
		})
	}
	slices.SortStableFunc(all, func(a, b ranked) int { return cmp.Compare(a.rank, b.rank) })
	var found []Found
	for _, r := range all[:min(len(all), mostFound)] {
		found = append(found, r.Found)
	}
	return found
}

// folds are the spellings that a search takes for one.
var folds = strings.NewReplacer("ä", "a", "ö", "o", "ü", "u", "ß", "ss", "ae", "a", "oe", "o", "ue", "u")

// folded is a text as a search compares it.
func folded(s string) string { return folds.Replace(strings.ToLower(s)) }

// cut is a long text around the first of some words, from word to word.
func cut(text string, wanted []string) string {
	words := strings.Fields(text)
	from := max(slices.IndexFunc(words, func(w string) bool {
		return slices.ContainsFunc(wanted, func(one string) bool { return strings.Contains(folded(w), one) })
	})-4, 0)
	if len(text) <= aroundFound {
		from = 0
	}
	s := ""
	for i, w := range words[from:] {
		if len(s)+len(w) > aroundFound && i > 0 {
			s += " …"
			break
		}
		if i > 0 {
			s += " "
		}
		s += w
	}
	if from > 0 {
		s = "… " + s
	}
	return s
}
