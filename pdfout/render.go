package pdfout

import (
	"errors"
	"io"

	"frontlay/layout/sheet"
)

func write(_ io.Writer, _ sheet.Document, _ Options) error {
	return errors.New("not written yet")
}
