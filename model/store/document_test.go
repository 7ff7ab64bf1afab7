package store_test

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"testing"

	"frontlay/model/store"
)

func desk(dir string, o store.Owner) store.Options {
	return store.Options{FS: store.OS{}, Limit: 1 << 20, Journal: options(dir, o, newClock())}
}

func note(t *testing.T, d *store.Document, text string) {
	t.Helper()
	d.Note("Glaze bench", func() ([]byte, error) { return []byte(text), nil })
	if err := d.Flush(); err != nil {
		t.Fatal(err)
	}
}

func TestADocumentsDay(t *testing.T) {
	state, path := t.TempDir(), filepath.Join(t.TempDir(), "bench.yaml")
	d := store.NewDocument(desk(state, me("day")))
	note(t, d, "first")
	if _, err := d.SaveAs(path, []byte("first"), false); err != nil || d.Path() != path || !d.Locked() {
		t.Fatalf("%v, %q, locked %v", err, d.Path(), d.Locked())
	}
	if len(names(t, state)) != 0 {
		t.Errorf("after the save the journal holds %v", names(t, state))
	}
	if _, err := d.Save([]byte("second")); err != nil || content(t, path) != "second" {
		t.Fatal(err)
	}
	// Saving under its own name is a save like others.
	if _, err := d.SaveAs(path, []byte("third"), false); err != nil || content(t, path) != "third" || !d.Locked() {
		t.Fatalf("%v, locked %v", err, d.Locked())
	}
	other := filepath.Join(filepath.Dir(path), "other.yaml")
	if _, err := d.SaveAs(other, []byte("fourth"), false); err != nil || content(t, path) != "third" || content(t, other) != "fourth" {
		t.Fatal(err)
	}
	if err := d.Close(); err != nil {
		t.Fatal(err)
	}
	if list := names(t, filepath.Dir(path)); len(list) != 3 { // two files and one backup
		t.Errorf("the folder holds %v", list)
	}
}

func TestTheSecondWindowCanLookAndSaveElsewhere(t *testing.T) {
	state := t.TempDir()
	path, _ := project(t, older)
	first, data, err := store.Open(desk(state, me("first")), path)
	if err != nil || string(data) != older {
		t.Fatal(err)
	}
	defer first.Close()
	second, data, err := store.Open(desk(state, me("second")), path)
	var held *store.Held
	if !errors.As(err, &held) || second == nil || string(data) != older {
		t.Fatalf("%v, %q", err, data)
	}
	defer second.Close()
	if _, err := second.Save([]byte("second's")); !errors.As(err, &held) || content(t, path) != older {
		t.Errorf("the second saves: %v", err)
	}
	if _, err := first.Save([]byte("first's")); err != nil {
		t.Errorf("the first can't save: %v", err)
	}
	beside := filepath.Join(filepath.Dir(path), "beside.yaml")
	if _, err := second.SaveAs(beside, []byte("second's"), false); err != nil || second.Path() != beside {
		t.Errorf("the second saves elsewhere: %v", err)
	}
	if _, err := second.SaveAs(path, []byte("second's"), false); !errors.As(err, &held) || content(t, path) != "first's" {
		t.Errorf("the second saves over the first's: %v", err)
	}
}

func TestALockThatWasStolenIsNoticed(t *testing.T) {
	state := t.TempDir()
	path, _ := project(t, older)
	first, _, err := store.Open(desk(state, me("first")), path)
	if err != nil {
		t.Fatal(err)
	}
	defer first.Close()
	second, _, _ := store.Open(desk(state, me("second")), path)
	defer second.Close()
	if err := second.TakeLock(); err != nil || !second.Locked() || first.Locked() {
		t.Fatalf("%v", err)
	}
	if _, err := second.Save([]byte("second's")); err != nil {
		t.Fatal(err)
	}
	var held *store.Held
	if _, err := first.Save([]byte("first's")); !errors.As(err, &held) || content(t, path) != "second's" {
		t.Errorf("the first saves: %v", err)
	}
}

