package store_test

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"syscall"
	"testing"
	"time"

	"frontlay/model/store"
)

// clock gives journals a time that the test moves on.
type clock struct{ after chan time.Time }

func newClock() *clock { return &clock{make(chan time.Time)} }

func (c *clock) After(d time.Duration) <-chan time.Time {
	if d > 1500*time.Millisecond {
		panic("the journal waits too long to be on the disk within two seconds")
	}
	return c.after
}

func options(dir string, o store.Owner, c *clock) store.JournalOptions {
	n := 0
	return store.JournalOptions{FS: store.OS{}, Dir: dir, Owner: o, After: c.After,
		Now: func() time.Time { n++; return start.Add(time.Duration(n) * time.Second) }}
}

func entry(text string) store.Entry {
	return store.Entry{Path: "/studio/bench.yaml", Title: "Glaze bench", Data: func() ([]byte, error) { return []byte(text), nil }}
}

func leftovers(t *testing.T, dir string) []*store.Leftover {
	t.Helper()
	list, err := store.Leftovers(store.OS{}, dir, me("").Host)
	if err != nil {
		t.Fatal(err)
	}
	return list
}

func TestUnsavedWorkIsOfferedAfterACrash(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "state", "journal")
	if list := leftovers(t, dir); list != nil {
		t.Fatalf("before anything was written: %v", list)
	}
	c := newClock()
	j := store.NewJournal(options(dir, ended(t, "crashed"), c))
	for i := range 5 {
		j.Note(entry(fmt.Sprintf("edit %d", i)))
	}
	c.after <- start
	j.Note(entry("edit last"))
	c.after <- start // taken only when the first was written and the second noted
	j.Stop()
	list := leftovers(t, dir)
	if len(list) != 1 {
		t.Fatalf("%d are offered", len(list))
	}
	got := list[0]
	// The stop may come between the delay and the writing of the last edit.
	if text := string(got.Data); text != "edit last" && text != "edit 4" || got.Title != "Glaze bench" || got.Path != "/studio/bench.yaml" || got.Life != store.Ended {
		t.Errorf("offered is %q, %+v", got.Data, got.Header)
	}
	if err := got.Discard(); err != nil || len(leftovers(t, dir)) != 0 || len(names(t, dir)) != 0 {
		t.Errorf("after letting it go: %v, %v", err, names(t, dir))
	}
}

func TestNothingIsOfferedOfWindowsThatRunOrHaveSaved(t *testing.T) {
	dir := t.TempDir()
	running := store.NewJournal(options(dir, me("running"), newClock()))
	defer running.Stop()
	running.Note(entry("of a running window"))
	saved := store.NewJournal(options(dir, ended(t, "saved"), newClock()))
	defer saved.Stop()
	saved.Note(entry("saved since"))
	for _, j := range []*store.Journal{running, saved} {
		if err := j.Flush(); err != nil {
			t.Fatal(err)
		}
	}
	if list := leftovers(t, dir); len(list) != 1 || string(list[0].Data) != "saved since" {
		t.Fatalf("before it was saved: %d", len(list))
	}
	saved.Note(entry("noted, not yet written"))
	if err := saved.Clear(); err != nil {
		t.Fatal(err)
	}
	if err := saved.Flush(); err != nil || len(leftovers(t, dir)) != 0 {
		t.Errorf("%v, %d are offered", err, len(leftovers(t, dir)))
	}
}

func TestWorkOfAnotherMachineIsOfferedAsSuch(t *testing.T) {
	dir := t.TempDir()
	far := me("far")
	far.Host = "kiln-room"
	j := store.NewJournal(options(dir, far, newClock()))
	defer j.Stop()
	j.Note(entry("far"))
	if err := j.Flush(); err != nil {
		t.Fatal(err)
	}
	if list := leftovers(t, dir); len(list) != 1 || list[0].Life != store.Unknown {
		t.Errorf("%v", list)
	}
}

// Each step of writing the journal fails once; the state before is offered, or
// the new one, and it is written the next time.
func TestAJournalThatFailsKeepsTheStateBefore(t *testing.T) {
	gone := ended(t, "gone")
	for n := range 12 {
		dir := t.TempDir()
		sys := sound()
		o := options(dir, gone, newClock())
		o.FS = sys
		j := store.NewJournal(o)
		j.Note(entry("before"))
		if err := j.Flush(); err != nil {
			t.Fatal(err)
		}
		steps := len(sys.steps)
		sys.fail = func(i int, _ string) error { return only(i == steps+n, syscall.ENOSPC) }
		j.Note(entry("after"))
		err := j.Flush()
		if err != nil && !errors.Is(err, store.ErrFull) {
			t.Errorf("step %d: %v", n, err)
		}
		list := leftovers(t, dir)
		if len(list) != 1 || string(list[0].Data) != "before" && string(list[0].Data) != "after" {
			t.Fatalf("step %d: offered is %v", n, list)
		}
		if err := j.Flush(); err != nil {
			t.Fatal(err)
		}
		if list := leftovers(t, dir); len(list) != 1 || string(list[0].Data) != "after" {
			t.Fatalf("step %d: offered at last is %v", n, list)
		}
		j.Stop()
	}
}

