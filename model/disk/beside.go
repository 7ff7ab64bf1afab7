package disk

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"unicode/utf8"
)

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
