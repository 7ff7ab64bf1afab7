package ui

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// pathOf is the whole path that a typed folder and name stand for, or what is
// wrong with them. The name can hold folders of its own, from the typed folder on
// or from the root, and “~” is the home folder in both. Where the name has not
// the extension it gets it.
func (w *window) pathOf(folder, name, ext string) (path, trouble string) {
	name, folder = strings.TrimSpace(name), fromHome(strings.TrimSpace(folder))
	last := filepath.Base(filepath.FromSlash(name))
	if name == "" || strings.ContainsRune(name, 0) || os.IsPathSeparator(name[len(name)-1]) || last == "." || last == ".." || last == "~" {
		return "", w.text("Write a name for the file.")
	}
	if path = fromHome(name); !filepath.IsAbs(path) {
		if folder == "" {
			return "", w.text("Write the folder for the file, or choose one.")
		}
		path = filepath.Join(folder, path)
	}
	path, err := filepath.Abs(path)
	if err != nil {
		return "", w.say().Say(messageOf(err))
	}
	if !strings.EqualFold(filepath.Ext(path), ext) && !(ext == ".yaml" && strings.EqualFold(filepath.Ext(path), ".yml")) {
		path += ext
	}
	in := filepath.Dir(path)
	info, err := os.Stat(in)
	if err == nil && !info.IsDir() {
		return "", w.text("“%v” is a file, not a folder.", in)
	}
	if err != nil {
		return "", w.folderTrouble(in, err)
	}
	if info, err := os.Stat(path); err == nil && info.IsDir() {
		return "", w.text("“%v” is a folder. Write a name for the file.", path)
	}
	return path, ""
}

// fromHome puts the home folder in the place of a leading “~”.
func fromHome(path string) string {
	rest, tilde := strings.CutPrefix(path, "~")
	if !tilde || rest != "" && !os.IsPathSeparator(rest[0]) {
		return path
	}
	home, err := os.UserHomeDir()
	if err != nil {
		return path
	}
	return filepath.Join(home, rest)
}

// folderTrouble tells why a folder can't be used.
func (w *window) folderTrouble(folder string, err error) string {
	switch {
	case errors.Is(err, fs.ErrPermission):
		return w.text("The folder “%v” is closed to you: there is no permission. Choose another one.", folder)
	case errors.Is(err, fs.ErrNotExist):
		return w.text("The folder “%v” is not there. Choose another one.", folder)
	default:
		return w.text("The folder “%v” can't be used: %v", folder, w.say().Say(messageOf(err)))
	}
}

// cantWriteInto tells why nothing can be written into a folder, empty where it
// can. Only trying tells that for sure.
func (w *window) cantWriteInto(folder string) string {
	f, err := os.CreateTemp(folder, ".frontlay-*")
	if err != nil {
		return w.folderTrouble(folder, err)
	}
	_ = f.Close() // nothing was written
	if err := os.Remove(f.Name()); err != nil {
		return w.folderTrouble(folder, err)
	}
	return ""
}
