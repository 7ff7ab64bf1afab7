package store_test

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"strconv"
	"testing"

	"frontlay/assets"
	"frontlay/layout/check"
	"frontlay/model/length"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
)

// A long day: many edits, each noted, some saved, some under another name, some
// files changed underneath; FRONTLAY_SOAK tells how many, the suite makes fewer.
// Memory and open files stay as they are.
func TestALongDayLeaksNothing(t *testing.T) {
	edits := 3000
	if n, err := strconv.Atoi(os.Getenv("FRONTLAY_SOAK")); err == nil {
		edits = n
	}
	random := rand.New(rand.NewPCG(1, 2))
	folder := t.TempDir()
	path := filepath.Join(folder, "bench.yaml")
	if err := os.WriteFile(path, assets.Demo(), 0o644); err != nil {
		t.Fatal(err)
	}
	d, data, err := store.Open(desk(filepath.Join(folder, "state"), me("long")), path)
	if err != nil {
		t.Fatal(err)
	}
	f, err := yamlfile.Read(path, data, sample, check.Limits())
	if err != nil {
		t.Fatal(err)
	}
	p := f.Project
	var heap, open [2]int
	for n := range edits {
		p = p.Clone()
		c := &p.Cabinets[random.IntN(len(p.Cabinets))]
		front := &c.Bays[0].Fronts[random.IntN(len(c.Bays[0].Fronts))]
		front.Name, c.Width = fmt.Sprint("edit ", n), length.MM(int64(500+random.IntN(400)))
		q := p
		d.Note(p.Title, func() ([]byte, error) { return f.Draft(q) })
		switch {
		case n%50 == 0:
			data, err := f.Write(p)
			if err == nil {
				_, err = d.Save(data)
			}
			if err != nil {
				t.Fatal(err)
			}
		case n%97 == 0:
			if _, err := d.SaveAs(filepath.Join(folder, fmt.Sprint(n%3, ".yaml")), assets.Demo(), false); err != nil {
				t.Fatal(err)
			}
		case n%31 == 0:
			if err := d.Flush(); err != nil {
				t.Fatal(err)
			}
		}
		switch n {
		case edits / 3:
			heap[0], open[0] = heapAndFiles(t)
		case edits - 1:
			heap[1], open[1] = heapAndFiles(t)
		}
	}
	if err := d.Close(); err != nil {
		t.Fatal(err)
	}
	t.Logf("after a third of %d edits: %d KB, %d open files; at the end: %d KB, %d open files", edits, heap[0]>>10, open[0], heap[1]>>10, open[1])
	if heap[1] > heap[0]+(1<<20) || open[1] > open[0] {
		t.Errorf("memory grew from %d to %d bytes, open files from %d to %d", heap[0], heap[1], open[0], open[1])
	}
}

// heapAndFiles gives the bytes in use after collection, and the descriptors
// where the system tells them.
func heapAndFiles(t *testing.T) (bytes, files int) {
	t.Helper()
	runtime.GC()
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	if entries, err := os.ReadDir("/proc/self/fd"); err == nil {
		files = len(entries)
	}
	return int(m.HeapAlloc), files
}
