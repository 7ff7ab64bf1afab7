package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"regexp"

	"frontlay/model/store"
)

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
