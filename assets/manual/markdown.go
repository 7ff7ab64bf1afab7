package manual

import (
	"regexp"
	"strings"
	"unicode"
)

// Kind is what a block is.
type Kind uint8

// The kinds of blocks: all of Markdown that the manual uses.
const (
	Paragraph Kind = iota
	Heading
	Item // of a list
	Table
	Code
	Image
)

// Block is a part of a chapter from one line to the next.
type Block struct {
	Kind   Kind
	Level  int        // of a heading, from 1; how deep an item is, from 0
	Anchor string     // of a heading
	Mark   string     // of an item: a number with its point, or empty for a dot
	Text   []Span     // of a heading, paragraph or item
	Rows   [][][]Span // of a table, the heads first
	Lines  string     // of code
	Kept   string     // of code: the word behind its fence
	Path   string     // of a picture
	Alt    string     // what a picture shows
}

// Span is text of one kind in a block.
type Span struct {
	Text               string
	Bold, Italic, Code bool
	To                 string // where it leads to; empty: nowhere
}

var (
	headingLine = regexp.MustCompile(`^(#{1,6}) +(.*)$`)
	itemLine    = regexp.MustCompile(`^( *)(?:[-*]|(\d+\.)) +(.*)$`)
	pictureLine = regexp.MustCompile(`^!\[([^\]]*)\]\(([^)]*)\)$`)
	ruleLine    = regexp.MustCompile(`^\|[-| :]+\|$`)
	comment     = regexp.MustCompile(`(?s)<!--.*?-->\n?`)
)

// Read takes a chapter of Markdown apart.
func Read(name, source string) *Chapter {
	c := &Chapter{Name: name, Source: source}
	lines := strings.Split(comment.ReplaceAllString(strings.ReplaceAll(source, "\r\n", "\n"), ""), "\n")
	open := false // the last block goes on
	taken := map[string]int{}
	add := func(b Block) *Block {
		c.Blocks = append(c.Blocks, b)
		return &c.Blocks[len(c.Blocks)-1]
	}
	for i := 0; i < len(lines); i++ {
		line := strings.TrimRight(lines[i], " ")
		text := strings.TrimSpace(line)
		last := func() *Block { return &c.Blocks[len(c.Blocks)-1] }
		switch {
		case text == "":
			open = false
		case strings.HasPrefix(text, "```"):
			b := Block{Kind: Code, Kept: strings.TrimPrefix(text, "```")}
			var kept []string
			for i++; i < len(lines) && strings.TrimSpace(lines[i]) != "```"; i++ {
				kept = append(kept, lines[i])
			}
			b.Lines, open = strings.Join(kept, "\n"), false
			add(b)
		case headingLine.MatchString(text):
			m := headingLine.FindStringSubmatch(text)
			b := add(Block{Kind: Heading, Level: len(m[1]), Text: spans(m[2])})
			b.Anchor = anchor(Plain(b.Text), taken)
			if c.Title == "" {
				c.Title = Plain(b.Text)
			}
			open = false
		case pictureLine.MatchString(text):
			m := pictureLine.FindStringSubmatch(text)
			add(Block{Kind: Image, Alt: m[1], Path: m[2]})
			open = false
		case ruleLine.MatchString(text) && len(c.Blocks) > 0 && last().Kind == Table:
		case strings.HasPrefix(text, "|"):
			if !open || last().Kind != Table {
				add(Block{Kind: Table})
			}
			last().Rows, open = append(last().Rows, cells(text)), true
		case itemLine.MatchString(line):
			m := itemLine.FindStringSubmatch(line)
			add(Block{Kind: Item, Level: len(m[1]) / 2, Mark: m[2], Lines: m[3]})
			open = true
		case open && (last().Kind == Paragraph || last().Kind == Item):
			last().Lines += " " + text
		default:
			add(Block{Kind: Paragraph, Lines: text})
			open = true
		}
	}
	for i := range c.Blocks {
		if b := &c.Blocks[i]; b.Kind == Paragraph || b.Kind == Item {
			b.Text, b.Lines = spans(b.Lines), ""
		}
	}
	return c
}

