package pack

import (
	"path"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"
)

// mostName is how many signs a name in an archive has at most, its extension too: room
// is left for the folder that it goes into (260 signs for a whole path on Windows, from
// memory).
const mostName = 80

// reserved are names that Windows keeps for devices, in small letters and whatever
// extension they have (Microsoft, "Naming Files, Paths, and Namespaces", from memory).
var reserved = []string{"con", "prn", "aux", "nul", "com0", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9",
	"lpt0", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9", "conin$", "conout$", "clock$"}

func device(name string) bool {
	stem, _, _ := strings.Cut(strings.ToLower(name), ".")
	return slices.Contains(reserved, strings.TrimSpace(stem))
}

// spelled are letters with a spelling in ASCII.
var spelled = strings.NewReplacer("ä", "ae", "ö", "oe", "ü", "ue", "Ä", "Ae", "Ö", "Oe", "Ü", "Ue", "ß", "ss")

// SafeName makes of a name one that every system takes: letters of ASCII, digits, - _ and
// inner points, no device of Windows, not too long. It has no folders.
func SafeName(name string) string {
	clean := strings.Map(func(r rune) rune {
		switch {
		case r >= 'a' && r <= 'z', r >= 'A' && r <= 'Z', r >= '0' && r <= '9', r == '_', r == '.':
			return r
		}
		return '-'
	}, spelled.Replace(name))
	for _, twice := range []string{"--", ".."} {
		for strings.Contains(clean, twice) {
			clean = strings.ReplaceAll(clean, twice, twice[:1])
		}
	}
	clean = strings.Trim(clean, "-.")
	ext := path.Ext(clean)
	stem := strings.TrimSuffix(clean, ext)
	if len(ext) > 10 {
		stem, ext = clean, ""
	}
	stem = strings.TrimRight(stem[:min(len(stem), mostName-len(ext))], "-.")
	if stem == "" {
		stem = "file"
	}
	if device(stem) {
		stem = "a-" + stem
	}
	return stem + ext
}

// names are the safe names that are given out, in small letters: files, and the folders
// that they lie in.
type names map[string]kind

type kind uint8

const (
	aFile kind = iota + 1
	aFolder
)

// take gives the name, or one like it with a number where it is given already, whatever
// the case of its letters.
func (n names) take(folder, name string) string {
	for n[strings.ToLower(folder)] == aFile {
		folder += "-files"
	}
	if folder != "" {
		n[strings.ToLower(folder)] = aFolder
	}
	name = SafeName(name)
	ext := path.Ext(name)
	stem := strings.TrimSuffix(name, ext)
	for i := 2; n[strings.ToLower(path.Join(folder, name))] != 0; i++ {
		number := "-" + strconv.Itoa(i)
		name = stem[:min(len(stem), mostName-len(ext)-len(number))] + number + ext
	}
	name = path.Join(folder, name)
	n[strings.ToLower(name)] = aFile
	return name
}

// plain tells that a part of a path from an archive means the same file on every system.
// It may have letters of any script and blanks: people put files of their own in.
func plain(part string) bool {
	return part != "" && len(part) <= 200 && utf8.ValidString(part) && !device(part) &&
		strings.Trim(part, ". ") == strings.TrimLeft(part, " ") && part[0] != ' ' &&
		!strings.ContainsFunc(part, func(r rune) bool { return r < ' ' || r == 0x7f || strings.ContainsRune(`\/:*?"<>|`, r) })
}
