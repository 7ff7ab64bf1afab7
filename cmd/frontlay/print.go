package main

import (
	"bytes"
	"flag"
	"fmt"
	"strconv"
	"strings"

	"frontlay/layout"
	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
	"frontlay/pdfout"
)

// runPrint writes a project's pages as a PDF.
func runPrint(args []string, c console) int {
	fs := flag.NewFlagSet("print", flag.ContinueOnError)
	out := fs.String("o", "", "")
	paper := fs.String("paper", "A4", "")
	only := fs.String("only", "", "")
	fronts := fs.String("fronts", "", "")
	anywhere := fs.Bool("sheets-anywhere", false, "")
	rest, err := parse(fs, args, c)
	if err != nil {
		return failed(err, c)
	}
	path, ok := oneFile("print", rest, c)
	if !ok {
		return exitFailed
	}
	if *out == "" {
		fmt.Fprintln(c.err, "frontlay print: say where to write the PDF: -o OUT.pdf")
		return exitFailed
	}
	o, err := sheetOptions(*paper, *only, *fronts)
	if err != nil {
		fmt.Fprintln(c.err, "frontlay print:", err)
		return exitFailed
	}
	f, err := openProject(path, *anywhere)
	if err != nil {
		fmt.Fprintln(c.err, err)
		return exitFailed
	}
	r := layout.Solve(f.Project)
	if missing := missingFronts(o.Fronts, len(r.Plan.Fronts)); missing > 0 {
		fmt.Fprintf(c.err, "frontlay print: there is no front %d; the project has fronts 1 to %d.\n", missing, len(r.Plan.Fronts))
		return exitFailed
	}
	return writePDF(*out, f, r, o, c)
}

// writePDF makes the pages and puts them in their place whole.
func writePDF(out string, f *yamlfile.File, r layout.Result, o sheet.Options, c console) int {
	o.Say = message.Language{Unit: f.Project.Unit}
	o.Date = c.now().Format("2006-01-02")
	doc := sheet.Make(r.Plan, r.Findings, o)
	var pdf bytes.Buffer
	if err := pdfout.Write(&pdf, doc, pdfout.Options{}); err != nil {
		fmt.Fprintf(c.err, "%s: the PDF could not be made: %v\n", out, err)
		return exitFailed
	}
	if err := saveBytes(out, pdf.Bytes()); err != nil {
		fmt.Fprintln(c.err, plain(err))
		return exitFailed
	}
	fmt.Fprintf(c.out, "%s: %d pages. Print at actual size (100 %%) and measure the check bars before you drill.\n", out, len(doc.Pages))
	if n := openErrors(r.Findings); n > 0 {
		fmt.Fprintf(c.err, "The check found %s: see the findings page, or frontlay check.\n", counted(n, "error"))
	}
	return exitFine
}

// sheetOptions reads the flags of print.
func sheetOptions(paper, only, fronts string) (sheet.Options, error) {
	var o sheet.Options
	var err error
	if o.Paper, err = sheet.ParsePaper(paper, length.UnitMM); err != nil {
		return o, err
	}
	for _, name := range split(only) {
		part, ok := partNamed(name)
		if !ok {
			return o, fmt.Errorf("there is no part named %q; the parts are %s", name, partNames())
		}
		o.Parts = append(o.Parts, part)
	}
	for _, s := range split(fronts) {
		n, err := strconv.Atoi(s)
		if err != nil || n < 1 {
			return o, fmt.Errorf("%q is not the number of a front; write for instance --fronts 2,3,5", s)
		}
		o.Fronts = append(o.Fronts, n)
	}
	return o, nil
}

func split(list string) []string {
	var items []string
	for _, s := range strings.Split(list, ",") {
		if s = strings.TrimSpace(s); s != "" {
			items = append(items, s)
		}
	}
	return items
}

func partNamed(name string) (sheet.Part, bool) {
	for _, p := range sheet.Parts() {
		if string(p) == name {
			return p, true
		}
	}
	return "", false
}

func partNames() string {
	var names []string
	for _, p := range sheet.Parts() {
		names = append(names, string(p))
	}
	return strings.Join(names, ", ")
}

func missingFronts(asked []int, have int) int {
	for _, n := range asked {
		if n > have {
			return n
		}
	}
	return 0
}
