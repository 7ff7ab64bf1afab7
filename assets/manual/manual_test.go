package manual

import (
	"slices"
	"strings"
	"testing"
)

const sample = "# Cabinets, *one* by one\n\nA text with `code`,\n(**bold**) and [a link](other.md#top).\n\n" +
	"- an item\n  that goes on\n  - deeper\n2. numbered\n\n| a | b |\n| --- | --- |\n| `x\\|y` | Öffnung |\n\n" +
	"```sh\nfrontlay  check\n\n# not a heading\n```\n<!-- not\nshown -->\n![a drawing](../pictures/x.png)\n## Top\n### Top\n"

// A chapter is taken apart into what Markdown says it is.
func TestMarkdownIsTakenApart(t *testing.T) {
	c := Read("sample", sample)
	type seen struct {
		kind  Kind
		level int
		text  string
	}
	var got []seen
	for _, b := range c.Blocks {
		text := Plain(b.Text) + b.Lines + b.Path
		for _, row := range b.Rows {
			for _, cell := range row {
				text += "/" + Plain(cell)
			}
		}
		got = append(got, seen{b.Kind, b.Level, b.Mark + text + b.Anchor})
	}
	want := []seen{
		{Heading, 1, "Cabinets, one by onecabinets-one-by-one"}, {Paragraph, 0, "A text with code, (bold) and a link."},
		{Item, 0, "an item that goes on"}, {Item, 1, "deeper"}, {Item, 0, "2.numbered"}, {Table, 0, "/a/b/x|y/Öffnung"},
		{Code, 0, "frontlay  check\n\n# not a heading"}, {Image, 0, "../pictures/x.png"}, {Heading, 2, "Toptop"}, {Heading, 3, "Toptop-1"},
	}
	if !slices.Equal(got, want) {
		t.Errorf("got  %v\nwant %v", got, want)
	}
	if c.Title != "Cabinets, one by one" || !slices.Equal(c.Links(), []string{"other.md#top"}) {
		t.Errorf("title %q, links %v", c.Title, c.Links())
	}
	text := c.Blocks[1].Text
	if text[1] != (Span{Text: "code", Code: true}) || text[3] != (Span{Text: "bold", Bold: true}) || text[5] != (Span{Text: "a link", To: "other.md#top"}) {
		t.Errorf("the kinds of text are %+v", text)
	}
}

// A search takes capitals, umlauts and their spellings for one, wants every word, in a
// text or in the headings above it, and gives headings first.
func TestSearch(t *testing.T) {
	b := &Book{Chapters: []*Chapter{Read("a", "# Öffnung\n\nMessen Sie die Höhe.\n\n## Tür\n\nDie Größe.\n"), Read("b", "# Zweites\n\nEine hohe Tuer.\n\n## Die Höhe der Öffnung\n")}}
	for words, want := range map[string]string{
		"HÖHE":        "Die Höhe der Öffnung|Messen Sie die Höhe.|Eine hohe Tuer.",
		"hoehe":       "Die Höhe der Öffnung|Messen Sie die Höhe.|Eine hohe Tuer.",
		"tuer grosse": "Die Größe.",
		"tur eine":    "Eine hohe Tuer.",
		"Fenster":     "",
		"  ":          "",
	} {
		var got []string
		for _, f := range b.Search(words) {
			got = append(got, f.Text)
		}
		if s := strings.Join(got, "|"); s != want {
			t.Errorf("%q finds %q, want %q", words, s, want)
		}
	}
	if f := b.Search("größe"); len(f) != 1 || f[0].Place != (Place{"a", 3, 0}) || f[0].Where != "Öffnung › Tür" {
		t.Errorf("found at %+v", f)
	}
}

// A link leads to a chapter or a heading, and never out of the manual's folder.
func TestLinks(t *testing.T) {
	b := In("en")
	at, ok := b.Follow(Contents, "reference-keys.md#in-the-drawing")
	if c := b.Chapter("reference-keys"); !ok || Plain(c.Blocks[at.Block].Text) != "In the drawing" {
		t.Errorf("it leads to %+v, %v", at, ok)
	}
	for _, to := range []string{"../../sheets/sample-a.yaml", "no-such.md", "#no-such", "../en/reference-keys.md", "https://example.org", ""} {
		if at, ok := b.Follow(Contents, to); ok && to != "" {
			t.Errorf("%q leads to %+v", to, at)
		}
	}
	if in := In("no-such-language"); in.Chapter("reference-keys").Title != b.Chapter("reference-keys").Title {
		t.Error("a language without a manual does not get the English one")
	}
}
