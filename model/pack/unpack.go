package pack

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"frontlay/model/message"
	"frontlay/model/store"
)

// What an archive may have at most: as a file, taken out, and how many files.
const (
	MaxBytes = 128 << 20
	maxOut   = 512 << 20
	maxFiles = 5000
)

// There is the error of Unpack where the folder is there already. Project is where the
// project would lie in it.
type There struct{ Folder, Project string }

// Error says so in English.
func (e *There) Error() string { return message.Language{}.Say(e.told()) }

// As lets errors.As find a message.Message in the error.
func (e *There) As(target any) bool {
	to, ok := target.(*message.Message)
	if ok {
		*to = e.told()
	}
	return ok
}

func (e *There) told() message.Message {
	return message.New("%v is there already and is left as it is", e.Folder)
}

// Folder is where an archive is taken out where nobody says: beside it, with its name.
func Folder(archive string) string {
	folder := strings.TrimSuffix(archive, filepath.Ext(archive))
	if folder == "" || strings.HasSuffix(folder, string(filepath.Separator)) {
		return archive + "-files"
	}
	return folder
}

// Free is a folder like the one that is named which is not there yet.
func Free(sys store.FS, folder string) string {
	free := folder
	for i := 2; ; i++ {
		if _, err := sys.Lstat(free); errors.Is(err, fs.ErrNotExist) {
			return free
		}
		free = folder + "-" + strconv.Itoa(i)
	}
}

// Unpack takes an archive out into a new folder and gives the path of the project in it.
// It replaces nothing: where the folder is there the error is *There. An archive that
// could write elsewhere, that has links, names that do not mean the same file everywhere,
// too many or too large files, or not one project, is refused; what goes wrong in the
// midst of it leaves nothing behind. The error is a message for the user.
func Unpack(sys store.FS, archive, folder string) (project string, err error) {
	data, _, err := store.Read(sys, archive, MaxBytes)
	if err != nil {
		return "", err
	}
	refuse := func(m message.Message) error { return message.New("%v is not opened: %v", archive, m) }
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		return "", refuse(message.New("it is no .zip, or a damaged one"))
	}
	files, m := look(z)
	if !m.Empty() {
		return "", refuse(m)
	}
	inside, m := projectIn(files)
	if !m.Empty() {
		return "", refuse(m)
	}
	project = filepath.Join(folder, filepath.FromSlash(inside))
	if _, err := sys.Lstat(folder); !errors.Is(err, fs.ErrNotExist) {
		return "", &There{folder, project}
	}
	t := &taker{sys: sys, folder: folder, left: maxOut}
	for _, f := range files {
		if err := t.take(f); err != nil {
			return "", errors.Join(refuse(message.Of(err)), t.undo())
		}
	}
	return project, nil
}

// look gives the files of an archive, or says why it is refused. What systems put beside
// files for themselves is passed over.
func look(z *zip.Reader) (files []*zip.File, m message.Message) {
	if len(z.File) > maxFiles {
		return nil, message.New("it has more than %v files", maxFiles)
	}
	seen := map[string]bool{}
	var size uint64
	for _, f := range z.File {
		name, isFolder := strings.CutSuffix(f.Name, "/")
		parts := strings.Split(name, "/")
		for _, part := range parts {
			if !plain(part) && !hidden(part) {
				return nil, message.New("the name %v in it is not safe", strconv.Quote(f.Name))
			}
		}
		switch mode := f.Mode(); {
		case mode&fs.ModeType != 0 && mode&fs.ModeType != fs.ModeDir:
			return nil, message.New("%v in it is a link or a device", strconv.Quote(f.Name))
		case isFolder || mode.IsDir() || parts[0] == "__MACOSX" || slices.ContainsFunc(parts, hidden):
			continue
		case seen[strings.ToLower(name)]:
			return nil, message.New("it has %v twice", strconv.Quote(f.Name))
		}
		seen[strings.ToLower(name)] = true
		if size += f.UncompressedSize64; f.UncompressedSize64 > maxOut || size > maxOut {
			return nil, message.New("it would take more than %v MB", maxOut>>20)
		}
		files = append(files, f)
	}
	return files, message.Message{}
}

// hidden tells a file that a system keeps for itself, such as .DS_Store; .. is none.
func hidden(part string) bool {
	return len(part) > 1 && part[0] == '.' && plain(part[1:])
}

// ours is how a project can be told in its first lines.
var ours = regexp.MustCompile(`(?m)^frontlay\s*:`)

// projectIn finds the project: the only one, of those that lie in the fewest folders.
func projectIn(files []*zip.File) (string, message.Message) {
	var found []string
	least := 0
	for _, f := range files {
		ext := strings.ToLower(path.Ext(f.Name))
		depth := strings.Count(f.Name, "/")
		if ext != ".yaml" && ext != ".yml" || len(found) > 0 && depth > least {
			continue
		}
		if head, err := headOf(f); err != nil || !ours.Match(head) {
			continue
		}
		if depth < least {
			found = nil
		}
		found, least = append(found, f.Name), depth
	}
	switch len(found) {
	case 0:
		return "", message.New("there is no project in it")
	case 1:
		return found[0], message.Message{}
	}
	return "", message.New("it has several projects: %v", strings.Join(found, ", "))
}

func headOf(f *zip.File) ([]byte, error) {
	r, err := f.Open()
	if err != nil {
		return nil, err
	}
	defer r.Close()
	return io.ReadAll(io.LimitReader(r, 64<<10))
}

// taker writes the files of an archive, and takes them back.
type taker struct {
	sys    store.FS
	folder string
	left   int64    // how many bytes may still come, whatever the archive says of itself
	made   []string // files, and the folders that were made for them before them
}

func (t *taker) take(f *zip.File) error {
	target := filepath.Join(t.folder, filepath.FromSlash(f.Name))
	if err := t.folders(filepath.Dir(target)); err != nil {
		return err
	}
	r, err := f.Open()
	if err != nil {
		return damaged(f, err)
	}
	defer r.Close()
	w, err := t.sys.OpenFile(target, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	t.made = append(t.made, target)
	n, err := io.Copy(w, io.LimitReader(r, t.left+1))
	t.left -= n
	switch err = errors.Join(err, w.Close()); {
	case err != nil:
		return damaged(f, err)
	case t.left < 0:
		return message.New("it would take more than %v MB", maxOut>>20)
	}
	return nil
}

func damaged(f *zip.File, err error) error {
	return message.New("%v: %v", f.Name, fmt.Sprint(err))
}

// folders makes a folder of the archive, and those that it lies in.
func (t *taker) folders(folder string) error {
	if _, err := t.sys.Lstat(folder); err == nil {
		return nil // made before, as the first was not there
	}
	if folder != t.folder {
		if err := t.folders(filepath.Dir(folder)); err != nil {
			return err
		}
	}
	if err := t.sys.MkdirAll(folder, 0o755); err != nil {
		return err
	}
	t.made = append(t.made, folder)
	return nil
}

// undo removes what was written.
func (t *taker) undo() (err error) {
	for i := len(t.made) - 1; i >= 0; i-- {
		if e := t.sys.Remove(t.made[i]); e != nil && !errors.Is(e, fs.ErrNotExist) {
			err = errors.Join(err, e)
		}
	}
	return err
}
