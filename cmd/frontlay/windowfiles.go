package main

import (
	"log/slog"
	"path/filepath"
	"sync"

	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
)

// windowFiles opens and saves projects for the window, and keeps its work safe
// (see keeper.go).
type windowFiles struct {
	home string // the program's own folder
	log  *slog.Logger

	mu      sync.Mutex
	works   map[*keptWork]bool // what is open, for a program that ends unforeseen
	allowed map[string]bool    // sheets outside of a project's folder that the user allows
}

func newWindowFiles(home string, log *slog.Logger) *windowFiles {
	return &windowFiles{home: home, log: log, works: map[*keptWork]bool{}, allowed: map[string]bool{}}
}

// Demo reads the demo project.
func (w *windowFiles) Demo() (*yamlfile.File, error) { return openDemo() }

// Open reads a project to look at.
func (w *windowFiles) Open(path string) (*yamlfile.File, error) {
	data, err := readFile(path)
	if err != nil {
		return nil, err
	}
	return yamlfile.Read(path, data, w.sheets(filepath.Dir(path)), check.Limits())
}

// Save writes a project to a path, whatever is there.
func (w *windowFiles) Save(path string, f *yamlfile.File, p *model.Project) error {
	data, err := f.Write(p)
	if err != nil {
		return err
	}
	now, err := store.StampOf(store.OS{}, path, store.Stamp{})
	if err != nil {
		return err
	}
	_, err = store.Save(store.OS{}, path, data, now)
	return err
}

// Allow lets projects read a hardware sheet outside of their folder.
func (w *windowFiles) Allow(path string) {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.allowed[path] = true
}

func (w *windowFiles) sheets(folder string) yamlfile.SheetSource {
	return shelf(folder, func(path string) bool {
		w.mu.Lock()
		defer w.mu.Unlock()
		return w.allowed[path]
	})
}

func (w *windowFiles) open(k *keptWork) {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.works[k] = true
}

func (w *windowFiles) closed(k *keptWork) {
	w.mu.Lock()
	defer w.mu.Unlock()
	delete(w.works, k)
}

// flush puts all noted work on the disk at once.
func (w *windowFiles) flush() {
	w.mu.Lock()
	defer w.mu.Unlock()
	for k := range w.works {
		if err := k.Flush(); err != nil {
			w.log.Error("flush", "error", err)
		}
	}
}
