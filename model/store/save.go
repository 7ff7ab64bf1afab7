package store

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"unicode/utf8"

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

// maxBase is how long a name can be for the names that are made from it to fit
// into 255 bytes, the usual limit of file systems (NAME_MAX of ext4, XFS, NTFS
// and others; common practice, no source).
const maxBase = 220

// fitting shortens a name that is too long to make others from, so that it
// still tells one file from another.
func fitting(base string) string {
	if len(base) <= maxBase {
		return base
	}
	cut := maxBase - 17
	for cut > 0 && !utf8.RuneStart(base[cut]) {
		cut--
	}
	sum := sha256.Sum256([]byte(base))
	return base[:cut] + "-" + hex.EncodeToString(sum[:8])
}

// tempTries is how many names are tried for a file beside; others may be left
// from programs that were killed, until Sweep.
const tempTries = 1000

func tempName(target string, n int) string {
	return filepath.Join(filepath.Dir(target), fmt.Sprintf(".%s.%d.saving", fitting(filepath.Base(target)), n))
}

// writeBeside writes a new file beside target and flushes it; owner and
// permissions are those of old, nil for the user's own. On an error it leaves
// nothing.
func writeBeside(sys FS, target string, data []byte, old fs.FileInfo) (string, error) {
	mode := fs.FileMode(0o644)
	if old != nil {
		mode = old.Mode().Perm()
	}
	var f File
	var name string
	for n := 1; ; n++ {
		var err error
		name = tempName(target, n)
		if f, err = sys.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode); err == nil {
			break
		}
		if !errors.Is(err, fs.ErrExist) || n == tempTries {
			return "", err
		}
	}
	err := fill(f, data)
	if err == nil && old != nil {
		// The owner is kept only where the user may give files away.
		_ = sys.ChownLike(name, old)
		err = sys.Chmod(name, mode) // a new file's are cut by the user's mask
	}
	if err != nil {
		return "", errors.Join(err, sys.Remove(name))
	}
	return name, nil
}

func fill(f File, data []byte) error {
	n, err := f.Write(data)
	if err == nil && n < len(data) {
		err = fmt.Errorf("only %d of %d bytes could be written", n, len(data))
	}
	if err == nil {
		err = f.Sync()
	}
	return errors.Join(err, f.Close())
}

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
