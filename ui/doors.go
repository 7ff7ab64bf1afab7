package ui

import (
	"path/filepath"

	"frontlay/assets"
	"frontlay/ui/ask"
	"frontlay/ui/files"
	"frontlay/ui/page/start"
	"frontlay/ui/work"
)

// doors are the ways into work that is there already: what was opened lately, and what ships.
func doors(a *ask.Asker, all *files.Files, k *work.Keeper, open func()) []start.Door {
	doors := []start.Door{{Heading: a.Text("Open"), Label: a.Text("Open a project…"), Open: open}}
	for i, path := range all.Recent() {
		if i == mostPictures {
			break
		}
		d := start.Door{Label: a.Text("%v can't be opened any more.", filepath.Base(path))}
		if f, err := k.Look(path); err == nil {
			d = start.Door{Label: f.Project.Title + " – " + filepath.Base(path), Project: f.Project, Open: func() { all.Open(path) }}
		}
		if i == 0 {
			d.Heading = a.Text("Recent projects")
		}
		doors = append(doors, d)
	}
	for i, name := range assets.Examples() {
		f, err := k.Example(name)
		if err != nil {
			continue
		}
		d := start.Door{Label: f.Project.Title, Project: f.Project, Open: func() { all.Example(name) }}
		if i == 0 {
			d.Heading = a.Text("Look at an example")
		}
		doors = append(doors, d)
	}
	return doors
}
