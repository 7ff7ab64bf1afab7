package store

import (
	"crypto/sha256"
	"errors"
	"io"
	"io/fs"
	"os"
	"time"
)

// Stamp tells one state of a file from another. The zero Stamp is that of a
// file that is not there.
type Stamp struct {
	Exists  bool
	Size    int64
	ModTime time.Time
	Hash    [sha256.Size]byte
}

// Same tells whether two stamps are of the same content.
func (s Stamp) Same(t Stamp) bool {
	return s.Exists == t.Exists && s.Size == t.Size && s.Hash == t.Hash
}

// Read reads a file of at most limit bytes, with its stamp. The error is *Error.
func Read(sys FS, path string, limit int64) ([]byte, Stamp, error) {
	data, stamp, err := read(sys, path, limit)
	if err != nil {
		return nil, Stamp{}, readError(path, err)
	}
	return data, stamp, nil
}

func read(sys FS, path string, limit int64) ([]byte, Stamp, error) {
	info, err := sys.Stat(path) // before opening, which would wait at a pipe
	if err != nil {
		return nil, Stamp{}, err
	}
	if !info.Mode().IsRegular() {
		return nil, Stamp{}, ErrNotRegular
	}
	f, err := sys.OpenFile(path, os.O_RDONLY, 0)
	if err != nil {
		return nil, Stamp{}, err
	}
	defer f.Close()
	if info, err = f.Stat(); err != nil {
		return nil, Stamp{}, err
	}
	data, err := io.ReadAll(io.LimitReader(f, limit+1))
	if err != nil {
		return nil, Stamp{}, err
	}
	if int64(len(data)) > limit {
		return nil, Stamp{}, ErrTooLarge
	}
	return data, stampOf(data, info.ModTime()), nil
}

func stampOf(data []byte, modTime time.Time) Stamp {
	return Stamp{Exists: true, Size: int64(len(data)), ModTime: modTime, Hash: sha256.Sum256(data)}
}

// maxCompare is the largest file that StampOf reads; a project is much smaller.
const maxCompare = 64 << 20

// StampOf gives the stamp of a file, the zero Stamp where there is none. A file
// of the same size and time as was keeps was's hash unread: that is quick enough
// to ask every second. Give the zero Stamp to have it read.
func StampOf(sys FS, path string, was Stamp) (Stamp, error) {
	info, err := sys.Stat(path)
	if errors.Is(err, fs.ErrNotExist) {
		return Stamp{}, nil
	}
	if err != nil {
		return Stamp{}, readError(path, err)
	}
	if was.Exists && info.Size() == was.Size && info.ModTime().Equal(was.ModTime) {
		return was, nil
	}
	_, stamp, err := Read(sys, path, maxCompare)
	if errors.Is(err, fs.ErrNotExist) {
		return Stamp{}, nil
	}
	return stamp, err
}
