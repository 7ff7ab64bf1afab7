// Command frontlay plans the fronts of drawer cabinets: in a window, or one
// headless job a file. See its --help.
package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"slices"
	"strings"
	"time"

	_ "frontlay/cmd/frontlay/locale" // before Fyne is initialised
)

// Exit codes of every command.
const (
	exitFine     = 0
	exitFindings = 1 // the check found errors that nobody accepted
	exitFailed   = 2 // something could not be read, written or understood
)

// console is what a command needs from the world around it.
type console struct {
	out, err io.Writer
	terminal bool // err is a terminal, where a line can be written over
	now      func() time.Time
	getenv   func(string) string
}

func main() {
	c := console{out: os.Stdout, err: os.Stderr, now: time.Now, getenv: os.Getenv}
	if info, err := os.Stderr.Stat(); err == nil {
		c.terminal = info.Mode()&os.ModeCharDevice != 0
	}
	os.Exit(run(os.Args[1:], c))
}

// command is one thing that frontlay does. Its flags are said where it defines them,
// and read from there by all that tells of them: help, manual page, completion.
type command struct {
	name  string // empty: the window
	args  string // what is written behind the name
	about string
	// define gives fs the command's flags, and the task that reads them.
	define func(fs *flag.FlagSet) task
}

// task does a command's work. Its flags are parsed; rest are its other arguments. It
// gives the exit code.
type task func(rest []string, c console) int

func commands() []command {
	return []command{
		{"", "[FILE]", "open the window, on a project or a packed job if one is named", window},
		{"check", "FILE", "print the findings of a project", checking},
		{"propose", "FILE --thing jars=210", "print the best divisions of a bay, from what is to go into its drawers", proposing},
		{"print", "FILE -o OUT.pdf", "write drawings and lists, and drilling templates beside them, as PDF", printing},
		{"export", "FILE -o FOLDER", "write drawings as SVG and DXF, lists as CSV, the plan as JSON", exporting},
		{"pack", "FILE", "write one .zip with the project, its hardware sheets, its PDFs and the files for machines, to be opened anywhere", packing},
		{"calibrate", "-o OUT.pdf", "write a page that measures a printer, and keep what the rule says", calibrating},
		{"schema", "[project|sheet|findings|reference]", "print the JSON Schema for editors, that of what --json tells, or the reference of the file formats", schema},
		{"new", "FILE", "write a project to begin with", newFile},
		{"manual", "[CHAPTER]", "print a chapter of the manual that the window shows, or list its chapters", printManual},
		{"help", "[man|bash]", "print this help, or what man shows and what bash completes", help},
		{"version", "", "print the version and the commit that it was built from", tellVersion},
	}
}

// run does what the arguments ask for and gives the exit code.
func run(args []string, c console) int {
	all := commands()
	cmd := all[0]
	if len(args) > 0 {
		name := args[0]
		switch name {
		case "-h", "-help", "--help":
			name = "help"
		case "--version":
			name = "version"
		}
		if i := slices.IndexFunc(all, func(one command) bool { return one.name == name }); i > 0 {
			cmd, args = all[i], args[1:]
		}
	}
	fs := flag.NewFlagSet(cmd.name, flag.ContinueOnError)
	do := cmd.define(fs)
	rest, err := parse(fs, args, c)
	switch {
	case errors.Is(err, flag.ErrHelp):
		fmt.Fprint(c.out, helpText())
		return exitFine
	case err != nil:
		return exitFailed
	}
	return do(rest, c)
}

// parse reads flags that may stand before, between and behind the other
// arguments, and gives those others.
func parse(fs *flag.FlagSet, args []string, c console) ([]string, error) {
	fs.SetOutput(io.Discard)
	var rest []string
	for {
		if err := fs.Parse(args); err != nil {
			if !errors.Is(err, flag.ErrHelp) {
				fmt.Fprintf(c.err, "%s: %v. See frontlay --help.\n", called(fs.Name()), err)
			}
			return nil, err
		}
		if fs.NArg() == 0 {
			return rest, nil
		}
		rest = append(rest, fs.Arg(0))
		args = fs.Args()[1:]
	}
}

// oneFile is the only argument of a command that works on a file.
func oneFile(name string, rest []string, c console) (string, bool) {
	switch {
	case len(rest) == 0:
		fmt.Fprintf(c.err, "frontlay %s: no file is named. Write: frontlay %s FILE\n", name, name)
	case len(rest) > 1:
		fmt.Fprintf(c.err, "frontlay %s: one file at a time, but %s are named.\n", name, strings.Join(rest, ", "))
	default:
		return rest[0], true
	}
	return "", false
}
