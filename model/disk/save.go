package disk

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"frontlay/model/message"
)

// Changed is the error of Save where the file is not as it was when it was read
// or saved last. Nothing has been written. Now is what is there.
type Changed struct {
	Path string
	Now  Stamp
}

// Error says what happened and what can be done.
func (c *Changed) Error() string { return c.Say(message.Language{}) }

// Say is Error in another language.
func (c *Changed) Say(l message.Language) string { return l.Say(c.told()) }

// As lets errors.As find a message.Message in the error.
func (c *Changed) As(target any) bool { return asMessage(target, c.told()) }

func (c *Changed) told() message.Message {
	if !c.Now.Exists {
		return message.New("%v was moved or removed by another program; save it again there, or in another place", c.Path)
	}
	return message.New("%v was changed by another program; keep yours, take theirs, or save yours beside it", c.Path)
}

// Saved is the outcome of a Save that succeeded. NoBackup tells why there is no
// backup of the version before, nil where there is one or none was needed.
type Saved struct {
	Stamp    Stamp
	Backup   string
	NoBackup error
}

// Save writes data to path so that at any moment, even if the machine stops,
// the file is whole: either the old version or the new one. Links and
// permissions are kept; the old version stays beside it as a backup. Where the
// file is no longer as known says (the stamp when it was read or saved last,
// the zero Stamp for a new name), the error is *Changed and nothing is written;
// to write over it all the same, give Changed.Now as known. Other errors are
// *Error; the old file is whole then.
func Save(sys FS, path string, data []byte, known Stamp) (Saved, error) {
	target, err := follow(sys, path)
	if err != nil {
		return Saved{}, saveError(path, err)
	}
	now, err := StampOf(sys, target, Stamp{})
	if err != nil {
		return Saved{}, saveError(path, err)
	}
	if !now.Same(known) {
		return Saved{}, &Changed{Path: path, Now: now}
	}
	var old fs.FileInfo
	if now.Exists {
		if old, err = writable(sys, target); err != nil {
			return Saved{}, saveError(path, err)
		}
	}
	temp, err := writeBeside(sys, target, data, old)
	if err != nil {
		return Saved{}, saveError(path, err)
	}
	var saved Saved
	if now.Exists && !now.Same(stampOf(data, now.ModTime)) {
		saved.Backup = BackupName(target)
		if saved.NoBackup = backup(sys, target, saved.Backup); saved.NoBackup != nil {
			saved.Backup = ""
		}
	}
	if err := sys.Rename(temp, target); err != nil {
		return Saved{}, saveError(path, errors.Join(err, sys.Remove(temp)))
	}
	if err := sys.SyncDir(filepath.Dir(target)); err != nil {
		return Saved{}, &Error{Err: err,
			Message: message.New("%v is written, but the system can't promise that it is on the disk: %v", path, reason(err)),
			Advice:  message.New("save it once more, or in another place")}
	}
	saved.Stamp = stampOf(data, now.ModTime)
	if info, err := sys.Stat(target); err == nil {
		saved.Stamp.ModTime = info.ModTime()
	}
	return saved, nil
}

// follow gives the file behind links, whether it is there yet or not. A link that
// points to nothing is an error, since no new file could replace it.
func follow(sys FS, path string) (string, error) {
	path, err := filepath.Abs(path)
	if err != nil {
		return "", err
	}
	if real, err := sys.EvalSymlinks(path); err == nil {
		info, err := sys.Stat(real)
		if err == nil && !info.Mode().IsRegular() {
			return "", ErrNotRegular
		}
		return real, err
	}
	info, err := sys.Lstat(path)
	if err == nil && info.Mode()&fs.ModeSymlink != 0 {
		return "", fmt.Errorf("%w: the link points to nothing", fs.ErrNotExist)
	}
	return path, nil
}

// writable tells that a file may be written, and what it is like. Renaming over
// a file would work without that right, so that it is asked for.
func writable(sys FS, path string) (fs.FileInfo, error) {
	info, err := sys.Stat(path)
	if err != nil {
		return nil, err
	}
	if info.Mode().Perm()&0o222 == 0 {
		return nil, ErrReadOnly
	}
	f, err := sys.OpenFile(path, os.O_WRONLY, 0)
	if errors.Is(err, fs.ErrPermission) {
		return nil, ErrReadOnly
	}
	if err != nil {
		return nil, err
	}
	return info, f.Close()
}
