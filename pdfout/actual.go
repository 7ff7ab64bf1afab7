package pdfout

import (
	"bytes"
	"errors"
	"io"
	"strconv"
)

// actualSize writes a whole PDF with the viewer preference PrintScaling None
// (ISO 32000-1:2008 Table 150), which asks the print dialog for actual size and
// which the library can't write. The catalogue is the last object of its files,
// so that only startxref moves.
type actualSize struct{ to io.Writer }

// Write takes the whole file at once, as the library gives it, and copies none of
// it; it refuses a part.
func (a actualSize) Write(pdf []byte) (int, error) {
	catalogue := bytes.LastIndex(pdf, []byte("/Type /Catalog\n"))
	start := bytes.LastIndex(pdf, []byte("\nstartxref\n"))
	xref := bytes.LastIndex(pdf, []byte("\nxref\n"))
	if catalogue < 0 || start < 0 || xref < catalogue || !bytes.HasPrefix(pdf, []byte("%PDF-1.")) {
		return 0, errors.New("the PDF has no catalogue where it was expected")
	}
	at := catalogue + len("/Type /Catalog\n")
	const wish = "/ViewerPreferences <</PrintScaling /None>>\n"
	end := strconv.Itoa(xref+1+len(wish)) + "\n%%EOF\n"
	for _, part := range [][]byte{
		[]byte("%PDF-1.7"), pdf[len("%PDF-1.7"):at], []byte(wish), pdf[at : start+len("\nstartxref\n")], []byte(end),
	} {
		if _, err := a.to.Write(part); err != nil {
			return 0, err
		}
	}
	return len(pdf), nil
}
