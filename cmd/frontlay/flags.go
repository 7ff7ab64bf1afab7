package main

import (
	"flag"
	"fmt"

	"frontlay/assets/language"
	"frontlay/layout/sheet"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
)

// projectFlags are the flags of every command that reads a project.
type projectFlags struct {
	anywhere *bool
	language *string
}

func addProjectFlags(fs *flag.FlagSet) projectFlags {
	return projectFlags{
		fs.Bool("sheets-anywhere", false, "read hardware sheets outside of the project's folder too"),
		oneOf(fs, "language", language.English, language.Codes(), "the language of what is written: the `CODE` "+listed(language.Codes())+", or the path of a file of translations"),
	}
}

// addPaper defines the paper that is printed on.
func addPaper(fs *flag.FlagSet) *string {
	var names []string
	for _, p := range sheet.Papers() {
		names = append(names, p.Name)
	}
	return oneOf(fs, "paper", names[0], names, "the paper of this `NAME`: "+listed(names)+", WIDTHxHEIGHT in mm, \"roll 610\"")
}

// word is the value of a flag for which there are words. A shell completes them; what
// is wrong with another the task tells.
type word struct {
	value string
	words []string
}

func (w *word) String() string { return w.value }

// Set takes any text.
func (w *word) Set(v string) error {
	w.value = v
	return nil
}

// oneOf defines a flag for which there are words.
func oneOf[W ~string](fs *flag.FlagSet, name, value string, words []W, usage string) *string {
	w := &word{value: value}
	for _, one := range words {
		w.words = append(w.words, string(one))
	}
	fs.Var(w, name, usage)
	return &w.value
}

// addJSON defines that a program is told, not a person.
func addJSON(fs *flag.FlagSet) *bool {
	return fs.Bool("json", false, "tell on the standard output, as JSON on one line, what was found and what was written; frontlay schema findings says in which form")
}

// open reads the project and makes the language for what is said of it. Where
// that fails it has said why.
func (p projectFlags) open(name, path string, c console) (*yamlfile.File, message.Language, bool) {
	f, say, err := p.read(path, nil)
	switch {
	case f != nil && err != nil:
		fmt.Fprintf(c.err, "frontlay %s: %v\n", name, err)
	case err != nil:
		fmt.Fprintln(c.err, err)
	}
	return f, say, err == nil
}

// read is open where the caller tells what is wrong; with a file, an error is about the
// language. from, where it is given, notes the files that were read.
func (p projectFlags) read(path string, from *seen) (*yamlfile.File, message.Language, error) {
	say, wrong := language.Read(*p.language)
	f, err := openProject(path, *p.anywhere, from)
	if err != nil {
		return nil, say, err
	}
	say.Unit = f.Project.Unit
	return f, say, wrong
}
