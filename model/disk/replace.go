package disk

import (
	"errors"
	"io/fs"

	"frontlay/model/message"
)

// Replace writes data to path as Save does, whole or not at all, but whatever is
// there and without a backup: for files that can be made again, such as a PDF.
// Links and permissions are kept. The error is *Error; the old file is whole
// then.
func Replace(sys FS, path string, data []byte) error {
	target, err := follow(sys, path)
	if err != nil {
		return replaceError(path, err)
	}
	var old fs.FileInfo
	if _, err := sys.Stat(target); err == nil {
		if old, err = writable(sys, target); err != nil {
			return replaceError(path, err)
		}
	}
	temp, err := writeBeside(sys, target, data, old)
	if err != nil {
		return replaceError(path, err)
	}
	if err := sys.Rename(temp, target); err != nil {
		return replaceError(path, errors.Join(err, sys.Remove(temp)))
	}
	return nil
}

// replaceError says what kept a file that can be made again from being written.
func replaceError(path string, err error) error {
	e, ok := saveError(path, err).(*Error)
	if !ok {
		return err
	}
	e.Advice = message.New("mend that, or choose another place")
	return e
}
