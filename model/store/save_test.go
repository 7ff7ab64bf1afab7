package store_test

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"frontlay/model/message"
	"frontlay/model/store"
)

const (
	older = "version: 1\n"
	newer = "version: 2, which is longer\n"
)

// project makes a file in a folder of its own and gives its path and stamp.
func project(t *testing.T, content string) (string, store.Stamp) {
	t.Helper()
	path := filepath.Join(t.TempDir(), "bench.yaml")
	if err := os.WriteFile(path, []byte(content), 0o640); err != nil {
		t.Fatal(err)
	}
	_, stamp, err := store.Read(store.OS{}, path, 1<<20)
	if err != nil {
		t.Fatal(err)
	}
	return path, stamp
}

func content(t *testing.T, path string) string {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

func names(t *testing.T, folder string) []string {
	t.Helper()
	entries, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	var list []string
	for _, e := range entries {
		list = append(list, e.Name())
	}
	return list
}

func TestSaveReplacesTheFileAndKeepsTheVersionBefore(t *testing.T) {
	path, stamp := project(t, older)
	saved, err := store.Save(store.OS{}, path, []byte(newer), stamp)
	if err != nil {
		t.Fatal(err)
	}
	if content(t, path) != newer || content(t, store.BackupName(path)) != older || saved.Backup != store.BackupName(path) || saved.NoBackup != nil {
		t.Errorf("the file holds %q, the backup %q, %+v", content(t, path), content(t, store.BackupName(path)), saved)
	}
	if info, _ := os.Stat(path); info.Mode().Perm() != 0o640 {
		t.Errorf("its permissions are %v", info.Mode())
	}
	if list := names(t, filepath.Dir(path)); len(list) != 2 {
		t.Errorf("the folder holds %v", list)
	}
	_, stamp, err = store.Read(store.OS{}, path, 1<<20)
	if err != nil || !stamp.Same(saved.Stamp) || !stamp.ModTime.Equal(saved.Stamp.ModTime) {
		t.Errorf("the stamp is %+v, was told as %+v, %v", stamp, saved.Stamp, err)
	}
	// A second save replaces the backup; a save of the same content does not.
	for _, text := range []string{"third\n", "third\n"} {
		saved, err := store.Save(store.OS{}, path, []byte(text), stamp)
		if err != nil {
			t.Fatal(err)
		}
		stamp = saved.Stamp
		if content(t, path) != "third\n" || content(t, store.BackupName(path)) != newer {
			t.Errorf("the file holds %q, the backup %q", content(t, path), content(t, store.BackupName(path)))
		}
	}
}

func TestSaveUnderANewName(t *testing.T) {
	for _, name := range []string{"bench.yaml", "Glasurtisch für Öfen.yaml", "釉薬台.yaml", "طاولة.yaml", "a b'c\"d$.yaml", "-rf.yaml", "two\nlines.yaml", strings.Repeat("long", 55) + ".yaml", strings.Repeat("釉", 83) + ".yaml"} {
		path := filepath.Join(t.TempDir(), name)
		saved, err := store.Save(store.OS{}, path, []byte(newer), store.Stamp{})
		if err != nil || content(t, path) != newer || saved.Backup != "" {
			t.Errorf("%q: %v, %+v", name, err, saved)
		}
		if list := names(t, filepath.Dir(path)); len(list) != 1 {
			t.Errorf("%q: the folder holds %v", name, list)
		}
		lock, err := store.Acquire(store.OS{}, path, me("names"))
		if err != nil {
			t.Errorf("%q: locking: %v", name, err)
			continue
		}
		if _, err := store.Save(store.OS{}, path, []byte(older), saved.Stamp); err != nil || content(t, store.BackupName(path)) != newer {
			t.Errorf("%q: saving again: %v", name, err)
		}
		if err := errors.Join(lock.Release(), store.Sweep(store.OS{}, path)); err != nil || len(names(t, filepath.Dir(path))) != 2 {
			t.Errorf("%q: %v, the folder holds %v", name, err, names(t, filepath.Dir(path)))
		}
	}
}

func TestSaveFollowsLinks(t *testing.T) {
	path, stamp := project(t, older)
	link := filepath.Join(t.TempDir(), "link.yaml")
	if err := os.Symlink(path, link); err != nil {
		t.Skip("no links here")
	}
	if _, err := store.Save(store.OS{}, link, []byte(newer), stamp); err != nil {
		t.Fatal(err)
	}
	if info, err := os.Lstat(link); err != nil || info.Mode()&fs.ModeSymlink == 0 {
		t.Errorf("the link is gone: %v, %v", info.Mode(), err)
	}
	if content(t, path) != newer || len(names(t, filepath.Dir(link))) != 1 {
		t.Errorf("the file holds %q; beside the link %v", content(t, path), names(t, filepath.Dir(link)))
	}
}

func TestSaveNoticesWhatOthersChanged(t *testing.T) {
	cases := map[string]func(path string) error{
		"other content":             func(path string) error { return os.WriteFile(path, []byte("theirs\n"), 0o644) },
		"same size, same time":      sameSizeAndTime,
		"removed":                   os.Remove,
		"replaced by an older file": func(path string) error { return os.WriteFile(path, nil, 0o644) },
	}
	for name, change := range cases {
		t.Run(name, func(t *testing.T) {
			path, stamp := project(t, older)
			if err := change(path); err != nil {
				t.Fatal(err)
			}
			before, _ := os.ReadFile(path)
			_, err := store.Save(store.OS{}, path, []byte(newer), stamp)
			var changed *store.Changed
			if !errors.As(err, &changed) {
				t.Fatalf("Save gives %v", err)
			}
			if after, _ := os.ReadFile(path); string(after) != string(before) {
				t.Errorf("the file was %q and is %q", before, after)
			}
			// "Keep mine" gives the stamp that was told.
			if _, err := store.Save(store.OS{}, path, []byte(newer), changed.Now); err != nil || content(t, path) != newer {
				t.Errorf("keeping mine: %v, %q", err, content(t, path))
			}
		})
	}
}

func sameSizeAndTime(path string) error {
	info, err := os.Stat(path)
	if err != nil {
		return err
	}
	if err := os.WriteFile(path, []byte(strings.ToUpper(older)), 0o644); err != nil {
		return err
	}
	return os.Chtimes(path, info.ModTime(), info.ModTime())
}

// Every step of a save is made to fail alone, and as if the machine stopped
// there: all later steps fail too. Each time the file is a whole version.
func TestSaveLeavesAWholeVersionWhateverFails(t *testing.T) {
	plan := sound()
	path, stamp := project(t, older)
	if _, err := store.Save(plan, path, []byte(newer), stamp); err != nil {
		t.Fatal(err)
	}
	if len(plan.steps) < 10 || plan.did("sync") != 1 || plan.did("syncdir") != 1 {
		t.Fatalf("a save takes the steps %v", plan.steps)
	}
	for _, stop := range []bool{false, true} {
		for n := range plan.steps {
			t.Run(fmt.Sprintf("%s, stopped %v", strings.Fields(plan.steps[n])[0]+fmt.Sprint(n), stop), func(t *testing.T) {
				path, stamp := project(t, older)
				sys := sound()
				sys.fail = func(i int, _ string) error {
					if i == n || stop && i > n {
						return syscall.EIO
					}
					return nil
				}
				_, err := store.Save(sys, path, []byte(newer), stamp)
				got := content(t, path)
				if got != older && got != newer {
					t.Fatalf("the file is torn: %q", got)
				}
				if err == nil && got != newer {
					t.Fatalf("saved, they say, but the file holds %q", got)
				}
				var told *store.Error
				if err != nil && !errors.As(err, &told) {
					t.Errorf("the error is %#v", err)
				}
				// What comes after succeeds and leaves nothing behind.
				_, now, err := store.Read(store.OS{}, path, 1<<20)
				if err != nil {
					t.Fatal(err)
				}
				if err := store.Sweep(store.OS{}, path); err != nil {
					t.Fatal(err)
				}
				if _, err := store.Save(store.OS{}, path, []byte("after\n"), now); err != nil || content(t, path) != "after\n" {
					t.Fatalf("the save after: %v", err)
				}
				if list := names(t, filepath.Dir(path)); len(list) != 2 {
					t.Errorf("the folder holds %v", list)
				}
			})
		}
	}
}

func TestAFullDiskLosesNothing(t *testing.T) {
	data := strings.Repeat("a line of the new version\n", 100)
	for room := int64(0); room < int64(len(data)); room += 97 {
		path, stamp := project(t, older)
		sys := sound()
		sys.room = room
		_, err := store.Save(sys, path, []byte(data), stamp)
		if !errors.Is(err, store.ErrFull) || content(t, path) != older || len(names(t, filepath.Dir(path))) != 1 {
			t.Fatalf("with %d bytes of room: %v, %q, %v", room, err, content(t, path), names(t, filepath.Dir(path)))
		}
		if !strings.Contains(err.Error(), "the disk is full") || !strings.Contains(err.Error(), "still in the window") {
			t.Fatalf("the user is told %q", err)
		}
	}
}

func TestSaveRefusesWhatItMayNotWrite(t *testing.T) {
	readOnly := func(path string) error { return os.Chmod(path, 0o440) }
	cases := map[string]struct {
		prepare func(path string) error
		fail    func(n int, step string) error
		says    string
		is      error
	}{
		"a file marked read-only": {prepare: readOnly, says: "read-only", is: store.ErrReadOnly},
		"a folder that may not be written": {
			fail: func(_ int, step string) error { return only(step == "open", syscall.EACCES) }, says: "may not", is: fs.ErrPermission},
		"a disk mounted read-only": {
			fail: func(n int, step string) error { return only(step == "open" && n > 4, syscall.EROFS) }, says: "may not write in its folder"},
		"a network folder that is gone": {
			fail: func(_ int, step string) error { return only(step == "sync", syscall.EIO) }, says: "was not saved"},
		"a rename that fails": {
			fail: func(_ int, step string) error { return only(step == "rename", syscall.EBUSY) }, says: "was not saved"},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			path, stamp := project(t, older)
			if c.prepare != nil {
				if err := c.prepare(path); err != nil {
					t.Fatal(err)
				}
			}
			sys := sound()
			if c.fail != nil {
				sys.fail = c.fail
			}
			_, err := store.Save(sys, path, []byte(newer), stamp)
			if err == nil || !strings.Contains(err.Error(), c.says) || c.is != nil && !errors.Is(err, c.is) {
				t.Errorf("told %v", err)
			}
			if content(t, path) != older {
				t.Errorf("the file holds %q", content(t, path))
			}
			for _, left := range names(t, filepath.Dir(path)) {
				if strings.HasSuffix(left, ".saving") {
					t.Errorf("%s is left over", left)
				}
			}
		})
	}
}

