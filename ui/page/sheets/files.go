package sheets

import (
	"errors"
	"path/filepath"
	"strings"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
	"frontlay/ui/hardware"
)

// create makes a sheet to fill in, which is called what the person calls it, and
// goes to its first figure.
func (h *Page) create() {
	h.leaveSheet(func() {
		s := hardware.Blank(h.host.Ask().Say())
		s.Name = ""
		h.add(h.text("New hardware sheet"), "new", s, nil)
	})
}

// duplicate makes a copy of the sheet that is shown.
func (h *Page) duplicate() {
	h.leaveSheet(func() {
		name := h.name
		if name == "" {
			name = "main"
		}
		h.add(h.text("Copy of the hardware sheet"), name, h.Form.Sheet().Clone(), nil)
	})
}

// add brings a sheet into the project under a name that the person chooses, and
// shows it.
func (h *Page) add(title, name string, s *model.HardwareSheet, f *yamlfile.SheetFile) {
	h.host.Ask().Name(title, h.text("Name in the project"), h.text("Add to the project"), h.free(name), func(name string) error {
		s, blank := s.Clone(), s.Name == ""
		if blank {
			s.Name = name
		}
		e := edit.UseHardware{Use: model.HardwareUse{Name: name, Sheet: s}}
		with, err := e.Apply(h.host.Session().Committed())
		if err != nil {
			return err
		}
		n := len(h.uses())
		if len(with.Hardware) == n { // it would take the place of one
			return message.New("The project has a hardware sheet “%v” already.", name)
		}
		if err := h.host.Session().Do(e); err != nil {
			return err
		}
		name = h.uses()[n].Name // without signs that can't be seen
		if f != nil {
			h.files[name] = f
		}
		h.fresh[name] = true
		h.showNamed(name)
		if blank {
			h.Form.Begin()
		}
		h.tell(message.New("“%v” is in the project. No bay uses it yet.", name))
		return nil
	})
}

// read asks for a file of a sheet and brings it into the project.
func (h *Page) read() {
	h.leaveSheet(func() {
		h.host.Ask().File([]string{".yaml", ".yml"}, func(path string) {
			if err := h.readFile(path); err != nil {
				h.host.Ask().Complain(err)
			}
		})
	})
}

// readFile reads a sheet and asks by which name the project shall know it. Its
// comments are kept for writing it back.
func (h *Page) readFile(path string) error {
	data, err := h.disk.ReadFile(path)
	if err != nil {
		return err
	}
	f, err := yamlfile.ReadSheetFile(filepath.Base(path), data)
	if err != nil {
		return h.said(err)
	}
	base := filepath.Base(path)
	h.add(h.text("Hardware sheet from %v", base), strings.TrimSuffix(base, filepath.Ext(base)), f.Sheet, f)
	return nil
}

// write asks for a file and writes the sheet that is shown to it.
func (h *Page) write() {
	h.Form.Take()
	name := h.name
	if name == "" {
		name = "hardware"
	}
	h.host.Ask().Path(h.text("Write the hardware sheet"), strings.ReplaceAll(name, " ", "-"), ".yaml", func(path string) {
		if err := h.writeFile(path); err != nil {
			h.host.Ask().Complain(err)
			return
		}
		h.tell(message.New("Written to %v.", filepath.Base(path)))
	})
}

// writeFile writes the sheet with the comments of the file that it came from, or
// with ones that say where on a maker's document each figure stands.
func (h *Page) writeFile(path string) error {
	if path == h.host.Ask().Own() {
		return message.New("“%v” is the project's own file. Choose another name for the sheet.", filepath.Base(path))
	}
	f := h.files[h.name]
	if f == nil {
		f = yamlfile.NewSheet(h.Form.Sheet())
	}
	data, err := f.Write(h.Form.Sheet())
	if err != nil {
		return h.said(err)
	}
	return h.disk.WriteFile(path, data)
}

// said writes the problems of a sheet in the language of the window.
func (h *Page) said(err error) error {
	var all yamlfile.Problems
	if errors.As(err, &all) {
		return message.New("%v", all.Say(h.host.Ask().Say()))
	}
	return err
}
