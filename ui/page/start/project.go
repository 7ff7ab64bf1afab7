package start

import (
	"io/fs"

	"frontlay/assets"
	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/yamlfile"
)

// Project is the project to begin with, the one that the command new writes.
func Project() *model.Project {
	f, err := yamlfile.Read("new.yaml", assets.NewCabinet(), sample, check.Limits())
	if err != nil {
		panic("start: " + err.Error()) // a test reads it
	}
	return f.Project
}

// sample finds a hardware sheet among those that ship.
func sample(name string) (string, []byte, error) {
	data, ok := assets.Sheet(name)
	if !ok {
		return name, nil, fs.ErrNotExist
	}
	return name, data, nil
}
