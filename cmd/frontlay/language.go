package main

import (
	"fmt"
	"os"
	"strings"

	"frontlay/assets"
	"frontlay/model/length"
	"frontlay/model/message"
)

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