func only(when bool, err error) error {
	if when {
		return err
	}
	return nil
}

func TestSaveOnOddPlaces(t *testing.T) {
	folder := t.TempDir()
	dangling := filepath.Join(folder, "dangling")
	if err := os.Symlink(filepath.Join(folder, "nowhere", "x"), dangling); err != nil {
		t.Skip("no links here")
	}
	for path, says := range map[string]string{
		folder:                                  "a folder",
		filepath.Join(folder, "gone", "x.yaml"): "folder is not there",
		dangling:                                "not there",
	} {
		_, err := store.Save(store.OS{}, path, []byte(newer), store.Stamp{})
		if err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%s: %v", path, err)
		}
	}
	if list := names(t, folder); len(list) != 1 {
		t.Errorf("the folder holds %v", list)
	}
}

// Where the file system has no second names, the backup is a copy; where it
// can't be made, the save still succeeds and says so.
func TestBackupsWithoutLinks(t *testing.T) {
	path, stamp := project(t, older)
	sys := sound()
	sys.fail = func(_ int, step string) error { return only(step == "link", syscall.EPERM) }
	saved, err := store.Save(sys, path, []byte(newer), stamp)
	if err != nil || saved.NoBackup != nil || content(t, saved.Backup) != older || content(t, path) != newer {
		t.Errorf("%+v, %v", saved, err)
	}
	sys.room = 4
	_, err = store.Save(sys, path, []byte("3\n"), saved.Stamp)
	if err != nil || content(t, path) != "3\n" || content(t, store.BackupName(path)) != older {
		t.Errorf("%v; the backup holds %q", err, content(t, store.BackupName(path)))
	}
}

