package main

import (
	"flag"
	"fmt"
	"runtime/debug"
)

// release is the program's version, by the rules of semver.org. All that tells it reads
// it here.
const release = "0.9.0"

// commit is what a packed program was built from. The linker sets it; where it does not,
// what the Go tool recorded is taken.
var commit string

// version is the program's version with the commit that it was built from.
func version() string {
	from := commit
	if info, ok := debug.ReadBuildInfo(); ok && from == "" {
		changed := ""
		for _, s := range info.Settings {
			switch {
			case s.Key == "vcs.revision":
				from = s.Value
			case s.Key == "vcs.modified" && s.Value == "true":
				changed = ", changed"
			}
		}
		from += changed
	}
	if from == "" {
		return release + " (commit not recorded)"
	}
	return release + " (commit " + from + ")"
}

func tellVersion(*flag.FlagSet) task {
	return func(_ []string, c console) int {
		fmt.Fprintln(c.out, "frontlay", version())
		return exitFine
	}
}
