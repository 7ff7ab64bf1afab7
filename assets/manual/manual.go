// Package manual is the manual that ships inside the program: its chapters, one
// Markdown file each in every language, what they are made of, and the search in
// them. It imports nothing of frontlay.
package manual

import (
	"embed"
	"path"
	"strings"
)

//go:embed en de pictures
var files embed.FS

// Contents is the name of the page that lists the chapters in their order. It is
// README.md, so that who looks at the folder sees it.
const Contents = "README"

// english is the language of a chapter that the language asked for lacks.
const english = "en"

// Book is the manual in one language.
type Book struct {
	Chapters []*Chapter // in the order of the contents, which come first
}

// Chapter is one file.
type Chapter struct {
	Name   string // of the file, without its ending; the same in every language
	Title  string
	Source string // Markdown
	Blocks []Block
}

// In gives the manual in a language, by its code of ISO 639-1; in English where
// there is none, and chapter by chapter where one is not there.
func In(language string) *Book {
	contents := chapter(language, Contents)
	b := &Book{Chapters: []*Chapter{contents}}
	for _, to := range contents.Links() {
		if name, ok := strings.CutSuffix(to, ".md"); ok && b.Chapter(name) == nil {
			if c := chapter(language, name); c != nil {
				b.Chapters = append(b.Chapters, c)
			}
		}
	}
	return b
}

// chapter reads a chapter; nil: there is none of that name.
func chapter(language, name string) *Chapter {
	for _, folder := range []string{language, english} {
		if data, err := files.ReadFile(folder + "/" + name + ".md"); err == nil {
			return Read(name, string(data))
		}
	}
	return nil
}

// Chapter gives a chapter by its name; nil: there is none.
func (b *Book) Chapter(name string) *Chapter {
	for _, c := range b.Chapters {
		if c.Name == name {
			return c
		}
	}
	return nil
}

// Text is the chapter as it is to be read in a terminal: its Markdown without comments.
func (c *Chapter) Text() string { return comment.ReplaceAllString(c.Source, "") }

// Place is a place in the manual.
type Place struct {
	Chapter string
	Block   int // index of the block; 0: the beginning
	Row     int // of a table
}

// Follow gives the place that a link of a chapter leads to; false where it leads out
// of the manual, or nowhere.
func (b *Book) Follow(from, to string) (Place, bool) {
	file, anchor, _ := strings.Cut(to, "#")
	if file != "" {
		name, ok := strings.CutSuffix(file, ".md")
		if !ok || path.Base(name) != name {
			return Place{}, false
		}
		from = name
	}
	c := b.Chapter(from)
	if c == nil {
		return Place{}, false
	}
	if anchor == "" {
		return Place{Chapter: from}, true
	}
	for i, one := range c.Blocks {
		if one.Kind == Heading && one.Anchor == anchor {
			return Place{Chapter: from, Block: i}, true
		}
	}
	return Place{}, false
}

// Picture reads a picture by its name in a chapter, such as ../pictures/desk.png.
func Picture(to string) ([]byte, bool) {
	data, err := files.ReadFile(path.Join(english, to))
	return data, err == nil
}

// Languages lists those in which there is a manual, as codes of ISO 639-1.
func Languages() []string { return names(".", "") }

// Names lists the chapters of a language by the alphabet, its contents with them.
func Names(language string) []string { return names(language, ".md") }

// Pictures lists the file names of the pictures.
func Pictures() []string { return names("pictures", ".png") }

// names lists what is in a folder: the folders, or the files of an ending, of which
// Markdown is named without it.
func names(folder, ending string) []string {
	entries, _ := files.ReadDir(folder)
	var all []string
	for _, e := range entries {
		name := e.Name()
		if e.IsDir() == (ending == "") && name != "pictures" && strings.HasSuffix(name, ending) {
			all = append(all, strings.TrimSuffix(name, ".md"))
		}
	}
	return all
}
