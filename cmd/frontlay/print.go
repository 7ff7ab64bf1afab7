package main

import (
	"bytes"
	"cmp"
	"context"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"os/signal"
	"runtime/debug"
	"slices"
	"strings"

	"frontlay/layout"
	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/pdfout"
)

// printing writes a project's pages: the parts that are asked for as one PDF, or
// those for a place of work, with PDFs of their own for templates and labels, whose
// printer settings differ.
func printing(fs *flag.FlagSet) task {
	out := fs.String("o", "", "the `FILE` to write; without --only templates and labels get files of their own beside it, OUT-templates.pdf, OUT-labels.pdf")
	paper := addPaper(fs)
	printer := fs.String("printer", "", "undo the fault of scale that was measured for the printer `NAME`")
	preset := oneOf(fs, "for", "", sheet.Presets(), "paper for a `PLACE` of work"+forPlaces())
	only := oneOf(fs, "only", "", sheet.Parts(), "a `LIST` of parts, with commas between; only these, in one file: "+listed(sheet.Parts()))
	fronts := fs.String("fronts", "", "a `LIST` of fronts by number, such as 2,5-7; templates only for these")
	labels := addLabelFlags(fs)
	asJSON := addJSON(fs)
	project := addProjectFlags(fs)
	return func(rest []string, c console) int {
		path, ok := oneFile("print", rest, c)
		if !ok {
			return exitFailed
		}
		if *out == "" {
			fmt.Fprintln(c.err, "frontlay print: say where to write the PDF: -o OUT.pdf")
			return exitFailed
		}
		o, err := sheetOptions(*paper, *preset, *only)
		if err == nil {
			err = labels.use(&o)
		}
		if err == nil && *printer != "" {
			err = usePrinter(&o, *printer)
		}
		if err != nil {
			fmt.Fprintln(c.err, "frontlay print:", err)
			return exitFailed
		}
		told := newTelling(path)
		person := c
		if *asJSON {
			c.out = io.Discard
			defer func() { told.print(person) }()
		}
		f, say, err := project.read(path, nil)
		if err != nil {
			fmt.Fprintln(c.err, err)
			told.fail(err, say)
			return exitFailed
		}
		o.Say = say
		r := layout.Solve(f.Project)
		if o.Fronts, err = sheet.ParseFronts(*fronts, len(r.Plan.Fronts)); err != nil {
			fmt.Fprintln(c.err, "frontlay print:", err)
			told.fail(err, say)
			return exitFailed
		}
		if *asJSON {
			told.tell(f, r, say)
		}
		return printJob(*out, r, o, told, c)
	}
}

// printMemory is what printing takes at most before it collects what it no longer
// needs at once, in bytes: 4,000 fronts need less.
const printMemory = 220 << 20

// printJob writes the PDF of the parts that are asked for, or all of a job, and notes
// what it wrote.
func printJob(out string, r layout.Result, o sheet.Options, told *telling, c console) int {
	o.Date = c.printing().Format(printedTime)
	defer debug.SetMemoryLimit(debug.SetMemoryLimit(printMemory))
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	docs := []sheet.Document{}
	if len(o.Parts) > 0 {
		docs = append(docs, sheet.Make(r.Plan, r.Findings, o))
	} else {
		docs = sheet.Documents(r.Plan, r.Findings, o)
	}
	for i := range docs {
		name := out
		if docs[0].File == sheet.Drawings {
			name = docs[i].File.Name(out)
		}
		pages := len(docs[i].Pages)
		if err := writePDF(ctx, name, docs[i], o, c); err != nil {
			fmt.Fprintln(c.err, err)
			told.fail(err, o.Say)
			return exitFailed
		}
		if pages > 0 {
			told.Written = append(told.Written, wroteFile{name, pages})
		}
	}
	if err := keepPaper(r.Plan.Paper()); err != nil {
		fmt.Fprintln(c.err, "What was printed could not be kept; its stamp will not tell which fronts have changed:", err)
	}
	warnOfErrors(r, c)
	return exitFine
}

// writePDF makes the pages and puts them in their place whole. It tells on a
// terminal how far it is, and ends where ctx does, with nothing written.
func writePDF(ctx context.Context, out string, doc sheet.Document, o sheet.Options, c console) error {
	if len(doc.Pages) == 0 {
		fmt.Fprintf(c.out, "%s: not written, there is nothing to print of these parts.\n", out)
		return nil
	}
	pages, usage := len(doc.Pages), sheet.Usage(doc, o.Paper)
	var pdf bytes.Buffer
	err := pdfout.Write(&pdf, doc, pdfout.Options{Progress: func(page, pages int) error {
		if c.terminal {
			fmt.Fprintf(c.err, "\rpage %d of %d ", page+1, pages)
		}
		if page > 0 {
			doc.Pages[page-1] = sheet.Page{} // it is written; thousands of them fill the memory
		}
		return ctx.Err()
	}})
	if c.terminal {
		fmt.Fprint(c.err, "\r                        \r")
	}
	if errors.Is(err, context.Canceled) {
		return fmt.Errorf("%s: cancelled; nothing was written", out)
	}
	if err != nil {
		return fmt.Errorf("%s: the PDF could not be made: %w", out, err)
	}
	if err := saveBytes(out, pdf.Bytes()); err != nil {
		return err
	}
	fmt.Fprintf(c.out, "%s: %s.\n", out, counted(pages, "page"))
	told := ""
	for _, u := range usage {
		if u.Part.Template() {
			if u.Part != sheet.Labels {
				told = "    Print them at actual size (100 %) and measure the check bars before you drill.\n"
			} else if told == "" {
				told = "    Print them at actual size (100 %).\n"
			}
			fmt.Fprintf(c.out, "    %s\n", o.Say.Say(u.Say()))
		}
	}
	fmt.Fprint(c.out, told)
	return nil
}

// usePrinter takes the correction and margins that were measured for a printer.
func usePrinter(o *sheet.Options, printer string) error {
	known, err := loadPrinters()
	if err != nil {
		return err
	}
	k := known.Find(printer, o.Paper.Name)
	found := false
	for _, one := range known.All() {
		found = found || one.Correction.Printer == printer && one.Correction.Paper == o.Paper.Name
	}
	if !found {
		return fmt.Errorf("the printer %q was never measured with %s; write: frontlay calibrate -o page.pdf --paper %s", printer, o.Paper.Name, o.Paper.Name)
	}
	o.Correction = k.Correction
	if k.Margins != (sheet.Margins{}) {
		o.Margins = k.Margins
	}
	return nil
}

// sheetOptions reads the flags of print.
func sheetOptions(paper, preset, only string) (sheet.Options, error) {
	var o sheet.Options
	var err error
	if o.Paper, err = sheet.ParsePaper(paper, length.UnitMM); err != nil {
		return o, err
	}
	switch o.For = sheet.Preset(cmp.Or(preset, string(sheet.Bench))); {
	case !slices.Contains(sheet.Presets(), o.For):
		return o, fmt.Errorf("there is no paper for %q; write --for %s", preset, listed(sheet.Presets()))
	case preset != "" && only != "":
		return o, errors.New("--for and --only choose the parts both: leave out one of them")
	}
	for _, name := range split(only) {
		part := sheet.Part(name)
		if !slices.Contains(sheet.Parts(), part) {
			return o, fmt.Errorf("there is no part named %q; the parts are %s", name, listed(sheet.Parts()))
		}
		o.Parts = append(o.Parts, part)
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

// listed are names with commas between them.
func listed[N ~string](names []N) string {
	var all []string
	for _, n := range names {
		all = append(all, string(n))
	}
	return strings.Join(all, ", ")
}
