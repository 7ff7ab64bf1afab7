// Package assets holds what ships inside the program: sample hardware sheets,
// the demo project, translations, and icons. It imports nothing of frontlay.
package assets

import (
	"embed"
	"path"
	"slices"
	"strings"
)

//go:embed licences.txt sheets/*.yaml projects/*.yaml translations/*.json icons/*.svg icon.png
var files embed.FS

// Examples are the names of the projects that ship to be looked at: a simple chest, the
// demo, a run with fronts of several kinds, and one with faults to mend. They use only
// sample sheets.
func Examples() []string { return []string{"tile-chest", DemoExample, "packing-room", "kiln-room"} }

// Example gives one as YAML; false where there is none of that name.
func Example(name string) ([]byte, bool) {
	if !slices.Contains(Examples(), name) {
		return nil, false
	}
	return named("projects", name, ".yaml")
}

// DemoExample is the example that is opened where none is named.
const DemoExample = "glaze-bench"

// DemoName is the file name of the demo project.
const DemoName = DemoExample + ".yaml"

// Demo is the demo project, as YAML.
func Demo() []byte { return mustRead("projects/" + DemoName) }

// NewCabinet is the project to begin with, as YAML: one cabinet in which nothing is
// wrong but that its sheet is a sample and nobody has said what its drawers are to
// hold, with a comment where a beginner looks for one.
func NewCabinet() []byte { return mustRead("projects/new-cabinet.yaml") }

// SheetNames lists the sample hardware sheets, in order of the alphabet.
func SheetNames() []string { return names("sheets") }

// Sheet gives a sample hardware sheet as YAML; false where there is none of
// that name.
func Sheet(name string) ([]byte, bool) { return named("sheets", name, ".yaml") }

// Languages lists the languages that the program ships besides English, as
// language codes of ISO 639-1, in order of the alphabet.
func Languages() []string { return names("translations") }

// Translation gives the catalogue of a language as JSON, to be read with
// message.ReadCatalogue; false where the program has none for that code.
func Translation(code string) ([]byte, bool) { return named("translations", code, ".json") }

// Licence is that of a part of the program, whole.
type Licence struct {
	Part    string // the path of a module, or the name of something in one
	Wording string
}

// Licences are those of all parts that a built program holds.
func Licences() []Licence {
	var all []Licence
	for _, section := range strings.Split("\n"+string(mustRead("licences.txt")), "\n## ")[1:] {
		part, text, _ := strings.Cut(section, "\n")
		all = append(all, Licence{part, strings.Trim(text, "\n")})
	}
	return all
}

// IconPNG is the program's icon as a PNG of 256 × 256 pixels.
func IconPNG() []byte { return mustRead("icon.png") }

// Icons lists the line icons of the window, in order of the alphabet.
func Icons() []string { return names("icons") }

// Icon gives a line icon as an SVG of 20 × 20 units, drawn in currentColor and, over
// filled parts, in white; false where there is none of that name.
func Icon(name string) ([]byte, bool) { return named("icons", name, ".svg") }

// names lists the files of a folder without their endings.
func names(folder string) []string {
	entries, _ := files.ReadDir(folder)
	all := make([]string, len(entries))
	for i, e := range entries {
		all[i] = strings.TrimSuffix(e.Name(), path.Ext(e.Name()))
	}
	return all
}

// named reads a file of a folder; a name that leads out of it is none.
func named(folder, name, ending string) ([]byte, bool) {
	if path.Base(name) != name {
		return nil, false
	}
	data, err := files.ReadFile(folder + "/" + name + ending)
	return data, err == nil
}

// mustRead reads a file that go:embed has already proved to be there.
func mustRead(name string) []byte {
	data, err := files.ReadFile(name)
	if err != nil {
		panic("assets: " + err.Error())
	}
	return data
}
