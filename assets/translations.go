package assets

import (
	"encoding/json"
	"fmt"
	"maps"
)

// Languages lists the codes of the languages that messages are translated into
// (ISO 639-1), English not among them.
func Languages() []string {
	entries, _ := files.ReadDir("translations")
	codes := make([]string, len(entries))
	for i, e := range entries {
		codes[i] = e.Name()
	}
	return codes
}

// Translation gives the texts of a language by their English ones; false where
// the program has none. Each part of the program has a file of its own in the
// language's folder: an object whose members are the texts.
func Translation(code string) (map[string]string, bool) {
	entries, err := files.ReadDir("translations/" + code)
	if err != nil || code == "" {
		return nil, false
	}
	all := map[string]string{}
	for _, e := range entries {
		part, err := ParseTranslation(mustRead("translations/" + code + "/" + e.Name()))
		if err != nil {
			panic("assets: " + e.Name() + ": " + err.Error()) // a test reads them all
		}
		maps.Copy(all, part)
	}
	return all, true
}

// ParseTranslation reads a file of translations, such as one that a user has
// made for a language of their own.
func ParseTranslation(data []byte) (map[string]string, error) {
	var texts map[string]string
	if err := json.Unmarshal(data, &texts); err != nil {
		return nil, fmt.Errorf("these are no translations, which are an object of texts by their English ones: %w", err)
	}
	return texts, nil
}