func TestAChangeUnderneathIsAChoice(t *testing.T) {
	path, _ := project(t, older)
	d, _, err := store.Open(desk(t.TempDir(), me("mine")), path)
	if err != nil {
		t.Fatal(err)
	}
	defer d.Close()
	if d.Changed() != nil {
		t.Error("an unchanged file is told as changed")
	}
	theirs := func(text string) {
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	theirs("theirs, longer than before\n")
	changed := d.Changed()
	if changed == nil {
		t.Fatal("the change is not noticed")
	}
	var told *store.Changed
	if _, err := d.Save([]byte("mine")); !errors.As(err, &told) {
		t.Fatalf("saved over theirs: %v", err)
	}
	theirs("theirs again, longer still\n")
	if _, err := d.Overwrite([]byte("mine"), changed); !errors.As(err, &told) {
		t.Fatalf("what changed since the question was asked is overwritten: %v", err)
	}
	bad := errors.New("not to be understood")
	if err := d.Reread(func([]byte) error { return bad }); err != bad || d.Changed() == nil {
		t.Fatalf("theirs can't be taken, and counts all the same: %v", err)
	}
	var data []byte
	if err := d.Reread(func(read []byte) error { data = read; return nil }); err != nil || string(data) != "theirs again, longer still\n" || d.Changed() != nil {
		t.Fatalf("taking theirs: %q, %v", data, err)
	}
	theirs("third\n")
	if _, err := d.Overwrite([]byte("mine"), d.Changed()); err != nil || content(t, path) != "mine" || content(t, store.BackupName(path)) != "third\n" {
		t.Fatalf("keeping mine: %v", err)
	}
}

func TestRestoringWorkThatWasLeft(t *testing.T) {
	state := t.TempDir()
	path, _ := project(t, older)
	crashed, _, err := store.Open(desk(state, ended(t, "crashed")), path)
	if err != nil {
		t.Fatal(err)
	}
	note(t, crashed, "unsaved")
	// The window is gone here without Close.
	left := leftovers(t, state)
	if len(left) != 1 {
		t.Fatalf("%d are offered", len(left))
	}
	d, err := store.Restore(desk(state, me("next")), left[0])
	if err != nil || !d.Locked() || d.Path() != path {
		t.Fatalf("%v, locked %v", err, d.Locked())
	}
	defer d.Close()
	if err := left[0].Discard(); err != nil {
		t.Fatal(err)
	}
	if len(names(t, state)) != 1 {
		t.Errorf("the restored work has no journal of its own: %v", names(t, state))
	}
	if _, err := d.Save(left[0].Data); err != nil || content(t, path) != "unsaved" || content(t, store.BackupName(path)) != older {
		t.Errorf("%v", err)
	}
}

// stuck is a file system on a network that is gone: it answers when it is back.
type stuck struct {
	store.OS
	back chan bool
}

func (s *stuck) Stat(name string) (fs.FileInfo, error) {
	if s.back != nil {
		<-s.back
	}
	return s.OS.Stat(name)
}

func TestALostNetworkFolderDoesNotStopTheWindow(t *testing.T) {
	path, _ := project(t, older)
	sys, c := &stuck{}, newClock()
	o := desk(t.TempDir(), me("network"))
	o.FS, o.Journal.After = sys, c.After
	d, _, err := store.Open(o, path)
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(newer), 0o644); err != nil {
		t.Fatal(err)
	}
	sys.back = make(chan bool)
	for range 3 { // asked again and again, only one look waits
		go func() { c.after <- start }()
		if d.Changed() != nil {
			t.Fatal("something is told while nothing can be known")
		}
	}
	close(sys.back)
	if d.Changed() == nil {
		t.Error("the change is not noticed when the folder is back")
	}
	if err := d.Close(); err != nil {
		t.Error(err)
	}
}

// The next start may be in another folder.
func TestTheJournalKnowsTheWholePath(t *testing.T) {
	path, _ := project(t, older)
	t.Chdir(filepath.Dir(path))
	state := t.TempDir()
	d, _, err := store.Open(desk(state, ended(t, "relative")), filepath.Base(path))
	if err != nil {
		t.Fatal(err)
	}
	note(t, d, "unsaved")
	if left := leftovers(t, state); len(left) != 1 || left[0].Path != path {
		t.Errorf("offered are %v", left)
	}
	if _, err := d.SaveAs("other.yaml", []byte("x"), false); err != nil || d.Path() != filepath.Join(filepath.Dir(path), "other.yaml") {
		t.Errorf("%q, %v", d.Path(), err)
	}
}
