package disk

import (
	"errors"
	"io/fs"
	"path/filepath"
)

// BackupName is the path of the backup of the version before.
func BackupName(path string) string {
	return filepath.Join(filepath.Dir(path), fitting(filepath.Base(path))+".before")
}

// backup gives the present version a second name, or copies it where the file
// system has no second names. The backup before is replaced at once.
func backup(sys FS, target, name string) error {
	temp := tempName(name, 1)
	if err := sys.Remove(temp); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	if err := sys.Link(target, temp); err != nil {
		data, _, err := read(sys, target, maxCompare)
		if err != nil {
			return err
		}
		if temp, err = writeBeside(sys, name, data, nil); err != nil {
			return err
		}
	}
	if err := sys.Rename(temp, name); err != nil {
		return errors.Join(err, sys.Remove(temp))
	}
	// Renaming one name of a file over another of the same file leaves both.
	if err := sys.Remove(temp); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	return nil
}
