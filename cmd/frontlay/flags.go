package main

import (
	"flag"
	"fmt"
	"os"
	"strings"

	"frontlay/assets"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
)

// projectFlags are the flags of every command that reads a project.
type projectFlags struct {
	anywhere *bool
	language *string
}

func addProjectFlags(fs *flag.FlagSet) projectFlags {
	return projectFlags{fs.Bool("sheets-anywhere", false, ""), fs.String("language", "en", "")}
}

// open reads the project and makes the language for what is said of it. Where
// that fails it has said why.
func (p projectFlags) open(name, path string, c console) (*yamlfile.File, message.Language, bool) {
	f, err := openProject(path, *p.anywhere)
	if err != nil {
		fmt.Fprintln(c.err, err)
		return nil, message.Language{}, false
	}
	say, err := language(*p.language, f.Project.Unit)
	if err != nil {
		fmt.Fprintf(c.err, "frontlay %s: %v\n", name, err)
		return nil, say, false
	}
	return f, say, true
}

// language makes a language of a code, or of the path of a file of translations,
// for figures in a unit.
func language(code string, unit length.Unit) (message.Language, error) {
	say := message.Language{Unit: unit}
	if code == "" || code == "en" {
		return say, nil
	}
	data, ok := assets.Translation(code)
	if !ok {
		var err error
		if data, err = os.ReadFile(code); err != nil {
			return say, fmt.Errorf("there is no language %q; choose en, %s, or the path of a file of translations", code, strings.Join(assets.Languages(), ", "))
		}
	}
	catalogue, err := message.ReadCatalogue(data)
	if err != nil {
		return say, fmt.Errorf("%s: %w", code, err)
	}
	say.Catalogue, say.Comma = catalogue, message.DecimalComma(catalogue)
	return say, nil
}
