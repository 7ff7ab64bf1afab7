package main

import (
	"flag"
	"fmt"

	"frontlay/assets/language"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
)

// projectFlags are the flags of every command that reads a project.
type projectFlags struct {
	anywhere *bool
	language *string
}

func addProjectFlags(fs *flag.FlagSet) projectFlags {
	return projectFlags{fs.Bool("sheets-anywhere", false, ""), fs.String("language", language.English, "")}
}

// open reads the project and makes the language for what is said of it. Where
// that fails it has said why.
func (p projectFlags) open(name, path string, c console) (*yamlfile.File, message.Language, bool) {
	f, err := openProject(path, *p.anywhere)
	if err != nil {
		fmt.Fprintln(c.err, err)
		return nil, message.Language{}, false
	}
	say, err := language.Read(*p.language)
	say.Unit = f.Project.Unit
	if err != nil {
		fmt.Fprintf(c.err, "frontlay %s: %v\n", name, err)
		return nil, say, false
	}
	return f, say, true
}
