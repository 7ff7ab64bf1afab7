package store

import (
	"errors"
	"io/fs"
	"path/filepath"
	"strings"

	"frontlay/model/message"
)

// Sheets finds hardware sheets by what a project calls them. A project may come
// from anybody: it can name the samples, the user's own sheets, and files in its
// own folder and below. Whatever lies elsewhere, also by a link or by .., is
// read only where the user allows it.
type Sheets struct {
	FS      FS
	Samples func(name string) ([]byte, bool)
	Project string // folder of the project; empty: it has none yet
	User    string // folder of the user's own sheets; may be missing
	Limit   int64  // the largest sheet, in bytes
	// Allowed tells whether the user has allowed a file elsewhere; nil: none.
	Allowed func(path string) bool
}

// Outside is the error for a sheet that the user has to allow.
type Outside struct{ Path string }

// Error says what is wrong and what can be done.
func (o *Outside) Error() string { return o.Say(message.Language{}) }

// Say is Error in another language.
func (o *Outside) Say(l message.Language) string { return l.Say(o.told()) }

// As lets errors.As find a message.Message in the error.
func (o *Outside) As(target any) bool { return asMessage(target, o.told()) }

func (o *Outside) told() message.Message {
	return message.New("%v lies outside the project's folder; allow it to be read, or copy the sheet into the project's folder", o.Path)
}

// Find gives the bytes of a sheet and the name to call it by. The error is
// *Outside where the user has to be asked, otherwise *Error.
func (s Sheets) Find(source string) (name string, data []byte, err error) {
	if s.Samples != nil {
		if data, ok := s.Samples(source); ok {
			return source, data, nil
		}
	}
	path := source
	if !filepath.IsAbs(source) {
		if path = s.beside(source); path == "" {
			return source, nil, &Error{Err: fs.ErrNotExist,
				Message: message.New("there is no sample of that name, and the project has no folder yet to look in"),
				Advice:  message.New("save the project first")}
		}
	}
	real, err := s.FS.EvalSymlinks(path)
	if err != nil {
		if errors.Is(err, fs.ErrNotExist) && !strings.ContainsAny(source, `/\.`) {
			return source, nil, &Error{Err: err, Message: message.New("there is neither a sample nor a file of that name")}
		}
		return source, nil, readError(path, err)
	}
	if !s.inside(real, s.Project) && !s.inside(real, s.User) && (s.Allowed == nil || !s.Allowed(real)) {
		return source, nil, &Outside{Path: real}
	}
	data, _, err = Read(s.FS, real, s.Limit)
	return path, data, err
}

// beside is the path of a source that is no sample: in the project's folder, or
// else the user's own. It may be missing there; empty tells that there is nowhere
// to look.
func (s Sheets) beside(source string) string {
	own := s.ofUser(source)
	if s.Project == "" {
		return own
	}
	path := filepath.Join(s.Project, source)
	if _, err := s.FS.Lstat(path); err != nil && own != "" {
		return own
	}
	return path
}

// ofUser is the path of one of the user's own sheets, named with or without
// .yaml; empty where there is none.
func (s Sheets) ofUser(source string) string {
	if s.User == "" || source != filepath.Base(source) || source == "." || source == ".." {
		return ""
	}
	for _, name := range []string{source, source + ".yaml"} {
		path := filepath.Join(s.User, name)
		if info, err := s.FS.Stat(path); err == nil && info.Mode().IsRegular() {
			return path
		}
	}
	return ""
}

// inside tells whether a path without links lies in a folder or below it.
func (s Sheets) inside(real, folder string) bool {
	if folder == "" {
		return false
	}
	folder, err := s.FS.EvalSymlinks(folder)
	if err != nil {
		return false
	}
	if folder, err = filepath.Abs(folder); err != nil {
		return false
	}
	if real, err = filepath.Abs(real); err != nil {
		return false
	}
	rel, err := filepath.Rel(folder, real)
	return err == nil && filepath.IsLocal(rel)
}