func TestReadRefuses(t *testing.T) {
	folder := t.TempDir()
	big := filepath.Join(folder, "big")
	if err := os.WriteFile(big, make([]byte, 101), 0o644); err != nil {
		t.Fatal(err)
	}
	for path, is := range map[string]error{
		folder:                        store.ErrNotRegular,
		filepath.Join(folder, "gone"): fs.ErrNotExist,
		big:                           store.ErrTooLarge,
		"/dev/zero":                   store.ErrNotRegular,
	} {
		data, _, err := store.Read(store.OS{}, path, 100)
		if !errors.Is(err, is) || data != nil {
			t.Errorf("%s: %v", path, err)
		}
	}
	if data, _, err := store.Read(store.OS{}, big, 101); err != nil || len(data) != 101 {
		t.Errorf("a file of just the limit: %d bytes, %v", len(data), err)
	}
}

// Whoever shows an error finds a message in it, to say it in the user's
// language.
func TestErrorsAreMessages(t *testing.T) {
	german := message.Language{Catalogue: map[string]string{
		"%v is not there":                       "%v ist nicht da",
		"check the name and the folder":         "prüfen Sie Namen und Ordner",
		"%v is open in another window since %v": "%v ist seit %v in einem anderen Fenster offen",
	}}
	_, _, missing := store.Read(store.OS{}, "/no/such.yaml", 1)
	for name, c := range map[string]struct {
		err  error
		want string
	}{
		"missing": {missing, "/no/such.yaml ist nicht da; prüfen Sie Namen und Ordner"},
		"wrapped": {fmt.Errorf("opening: %w", missing), "/no/such.yaml ist nicht da; prüfen Sie Namen und Ordner"},
		"held": {&store.Held{Path: "x", Owner: me("a"), Life: store.Running},
			"x ist seit " + start.Local().Format("2006-01-02 15:04") + " in einem anderen Fenster offen"},
		"changed": {&store.Changed{Path: "x"}, "x was moved or removed by another program; save it again there, or in another place"},
		"outside": {&store.Outside{Path: "x"}, "x lies outside the project's folder; allow it to be read, or copy the sheet into the project's folder"},
	} {
		var m message.Message
		if !errors.As(c.err, &m) || german.Say(m) != c.want {
			t.Errorf("%s: said %q, want %q", name, german.Say(m), c.want)
		}
	}
}
