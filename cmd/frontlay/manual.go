package main

import (
	"flag"
	"fmt"
	"slices"

	"frontlay/assets/language"
	"frontlay/assets/manual"
)

// printManual writes a chapter of the manual, or tells which there are: for who works
// where no window opens. Without a language of the manual it is English.
func printManual(fs *flag.FlagSet) task {
	code := oneOf(fs, "language", language.English, language.Codes(), "the language of what is written: the `CODE` "+listed(language.Codes())+", or the path of a file of translations")
	return func(rest []string, c console) int {
		if !slices.Contains(manual.Languages(), *code) {
			fmt.Fprintf(c.err, "frontlay manual: there is no manual in %s, but in %s.\n", *code, listed(manual.Languages()))
			return exitFailed
		}
		book := manual.In(*code)
		switch {
		case len(rest) == 0:
			for _, one := range book.Chapters[1:] {
				fmt.Fprintf(c.out, "%-20s %s\n", one.Name, one.Title)
			}
		case len(rest) > 1 || book.Chapter(rest[0]) == nil:
			fmt.Fprintf(c.err, "frontlay manual: write one of the chapters that frontlay manual lists.\n")
			return exitFailed
		default:
			fmt.Fprint(c.out, book.Chapter(rest[0]).Text())
		}
		return exitFine
	}
}
