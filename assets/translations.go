package assets

import (
	"path"
	"strings"
)

// Languages lists the languages that the program ships besides English, as
// language codes of ISO 639-1, in order of the alphabet.
func Languages() []string {
	entries, _ := files.ReadDir("translations")
	codes := make([]string, len(entries))
	for i, e := range entries {
		codes[i] = strings.TrimSuffix(e.Name(), ".json")
	}
	return codes
}

// Translation gives the catalogue of a language as JSON, to be read with
// message.ReadCatalogue; false where the program has none for that code.
func Translation(code string) ([]byte, bool) {
	if path.Base(code) != code {
		return nil, false
	}
	data, err := files.ReadFile("translations/" + code + ".json")
	return data, err == nil
}
