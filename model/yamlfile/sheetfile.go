package yamlfile

import (
	"fmt"

	"gopkg.in/yaml.v3"

	"frontlay/model"
	"frontlay/model/figure"
)

// SheetFile is a hardware sheet with the text it was read from, as File is for
// a project.
type SheetFile struct {
	Sheet *model.HardwareSheet
	from  origin
}

// NewSheet is the file of a sheet that never had one.
func NewSheet(s *model.HardwareSheet) *SheetFile { return &SheetFile{Sheet: s} }

// ReadSheet reads a hardware sheet. fileName only serves messages. Its error is
// Problems; the sheet is nil then.
func ReadSheet(fileName string, data []byte) (*model.HardwareSheet, error) {
	f, err := ReadSheetFile(fileName, data)
	if err != nil {
		return nil, err
	}
	return f.Sheet, nil
}

// ReadSheetFile is ReadSheet for a sheet that will be written back with its
// comments.
func ReadSheetFile(fileName string, data []byte) (*SheetFile, error) {
	r := newReader(fileName, nil)
	r.sheetOnly = true
	doc := r.parse(data)
	if doc == nil {
		return nil, r.err()
	}
	s := r.sheet(doc.Content[0])
	if err := r.err(); err != nil {
		return nil, err
	}
	return &SheetFile{Sheet: s, from: r.origin(data, doc)}, nil
}

// Write gives the YAML of s with the comments of the sheet that was read; keys
// that are new get a comment that says where on a maker's document such a figure
// stands. The SheetFile itself does not change. The result has been read back
// and is exactly s; the error is Problems where s can't be read back.
func (f *SheetFile) Write(s *model.HardwareSheet) ([]byte, error) {
	return f.from.write(figure.Sheet(s), true, func(data []byte) error {
		t, err := ReadSheet("", data)
		if err != nil {
			return unplaced(err)
		}
		if d := difference(s, t); d != "" {
			return fmt.Errorf("the hardware sheet can't be written so that it reads back the same (HardwareSheet%s); please report this with the sheet", d)
		}
		return nil
	})
}

// sheet reads a hardware sheet's mapping; problems are collected.
func (r *reader) sheet(root *yaml.Node) *model.HardwareSheet {
	if !r.readVersion(root, "frontlay_hardware", sheetMigrations) {
		return nil
	}
	screwedIsAKind(root)
	s := new(model.HardwareSheet)
	before := len(r.problems)
	r.mapping(root, figure.Sheet(s))
	if len(r.problems) == before {
		for _, f := range figure.Contradictions(s) {
			r.failBelow(f.Path, f.What, f.Advice)
		}
	}
	return s
}
