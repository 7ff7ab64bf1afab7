package main

import (
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"

	"frontlay/assets"
	"frontlay/model/disk"
	"frontlay/model/yamlfile"
)

// maxFile is more than any project or hardware sheet needs.
const maxFile = 4 << 20

// openProject reads a project and the hardware sheets that it names: samples
// that ship, or files beside it.
func openProject(path string) (*yamlfile.File, error) {
	f, _, err := openStamped(path)
	return f, err
}

// openStamped reads a project and gives the state of its file too.
func openStamped(path string) (*yamlfile.File, disk.Stamp, error) {
	data, stamp, err := disk.Read(disk.OS{}, path, maxFile)
	if err != nil {
		return nil, stamp, err
	}
	f, err := yamlfile.Read(path, data, sheetsBeside(filepath.Dir(path)))
	return f, stamp, err
}

// openDemo reads the demo project.
func openDemo() (*yamlfile.File, error) {
	return yamlfile.Read(assets.DemoName, assets.Demo(), sheetsBeside(""))
}

// sheetsBeside finds hardware sheets: a sample by its name, otherwise a file in
// the folder of the project or below it.
func sheetsBeside(folder string) yamlfile.SheetSource {
	return func(source string) (string, []byte, error) {
		if data, ok := assets.Sheet(source); ok {
			return source, data, nil
		}
		if folder == "" || !filepath.IsLocal(source) {
			return source, nil, fmt.Errorf("%q is neither a sample that ships nor a path inside the project's folder", source)
		}
		path := filepath.Join(folder, source)
		data, err := readFile(path)
		return path, data, err
	}
}

// readFile reads a whole file that is not larger than any project should be.
func readFile(path string) ([]byte, error) {
	data, _, err := disk.Read(disk.OS{}, path, maxFile)
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
