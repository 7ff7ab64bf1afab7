package pdfout

import (
	"bytes"
	"errors"
	"fmt"
	"strconv"
)

// atActualSize adds the viewer preference PrintScaling None (ISO 32000-1:2008
// Table 150), which asks the print dialog for actual size and which the library
// can't write. The catalogue is the last object of its files, so that only
// startxref moves.
func atActualSize(pdf []byte) ([]byte, error) {
	catalogue := bytes.LastIndex(pdf, []byte("/Type /Catalog\n"))
	start := bytes.LastIndex(pdf, []byte("\nstartxref\n"))
	xref := bytes.LastIndex(pdf, []byte("\nxref\n"))
	if catalogue < 0 || start < 0 || xref < catalogue || !bytes.HasPrefix(pdf, []byte("%PDF-1.")) {
		return nil, errors.New("the PDF has no catalogue where it was expected")
	}
	at := catalogue + len("/Type /Catalog\n")
	const wish = "/ViewerPreferences <</PrintScaling /None>>\n"
	var out bytes.Buffer
	out.Grow(len(pdf) + 100)
	out.WriteString("%PDF-1.7")
	out.Write(pdf[len("%PDF-1.7"):at])
	out.WriteString(wish)
	out.Write(pdf[at : start+len("\nstartxref\n")])
	table := xref + 1 + len(wish)
	out.WriteString(strconv.Itoa(table) + "\n%%EOF\n")
	if !bytes.HasPrefix(out.Bytes()[table:], []byte("xref\n")) {
		return nil, fmt.Errorf("the PDF’s table of objects is not at byte %d", table)
	}
	return out.Bytes(), nil
}
