//go:build unix

package disk

import (
	"errors"
	"io/fs"
	"os"
	"syscall"
)

// syncDir flushes a folder. File systems that can't (EINVAL, ENOTSUP) have
// nothing to flush.
func syncDir(name string) error {
	d, err := os.Open(name)
	if err != nil {
		return err
	}
	defer d.Close()
	if err := d.Sync(); err != nil && !errors.Is(err, syscall.EINVAL) && !errors.Is(err, syscall.ENOTSUP) {
		return err
	}
	return nil
}

// chownLike does nothing where the owner is the same already.
func chownLike(name string, like fs.FileInfo) error {
	info, err := os.Stat(name)
	if err != nil {
		return err
	}
	has, ok := info.Sys().(*syscall.Stat_t)
	wants, ok2 := like.Sys().(*syscall.Stat_t)
	if !ok || !ok2 || has.Uid == wants.Uid && has.Gid == wants.Gid {
		return nil
	}
	return os.Chown(name, int(wants.Uid), int(wants.Gid))
}
