package main

import (
	"frontlay/model"
	"frontlay/model/disk"
	"frontlay/model/yamlfile"
)

// windowFiles opens and saves projects for the window. It knows the state of
// each file when it was read or written last, so that what another program has
// written since is noticed before it is overwritten.
type windowFiles struct {
	known map[string]disk.Stamp
}

// Demo reads the demo project.
func (w *windowFiles) Demo() (*yamlfile.File, error) { return openDemo() }

// Open reads a project.
func (w *windowFiles) Open(path string) (*yamlfile.File, error) {
	f, stamp, err := openStamped(path)
	if err == nil {
		w.known[path] = stamp
	}
	return f, err
}

// Save writes a project. The error is a *disk.Changed where another program has
// changed the file since it was opened or saved here.
func (w *windowFiles) Save(path string, f *yamlfile.File, p *model.Project) error {
	data, err := f.Write(p)
	if err != nil {
		return err
	}
	known, ok := w.known[path]
	if !ok { // a name just chosen: what is there now may go
		if known, err = disk.StampOf(disk.OS{}, path, disk.Stamp{}); err != nil {
			return err
		}
	}
	saved, err := disk.Save(disk.OS{}, path, data, known)
	if err == nil {
		w.known[path] = saved.Stamp
	}
	return err
}
