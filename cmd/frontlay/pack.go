package main

import (
	"bytes"
	"context"
	"flag"
	"fmt"
	"path/filepath"
	"strings"
	"time"

	"frontlay/layout"
	"frontlay/layout/export"
	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/model/pack"
	"frontlay/model/store"
	"frontlay/pdfout"
)

// machineFolder is where the files for machines lie in a packed job.
const machineFolder = "machine"

// packing writes a job as one .zip.
func packing(fs *flag.FlagSet) task {
	out := fs.String("o", "", "the `NAME.zip` to write; else that of the project, beside it")
	paper := addPaper(fs)
	project := addProjectFlags(fs)
	return func(rest []string, c console) int {
		path, ok := oneFile("pack", rest, c)
		if !ok {
			return exitFailed
		}
		name := strings.TrimSuffix(path, filepath.Ext(path))
		if *out == "" {
			*out = name + pack.Ext
		} else if !pack.Is(*out) {
			*out += pack.Ext
		}
		o := sheet.Options{Date: c.printing().Format(printedTime)}
		var err error
		if o.Paper, err = sheet.ParsePaper(*paper, length.UnitMM); err != nil {
			fmt.Fprintln(c.err, "frontlay pack:", err)
			return exitFailed
		}
		f, say, ok := project.open("pack", path, c)
		if !ok {
			return exitFailed
		}
		o.Say = say
		find := sheetsFor(filepath.Dir(path), func(string) bool { return *project.anywhere })
		files, err := pack.Job(f, f.Project, filepath.Base(name), find)
		if err == nil {
			files, err = packJob(context.Background(), *out, files, layout.Solve(f.Project), o, c.printing(), func(int, int) {})
		}
		if err != nil {
			fmt.Fprintln(c.err, say.Say(message.Of(err)))
			return exitFailed
		}
		fmt.Fprintf(c.out, "%s: %s.\n", *out, counted(len(files), "file"))
		warnOfErrors(layout.Solve(f.Project), c)
		return exitFine
	}
}

// packJob writes the .zip of a job: its project and sheets, which come first in files,
// its paper as print makes it, and what export makes. It gives all that went in. It
// replaces no archive but one that was packed.
func packJob(ctx context.Context, out string, files []pack.File, r layout.Result, o sheet.Options, when time.Time, progress func(done, of int)) ([]pack.File, error) {
	if old, _, err := store.Read(store.OS{}, out, pack.MaxBytes); err == nil && len(old) > 0 && !pack.Packed(old) {
		return nil, message.New("%v is there already and is no packed job; it is left as it is; choose another name", out)
	}
	name := strings.TrimSuffix(files[0].Name, filepath.Ext(files[0].Name))
	docs := sheet.Documents(r.Plan, r.Findings, o)
	steps := len(docs) + 2
	for i, doc := range docs {
		progress(i, steps)
		var pdf bytes.Buffer
		if err := pdfout.Write(&pdf, doc, pdfout.Options{Progress: func(int, int) error { return ctx.Err() }}); err != nil {
			return nil, err
		}
		files = append(files, pack.File{Name: doc.File.Name(name + ".pdf"), Data: pdf.Bytes()})
	}
	progress(len(docs), steps)
	machine, err := export.Files(r.Plan, r.Findings, export.Options{Say: o.Say, Paper: o.Paper, Date: o.Date})
	if err != nil {
		return nil, err
	}
	for _, f := range machine {
		files = append(files, pack.File{Name: machineFolder + "/" + f.Name, Data: f.Data})
	}
	progress(len(docs)+1, steps)
	pack.Names(files)
	data, err := pack.Zip(files, when)
	if err == nil {
		err = ctx.Err()
	}
	if err == nil {
		err = saveBytes(out, data)
	}
	if err != nil {
		return nil, plain(err)
	}
	return files, plain(keepPaper(r.Plan.Paper()))
}

// packForWindow packs with the paper that is printed where nobody says.
func packForWindow(c console) func(ctx context.Context, out string, files []pack.File, r layout.Result, say message.Language, progress func(done, of int)) error {
	return func(ctx context.Context, out string, files []pack.File, r layout.Result, say message.Language, progress func(done, of int)) error {
		_, err := packJob(ctx, out, files, r, sheet.Options{Say: say, Date: c.printing().Format(printedTime)}, c.printing(), progress)
		return err
	}
}

// unpacked takes a packed job out into a folder, where one is told or there is no window
// that could ask, and gives the project in it. Where that fails it has said why.
func unpacked(archive, into string, c console) (string, bool) {
	if into == "" {
		into = pack.Folder(archive)
	}
	path, err := pack.Unpack(store.OS{}, archive, into)
	if err != nil {
		fmt.Fprintln(c.err, plain(err))
		if _, ok := err.(*pack.There); ok {
			fmt.Fprintln(c.err, "Name another folder with --into.")
		}
		return "", false
	}
	fmt.Fprintf(c.out, "%s: unpacked.\n", path)
	return path, true
}