func TestJournalsThatAreNotWhole(t *testing.T) {
	dir := t.TempDir()
	j := store.NewJournal(options(dir, ended(t, "whole"), newClock()))
	j.Note(entry("the body of the journal"))
	if err := j.Flush(); err != nil {
		t.Fatal(err)
	}
	j.Stop()
	whole, err := os.ReadFile(filepath.Join(dir, "whole.journal"))
	if err != nil {
		t.Fatal(err)
	}
	if _, body, err := store.DecodeJournal(whole); err != nil || string(body) != "the body of the journal" {
		t.Fatalf("%q, %v", body, err)
	}
	for n := range whole {
		if _, _, err := store.DecodeJournal(whole[:n]); err == nil {
			t.Fatalf("cut to %d of %d bytes it is taken for whole", n, len(whole))
		}
		flipped := bytes.Clone(whole)
		flipped[n] ^= 0x20
		if _, body, err := store.DecodeJournal(flipped); err == nil && string(body) != "the body of the journal" {
			t.Fatalf("with byte %d changed its body is %q", n, body)
		}
	}
	if err := os.WriteFile(filepath.Join(dir, "torn.journal"), whole[:len(whole)-1], 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, "half.journal.new"), whole[:40], 0o644); err != nil {
		t.Fatal(err)
	}
	if list := leftovers(t, dir); len(list) != 1 {
		t.Errorf("%d are offered", len(list))
	}
	if _, err := os.Stat(filepath.Join(dir, "torn.journal.broken")); err != nil {
		t.Errorf("the torn one is not set aside: %v", names(t, dir))
	}
}

// A journal that was written but not yet renamed is newer work than the other.
func TestTheNewestStateOfASessionIsOffered(t *testing.T) {
	dir := t.TempDir()
	o := options(dir, ended(t, "two"), newClock())
	j := store.NewJournal(o)
	defer j.Stop()
	j.Note(entry("old"))
	if err := j.Flush(); err != nil {
		t.Fatal(err)
	}
	name := filepath.Join(dir, "two.journal")
	old, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	j.Note(entry("new"))
	if err := j.Flush(); err != nil {
		t.Fatal(err)
	}
	if err := errors.Join(os.Rename(name, name+".new"), os.WriteFile(name, old, 0o600)); err != nil {
		t.Fatal(err)
	}
	list := leftovers(t, dir)
	if len(list) != 1 || string(list[0].Data) != "new" {
		t.Fatalf("%v", list)
	}
	if err := list[0].Discard(); err != nil || len(names(t, dir)) != 0 {
		t.Errorf("%v, %v", err, names(t, dir))
	}
}

// The program ends between the save and the clearing of the journal.
func TestWorkThatIsInItsFileIsNotOffered(t *testing.T) {
	path, _ := project(t, older)
	dir := t.TempDir()
	j := store.NewJournal(options(dir, ended(t, "late"), newClock()))
	defer j.Stop()
	for _, c := range []struct {
		text  string
		offer int
	}{{newer, 1}, {older, 0}} {
		e := entry(c.text)
		e.Path = path
		j.Note(e)
		if err := j.Flush(); err != nil {
			t.Fatal(err)
		}
		if list := leftovers(t, dir); len(list) != c.offer {
			t.Errorf("with %q in the journal and %q in the file, %d are offered", c.text, older, len(list))
		}
	}
	if len(names(t, dir)) != 0 {
		t.Errorf("left over: %v", names(t, dir))
	}
}

func FuzzJournal(f *testing.F) {
	f.Add([]byte("frontlay-journal 1\n{}\n"))
	f.Add([]byte("frontlay-journal 1\n{\"sha256\":\"e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855\",\"owner\":{\"session\":\"x\"}}\n"))
	f.Add([]byte("frontlay-journal 2\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		h, body, err := store.DecodeJournal(data)
		if err == nil && (h.Owner.Session == "" || len(body) > len(data)) {
			t.Fatalf("%q is taken for a journal of %+v", data, h)
		}
	})
}
