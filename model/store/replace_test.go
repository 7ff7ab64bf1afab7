package store_test

import (
	"errors"
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"frontlay/model/store"
)

func TestReplaceTakesThePlaceOfWhateverIsThere(t *testing.T) {
	path, _ := project(t, older)
	link := filepath.Join(filepath.Dir(path), "link.pdf")
	if err := os.Symlink(path, link); err != nil {
		t.Skip("no links here")
	}
	for _, name := range []string{link, filepath.Join(filepath.Dir(path), "new.pdf")} {
		if err := store.Replace(store.OS{}, name, []byte(newer)); err != nil || content(t, name) != newer {
			t.Errorf("%s: %v", name, err)
		}
	}
	if info, err := os.Stat(path); err != nil || info.Mode().Perm() != 0o640 {
		t.Errorf("its permissions are %v, %v", info.Mode(), err)
	}
	if list := names(t, filepath.Dir(path)); len(list) != 3 {
		t.Errorf("the folder holds %v", list)
	}
	if err := os.Chmod(path, 0o440); err != nil {
		t.Fatal(err)
	}
	if err := store.Replace(store.OS{}, path, []byte(older)); !errors.Is(err, store.ErrReadOnly) || content(t, path) != newer {
		t.Errorf("a read-only file: %v", err)
	}
}

func TestReplaceLeavesAWholeFileWhateverFails(t *testing.T) {
	path, _ := project(t, older)
	plain := sound()
	if err := store.Replace(plain, path, []byte(newer)); err != nil {
		t.Fatal(err)
	}
	for n := range plain.steps {
		path, _ := project(t, older)
		sys := sound()
		sys.fail = func(i int, _ string) error { return only(i == n, syscall.EIO) }
		err := store.Replace(sys, path, []byte(newer))
		if got := content(t, path); got != newer && (got != older || err == nil) {
			t.Errorf("%s fails: %v, the file holds %q", plain.steps[n], err, got)
		}
		if list := names(t, filepath.Dir(path)); len(list) != 1 {
			t.Errorf("%s fails: the folder holds %v", plain.steps[n], list)
		}
	}
}
