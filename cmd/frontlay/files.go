package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"

	"frontlay/assets"
	"frontlay/layout/check"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
)

// keptIn is the program's own folder: journals, reports, the log, what is known of
// printers, the user's own hardware sheets.
func keptIn() (string, error) {
	dir, err := os.UserConfigDir()
	if err != nil {
		return "", err
	}
	return filepath.Join(dir, "frontlay"), nil
}

// openProject reads a project and the hardware sheets that it names: samples
// that ship, the user's own, or files in its folder or below. anywhere lets it
// read sheets elsewhere too. from, where it is given, notes which files were read.
func openProject(path string, anywhere bool, from *seen) (*yamlfile.File, error) {
	from.note(path)
	data, err := readFile(path)
	if err != nil {
		return nil, err
	}
	find := sheetsFor(filepath.Dir(path), func(string) bool { return anywhere })
	return yamlfile.Read(path, data, func(source string) (string, []byte, error) {
		name, data, err := find(source)
		if _, sample := assets.Sheet(source); !sample {
			from.note(name)
			from.note(filepath.Join(filepath.Dir(path), source)) // where one would take its place
		}
		return name, data, err
	}, check.Limits())
}

// sheetsFor finds hardware sheets for a project in a folder.
func sheetsFor(folder string, allowed func(path string) bool) yamlfile.SheetSource {
	s := store.Sheets{FS: store.OS{}, Samples: assets.Sheet, Project: folder, Limit: yamlfile.MaxBytes, Allowed: allowed}
	if home, err := keptIn(); err == nil {
		s.User = filepath.Join(home, "sheets")
	}
	return s.Find
}

// readFile reads a whole file that is not larger than any project should be.
func readFile(path string) ([]byte, error) {
	data, _, err := store.Read(store.OS{}, path, yamlfile.MaxBytes)
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

// saveBytes puts a whole file, one that can be made again, in its place. It
// replaces no project and no hardware sheet, and with a PDF nothing but a PDF: a
// slip in a name must not cost anybody's work.
func saveBytes(path string, data []byte) error {
	if err := replaceable(path, data); err != nil {
		return err
	}
	return store.Replace(store.OS{}, path, data)
}

// ours is how projects and hardware sheets can be told in their first lines.
var ours = regexp.MustCompile(`(?m)^(frontlay|frontlay_hardware)\s*:`)

func replaceable(path string, data []byte) error {
	f, err := os.Open(path)
	if err != nil {
		return nil // not there; what else is wrong the save itself will tell
	}
	defer f.Close()
	old, err := io.ReadAll(io.LimitReader(f, 64<<10))
	if err != nil || len(old) == 0 {
		return nil
	}
	pdf := []byte("%PDF")
	switch {
	case ours.Match(old):
		return fmt.Errorf("%s is a project or a hardware sheet and is left as it is; choose another name", path)
	case bytes.HasPrefix(data, pdf) && !bytes.HasPrefix(old, pdf):
		return fmt.Errorf("%s is there already and is no PDF; it is left as it is; choose another name", path)
	}
	return nil
}
