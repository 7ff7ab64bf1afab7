package disk_test

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"time"

	"frontlay/model/disk"
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

	me := disk.ThisProcess("window-1", time.Now())
	desk := disk.Desk{FS: disk.OS{}, Limit: 4 << 20, Journal: disk.JournalOptions{
		Dir: state, Owner: me, After: time.After, Now: time.Now,
		Failed: func(err error) { fmt.Println("tell the user once:", err) },
	}}

	// At the start: what is left of a run that crashed?
	left, _ := disk.Leftovers(disk.OS{}, state, me.Host)
	fmt.Println("to offer:", len(left))

	doc, data, err := disk.Open(desk, path)
	var held *disk.Held
	if errors.As(err, &held) {
		fmt.Println("look only, save elsewhere, or take the lock:", held)
	}
	fmt.Printf("%s", data)

	// After every edit: on the disk within two seconds.
	doc.Note("Bench", func() ([]byte, error) { return []byte("title: Glaze bench\n"), nil })

	// Another program writes the file meanwhile.
	_ = os.WriteFile(path, []byte("title: Theirs\n"), 0o644)
	_, err = doc.Save([]byte("title: Glaze bench\n"))
	var changed *disk.Changed
	if errors.As(err, &changed) {
		fmt.Println("keep mine, take theirs, or save beside?")
		_, err = doc.Overwrite([]byte("title: Glaze bench\n"), changed)
	}
	fmt.Println("saved:", err == nil)

	theirs, _ := os.ReadFile(disk.BackupName(path))
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
