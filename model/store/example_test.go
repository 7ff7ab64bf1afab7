package store_test

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"time"

	"frontlay/model/store"
)

// How a window keeps its work: what it opens is locked and journalled, and what
// can go wrong comes as an error that is a choice for the user.
func Example() {
	folder, err := os.MkdirTemp("", "frontlay")
	if err != nil {
		panic(err)
	}
	defer os.RemoveAll(folder)
	path, state := filepath.Join(folder, "bench.yaml"), filepath.Join(folder, "state")
	_ = os.WriteFile(path, []byte("title: Bench\n"), 0o644)

	me := store.ThisProcess("window-1", time.Now())
	desk := store.Options{FS: store.OS{}, Limit: 4 << 20, Journal: store.JournalOptions{
		Dir: state, Owner: me, After: time.After, Now: time.Now,
		Failed: func(err error) { fmt.Println("tell the user once:", err) },
	}}

	// At the start: what is left of a run that crashed?
	left, _ := store.Leftovers(store.OS{}, state, me.Host)
	fmt.Println("to offer:", len(left))

	doc, data, err := store.Open(desk, path)
	var held *store.Held
	if errors.As(err, &held) {
		fmt.Println("look only, save elsewhere, or take the lock:", held)
	}
	fmt.Printf("%s", data)

	// After every edit: on the disk within two seconds.
	doc.Note("Bench", func() ([]byte, error) { return []byte("title: Glaze bench\n"), nil })

	// Another program writes the file meanwhile.
	_ = os.WriteFile(path, []byte("title: Theirs\n"), 0o644)
	_, err = doc.Save([]byte("title: Glaze bench\n"))
	var changed *store.Changed
	if errors.As(err, &changed) {
		fmt.Println("keep mine, take theirs, or save beside?")
		_, err = doc.Overwrite([]byte("title: Glaze bench\n"), changed)
	}
	fmt.Println("saved:", err == nil)

	theirs, _ := os.ReadFile(store.BackupName(path))
	fmt.Printf("the version before: %s", theirs)
	fmt.Println("closed:", doc.Close() == nil)
	// Output:
	// to offer: 0
	// title: Bench
	// keep mine, take theirs, or save beside?
	// saved: true
	// the version before: title: Theirs
	// closed: true
}
