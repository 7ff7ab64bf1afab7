// Package assets holds what ships inside the program: sample hardware sheets,
// the demo project, translations, and the icon. It imports nothing of frontlay.
package assets

import (
	"embed"
	"path"
	"strings"
)

//go:embed sheets/*.yaml projects/*.yaml translations/*.json icon.png
var files embed.FS

// DemoName is the file name of the demo project.
const DemoName = "glaze-bench.yaml"

// Demo is the demo project, as YAML. It uses only sample sheets.
func Demo() []byte { return mustRead("projects/" + DemoName) }

// SheetNames lists the sample hardware sheets, in order of the alphabet.
func SheetNames() []string {
	entries, _ := files.ReadDir("sheets")
	names := make([]string, len(entries))
	for i, e := range entries {
		names[i] = strings.TrimSuffix(e.Name(), ".yaml")
	}
	return names
}

// Sheet gives a sample hardware sheet as YAML; false where there is none of
// that name.
func Sheet(name string) ([]byte, bool) {
	if path.Base(name) != name {
		return nil, false
	}
	data, err := files.ReadFile("sheets/" + name + ".yaml")
	return data, err == nil
}

// IconPNG is the program's icon as a PNG of 256 × 256 pixels.
func IconPNG() []byte { return mustRead("icon.png") }

// mustRead reads a file that go:embed has already proved to be there.
func mustRead(name string) []byte {
	data, err := files.ReadFile(name)
	if err != nil {
		panic("assets: " + err.Error())
	}
	return data
}
