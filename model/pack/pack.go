// Package pack puts a whole job into one .zip, which opens anywhere, and takes it out
// again. A .zip may come from anybody: it is looked through before anything is written.
package pack

import (
	"archive/zip"
	"bytes"
	"fmt"
	"path"
	"reflect"
	"strings"
	"time"

	"frontlay/model"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
)

// File is a file of a job: its path in the archive, with / between folders, and its bytes.
type File struct {
	Name string
	Data []byte
}

// sheetFolder is where the hardware sheets of a packed project lie.
const sheetFolder = "sheets"

// comment is that of every archive made here: it tells a job from other archives.
const comment = "A job of frontlay"

// Job gives the files that a project needs to be opened anywhere, itself first: it, with
// the comments of the file that it was read from, and each hardware sheet that it names,
// samples and those that lie elsewhere too. name is that of the project, without
// extension; find gives a sheet's text. The project is not changed.
func Job(f *yamlfile.File, p *model.Project, name string, find yamlfile.SheetSource) ([]File, error) {
	p = p.Clone()
	given, packed := names{}, map[string]string{} // source → name in the archive
	files := []File{{Name: given.take("", name+".yaml")}}
	for i := range p.Hardware {
		u := &p.Hardware[i]
		if u.Source == "" {
			continue // its figures stand in the project
		}
		if packed[u.Source] == "" {
			text, err := sheetText(u, find)
			if err != nil {
				return nil, err
			}
			base := path.Base(strings.ReplaceAll(u.Source, `\`, "/"))
			at := given.take(sheetFolder, strings.TrimSuffix(base, path.Ext(base))+".yaml")
			packed[u.Source] = at
			files = append(files, File{at, text})
		}
		u.Source = packed[u.Source]
	}
	text, err := f.Write(p)
	files[0].Data = text
	return files, err
}

// sheetText is the text of a sheet with its comments, where that still says what the
// project works with; else it is written anew.
func sheetText(u *model.HardwareUse, find yamlfile.SheetSource) ([]byte, error) {
	if name, text, err := find(u.Source); err == nil {
		if s, err := yamlfile.ReadSheet(name, text); err == nil && reflect.DeepEqual(s, u.Sheet) {
			return text, nil
		}
	}
	return yamlfile.NewSheet(u.Sheet).Write(u.Sheet)
}

// Names gives every file a path that every system takes and that no other has, whatever
// the case of its letters. Those of a Job keep theirs if they come first.
func Names(files []File) {
	given := names{}
	for i := range files {
		folder, name := path.Split(files[i].Name)
		if folder = strings.Trim(folder, "/"); folder != "" {
			folder = SafeName(folder)
		}
		files[i].Name = given.take(folder, name)
	}
}

// Zip makes the archive; when is the time that its files get. The same arguments give the
// same bytes.
func Zip(files []File, when time.Time) ([]byte, error) {
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	if err := z.SetComment(comment); err != nil {
		return nil, err
	}
	for _, f := range files {
		w, err := z.CreateHeader(&zip.FileHeader{Name: f.Name, Method: zip.Deflate, Modified: when.UTC()})
		if err == nil {
			_, err = w.Write(f.Data)
		}
		if err != nil {
			return nil, fmt.Errorf("%s: %w", f.Name, err)
		}
	}
	if err := z.Close(); err != nil {
		return nil, err
	}
	if b.Len() > MaxBytes {
		return nil, message.New("the packed job would be larger than %v MB, which nobody could open", MaxBytes>>20)
	}
	return b.Bytes(), nil
}

// Packed tells that data is an archive made here, which can be made again.
func Packed(data []byte) bool {
	return bytes.HasPrefix(data, []byte("PK")) && bytes.HasSuffix(data, []byte(comment))
}

// Is tells by its name that a path is of an archive.
func Is(name string) bool { return strings.EqualFold(path.Ext(name), Ext) }

// Ext is the extension of an archive.
const Ext = ".zip"
