// Package language reads what the program can speak: English, the languages that
// ship, and catalogues in files.
package language

import (
	"os"
	"strings"

	"frontlay/assets"
	"frontlay/model/message"
)

// English is the code of the language that needs no catalogue.
const English = "en"

// Codes lists the languages that ship, English first, as codes of ISO 639-1.
func Codes() []string { return append([]string{English}, assets.Languages()...) }

// Read reads the language of a code, or the catalogue at a path; an empty code is
// English. Lengths are in millimetres until a unit is set. Errors are for a person:
// they name what there is, or the place in the file.
func Read(code string) (message.Language, error) {
	if code == English || code == "" {
		return message.Language{}, nil
	}
	data, ok := assets.Translation(code)
	if !ok {
		var err error
		if data, err = os.ReadFile(code); err != nil {
			return message.Language{}, message.New("There is no language “%v”. Choose %v, or the path of a file of translations.", code, strings.Join(Codes(), ", "))
		}
	}
	catalogue, err := message.ReadCatalogue(data)
	if err != nil {
		return message.Language{}, message.New("%v: %v", code, message.Of(err))
	}
	return message.Language{Catalogue: catalogue, Comma: message.DecimalComma(catalogue)}, nil
}

// OwnName is a language's name in itself.
func OwnName(code string) string {
	if l, err := Read(code); err == nil && l.Catalogue[message.OwnName] != "" {
		return l.Catalogue[message.OwnName]
	}
	return message.OwnName
}
