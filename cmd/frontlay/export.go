package main

import (
	"context"
	"flag"
	"fmt"

	"frontlay/layout"
	"frontlay/layout/export"
)

// exporting writes the files of a job for machines and other programs.
func exporting(fs *flag.FlagSet) task {
	out := fs.String("o", "", "the `FOLDER` to write into")
	only := oneOf(fs, "only", "", export.Kinds(), "a `LIST` of kinds, with commas between; only these: "+export.KindNames())
	pixels := fs.Int("pixels", export.DefaultPixels, "the picture is `N` pixels along its longer edge")
	project := addProjectFlags(fs)
	return func(rest []string, c console) int {
		path, ok := oneFile("export", rest, c)
		if !ok {
			return exitFailed
		}
		if *out == "" {
			fmt.Fprintln(c.err, "frontlay export: say into which folder to write: -o FOLDER")
			return exitFailed
		}
		o := export.Options{Pixels: *pixels, Date: c.printing().Format(printedTime)}
		for _, k := range split(*only) {
			o.Kinds = append(o.Kinds, export.Kind(k))
		}
		f, say, ok := project.open("export", path, c)
		if !ok {
			return exitFailed
		}
		r := layout.Solve(f.Project)
		o.Say = say
		files, err := export.Files(r.Plan, r.Findings, o)
		if err != nil {
			fmt.Fprintln(c.err, "frontlay export:", err)
			return exitFailed
		}
		if err := writeFiles(context.Background(), *out, files, func(int, int) {}); err != nil {
			fmt.Fprintln(c.err, err)
			return exitFailed
		}
		fmt.Fprintf(c.out, "%s: %s.\n", *out, counted(len(files), "file"))
		warnOfErrors(r, c)
		return exitFine
	}
}

// warnOfErrors tells on the error output that what was written has errors.
func warnOfErrors(r layout.Result, c console) {
	if n := openErrors(r.Findings); n > 0 {
		fmt.Fprintf(c.err, "The check found %s: see the findings page, or frontlay check.\n", counted(n, "error"))
	}
}
