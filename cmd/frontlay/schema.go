package main

import (
	"flag"
	"fmt"

	"frontlay/assets/language"
	"frontlay/assets/manual"
	"frontlay/layout/check"
	"frontlay/model/yamlfile"
)

// schema prints what editors and people need to know of the file formats.
func schema(*flag.FlagSet) task {
	return func(rest []string, c console) int {
		what := "project"
		if len(rest) == 1 {
			what = rest[0]
		}
		switch {
		case len(rest) > 1:
		case what == "project":
			fmt.Fprintf(c.out, "%s\n", yamlfile.ProjectSchema(check.Limits()))
			return exitFine
		case what == "sheet":
			fmt.Fprintf(c.out, "%s\n", yamlfile.SheetSchema())
			return exitFine
		case what == "findings":
			fmt.Fprintf(c.out, "%s", findingsSchema())
			return exitFine
		case what == "reference":
			fmt.Fprint(c.out, manual.In(language.English).Chapter("reference-format").Text())
			return exitFine
		}
		fmt.Fprintln(c.err, "frontlay schema: write one of: frontlay schema project, frontlay schema sheet, frontlay schema findings, frontlay schema reference")
		return exitFailed
	}
}
