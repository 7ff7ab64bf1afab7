package main

import (
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"

	"frontlay/assets"
	"frontlay/layout/check"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
)

// maxFile is more than any project or hardware sheet needs.
const maxFile = 4 << 20

// openProject reads a project and the hardware sheets that it names: samples
// that ship, the user's own, or files in its folder or below. anywhere lets it
// read sheets elsewhere too.
func openProject(path string, anywhere bool) (*yamlfile.File, error) {
	data, err := readFile(path)
	if err != nil {
		return nil, err
	}
	return yamlfile.Read(path, data, shelf(filepath.Dir(path), func(string) bool { return anywhere }), check.Limits())
}

// openDemo reads the demo project.
func openDemo() (*yamlfile.File, error) {
	return yamlfile.Read(assets.DemoName, assets.Demo(), shelf("", nil), check.Limits())
}

// shelf finds hardware sheets for a project in a folder.
func shelf(folder string, allowed func(path string) bool) yamlfile.SheetSource {
	s := store.Sheets{FS: store.OS{}, Samples: assets.Sheet, Project: folder, Limit: maxFile, Allowed: allowed}
	if home, err := keptIn(); err == nil {
		s.User = filepath.Join(home, "sheets")
	}
	return s.Find
}

// readFile reads a whole file that is not larger than any project should be.
func readFile(path string) ([]byte, error) {
	data, _, err := store.Read(store.OS{}, path, maxFile)
	return data, err
}

// plain says an operating system's error with its path first.
func plain(err error) error {
	var pe *fs.PathError
	if errors.As(err, &pe) {
		return fmt.Errorf("%s: %v", pe.Path, pe.Err)
	}
	return err
}
