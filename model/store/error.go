package store

import (
	"errors"
	"io/fs"

	"frontlay/model/message"
)

// Error is what the user is told when a file can't be read or written. Err is
// the cause, for errors.Is.
type Error struct {
	Message message.Message // what is wrong, with the file's name
	Advice  message.Message // what to do
	Err     error
}

// Error is the message and the advice in English.
func (e *Error) Error() string { return e.Say(message.Language{}) }

// Say is Error in another language.
func (e *Error) Say(l message.Language) string { return l.Say(e.told()) }

// As lets errors.As find a message.Message in the error.
func (e *Error) As(target any) bool { return asMessage(target, e.told()) }

func (e *Error) told() message.Message {
	if e.Advice.Empty() {
		return e.Message
	}
	return message.New("%v; %v", e.Message, e.Advice)
}

// asMessage puts a message where errors.As asks for one.
func asMessage(target any, m message.Message) bool {
	to, ok := target.(*message.Message)
	if ok {
		*to = m
	}
	return ok
}

// Unwrap gives the cause.
func (e *Error) Unwrap() error { return e.Err }

// Causes that are told in words of their own, beside those of io/fs.
var (
	// ErrTooLarge is matched where a file is larger than allowed.
	ErrTooLarge = errors.New("the file is too large")
	// ErrNotRegular is matched where a path is a folder, a device or a pipe.
	ErrNotRegular = errors.New("not a regular file")
	// ErrReadOnly is matched where a file is marked as not to be written.
	ErrReadOnly = errors.New("the file is read-only")
	// ErrFull is matched where there is no room on the disk or in the quota.
	ErrFull = errors.New("no room on the disk")
)

var (
	keptInWindow = message.New("your work is still in the window: save it in another place")
	checkPath    = message.New("check the name and the folder")
)

func readError(path string, err error) error {
	e := &Error{Err: err, Advice: checkPath}
	switch {
	case errors.Is(err, fs.ErrNotExist):
		e.Message = message.New("%v is not there", path)
	case errors.Is(err, fs.ErrPermission):
		e.Message, e.Advice = message.New("%v may not be read", path), message.New("ask its owner for the right to read it")
	case errors.Is(err, ErrTooLarge):
		e.Message, e.Advice = message.New("%v is too large", path), message.New("check that it is the right file")
	case errors.Is(err, ErrNotRegular):
		e.Message, e.Advice = message.New("%v is a folder or a device, not a file", path), message.New("choose a file")
	default:
		e.Message, e.Advice = message.New("%v can't be read: %v", path, reason(err)), message.New("check that the disk or the network folder is still there")
	}
	return e
}

// saveError says why nothing was saved. The old file is whole then.
func saveError(path string, err error) error {
	e := &Error{Err: err, Advice: keptInWindow}
	switch {
	case errors.Is(err, ErrReadOnly):
		e.Message = message.New("%v is read-only and was not saved", path)
	case errors.Is(err, fs.ErrPermission) || readOnlySystem(err):
		e.Message = message.New("%v was not saved: you may not write in its folder", path)
	case full(err):
		e.Err = errors.Join(ErrFull, err)
		e.Message, e.Advice = message.New("%v was not saved: the disk is full", path),
			message.New("make room and save again, or save in another place; your work is still in the window, and the file is as it was")
	case errors.Is(err, fs.ErrNotExist):
		e.Message = message.New("%v was not saved: its folder is not there any more", path)
	case errors.Is(err, ErrNotRegular):
		e.Message, e.Advice = message.New("%v is a folder or a device and was not written", path), message.New("choose another name")
	default:
		e.Message = message.New("%v was not saved: %v", path, reason(err))
	}
	return e
}

// reason is the cause without the operation and the path, which the message
// tells already.
func reason(err error) string {
	for {
		var p *fs.PathError
		if !errors.As(err, &p) {
			return err.Error()
		}
		err = p.Err
	}
}