// cells takes a row of a table apart. A bar in it is written with a backslash.
func cells(line string) [][]Span {
	const bar = "\x00"
	var row [][]Span
	line = strings.TrimSuffix(strings.TrimPrefix(strings.ReplaceAll(line, `\|`, bar), "|"), "|")
	for _, cell := range strings.Split(line, "|") {
		row = append(row, spans(strings.ReplaceAll(strings.TrimSpace(cell), bar, "|")))
	}
	return row
}

// inline finds code, links, bold and slanted text, in this order where several begin
// at one place.
var inline = regexp.MustCompile("`([^`]+)`|\\[([^\\]]+)\\]\\(([^)]+)\\)|\\*\\*([^*]+)\\*\\*|\\*([^*\\s][^*]*)\\*")

// spans takes a text apart.
func spans(text string) []Span {
	var all []Span
	plain := func(s string) {
		if s != "" {
			all = append(all, Span{Text: escaped.ReplaceAllString(s, "$1")})
		}
	}
	at := 0
	for _, m := range inline.FindAllStringSubmatchIndex(text, -1) {
		if m[0] > 0 && text[m[0]-1] == '\\' {
			continue
		}
		plain(text[at:m[0]])
		at = m[1]
		part := func(i int) string {
			if m[2*i] < 0 {
				return ""
			}
			return text[m[2*i]:m[2*i+1]]
		}
		switch {
		case m[2] >= 0:
			all = append(all, Span{Text: part(1), Code: true})
		case m[4] >= 0:
			for _, s := range spans(part(2)) {
				s.To = part(3)
				all = append(all, s)
			}
		case m[8] >= 0:
			for _, s := range spans(part(4)) {
				s.Bold = true
				all = append(all, s)
			}
		default:
			all = append(all, Span{Text: part(5), Italic: true})
		}
	}
	plain(text[at:])
	return all
}

// escaped is a sign of Markdown that stands for itself.
var escaped = regexp.MustCompile("\\\\([\\\\`*_{}\\[\\]()#+.!|<>-])")

// Plain is a text without its marks.
func Plain(text []Span) string {
	var b strings.Builder
	for _, s := range text {
		b.WriteString(s.Text)
	}
	return b.String()
}

// anchor is what a link calls a heading, as viewers of Markdown in repositories make
// it: small letters, hyphens for spaces, no other signs, numbered where it is taken.
func anchor(heading string, taken map[string]int) string {
	var b strings.Builder
	for _, r := range strings.ToLower(heading) {
		switch {
		case unicode.IsLetter(r), unicode.IsDigit(r), r == '-', r == '_':
			b.WriteRune(r)
		case r == ' ':
			b.WriteByte('-')
		}
	}
	a := b.String()
	n := taken[a]
	taken[a] = n + 1
	if n > 0 {
		a += "-" + string(rune('0'+n))
	}
	return a
}

// Links are where the texts of a chapter lead to, in their order.
func (c *Chapter) Links() []string {
	var all []string
	c.each(func(_ Place, text []Span) {
		for _, s := range text {
			if s.To != "" {
				all = append(all, s.To)
			}
		}
	})
	return all
}

// each goes through the texts of a chapter: a heading, a paragraph, an item, a row of
// a table.
func (c *Chapter) each(do func(at Place, text []Span)) {
	for i, b := range c.Blocks {
		switch b.Kind {
		case Table:
			for j, row := range b.Rows {
				var whole []Span
				for k, cell := range row {
					if k > 0 {
						whole = append(whole, Span{Text: "  "})
					}
					whole = append(whole, cell...)
				}
				do(Place{c.Name, i, j}, whole)
			}
		case Code:
			do(Place{c.Name, i, 0}, []Span{{Text: b.Lines, Code: true}})
		case Image:
			do(Place{c.Name, i, 0}, []Span{{Text: b.Alt}})
		default:
			do(Place{c.Name, i, 0}, b.Text)
		}
	}
}
