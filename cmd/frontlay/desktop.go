package main

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"

	"frontlay/assets"
	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/sheet"
	"frontlay/model/message"
	"frontlay/model/pack"
	"frontlay/model/yamlfile"
	"frontlay/ui"
)

// window opens the window on the project that the arguments name. Where
// there is no display it says so; an example's job is then done without one.
func window(fs *flag.FlagSet) task {
	demo := fs.Bool("demo", false, "open the demo project, or the example that is named")
	into := fs.String("into", "", "unpack a packed job into this `FOLDER`, which is made; else into one beside it, with its name")
	verbose := fs.Bool("verbose", false, "log everything, to the terminal too")
	return func(rest []string, c console) int {
		if len(rest) > 1 {
			fmt.Fprintln(c.err, "frontlay: name one project at most. See frontlay --help.")
			return exitFailed
		}
		example := ""
		if *demo {
			if example = assets.DemoExample; len(rest) == 1 {
				example, rest = rest[0], nil
			}
			if _, there := assets.Example(example); !there {
				fmt.Fprintf(c.err, "frontlay: there is no example %q; there are %s.\n", example, strings.Join(assets.Examples(), ", "))
				return exitFailed
			}
		}
		if len(rest) == 1 && pack.Is(rest[0]) && (*into != "" || noWindow(c) != "") {
			path, ok := unpacked(rest[0], *into, c)
			if !ok || noWindow(c) != "" {
				return map[bool]int{true: exitFine, false: exitFailed}[ok]
			}
			rest[0] = path
		}
		if why := noWindow(c); why != "" {
			if *demo {
				fmt.Fprintln(c.out, why, "The example's job is done without it.")
				return headless(example, c)
			}
			fmt.Fprintln(c.err, why, "The commands work without one: see frontlay --help.")
			return exitFailed
		}
		o := ui.Options{
			Write: writePages, Printer: printerHere(), Known: knownPrinters{}, Export: writeFiles, Pack: packForWindow(c),
			Example: example, Version: version(), Date: func() string { return c.printing().Format(printedTime) },
		}
		if len(rest) == 1 {
			o.Open = rest[0]
		}
		leaveConsole()
		return guarded(o, *verbose, c)
	}
}

// noWindow says why no window can be opened; empty where one can.
func noWindow(c console) string {
	switch {
	case !hasWindow:
		return "This frontlay was built without its window (cgo was off)."
	case runtime.GOOS != "windows" && runtime.GOOS != "darwin" && c.getenv("DISPLAY") == "" && c.getenv("WAYLAND_DISPLAY") == "":
		return "There is no display for the window."
	}
	return ""
}

// headless does an example's job without a window: it prints the findings and
// writes the PDF into the folder out, and tells where.
func headless(example string, c console) int {
	data, _ := assets.Example(example)
	f, err := yamlfile.Read(example+".yaml", data, sheetsFor("", nil), check.Limits())
	if err == nil {
		err = os.MkdirAll("out", 0o777)
	}
	if err != nil {
		fmt.Fprintln(c.err, plain(err))
		return exitFailed
	}
	say := message.Language{Unit: f.Project.Unit}
	r := layout.Solve(f.Project)
	printFindings(c.out, say, r)
	out, err := filepath.Abs(filepath.Join("out", example+".pdf"))
	if err != nil {
		fmt.Fprintln(c.err, err)
		return exitFailed
	}
	return printJob(out, r, sheet.Options{Say: say}, newTelling(out), c)
}
