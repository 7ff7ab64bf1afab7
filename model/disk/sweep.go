package disk

import (
	"bytes"
	"errors"
	"path/filepath"
)

// Sweep removes what saves that were killed left beside path. Only the owner of
// its lock may.
func Sweep(sys FS, path string) error {
	target, err := follow(sys, path)
	if err != nil {
		return saveError(path, err)
	}
	entries, err := sys.ReadDir(filepath.Dir(target))
	if err != nil {
		return readError(path, err)
	}
	var failed error
	for _, e := range entries {
		if leftBy(e.Name(), filepath.Base(target)) && e.Type().IsRegular() {
			failed = errors.Join(failed, sys.Remove(filepath.Join(filepath.Dir(target), e.Name())))
		}
	}
	return failed
}

// leftBy tells whether a name is a temporary one of base, its backup or its lock.
func leftBy(name, base string) bool {
	for _, b := range []string{base, BackupName(base), LockName(base)} {
		b = fitting(b)
		rest, ok := bytes.CutPrefix([]byte(name), []byte("."+b+"."))
		if !ok {
			continue
		}
		number, ok := bytes.CutSuffix(rest, []byte(".saving"))
		if ok && len(number) > 0 && len(bytes.Trim(number, "0123456789")) == 0 {
			return true
		}
	}
	return false
}
